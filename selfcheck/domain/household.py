"""What is known of a household and its tanks: the models behind `household.json`.

Lengths in metres, volumes in cubic metres, dates ISO. Any value may be null, which means *not known*. Fields that this
version does not know are kept as they are.
"""

# Annotations are left as they stand: pydantic would compile each of them from text, at every start.
from datetime import date, timedelta
from typing import Annotated, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

HOUSEHOLD_FORMAT = "selfcheck-household"
HOUSEHOLD_VERSION = 1

Disposal = Literal["none", "sometimes", "daily"]
Material = Literal["concrete", "plastic", "fibreglass", "steel", "unknown"]
Metres = Annotated[float, Field(ge=0, le=100, allow_inf_nan=False)]
CubicMetres = Annotated[float, Field(ge=0, le=1000, allow_inf_nan=False)]
#: null is "not known" here as everywhere; for words that is no words
Words = Annotated[str, BeforeValidator(lambda value: "" if value is None else value)]


#: No tank was kept a record of before this year, and nobody means a day in a year after that one. Our choice.
FIRST_YEAR, LAST_YEAR = 1900, 2200


def can_be(day: date) -> bool:
    """Whether a day can be meant: neither before any such house nor in a far century."""
    return FIRST_YEAR <= day.year <= LAST_YEAR


def spread(day: date, within_days: float | None) -> tuple[date, date]:
    """First and last day of a span that was told as wide as this [days], with `day` at its middle."""
    width = round(within_days or 0)
    first = day - timedelta(days=width // 2)
    return first, first + timedelta(days=width)


class Record(BaseModel):
    """A thing read from or written to a file of the record; unknown fields are kept."""

    # built when first used: a command that reads no pump-out pays nothing for that model
    model_config = ConfigDict(extra="allow", frozen=True, defer_build=True)


class Box(Record):
    """A tank with upright walls on a rectangle: inside length and width."""

    kind: Literal["box"] = "box"
    length_m: Metres | None = None
    width_m: Metres | None = None


class Upright(Record):
    """An upright round tank: inside diameter."""

    kind: Literal["upright"] = "upright"
    diameter_m: Metres | None = None


class Drum(Record):
    """A lying cylinder; `length_m` is the straight part. `dished` ends are ellipsoidal 2:1, `round` hemispheres."""

    kind: Literal["drum"] = "drum"
    diameter_m: Metres | None = None
    length_m: Metres | None = None
    ends: Literal["flat", "dished", "round"] = "flat"


class Oval(Record):
    """A lying tank with an elliptical section `width_m` by `height_m`, and flat ends."""

    kind: Literal["oval"] = "oval"
    width_m: Metres | None = None
    height_m: Metres | None = None
    length_m: Metres | None = None


class Table(Record):
    """A maker's chart: volume below each height above the floor, both rising."""

    kind: Literal["table"] = "table"
    heights_m: list[Metres] = Field(default_factory=list)
    volumes_m3: list[CubicMetres] = Field(default_factory=list)


class UnknownShape(Record):
    """Nothing known but perhaps the tank's volume."""

    kind: Literal["unknown"] = "unknown"


Shape = Annotated[Box | Upright | Drum | Oval | Table | UnknownShape, Field(discriminator="kind")]


class Lid(Record):
    """The cover over the opening that is used."""

    form: Literal["round", "square", "rectangular"] | None = None
    diameter_m: Metres | None = None
    length_m: Metres | None = None
    width_m: Metres | None = None
    thickness_m: Metres | None = None
    material: Literal["concrete", "plastic", "fibreglass", "steel", "cast_iron", "unknown"] | None = None
    buried_m: Metres | None = None


class Place(Record):
    """Where the lid is: distances from two fixed corners, and on which side of the line between them it lies.

    `from_truck_m`: along the way of the hose, from where a truck can stand.
    """

    corner_a: Words = ""
    corner_b: Words = ""
    corners_apart_m: Metres | None = None
    from_a_m: Metres | None = None
    from_b_m: Metres | None = None
    side: Words = ""
    from_truck_m: Metres | None = None
    note: Words = ""


class Tank(Record):
    """One tank. `liquid_depth_m` is floor to water line when the tank stands full at its outlet."""

    id: str = "main"
    shape: Shape = Field(default_factory=UnknownShape)
    liquid_depth_m: Metres | None = None
    volume_m3: CubicMetres | None = None
    material: Material | None = None
    compartments: int | None = Field(default=None, ge=1, le=3)
    first_compartment_share: float | None = Field(default=None, gt=0, lt=1)
    outlet_bottom_below_surface_m: Metres | None = None
    outlet_top_above_surface_m: Metres | None = None
    inlet_side: Words = ""  # the end at which the pipe from the house comes in, in the household's own words
    filter: bool | None = None
    lid: Lid | None = None
    place: Place | None = None
    follows: str | None = None  # id of the tank that drains into this one, for tanks in series


class Occupancy(Record):
    """Who lived there from a date on: people at home, months a year, food waste disposal.

    `within_days`: how wide the day was told, as in "May 2020", with `from` at its middle; 0 or null for one day.
    """

    from_: date = Field(alias="from")
    within_days: Annotated[int, Field(ge=0, le=40_000)] | None = None
    people: float = Field(ge=0, le=100, allow_inf_nan=False)
    months_per_year: float = Field(default=12, ge=0, le=12, allow_inf_nan=False)
    disposal: Disposal | None = "none"

    @property
    def span(self) -> tuple[date, date]:
        """First and last day on which it may have begun."""
        return spread(self.from_, self.within_days)

    model_config = ConfigDict(extra="allow", frozen=True, defer_build=True, populate_by_name=True)


class Contact(Record):
    """Somebody to call."""

    role: str = ""
    name: str = ""
    phone: str = ""


class MeterReading(Record):
    """A reading of the water meter, cubic metres since the meter was new."""

    on: date
    m3: Annotated[float, Field(ge=0, allow_inf_nan=False)]


class Household(Record):
    """`household.json`."""

    format: Literal["selfcheck-household"] = "selfcheck-household"
    version: Literal[1] = 1
    name: str = ""
    units: Literal["us", "metric"] = "us"
    rules: str = "us-epa-homeowner"
    bedrooms: int | None = Field(default=None, ge=0, le=50)
    occupancy: list[Occupancy] = Field(default_factory=list)
    tanks: list[Tank] = Field(default_factory=list)
    contacts: list[Contact] = Field(default_factory=list)
    meter: list[MeterReading] = Field(default_factory=list)
    region: Words = ""  # state, county or country, in the household's own words
    demonstration: bool = False  # an invented household: what is typed goes to a copy

    def tank(self, ident: str | None = None) -> Tank:
        """The tank with this id; the first one when none is named; an unknown tank when there is none."""
        for tank in self.tanks:
            if ident is None or tank.id == ident:
                return tank
        return Tank(id=ident or "main")
