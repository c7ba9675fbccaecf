"""How often the forecast's 80 % band holds the truth, on invented households whose truth is known.

    python -m tests.benchmarks.calibration [households]

Each household draws its rates from what the forecast takes as known beforehand (`rate_factor` makes all rates higher
than that), lives for some years, and is read once a year with errors of the size that the layers carry. The truth is
worked out here in closed form for a box, apart from the program's own tables and grid.
"""

from __future__ import annotations

import math
import random
import sys
from dataclasses import dataclass
from datetime import date, timedelta

from selfcheck.domain.agreement import AGREE_WITHIN_M
from selfcheck.domain.check import Check, PumpOut, Reading, Readings, Seen
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.household import Box, Household, Occupancy, Tank
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import Limit
from selfcheck.domain.shapes import Vessel, vessel

PUMPED = date(2020, 5, 20)
INCH = 0.0254
LIMITS = (Limit("sludge_to_outlet", inches=12), Limit("scum_to_outlet", inches=6), Limit("solids_by_depth", share=0.25))
#: standard errors of the floor, which all dips of a day share, of one dip (mark and stain), and of a scum stick
FLOOR_ERROR = 0.5 * INCH
DIP_ERROR = math.hypot(0.25, 0.5) * INCH
SCUM_ERROR = 0.5 * INCH
OUTLET_ERROR = 0.5 * INCH


@dataclass(frozen=True)
class Truth:
    """One household as it truly is."""

    people: float
    rate: float  # m³ a person in the first year
    power: float
    scum_share: float
    length: float
    width: float
    depth: float
    outlet_below: float  # true depth of the outlet device's bottom edge below the water

    def layers(self, t: float) -> tuple[float, float]:
        """Sludge and scum thickness [m] after `t` years."""
        grown = self.rate * self.people * t**self.power / (self.length * self.width)
        return (1 - self.scum_share) * grown, self.scum_share * grown

    def crossing(self) -> float:
        """Years until the first of `LIMITS` is crossed: closed form for a box."""
        grown = min(
            (self.depth - self.outlet_below - 12 * INCH) / (1 - self.scum_share),
            (self.outlet_below - 6 * INCH) * 1.5 / self.scum_share,
            0.25 * self.depth,
        )
        years: float = (grown * self.length * self.width / (self.rate * self.people)) ** (1 / self.power)
        return years


def draw(dice: random.Random, rate_factor: float = 1.0) -> Truth:
    """A household from what is known beforehand, in a box of common size."""
    power = 0.0
    while not 0.5 <= power <= 1.1:
        power = dice.gauss(0.80, 0.12)
    depth = dice.uniform(1.0, 1.4)
    return Truth(
        people=dice.choice((1, 2, 3, 4, 5)),
        rate=0.140 * rate_factor * math.exp(dice.gauss(0.0, 0.55)),
        power=power,
        scum_share=1 / (1 + math.exp(-dice.gauss(-1.0, 0.7))),
        length=dice.uniform(2.0, 3.2),
        width=dice.uniform(1.2, 1.8),
        depth=depth,
        outlet_below=0.35 * depth + dice.gauss(0.0, OUTLET_ERROR),
    )


def look(truth: Truth, readings: int, dice: random.Random, dips: int = 1) -> Forecast:
    """The forecast after one reading a year, each of so many dips, starting at the last.

    Two dips over an inch apart are followed by a third, as the conversation asks for one.
    """
    checks = []
    for year in range(1, readings + 1):
        day = PUMPED + timedelta(days=365 * year)
        sludge, scum = truth.layers((day - PUMPED).days / 365.25)
        there = sludge + dice.gauss(0.0, FLOOR_ERROR)
        dipped = [max(there + dice.gauss(0.0, DIP_ERROR), 0.0) for _ in range(dips)]
        if max(dipped) - min(dipped) > AGREE_WITHIN_M:
            dipped.append(max(there + dice.gauss(0.0, DIP_ERROR), 0.0))
        seen = Readings(
            sludge=[Reading(m=height) for height in dipped],
            scum_total=[Reading(m=max(scum + dice.gauss(0.0, SCUM_ERROR), 0.0))],
        )
        checks.append(Check(id=day.isoformat(), on=day, seen=Seen(readings=seen)))
    tank, inside = tank_of(truth)
    household = Household(occupancy=[Occupancy(from_=date(2010, 1, 1), people=truth.people)])
    today = PUMPED + timedelta(days=365 * readings)
    found = forecast(household, tank, inside, checks, [PumpOut(on=PUMPED, sludge_left_m=0.0)], today)
    if not checks:
        return found
    return found.read_on(checks[-1].on, layers(tank, inside, checks[-1].seen.readings, "at_outlet"))


