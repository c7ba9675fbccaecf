"""What each check says about how fast a tank fills: volumes gained since its pump-out, with their errors.

The newest reading of a layer speaks for the tank as it is, and is taken at its word. Older ones speak for the
household, whose habits change: each counts the less, the less of the present span it saw.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import hypot, sqrt

from selfcheck.domain.accumulation import POWER_MEAN, Packing
from selfcheck.domain.check import Check
from selfcheck.domain.history import Episode, History, years_between
from selfcheck.domain.layers import thicknesses
from selfcheck.domain.likelihood import Seen
from selfcheck.domain.uncertain import Measure

#: How far what a household leaves in one year may be off its own long mean, as a share of it, one standard deviation.
#: Our choice.
HABIT = 0.10
#: How far its rate between two pump-outs may be off its rate between two others, as a share of it: children grow up,
#: jobs and kitchens change. What was read before the last pump-out informs, and never overrules, what was read since.
#: Our choice.
SPAN_HABIT = 0.35

Read = tuple[Episode, Seen]


def looked(check: Check) -> bool:
    """Whether the sludge or the scum was read at this check."""
    seen = check.seen.readings
    return bool(seen.sludge or seen.scum_total or seen.scum_above or seen.scum_below)


def evidence(checks: Sequence[Check], past: History, packed: Packing) -> tuple[tuple[Seen, ...], tuple[Seen, ...]]:
    """What these checks, oldest first, say of the sludge and of the scum.

    A check before the first known pump-out says nothing.
    """
    sludge: list[Read] = []
    scum: list[Read] = []
    for one in checks:
        span = past.episode_of(one.on)
        if span is not None:
            _read(one, span, packed, sludge, scum)
    return _weighted(sludge, past.current), _weighted(scum, past.current)


def _read(check: Check, span: Episode, packed: Packing, sludge: list[Read], scum: list[Read]) -> None:
    """Add what one check says about the rates. Readings that cannot be are left out; odd but possible ones count."""
    years = years_between(span.start, check.on)
    person_years = span.course.person_years(years)
    if person_years <= 0.0:
        return
    off = span.start_error / years * POWER_MEAN  # what a start that is not known does to the volume it explains
    sunk, afloat = thicknesses(check.seen.readings)
    if sunk is not None and 0.0 <= sunk.value < packed.heights[-1]:
        volume = packed.sludge_m3(sunk.value)
        error = hypot(spread_m3(packed.sludge_m3, sunk), off * volume)
        residue = packed.sludge_m3(span.residue_m)
        sludge.append((span, Seen(person_years, years, volume - residue, error)))
    if afloat is not None and 0.0 <= afloat.value < packed.crusts[-1]:
        volume = packed.scum_m3(afloat.value)
        error = hypot(spread_m3(packed.scum_m3, afloat), off * volume)
        scum.append((span, Seen(person_years, years, volume, error)))


def spread_m3(volume_of: Callable[[float], float], thickness: Measure) -> float:
    """The standard error of a layer's volume [m³], by that of its thickness; never nothing."""
    value, error = thickness.value, thickness.error
    return max((volume_of(value + error) - volume_of(value - error)) / 2.0, 1e-6)


def _weighted(readings: Sequence[Read], current: Episode) -> tuple[Seen, ...]:
    """The same with the habits of other years in their errors, the newest of the present span marked.

    With one independent share a year, means over `k` years and over the `n` years to the newest reading differ by
    √(1/k − 1/n) within a span, and by √(1/k + 1/n) across spans.
    """
    if not readings:
        return ()
    last_span, last = readings[-1]
    now = last_span is current
    out = []
    for span, one in readings[:-1] if now else readings:
        apart = 1.0 / one.years + (0.0 if not now else -1.0 / last.years if span is current else 1.0 / last.years)
        share = hypot(HABIT * sqrt(max(apart, 0.0)), 0.0 if span is current else SPAN_HABIT)
        out.append(one._replace(error_m3=hypot(one.error_m3, share * abs(one.volume_m3))))
    return (*out, last._replace(newest=True)) if now else tuple(out)
