"""Lengths as short as a picture needs them: a number without its other unit."""

from __future__ import annotations

from typing import Literal

from selfcheck.domain.showing import short_length as number
from selfcheck.domain.showing import short_unit as unit
from selfcheck.domain.showing import show_length, show_length_error

__all__ = ["METRES_PER_INCH", "Units", "number", "on_a_tape", "unit", "with_error"]

Units = Literal["us", "metric"]
METRES_PER_INCH = 0.0254  # exact, by definition of the inch


def with_error(metres: float, error: float, units: Units, between: str = "±") -> str:
    """`6 ± 1 in`; without an error `6 in`. An error below the step of the number shows as that step."""
    if error <= 0:
        return f"{number(metres, units)} {unit(units)}"
    return show_length_error(metres, error, units).replace("±", between)


def on_a_tape(metres: float, units: Units) -> str:
    """A length along the ground, as it is told everywhere, without its other unit: `17 ft 1 in`, `5.2 m`."""
    return show_length(metres, units).partition(" (")[0]
