from __future__ import annotations

import math
from datetime import date, timedelta
from math import ceil

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.flow import (
    by_meter,
    by_people,
    clear_volume_m3,
    detention_days,
    flow,
    leak,
    short_rest,
)
from selfcheck.domain.household import MeterReading
from selfcheck.report.wording import verdict_screen
from tests.cases import judged, verdict_words

GALLON = 0.003785411784
START, LATER = date(2026, 1, 1), date(2026, 12, 1)


def meter(*steps: tuple[int, float]) -> list[MeterReading]:
    return [MeterReading(on=START + timedelta(days=day), m3=m3) for day, m3 in steps]


def test_a_meter_reading_that_has_not_come_or_cannot_be_is_left_out() -> None:
    sound = meter((0, 100.0), (100, 145.0))
    strange = [*sound, MeterReading(on=date(1026, 1, 1), m3=0.0), MeterReading(on=date(2030, 1, 1), m3=9000.0)]
    assert flow(3, strange, LATER) == flow(3, sound, LATER)
    assert flow(3, strange[2:], LATER).basis == "people"


@pytest.mark.parametrize(("table", "gallons"), [("reu_1999", 69.3), ("reu_2016", 58.6), ("minnesota", 75)])
def test_published_means(table: str, gallons: float) -> None:
    """The first two are from memory."""
    assert by_people(3, table).litres_per_day == pytest.approx(3 * gallons * GALLON * 1000)
    assert by_people(0).litres_per_day == 0


def test_the_meter_beats_the_mean() -> None:
    found = flow(3, meter((0, 100.0), (100, 145.0)), LATER)
    assert (found.basis, found.litres_per_day) == ("meter", pytest.approx(450.0))
    assert found.relative_error < flow(3, (), LATER).relative_error
    assert flow(3, meter((0, 100.0)), LATER).basis == "people"


def test_a_new_meter_and_old_readings_are_left_out() -> None:
    found = by_meter(meter((0, 900.0), (30, 913.5), (31, 2.0), (61, 15.5)))
    assert found is not None
    assert found.litres_per_day == pytest.approx(450.0)
    old = by_meter(meter((-3000, 0.0), (0, 100.0), (100, 145.0)))
    assert old is not None
    assert old.litres_per_day == pytest.approx(450.0)
    assert by_meter(meter((0, 1.0), (3, 2.0))) is None
    assert by_meter([]) is None


def test_detention_of_a_published_example() -> None:
    """gray-1995: 2720 L and four people, five years at 0.178 L of solids a day each, never under 2.0 days of rest.

    What is left clear, 1420 L, rests that long at 710 L a day, 177 L a person: well within what people use.
    """
    clear = clear_volume_m3(2.720, 0.178 * 365.25 * 5 * 4 / 1000, 0.0)
    assert detention_days(clear, 710) == pytest.approx(2.0, abs=0.01)


def test_detention_of_half_full_and_of_nothing() -> None:
    assert detention_days(2.0, 1000) == pytest.approx(2.0)
    assert detention_days(2.0, 0) == math.inf
    assert clear_volume_m3(3.0, 2.0, 1.5) == 0.0
    with pytest.raises(ValueError, match="below 0"):
        detention_days(-1, 100)
    with pytest.raises(ValueError, match="below 0"):
        by_people(-1)


def test_under_a_day_is_told_with_its_source() -> None:
    found = short_rest(0.5)
    assert found is not None
    assert (found.source, found.facts["hours"]) == ("epa-832-f-00-079", 12.0)
    assert short_rest(1.0) is None


def test_a_short_rest_is_a_finding_that_changes_no_verdict_and_is_told_with_what_it_may_mean() -> None:
    crowd = {"set": {"household.occupancy.0.people": 30, "pump_out.on": "2026-03-01"}}
    found = judged(crowd, sludge=[1, 1])
    told = next(one for one in found.findings if one.id == "short_rest")
    assert found.detention_days is not None
    assert told.facts["days"] == found.detention_days < 1
    assert told.verdict == "carry_on"
    page = verdict_screen(found, verdict_words())
    hours = ceil(24 * found.detention_days)
    assert any(f"less than {hours} hours" in line and "24 hours" in line for line in page.seen)
    assert found.verdict == "carry_on"
    assert any("EPA 832-F-00-079" in line for line in page.why)
    assert "short_rest" not in {one.id for one in judged(sludge=[4, 4]).findings}


@given(st.floats(0.001, 20), st.floats(1, 5000), st.floats(1.01, 3))
def test_more_people_or_more_sludge_never_lengthen_the_rest(clear: float, litres: float, factor: float) -> None:
    assert detention_days(clear, litres * factor) < detention_days(clear, litres)
    assert detention_days(clear / factor, litres) < detention_days(clear, litres)


def test_leaks() -> None:
    assert leak() == ()
    assert leak(10.0, 10.0, 30, toilet_runs=False) == ()
    turning, toilet = leak(10.0, 10.005, 60, toilet_runs=True)
    assert turning.id == "meter_turns_with_taps_shut"
    assert turning.facts["litres_per_day"] == pytest.approx(120.0)
    assert toilet.id == "toilet_runs_on"
    assert leak(10.0, 10.005)[0].facts["litres_per_day"] is None
    with pytest.raises(ValueError, match="backwards"):
        leak(10.0, 9.0)
