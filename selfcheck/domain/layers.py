"""Readings of one check → the layers in the tank, each with its standard error.

Heights are measured from the tank floor where the pole went in. Metres, cubic metres, shares from 0 to 1.
"""

from __future__ import annotations

from math import hypot, sqrt
from typing import Literal, NamedTuple

from selfcheck.domain.agreement import REPEATED, Agreement, one_of, sludge_that_counts
from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Tank
from selfcheck.domain.oddities import NO_LIQUID_M, oddities
from selfcheck.domain.outlet import EDGE_ERROR_M, HANGS_BELOW, outlet_below_surface
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.uncertain import Measure, Uncertain, combined

ScumWay = Literal["total", "above", "below"]

# Standard errors of one reading. Our choice, from how pole, cloth and foot-stick are used.
MARK_ERROR_M = 0.25 * INCH  # reading a mark on the pole
STAIN_ERROR_M = 0.5 * INCH  # where the stain on the cloth ends
FLOOR_ERROR_M = 0.5 * INCH  # uneven floor and a leaning pole
FOOT_ERROR_M = 0.5 * INCH  # feeling the underside of the crust with a foot-stick
#: Error of a thickness taken as three times what stands above the water, as a share of it. Our choice; the rule is
#: `common-practice`.
TWO_THIRDS_ERROR = 0.20
#: The same as an error of the share that hangs: `above / (1 - share)` is off by `1 / (1 - share)` of it. What is worked
#: out from below, or from the whole, carries that share's error too, and less of it.
HANGS_ERROR = TWO_THIRDS_ERROR * (1.0 - HANGS_BELOW)
#: Error of taking the water to stand at its full depth when nobody said where it stands. Our choice.
LEVEL_NOT_SEEN_ERROR_M = 2 * INCH


class Layers(NamedTuple):
    """What the readings of one check say. None: cannot be told from them.

    `sludge`, `scum`: thickness. `scum_above`, `scum_below`: what stands above and hangs below the water line.
    `clear_zone`: from the sludge's top to the scum's bottom. `outlet_height`: the outlet device's bottom edge above the
    floor. `sludge_to_outlet`, `scum_to_outlet`: from each layer to that edge, positive while there is room.
    `scum_top_to_outlet_top`: from the crust's top up to the device's top edge. `solids_by_depth`, `solids_by_volume`:
    both layers as a share of the liquid; `least_by_depth`, `least_by_volume`: the same from the layers that were read,
    where one was not.
    `outlet_assumed`: the outlet's height is a published habit, not this tank's. `depth_from_facts`: the water line was
    not read; the tank's full depth stands in. `scum_way`: the reading the scum rests on; `two_thirds_used`: one part of
    it was inferred. `odd`: ids of what cannot or hardly can be (see `oddities`). `alternatives`: the same layers with
    each sludge reading taken alone, where the readings do not settle it.
    """

    agreement: Agreement = "none"
    liquid_depth: Measure | None = None
    sludge: Measure | None = None
    scum: Measure | None = None
    scum_above: Measure | None = None
    scum_below: Measure | None = None
    clear_zone: Measure | None = None
    outlet_height: Measure | None = None
    sludge_to_outlet: Measure | None = None
    scum_to_outlet: Measure | None = None
    scum_top_to_outlet_top: Measure | None = None
    solids_by_depth: Measure | None = None
    solids_by_volume: Measure | None = None
    least_by_depth: Measure | None = None
    least_by_volume: Measure | None = None
    sludge_m3: Measure | None = None
    scum_m3: Measure | None = None
    outlet_assumed: bool = False
    depth_from_facts: bool = False
    scum_way: ScumWay | None = None
    two_thirds_used: bool = False
    odd: tuple[str, ...] = ()
    alternatives: tuple[Layers, ...] = ()


class Scum(NamedTuple):
    """The crust: whole thickness, what hangs below and stands above the water line."""

    total: Uncertain
    above: Uncertain
    below: Uncertain
    way: ScumWay
    two_thirds_used: bool


