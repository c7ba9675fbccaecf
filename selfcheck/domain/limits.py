"""Pump-out limits as data, and how a tank stands against them.

Every limit is a margin: what is left before it is crossed, in metres, as a share, or in years. Below zero it is over.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from math import erf, hypot, inf, isfinite, sqrt
from typing import Literal, NamedTuple

from selfcheck.domain.conversions import INCH, MILLIMETRE
from selfcheck.domain.distance_table import DistanceTable
from selfcheck.domain.household import Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.outlet import HANGS_BELOW, outlet_below_surface
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.strict import STRICT, Seen
from selfcheck.domain.uncertain import Measure

Kind = Literal[
    "sludge_to_outlet",  # sludge top to the outlet device's bottom edge, at least
    "scum_to_outlet",  # scum bottom to the outlet device's bottom edge, at least
    "scum_top_to_outlet_top",  # scum top to the outlet device's top edge, at least
    "solids_by_depth",  # sludge and scum as a share of the liquid depth, less than
    "solids_by_volume",  # sludge and scum as a share of the liquid volume, less than
    "sludge",  # sludge thickness, less than
    "scum",  # scum thickness, less than
    "sludge_to_outlet_by_table",  # sludge top to the outlet's bottom edge, at least, by capacity and depth
    "years",  # years since the last pump-out, less than
]
Call = Literal["over", "close", "under", "cannot_tell"]

SHARES = ("solids_by_depth", "solids_by_volume")
LENGTHS = ("sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top", "sludge", "scum")
#: From this chance on a limit counts as crossed; from the next on it is too close to call, and treated as crossed.
OVER_FROM = 0.50
CLOSE_FROM = 0.10


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit, in the unit its text prints: `inches`, `millimetres`, a `share` from 0 to 1, `years`, or a `table`.

    `value` is the same in SI (metres, share, years); it is worked out and does not stand in a file. Exactly one of them
    is given, of a sort that fits the kind: ValueError otherwise.
    """

    kind: Kind
    value: float | None = None
    inches: float | None = None
    millimetres: float | None = None
    share: float | None = None
    years: float | None = None
    table: DistanceTable | None = None

    __pydantic_config__ = STRICT

    def __post_init__(self) -> None:
        given = {
            "value": self.value,
            "inches": self.inches,
            "millimetres": self.millimetres,
            "share": self.share,
            "years": self.years,
            "table": self.table,
        }
        named = [name for name, amount in given.items() if amount is not None]
        fitting = _units_of(self.kind)
        if len(named) != 1 or named[0] not in (*fitting, "value"):
            raise ValueError(f"a limit of kind {self.kind} needs just one of: {', '.join(fitting)}")
        value = self.value
        if self.inches is not None:
            value = self.inches * INCH
        elif self.millimetres is not None:
            value = self.millimetres * MILLIMETRE
        elif self.share is not None:
            value = self.share
        elif self.years is not None:
            value = self.years
        if value is not None and (not 0 < value < 100 or (self.kind in SHARES and value > 1)):
            raise ValueError(f"{value} is out of range for a limit of kind {self.kind}")
        object.__setattr__(self, "value", value)


def _units_of(kind: Kind) -> tuple[str, ...]:
    if kind in SHARES:
        return ("share",)
    if kind in LENGTHS:
        return ("inches", "millimetres")
    return ("table",) if kind == "sludge_to_outlet_by_table" else ("years",)


@dataclass(frozen=True, slots=True)
class RuleSet:
    """The limits of one authority: one file of `content/rules`.

    `edition`, `place_in_text`, `href`: empty where they are not known. `confirmed`: the day the figures were last
    compared with their text; absent where they are only from memory. `inspect_years`, `pump_years`: least and most
    years between looks and between pump-outs, where the text names them. `places`: other names of the place where it
    holds, as people write them.
    """

    id: str
    title: str
    publisher: str
    seen: Seen
    limits: tuple[Limit, ...]
    jurisdiction: str = ""
    edition: str = ""
    place_in_text: str = ""
    href: str = ""
    confirmed: date | None = None
    note: str = ""
    inspect_years: tuple[float, float] | None = None
    pump_years: tuple[float, float] | None = None
    places: tuple[str, ...] = ()

    __pydantic_config__ = STRICT


class Standing(NamedTuple):
    """How a tank stands against one limit.

    `now`: the figure the limit speaks of. `margin`: what is left, below zero when over; `error` its standard error;
    both in metres, as a share, or in years. `chance_over`: probability that the limit is crossed. None: cannot be told.
    """

    limit: Limit
    now: Measure | None
    margin: float | None
    error: float | None
    chance_over: float | None
    call: Call

    @property
    def least(self) -> float | None:
        """What the limit asks for or allows in this tank, by a table as well; None where a table cannot tell."""
        if self.limit.value is not None:
            return self.limit.value
        return self.now.value - self.margin if self.now is not None and self.margin is not None else None


