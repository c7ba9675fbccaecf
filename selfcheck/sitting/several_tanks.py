"""A conversation about a tank that is not the first of the record: what it told is put where it belongs."""

from __future__ import annotations

import copy
from typing import TYPE_CHECKING, Any

from selfcheck.interview.context import Answered
from selfcheck.interview.septic_record import tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Tank
    from selfcheck.interview.dialogue import Conversation

ONE_TANK = ("check", "pump_out")


def of_its_tank(draft: dict[str, Any], conversation: Conversation) -> dict[str, Any]:
    """The draft with the tank it is about named in it.

    A conversation writes facts of the tank it is about to the first tank of the record; where another one was chosen,
    what changed there is moved to that one.
    """
    answered = Answered()
    answered.update({answer.question: answer for answer in conversation.answers})
    about = tank_of(conversation.context, answered)
    moved = {name: {"tank": about.id, **part} if name in ONE_TANK else part for name, part in draft.items()}
    household = moved.get("household")
    known: list[Tank] = list(getattr(conversation.context.household, "tanks", ()))
    place = next((number for number, tank in enumerate(known) if tank.id == about.id), 0)
    if place == 0 or not household or len(household.get("tanks") or []) <= place:
        return moved
    tanks = copy.deepcopy(household["tanks"])
    before = known[0].model_dump(mode="json", by_alias=True)
    changed = {name: value for name, value in tanks[0].items() if value != before.get(name)}
    tanks[0], tanks[place] = before, {**tanks[place], **changed}
    return {**moved, "household": {**household, "tanks": tanks}}