def layers(tank: Tank, vessel: Vessel, readings: Readings, level: str | None = None) -> Layers:
    """The layers that one check's readings tell of, in one tank or compartment.

    `level`: where the water stood (`at_outlet`, `above_outlet`, `below_outlet`), "unknown" or None. Errors of readings
    are our choice, independent, and carried to every figure to first order. That two thirds of a crust hang below the
    water is a rule of thumb (source `common-practice`) with an error of its own. What does not fit together is
    reckoned as it was typed and named in `odd`; nothing is raised.
    """
    counted, agreement = sludge_that_counts(readings.sludge)
    found = _reckon(tank, vessel, readings, level, _sludge(counted, len(readings.sludge)), agreement)
    if agreement not in ("third_wanted", "clash"):
        return found
    alone = [_reckon(tank, vessel, readings, level, _sludge(reading), "one") for reading in readings.sludge]
    return found._replace(alternatives=tuple(alone))


def thicknesses(readings: Readings) -> tuple[Measure | None, Measure | None]:
    """Sludge and scum as in `layers`, without what needs the tank."""
    sludge, scum = _sludge(sludge_that_counts(readings.sludge)[0], len(readings.sludge)), _scum(readings)
    return _measure(sludge), _measure(scum.total if scum else None)


def _reckon(
    tank: Tank, vessel: Vessel, readings: Readings, level: str | None, sludge: Uncertain | None, agreement: Agreement
) -> Layers:
    full = Uncertain.read("full depth", vessel.liquid_depth_m, vessel.depth_error_m) if vessel.depth_known else None
    depth, from_facts = _liquid_depth(readings, full, level)
    scum = _scum(readings)
    line = full if full is not None else depth if _may_stand_full(level) else None
    outlet, outlet_assumed = _outlet_height(tank, vessel, readings, depth, line)
    # Water seen at the outlet is the line that the device hangs on: the depth below it cancels.
    water = line if level == "at_outlet" else depth
    from_water = depth if readings.outlet_bottom_below_surface else water
    top_edge = tank.outlet_top_above_surface_m
    above_top = None
    if scum and line and water and top_edge is not None:
        above_top = line + Uncertain.read("outlet top", top_edge, EDGE_ERROR_M) - water - scum.above
    below = scum.below if scum else None
    solids = _solids(vessel, depth, sludge, scum)
    clear = depth - sludge - below if depth and sludge and below else None
    return Layers(
        agreement=agreement,
        liquid_depth=_measure(depth),
        sludge=_measure(sludge),
        scum=_measure(scum.total if scum else None),
        scum_above=_measure(scum.above if scum else None),
        scum_below=_measure(below),
        clear_zone=_measure(clear),
        outlet_height=_measure(outlet),
        sludge_to_outlet=_measure(outlet - sludge if outlet and sludge else None),
        scum_to_outlet=_measure(from_water - below - outlet if from_water and below and outlet else None),
        scum_top_to_outlet_top=_measure(above_top),
        outlet_assumed=outlet_assumed,
        depth_from_facts=from_facts,
        scum_way=scum.way if scum else None,
        two_thirds_used=scum.two_thirds_used if scum else False,
        odd=oddities(tank, vessel, readings, level, depth, sludge, below, outlet),
        solids_by_depth=solids.get("solids_by_depth"),
        solids_by_volume=solids.get("solids_by_volume"),
        least_by_depth=solids.get("least_by_depth"),
        least_by_volume=solids.get("least_by_volume"),
        sludge_m3=solids.get("sludge_m3"),
        scum_m3=solids.get("scum_m3"),
    )


def _measure(figure: Uncertain | None) -> Measure | None:
    return figure.measure() if figure else None


def _may_stand_full(level: str | None) -> bool:
    return level not in ("above_outlet", "below_outlet")


def _liquid_depth(readings: Readings, full: Uncertain | None, level: str | None) -> tuple[Uncertain | None, bool]:
    """Today's water line: as read, or else the full depth, unless the water was seen to stand higher or lower."""
    read = one_of(readings.liquid_depth, min, MARK_ERROR_M)
    if read:
        return Uncertain.read("wet line", read[0], hypot(read[1], FLOOR_ERROR_M)), False
    if full is None or not _may_stand_full(level):
        return None, False
    return (full if level == "at_outlet" else full.also("level not seen", LEVEL_NOT_SEEN_ERROR_M)), True


def _sludge(counted: Reading | None, times: int = 1) -> Uncertain | None:
    """The sludge by the reading that counts, of so many.

    Mark and stain are read anew each time, so their error shrinks. The floor is the same, and so is doubt in the words.
    """
    if counted is None:
        return None
    anew = REPEATED[min(times, 3)] * hypot(MARK_ERROR_M, STAIN_ERROR_M)
    doubt = sqrt(max((counted.error_m or 0.0) ** 2 - MARK_ERROR_M**2, 0.0))
    return Uncertain.read("stain", counted.m, hypot(anew, doubt, FLOOR_ERROR_M))


