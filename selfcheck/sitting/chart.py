"""A maker's chart that was typed off → the form of the tank."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from selfcheck.domain.chart_text import read_chart
from selfcheck.interview.septic_record import household_of

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

ROWS = "chart_rows"


def with_chart(draft: dict[str, Any], conversation: Conversation) -> dict[str, Any]:
    """The draft with the chart as the form of the first tank; as it was where none was told that can be read."""
    told = conversation.state.answered.value(ROWS)
    read = read_chart(told, conversation.context.units) if isinstance(told, str) else None
    if read is None:
        return draft
    heights, volumes = read
    household = draft.get("household") or household_of(conversation.context).model_dump(mode="json", by_alias=True)
    first, *others = household.get("tanks") or [{}]
    shape = {"kind": "table", "heights_m": heights, "volumes_m3": volumes}
    return {**draft, "household": {**household, "tanks": [{**first, "shape": shape}, *others]}}
