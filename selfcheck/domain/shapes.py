"""A tank's facts → a vessel: volume below a height, height of a volume, surface there, and how much is assumed."""

from __future__ import annotations

from math import pi, sqrt
from typing import Literal, NamedTuple, TypeGuard

from selfcheck.domain.charts import Chart
from selfcheck.domain.conversions import GALLON, INCH
from selfcheck.domain.geometry import PICTURED_LENGTH_TO_WIDTH, Lying, Part, Profile, Straight, segment_area
from selfcheck.domain.household import Box, Drum, Oval, Shape, Table, Tank, Upright
from selfcheck.domain.sizing import volume_by_bedrooms

Basis = Literal["shape", "volume", "bedrooms", "default"]

# What is assumed where nothing is known. All of these are our choice, none is published.
DEPTH_ASSUMED_M = 48 * INCH  # the four feet of the middle of the published depth tables
DEPTH_ASSUMED_ERROR_M = 6 * INCH
LYING_DEPTH_SHARE = 0.80  # of the inside height; leaves about 14 % of a lying drum as air space
CHART_DEPTH_SHARE = 0.85
DEFAULT_VOLUME_M3 = 1000 * GALLON
ERROR_DEFAULT = 0.35
# One standard deviation of the volume as a share. Our choice.
ERROR_SHAPE = 0.03  # inside lengths taped to about an inch
ERROR_VOLUME = 0.05  # a rated volume against what the tank truly holds
ERROR_DEPTH_ASSUMED = 0.125  # six inches in forty-eight
DEPTH_FACT_ERROR_M = 0.5 * INCH  # full liquid depth from a drawing or an earlier reading; tank floors are no flatter
# A size under these is no size of a tank; it is flagged and taken as not known. Our choice.
LEAST_LENGTH_M = 0.01
LEAST_VOLUME_M3 = 0.001
#: A stated volume further than this from the volume of the stated form is flagged. Our choice.
VOLUME_DISAGREES = 0.15

#: Share of the volume in the first of two compartments: the upper published figure of `wac-246-272c` (one half to two
#: thirds) and the one of `ipsdc-2012-8`.
FIRST_SHARE = 2 / 3


class Vessel(NamedTuple):
    """The inside of a tank or compartment.

    `liquid_depth_m`: floor to water line when it stands full at its outlet; `depth_error_m` its standard error.
    `full_m3`: volume below that. `relative_error`: one standard deviation of the volume as a share of it. `basis`: what
    the volume rests on. `kind`: the form reckoned with. `top_m`: inside height, None where it is not known.
    `table`: source id of the sizing table, when the basis is `bedrooms`. `flags`: what was assumed or does not agree:
    depth_assumed, depth_from_volume, drawn_as_box, volume_disagrees, depth_above_top, chart_not_rising, size_is_zero.
    """

    kind: str
    profile: Profile
    liquid_depth_m: float
    full_m3: float
    relative_error: float
    basis: Basis
    depth_error_m: float = DEPTH_FACT_ERROR_M
    table: str = ""
    flags: tuple[str, ...] = ()

    @property
    def top_m(self) -> float | None:
        """Inside height [m]; for a maker's chart the last height it lists; None where the walls go on up."""
        return self.profile.top

    @property
    def depth_known(self) -> bool:
        """Whether the full liquid depth rests on a fact."""
        return "depth_assumed" not in self.flags

    def volume_below(self, height: float) -> float:
        """Volume below a height above the floor [m³]; 0 below the floor, the whole volume above a closed form's top."""
        return self.profile.volume(height)

    def height_of(self, volume: float) -> float:
        """Height [m] below which a volume [m³] lies: 0 for none, the top for more than a closed form holds."""
        return self.profile.height(volume)

    def surface_area(self, height: float) -> float:
        """Area of the surface at a height [m²]."""
        return self.profile.area(height)

    def half_width(self, height: float) -> float:
        """Half of the width across the tank at a height [m]."""
        return self.profile.half_width(height)


def vessel(tank: Tank, bedrooms: int | None = None, measured_depth_m: float | None = None) -> Vessel:
    """The vessel that a tank's facts describe; always a usable one, and it says what it rests on.

    Metres and cubic metres. The form's own lengths come first; then a volume with a depth; then `bedrooms` with the
    sizing tables; then a common size. `measured_depth_m` stands in for a full liquid depth that is not on record.
    Nothing is raised: what is missing is assumed, what does not agree is kept as stated, and both stand in `flags`.
    """
    flags = ["size_is_zero"] if _has_zero(tank) else []
    depth = tank.liquid_depth_m if _real(tank.liquid_depth_m) else measured_depth_m if _real(measured_depth_m) else None
    volume = tank.volume_m3 if tank.volume_m3 is not None and tank.volume_m3 >= LEAST_VOLUME_M3 else None
    found = _profile(tank.shape, depth, volume)
    if isinstance(tank.shape, Table) and found is None and tank.shape.heights_m:
        flags.append("chart_not_rising")
    if found is None:
        return _without_form(tank, bedrooms, depth, volume, flags)
    profile, from_volume = found
    depth_error = DEPTH_FACT_ERROR_M
    relative_error = ERROR_VOLUME if from_volume else ERROR_SHAPE
    top = profile.top
    if depth is None:
        depth, depth_error, relative_error, how = _depth_of(profile, volume, isinstance(tank.shape, Table))
        flags.append(how)
    if top is not None and depth > top * 1.001:
        flags.append("depth_above_top")
        relative_error = max(relative_error, depth / top - 1)
    full = profile.volume(depth)
    if volume is not None and abs(volume / full - 1) > VOLUME_DISAGREES:
        flags.append("volume_disagrees")
        relative_error = max(relative_error, abs(volume / full - 1) / 2)
    return Vessel(
        kind=tank.shape.kind,
        profile=profile,
        liquid_depth_m=depth,
        full_m3=full,
        relative_error=relative_error,
        basis="volume" if from_volume else "shape",
        depth_error_m=depth_error,
        flags=tuple(flags),
    )


