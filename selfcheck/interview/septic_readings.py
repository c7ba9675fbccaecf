"""Conditions on the readings: which of them were taken, and which can still change something."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar
from weakref import WeakKeyDictionary

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import rules_of, tank_of

Found = TypeVar("Found")
SCUM = ("scum_total", "scum_above", "scum_below")
SLUDGE = ("sludge_1", "sludge_2", "sludge_3")
#: what the verdict on a tank rests on beside its readings, as far as it is asked before them
FACTS = ("which_tank", "last_pump_out", "people", "people_since", "size", "bedrooms", "disposal", "observed_on")
SIGNS = (
    "wrong_now", "house_signs", "yard_signs", "alarm", "gate_lid", "sheet_lid", "lid_look", "level", "surface", "smell",
    "parts", "unseen", "inlet_tee_state", "outlet_tee_state", "wall_state", "filter",
)  # fmt: skip
BEFORE_THIRD = (*FACTS, "level", "surface", *SCUM, "wet_line", *SLUDGE[:2])
BEFORE_OUTLET = (*BEFORE_THIRD, SLUDGE[2])
BEFORE_CRUST = (*BEFORE_OUTLET, "outlet_depth")


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


@predicate("third_sludge_reading_wanted", reads=BEFORE_THIRD)
def third_sludge_reading_wanted(answered: Answered, context: Context) -> bool:
    """Two readings do not agree, or the middle of three could still turn the verdict."""
    from selfcheck.domain.agreement import sludge_that_counts
    from selfcheck.domain.check import Reading

    told = [length for question in SLUDGE[:2] if (length := answered.number(question)) is not None]
    if sludge_that_counts([Reading(m=length) for length in told])[1] == "third_wanted":
        return True
    return "sludge_third" in _could_turn_the_verdict(answered, context)


@predicate("outlet_depth_wanted", reads=BEFORE_OUTLET)
def outlet_depth_wanted(answered: Answered, context: Context) -> bool:
    """The outlet's depth is not on record, and to feel for it could still turn the verdict."""
    return "outlet_depth" in _could_turn_the_verdict(answered, context)


@predicate("crust_hangs_wanted", reads=BEFORE_CRUST)
def crust_hangs_wanted(answered: Answered, context: Context) -> bool:
    """How deep the crust hangs was reckoned, and to feel for its underside could still turn the verdict."""
    return "scum_below" not in answered and "scum_below" in _could_turn_the_verdict(answered, context)


@predicate("crust_stands_wanted", reads=(*BEFORE_CRUST, "crust_hangs"))
def crust_stands_wanted(answered: Answered, context: Context) -> bool:
    """How high the crust stands was reckoned, and to read its top could still turn the verdict."""
    return "scum_above" not in answered and "scum_above" in _could_turn_the_verdict(answered, context)


@predicate("crust_part_wanted", reads=BEFORE_CRUST)
def crust_part_wanted(answered: Answered, context: Context) -> bool:
    """Either part of the crust was reckoned, and to read it could still turn the verdict."""
    return crust_hangs_wanted(answered, context) or crust_stands_wanted(answered, context)


@predicate("filter_may_matter", reads=("level", "which_tank"))
def filter_may_matter(answered: Answered, context: Context) -> bool:
    """A filter is fitted, or the water stands high and one may be the cause."""
    fitted = tank_of(context, answered).filter
    return bool(fitted) or (fitted is None and answered.chosen("level", "above_outlet"))


@predicate("called_anyway", reads=(*FACTS, *SIGNS))
def called_anyway(answered: Answered, context: Context) -> bool:
    """What was seen, smelled or told calls somebody, whatever the readings will be."""
    from selfcheck.domain.judging import called_anyway
    from selfcheck.interview.septic_drafted import drafted, without_readings

    def called() -> bool:
        case, tank = drafted(answered, context)
        return called_anyway(without_readings(case), tank)

    return _once(context, "called", called)


def _could_turn_the_verdict(answered: Answered, context: Context) -> tuple[str, ...]:
    """Ids of the better readings that could, by the layers alone; none before there is sludge read to go by."""
    from selfcheck.domain.judging import worth_reading
    from selfcheck.interview.septic_drafted import drafted, readings_alone

    def worth() -> tuple[str, ...]:
        case, tank = drafted(answered, context)
        return worth_reading(readings_alone(case), tank)

    if answered.number("sludge_1") is None or rules_of(context) is None:
        return ()
    return _once(context, "worth", worth)


#: what was found of a draft, as long as it lives: several conditions ask for the same in one go
_found: WeakKeyDictionary[Callable[..., object], dict[str, Any]] = WeakKeyDictionary()


def _once(context: Context, what: str, work: Callable[[], Found]) -> Found:
    known = _found.setdefault(context.draft, {})
    if what not in known:
        known[what] = work()
    found: Found = known[what]
    return found
