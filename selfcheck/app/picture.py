"""From the record, or a conversation under way, to the picture of the tank."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from functools import lru_cache
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
    """The tank as the check under way has it; where a conversation reads no layers, as the record has it."""
    household, checks = sitting.household, sitting.checks
    several = len(household.tanks) > 1
    if conversation is None or not _reads(conversation):
        judged = sitting.judgement() if checks else None
        tank = judged.tank.id if several and judged is not None and judged.tank in household.tanks else None
        rules = judged.rules if judged is not None else None
        return of_record(household, checks, sitting.pump_outs, rules, words, tank)
    rules = conversation.context.rule_sets.get(sitting.rules or household.rules)
    if not several:
        return of_draft(household, checks, conversation.draft(), rules, words)
    from selfcheck.interview.septic_told import told_by
    from selfcheck.sitting.several_tanks import tank_told_of

    return of_draft(household, checks, told_by(conversation), rules, words, tank_told_of(conversation).id)


def of_record(
    household: Household,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    rules: RuleSet | None,
    words: Mapping[str, str],
    ident: str | None = None,
) -> SectionPicture:
    """The tank as it was last measured, with the marks of the time before; not known when it was pumped out since.

    The day is told where a later check read nothing. `ident`: which tank; None for the first.
    """
    tank, vessel = _tank(household, ident)
    read = _last_read(tank, vessel, checks)
    emptied = max((one.on for one in pump_outs if one.tank == tank.id), default=None)
    if read and emptied is not None and emptied >= read[0][0].on:
        return _describe(vessel, None, read[0][1], rules, words, tank)
    now = read[0][1] if read else None
    last = read[1][1] if len(read) > 1 else None
    behind = read[0][0].seen.second_compartment if read else None
    newest = next((one for one in reversed(_standing(_Same(checks))) if one.tank == tank.id), None)
    then = read[0][0].on if read and newest is not None and newest.id != read[0][0].id else None
    return _describe(vessel, now, last, rules, words, tank, behind, then)


def _reads(conversation: Conversation) -> bool:
    """Whether a conversation is a check that reads layers: in trouble the tank is never opened."""
    flow = conversation.script.flow
    return flow.records[:1] == ("check",) and flow.id != "trouble"


def of_draft(
    household: Household,
    checks: Sequence[Check],
    draft: Mapping[str, Any],
    rules: RuleSet | None,
    words: Mapping[str, str],
    ident: str | None = None,
) -> SectionPicture:
    """The tank as a conversation under way has it so far, with the marks of the last check.

    `draft` as `Conversation.draft` gives it. A part that does not yet make a whole record counts as not known.
    """
    from pydantic import ValidationError

    from selfcheck.domain.check import Readings
    from selfcheck.domain.layers import layers

    household = _with(household, draft.get("household", {}))
    tank, vessel = _tank(household, ident)
    last = next((found for _, found in _last_read(tank, vessel, checks)), None)
    try:
        readings = Readings.model_validate(draft.get("check", {}).get("seen", {}).get("readings", {}))
    except ValidationError:
        readings = Readings()
    return _describe(vessel, layers(tank, vessel, readings), last, rules, words, tank)


def _tank(household: Household, ident: str | None) -> tuple[Tank, Vessel]:
    from selfcheck.domain.shapes import vessel

    tank = household.tank(ident)
    return tank, vessel(tank, household.bedrooms)


def _last_read(tank: Tank, vessel: Vessel, checks: Sequence[Check]) -> list[tuple[Check, Layers]]:
    """The last two checks that read a layer of this tank, the newest first."""
    from selfcheck.domain.layers import layers

    found: list[tuple[Check, Layers]] = []
    for check in reversed(_standing(_Same(checks))):
        if check.tank != tank.id:
            continue
        read = layers(tank, vessel, check.seen.readings)
        if read.sludge is not None or read.scum is not None:
            found.append((check, read))
        if len(found) == 2:
            break
    return found


class _Same:
    """A list that counts as another only when it is another object: a long one is then sorted once."""

    def __init__(self, checks: Sequence[Check]) -> None:
        self.checks = checks

    def __hash__(self) -> int:
        return id(self.checks)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.checks is self.checks


@lru_cache(maxsize=2)
def _standing(same: _Same) -> list[Check]:
    from selfcheck.domain.check import standing

    return standing(list(same.checks))


def _describe(
    vessel: Vessel,
    now: Layers | None,
    last: Layers | None,
    rules: RuleSet | None,
    words: Mapping[str, str],
    tank: Tank,
    behind: Readings | None = None,
    then: date | None = None,
) -> SectionPicture:
    """`behind`: what was read in the second compartment, through its own opening; `then`: the day to tell."""
    from selfcheck.domain.layers import layers
    from selfcheck.domain.limits import stand

    standings = stand(rules, now, vessel) if rules is not None and now is not None else ()
    second = layers(tank, vessel, behind) if behind is not None else None
    return describe(vessel, now, standings, last, SectionWords(**words), tank=tank, second_layers=second, read_on=then)


def _with(household: Household, changes: Mapping[str, Any]) -> Household:
    from pydantic import ValidationError

    if not changes:
        return household
    try:
        return household.model_validate({**household.model_dump(by_alias=True), **changes})
    except ValidationError:
        return household
