"""The tank in section, described once.

Heights are metres above the floor of the tank. The crust floats: about a third of it stands above the water line where
nobody measured it otherwise (common practice: two thirds hang below).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import TYPE_CHECKING, Literal

from selfcheck.drawing.section_form import Outline, half_widths, inner_walls, outline

if TYPE_CHECKING:
    from selfcheck.domain.household import Tank
    from selfcheck.domain.layers import Layers
    from selfcheck.domain.limits import Standing
    from selfcheck.domain.shapes import Vessel
    from selfcheck.domain.uncertain import Measure

Units = Literal["us", "metric"]
SHARE_ABOVE_WATER = 1 / 3  # common practice
AIR_SHARE = 0.2  # our choice: free space drawn above the water line where the inside height is not known


@dataclass(frozen=True, slots=True)
class SectionWords:
    """Every word the picture uses, so that another language can bring its own."""

    lid: str = "lid"
    air: str = "air"
    crust: str = "crust"
    clear: str = "clear"
    sludge: str = "sludge"
    nothing: str = "none"
    unknown: str = "?"
    of: str = "of"
    outlet_edge: str = "outlet edge"
    assumed: str = "a guess"
    crust_limit: str = "crust limit"
    sludge_limit: str = "sludge limit"
    last: str = "last time"
    not_known: str = "not known yet"
    about: str = "give or take"
    below: str = "above the floor"
    title: str = "The tank in section"
    house_side: str = "house side"
    field_side: str = "field side"
    end_view: str = "seen from the end"
    second: str = "second part"
    read_on: str = "read on"


@dataclass(frozen=True, slots=True)
class Band:
    """One layer: lower and upper edge [m above the floor] and the standard error of its thickness [m]."""

    bottom: float
    top: float
    error: float = 0.0

    @property
    def thickness(self) -> float:
        """Thickness [m], never negative."""
        return max(0.0, self.top - self.bottom)


@dataclass(frozen=True, slots=True)
class LimitLine:
    """A limit that can be drawn as a height: its name, where it lies [m], whether the layer has passed it."""

    name: str
    height: float
    passed: bool = False


@dataclass(frozen=True, slots=True)
class Chamber:
    """The layers of a compartment behind the first one; None is not known."""

    scum: Band | None = None
    sludge: Band | None = None


@dataclass(frozen=True, slots=True)
class SectionPicture:
    """What is drawn. A layer that is None is not known and shown as a question mark.

    `half_widths`: half the inside width at equally spaced heights from floor to roof, as shares of the widest.
    `outlet`: lower edge of the outlet tee. `last_scum`, `last_sludge`: thickness at the check before. `outline`: the
    inside seen from the side and from the end; empty where only proportions are drawn. `walls`: where walls between
    compartments stand, as shares of the length; `second`: what is known of the second compartment.
    """

    inside_height: float
    liquid_depth: float
    half_widths: tuple[float, ...] = (1.0, 1.0)
    scum: Band | None = None
    sludge: Band | None = None
    outlet: float | None = None
    outlet_assumed: bool = False
    limits: tuple[LimitLine, ...] = ()
    last_scum: float | None = None
    last_sludge: float | None = None
    words: SectionWords = field(default_factory=SectionWords)
    outline: Outline = ()
    walls: tuple[float, ...] = ()
    second: Chamber | None = None
    depth_assumed: bool = False  # the water line is a guess
    read_on: date | None = None  # day of the readings, where a later check read none

    @property
    def clear(self) -> Band | None:
        """The clear zone between the layers; None when either is not known."""
        if self.scum is None or self.sludge is None:
            return None
        error = (self.scum.error**2 + self.sludge.error**2) ** 0.5
        return Band(self.sludge.top, max(self.sludge.top, self.scum.bottom), error)


def describe(
    vessel: Vessel,
    layers: Layers | None,
    standings: Sequence[Standing] = (),
    last_layers: Layers | None = None,
    words: SectionWords | None = None,
    *,
    tank: Tank | None = None,
    second_layers: Layers | None = None,
    read_on: date | None = None,
) -> SectionPicture:
    """The picture of `layers` in `vessel`, with the limits of `standings` that are a height in the tank.

    `tank` tells of compartments; `second_layers` what was read in the second one; `read_on`: the day to tell with the
    readings. Where the outlet is not known nothing is drawn for it; an assumed one says so. All lengths in metres.
    """
    words = words or SectionWords()
    measured = _value(layers.liquid_depth) if layers is not None else None
    depth = measured or vessel.liquid_depth_m
    inside = depth * (1 + AIR_SHARE) if vessel.top_m is None else max(vessel.top_m, depth)
    scum = _floating(layers, depth) if layers is not None else None
    sludge = _settled(layers) if layers is not None else None
    walls = inner_walls(tank)
    second = None
    if second_layers is not None:
        second = Chamber(_floating(second_layers, depth), _settled(second_layers))
    outlet = _value(layers.outlet_height) if layers is not None else None
    picture = SectionPicture(
        inside_height=inside,
        liquid_depth=depth,
        half_widths=half_widths(vessel, vessel.top_m or inside),
        scum=scum,
        sludge=sludge,
        outlet=outlet,
        depth_assumed=measured is None and "depth_assumed" in vessel.flags,
        outlet_assumed=bool(layers is not None and layers.outlet_assumed),
        last_scum=_value(last_layers.scum) if last_layers is not None else None,
        last_sludge=_value(last_layers.sludge) if last_layers is not None else None,
        words=words,
        outline=outline(vessel, vessel.top_m or inside),
        walls=walls,
        second=second or (Chamber() if walls else None),
        read_on=read_on,
    )
    return replace(picture, limits=_limit_lines(picture, standings))


def describe_limits(
    vessel: Vessel, now: Layers | None, standings: Sequence[Standing], words: Mapping[str, str]
) -> tuple[LimitLine, ...]:
    """The limits that are a height in the tank, named by `crust_limit` and `sludge_limit` of `words`."""
    named = SectionWords(crust_limit=words["crust_limit"], sludge_limit=words["sludge_limit"])
    return describe(vessel, now, standings, words=named).limits


def between(before: SectionPicture, after: SectionPicture, share: float) -> SectionPicture:
    """The picture part of the way from one to the other, for a layer that settles into place. `share` from 0 to 1."""
    return replace(
        after,
        scum=_band_between(before.scum, after.scum, share),
        sludge=_band_between(before.sludge, after.sludge, share),
    )


def _value(measure: Measure | None) -> float | None:
    return None if measure is None else float(measure.value)


def _floating(layers: Layers, depth: float) -> Band | None:
    if layers.scum is None:
        return None
    thickness = max(0.0, layers.scum.value)
    above = _value(layers.scum_above)
    if above is None or not 0.0 <= above <= thickness:
        above = thickness * SHARE_ABOVE_WATER
    return Band(depth - (thickness - above), depth + above, layers.scum.error)


def _settled(layers: Layers) -> Band | None:
    if layers.sludge is None:
        return None
    return Band(0.0, max(0.0, layers.sludge.value), layers.sludge.error)


def _limit_lines(picture: SectionPicture, standings: Sequence[Standing]) -> tuple[LimitLine, ...]:
    """The tightest limit on the sludge and the tightest on the crust, as heights."""
    sludge: list[tuple[float, bool]] = []
    crust: list[tuple[float, bool]] = []
    for standing in standings:
        kind, value, passed = standing.limit.kind, standing.limit.value, standing.call == "over"
        if value is None:
            continue
        if kind == "sludge":
            sludge.append((value, passed))
        elif kind == "sludge_to_outlet" and picture.outlet is not None:
            sludge.append((picture.outlet - value, passed))
        elif kind == "scum_to_outlet" and picture.outlet is not None:
            crust.append((picture.outlet + value, passed))
        elif kind == "scum":
            crust.append((picture.liquid_depth - value * (1 - SHARE_ABOVE_WATER), passed))
        elif kind == "solids_by_depth" and picture.scum is not None:
            sludge.append((value * picture.liquid_depth - picture.scum.thickness, passed))
    lines = []
    if crust:
        height, passed = max(crust)
        lines.append(LimitLine(picture.words.crust_limit, height, passed))
    if sludge:
        height, passed = min(sludge)
        lines.append(LimitLine(picture.words.sludge_limit, max(0.0, height), passed))
    return tuple(lines)


def _band_between(before: Band | None, after: Band | None, share: float) -> Band | None:
    if after is None:
        return None
    if before is None:
        middle = after.bottom if after.bottom <= 0 else after.top
        before = Band(middle, middle)
    return Band(
        before.bottom + (after.bottom - before.bottom) * share,
        before.top + (after.top - before.top) * share,
        after.error,
    )
