"""A look at every file of a household folder: what is wrong with it and how to mend it. Touches nothing."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from selfcheck.domain.check import Check, PumpOut
from selfcheck.errors import RecordProblem
from selfcheck.storage import journal
from selfcheck.storage.folder import Folder, read
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, OPEN, PUMP_OUTS
from selfcheck.storage.lock import LOCK
from selfcheck.storage.odd_values import before_the_household, days_ahead, odd_values
from selfcheck.storage.writing import EARLIER, PART

_OURS = {HOUSEHOLD, CHECKS, PUMP_OUTS, OPEN, EARLIER, LOCK}


@dataclass(frozen=True)
class Examined:
    """What was found: how much could be read, what is wrong, and what is only worth knowing."""

    checks: int
    pump_outs: int
    open_checks: int
    problems: tuple[RecordProblem, ...]
    notes: tuple[str, ...]


def examine(folder: Path, today: date) -> Examined:
    """Read everything in `folder` and say what is wrong. Raises FolderProblem when it is no household folder."""
    found = read(folder)
    opened, damaged = journal.find(folder)
    problems = [*found.problems, *damaged, *(problem for one in opened for problem in one.problems)]
    problems += _odd_chains(found.checks, CHECKS)
    problems += _odd_chains((*found.pump_outs, *found.mended_pump_outs), PUMP_OUTS) + odd_values(found)
    notes = _loose_files(folder) + _odd_days(found, today) + before_the_household(found) + _strangers(found)
    return Examined(len(found.checks), len(found.pump_outs), len(opened), tuple(problems), tuple(notes))


def _odd_chains(checks: Sequence[Check | PumpOut], part: str) -> list[RecordProblem]:
    """Corrections that point nowhere, at themselves or in a ring."""
    by_id = {check.id: check for check in checks}
    problems = []
    for check in checks:
        name = f"{part}/{check.id}.json"
        if check.replaces is None:
            continue
        if check.replaces not in by_id:
            what = f'it replaces "{check.replaces}", which is not there.'
            problems.append(RecordProblem(name, what, "Put that check back, or mend the id."))
            continue
        seen = {check.id}
        before: Check | PumpOut | None = by_id[check.replaces]
        while before is not None and before.id not in seen:
            seen.add(before.id)
            before = by_id.get(before.replaces or "")
        if before is not None and before.id == check.id:
            what = "it ends up replacing itself, so that neither counts."
            problems.append(RecordProblem(name, what, 'Take "replaces" out of the first of them.'))
    return problems


def _loose_files(folder: Path) -> list[str]:
    notes = []
    for name in sorted(os.listdir(folder)):
        if name not in _OURS and not name.endswith(PART):
            notes.append(f"{name}: not part of the record; it is left alone.")
    for part in (".", CHECKS, PUMP_OUTS, EARLIER):
        inside = folder / part
        names = sorted(os.listdir(inside)) if inside.is_dir() else []
        for name in names:
            where = (Path(part) / name).as_posix()
            if name.endswith(PART):
                notes.append(f"{where}: left over from a save that was cut short; it can be taken away.")
            elif part != "." and not name.endswith(".json"):
                notes.append(f"{where}: its name does not end in .json, so it is not read.")
    return notes


def _odd_days(found: Folder, today: date) -> list[str]:
    notes = days_ahead(found.household, today)
    notes += [f"{CHECKS}/{one.id}.json: its day lies after today." for one in found.checks if one.on > today]
    notes += [f"{PUMP_OUTS}: the pump-out of {one.on} lies after today." for one in found.pump_outs if one.on > today]
    for check in found.checks:
        if not check.id.startswith(check.on.isoformat()):
            notes.append(f"{CHECKS}/{check.id}.json: its name and its day, {check.on}, differ.")
    return notes


def _strangers(found: Folder) -> list[str]:
    """Records of a tank that the household does not have."""
    known = {tank.id for tank in found.household.tanks}
    if not known:
        return []
    named = {check.tank for check in found.checks} | {pump_out.tank for pump_out in found.pump_outs}
    tanks = sorted(named - known)
    return [f'{HOUSEHOLD}: there are records of a tank "{tank}", which it does not list.' for tank in tanks]
