"""Conditions on what is on record of the house and its tanks, and what of it is still wanted."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import error_of
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.recorded import recorded
from selfcheck.interview.septic_record import household_of, occupancy_of, tank_of
from selfcheck.interview.showing import show_day

if TYPE_CHECKING:
    from selfcheck.domain.check import PumpOut


@predicate("facts_on_record", reads=("which_tank",))
def facts_on_record(answered: Answered, context: Context) -> bool:
    """People, tank size and a pump-out are all on record, so that one question can confirm them."""
    return bool(occupancy_of(context)) and size_known(answered, context) and pump_out_known(answered, context)


@fill("facts")
def facts(answered: Answered, context: Context) -> str | None:
    """The facts that `facts_on_record` speaks of, in one line."""
    from selfcheck.domain.quantities import show_date, show_volume
    from selfcheck.domain.shapes import vessel

    spells, emptied = occupancy_of(context), _pump_outs(answered, context)
    if not spells or not emptied:
        return None
    told = {name: one.value for name, one in answered.aside.items() if isinstance(one.value, (int, float))}
    number = told.get("people", spells[-1].people)
    people = f"{number:g} people" if number != 1 else "1 person"
    size = show_volume(told.get("size", vessel(tank_of(context, answered)).full_m3), context.units)
    last = max(emptied, key=lambda one: one.on)
    pumped, day = show_date(last.on, context.units, *last.span), answered.aside.get("last_pump_out")
    if day is not None and isinstance(day.value, date) and day.value > last.on:
        pumped = show_day(day.value, day.error, context.units)
    return f"{people}, a tank of {size}, last pumped {pumped}"


@recorded("people")
def people_on_record(answered: Answered, context: Context) -> list[Answer]:
    """How many live there, by the newest entry."""
    return [Answer("people", "value", one.people) for one in occupancy_of(context)[-1:]]


@recorded("size")
def size_on_record(answered: Answered, context: Context) -> list[Answer]:
    """What the tank holds: as it was told, and as its form and depth give it."""
    from selfcheck.domain.shapes import vessel

    tank = tank_of(context, answered)
    if not size_known(answered, context):
        return []
    holds = [tank.volume_m3, vessel(tank).full_m3]
    return [Answer("size", "value", float(one)) for one in holds if one is not None]


@recorded("last_pump_out")
def pump_outs_on_record(answered: Answered, context: Context) -> list[Answer]:
    """The days of the tank's pump-outs."""
    emptied = sorted(_pump_outs(answered, context), key=lambda one: one.on)
    return [Answer("last_pump_out", "value", one.on, error=error_of(one.within_days or 0)) for one in emptied]


@recorded("material")
def material_on_record(answered: Answered, context: Context) -> list[Answer]:
    """What the tank is made of."""
    made = tank_of(context, answered).material
    return [Answer("material", "value", made)] if made is not None and made != "unknown" else []


@predicate("someone_on_record", reads=("people",))
def someone_on_record(answered: Answered, context: Context) -> bool:
    """The record, or an answer, tells of people in the house, whose ways can then be told."""
    return bool(occupancy_of(context)) or answered.number("people") is not None


@predicate("size_known", reads=("which_tank",))
def size_known(answered: Answered, context: Context) -> bool:
    """The record gives the size of the tank, by its form or by its volume."""
    from selfcheck.domain.shapes import vessel

    return vessel(tank_of(context, answered)).basis in ("shape", "volume")


@predicate("bedrooms_known", reads=())
def bedrooms_known(answered: Answered, context: Context) -> bool:
    """The record gives the number of bedrooms, by which a size that nobody knows is guessed."""
    return household_of(context).bedrooms is not None


@predicate("pump_out_known", reads=("which_tank",))
def pump_out_known(answered: Answered, context: Context) -> bool:
    """A pump-out of this tank is on record."""
    return bool(_pump_outs(answered, context))


@predicate("pump_out_wanted", reads=("what_changed", "which_tank"))
def pump_out_wanted(answered: Answered, context: Context) -> bool:
    """The date of the last pump-out is not on record, or there was a newer one."""
    return not pump_out_known(answered, context) or answered.chosen("what_changed", "pumped")


@predicate("people_wanted", reads=("what_changed",))
def people_wanted(answered: Answered, context: Context) -> bool:
    """Nobody has told yet how many live there, or that has changed."""
    return not occupancy_of(context) or answered.chosen("what_changed", "people")


@predicate("since_wanted", reads=("last_pump_out", "people"))
def since_wanted(answered: Answered, context: Context) -> bool:
    """It makes a difference since when so many have lived there."""
    if answered.number("people") is None:
        return False
    return bool(occupancy_of(context)) or answered.chosen("last_pump_out", "unknown", "skipped")


@predicate("size_wanted", reads=("what_changed", "which_tank"))
def size_wanted(answered: Answered, context: Context) -> bool:
    """The size of the tank is not on record, or it is wrong there."""
    return not size_known(answered, context) or answered.chosen("what_changed", "size")


@predicate("disposal_wanted", reads=("way_in", "what_changed", "people"))
def disposal_wanted(answered: Answered, context: Context) -> bool:
    """A food grinder moves the date, and the date is all there is; or people changed where one was in use."""
    spells = occupancy_of(context)
    if answered.number("people") is not None:
        grinder = bool(spells) and spells[-1].disposal not in (None, "none")
        return grinder or answered.chosen("way_in", "closed")
    return answered.chosen("way_in", "closed") and bool(spells) and spells[-1].disposal is None


def _pump_outs(answered: Answered, context: Context) -> list[PumpOut]:
    tank = tank_of(context, answered).id
    return [one for one in context.pump_outs if one.tank == tank]


@predicate("several_tanks", reads=())
def several_tanks(answered: Answered, context: Context) -> bool:
    """There is more than one tank on record, so that it has to be said which one is meant."""
    return len(household_of(context).tanks) > 1


@predicate("divider_there", reads=("compartments", "which_tank"))
def divider_there(answered: Answered, context: Context) -> bool:
    """The tank has two compartments, by what was told of this pump-out or else by the record."""
    told = answered.value("compartments")
    return two_parts(answered, context) if told is None else told != "only_one"


@predicate("two_parts", reads=("which_tank",))
def two_parts(answered: Answered, context: Context) -> bool:
    """The tank has two compartments."""
    return (tank_of(context, answered).compartments or 1) > 1
