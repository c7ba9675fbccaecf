"""Where is the tank? Depth along the pipe, where to search, and a place recorded by two tapes.

Nobody digs or probes before the utility-locating service has been and marked; nobody probes with metal near power or
gas. Lengths in metres. Positions: corner A at (0, 0), corner B at (apart, 0); y is to the left when walking from A to
B.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from selfcheck.domain.conversions import FOOT, INCH

#: Fall of a building drain [m in m] by pipe size [m], least by code (source: ipc-704-1): 1/4 in a foot up to 2 1/2 in,
#: 1/8 in a foot from 3 to 6 in, 1/16 in a foot from 8 in.
_FALLS = ((2.5 * INCH, 0.25 / 12.0), (6.0 * INCH, 0.125 / 12.0), (math.inf, 0.0625 / 12.0))
#: Usual fall where the pipe's size is not known: 1/4 in a foot.
USUAL_FALL = 0.25 / 12.0
#: Space above the liquid [m] (sources: mn-7080-1920, ipsdc-2012-8): least and usual.
AIR_LEAST, AIR_USUAL = 6.0 * INCH, 8.0 * INCH
AIR_MOST = 12.0 * INCH  #: (our choice)
#: Thickness of the tank's top [m]: 3 to 6 in, usually 4 (our choice).
ROOF_LEAST, ROOF_USUAL, ROOF_MOST = 3.0 * INCH, 4.0 * INCH, 6.0 * INCH
#: Distance from the house [m]: not nearer than `SETBACK` (county setback tables), most often in `LIKELY` (source:
#: ihs-california).
SETBACK = 5.0 * FOOT
LIKELY = (10.0 * FOOT, 15.0 * FOOT)
#: As far out as a search goes before somebody with a camera or a transmitter is called [m] (our choice).
FARTHEST = 50.0 * FOOT
#: Width of the narrowest tanks in use [m], where the tank is not known (our choice).
NARROWEST = 4.0 * FOOT
#: Half of how far the pipe may stray sideways for each metre out (our choice): about 15 degrees either way.
STRAY = 0.27

Side = Literal["left", "right"]


def fall(pipe_m: float | None = None) -> float:
    """Fall of the pipe [m in m]: the least by code for its size [m], or the usual one when the size is not known.

    Source: ipc-704-1; between the sizes it names, the next larger one counts. ValueError for a size that is not above
    0.
    """
    if pipe_m is None:
        return USUAL_FALL
    if pipe_m <= 0:
        raise ValueError("a pipe has a size above 0")
    return next(slope for most, slope in _FALLS if pipe_m <= most + 1e-9)


def pipe_depth(leaves_at_m: float, distance_m: float, slope: float = USUAL_FALL) -> float:
    """Depth of the pipe [m] below level ground at a distance from the house: `z₀ + slope · x`. ValueError below 0."""
    if leaves_at_m < 0 or distance_m < 0 or slope < 0:
        raise ValueError("depth, distance and fall must not be below 0")
    return leaves_at_m + slope * distance_m


@dataclass(frozen=True, slots=True)
class TopDepth:
    """How deep the top of a tank lies under the ground [m]: as shallow as it may be, likely, and as deep as it may
    be.
    """

    least: float
    likely: float
    most: float


def top_depth(inlet_depth_m: float) -> TopDepth:
    """Depth of a tank's top from the depth of its inlet pipe: inlet less the air space and the thickness of the top.

    Air space: sources mn-7080-1920 and ipsdc-2012-8; thickness: our choice. The ground is taken as level. At the
    surface (0) the top may stand out of the ground. ValueError below 0.
    """
    if inlet_depth_m < 0:
        raise ValueError("depth must not be below 0")

    def at(air: float, roof: float) -> float:
        return max(inlet_depth_m - air - roof, 0.0)

    # the inlet enters above the liquid, so that part of the air space lies below it: two inches where it is usual
    most = max(inlet_depth_m - (AIR_LEAST - 2.0 * INCH) - ROOF_LEAST, 0.0)
    return TopDepth(at(AIR_MOST, ROOF_MOST), at(AIR_USUAL, ROOF_USUAL), most)


@dataclass(frozen=True, slots=True)
class Strip:
    """A stretch to search: from `near` to `far` metres out from where the pipe leaves, `half_width` to each side."""

    near: float
    far: float
    half_width: float


@dataclass(frozen=True, slots=True)
class Search:
    """Strips in the order to search them, likeliest first.

    `line_step`: distance between lines walked across the strip; a tank at least this wide cannot lie between two of
    them. `point_step`: spacing of single probes on a square grid; no tank of that width fits between four of them.
    """

    strips: tuple[Strip, ...]
    line_step: float
    point_step: float


def search(tank_width_m: float | None = None, farthest_m: float = FARTHEST) -> Search:
    """Where to look for a tank of this least width [m], outward from where the pipe leaves the house.

    Setback: county setback tables; the likely stretch: source ihs-california; the rest is our choice. The strips meet
    without a gap from the setback to the farthest. A line across every `width` crosses any tank at least that wide;
    single probes must stand `width/√2` apart, since a tank at least that wide holds a circle of that diameter.
    ValueError for a width not above 0 or a farthest point inside the setback.
    """
    width = NARROWEST if tank_width_m is None else tank_width_m
    if width <= 0 or farthest_m <= SETBACK:
        raise ValueError("the width must be above 0 and the farthest point beyond the setback")
    edges = [SETBACK, *(edge for edge in LIKELY if edge < farthest_m)]
    while edges[-1] + 5.0 * FOOT < farthest_m:
        edges.append(edges[-1] + 5.0 * FOOT)
    edges.append(farthest_m)
    middle = sum(LIKELY) / 2.0
    strips = [Strip(near, far, width + STRAY * far) for near, far in pairwise(edges) if far > near]
    strips.sort(key=lambda one: (abs((one.near + one.far) / 2.0 - middle), one.near))
    return Search(tuple(strips), width, width / math.sqrt(2.0))


def step_down(step_m: float, grain_m: float = INCH) -> float:
    """A step rounded down to whole inches (or another grain) [m], so that what is told can still not miss.

    ValueError for a grain not above 0.
    """
    if grain_m <= 0:
        raise ValueError("a grain is above 0")
    return math.floor(step_m / grain_m + 1e-9) * grain_m


@dataclass(frozen=True, slots=True)
class Point:
    """A position [m]."""

    x: float
    y: float

    def to(self, other: Point) -> float:
        """Distance [m]."""
        return math.hypot(self.x - other.x, self.y - other.y)


@dataclass(frozen=True, slots=True)
class Fix:
    """Where two tapes meet: on the left and on the right of the line from A to B, and how sure each is [m].

    `error_m`: one standard deviation of the position along its worst direction, for the tape error given.
    """

    left: Point
    right: Point
    error_m: float

    def on(self, side: Side) -> Point:
        """The one on this side when walking from A to B."""
        return self.left if side == "left" else self.right

    def nearest(self, corner: Point, distance_m: float) -> tuple[Point, float]:
        """The one that fits a third tape from another known corner, and by how much the other fits worse [m].

        Close to 0: the third corner lies on the line through A and B and cannot tell them apart.
        """
        misses = sorted(
            (abs(point.to(corner) - distance_m), i, point) for i, point in enumerate((self.left, self.right))
        )
        return misses[0][2], misses[1][0] - misses[0][0]


def fix(apart_m: float, from_a_m: float, from_b_m: float, tape_error_m: float = 0.05) -> Fix | None:
    """Position from two distances to corners `apart_m` apart; None when the tapes do not meet.

    `x = (a² − b² + d²) / 2d`, `y = ±√(a² − x²)`. Tapes that fail to meet by no more than three times their error are
    taken to meet on the line. ValueError for corners that are not apart or a distance below 0.
    """
    if apart_m <= 0 or from_a_m < 0 or from_b_m < 0 or tape_error_m < 0:
        raise ValueError("corners must be apart and distances not below 0")
    gap = max(apart_m - from_a_m - from_b_m, abs(from_a_m - from_b_m) - apart_m)
    if gap > 3.0 * tape_error_m:
        return None
    x = (from_a_m**2 - from_b_m**2 + apart_m**2) / (2.0 * apart_m)
    y = math.sqrt(max(from_a_m**2 - x**2, 0.0))
    return Fix(Point(x, y), Point(x, -y), _error(apart_m, from_a_m, from_b_m, y, tape_error_m))


def _error(apart: float, a: float, b: float, y: float, tape: float) -> float:
    """First order: the tapes cross at an angle γ with `sin γ = d·y / (a·b)`; the flatter they cross, the worse.

    The covariance of the position is tape² (GᵀG)⁻¹ with the two unit vectors as rows of G; its largest root is
    tape² / (1 − |cos γ|). Never told as worse than the distance that a tape's error makes on the line itself.
    """
    if a * b == 0.0:
        return tape
    cosine = abs(a * a + b * b - apart * apart) / (2.0 * a * b)
    worst = math.sqrt(2.0 * tape * max(a, b)) + tape
    return min(tape / math.sqrt(1.0 - cosine), worst) if y > 0.0 and cosine < 1.0 else worst
