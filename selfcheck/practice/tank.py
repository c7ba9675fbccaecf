"""A household and its tank, drawn from a number, with the truth that nobody knows of a real one.

The population is wider than what the forecast takes as known beforehand, and follows other choices of power and crust,
so that a verdict is not graded by its own assumptions. All spreads below are our choice.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from math import exp, pi
from typing import NamedTuple

from selfcheck.domain.check import PumpOut
from selfcheck.domain.conversions import GALLON, INCH
from selfcheck.domain.geometry import segment_area
from selfcheck.domain.history import DAYS_A_YEAR, course, years_between
from selfcheck.domain.household import Box, Disposal, Drum, Household, Material, Occupancy, Shape, Tank, Upright
from selfcheck.domain.layers import TWO_THIRDS_ERROR
from selfcheck.domain.outlet import HANGS_BELOW
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.practice.dice import Dice

#: A crust and sludge together never fill more than this share of the liquid: what comes after that leaves the tank.
MOST_SOLIDS = 0.85
#: How far the share of a crust that hangs below the water varies: what the ±20 % of the rule of two thirds amounts to.
HANG_SPREAD = TWO_THIRDS_ERROR * (1.0 - HANGS_BELOW)
#: A lying drum is filled to this share of its height.
FULL_TO = 0.80

#: Fields of a check: what a sound tank shows.
SOUND: Mapping[str, str | tuple[str, ...]] = {
    "level": "at_outlet", "smell": "earthy", "surface": "brown", "inlet_tee": "in_place", "outlet_tee": "in_place",
    "wall": "sound", "lid": "sound", "under_lid": "clean", "inflow": "none", "filter": "not_fitted",
    "alarm": "not_fitted", "roots": "none", "yard": (), "house": (), "people_hurt": "no",
}  # fmt: skip
#: Faults: the chance that a tank comes to have it, and what then shows.
FAULTS: tuple[tuple[float, str, Mapping[str, str | tuple[str, ...]]], ...] = (
    (0.05, "outlet_tee_gone", {"outlet_tee": "missing"}),
    (0.03, "outlet_tee_loose", {"outlet_tee": "loose"}),
    (0.03, "inlet_tee_gone", {"inlet_tee": "missing"}),
    (0.04, "acid", {"wall": "pitted", "surface": "pale_grey", "smell": "rotten_egg"}),
    (0.02, "crumbling", {"wall": "crumbling"}),
    (0.03, "lid_cracked", {"lid": "cracked"}),
    (0.03, "running_toilet", {"inflow": "steady"}),
    (0.03, "roots", {"roots": "seen"}),
    (0.04, "field_wet", {"yard": ("wet_smelly",)}),
    (0.03, "outlet_blocked", {"level": "above_outlet", "house": ("slow_all_drains",)}),
    (0.02, "leak", {"level": "below_outlet"}),
)


class Truth(NamedTuple):
    """What is in the tank on a day, without error. Metres; `signs`: fields of a check.

    `scum_below`: what hangs below the water line of a tank that stands at its outlet; `outlet_below`: depth of the
    outlet device's bottom edge below that line.
    """

    on: date
    sludge: float
    scum: float
    scum_above: float
    scum_below: float
    liquid_depth: float
    outlet_below: float
    outlet_top: float
    solids_m3: float
    signs: Mapping[str, str | tuple[str, ...]]


class PracticeTank(NamedTuple):
    """A household with a tank whose truth is known. Make one with `draw`; let years pass with `truth`.

    `household`: as on record, its sizes measured with error, its outlet perhaps not at all. `tank`: as it is built;
    its outlet device ends `outlet_below` the water line and `outlet_top` above it [m].
    `rate`: solids [m³ a person in the first year]; `power`: of time; `crust`: the part that floats; `hang`: the part of
    the crust below the water line. `faults`: what shows, and from when.
    """

    seed: int
    household: Household
    tank: Tank
    vessel: Vessel
    outlet_below: float
    outlet_top: float
    rate: float
    power: float
    crust: float
    hang: float
    faults: tuple[tuple[date, str, Mapping[str, str | tuple[str, ...]]], ...]
    pump_outs: tuple[PumpOut, ...]

    def truth(self, day: date) -> Truth:
        """The tank on a day after its first pump-out."""
        solids = self._solids(day)
        depth = self.vessel.liquid_depth_m
        sludge = self.vessel.height_of((1.0 - self.crust) * solids)
        scum = self._crust(self.crust * solids)
        if sludge + self.hang * scum > MOST_SOLIDS * depth:
            share = MOST_SOLIDS * depth / (sludge + self.hang * scum)
            sludge, scum = share * sludge, share * scum
        signs = dict(SOUND)
        for since, _, shows in self.faults:
            if since <= day:
                signs.update(shows)
        if scum < 0.25 * INCH and signs["surface"] == "brown":
            signs["surface"] = "no_crust"
        below = self.hang * scum
        return Truth(day, sludge, scum, scum - below, below, depth, self.outlet_below, self.outlet_top, solids, signs)

    def pumped(self, day: date) -> PracticeTank:
        """The same after one more pump-out, everything out."""
        return self._replace(pump_outs=(*self.pump_outs, PumpOut(on=day, sludge_left_m=0.0)))

    def mended(self, day: date) -> PracticeTank:
        """The same with every fault that shows by that day seen to."""
        return self._replace(faults=tuple(one for one in self.faults if one[0] > day))

    def _solids(self, day: date) -> float:
        start = max(one.on for one in self.pump_outs if one.on <= day)
        t = years_between(start, day)
        if t <= 0.0:
            return 0.0
        aged: float = t ** (self.power - 1.0)
        return self.rate * course(self.household.occupancy, start).person_years(t) * aged

    def _crust(self, volume: float) -> float:
        """Thickness of a crust of this volume, with its own share below the water line."""
        depth, area = self.vessel.liquid_depth_m, self.vessel.surface_area(self.vessel.liquid_depth_m)
        low, high = 0.0, depth / self.hang
        for _ in range(50):
            thick = (low + high) / 2.0
            held = self.vessel.full_m3 - self.vessel.volume_below(depth - self.hang * thick)
            low, high = (thick, high) if held + area * (1.0 - self.hang) * thick < volume else (low, thick)
        return high


def draw(seed: int, today: date) -> PracticeTank:
    """The household and tank of a number. It was last pumped half a year to nine years before `today`."""
    dice = Dice(seed)
    depth = dice.uniform(38, 60) * INCH
    built, share = _built(dice, depth)
    outlet, top = share * depth, dice.uniform(4.0, 8.0) * INCH
    people = dice.one_of((1, 2, 2, 3, 3, 4, 4, 5, 6))
    emptied = today - timedelta(days=round(dice.uniform(0.5, 9.0) * DAYS_A_YEAR))
    disposal: Disposal = dice.one_of(("none", "none", "none", "sometimes", "daily"))
    months = dice.one_of((12, 12, 12, 12, 6))
    moved_in = emptied - timedelta(days=round(dice.uniform(0, 3000)))
    lived = [Occupancy(from_=moved_in, people=people, months_per_year=months, disposal=disposal)]
    if dice.happens(0.25):
        change = emptied + (today - emptied) * dice.uniform(0.1, 0.9)
        lived.append(lived[0].model_copy(update={"from_": change, "people": max(people + dice.one_of((-1, 1, 2)), 1)}))
    inside = vessel(built)
    faults = []
    for chance, name, shows in FAULTS:
        since, struck = emptied + (today - emptied) * dice.uniform(0.0, 3.0), dice.happens(chance)
        if struck:
            faults.append((since, name, shows))
    rules = dice.one_of(("us-epa-homeowner", "us-epa-homeowner", "mn-7080-2450", "ne-title-124", "nh-1023-01"))
    house = Household(
        name=f"Practice {seed}",
        bedrooms=max(people, 2),
        occupancy=lived,
        rules=rules,
        tanks=[_as_recorded(dice, built, depth, outlet, top)],
    )
    return PracticeTank(
        seed=seed,
        household=house,
        tank=built,
        vessel=inside,
        outlet_below=outlet,
        outlet_top=top,
        rate=0.140 * exp(dice.normal(0.0, 0.70)),
        power=dice.uniform(0.60, 1.00),
        crust=1.0 / (1.0 + exp(-dice.normal(-1.0, 0.9))),
        hang=min(max(dice.normal(HANGS_BELOW, HANG_SPREAD), 0.45), 0.9),
        faults=tuple(faults),
        pump_outs=(PumpOut(on=emptied, sludge_left_m=0.0),),
    )


def _built(dice: Dice, depth: float) -> tuple[Tank, float]:
    """The tank as it is built, and how far its outlet device reaches down, as a share of the depth."""
    volume = dice.uniform(750, 1750) * GALLON
    kind = dice.one_of(("box", "box", "box", "upright", "drum"))
    shape: Shape
    if kind == "box":
        width = dice.uniform(1.1, 1.6)
        shape = Box(length_m=volume / depth / width, width_m=width)
    elif kind == "upright":
        shape = Upright(diameter_m=(4.0 * volume / depth / pi) ** 0.5)
    else:
        across = depth / FULL_TO
        shape = Drum(diameter_m=across, length_m=volume / segment_area(across / 2.0, depth), ends="flat")
    share = dice.uniform(0.25, 0.35) if kind == "drum" else dice.uniform(0.30, 0.40)
    material: Material = dice.one_of(("concrete", "concrete", "plastic", "fibreglass"))
    return Tank(shape=shape, liquid_depth_m=depth, material=material, compartments=1, filter=False), share


def _as_recorded(dice: Dice, built: Tank, depth: float, outlet: float, top: float) -> Tank:
    """The tank as the household measured it or had it from a drawing; a third never learned where the outlet ends."""
    sizes = {name: value * (1.0 + dice.normal(0.0, 0.02)) for name, value in built.shape if isinstance(value, float)}
    known = not dice.happens(0.33)
    recorded = {
        "shape": built.shape.model_copy(update=sizes),
        "liquid_depth_m": depth + dice.normal(0.0, 0.5 * INCH),
        "outlet_bottom_below_surface_m": outlet + dice.normal(0.0, 0.5 * INCH) if known else None,
        "outlet_top_above_surface_m": top + dice.normal(0.0, 0.5 * INCH),
    }
    return built.model_copy(update=recorded)
