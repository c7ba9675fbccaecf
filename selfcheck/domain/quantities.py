"""Reading what people type for lengths, volumes, dates, counts and yes or no; and showing quantities back.

Nothing is guessed: where a line may mean two things the reading says `ask` and names both. Our own grammar finds the
numbers and units; pint converts them, and never sees the text.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from selfcheck.domain.amount_grammar import Line, read_line
from selfcheck.domain.amount_links import link
from selfcheck.domain.amounts import Amount
from selfcheck.domain.counts import CountReading, NumberReading, read_count, read_number
from selfcheck.domain.dates import DateReading, read_date
from selfcheck.domain.hedges import hedge, says_none, says_unknown
from selfcheck.domain.meanings import (
    ABOUT_ERROR,
    LARGEST_M3,
    LONGEST_M,
    MARK_ERROR,
    label_of,
    length_of,
    lengths_of,
    volumes_of,
)
from selfcheck.domain.showing import show_date, show_day, show_length, show_length_error, show_volume
from selfcheck.domain.units import (
    Dimension,
    System,
)
from selfcheck.domain.yes_no import read_yes_no

Status = Literal["value", "ask", "none", "unclear"]
#: a volume as told: within 2 %; "about": within 10 % (our choice)
VOLUME_SHARE, ABOUT_VOLUME_SHARE = 0.02, 0.10


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
        for meant in lengths_of(amount, units, least, most, alone=len(rightful) == 1):
            metres, error = length_of(meant, mood)
            if 0 <= metres <= LONGEST_M and all(abs(metres - other) > 1e-9 for _, other, _ in meanings):
                meanings.append((label_of(meant), metres, error))
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
    line = link(read_line(text, "volume"))
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
        for meant in volumes_of(amount, units, least, most):
            low, high = float(meant.low), float(meant.high)
            middle = (low + high) / 2 * (1 + mood.shift_share)
            share = ABOUT_VOLUME_SHARE if mood.about or meant.loose else VOLUME_SHARE
            if 0 <= middle <= LARGEST_M3:
                stated = 0.0 if meant.spread is None else float(meant.spread)
                meanings.append((label_of(meant), middle, max(middle * share, (high - low) / 2, stated)))
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


__all__ = [
    "ABOUT_ERROR",
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
