"""What a household's readings say about how fast its tank fills: rates and power on a grid, in plain Python.

The grid runs over `x = ln(sludge rate)`, `y = ln(scum rate)` and `b`. Rates are taken per person at a pivot time close
to the readings, so that `x` and `y` hardly depend on `b`. In `L = ln(e^x + e^y)` and `q = y − x` (the logit of the
scum's share) the density needs no correction, because that change of variables keeps areas. Given `b`, sludge readings
touch only `x` and scum readings only `y`, so each likelihood is a line and not a plane.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from functools import cached_property
from itertools import accumulate, compress
from operator import add, itemgetter, sub
from typing import NamedTuple

from selfcheck.domain.accumulation import (
    POWER_LEAST,
    POWER_MEAN,
    POWER_MOST,
    POWER_SPREAD,
    RATE_MEDIAN_M3,
    RATE_SPREAD,
    SPLIT_MEAN,
    SPLIT_SPREAD,
)
from selfcheck.domain.history import Course
from selfcheck.domain.likelihood import Grid, Seen, likelihood, pivot_of

_RATES = 22
_POWERS, _POWERS_NARROW = 10, 7  # over the whole range of powers, and over what readings have left of it
_GOLDEN = (math.sqrt(5.0) - 1.0) / 2.0
_SCAN_RATES, _SCAN_POWERS = 13, 5
_LEAST = 2e-5  # share of the whole weight below which a pair of rates is left out
_CUT = 5.5  # nats below the best point at which the grid ends, about 3.3 standard deviations


#: Log of a growth factor so large or small that it stands for never, for from the start, and for no growth at all.
NEVER, FROM_THE_START, NOTHING = 1e9, -1e9, -1e8


class Posterior:
    """Weights over sludge rate, scum rate and power after the readings; made once, asked often."""

    def __init__(self, sludge: Sequence[Seen], scum: Sequence[Seen], vessel_error: float = 0.0) -> None:
        """Update what is known beforehand by the readings of both layers.

        `vessel_error`: relative standard error of the tank's volume. Rates are in volumes of the tank as assumed, so a
        tank of doubtful size only widens what is known beforehand; readings and limits share its error and it cancels.
        """
        self.pivot = pivot_of([*sludge, *scum])
        self._spread = math.hypot(RATE_SPREAD, vessel_error)
        self._shift = math.log(self.pivot)
        powers = _middles(POWER_LEAST, POWER_MOST, _SCAN_POWERS)
        share = 1.0 / (1.0 + math.exp(-SPLIT_MEAN))
        base = math.log(RATE_MEDIAN_M3)
        x_low, x_high, x_best = self._scan(
            sludge, powers, base + math.log(1.0 - share), math.hypot(self._spread, share * SPLIT_SPREAD)
        )
        y_low, y_high, y_best = self._scan(
            scum, powers, base + math.log(share), math.hypot(self._spread, (1.0 - share) * SPLIT_SPREAD)
        )
        best = [a + b + _normal(p, POWER_MEAN, POWER_SPREAD) for p, a, b in zip(powers, x_best, y_best, strict=True)]
        top = max(best)
        live = [p for p, value in zip(powers, best, strict=True) if value > top - _CUT]
        half = (POWER_MOST - POWER_LEAST) / _SCAN_POWERS / 2.0
        #: powers of time on the grid
        count = _POWERS if len(live) == _SCAN_POWERS else _POWERS_NARROW
        self.powers = _middles(live[0] - half, live[-1] + half, count)
        self._fill(sludge, scum, (x_low, x_high), (y_low, y_high))

    def _scan(self, seen: Sequence[Seen], powers: Grid, mean: float, spread: float) -> tuple[float, float, Grid]:
        """The stretch of one layer's log rate that matters, and the best value for each power.

        Closes in step by step for the middle power, so that a sharp peak between two coarse points is not missed; then
        looks at all powers over a wider stretch. The other layer is left out; a wider spread beforehand makes up for
        it.
        """
        spread *= 1.15
        narrow = 0.5 / spread**2
        shifts = [power * self._shift for power in powers]
        low = mean + min(shifts) - 5.0 * spread
        high = mean + max(shifts) + 5.0 * spread
        middle = len(powers) // 2
        looked = [middle] if seen else list(range(len(powers)))
        rounds = 3  # with all powers, should a peak lie at the edge
        while True:
            step = (high - low) / (_SCAN_RATES - 1)
            grid = [low + step * i for i in range(_SCAN_RATES)]
            rates = [math.exp(x) for x in grid]
            rows = []
            for i in looked:
                line = likelihood(seen, powers[i], rates, self.pivot)
                expected = mean + shifts[i]
                rows.append([value - narrow * (x - expected) ** 2 for x, value in zip(grid, line, strict=True)])
            best = [max(row) for row in rows]
            ridge = list(map(max, *rows)) if len(rows) > 1 else rows[0]
            bar = max(best) - _CUT
            live = [i for i, value in enumerate(ridge) if value > bar]
            low, high = grid[live[0]] - step, grid[live[-1]] + step
            if len(live) < 5 and high - low < 0.7 * (_SCAN_RATES - 1) * step:
                continue
            if len(looked) > 1 and (rounds == 0 or (live[0] > 0 and live[-1] < _SCAN_RATES - 1)):
                return low, high, best
            rounds -= 1
            looked = list(range(len(powers)))
            low, high = low - (high - low) / 4.0, high + (high - low) / 4.0

    def _fill(
        self, sludge: Sequence[Seen], scum: Sequence[Seen], x_range: tuple[float, float], y_range: tuple[float, float]
    ) -> None:
        xs, ys = _middles(*x_range, _RATES), _middles(*y_range, _RATES)
        x_step, y_step = xs[1] - xs[0], ys[1] - ys[0]
        # All rates are moved a little, by another part of a step for each power: no two lattices are alike.
        step = (x_step + y_step) / 2.0
        self._moved = [((i * _GOLDEN) % 1.0 - 0.5) * step for i in range(len(self.powers))]
        # A slanted lattice: each row and column is set aside by another part of a step, so that a limit that only one
        # layer touches sees many different values of it and not the same few again and again.
        x_aside = [(i * 3 % _RATES + 0.5) / _RATES - 0.5 for i in range(_RATES)]
        y_aside = [(i * 5 % _RATES + 0.5) / _RATES - 0.5 for i in range(_RATES)]
        #: log rates of sludge and scum of each pair [ln m³ a person at the pivot]
        self.sludge = [x + off * x_step for x in xs for off in x_aside]
        self.scum = [y + off * y_step for off in y_aside for y in ys]
        #: log of both rates together, for each pair
        self.totals = [math.log(math.exp(x) + math.exp(y)) for x, y in zip(self.sludge, self.scum, strict=True)]
        splits = [_normal(y - x, SPLIT_MEAN, SPLIT_SPREAD) for x, y in zip(self.sludge, self.scum, strict=True)]
        x_rates, y_rates = [math.exp(x) for x in xs], [math.exp(y) for y in ys]
        narrow, exp = 0.5 / self._spread**2, math.exp
        rows: list[Grid] = []
        tops: Grid = []
        for power, moved in zip(self.powers, self._moved, strict=True):
            mean = math.log(RATE_MEDIAN_M3) + power * self._shift - moved
            wider = exp(moved)
            along_x, along_y = splits, [0.0] * (_RATES * _RATES)
            if sludge:
                told = likelihood(sludge, power, [rate * wider for rate in x_rates], self.pivot)
                along_x = list(map(add, splits, _set_aside(told, x_aside)))
            if scum:
                told = likelihood(scum, power, [rate * wider for rate in y_rates], self.pivot)
                along_y = _turned(_set_aside(told, y_aside))
            row = [a + b - narrow * (t - mean) ** 2 for a, b, t in zip(along_x, along_y, self.totals, strict=True)]
            rows.append(row)
            tops.append(max(row) + _normal(power, POWER_MEAN, POWER_SPREAD))
        top = max(tops)
        for i, power in enumerate(self.powers):
            off = _normal(power, POWER_MEAN, POWER_SPREAD) - top
            rows[i] = [exp(value + off) for value in rows[i]]
        masses = list(map(sum, zip(*rows, strict=True)))
        least = _LEAST * sum(masses)
        live = [mass > least for mass in masses]
        self.sludge, self.scum, self.totals = (
            list(compress(one, live)) for one in (self.sludge, self.scum, self.totals)
        )
        rows = [list(compress(row, live)) for row in rows]
        whole = sum(map(sum, rows))
        #: weights[power][pair], summing to 1; pairs that hold next to nothing are left out
        self.weights = [[w / whole for w in row] for row in rows]
        self._halves = [[w / 2.0 for w in row] for row in self.weights]

    def growth(self, course: Course, t: float) -> Grid:
        """Log of what a rate of 1 at the pivot has become after `t` years, for each power; `NOTHING` while nobody lived
        there."""
        people_years = course.person_years(t)
        if people_years <= 0.0:
            return [NOTHING] * len(self.powers)
        people, aged = math.log(people_years / t), math.log(t / self.pivot)
        return [people + power * aged + moved for power, moved in zip(self.powers, self._moved, strict=True)]

    def order(self, keys: Grid) -> Order:
        """The pairs in rising order of a key, ready to say how much weight lies below a value of it."""
        places = sorted(range(len(keys)), key=keys.__getitem__)
        pick = itemgetter(*places)
        sums = [
            list(map(sub, accumulate(pick(row)), pick(half)))
            for row, half in zip(self.weights, self._halves, strict=True)
        ]
        return Order(list(pick(keys)), sums)

    def rate_quantile(self, share: float) -> float:
        """Quantile of the total rate [m³ a person in the first year]."""
        order = self.order(self.totals)
        grown = [moved - power * self._shift for power, moved in zip(self.powers, self._moved, strict=True)]
        low, high = min(self.totals) - 3.0, max(self.totals) + 3.0
        return math.exp(order.quantile(share, grown, low, high, rounds=40))

    def volume_quantiles(self, layer: Grid, growth: Grid, shares: Sequence[float]) -> list[float]:
        """Quantiles of one layer's gained volume [m³]; `layer` is `sludge` or `scum`, `growth` as from `growth()`."""
        if growth[0] == NOTHING:
            return [0.0 for _ in shares]
        order = self.sludge_order if layer is self.sludge else self.scum_order
        low, high = order.keys[0] + min(growth), order.keys[-1] + max(growth)
        return [math.exp(order.quantile(share, growth, low, high, rounds=24)) for share in shares]

    @cached_property
    def sludge_order(self) -> Order:
        """Pairs by their sludge rate."""
        return self.order(self.sludge)

    @cached_property
    def scum_order(self) -> Order:
        """Pairs by their scum rate."""
        return self.order(self.scum)


