"""A record of several tanks: which one is asked about, and what was told is put to that one."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from selfcheck.interview.collect import collect
from selfcheck.interview.septic_record import WHICH, household_of, tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Household, Tank
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script

ONE_TANK = ("check", "pump_out")


def offering(asked: Script, household: Household) -> Script:
    """The conversation with as many tanks to choose from as there are on record."""
    many = len(household.tanks)
    if WHICH not in asked.nodes or many >= len(asked.nodes[WHICH].options):
        return asked
    sections = tuple(
        replace(
            section,
            nodes=tuple(
                replace(node, options=node.options[:many]) if node.id == WHICH else node for node in section.nodes
            ),
        )
        for section in asked.flow.sections
    )
    return replace(asked, flow=replace(asked.flow, sections=sections))


def tank_told_of(conversation: Conversation) -> Tank:
    """The tank that a conversation is about."""
    return tank_of(conversation.context, conversation.state.answered)


def told(conversation: Conversation) -> dict[str, Any]:
    """What a conversation collected, with the tank it is about named in it, and that tank's facts put to that tank.

    A flow writes facts of the tank it is about as if that were the first one of the record.
    """
    about, household = tank_told_of(conversation), household_of(conversation.context)
    place = place_of(household, about.id)
    context = replace(conversation.context, household=with_first(household, place)) if place else conversation.context
    draft = collect(conversation.script, context, conversation.state.answered)
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
