"""The named conditions of the septic conversations: what is known already, and what a question can still change.

Importing this module registers them. They look at the record and at the answers that count so far, and decide only
whether a question is worth asking.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import household_of as _household
from selfcheck.interview.septic_record import occupancy_of as _occupancy
from selfcheck.interview.septic_record import rules_of
from selfcheck.interview.septic_record import tank_of as _tank

if TYPE_CHECKING:
    from selfcheck.domain.check import Readings

#: A sludge layer that lost more than this since last time is questioned. Our choice.
SHRINKS_M = 0.05
BEFORE_GOING_OUT = ("way_in", "house_signs", "yard_signs", "alarm")
SCUM = ("scum_total", "scum_above", "scum_below")
SLUDGE = ("sludge_1", "sludge_2", "sludge_3")


# ------------------------------------------------------------------------------ the way through


@predicate("on_paper", reads=("way_in", "ready"))
def on_paper(answered: Answered, context: Context) -> bool:
    """The check was done outside and stands on a filled-in sheet."""
    return answered.chosen("way_in", "sheet") or answered.chosen("ready", "sheet_filled")


@predicate("going_out", reads=BEFORE_GOING_OUT)
def going_out(answered: Answered, context: Context) -> bool:
    """The check is to be done outside, and nothing was told that must be seen by a professional first."""
    return answered.chosen("way_in", "guided") and not _wants_a_call_today(answered)


@predicate("gate_wanted", reads=(*BEFORE_GOING_OUT, "ready", "search", "utility_call", "bared"))
def gate_wanted(answered: Answered, context: Context) -> bool:
    """The lid is in sight or bared, and the household means to go on."""
    if not going_out(answered, context):
        return False
    if answered.chosen("ready", "go_out"):
        return True
    found = answered.chosen("search", "found_bare") or answered.was_chosen("bared", "clear")
    return answered.chosen("ready", "lid_hidden") and found


@predicate("tank_uncovered", reads=("way_in", "ready", "lid_off"))
def tank_uncovered(answered: Answered, context: Context) -> bool:
    """Somebody stood at the opening, today or when the sheet was filled in."""
    return on_paper(answered, context) or "lid_off" in answered or "lid_off" in answered.before


@predicate("opened_today", reads=("lid_off",))
def opened_today(answered: Answered, context: Context) -> bool:
    """The step that opens the tank was reached in this conversation, whether or not it is shut again."""
    return answered.open or "lid_off" in answered or "lid_off" in answered.before


@predicate("tank_seen", reads=("way_in", "ready", "lid_off", "level"))
def tank_seen(answered: Answered, context: Context) -> bool:
    """The lid came off, so that there is something to tell of the inside."""
    return tank_uncovered(answered, context) and "level" in answered and not answered.chosen("level", "stayed_shut")


@predicate("lid_told", reads=("gate_lid",))
def lid_told(answered: Answered, context: Context) -> bool:
    """How the lid is was told at the gate, or as a danger."""
    told = answered.was_chosen("gate_lid", "firm_light", "firm_heavy", "rocked", "cracked")
    return told or "lid_broken" in answered.hazards or "lid_left_open" in answered.hazards


@predicate("one_drain_only", reads=("trouble_house", "trouble_yard", "trouble_where"))
def one_drain_only(answered: Answered, context: Context) -> bool:
    """One slow drain is all there is."""
    elsewhere = answered.chosen("trouble_where", "yard", "alarm")
    return answered.value("trouble_house") == ("slow_one_drain",) and not elsewhere


def _wants_a_call_today(answered: Answered) -> bool:
    return (
        answered.chosen("alarm", "sounding")
        or answered.chosen("house_signs", "sewage_backup")
        or answered.chosen("yard_signs", "wet_smelly", "sunken_ground")
    )


# ------------------------------------------------------------------------------ what is on record


@predicate("facts_on_record", reads=("which_tank",))
def facts_on_record(answered: Answered, context: Context) -> bool:
    """People, tank size and a pump-out are all on record, so that one question can confirm them."""
    return bool(_occupancy(context)) and size_known(answered, context) and pump_out_known(answered, context)


@fill("facts")
def facts(answered: Answered, context: Context) -> str | None:
    """The facts that `facts_on_record` speaks of, in one line."""
    from selfcheck.domain.quantities import show_date, show_volume
    from selfcheck.domain.shapes import vessel

    spells = _occupancy(context)
    if not spells or not context.pump_outs:
        return None
    last = max(context.pump_outs, key=lambda one: one.on)
    people = f"{spells[-1].people:g} people" if spells[-1].people != 1 else "1 person"
    size = show_volume(vessel(_tank(context, answered)).full_m3, context.units)
    return f"{people}, a tank of {size}, last pumped {show_date(last.on, context.units, *last.span)}"


@predicate("size_known", reads=("which_tank",))
def size_known(answered: Answered, context: Context) -> bool:
    """The record gives the size of the tank, by its form or by its volume."""
    from selfcheck.domain.shapes import vessel

    return vessel(_tank(context, answered)).basis in ("shape", "volume")


@predicate("pump_out_known", reads=())
def pump_out_known(answered: Answered, context: Context) -> bool:
    """A pump-out is on record."""
    return bool(context.pump_outs)


@predicate("pump_out_wanted", reads=("what_changed",))
def pump_out_wanted(answered: Answered, context: Context) -> bool:
    """The date of the last pump-out is not on record, or there was a newer one."""
    return not context.pump_outs or answered.chosen("what_changed", "pumped")


@predicate("people_wanted", reads=("what_changed",))
def people_wanted(answered: Answered, context: Context) -> bool:
    """Nobody has told yet how many live there, or that has changed."""
    return not _occupancy(context) or answered.chosen("what_changed", "people")


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
    spells = _occupancy(context)
    if answered.number("people") is not None:
        grinder = bool(spells) and spells[-1].disposal not in (None, "none")
        return grinder or answered.chosen("way_in", "closed")
    return answered.chosen("way_in", "closed") and bool(spells) and spells[-1].disposal is None


@predicate("two_tanks", reads=())
def two_tanks(answered: Answered, context: Context) -> bool:
    """There is more than one tank on record, so that it has to be said which one is meant."""
    return len(_household(context).tanks) > 1


@predicate("two_parts", reads=("which_tank",))
def two_parts(answered: Answered, context: Context) -> bool:
    """The tank has two compartments."""
    return (_tank(context, answered).compartments or 1) > 1


# ------------------------------------------------------------------------------ what a reading can change


@predicate("second_read", reads=("second_lid", "second_on_paper", "second_do"))
def second_read(answered: Answered, context: Context) -> bool:
    """Somebody stood at the second compartment's own opening."""
    return "second_do" in answered or answered.chosen("second_on_paper", "firm")


