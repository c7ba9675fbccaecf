"""Readings of one check → the layers in the tank, each with its standard error.

Heights are measured from the tank floor where the pole went in. Metres, cubic metres, shares from 0 to 1.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Agreement = Literal["none", "one", "agree", "third_wanted", "median", "clash"]
ScumWay = Literal["total", "above", "below"]


@dataclass(frozen=True, slots=True)
class Measure:
    """A figure and its standard error (one standard deviation), in the same unit."""

    value: float
    error: float


@dataclass(frozen=True, slots=True)
class Layers:
    """What the readings of one check say. None: cannot be told from them.

    `sludge`, `scum`: thickness. `scum_above`, `scum_below`: what stands above and hangs below the water line.
    `clear_zone`: from the sludge's top to the scum's bottom. `outlet_height`: the outlet device's bottom edge above the
    floor. `sludge_to_outlet`, `scum_to_outlet`: from each layer to that edge, positive while there is room.
    `scum_top_to_outlet_top`: from the crust's top up to the device's top edge. `odd`: ids of what cannot or hardly can be.
    `alternatives`: the same layers with each sludge reading taken alone, where the readings do not settle it.
    """

    agreement: Agreement = "none"
    liquid_depth: Measure | None = None
    sludge: Measure | None = None
    scum: Measure | None = None
    scum_above: Measure | None = None
    scum_below: Measure | None = None
    clear_zone: Measure | None = None
    outlet_height: Measure | None = None
    sludge_to_outlet: Measure | None = None
    scum_to_outlet: Measure | None = None
    scum_top_to_outlet_top: Measure | None = None
    solids_by_depth: Measure | None = None
    solids_by_volume: Measure | None = None
    sludge_m3: Measure | None = None
    scum_m3: Measure | None = None
    outlet_assumed: bool = False
    depth_from_facts: bool = False
    scum_way: ScumWay | None = None
    two_thirds_used: bool = False
    odd: tuple[str, ...] = ()
    alternatives: tuple[Layers, ...] = ()
