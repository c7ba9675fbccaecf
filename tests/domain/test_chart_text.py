"""A maker's chart as it is typed off."""

from __future__ import annotations

import pytest

from selfcheck.domain.chart_text import read_chart
from selfcheck.domain.units import System

GALLON = 0.003785411784
INCHES, GALLONS = [0.3048, 0.6096, 1.2192], [150 * GALLON, 400 * GALLON, 1000 * GALLON]


@pytest.mark.parametrize(
    "text",
    [
        "12 in 150 gal; 24 in 400 gal; 48 in 1000 gal",
        "12 in 150 gal, 24 in 400 gal, 48 in 1,000 gal.",
        '12" = 150 gallons\n24" = 400 gallons\n48" = 1000 gallons',
        "12: 150; 24: 400; 48: 1000",
        "12 in - 150 gal; 24 in – 400 gal; 48 in — 1000 gal",
        "12 150; 24 400; 48 1,000",
        "1 ft holds 150 gal and 2 ft holds 400 gal and 4 feet holds 1000 gal",
    ],
)
def test_lines_are_read(text: str) -> None:
    read = read_chart(text)
    assert read is not None
    assert read[0] == pytest.approx(INCHES)
    assert read[1] == pytest.approx(GALLONS)


def test_metric_lines_are_read() -> None:
    for text in ("30 cm 500 L; 120 cm 3800 L", "30 500; 120 3800", "0.3 m 0.5 m3; 1.2 m 3.8 m³"):
        read = read_chart(text, "metric")
        assert read is not None, text
        assert read[0] == pytest.approx([0.3, 1.2])
        assert read[1] == pytest.approx([0.5, 3.8])


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize(
    "text",
    [
        "", "12 in 150 gal", "24 in 400 gal; 12 in 150 gal", "1 in 40 gal; 2 in 40 gal", "12 gal 15 in; 24 gal 9 in",
        "about a third; half", "12 in; 24 in", "-3 in 5 gal; 9 in 10 gal", "9" * 5000, "12 in 150 gal; " * 400,
    ],
)  # fmt: skip
def test_what_is_no_rising_chart_is_not_read(text: str, units: System) -> None:
    assert read_chart(text, units) is None
