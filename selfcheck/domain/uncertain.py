"""Figures that carry their error along: first-order propagation from independent readings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import hypot
from types import MappingProxyType
from typing import NamedTuple


class Measure(NamedTuple):
    """A figure and its standard error (one standard deviation), in the same unit.

    `parts`: by how much one standard deviation of each cause moves it, where that is known.
    """

    value: float
    error: float
    parts: Mapping[str, float] = MappingProxyType({})

    def causes(self) -> dict[str, float]:
        """Share of each cause in the squared error, the largest first; empty where the causes are not known."""
        whole = sum(part * part for part in self.parts.values())
        shares = {cause: part * part / whole for cause, part in self.parts.items()} if whole > 0 else {}
        return dict(sorted(shares.items(), key=lambda one: -one[1]))


@dataclass(frozen=True, slots=True)
class Uncertain:
    """A value, and by how much one standard deviation of each independent cause moves it (signed, same unit).

    Causes are told apart by name, so figures that share a reading are combined rightly: their parts add up before they
    are squared. GUM (JCGM 100:2008) equation 10, with sensitivities as derivatives.
    """

    value: float
    parts: dict[str, float] = field(default_factory=dict)

    @classmethod
    def read(cls, cause: str, value: float, error: float) -> Uncertain:
        """A figure with one cause of error of its own."""
        return cls(value, {cause: error})

    def __add__(self, other: Uncertain) -> Uncertain:
        return combined(self.value + other.value, (self, 1.0), (other, 1.0))

    def __sub__(self, other: Uncertain) -> Uncertain:
        return combined(self.value - other.value, (self, 1.0), (other, -1.0))

    def __mul__(self, factor: float) -> Uncertain:
        return combined(self.value * factor, (self, factor))

    def also(self, cause: str, error: float) -> Uncertain:
        """The same figure with one more independent cause of error."""
        return Uncertain(self.value, {**self.parts, cause: error})

    @property
    def error(self) -> float:
        """Standard error: the parts in quadrature."""
        return hypot(*self.parts.values())

    def measure(self) -> Measure:
        """Value, standard error and its causes."""
        return Measure(self.value, self.error, self.parts)


def combined(value: float, *terms: tuple[Uncertain, float]) -> Uncertain:
    """A figure worked out from others: its value, and for each of the others the derivative by it."""
    parts: dict[str, float] = {}
    for term, slope in terms:
        for cause, part in term.parts.items():
            parts[cause] = parts.get(cause, 0.0) + slope * part
    return Uncertain(value, parts)
