"""The words of the sheet, the page, the note, the calendar and the tables: as plain as those of the conversation."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator

import pytest
import textstat

from tests.content.texts import WORDS, sentences, word_count

FILES = ("sheet_page", "report_page", "call_note", "calendar", "table", "take_in")
FORBIDDEN = re.compile(r"!|\b(invalid|please|sorry|oops|error|easy|simply|obviously|user)\b", re.IGNORECASE)


def inside(value: object, place: str) -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield place, value
    elif isinstance(value, list):
        for number, one in enumerate(value):
            yield from inside(one, f"{place}.{number}")
    elif isinstance(value, dict):
        for key, one in value.items():
            yield from inside(one, f"{place}.{key}")


def texts() -> list[tuple[str, str]]:
    found = []
    for name in FILES:
        tables = tomllib.loads((WORDS / f"{name}.toml").read_text("utf-8"))
        tables.pop("heads", None)  # what people write, not what they read
        found += list(inside(tables, name))
    return found


def test_sentences_are_short_and_words_are_plain() -> None:
    wrong = [place for place, text in texts() if FORBIDDEN.search(text)]
    long = [place for place, text in texts() for one in sentences(text) if word_count(one) > 20]
    shouting = [
        place
        for place, text in texts()
        if re.search(r"\b[A-Z]{2,}\b", text) and text not in ("DANGER",) and "US" not in text
    ]
    assert (wrong, long, shouting) == ([], [], [])


@pytest.mark.parametrize("name", FILES)
def test_a_whole_file_reads_at_grade_six_or_under(name: str) -> None:
    said = " ".join(text if text.endswith(".") else f"{text}." for place, text in texts() if place.startswith(name))
    assert textstat.flesch_kincaid_grade(said) <= 6.0
