from __future__ import annotations

import math
from datetime import date, timedelta

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

GALLON = 0.003785411784
START = date(2026, 1, 1)


def meter(*steps: tuple[int, float]) -> list[MeterReading]:
    return [MeterReading(on=START + timedelta(days=day), m3=m3) for day, m3 in steps]


@pytest.mark.parametrize(("table", "gallons"), [("reu_1999", 69.3), ("reu_2016", 58.6), ("minnesota", 75)])
def test_published_means(table: str, gallons: float) -> None:
    """The first two are from memory."""
    assert by_people(3, table).litres_per_day == pytest.approx(3 * gallons * GALLON * 1000)
    assert by_people(0).litres_per_day == 0


def test_the_meter_beats_the_mean() -> None:
    found = flow(3, meter((0, 100.0), (100, 145.0)))
    assert (found.basis, found.litres_per_day) == ("meter", pytest.approx(450.0))
    assert found.relative_error < flow(3).relative_error
    assert flow(3, meter((0, 100.0))).basis == "people"


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
