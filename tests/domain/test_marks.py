"""Marks for pole and scum stick: a reading at a mark passes, one step past it does not."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.household import Box, Drum, Tank
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import Limit, RuleSet, stand
from selfcheck.domain.marks import STEP_M, marks
from selfcheck.domain.shapes import vessel

INCH = 0.0254
TANK = Tank(
    shape=Box(length_m=2.44, width_m=1.27),
    liquid_depth_m=48 * INCH,
    outlet_bottom_below_surface_m=17 * INCH,
    outlet_top_above_surface_m=6 * INCH,
)
DRUM = Tank(shape=Drum(diameter_m=1.5, length_m=2.5, ends="round"), liquid_depth_m=1.2)
OUTLET = (Limit("sludge_to_outlet", inches=12), Limit("scum_to_outlet", inches=6))
RULES = {
    "outlet": RuleSet("a", "A", "", "none", OUTLET),
    "quarter": RuleSet("b", "B", "", "none", (*OUTLET, Limit("solids_by_depth", share=0.25))),
    "third": RuleSet("c", "C", "", "none", (Limit("solids_by_volume", share=0.333333),)),
}


def calls(rule_set: RuleSet, tank: Tank, **kinds: float) -> set[str]:
    read = Readings(
        **{kind: [Reading(m=value)] for kind, value in {"liquid_depth": tank.liquid_depth_m, **kinds}.items()}
    )
    form = vessel(tank)
    return {standing.call for standing in stand(rule_set, layers(tank, form, read, "at_outlet"), form)}


def test_marks_of_a_plain_tank_by_hand() -> None:
    """Outlet edge 31 in up: sludge may stand 19 in, less 1.28 errors of 1.03 in; 17.7 in down to the half inch."""
    found = marks(RULES["outlet"], TANK, vessel(TANK), "us", scum_m=0.0)
    assert found.wet_line_m == pytest.approx(48 * INCH)
    assert found.outlet_edge_m == pytest.approx(17 * INCH)
    assert found.book_sludge_m == pytest.approx(17.5 * INCH)
    assert not found.outlet_assumed


@settings(max_examples=60)
@given(
    st.sampled_from(sorted(RULES)),
    st.sampled_from([TANK, DRUM]),
    st.sampled_from(["us", "metric"]),
    st.floats(0, 0.1),
)
def test_at_the_mark_under_and_one_step_past_it_not(name: str, tank: Tank, units: str, scum: float) -> None:
    rule_set, step = RULES[name], STEP_M[units]
    found = marks(rule_set, tank, vessel(tank), units, scum_m=scum)
    mark = found.book_sludge_m
    assert mark is not None
    assert mark / step == pytest.approx(round(mark / step))
    if mark > 0:
        assert calls(rule_set, tank, sludge=mark, scum_total=scum) <= {"under"}
    assert calls(rule_set, tank, sludge=mark + step, scum_total=scum) & {"over", "close"}


def test_scum_mark_changes_the_call_too() -> None:
    found = marks(RULES["quarter"], TANK, vessel(TANK), "us", sludge_m=4 * INCH)
    assert found.book_scum_m is not None
    assert calls(RULES["quarter"], TANK, sludge=4 * INCH, scum_below=found.book_scum_m) == {"under"}
    past = calls(RULES["quarter"], TANK, sludge=4 * INCH, scum_below=found.book_scum_m + found.step_m)
    assert past & {"over", "close"}


def test_thicker_crust_lowers_the_sludge_mark() -> None:
    rows = marks(RULES["quarter"], TANK, vessel(TANK)).by_crust
    heights = [row.book_sludge_m for row in rows]
    assert heights == sorted(heights, reverse=True)
    assert heights[0] > heights[2]
    assert [round(row.scum_above_m / INCH) for row in rows] == [0, 1, 2, 3, 4, 5]


def test_expected_crust_lowers_the_mark_and_no_expectation_takes_both_growing() -> None:
    bare = marks(RULES["third"], TANK, vessel(TANK), scum_m=0.0).book_sludge_m
    crusted = marks(RULES["third"], TANK, vessel(TANK), scum_m=6 * INCH).book_sludge_m
    both = marks(RULES["third"], TANK, vessel(TANK)).book_sludge_m
    assert bare is not None
    assert crusted is not None
    assert both is not None
    assert crusted < both < bare


def test_no_mark_lies_where_a_layer_reaches_the_outlet_whatever_the_rule_allows() -> None:
    """By hand: the edge 31 in up, less 1.28 errors of 1.03 in, is 29.7; 17 in of water, less 1.28 of 0.71, is 16.1."""
    only_scum = RuleSet("d", "D", "", "none", (Limit("scum", inches=40),))
    only_sludge = RuleSet("e", "E", "", "none", (Limit("sludge", inches=40),))
    for loose in (only_scum, only_sludge):
        found = marks(loose, TANK, vessel(TANK), scum_m=0.0, sludge_m=0.0)
        assert found.book_sludge_m == pytest.approx(29.5 * INCH)
        assert found.book_scum_m == pytest.approx(16 * INCH)


def test_assumed_outlet_and_unknown_depth_are_said() -> None:
    found = marks(RULES["outlet"], Tank(volume_m3=3.8), vessel(Tank(volume_m3=3.8)))
    assert found.outlet_assumed
    assert found.wet_line_m is None
