"""The household folder: journal, finished files, lock, older versions."""
