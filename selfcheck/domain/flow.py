"""How much water goes through the tank: litres a day, days of rest in the clear zone, and a look for leaks.

The household's own water meter beats the published means. Water used outdoors passes the meter but not the tank, so a
rate taken over a summer errs to the high side, which makes the rest in the tank look shorter than it is.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import date
from itertools import pairwise
from typing import Literal, NamedTuple

from selfcheck.domain.conversions import GALLON
from selfcheck.domain.findings import Finding
from selfcheck.domain.household import MeterReading, can_be

LITRE = 0.001  # cubic metres

#: Litres a person and day. Minnesota: a state's design figure; the other two are household studies of 1999 and
#: 2016, from memory. The newer one is used, as the one nearest to today's fixtures (our choice).
PER_PERSON: dict[str, float] = {
    "minnesota": 75.0 * GALLON / LITRE,
    "reu_1999": 69.3 * GALLON / LITRE,
    "reu_2016": 58.6 * GALLON / LITRE,
}
USED = "reu_2016"
#: The published means differ by about this much either way; households by more (our choice).
SPREAD = 0.35
#: Least rest in the tank [days] (source: epa-832-f-00-079).
LEAST_DAYS = 1.0
#: Shortest time between two meter readings that says something about a household's days (our choice).
LEAST_BETWEEN = 7
#: Readings older than this [days before the newest] say little about today (our choice).
RECENT = 3 * 365


class Flow(NamedTuple):
    """Litres a day for the whole household, its relative standard error, and what it rests on."""

    litres_per_day: float
    relative_error: float
    basis: Literal["meter", "people"]
    source: str


def by_people(people: float, table: str = USED) -> Flow:
    """Litres a day for so many people at home, from a published mean (a key of `PER_PERSON`).

    `minnesota` is a design figure, read in its own text; `reu_1999` and `reu_2016` are household studies, from memory.
    ValueError for fewer than none; KeyError for a table that is not known.
    """
    if people < 0:
        raise ValueError("people must not be below 0")
    return Flow(people * PER_PERSON[table], SPREAD, "people", table)


def by_meter(readings: Sequence[MeterReading]) -> Flow | None:
    """Litres a day between the household's own meter readings of the last three years; None when they do not tell.

    A reading lower than the one before is a new meter: that step is left out. At least seven days in all are needed.
    Its error, 30 % over a month and less over a longer time, is our choice.
    """
    ordered = sorted(readings, key=lambda one: one.on)
    if not ordered:
        return None
    recent = [one for one in ordered if (ordered[-1].on - one.on).days <= RECENT]
    days, used = 0, 0.0
    for before, behind in pairwise(recent):
        if behind.m3 >= before.m3:
            days += (behind.on - before.on).days
            used += behind.m3 - before.m3
    if days < LEAST_BETWEEN:
        return None
    error = max(0.05, 0.30 / math.sqrt(days / 30.0))  # weeks differ, years hardly (our choice)
    return Flow(used / LITRE / days, min(error, SPREAD), "meter", "own-meter")


def flow(people: float, readings: Sequence[MeterReading], today: date) -> Flow:
    """The household's own meter where it tells, or else the published mean for so many people.

    A reading of a day after `today`, or of one that cannot be meant, is left out.
    """
    return by_meter([one for one in readings if can_be(one.on) and one.on <= today]) or by_people(people)


def detention_days(clear_volume_m3: float, litres_per_day: float) -> float:
    """Days that water rests in the clear zone: its volume over the daily flow, `V/Q`.

    Taken as if all of it moved on together; some takes a shorter way. Infinite without flow. ValueError below 0.
    """
    if clear_volume_m3 < 0 or litres_per_day < 0:
        raise ValueError("volume and flow must not be below 0")
    return clear_volume_m3 / (litres_per_day * LITRE) if litres_per_day > 0 else math.inf


def clear_volume_m3(full_m3: float, sludge_m3: float, scum_below_m3: float) -> float:
    """Volume between the layers [m³]: what the liquid holds less the sludge and what hangs below the water; never
    below 0.
    """
    return max(full_m3 - sludge_m3 - scum_below_m3, 0.0)


def short_rest(days: float) -> Finding | None:
    """The finding when water rests for less [days] than the published least time; None otherwise.

    Source: epa-832-f-00-079, read in a reprint.
    It is told and changes no verdict: full layers have limits of their own, and a tank too small for its household is
    not mended by a pump-out.
    """
    if days >= LEAST_DAYS:
        return None
    return Finding(
        "short_rest",
        "carry_on",
        source="epa-832-f-00-079",
        facts={"days": days, "hours": 24.0 * days, "least_hours": 24.0 * LEAST_DAYS},
        uses=("seen.readings.sludge", "household.occupancy"),
    )


def leak(
    before_m3: float | None = None,
    after_m3: float | None = None,
    minutes: float | None = None,
    toilet_runs: bool | None = None,
    meter_turns: bool | None = None,
) -> tuple[Finding, ...]:
    """What a look at the meter says, with every tap shut between the two readings, and whether a toilet runs on.

    Any rise of the meter is a leak, and so is a meter that was only seen to turn; litres a day are given when the
    minutes between are known. A toilet that runs on is one as well. Nothing told: no finding. ValueError when the
    second reading is the lower one.
    """
    found = []
    if before_m3 is not None and after_m3 is not None:
        if after_m3 < before_m3:
            raise ValueError("a meter does not run backwards")
        if after_m3 > before_m3:
            lost = (after_m3 - before_m3) / LITRE
            rate = lost * 24 * 60 / minutes if minutes else None
            found.append(_leak("meter_turns_with_taps_shut", litres=lost, litres_per_day=rate))
    if meter_turns and not found:
        found.append(_leak("meter_turns_with_taps_shut"))
    if toilet_runs:
        found.append(_leak("toilet_runs_on"))
    return tuple(found)


def _leak(ident: str, **facts: float | None) -> Finding:
    """A leak overloads tank and field; a tap or toilet is mended by its owner or a plumber, so it does not change
    the verdict.
    """
    return Finding(ident, "carry_on", source="common-practice", facts=dict(facts), uses=("household.meter",))
