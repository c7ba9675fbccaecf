"""Hostile text is made harmless in one place."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.text import REPLACEMENT, clean


@pytest.mark.parametrize(
    "bad",
    [
        "\x1b]52;c;aGk=\x07",
        "\x1b[31m",
        "\x00",
        "\x9b31m",
        "\x85",
        "\u202e",
        "\u2066",
        "\u200b",
        "\u200d",
        "\u2060",
        "\ufeff",
        "\u2028",
        "\u2029",
        "\U000e0041",
        "\ud800",
        "\x7f",
        "\u00ad",
        "\ufe0f",
        "\uffff",
        "\u061c",
    ],
)
def test_nothing_that_acts_gets_through(bad: str) -> None:
    cleaned = clean(f"8{bad}in")
    assert cleaned.startswith("8")
    assert cleaned.endswith("in")
    for character in bad:
        if unicodedata.category(character) in ("Cc", "Cf", "Cs", "Zl", "Zp"):
            assert character not in cleaned
    assert REPLACEMENT in cleaned


def test_plain_text_stays() -> None:
    line = "8½ in, el niño: 35 cm – ok?\n\tsecond line 漢字 😀"
    assert clean(line) == line


def test_line_ends_and_composition() -> None:
    assert clean("a\r\nb\rc") == "a\nb\nc"
    assert clean("cafe\u0301") == "café"


def test_length_is_capped() -> None:
    assert len(clean("x" * 100_000)) == 2000
    assert clean("abcdef", cap=3) == "abc"


@given(st.text(st.characters(), max_size=200))
def test_cleaning_twice_changes_nothing_and_leaves_no_control(text: str) -> None:
    once = clean(text)
    assert clean(once) == once
    assert not any(
        unicodedata.category(character) in ("Cc", "Cf", "Cs", "Zl", "Zp") and character not in "\n\t"
        for character in once
    )
    once.encode("utf-8")
