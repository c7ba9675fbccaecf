"""Every check and pump-out of one tank as a row of words, the newest first."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any, NamedTuple

from selfcheck.domain.check import Check, PumpOut, Reading, standing
from selfcheck.domain.history import counted
from selfcheck.domain.layers import layers
from selfcheck.domain.showing import show_date, show_day, show_length, show_length_error
from selfcheck.domain.uncertain import Measure
from selfcheck.domain.verdict import Judgement
from selfcheck.drawing.lengths import Units
from selfcheck.text import clean

_TYPED_MOST = 60


class Row(NamedTuple):
    """One line of the table. `typed`: what the person said of each layer. `pumped`: a pump-out, with the residue."""

    on: date
    day: str
    sludge: str = ""
    scum: str = ""
    depth: str = ""
    typed: tuple[str, str] = ("", "")
    pumped: str = ""


def rows(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: Mapping[str, Any]
) -> list[Row]:
    """Standing checks and pump-outs of the judged tank up to its day. `words`: the table `readings` of the page."""
    tank, units, today = judgement.tank, judgement.household.units, judgement.today
    found = []
    for check in standing(list(checks)):
        if check.tank != tank.id or check.on > today:
            continue
        read = check.seen.readings
        told = layers(tank, judgement.vessel, read, check.seen.level)
        found.append(
            Row(
                check.on,
                show_day(check.on, units),
                _length(told.sludge, words, units),
                _length(told.scum, words, units),
                show_length(told.liquid_depth.value, units) if read.liquid_depth and told.liquid_depth else "",
                (_typed(read.sludge), _typed([*read.scum_total, *read.scum_above, *read.scum_below])),
            )
        )
    for one in counted(pump_outs, tank.id, today):
        left = show_length(one.sludge_left_m, units) if one.sludge_left_m else ""
        residue = words["left"].format(left=left) if left else ""
        day = show_date(one.on, units, *one.span)
        found.append(Row(one.on, day, pumped=f"{words['pumped']}. {residue}".rstrip(". ")))
    return sorted(found, key=lambda row: row.on, reverse=True)


def _length(measure: Measure | None, words: Mapping[str, Any], units: Units) -> str:
    return show_length_error(measure.value, measure.error, units) if measure is not None else str(words["not_read"])


def _typed(readings: Sequence[Reading]) -> str:
    return "; ".join(clean(one.said, _TYPED_MOST) for one in readings if one.said)
