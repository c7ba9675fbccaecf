"""From the last readings on: how they grow, and when they cross."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.forecast import forecast
from selfcheck.domain.judging import judge
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import stand
from selfcheck.domain.outlook import Outlook
from selfcheck.domain.shapes import vessel
from tests.cases import TODAY, build, check_of, judged, rule_sets


def outlook(today: date = TODAY, **seen: object) -> tuple[Outlook, tuple, tuple]:  # type: ignore[type-arg]
    case = build(**seen)
    tank = case.household.tank()
    body = vessel(tank)
    ahead = forecast(case.household, tank, body, case.checks, case.pump_outs, today)
    found = layers(tank, body, case.checks[0].seen.readings, "at_outlet")
    rules = rule_sets()["us-epa-homeowner"]
    return Outlook(ahead, found, TODAY), rules.limits, stand(rules, found, body)


def test_on_the_day_of_the_check_the_readings_speak() -> None:
    view, limits, standings = outlook(sludge=[7.5, 8])
    now = max(one.chance_over for one in standings)
    assert view.chance_over(limits, standings, TODAY) == pytest.approx(now, abs=1e-6)


def test_growth_by_hand() -> None:
    # Two years of three people left 7½ in of solids. With b = 0.80 two more years make that 2^0.8 = 1.741 times as
    # many: 13.06 in of 48, past a quarter, 12 in. A quarter comes at 7½·(t/2)^0.8 = 12, t = 3.60 years, 1.6 from now.
    view, limits, standings = outlook()
    due = view.due(limits, standings)
    assert due.p50 is not None
    assert (due.p50 - TODAY).days == pytest.approx(1.60 * 365.25, abs=25)


def test_dates_are_in_order_and_the_chance_rises() -> None:
    view, limits, standings = outlook()
    due = view.due(limits, standings)
    assert due.p10 is not None
    assert due.p50 is not None
    assert due.p90 is not None
    assert TODAY < due.p10 < due.p50 < due.p90
    chances = [view.chance_over(limits, standings, TODAY + timedelta(days=90 * step)) for step in range(12)]
    assert chances == sorted(chances)
    for day, chance in ((due.p10, 0.1), (due.p50, 0.5), (due.p90, 0.9)):
        assert view.chance_over(limits, standings, day) == pytest.approx(chance, abs=0.01)


def test_look_again_is_twelve_months_at_most() -> None:
    view, limits, standings = outlook(sludge=[2, 2], scum_above=[0.5])
    assert view.look_again(limits, standings) == (date(2027, 5, 18), "twelve_months")
    view, limits, standings = outlook(sludge=[6, 6])
    day, reason = view.look_again(limits, standings)
    assert reason == "chance_of_over"
    assert view.chance_over(limits, standings, day) == pytest.approx(0.1, abs=0.01)


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


def test_without_whole_readings_the_forecast_speaks() -> None:
    found = judged(sludge=[])
    assert found.due == found.forecast.due(found.rules.limits)


def test_a_limit_that_nothing_reaches_has_no_date() -> None:
    left = [{"from": "2016-06-01", "people": 3}, {"from": "2026-05-19", "people": 0}]
    found = judged({"set": {"household.occupancy": left}})
    assert found.due.p50 is None
