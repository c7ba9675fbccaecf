"""The inside form of a tank as it is drawn: how far its walls reach at each height, along it and across it."""

from __future__ import annotations

from math import cos, pi
from typing import TYPE_CHECKING

from selfcheck.domain.geometry import Lying, Part, Profile

if TYPE_CHECKING:
    from selfcheck.domain.household import Tank
    from selfcheck.domain.shapes import Vessel

Outline = tuple[tuple[float, float, float], ...]  # (height, half of the length, half of the width) [m], floor to roof
SAMPLES = 33


def half_widths(vessel: Vessel, top: float) -> tuple[float, ...]:
    """Half the inside width at equally spaced heights from floor to `top`, as shares of the widest."""
    widths = [max(0.0, vessel.half_width(top * step / (SAMPLES - 1))) for step in range(SAMPLES)]
    widest = max(widths)
    return tuple(width / widest for width in widths) if widest > 0 else (1.0, 1.0)


def outline(vessel: Vessel, top: float) -> Outline:
    """The inside from floor to `top`: closer together near floor and roof, where a round form turns fastest."""
    if vessel.top_m is None:
        heights = [0.0, top]
    else:
        heights = [top * (1 - cos(pi * step / (2 * SAMPLES))) / 2 for step in range(2 * SAMPLES + 1)]
    return tuple((height, half_length(vessel, height), max(0.0, vessel.half_width(height))) for height in heights)


def half_length(vessel: Vessel, height: float) -> float:
    """Half of the inside length of a tank at a height [m], seen from its side; bulging ends included."""
    profile: Profile = vessel.profile
    while isinstance(profile, Part):
        profile = profile.whole
    half = max(0.0, profile.half_width(height))
    if isinstance(profile, Lying):
        return profile.length / 2 + profile.bulge * half / (profile.stretch * profile.rise)
    if vessel.kind == "upright" or half <= 0:
        return half
    return profile.area(height) / half / 4


def inner_walls(tank: Tank | None) -> tuple[float, ...]:
    """Where the walls between compartments stand, as shares of the length from the house side on.

    A compartment's share of the volume stands for its share of the length, which bulging ends make a little too short.
    """
    from selfcheck.domain.shapes import FIRST_SHARE

    count = (tank.compartments if tank is not None else None) or 1
    if tank is None or count == 1:
        return ()
    first = tank.first_compartment_share or FIRST_SHARE
    return tuple(first + (1 - first) * step / (count - 1) for step in range(count - 1))
