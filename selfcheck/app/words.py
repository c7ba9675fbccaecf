"""The words of the face itself, from the content file `words/screen.toml`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from selfcheck.content_words import filled
from selfcheck.errors import ContentProblem
from selfcheck.progress import Progress

FILE = "words/screen.toml"


class FaceWords:
    """Phrases by name, and the words of the tank's picture in `picture`."""

    def __init__(self, tables: Mapping[str, Any]) -> None:
        self._phrases: Mapping[str, Any] = tables.get("screen", {})
        self.picture: Mapping[str, str] = {
            name: word for name, word in tables.get("picture", {}).items() if isinstance(word, str)
        }

    def __call__(self, name: str, **values: str) -> str:
        """One phrase with its {places} filled in. ContentProblem when the file does not have it."""
        phrase = self._phrases.get(name)
        if not isinstance(phrase, str):
            raise ContentProblem(FILE, "screen", name, "these words are missing.", "Add that line and start again.")
        return filled(phrase, values)


def waiting(said: str, progress: Progress, words: FaceWords) -> str:
    """What is said to whoever waits, with how far it has come where that is told."""
    if not progress.of:
        return said
    return f"{said} {words('so_far', done=f'{progress.done:,}', of=f'{progress.of:,}')}"
