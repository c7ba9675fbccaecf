"""A line of words read as amounts with units: a bounded grammar that prefers asking to guessing.

The line is turned into a skeleton in which every amount stands as `#`; how amounts belong together, and how sure the
person is, is then read from the words around the marks.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from fractions import Fraction

from selfcheck.domain.amounts import Amount, with_smaller_parts
from selfcheck.domain.number_words import (
    AND,
    ARTICLES,
    Number,
    Token,
    number_at,
    part_at,
    plain,
    text_at,
    thousands_at,
    tokens,
)
from selfcheck.domain.unit_words import IMPERIAL, unit_at
from selfcheck.domain.units import BY_WORD, GALLON, IMPERIAL_GALLON, LITRE, Dimension, to_si


@dataclass(frozen=True, slots=True)
class Line:
    """What a line holds: its amounts, and its words with `#` for each of them. `broken`: no line of plain words and
    numbers.
    """

    amounts: tuple[Amount, ...]
    skeleton: str
    broken: bool = False


_BETWEEN_TWO = frozenset({"-", "to", "or", "and", "a", "o", "y"})
#: what a tank holds thousands of
_BY_THE_THOUSAND = frozenset({GALLON, IMPERIAL_GALLON, LITRE})
_SIGNS = frozenset("-/,.;:()?!'\"=~≈±+&#%$°<>") | {"+/-", "+-"}


def read_line(text: str, dimension: Dimension) -> Line:
    """Find every amount of a line. `dimension` only settles what `ft3` means."""
    line = plain(text)
    if line is None:
        return Line((), "", broken=True)
    line = re.sub(r"(?<=[a-z])(?<!\b[lio])\.(?=\d)", " ", line)  # `1ft.2in.`, but no letter typed for a digit, `l.5`
    line = re.sub(r"(?:(?<=\d) ?-? ?|-)ish\b(.*)", r"\1 ish", line)
    line = re.sub(r"(?<=\w) or so (?=[a-z])(.*)", r" \1 or so", line)
    if line.count('"') == 2 and line.startswith('"') and line.endswith('"'):
        line = line.strip('"')
    parts = tokens(line)
    found: list[Amount] = []
    words: list[str] = []
    broken = False
    at = 0
    while at < len(parts):
        token = parts[at]
        read = _amount_at(parts, at, dimension)
        if read is None:
            broken = broken or token.kind == "number" or (token.kind == "sign" and token.text not in _SIGNS)
            words.append(token.text)
            at += 1
            continue
        if token.kind == "number" and token.glued and words and words[-1] not in _SIGNS and words[-1] != "#":
            broken = True  # letters run into the digits, as in `x8`, `l4` or `h2s`
        if token.glued and words and words[-1] == "-" and not (len(words) > 1 and parts[at - 1].glued):
            words[-1] = "-" if len(words) > 1 and words[-2] == "#" else "minus"
        if words == ["-"]:
            words = ["minus"]
        found.append(read[0])
        words.append("#")
        at = read[1]
        if at < len(parts) and parts[at].glued and parts[at].kind == "word" and parts[at].text not in ("ish", "s", "x"):
            broken = broken or parts[at - 1].kind == "number"
    if not IMPERIAL.isdisjoint(words) and any(amount.unit in (GALLON, IMPERIAL_GALLON) for amount in found):
        found = [_imperial(amount) if amount.unit is GALLON else amount for amount in found]
        words = [word for word in words if word not in IMPERIAL]
    return Line(tuple(found), " ".join(words), broken)


def _imperial(amount: Amount) -> Amount:
    """So many gallons as imperial ones, where the line says so apart from them: `1000 gal (UK)`."""
    larger = IMPERIAL_GALLON.size / GALLON.size
    other = None if amount.other is None else amount.other * larger
    low, high = amount.low * larger, amount.high * larger
    return replace(amount, low=low, high=high, other=other, unit=IMPERIAL_GALLON, finest=IMPERIAL_GALLON)


def _amount_at(line: list[Token], at: int, dimension: Dimension) -> tuple[Amount, int] | None:
    """An amount from token `at` on: a number with its unit, and the smaller parts that follow it."""
    number = _thousands_at(line, at, dimension) or number_at(line, at)
    if number is None:
        word = text_at(line, at)
        unit = unit_at(line, at + 1, dimension) if word in ARTICLES or word in ("one", "1") else None
        if unit is None and word in ("foot", "inch", "yard", "pie", "pulgada", "metro", "meter", "metre"):
            half = part_at(line, at + 2) if text_at(line, at + 1) in AND else None
            unit = (BY_WORD[word], at + 1) if half else None
        if unit is None:
            return None
        value, other, loose, end = Fraction(1), None, False, at + 1
    else:
        value, other, loose = number[0].value, number[0].other, number[0].loose
        end = number[1]
        skip = end
        for filler in (("of", "de"), ("a", "an", "one", "un", "una", "the")):
            if text_at(line, skip) in filler:
                skip += 1
        unit = unit_at(line, end, dimension) or (unit_at(line, skip, dimension) if skip > end else None)
        if (
            number[0].value >= 1
            and text_at(line, end) in ("k", "thousand", "grand", "mil")
            and (unit is None or unit[0].symbol == "mm")
        ):
            value, other, end = value * 1000, None, end + 1
            unit = unit_at(line, end, dimension)
        if unit is None:
            if number[0].comma and value.denominator not in (2, 4, 8):
                other = None
            return Amount(value, value, None, other=other, loose=loose), end
    end = unit[1]
    doubtful = False
    if number is not None and number[0].comma and unit[0].system == "us" and value.denominator not in (2, 4, 8):
        doubtful = True  # `6,8 in` may be two readings
    amount = Amount(
        to_si(value, unit[0]),
        to_si(value, unit[0]),
        unit[0],
        unit[0],
        to_si(other, unit[0]) if other is not None else None,
        loose,
        doubtful,
    )
    return with_smaller_parts(line, end, amount, dimension)


def _thousands_at(line: list[Token], at: int, dimension: Dimension) -> tuple[Number, int] | None:
    """Thousands set apart ahead of gallons or litres, also as the lower end of a range: `1.000-1.200 L`."""
    number = thousands_at(line, at) if dimension == "volume" else None
    if number is None:
        return None
    upper = thousands_at(line, number[1] + 1) if text_at(line, number[1]) in _BETWEEN_TWO else None
    unit = unit_at(line, (upper or number)[1], dimension)
    if unit is None or unit[0] not in _BY_THE_THOUSAND or any(token.text == "tanks" for token in line[unit[1] :]):
        return None
    return number
