"""Inside forms of tanks: volume below a height, the surface there, and the height of a volume.

Every form is filled from its floor (height 0). Below the floor there is nothing; a closed form holds no more than its
whole volume, however high the question. Lengths in metres, areas in square metres, volumes in cubic metres.
"""

from __future__ import annotations

from math import asin, cos, pi, sin, sqrt
from typing import NamedTuple, Protocol

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


class Straight(NamedTuple):
    """Upright walls on a floor of any form: a box, an upright round tank, or a floor area alone.

    `floor_area` [m²], above 0; `half`: half of the width [m]. Heights [m] have no upper end. The plain prism formula.
    """

    floor_area: float
    half: float

    @property
    def top(self) -> float | None:
        """None: upright walls have no height of their own here."""
        return None

    def volume(self, height: float) -> float:
        """Volume below a height [m³]: V = A·h; 0 below the floor."""
        return self.floor_area * height if height > 0 else 0.0

    def area(self, height: float) -> float:
        """The floor area [m²], at every height."""
        return self.floor_area

    def half_width(self, height: float) -> float:
        """Half of the width [m], the same at every height."""
        return self.half

    def height(self, volume: float) -> float:
        """Height [m] of a volume [m³]: h = V/A; 0 for none."""
        return volume / self.floor_area if volume > 0 else 0.0


class Lying(NamedTuple):
    """A lying tank with a round or elliptical section and flat or bulging ends.

    `rise`: half of the inside height [m]. `stretch`: width over height of the section, 1 for a round one. `length`: the
    straight part [m]. `bulge`: how far each end stands out [m]; 0 flat, rise/2 for ellipsoidal 2:1, rise for a
    hemisphere. With half-angle θ where h = R(1 − cos θ), the straight part holds L·stretch·R²(θ − sin θ cos θ) and both
    ends together (bulge/R)·stretch·πh²(3R − h)/3, by the circle's segment and the sphere's cap. `rise` and `stretch`
    above 0; a height below 0 or over 2·`rise` counts as floor or top.
    """

    rise: float
    length: float
    stretch: float = 1.0
    bulge: float = 0.0

    @property
    def top(self) -> float | None:
        """Inside height of the section [m]."""
        return 2 * self.rise

    def volume(self, height: float) -> float:
        """Straight part and both ends, below a height [m³]."""
        radius = self.rise
        h = min(max(height, 0.0), 2 * radius)
        ends = self.bulge / radius * pi * h * h * (3 * radius - h) / 3
        return self.stretch * (self.length * segment_area(radius, h) + ends)

    def area(self, height: float) -> float:
        """Rectangle of the straight part and an ellipse cut from the two ends [m²]; 0 at floor and top."""
        half = self.half_width(height)
        return 2 * self.length * half + pi * half * half / self.stretch * self.bulge / self.rise

    def half_width(self, height: float) -> float:
        """Half of the chord of the section [m]; 0 at floor and top."""
        h = min(max(height, 0.0), 2 * self.rise)
        return self.stretch * sqrt(h * (2 * self.rise - h))

    def height(self, volume: float) -> float:
        """Height [m] of a volume [m³]: found by Newton's method, kept between floor and top."""
        return find_height(self, volume, 0.0, 2 * self.rise)


class Part(NamedTuple):
    """One compartment: a share, above 0 and up to 1, of a whole form, cut by an upright wall across its length.

    Units as in `Profile`.
    """

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
