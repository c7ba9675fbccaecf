"""Water meter readings that were told → the household's record."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from selfcheck.domain.conversions import FOOT, GALLON
from selfcheck.interview.answers import Answer

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.table import Sitting

NOW, BEFORE, BEFORE_ON = "meter_now", "meter_before", "meter_before_on"
#: Cubic metres in one unit of the meter, by the option of the question `meter_unit`.
UNITS = {"cubic_metres": 1.0, "gallons": GALLON, "cubic_feet": FOOT**3, "hundred_cubic_feet": 100.0 * FOOT**3}


def with_meter(draft: dict[str, Any], sitting: Sitting, conversation: Conversation) -> dict[str, Any]:
    """The draft with the readings that were told added to those on record. An earlier one needs its day."""
    told = {answer.question: answer for answer in conversation.answers if answer.state == "value"}
    unit = told.get("meter_unit")
    size = UNITS.get(str(unit.value)) if unit is not None else None
    if size is None:
        return draft
    fresh: list[dict[str, Any]] = []
    before, day = _amount(told.get(BEFORE), size), told.get(BEFORE_ON)
    if before is not None and day is not None and isinstance(day.value, date) and day.value < sitting.today:
        fresh.append({"on": day.value.isoformat(), "m3": before})
    now = _amount(told.get(NOW), size)
    if now is not None:
        fresh.append({"on": sitting.today.isoformat(), "m3": now})
    if not fresh:
        return draft
    household = draft.get("household") or sitting.household.model_dump(mode="json", by_alias=True)
    days = {one["on"] for one in fresh}
    known = [one for one in household.get("meter") or [] if one.get("on") not in days]
    meter = sorted([*known, *fresh], key=lambda one: str(one["on"]))
    return {**draft, "household": {**household, "meter": meter}}


def _amount(answer: Answer | None, size: float) -> float | None:
    value = answer.value if answer is not None else None
    return round(float(value) * size, 4) if isinstance(value, (int, float)) else None
