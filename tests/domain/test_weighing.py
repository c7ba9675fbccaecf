"""Readings against one rule set: which one decides, what they cite, and what keeps them from settling it."""

from __future__ import annotations

import random

import pytest

from selfcheck.domain.agreement import deciding
from selfcheck.domain.shapes import vessel
from selfcheck.domain.weighing import Scene, Weighed, greatest, weigh
from tests.cases import INCH, build, rule_sets


def weighed(
    rules: str = "us-epa-homeowner", *, level: str = "at_outlet", filling: bool = False, **seen: list[float]
) -> Weighed:
    case = build(**seen)
    tank = case.household.tank()
    scene = Scene(tank, vessel(tank), rule_sets()[rules], level, None, filling)
    return weigh(scene, case.checks[0].seen.readings)


def decides(*inches: float) -> float:
    readings = build(sludge=list(inches)).checks[0].seen.readings
    return deciding(readings).sludge[0].m / INCH


@pytest.mark.parametrize(
    ("readings", "inches"),
    [
        ((5,), 5),
        ((5, 5.5), 5.5),  # two that agree: the higher
        ((5, 6), 6),
        ((5, 9), 6),  # two that do not: an inch above the lower, and the rest is a contradiction
        ((9, 5), 6),
        ((9, 15, 15.5), 15),  # the median
        ((4, 6, 4.5), 4.5),
        ((4, 5, 6, 7), 6),  # of two middle ones the higher
    ],
)  # fmt: skip
def test_the_reading_that_decides(readings: tuple[float, ...], inches: float) -> None:
    assert decides(*readings) == pytest.approx(inches, abs=1e-3)


def test_a_higher_second_reading_never_lowers_the_one_that_decides() -> None:
    heights = [decides(5, 5 + step / 4) for step in range(40)]
    assert heights == sorted(heights)


@pytest.mark.parametrize("count", [1, 2, 3, 4])
def test_a_higher_reading_never_makes_the_chance_smaller(count: int) -> None:
    chance = random.Random(count)
    case = build()
    scene = Scene(case.household.tank(), vessel(case.household.tank()), rule_sets()["us-epa-homeowner"], None, None)

    def over(inches: list[float]) -> float:
        return greatest(scene.stand(deciding(build(sludge=inches).checks[0].seen.readings))) or 0.0

    for _ in range(25):
        read = [chance.uniform(5, 12) for _ in range(count)]
        higher = [one + (chance.uniform(0, 4) if chance.random() < 0.5 else 0.0) for one in read]
        assert over(higher) >= over(read) - 1e-12, (read, higher)


def test_a_limit_cites_what_it_rests_on_and_nothing_else() -> None:
    found = {one.id: one for one in weighed().findings}
    assert found["sludge_to_outlet_under"].uses == ("seen.readings.sludge",)
    assert set(found["scum_to_outlet_under"].uses) == {"seen.readings.scum_above"}
    # nobody saw the water stand at the outlet: the crust hangs where the wet line is
    unseen = {one.id: one for one in weighed(level="unknown").findings}
    assert set(unseen["scum_to_outlet_under"].uses) == {"seen.readings.scum_above", "seen.readings.liquid_depth"}
    assert "seen.readings.sludge" in found["solids_by_depth_under"].uses


def test_margins_by_hand() -> None:
    # outlet edge 48 − 17 = 31 in above the floor; sludge ends 4.5 in up, so 26.5 in of room where 12 are asked for
    found = {one.id: one for one in weighed().findings}
    assert found["sludge_to_outlet_under"].facts["margin"] == pytest.approx(14.5 * INCH, abs=1e-4)
    assert found["solids_by_depth_under"].facts["now"] == pytest.approx(7.5 / 48, abs=1e-4)


def test_what_was_not_read_is_named() -> None:
    assert weighed(sludge=[]).missing == ("sludge",)
    assert weighed(scum_above=[]).missing == ("scum",)
    assert weighed().missing == ()


def test_one_layer_may_be_over_by_itself() -> None:
    for rules in ("nh-1023-01", "wi-one-third"):
        thick = weighed(rules, sludge=[20, 20], scum_above=[]).findings
        assert [one.verdict for one in thick] == ["call_soon"]
        assert weighed(rules, sludge=[], scum_above=[7]).findings[0].verdict == "call_soon"
        assert all(one.verdict != "call_soon" for one in weighed(rules, sludge=[5, 5], scum_above=[]).findings)


def test_layers_that_do_not_fit_are_over_only_where_each_alone_is() -> None:
    each = {one.id for one in weighed(sludge=[40, 40], scum_above=[], scum_below=[25]).findings}
    assert {"over_whichever_is_wrong", "odd_layers_do_not_fit"} <= each
    one = {one.id for one in weighed(sludge=[60, 60]).findings}
    assert "odd_layers_do_not_fit" in one
    assert "over_whichever_is_wrong" not in one


def test_a_crust_thicker_than_the_liquid_is_a_slip() -> None:
    assert "layers_do_not_fit" in weighed(scum_above=[], scum_total=[60]).odd


def test_a_filling_tank_is_judged_as_it_will_stand() -> None:
    low = weighed(level="below_outlet", liquid_depth=[20], sludge=[0], scum_above=[0])
    assert any(one.verdict == "call_soon" for one in low.findings)
    filling = weighed(level="below_outlet", filling=True, liquid_depth=[20], sludge=[0], scum_above=[0])
    assert all(one.verdict == "carry_on" for one in filling.findings)
    assert filling.layers.liquid_depth is not None
    assert filling.layers.liquid_depth.value == pytest.approx(20 * INCH, abs=1e-4)


def test_a_high_crust_wants_the_outlets_top() -> None:
    case = build({"set": {"household.tanks.0.outlet_top_above_surface_m": "null"}}, scum_above=[2.5])
    tank = case.household.tank()
    scene = Scene(tank, vessel(tank), rule_sets()["ne-title-124"], "at_outlet", None)
    assert "outlet_top_not_known" in {one.id for one in weigh(scene, case.checks[0].seen.readings).findings}
    low = case.checks[0].seen.readings.model_copy(
        update={"scum_above": build(scum_above=[1]).checks[0].seen.readings.scum_above}
    )
    assert "outlet_top_not_known" not in {one.id for one in weigh(scene, low).findings}
