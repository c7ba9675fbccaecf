"""Since when the layers have grown, where nobody knows when the tank was last pumped but somebody has read it.

It may have been pumped at any time since the household moved in, each day as likely. What was read tells those times
apart: much in little time, or more each year than anybody leaves, is unlikely. What remains is kept as a middle and an
error.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from selfcheck.domain.accumulation import POWER_MEAN, RATE_MEDIAN_M3, RATE_SPREAD, SPLIT_MEAN, Packing
from selfcheck.domain.check import Check
from selfcheck.domain.evidence import HABIT, spread_m3
from selfcheck.domain.history import DAYS_A_YEAR, Course, History, days_after, years_between
from selfcheck.domain.layers import thicknesses

#: Times tried, and rates tried in standard deviations of what is known beforehand. Our choice.
_TIMES = 24
_RATES = tuple(RATE_MEDIAN_M3 * math.exp(RATE_SPREAD * z / 4.0) for z in range(-12, 13))
_CHANCES = tuple(math.exp(-0.5 * (z / 4.0) ** 2) for z in range(-12, 13))


class _Read(NamedTuple):
    """All solids at one check [m³], their standard error, and the years since the first check."""

    volume_m3: float
    error_m3: float
    later: float


def placed(past: History, looks: Sequence[Check], packed: Packing) -> History:
    """The same history, its present span begun where these checks, oldest first, make it likeliest on average.

    Unchanged where the start is known or nothing was read.
    """
    span = past.current
    reads = _reads(looks, packed)
    if span.start_known or not reads:
        return past
    begun, first = span.start, looks[0].on
    whole = years_between(begun, first)
    tried = [whole * (i + 0.5) / _TIMES for i in range(_TIMES)]
    weights = [_likely(reads, span.course, whole, years) for years in tried]
    total = sum(weights)
    if whole <= 0.0 or total <= 0.0:
        return past
    middle = sum(w * years for w, years in zip(weights, tried, strict=True)) / total
    error = math.sqrt(sum(w * (years - middle) ** 2 for w, years in zip(weights, tried, strict=True)) / total)
    start = days_after(first, -middle * DAYS_A_YEAR)
    put = span._replace(course=span.course.since(start), start_error=error, earliest=begun)
    return past._replace(episodes=(*past.episodes[:-1], put))


def _reads(looks: Sequence[Check], packed: Packing) -> list[_Read]:
    """All solids at each check that read the sludge; a crust nobody read is taken as the usual share."""
    found = []
    for one in looks:
        sunk, afloat = thicknesses(one.seen.readings)
        if sunk is None or not 0.0 <= sunk.value < packed.heights[-1]:
            continue
        volume = packed.sludge_m3(sunk.value)
        error = spread_m3(packed.sludge_m3, sunk)
        if afloat is None or not 0.0 <= afloat.value < packed.crusts[-1]:
            volume *= 1.0 + math.exp(SPLIT_MEAN)
        else:
            volume += packed.scum_m3(afloat.value)
        error = math.hypot(error, HABIT * volume)
        found.append(_Read(volume, error, years_between(looks[0].on, one.on)))
    return found


def _likely(reads: Sequence[_Read], course: Course, whole: float, years: float) -> float:
    """How likely the readings are, had the tank been emptied so many `years` before the first check."""
    gone = course.person_years(whole - years)
    grown = []
    for one in reads:
        time = years + one.later
        grown.append((course.person_years(whole + one.later) - gone) / time * time**POWER_MEAN)
    likely = 0.0
    for rate, chance in zip(_RATES, _CHANCES, strict=True):
        off = sum(((one.volume_m3 - rate * each) / one.error_m3) ** 2 for one, each in zip(reads, grown, strict=True))
        likely += chance * math.exp(-0.5 * off)
    return likely
