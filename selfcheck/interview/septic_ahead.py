"""Named conditions and fills of looking ahead: the rule set of the place, and the water meter."""

from __future__ import annotations

from datetime import date

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import household_of, rules_of


@fill("rules_here")
def rules_here(answered: Answered, context: Context) -> str | None:
    """The rule sets whose place is named in the household's region, the narrowest first."""
    from selfcheck.domain.places import fitting

    told = answered.get("region")
    region = told.value if told is not None and isinstance(told.value, str) else household_of(context).region
    found = fitting(context.rule_sets.values(), region or "")
    return "; ".join(one.title for one in found) or None


@fill("rule_own")
def rule_own(answered: Answered, context: Context) -> str | None:
    """The rule set that the household goes by."""
    known = rules_of(context)
    return known.title if known is not None else None


@predicate("meter_there", reads=("meter_unit",))
def meter_there(answered: Answered, context: Context) -> bool:
    """There is a water meter, and its unit is known."""
    return "meter_unit" in answered and not answered.chosen("meter_unit", "no_meter", "unknown", "skipped")


@predicate("meter_read", reads=("meter_now",))
def meter_read(answered: Answered, context: Context) -> bool:
    """The water meter was read."""
    return answered.number("meter_now") is not None


@predicate("meter_read_before", reads=("meter_before",))
def meter_read_before(answered: Answered, context: Context) -> bool:
    """An earlier reading is known, too."""
    return answered.number("meter_before") is not None


@predicate("meter_ran_back", reads=("meter_now", "meter_before"))
def meter_ran_back(answered: Answered, context: Context) -> bool:
    """The earlier reading is the bigger one."""
    now, before = answered.number("meter_now"), answered.number("meter_before")
    return now is not None and before is not None and before > now


@predicate("meter_day_ahead", reads=("meter_before_on",))
def meter_day_ahead(answered: Answered, context: Context) -> bool:
    """The earlier reading is dated today or later."""
    told = answered.get("meter_before_on")
    return told is not None and isinstance(told.value, date) and told.value >= context.today