def compartments(tank: Tank, whole: Vessel) -> tuple[Vessel, ...]:
    """The compartments of a tank, inlet side first, each as a vessel of its own; the tank itself when there is one.

    The first holds `first_compartment_share` of the volume, or `FIRST_SHARE` where that is not known; the others share
    the rest alike. A wall is taken to run straight across, so that depths, and the share of its own volume that a layer
    fills, are as in the whole.
    """
    count = tank.compartments or 1
    if count == 1:
        return (whole,)
    first = tank.first_compartment_share or FIRST_SHARE
    shares = (first, *[(1 - first) / (count - 1)] * (count - 1))
    return tuple(whole._replace(profile=Part(whole.profile, share), full_m3=whole.full_m3 * share) for share in shares)


def _profile(shape: Shape, depth: float | None, volume: float | None) -> tuple[Profile, bool] | None:
    """The form, and whether the stated volume had to supply one of its lengths; None when too little is known."""
    match shape:
        case Box(length_m=length, width_m=width) if _real(length) and _real(width):
            return Straight(length * width, width / 2), False
        case Upright(diameter_m=diameter) if _real(diameter):
            return Straight(pi * diameter * diameter / 4, diameter / 2), False
        case Drum(diameter_m=diameter, length_m=length) if _real(diameter):
            radius = diameter / 2
            bulge = {"flat": 0.0, "dished": radius / 2, "round": radius}[shape.ends]
            return _lying(Lying(radius, length if _real(length) else 0.0, bulge=bulge), depth, volume)
        case Oval(height_m=height, width_m=width, length_m=length) if _real(height) and _real(width):
            lying = Lying(height / 2, length if _real(length) else 0.0, stretch=width / height)
            return _lying(lying, depth, volume)
        case Table():
            chart = Chart.of(shape.heights_m, shape.volumes_m3)
            return (chart, False) if chart else None
    return None


def _lying(form: Lying, depth: float | None, volume: float | None) -> tuple[Profile, bool] | None:
    if form.length > 0:
        return form, False
    if volume is None:
        return (form, False) if form.bulge == form.rise else None  # a ball has no straight part
    depth = min(depth or LYING_DEPTH_SHARE * 2 * form.rise, 2 * form.rise)
    length = (volume - form.volume(depth)) / (form.stretch * segment_area(form.rise, depth))
    return (form._replace(length=length), True) if length > 0 else None


def _depth_of(profile: Profile, volume: float | None, chart: bool) -> tuple[float, float, float, str]:
    """Full liquid depth where none is stated, its error, the error of the volume as a share, and the flag for it."""
    top = profile.top
    if volume is not None and (top is None or volume < profile.volume(top)):
        depth = profile.height(volume)
        return depth, ERROR_VOLUME * volume / profile.area(depth), ERROR_VOLUME, "depth_from_volume"
    if top is None:
        return DEPTH_ASSUMED_M, DEPTH_ASSUMED_ERROR_M, ERROR_DEPTH_ASSUMED, "depth_assumed"
    depth = (CHART_DEPTH_SHARE if chart else LYING_DEPTH_SHARE) * top
    return depth, ERROR_DEPTH_ASSUMED * depth, ERROR_DEPTH_ASSUMED, "depth_assumed"


def _without_form(
    tank: Tank, bedrooms: int | None, depth: float | None, volume: float | None, flags: list[str]
) -> Vessel:
    """A box of the stated or assumed depth that holds the stated volume, or else one by bedrooms, or a common one."""
    basis: Basis
    table = ""
    if volume is not None:
        basis, relative_error = "volume", ERROR_VOLUME
    elif bedrooms is not None:
        basis = "bedrooms"
        volume, table, relative_error = volume_by_bedrooms(bedrooms)
    else:
        basis, volume, relative_error = "default", DEFAULT_VOLUME_M3, ERROR_DEFAULT
    flags.append("drawn_as_box")
    if depth is None:
        flags.append("depth_assumed")
    full_depth = depth or DEPTH_ASSUMED_M
    area = volume / full_depth
    return Vessel(
        kind="box" if tank.shape.kind == "unknown" else tank.shape.kind,
        profile=Straight(area, sqrt(area / PICTURED_LENGTH_TO_WIDTH) / 2),
        liquid_depth_m=full_depth,
        full_m3=volume,
        relative_error=relative_error,
        basis=basis,
        depth_error_m=DEPTH_FACT_ERROR_M if depth else DEPTH_ASSUMED_ERROR_M,
        table=table,
        flags=tuple(flags),
    )


def _has_zero(tank: Tank) -> bool:
    stated = [value for key, value in tank.shape if key.endswith("_m")]
    lengths = [*(size for size in stated if isinstance(size, float)), tank.liquid_depth_m]
    small = any(length is not None and length < LEAST_LENGTH_M for length in lengths)
    return small or (tank.volume_m3 is not None and tank.volume_m3 < LEAST_VOLUME_M3)


def _real(length: float | None) -> TypeGuard[float]:
    return length is not None and length >= LEAST_LENGTH_M
