"""From the last whole readings on: every date starts there."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from selfcheck.domain.anchor import Bend
from selfcheck.domain.check import PumpOut
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.judging import judge
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import Limit, stand
from selfcheck.domain.shapes import vessel
from tests.cases import TODAY, build, check_of, judged, rule_sets

RULES = rule_sets()["us-epa-homeowner"]


def read(today: date = TODAY, **seen: object) -> tuple[Forecast, tuple[Limit, ...], float]:
    """The forecast that starts at these readings, the limits, and the chance by the readings alone."""
    case = build(**seen)
    tank = case.household.tank()
    body = vessel(tank)
    found = layers(tank, body, case.checks[0].seen.readings, "at_outlet")
    ahead = forecast(case.household, tank, body, case.checks, case.pump_outs, today).read_on(TODAY, found)
    return ahead, RULES.limits, max(one.chance_over or 0.0 for one in stand(RULES, found, body))


@pytest.mark.parametrize("sludge", [4, 7.5, 9, 12])
def test_on_the_day_of_the_check_the_readings_speak(sludge: float) -> None:
    ahead, limits, now = read(sludge=[sludge, sludge + 0.5])
    assert ahead.chance_over(limits, TODAY) == pytest.approx(now, abs=1e-9)
    assert ahead.due(limits).p50 is not None
    assert (ahead.due(limits).p50 <= TODAY) == (now >= 0.5)


def test_growth_by_hand() -> None:
    # Two years of three people left 7½ in of solids. With b = 0.80 two more years make that 2^0.8 = 1.741 times as
    # many: 13.06 in of 48, past a quarter, 12 in. A quarter comes at 7½·(t/2)^0.8 = 12, t = 3.60 years, 1.6 from now.
    # The published rates pull a little at what one check says, and here they are lower: 5.6 in after two years.
    ahead, limits, _ = read()
    due = ahead.due(limits).p50
    assert due is not None
    assert 1.5 * 365.25 < (due - TODAY).days < 2.0 * 365.25


def test_dates_are_in_order_and_the_chance_rises() -> None:
    ahead, limits, _ = read()
    due = ahead.due(limits)
    assert due.p10 is not None
    assert due.p50 is not None
    assert due.p90 is not None
    assert TODAY < due.p10 < due.p50 < due.p90
    chances = [ahead.chance_over(limits, TODAY + timedelta(days=90 * step)) for step in range(-4, 12)]
    assert chances == sorted(chances)
    for day, chance in ((due.p10, 0.1), (due.p50, 0.5), (due.p90, 0.9)):
        assert ahead.chance_over(limits, day) == pytest.approx(chance, abs=0.01)


def test_bending_and_unbending_are_two_views_of_one_thing() -> None:
    for seen in (0.0, 0.02, 0.3, 0.9):
        for own in (0.01, 0.2, 0.6):
            bend = Bend(TODAY, seen, own)
            for wanted in (0.05, 0.1, 0.5, 0.9):
                share = bend.share(wanted)
                day = TODAY + timedelta(days=1 if wanted > seen else -1)
                assert bend.chance(share, day) == pytest.approx(wanted, abs=1e-9) or share == 0.995


def test_look_again_is_twelve_months_at_most() -> None:
    ahead, limits, _ = read(sludge=[2, 2], scum_above=[0.5])
    assert ahead.look_again(limits) == (date(2027, 5, 18), "twelve_months")
    ahead, limits, _ = read(sludge=[6, 6])
    day, reason = ahead.look_again(limits)
    assert reason == "chance_of_over"
    assert ahead.chance_over(limits, day) == pytest.approx(0.1, abs=0.01)


def test_a_last_reading_beats_what_earlier_years_led_to_expect() -> None:
    """A household that filled its tank fast, and slowly since: this spring's readings say how full it is."""
    case = build()
    before = [
        check_of("2022-05-18", sludge=[10, 10], scum_above=[2]),
        check_of("2023-05-18", sludge=[14, 14], scum_above=[3]),
    ]
    emptied = [PumpOut(on=date(2021, 5, 1)), PumpOut(on=date(2023, 6, 1)), *case.pump_outs]
    found = judge(replace(case, checks=[*before, *case.checks], pump_outs=emptied, today=date(2026, 8, 1)))
    assert found.verdict == "carry_on"
    assert found.due.p50 is not None
    assert found.due.p50 > date(2027, 1, 1)


def test_every_page_has_the_same_dates() -> None:
    """The verdict's dates are the forecast's own, a what-if without a change gives them again, and so do the rows."""
    for seen in ({}, {"sludge": [8, 8]}, {"sludge": []}, {"sludge": [3, 9]}):
        found = judged(**seen)
        limits = found.rules.limits
        assert found.due == found.forecast.due(limits)
        assert found.due == found.forecast.what_if().due(limits)
        assert found.due == next(row.due for row in found.by_rule_set if row.rule_set.id == found.rules.id)
        if found.verdict == "carry_on":
            assert found.look_again == found.forecast.look_again(limits)[0]


def test_the_history_band_passes_through_the_last_readings() -> None:
    for sludge in (3, 6, 10):
        found = judged(sludge=[sludge, sludge])
        band = found.forecast.bands([TODAY])[0]
        assert band.sludge[0] < sludge * 0.0254 < band.sludge[2]


def test_another_tank_or_a_pump_out_has_no_readings_to_start_at() -> None:
    found = judged().forecast
    assert found.anchor is not None
    assert found.what_if(people=5).anchor is found.anchor
    assert found.what_if(pumped_on=TODAY).anchor is None
    assert found.what_if(vessel=found.vessel).anchor is None


def test_without_whole_readings_the_rates_speak() -> None:
    found = judged(sludge=[])
    assert found.forecast.anchor is None


def test_a_limit_that_nothing_reaches_has_no_date() -> None:
    left = [{"from": "2016-06-01", "people": 3}, {"from": "2026-05-19", "people": 0}]
    found = judged({"set": {"household.occupancy": left}})
    assert found.due.p50 is None
