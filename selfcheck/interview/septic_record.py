"""The household, its tank and its people, as the context has them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context

WHICH = "which_tank"

if TYPE_CHECKING:
    from selfcheck.domain.household import Household, Occupancy, Tank
    from selfcheck.domain.limits import RuleSet


def household_of(context: Context) -> Household:
    """The household on record; one of which nothing is known when there is none."""
    from selfcheck.domain.household import Household

    if context.household is None:
        return Household()
    known = context.household
    return known if isinstance(known, Household) else Household.model_validate(known)


def rules_of(context: Context) -> RuleSet | None:
    """The rule set that decides: the one asked for at the start, else the household's; None where it is not there."""
    known: RuleSet | None = context.rule_sets.get(context.rules or household_of(context).rules)
    return known


def tanks_in_order(household: Household) -> list[Tank]:
    """The tanks on record, the one that the house drains into first."""
    return sorted(household.tanks, key=lambda one: one.follows is not None)


def tank_of(context: Context, answered: Answered | None = None) -> Tank:
    """The tank that the conversation is about: the second one where that was chosen, else the first."""
    household = household_of(context)
    if answered is not None and answered.chosen(WHICH, "second"):
        tanks = tanks_in_order(household)
        return tanks[1] if len(tanks) > 1 else household.tank()
    tanks = tanks_in_order(household)
    return tanks[0] if tanks else household.tank()


def occupancy_of(context: Context) -> list[Occupancy]:
    """Who lived there, oldest first."""
    return sorted(household_of(context).occupancy, key=lambda one: one.from_)
