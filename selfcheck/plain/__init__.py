"""The line-by-line face."""
