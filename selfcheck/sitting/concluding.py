"""A conversation that has come to its end → finished files."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from selfcheck.domain.check import Check
from selfcheck.errors import UsageProblem
from selfcheck.interview.collect import observed
from selfcheck.interview.septic_finishing import make_check, make_household, make_pump_out
from selfcheck.interview.septic_told import told_by
from selfcheck.sitting.keeping import Keeper
from selfcheck.sitting.water import with_meter
from selfcheck.storage.layout import HOUSEHOLD
from selfcheck.storage.writing import write_check, write_household, write_pump_out

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.table import Sitting


def conclude(sitting: Sitting, keeper: Keeper, conversation: Conversation) -> bool:
    """Write what a conversation collected, and take its journal away once all of it is on the disk.

    The sitting's record has it afterwards in any case; what could not be saved stands in the keeper's trouble, and the
    journal stays. True: a check was made. Raises UsageProblem when there is no conversation under way.
    """
    journal = keeper.journal
    if journal is None:
        raise UsageProblem("This conversation has been concluded already.", "Begin a new one.")
    records = conversation.script.flow.records
    draft = {name: part for name, part in told_by(conversation).items() if name in records}
    draft = with_meter(_seen_that_day(draft) if records[:1] == ("pump_out",) else draft, sitting, conversation)
    keeper.forget_trouble()
    saved = keeper.writes and journal.flush()
    if not keeper.writes:
        keeper.cannot("Nothing was saved: the folder cannot be written by this program.")
    if draft or records[:1] == ("check",):
        saved &= _finish_household(sitting, keeper, draft.get("household", {}))
    if "pump_out" in draft:
        saved &= _finish_pump_out(sitting, keeper, draft["pump_out"])
    made_check = records[:1] == ("check",) or any(draft.get("check", {}).get(name) for name in ("seen", "hazards"))
    if made_check:
        saved &= _finish_check(sitting, keeper, draft.get("check", {}), conversation)
    if saved and records:
        journal.remove()
    elif saved:
        journal.put_aside()
    keeper.leave_journal()
    return made_check


def keep_household(sitting: Sitting, keeper: Keeper, draft: dict[str, Any]) -> bool:
    """Write changed facts about the house by themselves. False: they are held in memory only."""
    keeper.forget_trouble()
    if not keeper.writes:
        keeper.cannot("Nothing was saved: the folder cannot be written by this program.")
    return _finish_household(sitting, keeper, draft) and keeper.writes


def keep_check(sitting: Sitting, keeper: Keeper, raw: dict[str, Any]) -> bool:
    """Write a check that no conversation stands behind. False: it is held in memory only."""
    keeper.forget_trouble()
    if not keeper.writes:
        keeper.cannot("Nothing was saved: the folder cannot be written by this program.")
    check = Check.model_validate({"id": "", "on": sitting.today, "recorded_at": sitting.clock(), **raw})
    written: list[Check] = []
    saved = keeper.save(lambda: written.append(write_check(sitting.folder, check)))
    sitting.hold(checks=(*sitting.checks, written[0] if written else check))
    return saved


def _seen_that_day(draft: dict[str, Any]) -> dict[str, Any]:
    """What the empty tank showed was seen on the day it was pumped; a danger told is one of the day it is told."""
    check, day = draft.get("check", {}), draft.get("pump_out", {}).get("on")
    return {**draft, "check": {"on": day, **check}} if check and day and not check.get("hazards") else draft


def _finish_household(sitting: Sitting, keeper: Keeper, draft: dict[str, Any]) -> bool:
    """Write the facts about the house where they changed, and in a new folder where there are none yet."""
    household, left_out = make_household(draft, sitting.began_with, sitting.household, sitting.today)
    _name_left_out(keeper, left_out)
    if household == sitting.household and (sitting.folder / HOUSEHOLD).exists():
        return True
    sitting.hold(household=household)
    if not sitting.household_read:
        keeper.cannot("household.json is damaged and was left as it is: the new facts are not in it.")
        return False
    return keeper.save(lambda: write_household(sitting.folder, household, sitting.today))


def _finish_pump_out(sitting: Sitting, keeper: Keeper, draft: dict[str, Any]) -> bool:
    pump_out, left_out = make_pump_out({"tank": sitting.household.tank().id, **draft})
    _name_left_out(keeper, left_out)
    known = [one.model_copy(update={"id": ""}) for one in sitting.pump_outs]
    if pump_out is None or pump_out in known:
        return True
    written: list[str] = []
    saved = keeper.save(lambda: written.append(write_pump_out(sitting.folder, pump_out)))
    fresh = pump_out.model_copy(update={"id": written[0]}) if written else pump_out
    sitting.hold(pump_outs=tuple(sorted((*sitting.pump_outs, fresh), key=lambda one: one.on)))
    return saved


def _finish_check(sitting: Sitting, keeper: Keeper, draft: dict[str, Any], conversation: Conversation) -> bool:
    assert keeper.journal is not None
    header = keeper.journal.header
    check, left_out = make_check(
        {"tank": sitting.household.tank().id, **draft},
        observed(conversation.script, conversation.state.answered, conversation.answers, sitting.today),
        _day(header.about.get("day")) or sitting.today,
        sitting.clock(),
        header.sitting,
        header.about.get("replaces"),
    )
    _name_left_out(keeper, left_out)
    written: list[Check] = []
    saved = keeper.save(lambda: written.append(write_check(sitting.folder, check)))
    sitting.hold(checks=(*sitting.checks, written[0] if written else check))
    return saved


def _name_left_out(keeper: Keeper, paths: list[str]) -> None:
    """Say in a person's words what no record can hold, such as 40 months a year."""
    if paths:
        names = [path.rpartition(".")[2].removesuffix("_m").removesuffix("_m3").replace("_", " ") for path in paths]
        keeper.cannot(f"This was left out, since it cannot be so: {', '.join(dict.fromkeys(names))}.")


def _day(text: Any) -> date | None:
    try:
        return date.fromisoformat(text)
    except (TypeError, ValueError):
        return None
