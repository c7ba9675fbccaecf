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
    line = re.sub(r"(?<=[a-z])\.(?=\d)", " ", line)  # `1ft.2in.`
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
        if (
            token.kind == "number"
            and token.glued
            and words
            and words[-1] not in _SIGNS
            and not _ends_in_unit(words[-1])
        ):
            broken = True  # letters run into the digits, as in `x8` or `h2s`
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


def _ends_in_unit(word: str) -> bool:
    return word == "#" or word in BY_WORD


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
    """Half a step of the unit as people round: a quarter inch, half a centimetre, half a per cent of a volume."""
    assert amount.unit is not None
    if amount.unit.dimension == "volume":
        return amount.high / 100 + Fraction("0.0005")
    finest = amount.finest or amount.unit
    return {INCH: Fraction("0.0032"), FOOT: Fraction("0.015"), METRE: Fraction("0.005")}.get(finest, Fraction("0.0026"))
