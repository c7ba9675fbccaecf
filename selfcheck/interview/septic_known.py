"""Conditions on what is on record of the house and its tanks, and what of it is still wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import household_of, occupancy_of, tank_of

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
    last = max(emptied, key=lambda one: one.on)
    people = f"{spells[-1].people:g} people" if spells[-1].people != 1 else "1 person"
    size = show_volume(vessel(tank_of(context, answered)).full_m3, context.units)
    return f"{people}, a tank of {size}, last pumped {show_date(last.on, context.units, *last.span)}"


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


@predicate("since_wanted", reads=("what_changed", "last_pump_out", "people"))
def since_wanted(answered: Answered, context: Context) -> bool:
    """It makes a difference since when so many have lived there."""
    if answered.number("people") is None:
        return False
    return answered.chosen("what_changed", "people") or answered.chosen("last_pump_out", "unknown", "skipped")


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
