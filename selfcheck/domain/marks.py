"""The rules turned round: heights to mark on pole and scum stick, at which the verdict changes for this tank."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import floor
from typing import Literal

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Tank
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import RuleSet, stand
from selfcheck.domain.outlet import HANGS_BELOW, outlet_below_surface
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.unsafe import unsafe
from selfcheck.domain.weighing import calls

#: Marks are set to the half inch or the centimetre.
STEP_M = {"us": 0.5 * INCH, "metric": 0.01}
#: Heights of crust above the water for which the sludge mark is listed.
CRUSTS_M = {"us": tuple(inches * INCH for inches in range(6)), "metric": tuple(cm / 100 for cm in range(0, 14, 2))}

#: Sludge thickness over scum thickness where nothing is known of them: as the trade's two limits, sixteen inches and
#: eight (source `common-practice`).
SLUDGE_TO_SCUM = 2.0


@dataclass(frozen=True, slots=True)
class CrustRow:
    """One line of the list: crust standing this high above the water, and the sludge mark that goes with it [m]."""

    scum_above_m: float
    book_sludge_m: float | None


@dataclass(frozen=True, slots=True)
class Marks:
    """Where to mark, in metres, each already rounded to `step_m`.

    On the pole, from its foot: `wet_line_m`, where a full tank wets it (None: full depth not on record), and
    `book_sludge_m`, above which a stain says book it (None: no height does). On the scum stick,
    down from the water line: `outlet_edge_m`, where the foot catches the outlet device's bottom edge, and
    `book_scum_m`, below which the crust's underside says book it. 0: the rule is used up already. `by_crust`: the
    sludge mark for each height of crust. `outlet_assumed`: the outlet's depth is a published habit, not this tank's.
    """

    wet_line_m: float | None
    book_sludge_m: float | None
    outlet_edge_m: float
    book_scum_m: float | None
    by_crust: tuple[CrustRow, ...]
    outlet_assumed: bool
    step_m: float


def marks(
    rule_set: RuleSet,
    tank: Tank,
    vessel: Vessel,
    units: Literal["us", "metric"] = "us",
    sludge_m: float | None = None,
    scum_m: float | None = None,
) -> Marks:
    """Marks for one tank by one rule set.

    `sludge_m`, `scum_m`: thickness to expect, as of the last check or the forecast; without them both layers are taken
    to grow together, the sludge twice as thick as the scum. At a booking mark a reading is still under every limit and
    clear of the outlet, one step higher it is over or too close to call; so these marks err to the careful side. Wet
    line and outlet edge are rounded to the nearest step.
    """
    step = STEP_M[units]
    depth = vessel.liquid_depth_m
    full = Readings(liquid_depth=[Reading(m=depth)])

    def under(**read: float) -> bool:
        kinds = {kind: [Reading(m=height)] for kind, height in read.items()}
        readings = full.model_copy(update=kinds)
        found = layers(tank, vessel, readings, "at_outlet")
        return not calls(stand(rule_set, found, vessel)) and not unsafe(found, readings)

    def with_sludge(height: float) -> bool:
        return under(sludge=height, scum_total=height / SLUDGE_TO_SCUM if scum_m is None else scum_m)

    def with_scum(reach: float) -> bool:
        return under(scum_below=reach, sludge=reach / HANGS_BELOW * SLUDGE_TO_SCUM if sludge_m is None else sludge_m)

    def with_crust(crust: float) -> float | None:
        return _highest(lambda height: under(sludge=height, scum_above=crust), depth, step)

    below = outlet_below_surface(tank, vessel)
    return Marks(
        wet_line_m=round(depth / step) * step if vessel.depth_known else None,
        book_sludge_m=_highest(with_sludge, depth, step),
        outlet_edge_m=round(below.metres / step) * step,
        book_scum_m=_highest(with_scum, depth, step),
        by_crust=tuple(CrustRow(crust, with_crust(crust)) for crust in CRUSTS_M[units]),
        outlet_assumed=below.assumed,
        step_m=step,
    )


def _highest(holds: Callable[[float], bool], most: float, step: float) -> float | None:
    """The last whole step up to which a condition holds that fails from some height on; None where it never fails."""
    low, high = 0, floor(most / step)
    if holds(high * step):
        return None
    while low < high:  # holds below low, fails from high on
        middle = (low + high) // 2
        if holds(middle * step):
            low = middle + 1
        else:
            high = middle
    return max(high - 1, 0) * step
