"""The words inside pictures: one content file holds them all, and a picture is given its own table of it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from selfcheck.content_words import filled
from selfcheck.domain.showing import MONTHS
from selfcheck.errors import ContentProblem
from selfcheck.text import clean

Words = Mapping[str, str]
FILE = "words/pictures.toml"


def say(words: Words, name: str, /, **values: str) -> str:
    """One phrase with its {places} filled in. ContentProblem when the table does not have it."""
    phrase = words.get(name)
    if not isinstance(phrase, str):
        raise ContentProblem(FILE, name, "", "these words are missing.", "Add that line and start again.")
    return filled(phrase, values)


def one_line(text: str, cap: int = 200) -> str:
    """A household's own words, made harmless, on one line."""
    return " ".join(clean(text, cap).split())


def month(day: date) -> str:
    """`May 2028`: as near as a forecast or a mark on a time line can be read."""
    return f"{MONTHS[day.month - 1]} {day.year}"
