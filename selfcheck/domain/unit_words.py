"""Units as people type them: the unit that is named at one token of a line."""

from __future__ import annotations

from selfcheck.domain.number_words import Token, text_at
from selfcheck.domain.units import CUBED, GALLON, IMPERIAL_GALLON, METRE, Dimension, Unit, unit_of
from selfcheck.text import words

#: a gallon with one of these beside it is the imperial one
IMPERIAL = words("imperial imp uk british")
_FULL_MEASURE = words("good full whole solid us")
_CUBIC = words("cubic cu cubico cubicos")
_CUBED = words("cubed cubico cubicos cubes")
_FOLLOWS_A_PLACE = words(
    "the a an my our this that there it his her their which total all each both front back general"
)


def unit_at(line: list[Token], at: int, dimension: Dimension) -> tuple[Unit, int] | None:
    """The unit named at token `at`, and the place after it. `dimension` only settles what `ft3` means."""
    start = at
    if text_at(line, at) == "-" and line[at].glued and at + 1 < len(line) and line[at + 1].kind == "word":
        at += 1
    if text_at(line, at) in _FULL_MEASURE:
        at += 1
    word = text_at(line, at)
    if word in IMPERIAL:
        at = _past_point(line, at + 1)
        return (IMPERIAL_GALLON, at + 1) if unit_of(text_at(line, at)) is GALLON else None
    if word in _CUBIC:
        at = _past_point(line, at + 1)
        base = unit_of(text_at(line, at)) if at < len(line) else None
        return (CUBED[base], at + 1) if base in CUBED else None
    if at >= len(line) or (line[at].kind == "sign" and word not in ("'", '"')):
        return None
    if word in ("sq", "square") or (word == "in" and at > start and line[start].text == "-" and not line[at].glued):
        return None
    unit = unit_of(word)
    if unit is None:
        return None
    after = text_at(line, at + 1)
    if after in _CUBED:
        return (CUBED[unit], at + 2) if unit in CUBED else None
    if after == "^" and text_at(line, at + 2) == "3":
        return (CUBED[unit], at + 3) if unit in CUBED else None
    if after == "3" and line[at + 1].glued and unit in CUBED and (dimension == "volume" or unit is METRE):
        return CUBED[unit], at + 2
    if after in ("2", "²") and line[at + 1].glued and unit is METRE:
        return None
    if word == "in" and (after in _FOLLOWS_A_PLACE or _is_year(after)) and not _of_a_time(line, at + 1):
        return None
    if word in ("a", "an") or (word == "m" and after == "'"):
        return None
    if after == "." and line[at + 1].glued and unit.dimension == "length" and len(word) <= 3:
        return unit, at + 2
    return unit, at + 1


def _past_point(line: list[Token], at: int) -> int:
    """The place after the point of a word cut short: `imp.`, `cu.`."""
    return at + 1 if text_at(line, at) == "." else at


def _of_a_time(line: list[Token], at: int) -> bool:
    """Whether `both times`, `this time`, `the first time` follow, so that the `in` before is a unit."""
    return any(text_at(line, place) in ("time", "times") for place in (at + 1, at + 2))


def _is_year(word: str) -> bool:
    return len(word) == 4 and word.isdigit() and word[:2] in ("19", "20")
