"""What a record tells of one tank as of a day: which checks and pump-outs count, and what is expected of it."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from selfcheck.domain.check import Check, PumpOut, standing
from selfcheck.domain.findings import Finding
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.gaps import wrong_dates
from selfcheck.domain.history import counted
from selfcheck.domain.household import Tank, can_be
from selfcheck.domain.limits import RuleSet
from selfcheck.domain.pump_visit import Spoken, spoken
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.domain.verdict import DEFAULT_RULES, Case


class Told(NamedTuple):
    """One tank's part of a record.

    `checks`: those that stand, oldest first, and `emptied`: its pump-outs, both up to the day. `last`: day of the last
    pump-out. `record`: which check speaks. `pumped_since`: the layers of that check are gone. `ahead`: the forecast
    before today's readings are weighed. `rules_known`: whether the rule set asked for is there.
    """

    case: Case
    tank: Tank
    body: Vessel
    rules: RuleSet
    rules_known: bool
    checks: list[Check]
    emptied: list[PumpOut]
    last: date | None
    record: Spoken
    pumped_since: bool
    ahead: Forecast
    wrong_dates: list[Finding]

    @property
    def check(self) -> Check | None:
        """The check that speaks, with what was seen at a pump-out since; None where there is none."""
        return self.record.check


def tell(case: Case, tank: Tank) -> Told:
    """What the record tells of a tank as of `case.today`. What cannot be is left out and named in `wrong_dates`."""
    household, today = case.household, case.today
    rules, known = _rules(case)
    mine = standing([one for one in case.checks if one.tank == tank.id])
    checks = [one for one in mine if can_be(one.on) and one.on <= today]
    pump_outs = [one for one in case.pump_outs if one.tank == tank.id]
    emptied = counted(case.pump_outs, tank.id, today)
    last = emptied[-1].on if emptied else None
    record = spoken(checks, emptied)
    check = record.check
    body = vessel(tank, household.bedrooms, _full_depth(check))
    return Told(
        case=case,
        tank=tank,
        body=body,
        rules=rules,
        rules_known=known,
        checks=checks,
        emptied=emptied,
        last=last,
        record=record,
        pumped_since=check is not None and last is not None and (not record.whole or _pumped_after(check, last)),
        ahead=forecast(household, tank, body, checks, case.pump_outs, today),
        wrong_dates=wrong_dates(mine, pump_outs, household.occupancy, today),
    )


def _rules(case: Case) -> tuple[RuleSet, bool]:
    """The rule set that decides, and whether it is the one asked for."""
    wanted = case.rules or case.household.rules
    if wanted in case.rule_sets:
        return case.rule_sets[wanted], True
    return case.rule_sets[DEFAULT_RULES], False


def _pumped_after(check: Check, last: date) -> bool:
    """Whether the pump-out came after the check. On the same day it did, unless the tank was found partly empty."""
    return last > check.on or (last == check.on and check.seen.level != "below_outlet")


def _full_depth(check: Check | None) -> float | None:
    """The wet line of a tank seen to stand at its outlet: what full means, where no fact says so."""
    if check is None or check.seen.level != "at_outlet" or not check.seen.readings.liquid_depth:
        return None
    return min(one.m for one in check.seen.readings.liquid_depth)
