"""Where the outlet device hangs: it is fixed to the tank, whatever today's water does."""

from __future__ import annotations

from typing import NamedTuple

from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Tank
from selfcheck.domain.shapes import Vessel

#: Depth of the device's bottom edge below the full water line as a share of the liquid depth: middle, and one standard
#: deviation. Source `wac-246-272c`: 30 to 40 %, a lying drum 25 to 35 %. The whole half-span is taken as the error, and
#: an oval tank as a drum (both our choice).
SHARE_BELOW_SURFACE = (0.35, 0.05)
SHARE_BELOW_SURFACE_LYING = (0.30, 0.05)
#: Standard error of the device's edges where a drawing or an earlier reading gives them. Our choice.
EDGE_ERROR_M = 0.5 * INCH
#: Share of a floating crust that hangs below the water line. Source `common-practice`: a rule of thumb, no measurement.
HANGS_BELOW = 2 / 3


class Below(NamedTuple):
    """How far the bottom edge hangs below the full water line [m], its standard error, and whether it is assumed."""

    metres: float
    error: float
    assumed: bool


def outlet_below_surface(tank: Tank, vessel: Vessel, full_depth_m: float | None = None) -> Below:
    """From the tank's facts, or else assumed from the published share of the liquid depth [m]: source wac-246-272c.

    `full_depth_m` stands in for the vessel's own full liquid depth where a reading tells it better.
    """
    stated = tank.outlet_bottom_below_surface_m
    if stated is not None:
        return Below(stated, EDGE_ERROR_M, False)
    depth = vessel.liquid_depth_m if full_depth_m is None else full_depth_m
    share, spread = SHARE_BELOW_SURFACE_LYING if vessel.kind in ("drum", "oval") else SHARE_BELOW_SURFACE
    return Below(share * depth, spread * depth, True)