@predicate("second_sludge_read", reads=("second_sludge_1",))
def second_sludge_read(answered: Answered, context: Context) -> bool:
    """There is a first reading of the second compartment's sludge."""
    return answered.number("second_sludge_1") is not None


@predicate("wet_line_wanted", reads=("level", "which_tank"))
def wet_line_wanted(answered: Answered, context: Context) -> bool:
    """The depth of the water is not known from the tank's facts and where the water stood."""
    return _tank(context, answered).liquid_depth_m is None or not answered.chosen("level", "at_outlet")


@predicate("sludge_read", reads=("sludge_1",))
def sludge_read(answered: Answered, context: Context) -> bool:
    """There is a first reading of the sludge."""
    return answered.number("sludge_1") is not None


@predicate("third_sludge_reading_wanted", reads=SLUDGE[:2])
def third_sludge_reading_wanted(answered: Answered, context: Context) -> bool:
    """Two readings do not agree."""
    from selfcheck.domain.agreement import sludge_that_counts
    from selfcheck.domain.check import Reading

    told = [length for question in SLUDGE[:2] if (length := answered.number(question)) is not None]
    return sludge_that_counts([Reading(m=length) for length in told])[1] == "third_wanted"


@predicate("outlet_depth_wanted", reads=("level", "surface", *SCUM, "wet_line", *SLUDGE, "which_tank"))
def outlet_depth_wanted(answered: Answered, context: Context) -> bool:
    """The outlet's depth is not on record, and to feel for it could still turn the call."""
    from selfcheck.domain.better_reading import better_readings
    from selfcheck.domain.shapes import vessel
    from selfcheck.domain.weighing import Scene

    house, tank, readings = _household(context), _tank(context), _readings(context)
    rules = rules_of(context)
    if rules is None or not readings.sludge:
        return False
    level = answered.value("level")
    scene = Scene(tank, vessel(tank, house.bedrooms), rules, level if isinstance(level, str) else None, None)
    return "outlet_depth" in better_readings(scene, readings, house.bedrooms)


@predicate("filter_may_matter", reads=("level", "which_tank"))
def filter_may_matter(answered: Answered, context: Context) -> bool:
    """A filter is fitted, or the water stands high and one may be the cause."""
    fitted = _tank(context, answered).filter
    return bool(fitted) or (fitted is None and answered.chosen("level", "above_outlet"))


