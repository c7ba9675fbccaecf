"""Sets of readings that cannot be, or hardly can be: named, never mended."""

from __future__ import annotations

from math import hypot

from selfcheck.domain.agreement import one_of
from selfcheck.domain.check import Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Tank
from selfcheck.domain.outlet import EDGE_ERROR_M
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.uncertain import Uncertain

#: A misfit counts when it is this many standard errors wide. Our choice: a full tank is no mistake, sixty inches of
#: sludge in forty-eight of liquid is.
TELLING = 2.0
#: Less than this is no liquid depth, and no share of it is reckoned. Our choice.
NO_LIQUID_M = 0.001
#: Water said to stand at the outlet, and a depth this far from the one on record, do not go together. Our choice.
DEPTH_APART_M = 3 * INCH


def oddities(
    tank: Tank,
    vessel: Vessel,
    readings: Readings,
    level: str | None,
    depth: Uncertain | None,
    sludge: Uncertain | None,
    scum_below: Uncertain | None,
    outlet: Uncertain | None,
) -> tuple[str, ...]:
    """Ids of what does not fit, each at most once.

    `negative`: a length under zero. `no_liquid`: hardly any liquid depth. `layers_do_not_fit`: sludge and hanging scum
    reach through each other, or the sludge stands above the water. `liquid_deeper_than_tank`: water or sludge above
    the inside top. `scum_parts_do_not_fit`: a part of the crust larger than the whole. `outlet_below_floor`: the outlet
    device would end under the floor. `outlet_disagrees`: its reading is not where the tank's facts put it.
    `depth_not_as_known`: the water is said to stand at the outlet, at another depth than the one on record.
    """
    found = []
    if _any_negative(readings):
        found.append("negative")
    if depth and depth.value < NO_LIQUID_M:
        found.append("no_liquid")
    if depth and sludge and _through(depth - sludge, scum_below):
        found.append("layers_do_not_fit")
    top = vessel.top_m
    if top is not None and any(height and height.value - top > TELLING * height.error for height in (depth, sludge)):
        found.append("liquid_deeper_than_tank")
    if _scum_parts_misfit(readings):
        found.append("scum_parts_do_not_fit")
    if outlet and outlet.value <= 0:
        found.append("outlet_below_floor")
    full = vessel.liquid_depth_m if vessel.depth_known else None
    stated = tank.outlet_bottom_below_surface_m
    if readings.outlet_bottom_below_surface and outlet and full is not None and stated is not None:
        apart = abs(outlet.value - (full - stated))
        if apart > TELLING * hypot(outlet.error, EDGE_ERROR_M, vessel.depth_error_m):
            found.append("outlet_disagrees")
    if level == "at_outlet" and depth and full is not None and abs(depth.value - full) > DEPTH_APART_M:
        found.append("depth_not_as_known")
    return tuple(found)


def _through(room: Uncertain, scum_below: Uncertain | None) -> bool:
    clear = room - scum_below if scum_below else room
    return any(gap.value < -TELLING * gap.error for gap in (room, clear))


def _scum_parts_misfit(readings: Readings) -> bool:
    """Whether what stands above and what hangs below do not add up to a whole that was read too."""
    whole = one_of(readings.scum_total, max, EDGE_ERROR_M)
    if whole is None:
        return False
    above = one_of(readings.scum_above, max, EDGE_ERROR_M)
    below = one_of(readings.scum_below, max, EDGE_ERROR_M)
    parts = [part for part in (above, below) if part]
    if not parts:
        return False
    gap = sum(value for value, _ in parts) - whole[0]
    error = hypot(whole[1], *(error for _, error in parts))
    return abs(gap) > TELLING * error if len(parts) == 2 else gap > TELLING * error


def _any_negative(readings: Readings) -> bool:
    kinds = (
        readings.liquid_depth,
        readings.sludge,
        readings.scum_total,
        readings.scum_above,
        readings.scum_below,
        readings.outlet_bottom_below_surface,
    )
    return any(reading.m < 0 for kind in kinds for reading in kind)
