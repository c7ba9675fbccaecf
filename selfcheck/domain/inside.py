"""The inside of a tank as its last check found it: both compartments weighed, and how long water rests there."""

from __future__ import annotations

from typing import NamedTuple

from selfcheck.domain.better_reading import better_readings
from selfcheck.domain.check import Check, Reading, Readings
from selfcheck.domain.circumstances import lately_pumped
from selfcheck.domain.findings import Finding
from selfcheck.domain.flow import detention_days, flow
from selfcheck.domain.gaps import disagreements, unread
from selfcheck.domain.history import years_between
from selfcheck.domain.household import can_be
from selfcheck.domain.layers import Layers
from selfcheck.domain.shapes import Vessel, compartments
from selfcheck.domain.told import Told
from selfcheck.domain.weighing import IMPOSSIBLE, Scene, Weighed, weigh


class Inside(NamedTuple):
    """What was read in a tank and what it comes to; empty where nobody looked, unweighed where it was pumped since.

    `second`: layers of the second compartment. `better`: ids of readings that could turn the call around.
    `detention`: days that water rests in the clear zone.
    """

    scene: Scene | None = None
    readings: Readings | None = None
    weighed: Weighed | None = None
    second: Layers | None = None
    better: tuple[str, ...] = ()
    detention: float | None = None
    findings: tuple[Finding, ...] = ()

    @property
    def layers(self) -> Layers | None:
        """The layers, as long as they still describe the tank."""
        return self.weighed.layers if self.weighed else None


def look_inside(told: Told) -> Inside:
    """The readings of the check that speaks, weighed against the household's own rules."""
    check, today, limits = told.check, told.case.today, told.rules.limits
    if check is None:
        return Inside()
    years = years_between(told.last, today) if told.last else None
    filling = check.seen.level == "below_outlet" and lately_pumped(told.body, check, told.emptied, told.ahead)
    scene = Scene(told.tank, told.body, told.rules, check.seen.level, years, filling)
    readings = _with_no_crust(check)
    if told.pumped_since:
        return Inside(scene, readings)
    weighed = weigh(scene, readings)
    found = [*weighed.findings, *unread(weighed.missing, limits, told.ahead, today)]
    if readings is not check.seen.readings:  # a crust nobody saw stands in for a reading, and hides no estimate
        found += [one for one in unread(("scum",), limits, told.ahead, today) if one.verdict == "call_soon"]
    found += disagreements(check, told.record.earlier, told.last)
    second: Layers | None = None
    if check.seen.second_compartment is not None:
        other = weigh(scene, with_water_line(check.seen.second_compartment, readings))
        second = other.layers
        weighed = weighed._replace(beside=other.judged)
        found += [_of_second(one) for one in other.findings]
    household = told.case.household
    fits = not IMPOSSIBLE & {*weighed.odd}
    return Inside(
        scene,
        readings,
        weighed,
        second,
        better_readings(scene, readings, household.bedrooms) if fits else (),
        _detention(told, weighed.layers, second),
        tuple(found),
    )


def _with_no_crust(check: Check) -> Readings:
    """The readings; where nobody measured a crust because there was none to see, its thickness is nothing."""
    readings = check.seen.readings
    if check.seen.surface == "no_crust" and not (readings.scum_total or readings.scum_above or readings.scum_below):
        return readings.model_copy(update={"scum_total": [Reading(m=0.0, said="")]})
    return readings


def with_water_line(second: Readings, first: Readings) -> Readings:
    """The second compartment's readings with the water line of the first: it is the same in both."""
    return second if second.liquid_depth else second.model_copy(update={"liquid_depth": first.liquid_depth})


def _of_second(finding: Finding) -> Finding:
    uses = tuple(path.replace("seen.readings", "seen.second_compartment") for path in finding.uses)
    return finding._replace(facts={**finding.facts, "compartment": 2.0}, uses=uses)


def _detention(told: Told, first: Layers, second: Layers | None) -> float | None:
    """Days that water rests in the clear zone while everybody is at home; None where it cannot be told.

    A compartment that nobody read counts as the first one does, which is the fuller.
    """
    household, today = told.case.household, told.case.today
    clear = 0.0
    for place, part in enumerate(compartments(told.tank, told.body)):
        room = _clear_m3(second if place and second is not None else first, part)
        if room is None:
            room = _clear_m3(first, part)
        if room is None:
            return None
        clear += room
    there = [one for one in household.occupancy if can_be(one.from_) and one.from_ <= today]
    people = max(there, key=lambda one: one.from_).people if there else float(household.bedrooms or 0)
    litres = flow(people, household.meter, today).litres_per_day
    return detention_days(clear, litres) if litres > 0 else None


def _clear_m3(found: Layers, part: Vessel) -> float | None:
    """Volume between the layers of one compartment [m³]; None where they do not tell."""
    if found.liquid_depth is None or found.sludge is None or found.scum_below is None:
        return None
    below = part.volume_below(found.liquid_depth.value - found.scum_below.value)
    return max(below - part.volume_below(found.sludge.value), 0.0)
