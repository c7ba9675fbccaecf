"""Reading what people type for lengths, volumes, dates, counts and yes or no; and showing quantities back.

Nothing is guessed: where a line may mean two things the reading says `ask` and names both. Our own grammar finds the
numbers and units; pint converts them, and never sees the text.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from selfcheck.domain.amount_grammar import Amount, Line, read_line
from selfcheck.domain.amount_links import link
from selfcheck.domain.counts import CountReading, NumberReading, read_count, read_number
from selfcheck.domain.dates import DateReading, read_date
from selfcheck.domain.hedges import Hedge, hedge, says_none, says_unknown
from selfcheck.domain.showing import show_date, show_day, show_length, show_length_error, show_volume
from selfcheck.domain.units import (
    CENTIMETRE,
    CUBIC_METRE,
    FOOT,
    GALLON,
    INCH,
    LITRE,
    METRE,
    MILLIMETRE,
    Dimension,
    System,
    Unit,
    to_si,
)
from selfcheck.domain.yes_no import read_yes_no

Status = Literal["value", "ask", "none", "unclear"]
#: one standard deviation of reading a mark on a pole or tape: a quarter inch (our choice)
MARK_ERROR = 0.25 * 0.0254
#: "about": half an inch or a twentieth, whichever is more (our choice)
ABOUT_ERROR, ABOUT_SHARE = 0.5 * 0.0254, 0.05
#: no length in this job is longer (our choice)
LONGEST_M = 30.0
#: no tank in this job holds more, or less when its size is told (our choice)
LARGEST_M3, SMALLEST_M3 = 200.0, 0.4
#: a volume as told: within 2 %; "about": within 10 % (our choice)
VOLUME_SHARE, ABOUT_VOLUME_SHARE = 0.02, 0.10

_THOUSANDS_BY_POINT = re.compile(r"(?<![\d.,])([1-9]\d{0,2})\.(\d{3})(?=\s*(?:l|L|lit|Lit|gal|Gal))")
_US_GUESSES = (INCH, CENTIMETRE, FOOT, METRE, MILLIMETRE)
_METRIC_GUESSES = (CENTIMETRE, INCH, METRE, MILLIMETRE)


@dataclass(frozen=True, slots=True)
class LengthReading:
    """What a line says of a length. `metres` and `error_m` (one standard deviation) only with status `value`.

    `meanings`: for `ask`, each possible meaning as (label, metres), the household's own unit first;
    `errors_m` beside it.
    """

    status: Status
    metres: float | None = None
    error_m: float | None = None
    said: str = ""
    meanings: tuple[tuple[str, float], ...] = ()
    errors_m: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class VolumeReading:
    """What a line says of a volume. `cubic_metres` and `error_m3` (one standard deviation) only with status `value`."""

    status: Status
    cubic_metres: float | None = None
    error_m3: float | None = None
    said: str = ""
    meanings: tuple[tuple[str, float], ...] = ()


def read_length(
    text: str, units: System = "us", least: float | None = None, most: float | None = None
) -> LengthReading:
    """Read a length as people type it; `units` is the household's system, `least` and `most` (m) the question's range.

    Status `value`; `ask` (no unit, two lengths, a length of another time, "over 8 in"); `none` (nothing typed, or not
    known); `unclear` (no length, negative, over 30 m, another quantity). "None" and "no scum" are the value 0. A
    bare number is
    taken only where the range leaves one unit. A range is its middle with at least half its width as error.
    """
    line = link(read_line(text, "length"))
    said = text.strip()[:80]
    if not line.amounts:
        return LengthReading(*_empty(line), said=said)
    mood = hedge(line.skeleton)
    if line.broken or mood.stops == "unclear":
        return LengthReading("unclear", said=said)
    rightful = [amount for amount in line.amounts if amount.unit is None or amount.unit.dimension == "length"]
    if len(rightful) < len(line.amounts) or any(
        min(amount.high, amount.other or amount.high) > LONGEST_M for amount in rightful if amount.unit
    ):
        return LengthReading("unclear", said=said)
    meanings: list[tuple[str, float, float]] = []
    for amount in rightful:
        for meant in _lengths(amount, units, least, most, alone=len(rightful) == 1):
            metres, error = _length_of(meant, mood)
            if 0 <= metres <= LONGEST_M and all(abs(metres - other) > 1e-9 for _, other, _ in meanings):
                meanings.append((_label(meant), metres, error))
    if not meanings or (mood.loose_words and any(amount.unit is None for amount in rightful)):
        return LengthReading("unclear", said=said)
    certain = len(rightful) == 1 and not rightful[0].doubtful and not mood.stops
    if certain and len(meanings) == 1 and (rightful[0].unit or _settled(rightful[0], meanings[0][1], least, most)):
        return LengthReading("value", meanings[0][1], meanings[0][2], said)
    listed = tuple((label, metres) for label, metres, _ in meanings[:4])
    return LengthReading("ask", said=said, meanings=listed, errors_m=tuple(error for _, _, error in meanings[:4]))


def read_volume(
    text: str, units: System = "us", least: float | None = None, most: float | None = None
) -> VolumeReading:
    """Read a volume as people type it: `1000 gal`, `3.8 m3`, `1k gallons`; `least` and `most` in m³.

    A bare number is taken when only one of gallons, litres and cubic metres makes a tank that stands at a house
    (0.8 to 40 m³
    when no range is given), and asked otherwise. Statuses as for lengths.
    """
    line = link(read_line(_THOUSANDS_BY_POINT.sub(r"\1\2", text), "volume"))
    said = text.strip()[:80]
    if not line.amounts:
        status, value, _ = _empty(line)
        return VolumeReading(status, value, said=said)
    mood = hedge(line.skeleton)
    if line.broken or mood.stops == "unclear":
        return VolumeReading("unclear", said=said)
    if any(amount.unit is not None and amount.unit.dimension != "volume" for amount in line.amounts):
        return VolumeReading("unclear", said=said)
    meanings: list[tuple[str, float, float]] = []
    for amount in line.amounts:
        for meant in _volumes(amount, units, least, most):
            low, high = float(meant.low), float(meant.high)
            middle = (low + high) / 2 * (1 + mood.shift_share)
            share = ABOUT_VOLUME_SHARE if mood.about or meant.loose else VOLUME_SHARE
            if 0 <= middle <= LARGEST_M3:
                stated = 0.0 if meant.spread is None else float(meant.spread)
                meanings.append((_label(meant), middle, max(middle * share, (high - low) / 2, stated)))
    if not meanings or (mood.loose_words and any(amount.unit is None for amount in line.amounts)):
        return VolumeReading("unclear", said=said)
    if len(meanings) == 1 and len(line.amounts) == 1 and not mood.stops and not line.amounts[0].doubtful:
        return VolumeReading("value", meanings[0][1], meanings[0][2], said)
    return VolumeReading("ask", said=said, meanings=tuple((label, value) for label, value, _ in meanings[:4]))


def _empty(line: Line) -> tuple[Status, float | None, float | None]:
    """A line without any amount: nothing there is zero; not knowing and an empty line are `none`."""
    if line.broken:
        return "unclear", None, None
    if says_none(line.skeleton):
        return "value", 0.0, MARK_ERROR
    if not line.skeleton.strip(" .") or says_unknown(line.skeleton):
        return "none", None, None
    return "unclear", None, None


def _settled(amount: Amount, metres: float, least: float | None, most: float | None) -> bool:
    """Whether a bare number is settled: nothing, or within a range that the question gives."""
    low, high = (0.0 if least is None else least), (math.inf if most is None else most)
    return amount.high == 0 or (not (least is None and most is None) and low * 0.999 <= metres <= high * 1.001)


def _lengths(amount: Amount, units: System, least: float | None, most: float | None, alone: bool) -> Sequence[Amount]:
    """The lengths an amount may stand for; with no unit, one for each unit that fits the range."""
    if amount.unit is not None:
        if amount.other is None:
            return [amount]
        whole, small = amount, replace(amount, low=amount.other, high=amount.other)
        if amount.unit.system == "us" or amount.unit is MILLIMETRE:
            return [
                one
                for one in (whole, small)
                if (one is whole and one.high <= 12) or (one is small and amount.unit is not MILLIMETRE)
            ]
        return [small] if amount.unit is METRE else [whole, small]
    if amount.high == 0:
        return [replace(amount, unit=INCH if units == "us" else CENTIMETRE)]
    low = least if least is not None else 0.0
    high = most if most is not None else LONGEST_M
    guesses: tuple[Unit, ...] = _US_GUESSES if units == "us" else _METRIC_GUESSES
    if least is None and most is None:
        guesses = guesses[:2]
    value = amount.other if amount.other is not None and units == "metric" else None
    made = [_in_unit(amount, unit) for unit in guesses]
    if value is not None:
        made += [_in_unit(replace(amount, low=value, high=value), unit) for unit in (METRE, CENTIMETRE)]
    fitting = [one for one in made if low * 0.999 <= one.low and one.high <= high * 1.001]
    if len(fitting) > 1:
        fitting = [one for one in fitting if one.unit is not MILLIMETRE]
    return fitting if fitting or not alone else [one for one in made[:2] if one.high <= LONGEST_M]


def _in_unit(amount: Amount, unit: Unit) -> Amount:
    spread = None if amount.spread is None else to_si(amount.spread, unit)
    return replace(
        amount,
        low=to_si(amount.low, unit),
        high=to_si(amount.high, unit),
        unit=unit,
        finest=unit,
        other=None,
        spread=spread,
    )


def _volumes(amount: Amount, units: System, least: float | None, most: float | None) -> Sequence[Amount]:
    if amount.unit is not None:
        made = (
            [amount]
            if amount.other is None
            else [amount, replace(amount, low=amount.other, high=amount.other, other=None)]
        )
        return [one for one in made if one.high >= SMALLEST_M3] or made[:1]
    low = least if least is not None else 0.8
    high = most if most is not None else 40.0
    if amount.high == 0:
        return [replace(amount, unit=GALLON if units == "us" else LITRE)]
    guesses = (GALLON, LITRE, CUBIC_METRE) if units == "us" else (LITRE, CUBIC_METRE, GALLON)
    made = [_in_unit(amount, unit) for unit in guesses]
    fitting = [one for one in made if low <= one.low and one.high <= high]
    own = [one for one in fitting if one.unit is not None and one.unit.system == units]
    if len(own) == 1 and least is None and most is None:
        return own
    return fitting or [one for one in made if one.high <= LARGEST_M3][:2]


def _length_of(amount: Amount, mood: Hedge) -> tuple[float, float]:
    """Middle (m) and standard error (m) of an amount with a unit, with what the words around it add."""
    finest = amount.finest or amount.unit
    middle = float(amount.middle)
    error = max(MARK_ERROR, float(amount.high - amount.low) / 2)
    if mood.below_one:
        return middle / 2, max(MARK_ERROR, middle / 2)
    if mood.shift:
        step = _step(finest, mood)
        middle, error = max(0.0, middle + mood.shift * step), max(error, step)
    if mood.about or amount.loose:
        error = math.hypot(error, max(ABOUT_ERROR, ABOUT_SHARE * middle))
    if amount.spread is not None:
        error = max(float(amount.spread), 1e-4)
    return middle, error


def _step(unit: Unit | None, mood: Hedge) -> float:
    """How far "just under" lies from the figure (our choice): a quarter inch, half an inch from a whole foot, 1 cm
    from a metre.
    """
    if mood.hair:
        return 0.125 * 0.0254
    if unit is FOOT:
        return 0.5 * 0.0254
    if unit is METRE:
        return 0.01
    return 0.005 if unit is CENTIMETRE else 0.001 if unit is MILLIMETRE else 0.25 * 0.0254


_GLYPHS = {Fraction(1, 4): "¼", Fraction(1, 2): "½", Fraction(3, 4): "¾"}


def _label(amount: Amount) -> str:
    """The amount in the unit it was said in: `14 in`, `6–8 cm`, `1½ ft`."""
    unit = amount.unit
    assert unit is not None
    parts = [_figure(value / unit.size) for value in dict.fromkeys((amount.low, amount.high))]
    return f"{'–'.join(parts)} {unit.symbol}"


def _figure(value: Fraction) -> str:
    whole, part = divmod(value, 1)
    if part in _GLYPHS:
        return f"{whole or ''}{_GLYPHS[part]}"
    return re.sub(r"\.?0+$", "", f"{float(value):,.2f}") if part else f"{whole:,}"


__all__ = [
    "MARK_ERROR",
    "CountReading",
    "DateReading",
    "Dimension",
    "LengthReading",
    "NumberReading",
    "VolumeReading",
    "read_count",
    "read_date",
    "read_length",
    "read_number",
    "read_volume",
    "read_yes_no",
    "show_date",
    "show_day",
    "show_length",
    "show_length_error",
    "show_volume",
]
