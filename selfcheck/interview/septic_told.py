"""A record of several tanks: what was told is put to the one that the conversation is about.

A flow writes facts of the tank it is about as if that were the first one of the record.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from selfcheck.interview.collect import drafting
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.septic_record import household_of, tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Household
    from selfcheck.interview.dialogue import Conversation

ONE_TANK = ("check", "pump_out")


def told_by(conversation: Conversation) -> dict[str, Any]:
    """What a conversation collected so far, as `told` puts it."""
    answered = conversation.state.answered
    return told(drafting(conversation.script, conversation.context, answered), answered)


def told(context: Context, answered: Answered) -> dict[str, Any]:
    """The records that the answers make, with the tank they are about named in them, and its facts put to that tank."""
    about, household = tank_of(context, answered), household_of(context)
    place = place_of(household, about.id)
    draft = context.draft(with_first(household, place) if place else None)
    named = {name: {"tank": about.id, **part} if name in ONE_TANK else part for name, part in draft.items()}
    if place and "household" in named:
        named["household"] = put_back(named["household"], place)
    return named


def place_of(household: Household, ident: str) -> int:
    """The place of a tank in the record's list; 0 for one that is not there."""
    return next((place for place, one in enumerate(household.tanks) if one.id == ident), 0)


def with_first(household: Household, place: int) -> Household:
    """The household with the tank at a place moved to the head of the list, where flows write."""
    if not household.tanks:
        return household
    tanks = list(household.tanks)
    return household.model_copy(update={"tanks": [tanks.pop(place), *tanks]})


def put_back(household: dict[str, Any], place: int) -> dict[str, Any]:
    """The written household with the tank at the head moved back to its place."""
    first, *others = household["tanks"]
    return {**household, "tanks": [*others[:place], first, *others[place:]]}
