"""A record of several tanks: which one is asked about."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview.septic_record import WHICH, tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Household, Tank
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script


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