class Order(NamedTuple):
    """Pairs in rising order of a key; for each power the weight below each pair, half of its own counted."""

    keys: Grid
    sums: list[Grid]

    def below(self, bars: Sequence[float]) -> float:
        """Weight of all points whose key is below the bar of their power, straight between neighbouring keys."""
        keys, last, weight = self.keys, len(self.keys), 0.0
        for row, bar in zip(self.sums, bars, strict=True):
            at = bisect_right(keys, bar)
            if at == last:
                weight += row[-1]
            elif at:
                low, before = keys[at - 1], row[at - 1]
                weight += before + (row[at] - before) * (bar - low) / (keys[at] - low)
        return weight

    def quantile(self, share: float, grown: Sequence[float], low: float, high: float, *, rounds: int) -> float:
        """The value between `low` and `high` that keys, each more by `grown` of its power, stay below with that share
        of the weight; halved so many times.
        """
        for _ in range(rounds):
            middle = (low + high) / 2.0
            if self.below([middle - more for more in grown]) < share:
                low = middle
            else:
                high = middle
        return (low + high) / 2.0


def _middles(low: float, high: float, count: int) -> Grid:
    step = (high - low) / count
    return [low + step * (i + 0.5) for i in range(count)]


def _set_aside(values: Grid, aside: Grid) -> Grid:
    """Values between the points of a line, by parabolas: for each point all the set-aside places near it, in turn."""
    out: Grid = []
    for i, value in enumerate(values):
        before, behind = values[max(i - 1, 0)], values[min(i + 1, len(values) - 1)]
        slope, bend = (behind - before) / 2.0, (before + behind) / 2.0 - value
        out += [value + off * (slope + off * bend) for off in aside]
    return out


def _turned(square: Grid) -> Grid:
    """Rows for columns."""
    return [value for i in range(_RATES) for value in square[i::_RATES]]


def _normal(x: float, mean: float, spread: float) -> float:
    return -0.5 * ((x - mean) / spread) ** 2
