"""A line of words read as amounts with units: a bounded grammar that prefers asking to guessing.

The line is turned into a skeleton in which every amount stands as `#`; how amounts belong together, and how sure the
person is, is then read from the words around the marks.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from fractions import Fraction

from selfcheck.domain.number_words import AND, ARTICLES, Token, number_at, part_at, plain, tokens
from selfcheck.domain.units import (
    BY_WORD,
    CENTIMETRE,
    CUBED,
    FOOT,
    IMPERIAL_GALLON,
    INCH,
    METRE,
    Dimension,
    Unit,
    to_si,
    unit_of,
)
from selfcheck.text import words


@dataclass(frozen=True, slots=True)
class Amount:
    """A number with or without a unit. `low` and `high` differ for a range; both in SI when there is a unit.

    `other`: what the digits may also mean. `finest`: the unit of its last part. `spread`: a stated ±, in the same
    measure.
    """

    low: Fraction
    high: Fraction
    unit: Unit | None
    finest: Unit | None = None
    other: Fraction | None = None
    loose: bool = False
    doubtful: bool = False
    spread: Fraction | None = None

    @property
    def middle(self) -> Fraction:
        """The middle of the range."""
        return (self.low + self.high) / 2


@dataclass(frozen=True, slots=True)
class Line:
    """What a line holds: its amounts, and its words with `#` for each of them. `broken`: no line of plain words and
    numbers.
    """

    amounts: tuple[Amount, ...]
    skeleton: str
    broken: bool = False


_FOLLOWS_A_PLACE = words(
    "the a an my our this that there it his her their which total all each both front back general"
)
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
    return Line(tuple(found), " ".join(words), broken)


def _text(line: list[Token], at: int) -> str:
    return line[at].text if at < len(line) else ""


def unit_at(line: list[Token], at: int, dimension: Dimension) -> tuple[Unit, int] | None:
    """The unit named at token `at`, and the place after it."""
    start = at
    if _text(line, at) == "-" and line[at].glued and at + 1 < len(line) and line[at + 1].kind == "word":
        at += 1
    if _text(line, at) in ("good", "full", "whole", "solid", "us", "u.s"):
        at += 1
    word = _text(line, at)
    if word in ("imperial", "imp", "uk") and _text(line, at + 1) in BY_WORD:
        return (IMPERIAL_GALLON, at + 2) if BY_WORD[_text(line, at + 1)].symbol == "gal" else None
    if word in ("cubic", "cu", "cubico", "cubicos"):
        at = at + 2 if _text(line, at + 1) == "." else at + 1
        base = unit_of(_text(line, at)) if at < len(line) else None
        return (CUBED[base], at + 1) if base in CUBED else None
    if at >= len(line) or (line[at].kind == "sign" and word not in ("'", '"')):
        return None
    if word in ("sq", "square") or (word == "in" and at > start and line[start].text == "-" and not line[at].glued):
        return None
    unit = unit_of(word)
    if unit is None:
        return None
    after = _text(line, at + 1)
    if after in ("cubed", "cubico", "cubicos", "cubes"):
        return (CUBED[unit], at + 2) if unit in CUBED else None
    if after == "^" and _text(line, at + 2) == "3":
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


def _of_a_time(line: list[Token], at: int) -> bool:
    """Whether `both times`, `this time`, `the first time` follow, so that the `in` before is a unit."""
    return any(_text(line, place) in ("time", "times") for place in (at + 1, at + 2))


def _is_year(word: str) -> bool:
    return len(word) == 4 and word.isdigit() and word[:2] in ("19", "20")


def _amount_at(line: list[Token], at: int, dimension: Dimension) -> tuple[Amount, int] | None:
    """An amount from token `at` on: a number with its unit, and the smaller parts that follow it."""
    number = number_at(line, at)
    if number is None:
        word = _text(line, at)
        unit = unit_at(line, at + 1, dimension) if word in ARTICLES or word in ("one", "1") else None
        if unit is None and word in ("foot", "inch", "yard", "pie", "pulgada", "metro", "meter", "metre"):
            half = part_at(line, at + 2) if _text(line, at + 1) in AND else None
            unit = (BY_WORD[word], at + 1) if half else None
        if unit is None:
            return None
        value, other, loose, end = Fraction(1), None, False, at + 1
    else:
        value, other, loose = number[0].value, number[0].other, number[0].loose
        end = number[1]
        skip = end
        for filler in (("of", "de"), ("a", "an", "one", "un", "una", "the")):
            if _text(line, skip) in filler:
                skip += 1
        unit = unit_at(line, end, dimension) or (unit_at(line, skip, dimension) if skip > end else None)
        if (
            number[0].value >= 1
            and _text(line, end) in ("k", "thousand", "grand", "mil")
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
    return _with_smaller_parts(line, end, amount, dimension)


def _with_smaller_parts(line: list[Token], at: int, amount: Amount, dimension: Dimension) -> tuple[Amount, int]:
    """Add what belongs to the amount: `1 ft 2`, `1'-2"`, `a foot and a half`, `1 m 20`."""
    whole = amount.unit
    assert whole is not None
    if amount.other is not None or whole.dimension != "length":
        return amount, at
    start = at
    comma = _text(line, at) == ","
    joined = _text(line, at) in AND
    if joined or comma or (_text(line, at) == "-" and whole is FOOT) or _text(line, at) in ("plus", "+", "con"):
        start = at + 1
        if comma and _text(line, start) in AND:
            start += 1
    part = part_at(line, start) if start > at and not comma else None
    if part is not None and unit_at(line, part[1], dimension) is None and not _of_a_unit(line, part[1], dimension):
        spoken = line[start].kind == "word" or whole is INCH
        more = to_si(part[0], whole)
        return replace(amount, low=amount.low + more, high=amount.high + more, doubtful=not spoken), part[1]
    if amount.low.denominator and (amount.low / whole.size).denominator != 1:
        return amount, at
    number = number_at(line, start)
    if number is None and _text(line, start) in ARTICLES:
        unit = unit_at(line, start + 1, dimension)
        value, end = Fraction(1), start + 1
    elif number is not None:
        value, end = number[0].value, number[1]
        unit = unit_at(line, end, dimension)
        if unit is None and _of_a_unit(line, end, dimension):
            end = end + 1 if _text(line, end + 1) not in ARTICLES else end + 2
            unit = unit_at(line, end, dimension)
    else:
        return amount, at
    if unit is not None:
        smaller = {FOOT: (INCH,), METRE: (CENTIMETRE,), CENTIMETRE: (BY_WORD["mm"],)}.get(whole, ())
        part_of_yard = whole.symbol == "yd" and unit[0] in (FOOT, INCH)
        part_of_inch = whole is INCH and unit[0] is INCH and value < 1 and start > at and not comma
        if unit[0] not in smaller and not part_of_yard and not part_of_inch:
            return amount, at
        more = to_si(value, unit[0])
        if more >= whole.size:
            return amount, at  # `a foot and 16 inches` are two lengths
        grown = replace(amount, low=amount.low + more, high=amount.high + more, finest=unit[0])
        if whole.symbol == "yd" and unit[0] is FOOT:
            return _with_smaller_parts(line, unit[1], replace(grown, unit=FOOT), dimension)
        return grown, unit[1]
    if comma or _text(line, end) in ("/", "-", "to", "or", "%", "k", "people", "years", "gallons"):
        return amount, at
    if whole is FOOT and 0 <= value < 12 and value.denominator in (1, 2, 4, 8, 16):
        more = to_si(value, INCH)
        grown = replace(amount, low=amount.low + more, high=amount.high + more)
        return replace(grown, doubtful=True) if 0 < value < 1 else replace(grown, finest=INCH), end
    if whole is METRE and value.denominator == 1 and 10 <= value < 100:
        more = to_si(value, CENTIMETRE)
        return replace(amount, low=amount.low + more, high=amount.high + more, finest=CENTIMETRE), end
    return amount, at


def _of_a_unit(line: list[Token], at: int, dimension: Dimension) -> bool:
    """Whether `of an inch` follows."""
    if _text(line, at) not in ("of", "de"):
        return False
    return (
        unit_at(line, at + 2 if _text(line, at + 1) in ARTICLES or _text(line, at + 1) == "one" else at + 1, dimension)
        is not None
    )
