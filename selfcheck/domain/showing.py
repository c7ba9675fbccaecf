"""Lengths, volumes and dates as people read them; `quantities` reads every one of these back."""

from __future__ import annotations

from datetime import date, timedelta
from fractions import Fraction

from selfcheck.domain.units import CUBIC_METRE, GALLON, INCH, System

_EIGHTHS = ("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞")
MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)  # fmt: skip
#: from this length on, inches are gathered into feet
_FEET_FROM = 36 * 0.0254
_METRES_FROM = 2.0


def _number(value: float, places: int) -> str:
    text = f"{value:,.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _eighths(inches: Fraction) -> str:
    whole, eighths = divmod(round(inches * 8), 8)
    return f"{whole}{_EIGHTHS[eighths]}" if whole or not eighths else _EIGHTHS[eighths]


def _us_beside(metres: float) -> str:
    """In brackets behind a metric length: to a quarter of an inch, or finer where that would leave nothing."""
    inches = Fraction(round(Fraction(metres) / INCH.size * 4), 4)
    return _us(float(inches * INCH.size)) if inches else _us(metres)


def _metric_beside(metres: float) -> str:
    """In brackets behind a length in inches: to a centimetre, or finer where that would leave nothing."""
    return _metric(round(metres, 2) if metres >= 0.01 else metres)


def _us(metres: float) -> str:
    inches = Fraction(round(Fraction(metres) / INCH.size * 8), 8)
    if inches < Fraction(1, 8) and metres > 0:
        return f"{_number(metres / 0.0254, 2)} in"
    if metres < _FEET_FROM:
        return f"{_eighths(inches)} in"
    feet, rest = divmod(inches, 12)
    return f"{feet} ft {_eighths(rest)} in" if rest else f"{feet} ft"


def _metric(metres: float) -> str:
    if round(metres, 3) >= _METRES_FROM:
        return f"{_number(metres, 2)} m"
    return f"{_number(metres * 100, 1 if metres >= 0.0005 else 2)} cm"


def show_length(metres: float, units: System = "us") -> str:
    """A length of 0 m or more in the household's unit with the other in brackets: `8½ in (22 cm)`, `21.6 cm (8½ in)`.

    In the household's unit: an eighth of an inch, feet from 36 in on; a millimetre, a centimetre from 2 m on. In
    brackets rounder, as a pole is read. Our choice, close to what a tape shows.
    """
    if units == "us":
        return f"{_us(metres)} ({_metric_beside(metres)})"
    return f"{_metric(metres)} ({_us_beside(metres)})"


def short_unit(units: System) -> str:
    """The short name of the unit that `short_length` counts in."""
    return "in" if units == "us" else "cm"


def short_length(metres: float, units: System) -> str:
    """Inches to the nearest quarter (`8½`) or whole centimetres (`22`), as a pole is read."""
    if units == "metric":
        return f"{metres * 100:.0f}"
    quarters = round(abs(metres) / 0.0254 * 4)
    digits = _eighths(Fraction(quarters, 4))
    return f"-{digits}" if metres < 0 and quarters else digits


def show_length_error(metres: float, error_m: float, units: System = "us") -> str:
    """A length with its standard error (both metres), as a pole is read: `7½ ± ¾ in`, `19 ± 2 cm`.

    The error is never shown as nothing: at least a quarter of an inch, or a centimetre.
    """
    least = 0.0254 / 4 if units == "us" else 0.01
    return f"{short_length(metres, units)} ± {short_length(max(error_m, least), units)} {short_unit(units)}"


def show_volume(cubic_metres: float, units: System = "us") -> str:
    """A volume of 0 m³ or more: `1,000 gal (3.79 m³)`, `3.79 m³ (1,000 gal)`; whole US gallons, hundredths
    of a cubic metre.

    Below 10 gal a tenth of a gallon; below 0.1 m³ litres, and below 10 L a tenth of one.
    """
    gallons = cubic_metres / float(GALLON.size)
    us = f"{_number(gallons, 0 if gallons >= 10 else 1)} gal"
    litres = cubic_metres * 1000
    small = f"{_number(litres, 0 if litres >= 10 else 1)} L"
    metric = f"{_number(cubic_metres / float(CUBIC_METRE.size), 2)} m³" if litres >= 100 else small
    return f"{us} ({metric})" if units == "us" else f"{metric} ({us})"


def show_day(day: date, units: System = "us") -> str:
    """One day: `May 4, 2024` or `4 May 2024`."""
    month = MONTHS[day.month - 1]
    return f"{month} {day.day}, {day.year}" if units == "us" else f"{day.day} {month} {day.year}"


def show_date(day: date, units: System = "us", earliest: date | None = None, latest: date | None = None) -> str:
    """A day, or the span it stands for: a day, `May 2024`, `2024`, or `between May 4, 2024 and June 1, 2024`."""
    first, last = earliest or day, latest or day
    if first == last:
        return show_day(day, units)
    if (first.month, first.day, last.month, last.day) == (1, 1, 12, 31):
        return str(first.year) if first.year == last.year else f"between {first.year} and {last.year}"
    if first.day == 1 and (last + timedelta(days=1)).day == 1:
        start, end = (f"{MONTHS[one.month - 1]} {one.year}" for one in (first, last))
        return start if start == end else f"between {start} and {end}"
    return f"between {show_day(first, units)} and {show_day(last, units)}"
