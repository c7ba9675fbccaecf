"""How heavy is the lid, and who should move it.

The lifting equation holds for a lift with two hands, standing, and not for pulling, sliding or levering; a lid at
ground level beside a hole is an awkward lift at best. So the advice rests on the heavy end of what the lid may weigh.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from selfcheck.domain.household import Lid
from selfcheck.domain.lifting import Coupling, Lift, lift

POUNDS_A_CUBIC_FOOT = 0.45359237 / 0.3048**3  # kg/m³
_DENSITY_LB_FT3 = {
    "concrete": (145.0, 150.0),  # source: gere-densities
    "cast_iron": (435.0, 460.0),  # source: gere-densities
    "steel": (490.0, 490.0),  # source: gere-densities
    "plastic": (60.0, 90.0),  # source: gere-densities, polyethylene
    "fibreglass": (95.0, 120.0),  # from memory
}
#: Lightest and heaviest of what a lid is commonly made of; a cast iron or steel one is known for what it is.
_UNKNOWN = (_DENSITY_LB_FT3["plastic"][0], _DENSITY_LB_FT3["concrete"][1])
#: Standing beside a load held low, its near edge at the toes: hands this far out, and half its width more [cm] (source:
#: niosh-94-110, from memory).
_REACH_CM = 25.0
#: Lifted clear of its seat and set down beside it [cm] (our choice).
_TRAVEL_CM = 30.0
#: More than this [kg] is not for a lever either (our choice): 200 lb.
LEVER_MOST_KG = 90.0

Advice = Literal["one_person", "two_people", "lever", "professional", "cannot_tell"]


@dataclass(frozen=True, slots=True)
class Mass:
    """Lightest and heaviest of what a lid may weigh [kg]; `assumed` when its material is not known."""

    low_kg: float
    high_kg: float
    assumed: bool


@dataclass(frozen=True, slots=True)
class Moving:
    """Who should move a lid. `index`: weight over what one person may lift that way; None when it cannot be told.

    `one_person`: within the limit. `two_people`: within it when the weight is shared. `lever`: not to be lifted; moved
    with a lever or a lifting magnet from the far side, which the equation does not cover. `professional`: too heavy,
    or not sound.
    """

    advice: Advice
    mass: Mass | None
    recommended_kg: float | None
    index: float | None


def area_m2(lid: Lid) -> float | None:
    """Area of a lid from above [m²], by its form; None when its form or a length is not known."""
    if lid.form == "round":
        return math.pi * lid.diameter_m**2 / 4 if lid.diameter_m else None
    length, width = lid.length_m, lid.width_m
    if lid.form == "square":
        side = length or width
        return side * side if side else None
    return length * width if length and width else None


def mass(lid: Lid) -> Mass | None:
    """Mass of a lid [kg] as if it were solid throughout; None when a length is not known.

    Densities: source gere-densities; that of fibreglass is from memory. A ribbed or hollow lid weighs less, so this
    errs to the heavy side.
    """
    area = area_m2(lid)
    if area is None or not lid.thickness_m:
        return None
    known = _DENSITY_LB_FT3.get(lid.material or "unknown")
    low, high = known or _UNKNOWN
    solid = area * lid.thickness_m * POUNDS_A_CUBIC_FOOT
    return Mass(low * solid, high * solid, known is None)


def from_the_ground(lid: Lid, coupling: Coupling = "poor") -> Lift | None:
    """The lift of a lid out of its seat at ground level, standing beside it; None when its size is not known.

    Equation: source niosh-94-110, read in a reprint; how far out the hands are is from memory, how far they travel our
    choice. `coupling`: `poor` without handles, `good` with two. Soil over the lid is taken to be dug away; hands below
    the feet are outside the equation and are taken as at the feet.
    """
    area = area_m2(lid)
    if area is None:
        return None
    sides = [side for side in (lid.diameter_m, lid.length_m, lid.width_m) if side]
    across = min(sides) * 100.0
    return lift(_REACH_CM + across / 2.0, 0.0, _TRAVEL_CM, coupling=coupling)


def moving(lid: Lid, *, sound: bool = True, coupling: Coupling = "poor") -> Moving:
    """Who should move this lid, by the heavy end of its mass. A lid that is cracked or rocks is for a professional.

    With one person able to lift `R` kilograms that way: up to `R` one person, up to `2R` two, then a lever or lifting
    magnet from the far side up to `LEVER_MOST_KG`, then a professional. `R` by niosh-94-110, read in a reprint. Sharing
    a weight evenly between two, and the last bound, are our choice.
    """
    weight, held = mass(lid), from_the_ground(lid, coupling)
    limit = held.recommended if held else None
    index = held.index(weight.high_kg) if held and weight else None
    if not sound:
        return Moving("professional", weight, limit, index)
    if weight is None or index is None:
        return Moving("cannot_tell", weight, limit, index)
    advice: Advice = "professional"
    if index <= 1.0:
        advice = "one_person"
    elif index <= 2.0:
        advice = "two_people"
    elif weight.high_kg <= LEVER_MOST_KG:
        advice = "lever"
    return Moving(advice, weight, limit, index)
