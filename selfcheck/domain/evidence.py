"""What each check says about how fast a tank fills: volumes gained since its pump-out, with their errors."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from selfcheck.domain.accumulation import Packing
from selfcheck.domain.check import Check
from selfcheck.domain.history import Episode, History, years_between
from selfcheck.domain.household import Tank
from selfcheck.domain.layers import Layers, layers
from selfcheck.domain.posterior import Seen
from selfcheck.domain.shapes import Vessel


def looked(check: Check) -> bool:
    """Whether the sludge or the scum was read at this check."""
    seen = check.seen.readings
    return bool(seen.sludge or seen.scum_total or seen.scum_above or seen.scum_below)


def evidence(
    tank: Tank, vessel: Vessel, checks: Sequence[Check], past: History, packed: Packing
) -> tuple[tuple[Seen, ...], tuple[Seen, ...]]:
    """What these checks say of the sludge and of the scum. A check before the first known pump-out says nothing."""
    sludge: list[Seen] = []
    scum: list[Seen] = []
    for one in checks:
        span = past.episode_of(one.on)
        if span is not None:
            _read(layers(tank, vessel, one.seen.readings), span, one.on, packed, sludge, scum)
    return tuple(sludge), tuple(scum)


def _read(found: Layers, span: Episode, day: date, packed: Packing, sludge: list[Seen], scum: list[Seen]) -> None:
    """Add what one check says about the rates. Readings that cannot be are left out; odd but possible ones count."""
    years = years_between(span.start, day)
    person_years = span.course.person_years(years)
    if person_years <= 0.0:
        return
    if found.sludge is not None and 0.0 <= found.sludge.value < packed.heights[-1]:
        value, error = found.sludge.value, found.sludge.error
        spread = (packed.sludge_m3(value + error) - packed.sludge_m3(value - error)) / 2.0
        residue = packed.sludge_m3(span.residue_m)
        sludge.append(Seen(person_years, years, packed.sludge_m3(value) - residue, max(spread, 1e-6)))
    if found.scum is not None and 0.0 <= found.scum.value < packed.crusts[-1]:
        value, error = found.scum.value, found.scum.error
        spread = (packed.scum_m3(value + error) - packed.scum_m3(value - error)) / 2.0
        scum.append(Seen(person_years, years, packed.scum_m3(value), max(spread, 1e-6)))
