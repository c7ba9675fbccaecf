"""The revised NIOSH lifting equation: how much one person may lift with two hands, standing.

Source: niosh-94-110, read in a reprint; its table of lifts a minute is from memory.

`RWL = LC · HM · VM · DM · AM · FM · CM`. Not valid for pulling, pushing, sliding, levering, one hand, kneeling,
slippery ground, or a lift of more than about 30 inches a second. A multiplier of 0 means: not to be lifted that way at
all.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from typing import Literal

Coupling = Literal["good", "fair", "poor"]
System = Literal["us", "metric"]
Hours = Literal[1, 2, 8]


@dataclass(frozen=True, slots=True)
class _Constants:
    load: float
    horizontal: float
    horizontal_most: float
    knuckles: float
    vertical: float
    vertical_most: float
    travel: float
    travel_least: float


_CONSTANTS: dict[System, _Constants] = {
    "us": _Constants(51.0, 10.0, 25.0, 30.0, 0.0075, 70.0, 1.8, 10.0),  # pounds and inches
    "metric": _Constants(23.0, 25.0, 63.0, 75.0, 0.003, 175.0, 4.5, 25.0),  # kilograms and centimetres
}
_COUPLING: dict[Coupling, tuple[float, float]] = {"good": (1.0, 1.0), "fair": (0.95, 1.0), "poor": (0.90, 0.90)}
_ASYMMETRY_MOST = 135.0

#: Lifts a minute, then the multiplier for up to 1, 2 and 8 hours, each for hands below and from 30 inches up. All from
#: memory; the row of 10 a minute, 8 hours, hands high, agrees with ccohs-lifting.
_FREQUENCY: tuple[tuple[float, tuple[float, float], tuple[float, float], tuple[float, float]], ...] = (
    (0.2, (1.00, 1.00), (0.95, 0.95), (0.85, 0.85)),
    (0.5, (0.97, 0.97), (0.92, 0.92), (0.81, 0.81)),
    (1, (0.94, 0.94), (0.88, 0.88), (0.75, 0.75)),
    (2, (0.91, 0.91), (0.84, 0.84), (0.65, 0.65)),
    (3, (0.88, 0.88), (0.79, 0.79), (0.55, 0.55)),
    (4, (0.84, 0.84), (0.72, 0.72), (0.45, 0.45)),
    (5, (0.80, 0.80), (0.60, 0.60), (0.35, 0.35)),
    (6, (0.75, 0.75), (0.50, 0.50), (0.27, 0.27)),
    (7, (0.70, 0.70), (0.42, 0.42), (0.22, 0.22)),
    (8, (0.60, 0.60), (0.35, 0.35), (0.18, 0.18)),
    (9, (0.52, 0.52), (0.30, 0.30), (0.00, 0.15)),
    (10, (0.45, 0.45), (0.26, 0.26), (0.00, 0.13)),
    (11, (0.41, 0.41), (0.00, 0.23), (0.00, 0.00)),
    (12, (0.37, 0.37), (0.00, 0.21), (0.00, 0.00)),
    (13, (0.00, 0.34), (0.00, 0.00), (0.00, 0.00)),
    (14, (0.00, 0.31), (0.00, 0.00), (0.00, 0.00)),
    (15, (0.00, 0.28), (0.00, 0.00), (0.00, 0.00)),
)
_RATES = [row[0] for row in _FREQUENCY]


@dataclass(frozen=True, slots=True)
class Lift:
    """The seven factors of one lift; `load` in pounds or kilograms, the rest without a unit, from 0 to 1.

    Source: niosh-94-110, read in a reprint.
    """

    load: float
    horizontal: float
    vertical: float
    distance: float
    asymmetry: float
    frequency: float
    coupling: float

    @property
    def recommended(self) -> float:
        """Recommended weight limit, in the unit of `load`."""
        return (
            self.load
            * self.horizontal
            * self.vertical
            * self.distance
            * self.asymmetry
            * self.frequency
            * self.coupling
        )

    def index(self, weight: float) -> float:
        """Lifting index: a weight over the recommended one. Above 1 some people are at risk. Infinite where that is
        0.
        """
        limit = self.recommended
        return weight / limit if limit > 0 else float("inf")


def lift(
    horizontal: float,
    vertical: float,
    distance: float,
    *,
    asymmetry: float = 0.0,
    per_minute: float = 0.2,
    hours: Hours = 1,
    coupling: Coupling = "good",
    system: System = "metric",
) -> Lift:
    """The factors of one lift, by niosh-94-110, read in a reprint; those of lifts a minute are from memory.

    Lengths in centimetres and the load in kilograms, or inches and pounds with `system="us"`. `horizontal`: from
    midway between the ankles to the hands. `vertical`: hands above the floor. `distance`: how far up or down.
    `asymmetry`: degrees turned away from straight ahead. Between two rows of the frequency table the stricter one
    counts. Beyond 63 cm out, 175 cm up or of travel, 135 degrees or 15 lifts a minute a factor is 0. ValueError below
    0.
    """
    if min(horizontal, vertical, distance, asymmetry, per_minute) < 0:
        raise ValueError("no measure of a lift can be below 0")
    c = _CONSTANTS[system]
    low_or_high = int(vertical >= c.knuckles)
    row = bisect_left(_RATES, per_minute)
    column = {1: 1, 2: 2, 8: 3}[hours]
    frequency = 0.0 if row == len(_FREQUENCY) else (_FREQUENCY[row][1:])[column - 1][low_or_high]
    return Lift(
        load=c.load,
        horizontal=0.0 if horizontal > c.horizontal_most else c.horizontal / max(horizontal, c.horizontal),
        vertical=0.0 if vertical > c.vertical_most else 1.0 - c.vertical * abs(vertical - c.knuckles),
        distance=0.0 if distance > c.vertical_most else min(0.82 + c.travel / max(distance, c.travel_least), 1.0),
        asymmetry=0.0 if asymmetry > _ASYMMETRY_MOST else 1.0 - 0.0032 * asymmetry,
        frequency=frequency,
        coupling=_COUPLING[coupling][low_or_high],
    )
