"""Conditions on the readings: which of them were taken, and which can still change something."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import household_of, pumped_last, rules_of, tank_of

if TYPE_CHECKING:
    from selfcheck.domain.check import Readings

SCUM = ("scum_total", "scum_above", "scum_below")
SLUDGE = ("sludge_1", "sludge_2", "sludge_3")
BEFORE_CRUST = ("level", "surface", *SCUM, "wet_line", *SLUDGE, "outlet_depth", "which_tank")


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
    return tank_of(context, answered).liquid_depth_m is None or not answered.chosen("level", "at_outlet")


@predicate("sludge_read", reads=("sludge_1",))
def sludge_read(answered: Answered, context: Context) -> bool:
    """There is a first reading of the sludge."""
    return answered.number("sludge_1") is not None


@predicate("third_sludge_reading_wanted", reads=("level", "surface", *SCUM, "wet_line", *SLUDGE[:2], "which_tank"))
def third_sludge_reading_wanted(answered: Answered, context: Context) -> bool:
    """Two readings do not agree, or the middle of three could still turn the call."""
    from selfcheck.domain.agreement import sludge_that_counts
    from selfcheck.domain.check import Reading

    told = [length for question in SLUDGE[:2] if (length := answered.number(question)) is not None]
    if sludge_that_counts([Reading(m=length) for length in told])[1] == "third_wanted":
        return True
    return "sludge_third" in _could_turn_the_call(answered, context)


@predicate("outlet_depth_wanted", reads=("level", "surface", *SCUM, "wet_line", *SLUDGE, "which_tank"))
def outlet_depth_wanted(answered: Answered, context: Context) -> bool:
    """The outlet's depth is not on record, and to feel for it could still turn the call."""
    return "outlet_depth" in _could_turn_the_call(answered, context)


@predicate("crust_hangs_wanted", reads=BEFORE_CRUST)
def crust_hangs_wanted(answered: Answered, context: Context) -> bool:
    """How deep the crust hangs was reckoned, and to feel for its underside could still turn the call."""
    return "scum_below" not in answered and "scum_below" in _could_turn_the_call(answered, context)


@predicate("crust_stands_wanted", reads=(*BEFORE_CRUST, "crust_hangs"))
def crust_stands_wanted(answered: Answered, context: Context) -> bool:
    """How high the crust stands was reckoned, and to read its top could still turn the call."""
    return "scum_above" not in answered and "scum_above" in _could_turn_the_call(answered, context)


@predicate("crust_part_wanted", reads=BEFORE_CRUST)
def crust_part_wanted(answered: Answered, context: Context) -> bool:
    """Either part of the crust was reckoned, and to read it could still turn the call."""
    return crust_hangs_wanted(answered, context) or crust_stands_wanted(answered, context)


@predicate("filter_may_matter", reads=("level", "which_tank"))
def filter_may_matter(answered: Answered, context: Context) -> bool:
    """A filter is fitted, or the water stands high and one may be the cause."""
    fitted = tank_of(context, answered).filter
    return bool(fitted) or (fitted is None and answered.chosen("level", "above_outlet"))


def _could_turn_the_call(answered: Answered, context: Context) -> tuple[str, ...]:
    """Ids of the better readings that could; none before there is sludge read to go by."""
    from selfcheck.domain.better_reading import better_readings
    from selfcheck.domain.history import years_between
    from selfcheck.domain.shapes import vessel
    from selfcheck.domain.weighing import Scene

    house, tank, readings = household_of(context), tank_of(context, answered), _readings(context)
    rules, last = rules_of(context), pumped_last(answered, context)
    if rules is None or not readings.sludge:
        return ()
    level = answered.value("level")
    stood = level if isinstance(level, str) else None
    years = years_between(last, context.today) if last is not None else None
    scene = Scene(tank, vessel(tank, house.bedrooms), rules, stood, years)
    return better_readings(scene, readings, house.bedrooms)


def _readings(context: Context) -> Readings:
    from selfcheck.domain.check import Readings

    check: Any = context.draft().get("check", {})
    return Readings.model_validate(check.get("seen", {}).get("readings", {}))
