"""When the weight of rates that have crossed a limit reaches a share."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable
from math import inf

from selfcheck.domain.history import DAYS_A_YEAR
from selfcheck.domain.likelihood import Grid
from selfcheck.domain.posterior import Order

_RUNGS = 24

#: Times [yr since the start] with the log growth for each power by then.
Ladder = list[tuple[float, Grid]]


def ladder(most: float, growth: Callable[[float], Grid]) -> Ladder:
    """Times up to `most` [yr], closer together at first. Made once for a tank, and shared by all its limits."""
    times = [most * (step / _RUNGS) ** 2 for step in range(1, _RUNGS + 1)]
    return [(t, growth(t)) for t in times]


def reaches(order: Order, rungs: Ladder, growth: Callable[[float], Grid], share: float) -> float:
    """The time [yr since the start] at which this much weight has crossed, within a quarter of a day.

    Infinite beyond the last rung. By false position (Illinois) between two rungs.
    """
    at = bisect_left(rungs, share, key=lambda rung: order.below(rung[1]))
    if at == len(rungs):
        return inf
    low, at_low = (rungs[at - 1][0], order.below(rungs[at - 1][1]) - share) if at else (0.0, -share)
    high, at_high = rungs[at][0], order.below(rungs[at][1]) - share
    middle, last, side = high, high, 0
    for _ in range(60):
        middle = (low * at_high - high * at_low) / (at_high - at_low) if at_high > at_low else high
        if abs(middle - last) < 0.25 / DAYS_A_YEAR:
            break
        last, value = middle, order.below(growth(middle)) - share
        if value < 0.0:
            low, at_low, at_high = middle, value, at_high / 2.0 if side < 0 else at_high
            side = -1
        else:
            high, at_high, at_low = middle, value, at_low / 2.0 if side > 0 else at_low
            side = 1
    return middle
