"""How the amounts of a line belong together: a stated ±, a range, and one length said twice."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

from selfcheck.domain.amount_grammar import Line
from selfcheck.domain.amounts import Amount
from selfcheck.domain.units import (
    CENTIMETRE,
    CUBIC_METRE,
    FOOT,
    GALLON,
    INCH,
    METRE,
    Unit,
    to_si,
)

_RANGE = re.compile(
    r"(?:(?:some ?where )?(?:between|btwn|betwen|from|entre|de|desde|del) )?# (-|to|or|thru|through|"
    r"till|until|a|o|hasta|and|y|&) #"
)


#: "up from 6 in to 8 in" is a change, and no range
_CHANGED = re.compile(
    r"\b(?:up|down|went|gone|goes|grew|grown|rose|risen|increased|decreased|changed|dropped|fell|moved|shrank) $"
)


_BETWEEN = re.compile(r"(?:between|btwn|betwen|entre) # (?:and|y|&|-|to|or) #")


_PLUS_MINUS = re.compile(
    r"# [(,]? ?(?:±|\+/-|\+-|\+ / -|plus or minus|plus/minus|plus minus|give or take|mas o menos) # "
    r"?\)?"
)


def link(line: Line) -> Line:
    """Fold what belongs together: a stated ±, a range, and the same length said in two units."""
    line = _fold(line, _PLUS_MINUS, _plus_minus)
    line = _same_twice(line)
    line = _fold(line, _BETWEEN, _range)
    line = _fold(line, _RANGE, _range)
    return _same_twice(line)


def _fold(line: Line, pattern: re.Pattern[str], join: object) -> Line:
    match = pattern.search(line.skeleton)
    if match is None or not callable(join):
        return line
    if "and" in match.group().split() and not match.group().startswith(("between", "btwn", "betwen", "entre", "from")):
        return line
    if " y " in match.group() and not match.group().startswith(("entre", "de")):
        return line
    if pattern is _RANGE and _CHANGED.search(line.skeleton[: match.start()]):
        return line
    first = line.skeleton[: match.start()].count("#")
    joined = join(line.amounts[first], line.amounts[first + 1], match.group())
    if joined is None:
        return line
    amounts = (*line.amounts[:first], joined, *line.amounts[first + 2 :])
    skeleton = f"{line.skeleton[: match.start()]}#{line.skeleton[match.end() :]}"
    return Line(amounts, skeleton, line.broken)


def _alike(first: Amount, second: Amount) -> tuple[Amount, Amount] | None:
    """Both in the same measure: a bare number takes the unit of its neighbour."""
    if first.unit is None and second.unit is not None:
        if second.finest is not second.unit:
            return None
        first = _taking(first, second.unit, second.unit)
    elif second.unit is None and first.unit is not None:
        finest = first.finest or first.unit
        if finest is not first.unit:
            return None
        second = _taking(second, finest, first.unit)
    if first.unit and second.unit and first.unit.dimension != second.unit.dimension:
        return None
    return first, second


def _taking(bare: Amount, unit: Unit, whole: Unit) -> Amount:
    """A bare number in the unit of its neighbour."""
    return replace(bare, low=to_si(bare.low, unit), high=to_si(bare.high, unit), unit=whole, finest=unit)


def _plus_minus(first: Amount, second: Amount, _words: str) -> Amount | None:
    pair = _alike(first, second)
    if pair is None or pair[0].low != pair[0].high:
        return None
    return replace(pair[0], spread=pair[1].middle)


def _range(first: Amount, second: Amount, words: str) -> Amount | None:
    if first.low != first.high or second.low != second.high or first.other is not None or second.other is not None:
        return None
    if first.unit is None and second.unit is not None and second.finest is not second.unit and second.unit is FOOT:
        return None
    pair = _alike(first, second)
    if pair is None:
        return None
    low, high = sorted((pair[0].low, pair[1].low))
    if pair[0].low > pair[1].low and ("-" in words or " a " in words):
        return None
    if low == 0 == high or (
        " or " in words and low > 0 and high > 2 * low and pair[0].unit is not None and high - low > Fraction("0.08")
    ):
        return None
    finest = pair[1].finest or pair[0].finest
    return Amount(
        low,
        high,
        pair[0].unit or pair[1].unit,
        finest,
        None,
        first.loose or second.loose,
        first.doubtful or second.doubtful,
    )


def _same_twice(line: Line) -> Line:
    """`8½ in (21.6 cm)` is one length said twice; so is the same figure typed again."""
    if len(line.amounts) < 2:
        return line
    first = line.amounts[0]
    for second in line.amounts[1:]:
        if first.unit is None or second.unit is None or first.unit.dimension != second.unit.dimension:
            return line
        slack = _rounding(first) + _rounding(second) if first.unit.system != second.unit.system else Fraction(0)
        if abs(first.low - second.low) > slack or abs(first.high - second.high) > slack:
            return line
    head, _, tail = line.skeleton.partition("#")
    return Line((first,), f"{head}# {tail.replace('#', '')}".strip(), line.broken)


def _rounding(amount: Amount) -> Fraction:
    """Half a step of the unit as people round: a quarter inch, half a centimetre, a hundredth of a cubic metre."""
    assert amount.unit is not None
    if amount.unit.dimension == "volume":
        half_steps = {CUBIC_METRE: "0.005", GALLON: "0.0019"}
        return max(amount.high / 100, Fraction(half_steps.get(amount.unit, "0.0005"))) + Fraction("0.0001")
    finest = amount.finest or amount.unit
    half_steps = {INCH: "0.0032", FOOT: "0.015", METRE: "0.005", CENTIMETRE: "0.005"}
    return Fraction(half_steps.get(finest, "0.0026"))
