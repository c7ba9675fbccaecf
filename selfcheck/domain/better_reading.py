"""Which better reading could still change what the readings say, and only then.

A figure that was assumed, or read the rough way, is tried at the values it may truly have. Where none of them turns the
call around, measuring it better is trouble for nothing, and it is not asked for.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from selfcheck.domain.agreement import deciding
from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.layers import HANGS_ERROR, LEVEL_NOT_SEEN_ERROR_M, Layers
from selfcheck.domain.outlet import HANGS_BELOW, outlet_below_surface
from selfcheck.domain.shapes import vessel
from selfcheck.domain.uncertain import Measure
from selfcheck.domain.weighing import SCUM_KINDS, Scene, calls, greatest

Better = Literal["sludge_third", "outlet_depth", "scum_below", "scum_above", "liquid_depth", "tank_size"]

#: How far from what was assumed the truth is tried, in standard errors: the middle 95 % and steps between. Our choice.
TRIED = (-2.0, -1.0, 0.0, 1.0, 2.0)


def better_readings(scene: Scene, readings: Readings, bedrooms: int | None = None) -> tuple[Better, ...]:
    """Ids of the readings that could turn the call of this rule set around, the most telling first.

    `outlet_depth`: the outlet's edge felt with the foot-stick, where it is assumed. `scum_below`, `scum_above`: the
    part of the crust that was not read itself. `sludge_third`: one more dip, where there are two. `liquid_depth`: the
    wet line, where neither it nor the level was seen. `tank_size`: where a limit by capacity rests on a guessed tank.
    """
    if not (readings.sludge or any(getattr(readings, kind) for kind in SCUM_KINDS)):
        return ()
    counted = deciding(readings)
    standings = scene.stand(counted)
    now, chance = calls(standings), greatest(standings) or 0.0
    found: list[tuple[float, Better]] = []
    for what, tried in _candidates(scene, readings, bedrooms):
        thens = [other.stand(deciding(better)) for other, better in tried]
        if any(calls(then) != now for then in thens):
            found.append((max(abs((greatest(then) or 0.0) - chance) for then in thens), what))
    return tuple(what for _, what in sorted(found, key=lambda one: -one[0]))


Tried = list[tuple[Scene, Readings]]


def _candidates(scene: Scene, readings: Readings, bedrooms: int | None) -> Iterator[tuple[Better, Tried]]:
    """Each reading that could be had, with the values it may turn out to have."""
    found = scene.layers(deciding(readings))
    if len(readings.sludge) == 2:
        low, high = sorted(one.m for one in readings.sludge)
        more = [[*readings.sludge, Reading(m=m)] for m in (low, (low + high) / 2.0, high)]
        yield "sludge_third", [(scene, readings.model_copy(update={"sludge": three})) for three in more]
    if found.outlet_assumed and found.liquid_depth is not None:
        assumed = outlet_below_surface(scene.tank, scene.vessel)
        yield "outlet_depth", _with(scene, readings, "outlet_bottom_below_surface", assumed.metres, assumed.error)
    if found.scum_below is not None and not readings.scum_below:
        yield "scum_below", _at(scene, readings, "scum_below", _parts(found, "scum_below", found.scum_below))
    if found.scum_above is not None and not readings.scum_above:
        yield "scum_above", _at(scene, readings, "scum_above", _parts(found, "scum_above", found.scum_above))
    if found.depth_from_facts and scene.level is None:
        yield (
            "liquid_depth",
            _with(scene, readings, "liquid_depth", scene.vessel.liquid_depth_m, LEVEL_NOT_SEEN_ERROR_M),
        )
    by_capacity = any(limit.table is not None for limit in scene.rules.limits)
    if by_capacity and scene.vessel.basis in ("bedrooms", "default"):
        full, error = scene.vessel.full_m3, scene.vessel.relative_error
        sizes = [max(full * (1.0 + off * error), 0.1 * full) for off in TRIED]
        tanks = [scene.tank.model_copy(update={"volume_m3": size}) for size in sizes]
        yield "tank_size", [(scene._replace(tank=tank, vessel=vessel(tank, bedrooms)), readings) for tank in tanks]


def _parts(found: Layers, kind: Better, part: Measure) -> list[float]:
    """What a part of the crust may turn out to be: by the share that hangs, where the rule of two thirds stood in."""
    assert found.scum is not None
    whole, above, below = (one.value if one else 0.0 for one in (found.scum, found.scum_above, found.scum_below))
    if not found.two_thirds_used:
        return [part.value + off * part.error for off in TRIED]
    hangs = [HANGS_BELOW + off * HANGS_ERROR for off in TRIED]
    if found.scum_way == "above":
        return [above * share / (1.0 - share) for share in hangs]
    if found.scum_way == "below":
        return [below * (1.0 - share) / share for share in hangs]
    return [whole * (share if kind == "scum_below" else 1.0 - share) for share in hangs]


def _with(scene: Scene, readings: Readings, kind: str, value: float, error: float) -> Tried:
    """The readings with one more of a kind, as far off as its error lets it be."""
    return _at(scene, readings, kind, [value + off * error for off in TRIED])


def _at(scene: Scene, readings: Readings, kind: str, values: Sequence[float]) -> Tried:
    """The readings with one more of a kind, at each value that it may have; never below nothing."""
    return [(scene, readings.model_copy(update={kind: [Reading(m=max(m, 0.0))]})) for m in values]
