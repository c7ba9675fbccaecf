"""What if? The same tank with something changed in the household, both sets of dates side by side.

Nothing here touches a record. A change of people, habits or rule set is judged like the record itself, so that the
dates are those of the verdict page. A tank of another size, or a pump-out, starts from an empty tank: then both sides
are counted from a pump-out on the day of asking.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from selfcheck.domain.findings import Dates
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.history import living_from
from selfcheck.domain.household import Disposal, Household, Tank
from selfcheck.domain.judging import judge
from selfcheck.domain.limits import RuleSet
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.domain.unjudged import has_no_figure
from selfcheck.domain.verdict import Case, Judgement, RuleRow


@dataclass(frozen=True, slots=True)
class Change:
    """What is changed from today on; None stays as it is.

    `tank_m3`: a tank of another volume [m³]. `rules`: id of a rule set. `residue_m`: pumped today, with this depth of
    sludge left on the floor [m].
    """

    people: float | None = None
    months_per_year: float | None = None
    disposal: Disposal | None = None
    tank_m3: float | None = None
    rules: str | None = None
    residue_m: float | None = None

    @property
    def starts_empty(self) -> bool:
        """Whether both sides are counted from a pump-out today."""
        return self.tank_m3 is not None or self.residue_m is not None

    @property
    def nothing(self) -> bool:
        """Whether all stays as it is."""
        return self == Change()


@dataclass(frozen=True, slots=True)
class Ahead:
    """One side: by which rule set, when its first limit is reached, and when to look again.

    `no_figure`: one of its limits goes by a table that does not reach the tank, so that `due` rests on the others.
    """

    rules: RuleSet
    due: Dates
    look: date
    no_figure: bool = False


@dataclass(frozen=True, slots=True)
class Compared:
    """As it is, and with the change."""

    change: Change
    now: Ahead
    then: Ahead

    @property
    def months_later(self) -> float | None:
        """By how many months the middle date moves out; below 0 it comes sooner. None when either is out of sight."""
        if self.now.due.p50 is None or self.then.due.p50 is None:
            return None
        return (self.then.due.p50 - self.now.due.p50).days / 30.4375


def compare(case: Case, change: Change) -> Compared:
    """Both sides for the tank that the verdict is about. KeyError: a rule set that is not in the case."""
    now = judge(case)
    rules = now.rules if change.rules is None else case.rule_sets[change.rules]
    if change.starts_empty:
        return Compared(change, _empty(now.forecast, now.rules, Change()), _empty(now.forecast, rules, change))
    household = with_people(case.household, now.forecast, change)
    then = _same_tank(judge(replace(case, household=household, rules=rules.id)), now.tank.id)
    sides = (Ahead(one.rules, one.due, one.look_again, _no_figure(one.rules, one.vessel)) for one in (now, then))
    return Compared(change, *sides)


def with_people(household: Household, ahead: Forecast, change: Change) -> Household:
    """The household as it would be from today on; the years before stay as they were."""
    if change.people is None and change.months_per_year is None and change.disposal is None:
        return household
    changed = living_from(
        ahead.occupancy,
        ahead.people,
        ahead.today,
        people=change.people,
        months_per_year=change.months_per_year,
        disposal=change.disposal,
    )
    return household.model_copy(update={"occupancy": list(changed)})


def each_limit(case: Case, judgement: Judgement) -> tuple[RuleRow, ...]:
    """The deciding rule set taken apart: one row for each of its limits, with dates made as those of the whole."""
    own = judgement.rules
    single = {
        f"{own.id} {place}": replace(own, id=f"{own.id} {place}", limits=(limit,))
        for place, limit in enumerate(own.limits, 1)
    }
    known = {**case.rule_sets, own.id: own, **single}
    found = _same_tank(judge(replace(case, rule_sets=known, rules=own.id)), judgement.tank.id)
    return tuple(row for row in found.by_rule_set if row.rule_set.id in single)


def _empty(ahead: Forecast, rules: RuleSet, change: Change) -> Ahead:
    tank: Tank | None = None
    if change.tank_m3 is not None:
        depth = ahead.vessel.liquid_depth_m
        tank = Tank(id=ahead.tank.id, volume_m3=change.tank_m3, liquid_depth_m=depth)
    then = ahead.what_if(
        people=change.people,
        months_per_year=change.months_per_year,
        disposal=change.disposal,
        tank=tank,
        vessel=None if tank is None else vessel(tank),
        pumped_on=ahead.today,
        residue_m=change.residue_m or 0.0,
    )
    no_figure = _no_figure(rules, then.vessel)
    return Ahead(rules, then.due(rules.limits), then.look_again(rules.limits)[0], no_figure)


def _no_figure(rules: RuleSet, body: Vessel) -> bool:
    return any(has_no_figure(limit, body) for limit in rules.limits)


def _same_tank(judgement: Judgement, ident: str) -> Judgement:
    return next(one for one in (judgement, *judgement.others) if one.tank.id == ident)
