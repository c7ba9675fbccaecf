"""Least distance from the sludge to the outlet by a tank's capacity and liquid depth: the form of such a table."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from math import sqrt

from selfcheck.domain.conversions import FOOT, GALLON, INCH
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.strict import STRICT

#: A tank this much outside the table still counts as its edge: capacities and depths are rounded figures. Our choice.
ROUNDING = 0.02


@dataclass(frozen=True, slots=True)
class Row:
    """One capacity: the distances in inches, one for each depth of the table."""

    gallons: float
    inches: tuple[float, ...]

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class DistanceTable:
    """Distances by capacity and liquid depth. Both rise from one line to the next: ValueError otherwise.

    The one that is published: source phs-526, read in a reprint that runs its cells together.
    Between the lines the distance is taken straight across. Off the table the nearest edge stands in where that is the
    careful choice by the printed trend: shallower than the first depth and larger than the last capacity, where a tank
    needs less. Smaller or deeper than the table a tank needs more; how much is not printed, and there is no figure.
    """

    liquid_depth_feet: tuple[float, ...]
    rows: tuple[Row, ...]

    __pydantic_config__ = STRICT

    def __post_init__(self) -> None:
        depths, capacities = list(self.liquid_depth_feet), [row.gallons for row in self.rows]
        for name, line in (("liquid_depth_feet", depths), ("gallons", capacities)):
            if len(line) < 2 or sorted(set(line)) != line:
                raise ValueError(f"{name} must rise from each line to the next, with two lines or more")
        if any(len(row.inches) != len(depths) for row in self.rows):
            raise ValueError("each row needs one distance for each depth")

    def least(self, volume_m3: float, depth_m: float) -> float | None:
        """Least distance [m] for a capacity [m³] and a liquid depth [m]; None where the table gives none."""
        depths, capacities = self.liquid_depth_feet, tuple(row.gallons for row in self.rows)
        depth, capacity = depth_m / FOOT, volume_m3 / GALLON
        if self.too_deep(depth_m) or self.too_small(volume_m3):
            return None
        column, across = _between(depths, depth)
        row, along = _between(capacities, capacity)

        def at(line: Row) -> float:
            return line.inches[column] * (1 - across) + line.inches[column + 1] * across

        return (at(self.rows[row]) * (1 - along) + at(self.rows[row + 1]) * along) * INCH

    def too_deep(self, depth_m: float) -> bool:
        """Whether the liquid is deeper than the last depth of the table."""
        return depth_m / FOOT > self.liquid_depth_feet[-1] * (1 + ROUNDING)

    def too_small(self, volume_m3: float) -> bool:
        """Whether the tank holds less than the first capacity of the table."""
        return volume_m3 / GALLON < self.rows[0].gallons * (1 - ROUNDING)

    def least_with_error(self, vessel: Vessel) -> tuple[float | None, float]:
        """The distance for a vessel and its standard error [m] from those of capacity and depth, by small steps."""
        volume, depth = vessel.full_m3, vessel.liquid_depth_m
        here = self.least(volume, depth)
        if here is None:
            return None, 0.0
        by_volume = self._change(here, self.least(volume * (1 + vessel.relative_error), depth))
        by_volume = max(by_volume, self._change(here, self.least(volume * (1 - vessel.relative_error), depth)))
        by_depth = self._change(here, self.least(volume, depth + vessel.depth_error_m))
        by_depth = max(by_depth, self._change(here, self.least(volume, depth - vessel.depth_error_m)))
        return here, sqrt(by_volume**2 + by_depth**2)

    @staticmethod
    def _change(here: float, there: float | None) -> float:
        return 0.0 if there is None else abs(there - here)


def _between(lines: tuple[float, ...], value: float) -> tuple[int, float]:
    """Index of the line below, and how far along to the next one (0 to 1)."""
    value = min(max(value, lines[0]), lines[-1])
    index = min(bisect_right(lines, value) - 1, len(lines) - 2)
    return index, (value - lines[index]) / (lines[index + 1] - lines[index])
