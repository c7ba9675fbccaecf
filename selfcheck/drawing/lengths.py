"""Lengths as short as a picture needs them: a number without its other unit."""

from __future__ import annotations

from typing import Literal

from selfcheck.domain.showing import show_length

Units = Literal["us", "metric"]
METRES_PER_INCH = 0.0254  # exact, by definition of the inch
_QUARTERS = ("", "¼", "½", "¾")


def unit(units: Units) -> str:
    """The short name of the unit that `number` counts in."""
    return "in" if units == "us" else "cm"


def number(metres: float, units: Units) -> str:
    """Inches to the nearest quarter (`8½`) or whole centimetres (`22`); a trace that is not zero shows as such."""
    if units == "metric":
        return f"{metres * 100:.0f}"
    quarters = round(abs(metres) / METRES_PER_INCH * 4)
    whole, rest = divmod(quarters, 4)
    digits = f"{whole or ''}{_QUARTERS[rest]}" or "0"
    return f"-{digits}" if metres < 0 and quarters else digits


def with_error(metres: float, error: float, units: Units, between: str = "±") -> str:
    """`6 ± 1 in`; without an error `6 in`. An error below the step of the number shows as that step."""
    if error <= 0:
        return f"{number(metres, units)} {unit(units)}"
    least = METRES_PER_INCH / 4 if units == "us" else 0.01
    return f"{number(metres, units)} {between} {number(max(error, least), units)} {unit(units)}"


def on_a_tape(metres: float, units: Units) -> str:
    """A length along the ground, to the inch or the centimetre: `17 ft 1 in`, `5.2 m`."""
    step = METRES_PER_INCH if units == "us" else 0.01
    return show_length(round(metres / step) * step, units).partition(" (")[0]
