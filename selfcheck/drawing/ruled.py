"""Strips beside a rule, to be read off: how high a stain reaches up a cloth, how thick a crust is on a stick.

Unlike the other pictures it tells no figure: reading it off is what is practised. Heights in metres above the foot.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor
from typing import Literal

from selfcheck.drawing.lengths import METRES_PER_INCH, Units, unit
from selfcheck.drawing.spans import Grid, Line, Role
from selfcheck.drawing.words import Words, say

_EIGHTHS = " ▁▂▃▄▅▆▇"
_HALF = 2  # strips are at most twice this and one wide
_LEAST_EACH, _MOST_EACH, _LEAST_ROWS = 9, 16, 3


@dataclass(frozen=True, slots=True)
class Strip:
    """One strip: the name under it, and how far up it is coloured [m]."""

    name: str
    height: float
    role: Literal["sludge", "scum"]


def as_lines(strips: Sequence[Strip], width: int, height: int, units: Units = "us") -> list[Line]:
    """At most `height` lines of exactly `width` cells; none where there is no room to read anything off."""
    each = min(_MOST_EACH, width // max(1, len(strips)))
    rows = height - 1
    if each < _LEAST_EACH or rows < _LEAST_ROWS or not strips:
        return []
    grid = Grid(width, height)
    small = METRES_PER_INCH if units == "us" else 0.01
    tallest = max(strip.height for strip in strips) / small * 1.15 + 1
    step = next((size for size in (0.5, 1, 2, 5, 10, 20) if size * rows >= tallest), 50)
    for index, strip in enumerate(strips):
        left = index * each
        for row in range(rows):
            _row(grid, left, height - 2 - row, strip, row * step, step, small)
        grid.put(left, height - 1, strip.name[: each - 1], "label")
    return grid.lines()


def _row(grid: Grid, left: int, line: int, strip: Strip, low: float, step: float, small: float) -> None:
    """One line of a strip: the figure of its lower edge, the mark of the rule there, and how much is coloured."""
    every = 2 if step < 5 else 1
    if round(low / step) % every == 0:
        grid.put(left, line, f"{low:g}".rjust(3), "label")
    grid.put(left + 3, line, "▁", "wall")
    share = min(max((strip.height / small - low) / step, 0.0), 1.0)
    role: Role = strip.role if share >= 1 else "sludge_edge" if strip.role == "sludge" else "scum_edge"
    full = "▓" if strip.role == "sludge" else "░"
    sign = full if share >= 1 else _EIGHTHS[floor(share * 8)]
    grid.put(left + 4, line, "│", "plain")
    grid.put(left + 5, line, sign * _HALF, role if share > 0 else "plain")
    grid.put(left + 5 + _HALF, line, "│", "plain")


def as_words(strips: Sequence[Strip], words: Words, units: Units = "us") -> list[str]:
    """For people who hear it: between which two marks each one ends."""
    small = METRES_PER_INCH / 2 if units == "us" else 0.01
    told = []
    for strip in strips:
        low = floor(strip.height / small + 1e-6)
        first, then = (_figure(mark, units) for mark in (low, low + 1))
        told.append(say(words, "between", name=strip.name, low=first, high=then, unit=unit(units)))
    return told


def _figure(marks: int, units: Units) -> str:
    """Half inches as `8½`, or whole centimetres."""
    if units == "metric":
        return str(marks)
    whole, half = divmod(marks, 2)
    return (str(whole) if whole or not half else "") + ("½" if half else "")
