"""From the record, or a conversation under way, to the picture of the tank."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from selfcheck.drawing.section import SectionPicture, describe

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.domain.household import Household
    from selfcheck.domain.layers import Layers
    from selfcheck.domain.limits import RuleSet


def picture_of(
    household: Household,
    checks: list[Check],
    draft: Mapping[str, Any] | None = None,
    rules: RuleSet | None = None,
) -> SectionPicture:
    """The tank with the layers of `draft`, the last check's beside it; without a draft the last check's layers.

    `draft` as `Conversation.draft` gives it. A draft that does not yet make a whole record counts as not known.
    """
    from selfcheck.domain.check import standing
    from selfcheck.domain.limits import stand
    from selfcheck.domain.shapes import vessel as vessel_of

    done = standing(checks)
    if draft is not None:
        household = _with(household, draft.get("household", {}))
    tank = household.tank()
    vessel = vessel_of(tank, household.bedrooms)
    done = [check for check in done if check.tank == tank.id]
    if draft is None:
        now = _layers(household, done[-1]) if done else None
        last = _layers(household, done[-2]) if len(done) > 1 else None
    else:
        now = _layers_of_draft(household, draft.get("check", {}))
        last = _layers(household, done[-1]) if done else None
    standings = stand(rules, now, vessel) if rules is not None and now is not None else ()
    return describe(vessel, now, standings, last)


def _layers(household: Household, check: Check) -> Layers:
    from selfcheck.domain.layers import layers
    from selfcheck.domain.shapes import vessel

    tank = household.tank(check.tank)
    return layers(tank, vessel(tank, household.bedrooms), check.seen.readings)


def _layers_of_draft(household: Household, draft: Mapping[str, Any]) -> Layers | None:
    from pydantic import ValidationError

    from selfcheck.domain.check import Readings
    from selfcheck.domain.layers import layers
    from selfcheck.domain.shapes import vessel

    tank = household.tank()
    try:
        readings = Readings.model_validate(draft.get("seen", {}).get("readings", {}))
    except ValidationError:
        return None
    return layers(tank, vessel(tank, household.bedrooms), readings)


def _with(household: Household, changes: Mapping[str, Any]) -> Household:
    from pydantic import ValidationError

    if not changes:
        return household
    try:
        return household.model_validate({**household.model_dump(by_alias=True), **changes})
    except ValidationError:
        return household
