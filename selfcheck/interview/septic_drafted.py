"""The record as it would stand if the conversation ended here: what a condition on the verdict looks at."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time

from selfcheck.domain.check import Readings, Seen
from selfcheck.domain.household import Tank
from selfcheck.domain.verdict import Case
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.septic_finishing import make_check, make_household, make_pump_out
from selfcheck.interview.septic_record import household_of
from selfcheck.interview.septic_told import told


def drafted(answered: Answered, context: Context) -> tuple[Case, Tank]:
    """What would be judged, and the tank that the conversation is about."""
    draft, before, today = told(context, answered), household_of(context), context.today
    household, _ = make_household(draft.get("household", {}), before, before, today)
    at = datetime.combine(today, time(), UTC)
    check, _ = make_check({"tank": before.tank().id, **draft.get("check", {})}, (), today, at, "")
    pump_out, _ = make_pump_out({"tank": before.tank().id, **draft.get("pump_out", {})})
    pump_outs = [*context.pump_outs, *([pump_out] if pump_out is not None else [])]
    checks = [*context.checks, check]
    case = Case(household, checks, pump_outs, context.rule_sets, context.signs(), today, context.rules)
    return case, next((one for one in household.tanks if one.id == check.tank), household.tank())


def without_readings(case: Case) -> Case:
    """The same record, where nobody has measured anything in the check under way."""
    *before, check = case.checks
    seen = check.seen.model_copy(update={"readings": Readings(), "second_compartment": None})
    return replace(case, checks=[*before, check.model_copy(update={"seen": seen})])


def readings_alone(case: Case) -> Case:
    """The same record, where nothing but the layers was looked at in the check under way."""
    *before, check = case.checks
    layers = ("readings", "second_compartment", "level", "surface")
    seen = Seen().model_copy(update={name: getattr(check.seen, name) for name in layers})
    return replace(case, checks=[*before, check.model_copy(update={"seen": seen, "hazards": []})])
