"""Inside forms of tanks: volume below a height, the surface there, and the height of a volume.

Every form is filled from its floor (height 0). Below the floor there is nothing; a closed form holds no more than its
whole volume, however high the question. Lengths in metres, areas in square metres, volumes in cubic metres.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise
from math import asin, cos, pi, sin, sqrt
from typing import Protocol

#: A form without known sides is pictured twice as long as it is wide (our choice; no figure rests on it).
PICTURED_LENGTH_TO_WIDTH = 2.0


class Profile(Protocol):
    """What every inside form answers."""

    @property
    def top(self) -> float | None:
        """Inside height [m]; None where the walls simply go on up."""

    def volume(self, height: float) -> float:
        """Volume below a height above the floor [m³]."""

    def area(self, height: float) -> float:
        """Area of the surface at a height [m²]: the derivative of the volume."""

    def half_width(self, height: float) -> float:
        """Half of the width across the tank at a height [m]."""

    def height(self, volume: float) -> float:
        """Height below which this volume lies [m]: the inverse of `volume`."""


@dataclass(frozen=True, slots=True)
class Straight:
    """Upright walls on a floor of any form: a box, an upright round tank, or a floor area alone."""

    floor_area: float
    half: float

    @property
    def top(self) -> float | None:
        """None: upright walls have no height of their own here."""
        return None

    def volume(self, height: float) -> float:
        """V = A·h."""
        return self.floor_area * height if height > 0 else 0.0

    def area(self, height: float) -> float:
        """The floor area, at every height."""
        return self.floor_area

    def half_width(self, height: float) -> float:
        """The same at every height."""
        return self.half

    def height(self, volume: float) -> float:
        """h = V/A."""
        return volume / self.floor_area if volume > 0 else 0.0


@dataclass(frozen=True, slots=True)
class Lying:
    """A lying tank with a round or elliptical section and flat or bulging ends.

    `rise`: half of the inside height [m]. `stretch`: width over height of the section, 1 for a round one. `length`: the
    straight part [m]. `bulge`: how far each end stands out [m]; 0 flat, rise/2 for ellipsoidal 2:1, rise for a
    hemisphere. With half-angle θ where h = R(1 − cos θ), the straight part holds L·stretch·R²(θ − sin θ cos θ) and both
    ends together (bulge/R)·stretch·πh²(3R − h)/3.
    """

    rise: float
    length: float
    stretch: float = 1.0
    bulge: float = 0.0

    @property
    def top(self) -> float | None:
        """Inside height of the section."""
        return 2 * self.rise

    def volume(self, height: float) -> float:
        """Straight part and both ends, below a height."""
        radius = self.rise
        h = min(max(height, 0.0), 2 * radius)
        ends = self.bulge / radius * pi * h * h * (3 * radius - h) / 3
        return self.stretch * (self.length * segment_area(radius, h) + ends)

    def area(self, height: float) -> float:
        """Rectangle of the straight part and an ellipse cut from the two ends."""
        half = self.half_width(height)
        return 2 * self.length * half + pi * half * half / self.stretch * self.bulge / self.rise

    def half_width(self, height: float) -> float:
        """Half of the chord of the section."""
        h = min(max(height, 0.0), 2 * self.rise)
        return self.stretch * sqrt(h * (2 * self.rise - h))

    def height(self, volume: float) -> float:
        """Found by Newton's method, kept between floor and top."""
        return find_height(self, volume, 0.0, 2 * self.rise)


@dataclass(frozen=True, slots=True)
class Chart:
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
        rising = all(a[0] < b[0] and a[1] < b[1] for a, b in pairwise(points))
        if len(points) < 2 or not rising or points[0] != (0.0, 0.0):
            return None
        xs, ys = tuple(p[0] for p in points), tuple(p[1] for p in points)
        return cls(xs, ys, monotone_slopes(xs, ys))

    @property
    def top(self) -> float | None:
        """The last height the chart vouches for."""
        return self.heights[-1]

    def volume(self, height: float) -> float:
        """Cubic between the two lines around the height."""
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
        """Derivative of the cubic; outside the chart, its value at the nearest end."""
        k, t, step = self._place(min(max(height, 0.0), self.heights[-1]))
        secant = (self.volumes[k + 1] - self.volumes[k]) / step
        left, right = self.slopes[k], self.slopes[k + 1]
        return 6 * t * (1 - t) * secant + (1 - t) * (1 - 3 * t) * left + t * (3 * t - 2) * right

    def half_width(self, height: float) -> float:
        """Of a rectangle of the same area in the pictured proportion."""
        return sqrt(max(self.area(height), 0.0) / PICTURED_LENGTH_TO_WIDTH) / 2

    def height(self, volume: float) -> float:
        """Found by Newton's method between the two lines around the volume."""
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


@dataclass(frozen=True, slots=True)
class Part:
    """One compartment: a share of a whole form, cut by an upright wall across its length."""

    whole: Profile
    share: float

    @property
    def top(self) -> float | None:
        """As the whole."""
        return self.whole.top

    def volume(self, height: float) -> float:
        """Its share of the whole."""
        return self.share * self.whole.volume(height)

    def area(self, height: float) -> float:
        """Its share of the whole."""
        return self.share * self.whole.area(height)

    def half_width(self, height: float) -> float:
        """As the whole: the wall runs across."""
        return self.whole.half_width(height)

    def height(self, volume: float) -> float:
        """Of the whole, for the volume the whole would hold."""
        return self.whole.height(volume / self.share)


def segment_area(radius: float, height: float) -> float:
    """Area of the part of a circle below a height above its lowest point [m²]: R²(θ − sin θ cos θ), 0 ≤ h ≤ 2R."""
    theta = 2 * asin(min(1.0, sqrt(height / (2 * radius))))
    if theta < 0.05:  # the difference loses its digits here; the series does not
        x = 2 * theta
        return radius * radius * x**3 / 12 * (1 - x * x / 20 * (1 - x * x / 42 * (1 - x * x / 72)))
    return radius * radius * (theta - sin(theta) * cos(theta))


def find_height(profile: Profile, volume: float, low: float, high: float) -> float:
    """Height at which `profile` holds `volume`, between two heights around it; to the last digits of a float."""
    at_low, at_high = profile.volume(low), profile.volume(high)
    if volume <= at_low:
        return low
    if volume >= at_high:
        return high
    guess = low + (high - low) * (volume - at_low) / (at_high - at_low)
    for _ in range(200):
        miss = profile.volume(guess) - volume
        if miss == 0:
            return guess
        if miss > 0:
            high = guess
        else:
            low = guess
        slope = profile.area(guess)
        step = guess - miss / slope if slope > 0 else low
        better = step if low < step < high else (low + high) / 2
        if abs(better - guess) <= 2e-16 * high:
            return better
        guess = better
    return guess


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
