"""The household, its tank and its people, as the context has them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Context

if TYPE_CHECKING:
    from selfcheck.domain.household import Household, Occupancy, Tank


def household_of(context: Context) -> Household:
    """The household on record; one of which nothing is known when there is none."""
    from selfcheck.domain.household import Household

    if context.household is None:
        return Household()
    known = context.household
    return known if isinstance(known, Household) else Household.model_validate(known)


def tank_of(context: Context) -> Tank:
    """The tank that the conversation is about."""
    return household_of(context).tank()


def occupancy_of(context: Context) -> list[Occupancy]:
    """Who lived there, oldest first."""
    return sorted(household_of(context).occupancy, key=lambda one: one.from_)
