"""The words of the line-by-line face, from the content."""

from __future__ import annotations

from typing import Any

from selfcheck.content_words import filled
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import Place


class Words:
    """Phrases by table and name, with their places filled in."""

    def __init__(self, place: Place, language: str = "en") -> None:
        self._tables: dict[str, Any] = texts(place, "plain", language)

    def __call__(self, table: str, name: str, /, **values: object) -> str:
        """One phrase. ContentProblem when the content does not have it, or nothing fills one of its places."""
        text: str = self._tables[table][name]
        return filled(text, values)
