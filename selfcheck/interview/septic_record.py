"""The household, its tank and its people, as the context has them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill

WHICH = "which_tank"
#: the answers to `WHICH`, in the order of `tanks_in_order`
ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth")

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
    """The tanks on record, each behind the one that drains into it, the one that the house drains into first."""
    follows = {one.id: one.follows for one in household.tanks}

    def behind(ident: str | None) -> int:
        passed: set[str | None] = set()
        while ident is not None and ident not in passed and follows.get(ident) is not None:
            passed.add(ident)
            ident = follows[ident]
        return len(passed)

    return sorted(household.tanks, key=lambda one: behind(one.id))


def tank_of(context: Context, answered: Answered | None = None) -> Tank:
    """The tank that the conversation is about: the one that was chosen, else the first."""
    household = household_of(context)
    tanks = tanks_in_order(household)
    chosen = answered.value(WHICH) if answered is not None else None
    place = ORDINALS.index(chosen) if isinstance(chosen, str) and chosen in ORDINALS else 0
    return tanks[place] if place < len(tanks) else household.tank()


@fill("tanks_on_record")
def tanks_on_record(answered: Answered, context: Context) -> str | None:
    """The tanks in their order, by the names they have in the record."""
    return ", ".join(one.id for one in tanks_in_order(household_of(context))) or None


def occupancy_of(context: Context) -> list[Occupancy]:
    """Who lived there, oldest first."""
    return sorted(household_of(context).occupancy, key=lambda one: one.from_)
