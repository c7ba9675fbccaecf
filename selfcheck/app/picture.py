"""From the record, or a conversation under way, to the picture of the tank."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from selfcheck.drawing.section import SectionPicture, SectionWords, describe

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.domain.household import Household, Tank
    from selfcheck.domain.layers import Layers
    from selfcheck.domain.limits import RuleSet
    from selfcheck.domain.shapes import Vessel


def of_record(
    household: Household, checks: Sequence[Check], rules: RuleSet | None, words: Mapping[str, str]
) -> SectionPicture:
    """The tank as last seen, with the marks of the check before."""
    tank, vessel, done = _tank(household, checks)
    now = _layers(tank, vessel, done[-1]) if done else None
    last = _layers(tank, vessel, done[-2]) if len(done) > 1 else None
    return _describe(vessel, now, last, rules, words)


def of_draft(
    household: Household,
    checks: Sequence[Check],
    draft: Mapping[str, Any],
    rules: RuleSet | None,
    words: Mapping[str, str],
) -> SectionPicture:
    """The tank as a conversation under way has it so far, with the marks of the last check.

    `draft` as `Conversation.draft` gives it. A part that does not yet make a whole record counts as not known.
    """
    from pydantic import ValidationError

    from selfcheck.domain.check import Readings
    from selfcheck.domain.layers import layers

    household = _with(household, draft.get("household", {}))
    tank, vessel, done = _tank(household, checks)
    last = _layers(tank, vessel, done[-1]) if done else None
    try:
        readings = Readings.model_validate(draft.get("check", {}).get("seen", {}).get("readings", {}))
    except ValidationError:
        readings = Readings()
    return _describe(vessel, layers(tank, vessel, readings), last, rules, words)


def _tank(household: Household, checks: Sequence[Check]) -> tuple[Tank, Vessel, list[Check]]:
    from selfcheck.domain.check import standing
    from selfcheck.domain.shapes import vessel

    tank = household.tank()
    done = [check for check in standing(list(checks)) if check.tank == tank.id]
    return tank, vessel(tank, household.bedrooms), done


def _layers(tank: Tank, vessel: Vessel, check: Check) -> Layers:
    from selfcheck.domain.layers import layers

    return layers(tank, vessel, check.seen.readings)


def _describe(
    vessel: Vessel, now: Layers | None, last: Layers | None, rules: RuleSet | None, words: Mapping[str, str]
) -> SectionPicture:
    from selfcheck.domain.limits import stand

    standings = stand(rules, now, vessel) if rules is not None and now is not None else ()
    return describe(vessel, now, standings, last, SectionWords(**words))


def _with(household: Household, changes: Mapping[str, Any]) -> Household:
    from pydantic import ValidationError

    if not changes:
        return household
    try:
        return household.model_validate({**household.model_dump(by_alias=True), **changes})
    except ValidationError:
        return household
