"""What is shown reads back to the same value within the printed precision."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.quantities import (
    read_date,
    read_length,
    read_volume,
    show_date,
    show_length,
    show_length_error,
    show_volume,
)

SYSTEMS = st.sampled_from(["us", "metric"])


@given(st.floats(0, 29), SYSTEMS)
def test_lengths_read_back(metres: float, units: str) -> None:
    shown = show_length(metres, units)  # type: ignore[arg-type]
    reading = read_length(shown, units)  # type: ignore[arg-type]
    assert reading.status == "value", shown
    half_step = 0.0254 / 16 if units == "us" else (0.0005 if metres < 1.9995 else 0.005)
    assert reading.metres == pytest.approx(metres, abs=half_step + 1e-6), shown


@given(st.floats(0, 150), SYSTEMS)
def test_volumes_read_back(cubic_metres: float, units: str) -> None:
    shown = show_volume(cubic_metres, units)  # type: ignore[arg-type]
    reading = read_volume(shown, units)  # type: ignore[arg-type]
    assert reading.status == "value", shown
    assert reading.cubic_metres == pytest.approx(cubic_metres, abs=0.0051 if units == "metric" else 0.0019), shown


@given(st.dates(date(1901, 1, 1), date(2098, 12, 31)), SYSTEMS)
def test_days_read_back(day: date, units: str) -> None:
    reading = read_date(show_date(day, units), date(2026, 5, 18))  # type: ignore[arg-type]
    assert (reading.status, reading.day, reading.earliest, reading.latest) == ("value", day, day, day)


@given(st.dates(date(1950, 1, 1), date(2090, 1, 1)), st.integers(1, 3000), SYSTEMS)
def test_spans_read_back(first: date, days: int, units: str) -> None:
    last = first + timedelta(days=days)
    shown = show_date(first, units, first, last)  # type: ignore[arg-type]
    reading = read_date(shown, date(2026, 5, 18))
    assert (reading.earliest, reading.latest) == (first, last), shown


@pytest.mark.parametrize(
    ("metres", "us", "metric"),
    [
        (0.2159, "8½ in (22 cm)", "21.6 cm (8½ in)"),
        (0.3556, "14 in (36 cm)", "35.6 cm (14 in)"),
        (0.0, "0 in (0 cm)", "0 cm (0 in)"),
        (1.27, "4 ft 2 in (127 cm)", "127 cm (4 ft 2 in)"),
        (1.2192, "4 ft (122 cm)", "121.9 cm (4 ft)"),
        (2.44, "8 ft ⅛ in (2.44 m)", "2.44 m (8 ft)"),
    ],
)
def test_lengths_as_people_read_them(metres: float, us: str, metric: str) -> None:
    assert show_length(metres) == us
    assert show_length(metres, "metric") == metric


def test_other_forms() -> None:
    assert show_length_error(0.3556, 0.0254) == "14 ± 1 in"
    assert show_length_error(0.355, 0.016, "metric") == "36 ± 2 cm"
    assert show_length_error(7.5 * 0.0254, 0.019) == "7½ ± ¾ in"
    assert show_length_error(0.1, 0.0) == "4 ± ¼ in"
    assert show_volume(3.785411784) == "1,000 gal (3.79 m³)"
    assert show_volume(0.05, "metric") == "50 L (13 gal)"
    assert show_volume(0.0767) == "20 gal (77 L)"
    assert show_date(date(2024, 5, 4)) == "May 4, 2024"
    assert show_date(date(2024, 5, 4), "metric") == "4 May 2024"
    assert show_date(date(2019, 7, 2), "us", date(2019, 1, 1), date(2019, 12, 31)) == "2019"
    assert show_date(date(2019, 5, 16), "us", date(2019, 5, 1), date(2019, 5, 31)) == "May 2019"