def look_unknown(truth: Truth, readings: int, dice: random.Random, years: float = 8.0) -> tuple[Forecast, date]:
    """The same where nobody knows when the tank was emptied, and the day it truly was.

    They moved in on `PUMPED` and read it first after so many `years`; 4 in 5 had it emptied once on the way.
    """
    days = int(365.25 * years)
    emptied = PUMPED + timedelta(days=int(dice.uniform(0, days - 100)) if dice.random() < 0.8 else 0)
    checks = []
    for year in range(readings):
        day = PUMPED + timedelta(days=days + 365 * year)
        sludge, scum = truth.layers((day - emptied).days / 365.25)
        there = sludge + dice.gauss(0.0, FLOOR_ERROR)
        seen = Readings(
            sludge=[Reading(m=max(there + dice.gauss(0.0, DIP_ERROR), 0.0)) for _ in range(2)],
            scum_total=[Reading(m=max(scum + dice.gauss(0.0, SCUM_ERROR), 0.0))],
        )
        checks.append(Check(id=day.isoformat(), on=day, seen=Seen(readings=seen)))
    tank, inside = tank_of(truth)
    household = Household(occupancy=[Occupancy(from_=PUMPED, people=truth.people)])
    found = forecast(household, tank, inside, checks, [], checks[-1].on)
    return found.read_on(checks[-1].on, layers(tank, inside, checks[-1].seen.readings, "at_outlet")), emptied


def too_late(households: int, readings: int, seed: int, years: float = 8.0) -> float:
    """Share of the tanks not yet over, emptied nobody knows when, that are over before the 10 % date."""
    dice = random.Random(seed)
    late = there = 0
    while there < households:
        truth = draw(dice)
        found, emptied = look_unknown(truth, readings, dice, years)
        left = truth.crossing() - (found.today - emptied).days / 365.25
        if left > 0.0:
            there += 1
            first = found.due(LIMITS).p10
            late += first is None or left < (first - found.today).days / 365.25
    return late / households


def tank_of(truth: Truth) -> tuple[Tank, Vessel]:
    """The tank as its household knows it, and its inside."""
    tank = Tank(
        shape=Box(length_m=truth.length, width_m=truth.width),
        liquid_depth_m=truth.depth,
        outlet_bottom_below_surface_m=0.35 * truth.depth,
    )
    return tank, vessel(tank)


def held(found: Forecast, truth: Truth) -> bool:
    """Whether the 10 to 90 % dates hold the true date; beyond the horizon counts as one far date."""
    dates = found.due(LIMITS)
    horizon = (found.today - PUMPED).days / 365.25 + 40.0
    crossing = min(truth.crossing(), horizon + 1.0)
    low, high = (horizon + 1.0 if day is None else (day - PUMPED).days / 365.25 for day in (dates.p10, dates.p90))
    return low <= crossing <= high


def coverage(households: int, readings: int, seed: int, rate_factor: float = 1.0, dips: int = 1) -> float:
    """Share of the households whose true date the band holds."""
    dice = random.Random(seed)
    hits = 0
    for _ in range(households):
        truth = draw(dice, rate_factor)
        hits += held(look(truth, readings, dice, dips), truth)
    return hits / households


def main() -> None:
    """Print the share held for each number of readings."""
    households = int(sys.argv[1]) if len(sys.argv) > 1 else 4000
    for factor, dips in ((1.0, 1), (1.0, 2), (1.8, 1)):
        for readings in (0, 1, 2, 3, 5):
            share = coverage(households, readings, seed=1000 + readings, rate_factor=factor, dips=dips)
            told = f"{readings} readings of {dips} dips, {households} households: {100 * share:.1f} % held"
            print(f"rates x {factor}: {told}", flush=True)
    for readings in (1, 2, 3):
        share = too_late(households // 8, readings, seed=3000 + readings)
        told = f"emptied nobody knows when, {readings} readings: {100 * share:.1f} % over before the 10 % date"
        print(told, flush=True)


if __name__ == "__main__":
    main()