# ------------------------------------------------------------------------------ what is odd


@predicate("sludge_over_water", reads=("wet_line", "level", *SLUDGE, "which_tank"))
def sludge_over_water(answered: Answered, context: Context) -> bool:
    """The last sludge reading is higher than the water is deep."""
    depth, sludge = _depth(answered, context), _last_told(answered)
    return depth is not None and sludge is not None and sludge > depth


@predicate("crust_seen_but_none_read", reads=("surface", "scum_total"))
def crust_seen_but_none_read(answered: Answered, context: Context) -> bool:
    """A crust was seen, and its thickness is nothing."""
    return answered.chosen("surface", "brown") and answered.number("scum_total") == 0


@predicate("crust_read_but_none_seen", reads=("surface", *SCUM))
def crust_read_but_none_seen(answered: Answered, context: Context) -> bool:
    """No crust was seen, and one was measured."""
    return answered.chosen("surface", "no_crust") and any((answered.number(name) or 0) > 0 for name in SCUM)


@predicate("sludge_shrank", reads=("sludge_1", "which_tank"))
def sludge_shrank(answered: Answered, context: Context) -> bool:
    """The sludge is well below that of the last check, and no pump-out came between."""
    now, last = answered.number("sludge_1"), _sludge_on_record(answered, context)
    return now is not None and last is not None and now < last - SHRINKS_M and "last_pump_out" not in answered


@predicate("pumped_today", reads=("pumped_on",))
def pumped_today(answered: Answered, context: Context) -> bool:
    """The pump-out may be going on now: it is of today, or its day is not known."""
    return answered.value("pumped_on") in (None, context.today)


@predicate("pump_out_ahead", reads=())
def pump_out_ahead(answered: Answered, context: Context) -> bool:
    """The pump-out is dated later than today."""
    return _later(context.draft().get("pump_out", {}).get("on"), context)


@predicate("parts_unlike_record", reads=("which_tank",))
def parts_unlike_record(answered: Answered, context: Context) -> bool:
    """The tank is told to have another number of compartments than is on record."""
    known = _tank(context, answered).compartments
    tanks = context.draft().get("household", {}).get("tanks") or [{}]
    told = tanks[0].get("compartments")
    return known is not None and told is not None and told != known


@fill("parts_on_record")
def parts_on_record(answered: Answered, context: Context) -> str | None:
    """How many compartments are on record."""
    known = _tank(context, answered).compartments
    return None if known is None else f"{known}"


@predicate("check_ahead", reads=())
def check_ahead(answered: Answered, context: Context) -> bool:
    """The check is dated later than today."""
    return _later(context.draft().get("check", {}).get("on"), context)


@fill("depth_told")
def depth_told(answered: Answered, context: Context) -> str | None:
    """How deep the water is, as told now or as on record."""
    from selfcheck.domain.quantities import show_length

    depth = _depth(answered, context)
    return None if depth is None else show_length(depth, context.units)


@fill("last_sludge")
def last_sludge(answered: Answered, context: Context) -> str | None:
    """The sludge of the last check since the last pump-out."""
    from selfcheck.domain.quantities import show_length

    last = _sludge_on_record(answered, context)
    return None if last is None else show_length(last, context.units)


def _later(day: Any, context: Context) -> bool:
    return isinstance(day, str) and day > context.today.isoformat()


def _depth(answered: Answered, context: Context) -> float | None:
    told = answered.number("wet_line")
    return _tank(context, answered).liquid_depth_m if told is None else told


def _last_told(answered: Answered) -> float | None:
    told = [length for question in SLUDGE if (length := answered.number(question)) is not None]
    return told[-1] if told else None


def _sludge_on_record(answered: Answered, context: Context) -> float | None:
    from selfcheck.domain.agreement import sludge_that_counts
    from selfcheck.domain.check import standing

    tank = _tank(context, answered).id
    pumped = max((one.on for one in context.pump_outs if one.tank == tank), default=None)
    for check in reversed(standing([one for one in context.checks if one.tank == tank])):
        if pumped is not None and check.on <= pumped:
            return None
        counted = sludge_that_counts(check.seen.readings.sludge)[0]
        if counted is not None:
            return counted.m
    return None


def _readings(context: Context) -> Readings:
    from selfcheck.domain.check import Readings

    check: Any = context.draft().get("check", {})
    return Readings.model_validate(check.get("seen", {}).get("readings", {}))
