"""Chance from a number: the same draws on every machine and in every version of Python."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, log, pi, sqrt
from random import Random
from typing import TypeVar

T = TypeVar("T")


class Dice:
    """Draws by transforms of our own of `Random.random`, the one stream that is promised to stay as it is."""

    def __init__(self, seed: int) -> None:
        self._stream = Random(seed)

    def uniform(self, low: float, high: float) -> float:
        """Any number between the two, all alike."""
        return low + (high - low) * self._stream.random()

    def normal(self, mean: float, spread: float) -> float:
        """A normal error about a mean (Box and Muller)."""
        length = sqrt(-2.0 * log(1.0 - self._stream.random()))
        return mean + spread * length * cos(2.0 * pi * self._stream.random())

    def happens(self, chance: float) -> bool:
        """True with this chance."""
        return self._stream.random() < chance

    def one_of(self, these: Sequence[T]) -> T:
        """One of these, all alike."""
        return these[int(self._stream.random() * len(these))]
