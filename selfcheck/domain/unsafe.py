"""Layers that no tank can go on with, whatever limits it is judged by.

Every published limit asks for at least some distance between the layers and the outlet. That it is a call where there
is none left, or where none can be told apart from it, is our choice.
"""

from __future__ import annotations

from selfcheck.domain.check import Readings
from selfcheck.domain.findings import Finding
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import CLOSE_FROM, chance_over

SCUM = ("scum_total", "scum_above", "scum_below")
#: finding → the room that is gone, and the readings it rests on
ROOMS = {
    "sludge_reaches_outlet": ("sludge_to_outlet", ("sludge",)),
    "scum_reaches_outlet": ("scum_to_outlet", (*SCUM, "liquid_depth", "outlet_bottom_below_surface")),
    "clear_zone_gone": ("clear_zone", ("sludge", *SCUM, "liquid_depth")),
}


def unsafe(found: Layers, readings: Readings) -> list[Finding]:
    """A finding for each room that is gone: sludge at the outlet's edge or above, scum at it or below, no clear water.

    Gone is what is below zero with a chance of 10 % or more, as with any limit that is too close to call.
    """
    findings = []
    for ident, (room, kinds) in ROOMS.items():
        left = getattr(found, room)
        if left is None:
            continue
        chance = chance_over(left.value, left.error)
        if chance >= CLOSE_FROM:
            uses = tuple(f"seen.readings.{kind}" for kind in kinds if getattr(readings, kind))
            findings.append(Finding(ident, "call_soon", facts={"room_m": left.value}, uses=uses, chance_over=chance))
    return findings
