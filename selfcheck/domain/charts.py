"""A maker's chart of volume by height, as an inside form like the others of `geometry`."""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise
from math import sqrt
from typing import NamedTuple

from selfcheck.domain.geometry import PICTURED_LENGTH_TO_WIDTH, find_height

# Lines of a chart closer than this do not rise in any way that can be measured.
LEAST_STEP_M = 1e-4
LEAST_STEP_M3 = 1e-6


class Chart(NamedTuple):
    """A maker's table of volumes below heights, joined by a monotone cubic; never carried on beyond its last line.

    The floor (0, 0) is added where the chart starts higher. Slopes after Fritsch and Butland (weighted harmonic means),
    with three-point ends, as in SIAM J. Sci. Stat. Comput. 5(2), 1984. Make it with `Chart.of`.
    """

    heights: tuple[float, ...]
    volumes: tuple[float, ...]
    slopes: tuple[float, ...]

    @classmethod
    def of(cls, heights: list[float], volumes: list[float]) -> Chart | None:
        """The chart; None when it has under two lines or does not rise from line to line."""
        if len(heights) != len(volumes):
            return None
        points = list(zip(heights, volumes, strict=True))
        if points and points[0][0] > 0 and points[0][1] > 0:
            points.insert(0, (0.0, 0.0))
        rising = all(a[0] + LEAST_STEP_M < b[0] and a[1] + LEAST_STEP_M3 < b[1] for a, b in pairwise(points))
        if len(points) < 2 or not rising or points[0] != (0.0, 0.0) or points[-1][0] < 0.01:
            return None
        xs, ys = tuple(p[0] for p in points), tuple(p[1] for p in points)
        return cls(xs, ys, monotone_slopes(xs, ys))

    @property
    def top(self) -> float | None:
        """The last height the chart vouches for [m]."""
        return self.heights[-1]

    def volume(self, height: float) -> float:
        """Cubic between the two lines around the height [m³]; outside the chart, its value at the nearest end."""
        if height <= 0:
            return 0.0
        if height >= self.heights[-1]:
            return self.volumes[-1]
        k, t, step = self._place(height)
        low, high = self.volumes[k], self.volumes[k + 1]
        left, right = self.slopes[k] * step, self.slopes[k + 1] * step
        rise = t * t * (3 - 2 * t)
        return low + (high - low) * rise + t * (1 - t) * (left * (1 - t) - right * t)

    def area(self, height: float) -> float:
        """Derivative of the cubic [m²]; outside the chart, its value at the nearest end."""
        k, t, step = self._place(min(max(height, 0.0), self.heights[-1]))
        secant = (self.volumes[k + 1] - self.volumes[k]) / step
        left, right = self.slopes[k], self.slopes[k + 1]
        return 6 * t * (1 - t) * secant + (1 - t) * (1 - 3 * t) * left + t * (3 * t - 2) * right

    def half_width(self, height: float) -> float:
        """Half of the width [m] of a rectangle of the same area in the pictured proportion (our choice)."""
        return sqrt(max(self.area(height), 0.0) / PICTURED_LENGTH_TO_WIDTH) / 2

    def height(self, volume: float) -> float:
        """Height [m] of a volume [m³]: found by Newton's method between the two lines around the volume."""
        if volume <= 0:
            return 0.0
        if volume >= self.volumes[-1]:
            return self.heights[-1]
        k = bisect_right(self.volumes, volume) - 1
        return find_height(self, volume, self.heights[k], self.heights[k + 1])

    def _place(self, height: float) -> tuple[int, float, float]:
        k = min(bisect_right(self.heights, height) - 1, len(self.heights) - 2)
        step = self.heights[k + 1] - self.heights[k]
        return k, (height - self.heights[k]) / step, step


def monotone_slopes(xs: tuple[float, ...], ys: tuple[float, ...]) -> tuple[float, ...]:
    """Slopes at each point so that the cubics between rising points rise too (see `Chart`)."""
    steps = [b - a for a, b in pairwise(xs)]
    secants = [(b - a) / h for (a, b), h in zip(pairwise(ys), steps, strict=True)]
    if len(steps) == 1:
        return (secants[0], secants[0])
    inner = []
    for (h0, h1), (s0, s1) in zip(pairwise(steps), pairwise(secants), strict=True):
        w0, w1 = 2 * h1 + h0, h1 + 2 * h0
        inner.append((w0 + w1) / (w0 / s0 + w1 / s1))
    first = _end_slope(steps[0], steps[1], secants[0], secants[1])
    last = _end_slope(steps[-1], steps[-2], secants[-1], secants[-2])
    return (first, *inner, last)


def _end_slope(near: float, far: float, near_secant: float, far_secant: float) -> float:
    slope = ((2 * near + far) * near_secant - near * far_secant) / (near + far)
    return max(slope, 0.0)
