"""The better reading is offered exactly when it could turn the call, and named."""

from __future__ import annotations

import random
from typing import Any

import pytest

from selfcheck.domain.better_reading import better_readings
from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Tank
from selfcheck.domain.shapes import vessel
from selfcheck.domain.weighing import Scene, calls
from tests.cases import build, judged, rule_sets

UNKNOWN_OUTLET = {"set": {"household.tanks.0.outlet_bottom_below_surface_m": None}}


def scene(rules: str = "us-epa-homeowner", level: str | None = "at_outlet", **tank: Any) -> Scene:
    facts = build().household.tank().model_copy(update=tank)
    return Scene(facts, vessel(facts), rule_sets()[rules], level, None)


def inches(**kinds: float | list[float]) -> Readings:
    made = {
        kind: [Reading(m=one * INCH) for one in (values if isinstance(values, list) else [values])]
        for kind, values in kinds.items()
    }
    return Readings(**made)


def test_no_reading_is_asked_for_that_could_change_nothing() -> None:
    assert better_readings(scene(), inches(sludge=[3, 3], scum_above=0.5, liquid_depth=48)) == ()
    assert better_readings(scene(), inches(sludge=[20, 20], scum_above=3, liquid_depth=48)) == ()
    assert better_readings(scene(), Readings()) == ()


def test_the_outlet_is_asked_for_only_near_its_limits() -> None:
    blind = {"outlet_bottom_below_surface_m": None}
    # 35 ± 5 % of 48 in: the edge hangs 16.8 ± 2.4 in down, 31.2 in over the floor. A limit of 12 in lies near 19 in.
    by_mason = {sludge: better_readings(scene("mason-wa", **blind), inches(sludge=[sludge, sludge], liquid_depth=48))
                for sludge in (5, 19, 27)}  # fmt: skip
    assert by_mason == {5: (), 19: ("outlet_depth",), 27: ()}
    assert better_readings(scene("mason-wa"), inches(sludge=[19, 19], liquid_depth=48)) == ()


def test_the_crust_is_asked_for_by_the_part_nobody_read() -> None:
    # Above the water stands 1 in for 2 in below, 2.7 to 4 at most; 17 in less that leaves 13, the limit of 6 in is far.
    near = {"scum_above": 5.0}  # 10 ± 3 in below: 7 in are left, and the limit is 6
    assert better_readings(scene("ma-310-cmr-15-351"), inches(sludge=[3, 3], liquid_depth=48, scum_above=1)) == ()
    assert "scum_below" in better_readings(scene("mason-wa"), inches(sludge=[3, 3], liquid_depth=48, **near))
    both = inches(sludge=[3, 3], liquid_depth=48, scum_above=5, scum_below=8)
    assert "scum_below" not in better_readings(scene("mason-wa"), both)


def test_a_third_sludge_reading_where_two_disagree_about_a_limit() -> None:
    assert better_readings(scene(), inches(sludge=[3, 5], scum_total=1, liquid_depth=48)) == ()
    assert better_readings(scene(), inches(sludge=[9, 13], scum_total=1, liquid_depth=48)) == ("sludge_third",)
    # 7.4 of 48 in with a crust of 4: the higher of two is too close to 25 %, the lower is not
    near = inches(sludge=[6.4, 7.4], scum_total=4, liquid_depth=48)
    assert "sludge_third" in better_readings(scene(), near)
    assert "sludge_third" not in better_readings(scene(), inches(sludge=[6.4, 7.4, 7], scum_total=4, liquid_depth=48))
    assert better_readings(scene(), inches(sludge=[3, 4], scum_total=4, liquid_depth=48)) == ()


def test_a_crust_is_felt_for_as_deep_as_its_share_may_hang() -> None:
    """4 in above may be 4 of 20 in whole: the 16 in below reach where the 8 ± 2 × 2.4 in of a straight line do not."""
    high = {"scum_above": 4.0, "liquid_depth": 48.0, "sludge": [3.0, 3.0]}
    ne = scene("ne-title-124", outlet_bottom_below_surface_m=17.4 * INCH)
    assert "scum_below" in better_readings(ne, inches(**high))


def test_the_size_of_a_guessed_tank_where_a_limit_goes_by_capacity() -> None:
    guessed = Tank(liquid_depth_m=48 * INCH, outlet_bottom_below_surface_m=17 * INCH)
    by_table = Scene(guessed, vessel(guessed, 3), rule_sets()["phs-526"], "at_outlet", None)
    found = [better_readings(by_table, inches(sludge=[s, s], scum_total=1, liquid_depth=48), 3) for s in (2, 24)]
    assert found == [(), ("tank_size",)]


def test_the_wet_line_where_nobody_saw_where_the_water_stood() -> None:
    found = better_readings(scene("mason-wa", level=None), inches(sludge=[3, 3], scum_below=13))
    assert "liquid_depth" in found


@pytest.mark.parametrize("seed", range(60))
def test_what_is_not_offered_could_not_have_changed_it(seed: int) -> None:
    """Whatever within two standard errors the outlet's true depth is, the call stays, unless it was offered."""
    chance = random.Random(seed)
    blind = scene(chance.choice(["mason-wa", "us-epa-homeowner"]), outlet_bottom_below_surface_m=None)
    sludge = chance.uniform(8, 28)
    readings = inches(sludge=[sludge, sludge], scum_total=chance.uniform(0, 12), liquid_depth=48)
    offered = "outlet_depth" in better_readings(blind, readings)
    now = calls(blind.stand(readings))
    turned = False
    for share in (0.25, 0.30, 0.35, 0.40, 0.45):
        felt = readings.model_copy(update={"outlet_bottom_below_surface": [Reading(m=share * 48 * INCH)]})
        turned = turned or calls(blind.stand(felt)) != now
    assert offered == turned


def test_the_verdict_names_it_unless_somebody_is_called_anyway() -> None:
    near = {"sludge": [17, 17], "scum_above": [0]}
    blind = {"set": {**UNKNOWN_OUTLET["set"], "household.rules": "mason-wa"}}
    assert judged(blind, **near).better == ("outlet_depth",)
    assert judged(blind, **near, lid="cracked").better == ()
    assert judged(blind, sludge=[3, 3]).better == ()
