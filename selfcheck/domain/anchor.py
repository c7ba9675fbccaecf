"""The day of the last whole readings, from which everything ahead is reckoned.

On that day the readings say how likely a limit is crossed; from then on the rates say how likely it is crossed since.
So the forecast's own chance `F` is bent to pass through the readings' chance `c` on that day, where it had `p`:

    before that day  F·c/p,          after it  1 − (1 − c)·(1 − F)/(1 − p)
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import NamedTuple

from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import Limit, standing_of
from selfcheck.domain.shapes import Vessel

#: A share of the forecast beyond which its grid tells no more: a date asked for beyond it is given too early.
_MOST = 0.995


class Anchor(NamedTuple):
    """The layers that were read, in each compartment that was, and the day."""

    on: date
    layers: tuple[Layers, ...]

    def bend(self, limits: Sequence[Limit], vessel: Vessel, chance: Callable[[date], float]) -> Bend | None:
        """How to bend the `chance` of the first of these limits being crossed; None when the readings cannot tell."""
        own = [limit for limit in limits if limit.kind != "years"]
        told = [standing_of(limit, layers, vessel).chance_over for layers in self.layers for limit in own]
        known = [one for one in told if one is not None]
        return Bend(self.on, max(known), min(max(chance(self.on), 0.0), 1.0)) if known else None


class Bend(NamedTuple):
    """`read`: chance by the readings on the day `on`; `own`: the forecast's own chance for that day."""

    on: date
    read: float
    own: float

    def chance(self, own: float, day: date) -> float:
        """The bent chance of a day for which the forecast itself says `own`."""
        if day <= self.on:
            return min(own * self.read / self.own, self.read) if self.own > 0.0 else self.read * (day == self.on)
        left = (1.0 - own) / (1.0 - self.own) if self.own < 1.0 else 0.0
        return 1.0 - (1.0 - self.read) * min(left, 1.0)

    def share(self, wanted: float) -> float:
        """What the forecast itself must say for the bent chance to be `wanted`."""
        if wanted <= self.read:
            return wanted * self.own / self.read
        return min(1.0 - (1.0 - wanted) * (1.0 - self.own) / (1.0 - self.read), _MOST)
