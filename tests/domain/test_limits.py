"""Limits: their units, the chance of being over, and the margin for the forecast."""

from __future__ import annotations

from math import inf

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError
from scipy.stats import norm

from selfcheck.domain.household import Box, Drum, Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import Limit, RuleSet, call_of, chance_over, margin, margin_of, stand
from selfcheck.domain.shapes import vessel
from selfcheck.domain.uncertain import Measure

TANK = Tank(
    shape=Box(length_m=2.44, width_m=1.27),
    liquid_depth_m=1.2192,
    outlet_bottom_below_surface_m=0.43,
    outlet_top_above_surface_m=0.15,
)
DRUM = Tank(shape=Drum(diameter_m=1.5, length_m=2.4, ends="dished"), liquid_depth_m=1.2)


def only(*limits: Limit) -> RuleSet:
    return RuleSet("one", "One", "", "none", limits)


@pytest.mark.parametrize(
    ("limit", "value"),
    [
        (Limit("sludge_to_outlet", inches=12), 0.3048),
        (Limit("sludge", millimetres=500), 0.5),
        (Limit("solids_by_depth", share=0.25), 0.25),
        (Limit("years", years=3), 3),
        (Limit("scum", 0.2), 0.2),
    ],
)
def test_units_as_printed_become_si(limit: Limit, value: float) -> None:
    assert limit.value == pytest.approx(value)


@pytest.mark.parametrize(
    "given_limit",
    [
        {"kind": "sludge", "share": 0.25},
        {"kind": "sludge", "inches": 12, "millimetres": 300},
        {"kind": "sludge"},
        {"kind": "solids_by_depth", "share": 25},
        {"kind": "solids_by_volume", "share": -0.25},
        {"kind": "sludge_to_outlet_by_table", "inches": 12},
        {"kind": "depth_of_despair", "inches": 12},
        {"kind": "scum", "inchs": 8},
        {"kind": "sludge_to_outlet_by_table", "table": {"liquid_depth_feet": [3, 2], "rows": []}},
        {
            "kind": "sludge_to_outlet_by_table",
            "table": {
                "liquid_depth_feet": [2, 3],
                "rows": [{"gallons": 750, "inches": [5]}, {"gallons": 900, "inches": [4, 5]}],
            },
        },
    ],
)
def test_a_limit_that_makes_no_sense_is_refused(given_limit: dict[str, object]) -> None:
    with pytest.raises(ValidationError):
        TypeAdapter(Limit).validate_python(given_limit)


@given(st.floats(-5, 5), st.floats(0.01, 5))
def test_chance_is_the_normal_tail(m: float, u: float) -> None:
    assert chance_over(m, u) == pytest.approx(float(norm.cdf(-m / u)), abs=1e-12)


def test_chance_without_error() -> None:
    assert (chance_over(0.1, 0), chance_over(0, 0), chance_over(-0.1, 0)) == (0.0, 0.5, 1.0)


@pytest.mark.parametrize(
    ("share", "call"),
    [(0.20, "under"), (0.2371, "under"), (0.2372, "close"), (0.2499, "close"), (0.25, "over"), (0.4, "over")],
)
def test_calls_turn_at_ten_and_fifty_percent(share: float, call: str) -> None:
    """With an error of 0.01, ten percent lies 1.2816 of them under the limit."""
    layers = Layers(solids_by_depth=Measure(share, 0.01))
    (standing,) = stand(only(Limit("solids_by_depth", share=0.25)), layers, vessel(TANK))
    assert standing.call == call


def test_call_of_chances() -> None:
    assert [call_of(c) for c in (0, 0.0999, 0.1, 0.4999, 0.5, 1)] == [
        "under",
        "under",
        "close",
        "close",
        "over",
        "over",
    ]


def test_what_was_not_read_cannot_be_told() -> None:
    kinds = ("sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top", "sludge", "scum")
    rule_set = only(*[Limit(kind, 0.3) for kind in kinds], Limit("solids_by_depth", 0.25), Limit("years", years=3))
    for standing in stand(rule_set, Layers(), vessel(TANK)):
        assert (standing.call, standing.now, standing.margin, standing.chance_over) == ("cannot_tell", None, None, None)


def test_one_layer_alone_may_settle_a_share_but_never_clear_it() -> None:
    quarter = only(Limit("solids_by_depth", share=0.25), Limit("solids_by_volume", share=0.25))
    thick = Layers(least_by_depth=Measure(0.4, 0.02), least_by_volume=Measure(0.4, 0.02))
    assert [standing.call for standing in stand(quarter, thick, vessel(TANK))] == ["over", "over"]
    thin = Layers(least_by_depth=Measure(0.1, 0.02), least_by_volume=Measure(0.1, 0.02))
    assert [standing.call for standing in stand(quarter, thin, vessel(TANK))] == ["cannot_tell", "cannot_tell"]


@pytest.mark.parametrize(("years", "call"), [(2.9, "under"), (3.0, "over"), (3.1, "over"), (None, "cannot_tell")])
def test_years_since_the_pump_out(years: float | None, call: str) -> None:
    (standing,) = stand(only(Limit("years", years=3)), Layers(), vessel(TANK), years)
    assert standing.call == call


def test_figures_past_all_sense_are_never_called_under() -> None:
    for figure in (Measure(inf, inf), Measure(float("nan"), 1.0), Measure(0.1, inf)):
        layers = Layers(solids_by_depth=figure)
        (standing,) = stand(only(Limit("solids_by_depth", share=0.25)), layers, vessel(TANK))
        assert standing.call == "cannot_tell"


LIMITS = [
    Limit("sludge_to_outlet", inches=12),
    Limit("scum_to_outlet", inches=6),
    Limit("scum_top_to_outlet_top", inches=2),
    Limit("solids_by_depth", share=0.25),
    Limit("solids_by_volume", share=0.25),
    Limit("sludge", inches=16),
    Limit("scum", inches=8),
]
THICK = st.floats(0, 0.5)


@given(st.sampled_from(LIMITS), st.sampled_from([TANK, DRUM]), THICK, THICK, THICK, THICK)
def test_margin_never_grows_with_the_layers(
    limit: Limit, tank: Tank, sludge: float, scum: float, more: float, thicker: float
) -> None:
    left = margin_of(limit, tank, vessel(tank))
    assert left(sludge + more, scum + thicker) <= left(sludge, scum) + 1e-12


def test_margin_in_a_drum_counts_volume_not_depth() -> None:
    """Low down a lying drum is narrow: a quarter of the depth is well under a quarter of the volume."""
    by_depth = margin(Limit("solids_by_depth", share=0.25), DRUM, vessel(DRUM), 0.25 * 1.2, 0.0)
    by_volume = margin(Limit("solids_by_volume", share=0.25), DRUM, vessel(DRUM), 0.25 * 1.2, 0.0)
    assert by_depth == pytest.approx(0.0, abs=1e-12)
    assert 0.03 < by_volume < 0.12


def test_margin_is_infinite_where_thickness_cannot_tell() -> None:
    assert margin(Limit("years", years=3), TANK, vessel(TANK), 1.0, 1.0) == inf
    unknown_top = TANK.model_copy(update={"outlet_top_above_surface_m": None})
    assert margin(Limit("scum_top_to_outlet_top", inches=2), unknown_top, vessel(unknown_top), 0.1, 0.4) == inf
