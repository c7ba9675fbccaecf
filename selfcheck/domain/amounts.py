"""An amount: a number with its unit, and the smaller parts that belong to it: `1 ft 2`, `a foot and a half`."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from selfcheck.domain.number_words import AND, ARTICLES, Token, number_at, part_at, text_at
from selfcheck.domain.unit_words import unit_at
from selfcheck.domain.units import CENTIMETRE, FOOT, INCH, METRE, MILLIMETRE, YARD, Dimension, Unit, to_si


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


def with_smaller_parts(line: list[Token], at: int, amount: Amount, dimension: Dimension) -> tuple[Amount, int]:
    """Add what belongs to the amount: `1 ft 2`, `1'-2"`, `a foot and a half`, `1 m 20`."""
    whole = amount.unit
    assert whole is not None
    if amount.other is not None or whole.dimension != "length":
        return amount, at
    start = at
    comma = text_at(line, at) == ","
    joined = text_at(line, at) in AND
    if joined or comma or (text_at(line, at) == "-" and whole is FOOT) or text_at(line, at) in ("plus", "+", "con"):
        start = at + 1
        if comma and text_at(line, start) in AND:
            start += 1
    part = part_at(line, start) if start > at and not comma else None
    if part is not None and unit_at(line, part[1], dimension) is None and not _of_a_unit(line, part[1], dimension):
        spoken = line[start].kind == "word" or whole is INCH
        more = to_si(part[0], whole)
        return replace(amount, low=amount.low + more, high=amount.high + more, doubtful=not spoken), part[1]
    if amount.low.denominator and (amount.low / whole.size).denominator != 1:
        return amount, at
    number = number_at(line, start)
    if number is None and text_at(line, start) in ARTICLES:
        unit = unit_at(line, start + 1, dimension)
        value, end = Fraction(1), start + 1
    elif number is not None:
        value, end = number[0].value, number[1]
        unit = unit_at(line, end, dimension)
        if unit is None and _of_a_unit(line, end, dimension):
            end = end + 1 if text_at(line, end + 1) not in ARTICLES else end + 2
            unit = unit_at(line, end, dimension)
    else:
        return amount, at
    if unit is not None:
        grown = _with_named_part(amount, value, unit[0], of_an_inch=value < 1 and start > at and not comma)
        if grown is None:
            return amount, at
        if grown.unit is not whole:
            return with_smaller_parts(line, unit[1], grown, dimension)
        return grown, unit[1]
    if comma or text_at(line, end) in ("/", "-", "to", "or", "%", "k", "people", "years", "gallons"):
        return amount, at
    grown = _with_bare_part(amount, value)
    return (amount, at) if grown is None else (grown, end)


def _with_named_part(amount: Amount, value: Fraction, unit: Unit, *, of_an_inch: bool) -> Amount | None:
    """The amount with so many of a smaller unit; None for another length: `a foot and 16 inches`.

    `of_an_inch`: a part of an inch may follow inches.
    """
    whole = amount.unit
    assert whole is not None
    smaller = {FOOT: (INCH,), YARD: (FOOT, INCH), METRE: (CENTIMETRE,), CENTIMETRE: (MILLIMETRE,)}.get(whole, ())
    more = to_si(value, unit)
    if more >= whole.size or not (unit in smaller or (whole is INCH and unit is INCH and of_an_inch)):
        return None
    grown = replace(amount, low=amount.low + more, high=amount.high + more, finest=unit)
    return replace(grown, unit=FOOT) if whole is YARD and unit is FOOT else grown


def _with_bare_part(amount: Amount, value: Fraction) -> Amount | None:
    """The amount with a number that names no unit: inches behind feet, centimetres behind a metre."""
    if amount.unit is FOOT and 0 <= value < 12 and value.denominator in (1, 2, 4, 8, 16):
        part, sure = INCH, not 0 < value < 1
    elif amount.unit is METRE and value.denominator == 1 and 10 <= value < 100:
        part, sure = CENTIMETRE, True
    else:
        return None
    more = to_si(value, part)
    grown = replace(amount, low=amount.low + more, high=amount.high + more)
    return replace(grown, finest=part) if sure else replace(grown, doubtful=True)


def _of_a_unit(line: list[Token], at: int, dimension: Dimension) -> bool:
    """Whether `of an inch` follows."""
    if text_at(line, at) not in ("of", "de"):
        return False
    return (
        unit_at(
            line, at + 2 if text_at(line, at + 1) in ARTICLES or text_at(line, at + 1) == "one" else at + 1, dimension
        )
        is not None
    )