def _scum(readings: Readings) -> Scum | None:
    """The crust from what was read of it; the rule of two thirds only for a part that nobody measured."""
    total = _part("scum total", readings.scum_total, FOOT_ERROR_M)
    above = _part("scum above", readings.scum_above, MARK_ERROR_M)
    below = _part("scum below", readings.scum_below, FOOT_ERROR_M)
    if above and below:
        return Scum(total or above + below, above, below, "total", False)
    if total and below:
        return Scum(total, total - below, below, "total", False)
    if total and above:
        return Scum(total, above, total - above, "total", False)
    if total:
        below = (total * HANGS_BELOW).also("two thirds", HANGS_ERROR * total.value)
        return Scum(total, total - below, below, "total", True)
    if above:
        whole = above * (1 / (1 - HANGS_BELOW))
        whole = whole.also("two thirds", HANGS_ERROR * whole.value / (1 - HANGS_BELOW))
        return Scum(whole, above, whole - above, "above", True)
    if below:
        whole = below * (1 / HANGS_BELOW)
        whole = whole.also("two thirds", HANGS_ERROR * whole.value / HANGS_BELOW)
        return Scum(whole, whole - below, below, "below", True)
    return None


def _part(cause: str, readings: list[Reading], error_m: float) -> Uncertain | None:
    read = one_of(readings, max, error_m)
    return Uncertain.read(cause, *read) if read else None


def _outlet_height(
    tank: Tank, vessel: Vessel, readings: Readings, depth: Uncertain | None, line: Uncertain | None
) -> tuple[Uncertain | None, bool]:
    """The outlet device's bottom edge above the floor, and whether it is assumed.

    A reading of this check counts from today's water line, a fact from the `line` of the full tank.
    """
    read = one_of(readings.outlet_bottom_below_surface, max, FOOT_ERROR_M)
    if read and depth:
        return depth - Uncertain.read("outlet edge", *read), False
    if line is None:
        return None, False
    below = outlet_below_surface(tank, vessel, line.value)
    return line - Uncertain.read("outlet edge", below.metres, below.error), below.assumed


def _solids(vessel: Vessel, depth: Uncertain | None, sludge: Uncertain | None, scum: Scum | None) -> dict[str, Measure]:
    """Volumes of both layers and their shares of the liquid, by depth and by volume."""
    size = Uncertain.read("vessel", 0.0, vessel.relative_error)
    found: dict[str, Measure] = {}
    low = high = None
    if sludge:
        low = combined(vessel.volume_below(sludge.value), (sludge, vessel.surface_area(sludge.value)))
        found["sludge_m3"] = combined(low.value, (low, 1.0), (size, low.value)).measure()
    if scum and depth and depth.value >= NO_LIQUID_M:
        high = _crust_volume(vessel, depth, scum)
        found["scum_m3"] = combined(high.value, (high, 1.0), (size, high.value)).measure()
    if depth is None or depth.value < NO_LIQUID_M:
        return found
    whole = combined(vessel.volume_below(depth.value), (depth, vessel.surface_area(depth.value)))
    which = "solids" if sludge and scum else "least"
    thick = sludge + scum.total if sludge and scum else sludge or (scum and scum.total)
    bulk = low + high if low and high else low or high
    if thick and bulk:
        found[f"{which}_by_depth"] = _share(thick, depth).measure()
        found[f"{which}_by_volume"] = _share(bulk, whole).measure()
    return found


def _crust_volume(vessel: Vessel, depth: Uncertain, scum: Scum) -> Uncertain:
    """What hangs in the water, and above it the same floor area all the way: V(D) − V(D − below) + A(D)·above."""
    line, hanging = depth.value, scum.below.value
    surface, under = vessel.surface_area(line), vessel.surface_area(line - hanging)
    step = 1e-4 * line
    widening = (vessel.surface_area(line + step) - vessel.surface_area(line - step)) / (2 * step)
    volume = vessel.volume_below(line) - vessel.volume_below(line - hanging) + surface * scum.above.value
    by_line = surface - under + widening * scum.above.value
    return combined(volume, (depth, by_line), (scum.below, under), (scum.above, surface))


def _share(part: Uncertain, whole: Uncertain) -> Uncertain:
    share = part.value / whole.value
    return combined(share, (part, 1 / whole.value), (whole, -share / whole.value))
