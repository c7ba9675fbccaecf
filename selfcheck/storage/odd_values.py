"""Values in a record that no tank and no day can have. Each is named with its file; none is changed."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from itertools import pairwise

from pydantic import BaseModel

from selfcheck.domain.check import Check, PumpOut, Readings
from selfcheck.domain.household import Household, can_be
from selfcheck.errors import RecordProblem
from selfcheck.storage.folder import Folder
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, PUMP_OUTS

#: No septic tank is deeper than this, in metres. Our choice: the deepest in common use are under 4.
DEEPEST_M = 10.0
#: Measures of a thing that is there, which cannot be zero.
_OF_SOMETHING = (
    "length_m", "width_m", "diameter_m", "height_m", "thickness_m", "liquid_depth_m", "volume_m3", "corners_apart_m",
)  # fmt: skip
_NOTHING = "Write how large it is, or null where that is not known."
_MEND = "Look up what was written down that day, and mend the number."


def odd_values(found: Folder) -> list[RecordProblem]:
    """Lengths below zero or beyond any tank, sizes of nothing, days that cannot be meant."""
    return [
        *_odd_household(found.household),
        *(problem for check in found.checks for problem in _odd_check(check)),
        *(problem for pump_out in found.pump_outs for problem in _odd_pump_out(pump_out)),
    ]


def before_the_household(found: Folder) -> list[str]:
    """Records of days before anybody is on record as living there: worth knowing, and often right."""
    since = min((one.from_ for one in found.household.occupancy if can_be(one.from_)), default=None)
    if since is None:
        return []
    told = f"lies before {since}, the first day that anybody is on record as living there."
    early = [f"{HOUSEHOLD}: the meter reading of {one.on} {told}" for one in found.household.meter if one.on < since]
    early += [f"{CHECKS}/{one.id}.json: its day {told}" for one in found.checks if one.on < since]
    return early + [f"{PUMP_OUTS}: the pump-out of {one.on} {told}" for one in found.pump_outs if one.on < since]


def days_ahead(household: Household, today: date) -> list[str]:
    """Days of the household's facts that have not come yet, and what is made of them."""
    notes = [
        f"{HOUSEHOLD}: {one.people:g} people from {one.from_} on, which lies after today. They count from then on."
        for one in household.occupancy
        if one.from_ > today and can_be(one.from_)
    ]
    notes += [
        f"{HOUSEHOLD}: the meter reading of {one.on} lies after today. It is left out until then."
        for one in household.meter
        if one.on > today and can_be(one.on)
    ]
    read = sorted(household.meter, key=lambda one: one.on)
    return notes + [
        f"{HOUSEHOLD}: the meter reading of {one.on} is lower than that of {before.on}. That stretch is left out."
        for before, one in pairwise(read)
        if one.m3 < before.m3
    ]


def _odd_household(household: Household) -> Iterator[RecordProblem]:
    for tank in household.tanks:
        parts: tuple[tuple[str, BaseModel | None], ...] = (
            ("", tank),
            ("shape.", tank.shape),
            ("lid.", tank.lid),
            ("place.", tank.place),
        )
        for lead, part in parts:
            for name in _OF_SOMETHING:
                if getattr(part, name, None) == 0:
                    yield RecordProblem(HOUSEHOLD, f"{lead}{name} of the tank {tank.id} is 0.", _NOTHING)
    for one in household.occupancy:
        yield from _odd_day(HOUSEHOLD, "the day from which people lived there", one.from_)
    for reading in household.meter:
        yield from _odd_day(HOUSEHOLD, "the day of a meter reading", reading.on)


def _odd_check(check: Check) -> Iterator[RecordProblem]:
    file = f"{CHECKS}/{check.id}.json"
    yield from _odd_day(file, "its day", check.on)
    for lead, readings in (("", check.seen.readings), ("second_compartment.", check.seen.second_compartment)):
        for name in Readings.model_fields if readings is not None else ():
            for number, reading in enumerate(getattr(readings, name), 1):
                where = f"{lead}{name}, reading {number},"
                if reading.m < 0 and name != "outlet_bottom_below_surface":  # the water may stand below the outlet
                    yield RecordProblem(file, f"{where} is below zero ({reading.m:g} m).", _MEND)
                elif abs(reading.m) > DEEPEST_M:
                    yield RecordProblem(file, f"{where} is {reading.m:g} m, beyond any tank.", _MEND)


def _odd_pump_out(pump_out: PumpOut) -> Iterator[RecordProblem]:
    yield from _odd_day(PUMP_OUTS, "the day of a pump-out", pump_out.on)
    left = pump_out.sludge_left_m
    if left is not None and left > DEEPEST_M:
        what = f"the pump-out of {pump_out.on} left {left:g} m of sludge, beyond any tank."
        yield RecordProblem(PUMP_OUTS, what, _MEND)


def _odd_day(file: str, name: str, day: date) -> Iterator[RecordProblem]:
    if not can_be(day):
        yield RecordProblem(file, f"{name} is {day}, which cannot be meant.", "Mend the year.")
