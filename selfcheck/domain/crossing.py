"""When layers that keep growing cross a limit.

Both layers grow by the same factor as time goes on, so each point of the posterior moves along a ray of constant
split, and a limit is crossed once that factor reaches a value of its own. That value does not depend on the power of
time: it is worked out once for each pair of rates, and dates follow from weights summed in its order.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from operator import sub

from selfcheck.domain.accumulation import Packing
from selfcheck.domain.household import Tank
from selfcheck.domain.likelihood import Grid
from selfcheck.domain.limits import Limit, margin_of
from selfcheck.domain.outlet import HANGS_BELOW, outlet_below_surface
from selfcheck.domain.posterior import FROM_THE_START, NEVER, Order, Posterior
from selfcheck.domain.shapes import Vessel

_SLUDGE_ONLY = ("sludge_to_outlet", "sludge_to_outlet_by_table", "sludge")
_SCUM_ONLY = ("scum_to_outlet", "scum_top_to_outlet_top", "scum")
_BY_OUTLET = ("sludge_to_outlet", "sludge_to_outlet_by_table", "scum_to_outlet")
#: Splits, as logits of the scum's share: the least, the step between two, and how many at most.
_RAY_LEAST, _RAY_STEP, _RAYS = -6.0, 0.75, 17
_STRATA = 9

Margin = Callable[[float, float], float]


class Thresholds:
    """For each limit, the log growth factor at which each pair of rates crosses it. Kept once worked out.

    The outlet device's height is uncertain, more so where it is assumed. Each pair is given one of nine equally likely
    heights, spread evenly over the pairs, so that the dates carry that error too.
    """

    def __init__(self, posterior: Posterior, tank: Tank, vessel: Vessel, packing: Packing, residue_m: float) -> None:
        self._posterior = posterior
        self._tank = tank
        self._vessel = vessel
        self._packing = packing
        self._residue = packing.sludge_m3(residue_m)
        self._outlet_error = outlet_below_surface(tank, vessel).error
        self._keys: dict[Limit, Grid] = {}
        self._orders: dict[tuple[Limit, ...], Order] = {}

    def order(self, limits: Sequence[Limit]) -> Order:
        """The pairs in the order in which they cross the first of these limits. Limits in years have no part in it."""
        wanted = tuple(dict.fromkeys(limit for limit in limits if limit.kind != "years"))
        if wanted not in self._orders:
            columns = [self.keys(limit) for limit in wanted]
            first = [NEVER] * len(self._posterior.sludge) if not columns else columns[0]
            if len(columns) > 1:
                first = list(map(min, *columns))
            self._orders[wanted] = self._posterior.order(first)
        return self._orders[wanted]

    def keys(self, limit: Limit) -> Grid:
        """Log growth factor at which each pair of rates crosses this limit."""
        if limit not in self._keys:
            margin = margin_of(limit, self._tank, self._vessel)
            if margin(0.0, 0.0) == math.inf:  # thicknesses cannot tell: this limit has no say
                self._keys[limit] = [NEVER] * len(self._posterior.sludge)
            elif limit.kind == "solids_by_volume":
                self._keys[limit] = self._by_volume(limit.value or 0.0)
            elif limit.kind in _SLUDGE_ONLY or limit.kind in _SCUM_ONLY:
                self._keys[limit] = self._by_layer(limit, margin)
            else:
                self._keys[limit] = self._by_split(margin)
        return self._keys[limit]

    def _by_layer(self, limit: Limit, margin: Margin) -> Grid:
        """A limit that one layer alone decides."""
        packing, sludge = self._packing, limit.kind in _SLUDGE_ONLY
        most = (packing.heights if sludge else packing.crusts)[-1]
        limit_m = _root((lambda m: margin(m, 0.0)) if sludge else (lambda m: margin(0.0, m)), most)
        rates = self._posterior.sludge if sludge else self._posterior.scum
        error = self._outlet_error if limit.kind in _BY_OUTLET else 0.0
        if not sludge:
            error /= HANGS_BELOW
        logs = []
        for stratum in range(_STRATA if error > 0.0 else 1):
            # an outlet that hangs higher leaves more room to the sludge and less to the scum
            off = NORMAL[stratum] * error if error > 0.0 else 0.0
            bar = min(max(limit_m + (off if sludge else -off), 0.0), most)
            room = packing.sludge_m3(bar) - self._residue if sludge else packing.scum_m3(bar)
            logs.append(math.log(room) if room > 0.0 else FROM_THE_START)
        if len(logs) == 1:
            return [logs[0] - rate for rate in rates]
        return [logs[i * 5 % _STRATA] - rate for i, rate in enumerate(rates)]

    def _by_volume(self, share: float) -> Grid:
        """A share of the compartment's full volume: both layers add up to it however they are split."""
        most = max(self._packing.full_m3 - self._residue, 0.0)
        room = min(share * self._packing.full_m3 - self._residue, most)
        log = math.log(room) if room > 0.0 else FROM_THE_START
        return [log - total for total in self._posterior.totals]

    def _by_split(self, margin: Margin) -> Grid:
        """A limit that both layers decide: the volume at which it is crossed, for some splits, and between them
        straight.
        """
        packing, residue, posterior = self._packing, self._residue, self._posterior
        most = max(packing.full_m3 - residue, 0.0)
        splits = list(map(sub, posterior.scum, posterior.sludge))
        least = max(_RAY_LEAST, math.floor(min(splits) / _RAY_STEP) * _RAY_STEP)
        rays = min(math.ceil((max(splits) - least) / _RAY_STEP) + 1, _RAYS)
        logs = []
        for i in range(max(rays, 2)):
            share = 1.0 / (1.0 + math.exp(-(least + i * _RAY_STEP)))

            def along(volume: float, share: float = share) -> float:
                return margin(packing.sludge_m(residue + (1.0 - share) * volume), packing.scum_m(share * volume))

            room = _root(along, most)
            logs.append(math.log(room) if room > 0.0 else FROM_THE_START)
        if logs[0] == FROM_THE_START:
            return [FROM_THE_START] * len(posterior.sludge)
        out, last = [], len(logs) - 1.001
        for split, total in zip(splits, posterior.totals, strict=True):
            at = min(max((split - least) / _RAY_STEP, 0.0), last)
            low = int(at)
            out.append(logs[low] + (logs[low + 1] - logs[low]) * (at - low) - total)
        return out


#: Middles of nine equally likely slices of a standard normal error: the quantiles 1/18, 3/18 … 17/18.
NORMAL = (-1.593219, -0.967422, -0.589456, -0.282216, 0.0, 0.282216, 0.589456, 0.967422, 1.593219)


def _root(margin: Callable[[float], float], most: float) -> float:
    """Where a falling margin reaches zero between 0 and `most`; 0 when it never stood above, `most` when it stays
    above.

    A tank whose layers fill the whole liquid is past every limit, hence `most`.
    """
    low, high = 0.0, most
    at_low, at_high = margin(low), margin(high)
    if at_low <= 0.0:
        return 0.0
    if at_high >= 0.0:
        return most
    for _ in range(60):
        middle = (low * at_high - high * at_low) / (at_high - at_low)
        value = margin(middle)
        if abs(value) < 1e-7 or high - low < 1e-7 * most:
            return middle
        if value > 0.0:
            low, at_low, at_high = middle, value, at_high / 2.0
        else:
            high, at_high, at_low = middle, value, at_low / 2.0
    return (low + high) / 2.0