def stand(
    rule_set: RuleSet, layers: Layers, vessel: Vessel, years_since_pump_out: float | None = None
) -> tuple[Standing, ...]:
    """Where today's layers stand against each limit of a set, in its order.

    With margin m and standard error u the chance of being over is Φ(−m/u): over from 50 %, close from 10 %. Where only
    one layer was read and it alone reaches a share of solids, that settles it; otherwise it cannot be told.
    """
    return tuple(standing_of(limit, layers, vessel, years_since_pump_out) for limit in rule_set.limits)


def chance_over(margin: float, error: float) -> float:
    """Φ(−m/u), the chance that a margin with a normal error is truly below zero; at m = 0 one half.

    Margin and error in the same unit, whichever it is. An error of 0 or below is none: the margin alone decides.
    """
    if error <= 0:
        return 0.5 if margin == 0 else float(margin < 0)
    return 0.5 * (1 - erf(margin / (error * sqrt(2))))


def call_of(chance: float) -> Call:
    """over, close or under, for a chance of being over from 0 to 1; from which chance on is our choice."""
    return "over" if chance >= OVER_FROM else "close" if chance >= CLOSE_FROM else "under"


def standing_of(limit: Limit, layers: Layers, vessel: Vessel, years: float | None = None) -> Standing:
    """Where today's layers stand against one limit: see `stand`."""
    now = _figure(limit, layers, years)
    least, least_error = limit.value, 0.0
    if limit.table is not None:
        least, least_error = limit.table.least_with_error(vessel)
    part = _least_figure(limit, layers) if now is None else None
    if part is not None and least is not None and chance_over(least - part.value, part.error) >= CLOSE_FROM:
        now = part
    if now is None or least is None:
        return Standing(limit, now, None, None, None, "cannot_tell")
    margin = now.value - least if limit.kind in _AT_LEAST else least - now.value
    error = hypot(now.error, least_error)
    if not (isfinite(margin) and isfinite(error)):
        return Standing(limit, now, None, None, None, "cannot_tell")
    chance = chance_over(margin, error)
    return Standing(limit, now, margin, error, chance, call_of(chance))


_AT_LEAST = ("sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top", "sludge_to_outlet_by_table")


def _figure(limit: Limit, layers: Layers, years: float | None) -> Measure | None:
    if limit.kind == "years":
        return None if years is None else Measure(years, 0.0)
    if limit.kind == "sludge_to_outlet_by_table":
        return layers.sludge_to_outlet
    figure: Measure | None = getattr(layers, limit.kind)
    return figure


def _least_figure(limit: Limit, layers: Layers) -> Measure | None:
    """The share that the layers which were read reach already, where the other was not read."""
    if limit.kind == "solids_by_depth":
        return layers.least_by_depth
    return layers.least_by_volume if limit.kind == "solids_by_volume" else None


def margin(limit: Limit, tank: Tank, vessel: Vessel, sludge_m: float, scum_m: float) -> float:
    """What is left before a limit is crossed, for layers of these thicknesses in a tank full to its outlet.

    Metres for distances and thicknesses, a share for shares of solids; below zero is over. The scum is taken to hang
    two thirds below the water line (source `common-practice`). Infinite where thicknesses alone cannot tell: years, a
    table that does not reach this tank, an outlet top that is not on record. For many calls bind `margin_of` once.
    """
    return margin_of(limit, tank, vessel)(sludge_m, scum_m)


def margin_of(limit: Limit, tank: Tank, vessel: Vessel) -> Callable[[float, float], float]:
    """`margin` for one limit and tank, as a function of sludge and scum thickness [m]."""
    depth, full = vessel.liquid_depth_m, vessel.full_m3
    outlet = depth - outlet_below_surface(tank, vessel).metres
    value = limit.value or 0.0
    volume_below = vessel.profile.volume
    match limit.kind:
        case "sludge_to_outlet":
            return lambda sludge, scum: outlet - sludge - value
        case "scum_to_outlet":
            return lambda sludge, scum: depth - HANGS_BELOW * scum - outlet - value
        case "scum_top_to_outlet_top" if tank.outlet_top_above_surface_m is not None:
            top = tank.outlet_top_above_surface_m
            return lambda sludge, scum: top - (1 - HANGS_BELOW) * scum - value
        case "solids_by_depth":
            return lambda sludge, scum: value - (sludge + scum) / depth
        case "solids_by_volume":
            surface = vessel.surface_area(depth) * (1 - HANGS_BELOW)
            return lambda sludge, scum: (
                value
                - ((volume_below(sludge) + full - volume_below(depth - HANGS_BELOW * scum) + surface * scum) / full)
            )
        case "sludge":
            return lambda sludge, scum: value - sludge
        case "scum":
            return lambda sludge, scum: value - scum
        case "sludge_to_outlet_by_table" if limit.table is not None:
            least = limit.table.least(vessel.full_m3, vessel.liquid_depth_m)
            if least is not None:
                return lambda sludge, scum: outlet - sludge - least
    return lambda sludge, scum: inf
