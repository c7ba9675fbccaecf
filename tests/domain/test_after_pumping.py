from __future__ import annotations

from datetime import date

import pytest

from selfcheck.domain.after_pumping import SeenEmpty, residue, seen_empty
from selfcheck.domain.check import Check, PumpOut, Reading, Readings, Seen
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.history import after
from selfcheck.domain.household import Box, Household, Occupancy, Tank
from selfcheck.domain.limits import Limit
from selfcheck.domain.shapes import vessel

TANK = Tank(shape=Box(length_m=2.5, width_m=1.2), liquid_depth_m=1.2, outlet_bottom_below_surface_m=0.42)
LIMITS = (Limit("sludge_to_outlet", inches=12), Limit("solids_by_depth", share=0.25))
START = date(2020, 5, 20)


def household(litres: float) -> Forecast:
    """Five yearly checks of three people whose sludge grows at a known rate: seven tenths of these litres a person."""
    checks = []
    for year in range(1, 6):
        grown = litres / 1000 * 3 * year**0.8 / 3.0
        readings = Readings(sludge=[Reading(m=0.7 * grown)], scum_total=[Reading(m=0.3 * grown)])
        day = after(START, year)
        checks.append(Check(id=day.isoformat(), on=day, seen=Seen(readings=readings)))
    house = Household(occupancy=[Occupancy.model_validate({"from": START, "people": 3})])
    return forecast(house, TANK, vessel(TANK), checks, [PumpOut(on=START, sludge_left_m=0.0)], checks[-1].on)


def test_residue_in_litres_and_months() -> None:
    """0.1 m on 3 m² is 300 L; at 0.7 · 100 L · 3 people · t^0.8 that takes (300/210)^(1/0.8) = 1.56 years."""
    found = household(100)
    cost = residue(found, LIMITS, 0.1, found.today)
    assert cost.litres == pytest.approx(300)
    assert cost.months_to_fill == pytest.approx(12 * (300 / 210) ** 1.25, rel=0.05)
    assert cost.months_earlier is not None
    assert cost.months_earlier > 6


def test_a_household_that_fills_faster_loses_fewer_months() -> None:
    slow, fast = household(70), household(200)
    a, b = residue(slow, LIMITS, 0.1, slow.today), residue(fast, LIMITS, 0.1, fast.today)
    assert a.months_to_fill is not None
    assert b.months_to_fill is not None
    assert a.months_to_fill > 2 * b.months_to_fill
    assert a.litres == b.litres


def test_nothing_left_costs_nothing_and_more_costs_more() -> None:
    found = household(100)
    none = residue(found, LIMITS, 0.0, found.today)
    assert (none.litres, none.months_to_fill, none.months_earlier) == (0.0, 0.0, 0.0)
    months = [residue(found, LIMITS, depth, found.today).months_earlier for depth in (0.02, 0.1, 0.2)]
    assert all(one is not None for one in months)
    assert months == sorted(months, key=lambda one: one or 0.0)
    with pytest.raises(ValueError, match="below 0"):
        residue(found, LIMITS, -0.1, found.today)


def test_an_untroubled_pump_out_has_no_finding() -> None:
    fine = SeenEmpty("yes", "yes", "yes", "in_place", "in_place", "sound", "sound", "yes", "unknown", 0.0)
    assert seen_empty(fine) == ()
    assert seen_empty(SeenEmpty()) == ()


@pytest.mark.parametrize(
    ("seen", "ident", "verdict"),
    [
        (SeenEmpty(all_out="no"), "pump_out_not_everything_out", "carry_on"),
        (SeenEmpty(both_compartments="no"), "pump_out_one_compartment_only", "call_soon"),
        (SeenEmpty(through_manhole="no"), "pump_out_through_the_pipe", "carry_on"),
        (SeenEmpty(inlet_tee="loose"), "pump_out_inlet_tee", "call_soon"),
        (SeenEmpty(outlet_tee="missing"), "pump_out_outlet_tee", "call_soon"),
        (SeenEmpty(wall="steel_showing"), "pump_out_wall_unsafe", "call_soon"),
        (SeenEmpty(wall="damp_white"), "pump_out_wall_worn", "carry_on"),
        (SeenEmpty(divider="missing"), "pump_out_divider", "call_soon"),
        (SeenEmpty(filter_cleaned="no"), "pump_out_filter_not_cleaned", "carry_on"),
        (SeenEmpty(backflow="strong"), "pump_out_backflow_strong", "call_soon"),
        (SeenEmpty(backflow="slight"), "pump_out_backflow_slight", "carry_on"),
        (SeenEmpty(backflow="none"), "pump_out_backflow_none", "carry_on"),
        (SeenEmpty(left_m=0.02), "pump_out_residue_skim", "carry_on"),
        (SeenEmpty(left_m=0.10), "pump_out_residue_inches", "carry_on"),
    ],
)
def test_each_thing_seen(seen: SeenEmpty, ident: str, verdict: str) -> None:
    (found,) = seen_empty(seen)
    assert (found.id, found.verdict) == (ident, verdict)
