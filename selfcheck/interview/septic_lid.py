"""Named conditions and fills of the lid: what it weighs by its size, and who should move it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Lid
    from selfcheck.domain.lid import Moving

SIZE = ("lid_form", "lid_diameter", "lid_side", "lid_width", "lid_thickness", "lid_material", "which_tank")
POUND = 0.45359237
#: stone and metal, never "light plastic" however small. Our choice.
HEAVY = ("concrete", "cast_iron", "steel")


@predicate("lid_size_wanted", reads=("which_tank",))
def lid_size_wanted(answered: Answered, context: Context) -> bool:
    """The form of the lid is not on record, so its size was never asked for."""
    lid = tank_of(context, answered).lid
    return lid is None or lid.form is None


@predicate("lid_material_wanted", reads=("which_tank",))
def lid_material_wanted(answered: Answered, context: Context) -> bool:
    """What the lid is made of is not on record."""
    lid = tank_of(context, answered).lid
    return lid is None or lid.material is None


@predicate("lid_weighed", reads=SIZE)
def lid_weighed(answered: Answered, context: Context) -> bool:
    """Its weight can be told from what is known of it."""
    return _moving(answered, context).mass is not None


@predicate("lid_heavier_than_said", reads=(*SIZE, "gate_lid"))
def lid_heavier_than_said(answered: Answered, context: Context) -> bool:
    """It was called light, and by its size it may be too heavy for two."""
    return answered.chosen("gate_lid", "firm_light") and _moving(answered, context).advice in ("lever", "professional")


@predicate("lid_for_professional", reads=SIZE)
def lid_for_professional(answered: Answered, context: Context) -> bool:
    """By the heavy end of what it may weigh, it is too heavy for two with a bar."""
    return _moving(answered, context).advice == "professional"


@predicate("lid_not_light", reads=SIZE)
def lid_not_light(answered: Answered, context: Context) -> bool:
    """What it is made of is no light plastic, or its known material and size make it too heavy for one person."""
    found = _moving(answered, context)
    too_heavy = found.mass is not None and not found.mass.assumed and found.advice != "one_person"
    return _lid(answered, context).material in HEAVY or too_heavy


@fill("lid_weighs")
def lid_weighs(answered: Answered, context: Context) -> str | None:
    """The least and the most that it may weigh."""
    mass = _moving(answered, context).mass
    return None if mass is None else _weight(mass.low_kg, mass.high_kg, context.units)


@fill("lid_limit")
def lid_limit(answered: Answered, context: Context) -> str | None:
    """What one person may lift that way by the published equation; None where that is nothing at all."""
    limit = _moving(answered, context).recommended_kg
    return None if not limit else _weight(limit, limit, context.units)


@fill("lid_takes")
def lid_takes(answered: Answered, context: Context) -> str | None:
    """What a lid takes that is not light; None where it is for a professional."""
    return None if lid_for_professional(answered, context) else "two of you and a bar"


def _of(advice: str, answered: Answered, context: Context) -> str | None:
    """The most it may weigh where the advice is this one, so that only its sentence is said."""
    found = _moving(answered, context)
    if found.mass is None or found.advice != advice:
        return None
    return _weight(found.mass.high_kg, found.mass.high_kg, context.units)


@fill("lid_one_person")
def lid_one_person(answered: Answered, context: Context) -> str | None:
    """Its weight, where one person may lift it."""
    return _of("one_person", answered, context)


@fill("lid_two_people")
def lid_two_people(answered: Answered, context: Context) -> str | None:
    """Its weight, where two people may lift it."""
    return _of("two_people", answered, context)


@fill("lid_lever")
def lid_lever(answered: Answered, context: Context) -> str | None:
    """Its weight, where it takes a bar or a lifting magnet."""
    return _of("lever", answered, context)


@fill("lid_professional")
def lid_professional(answered: Answered, context: Context) -> str | None:
    """Its weight, where it is for a professional."""
    return _of("professional", answered, context)


def _moving(answered: Answered, context: Context) -> Moving:
    from selfcheck.domain.lid import moving

    return moving(_lid(answered, context))


def _lid(answered: Answered, context: Context) -> Lid:
    """The lid on record with what was told of it now."""
    from selfcheck.domain.household import Lid

    known = tank_of(context, answered).lid or Lid()
    told = {
        "form": answered.value("lid_form"),
        "diameter_m": answered.number("lid_diameter"),
        "length_m": answered.number("lid_side"),
        "width_m": answered.number("lid_width"),
        "thickness_m": answered.number("lid_thickness"),
        "material": answered.value("lid_material"),
    }
    return known.model_copy(update={name: value for name, value in told.items() if value is not None})


def _weight(low_kg: float, high_kg: float, units: str) -> str:
    """Whole pounds and kilograms."""
    pounds = _range(low_kg / POUND, high_kg / POUND, "lb")
    kilograms = _range(low_kg, high_kg, "kg")
    return f"{pounds} ({kilograms})" if units == "us" else f"{kilograms} ({pounds})"


def _range(low: float, high: float, unit: str) -> str:
    least, most = round(low), round(high)
    return f"{most} {unit}" if least == most else f"{least} to {most} {unit}"
