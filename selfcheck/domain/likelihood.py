"""What a household's readings say of its rates: how likely each rate makes them, with errors of heavy tails."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

#: Degrees of freedom of the errors: heavy tails, so that one wild reading is outvoted and not averaged in (our choice).
FREEDOM = 4.0
#: Scale of the errors as a share of a reading's standard error: the middle 80 % is then as wide as for a normal error.
SCALE = 1.2816 / 1.5332

Grid = list[float]


class Seen(NamedTuple):
    """One layer at one check: person-years and years since its pump-out, volume gained [m³], its standard error [m³].

    `newest`: the last reading of the present span. It is no outlier, whatever the older ones say: its error is normal.
    """

    person_years: float
    years: float
    volume_m3: float
    error_m3: float
    newest: bool = False


def likelihood(seen: Sequence[Seen], power: float, rates: Grid, pivot: float) -> Grid:
    """Log likelihood of one layer's readings at each rate [m³ a person at the time `pivot`, yr], for one power of time.

    The Student-t terms are multiplied, and logged once a dozen.
    """
    out = [0.0] * len(rates)
    older = [one for one in seen if not one.newest]
    for start in range(0, len(older), 12):
        product = [1.0] * len(rates)
        for one in older[start : start + 12]:
            scale = 1.0 / (one.error_m3 * SCALE * math.sqrt(FREEDOM))
            slope = _slope(one, power, pivot) * scale
            at = one.volume_m3 * scale
            product = [p * (1.0 + (off := slope * rate - at) * off) for p, rate in zip(product, rates, strict=True)]
        out = [a - (FREEDOM + 1.0) / 2.0 * math.log(p) for a, p in zip(out, product, strict=True)]
    for one in seen[len(older) :]:
        slope, at = _slope(one, power, pivot) / one.error_m3, one.volume_m3 / one.error_m3
        out = [a - 0.5 * (off := slope * rate - at) * off for a, rate in zip(out, rates, strict=True)]
    return out


def _slope(one: Seen, power: float, pivot: float) -> float:
    """Volume [m³] at the time of a reading for a rate of one at the pivot."""
    grown: float = one.person_years / one.years * (one.years / pivot) ** power
    return grown


def pivot_of(seen: Sequence[Seen]) -> float:
    """Weighted geometric mean of the times of the readings [yr]; 1 when there are none."""
    weights = [min(abs(one.volume_m3) / one.error_m3, 20.0) ** 2 + 0.01 for one in seen]
    if not seen:
        return 1.0
    return math.exp(sum(w * math.log(one.years) for w, one in zip(weights, seen, strict=True)) / sum(weights))
