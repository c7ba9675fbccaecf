"""How solids gather in a tank: `V(t) = r · N̄(t) · t^b`, and what is known of `r` and `b` before anything is read.

`V` [m³] is what sludge and scum have gained since the last pump-out, `t` [yr] the time since then, `N̄` the mean
number of people at home over that time, `r` [m³ a person] what one person leaves in the first year, and `b` below 1
because old layers digest and pack. Sludge and scum follow the same law with one `b` and share `r` between them:
`r_scum = φ·r`, `r_sludge = (1 − φ)·r`, so that their sum is exactly `r · N̄ · t^b`.

What is known beforehand: `ln r ~ N(ln 0.140, 0.55²)`, `b ~ N(0.80, 0.12²)` cut to 0.5 to 1.1, `logit φ ~ N(−1.0,
0.7²)`, all three independent. The first two are fitted to the published figures per person (sources: gray-1995,
philip-1993, gill-2022, of which the abstracts were read, and interval-table, read in a reprint), all of which lie
inside the 95 % band; the split (median 27 % scum, 95 % band 9 to 59 %) is our choice.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from typing import NamedTuple

from selfcheck.domain.shapes import Vessel

RATE_MEDIAN_M3 = 0.140  #: [m³ a person in the first year]
RATE_SPREAD = 0.55  #: one standard deviation of ln r
POWER_MEAN = 0.80
POWER_SPREAD = 0.12
POWER_LEAST = 0.5
POWER_MOST = 1.1
SPLIT_MEAN = -1.0  #: of logit φ (our choice)
SPLIT_SPREAD = 0.7  #: (our choice)

#: A floating crust hangs two thirds below the water line (common practice).
HANGING = 2.0 / 3.0
_NODES = 64


class Packing(NamedTuple):
    """Thickness of each layer against its volume in one vessel, from tables with straight lines between close points.

    Sludge lies on the floor; scum floats with two thirds of its thickness below the water line of the full tank.
    Beyond the table (a layer that fills the tank) the last thickness holds. Table steps are fine enough for 1 mm in
    any tank shape.
    """

    heights: tuple[float, ...]  # sludge thickness [m]
    below: tuple[float, ...]  # its volume [m³]
    crusts: tuple[float, ...]  # scum thickness [m]
    floating: tuple[float, ...]  # its volume [m³]

    def sludge_m3(self, thickness_m: float) -> float:
        """Volume [m³] of sludge this thick [m]; mirrored below zero, so that a reading less its error stays usable."""
        return _along(self.heights, self.below, thickness_m)

    def sludge_m(self, volume_m3: float) -> float:
        """Thickness [m] of this much sludge [m³]."""
        return _along(self.below, self.heights, volume_m3)

    def scum_m3(self, thickness_m: float) -> float:
        """Volume [m³] of a crust this thick [m]; mirrored below zero."""
        return _along(self.crusts, self.floating, thickness_m)

    def scum_m(self, volume_m3: float) -> float:
        """Thickness [m] of this much scum [m³]."""
        return _along(self.floating, self.crusts, volume_m3)

    @property
    def full_m3(self) -> float:
        """Volume [m³] when sludge fills the whole liquid depth."""
        return self.below[-1]


def packing(vessel: Vessel) -> Packing:
    """The tables of one vessel, over its whole liquid depth."""
    depth = vessel.liquid_depth_m
    full = vessel.volume_below(depth)
    area = vessel.surface_area(depth)
    shares = [(i / _NODES) ** 2 for i in range(_NODES + 1)]  # closer together for thin layers
    heights = [depth * share for share in shares]
    below = [vessel.volume_below(height) for height in heights]
    crusts = [depth / HANGING * share for share in shares]
    floating = [
        full - vessel.volume_below(max(depth - HANGING * crust, 0.0)) + area * (1.0 - HANGING) * crust
        for crust in crusts
    ]
    return Packing(tuple(heights), _rising(below), tuple(crusts), _rising(floating))


def _rising(volumes: Sequence[float]) -> tuple[float, ...]:
    """The same, made strictly rising where rounding or a flat piece of a chart left two alike."""
    out = [0.0]
    for volume in volumes[1:]:
        out.append(max(volume, out[-1] + 1e-9))
    return tuple(out)


def _along(xs: tuple[float, ...], ys: tuple[float, ...], x: float) -> float:
    """`y` at `x` on straight lines between the points; odd about zero; the last value beyond the end."""
    if x < 0.0:
        return -_along(xs, ys, -x)
    if x >= xs[-1]:
        return ys[-1]
    at = bisect_right(xs, x) - 1
    return ys[at] + (ys[at + 1] - ys[at]) * (x - xs[at]) / (xs[at + 1] - xs[at])
