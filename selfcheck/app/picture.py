"""From the record, or a conversation under way, to the picture of the tank."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from selfcheck.drawing.section import SectionPicture, SectionWords, describe

if TYPE_CHECKING:
    from selfcheck.domain.check import Check, PumpOut, Readings
    from selfcheck.domain.household import Household, Tank
    from selfcheck.domain.layers import Layers
    from selfcheck.domain.limits import RuleSet
    from selfcheck.domain.shapes import Vessel
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import Sitting


def of(sitting: Sitting, conversation: Conversation | None, words: Mapping[str, str]) -> SectionPicture:
    """The tank as the check under way has it; without one, and in other conversations, as the record has it."""
    household, checks = sitting.household, sitting.checks
    if conversation is None or conversation.script.flow.records[:1] != ("check",):
        judged = sitting.judgement() if checks else None
        return of_record(household, checks, sitting.pump_outs, judged.rules if judged is not None else None, words)
    rules = conversation.context.rule_sets.get(sitting.rules or household.rules)
    return of_draft(household, checks, conversation.draft(), rules, words)


def of_record(
    household: Household,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    rules: RuleSet | None,
    words: Mapping[str, str],
) -> SectionPicture:
    """The tank as it was last measured, with the marks of the time before; not known when it was pumped out since."""
    tank, vessel, done = _tank(household, checks)
    read = [(check.on, found) for check in done if _is_read(found := _layers(tank, vessel, check))]
    emptied = max((one.on for one in pump_outs if one.tank == tank.id), default=None)
    if read and emptied is not None and emptied >= read[-1][0]:
        return _describe(vessel, None, read[-1][1], rules, words, tank)
    now = read[-1][1] if read else None
    last = read[-2][1] if len(read) > 1 else None
    behind = next((check.seen.second_compartment for check in done if read and check.on == read[-1][0]), None)
    return _describe(vessel, now, last, rules, words, tank, behind)


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
    return _describe(vessel, layers(tank, vessel, readings), last, rules, words, tank)


def _tank(household: Household, checks: Sequence[Check]) -> tuple[Tank, Vessel, list[Check]]:
    from selfcheck.domain.check import standing
    from selfcheck.domain.shapes import vessel

    tank = household.tank()
    done = [check for check in standing(list(checks)) if check.tank == tank.id]
    return tank, vessel(tank, household.bedrooms), done


def _layers(tank: Tank, vessel: Vessel, check: Check) -> Layers:
    from selfcheck.domain.layers import layers

    return layers(tank, vessel, check.seen.readings)


def _is_read(found: Layers) -> bool:
    return found.sludge is not None or found.scum is not None


def _describe(
    vessel: Vessel,
    now: Layers | None,
    last: Layers | None,
    rules: RuleSet | None,
    words: Mapping[str, str],
    tank: Tank,
    behind: Readings | None = None,
) -> SectionPicture:
    """`behind`: what was read in the second compartment, through its own opening."""
    from selfcheck.domain.layers import layers
    from selfcheck.domain.limits import stand

    standings = stand(rules, now, vessel) if rules is not None and now is not None else ()
    second = layers(tank, vessel, behind) if behind is not None else None
    return describe(vessel, now, standings, last, SectionWords(**words), tank=tank, second_layers=second)


def _with(household: Household, changes: Mapping[str, Any]) -> Household:
    from pydantic import ValidationError

    if not changes:
        return household
    try:
        return household.model_validate({**household.model_dump(by_alias=True), **changes})
    except ValidationError:
        return household
