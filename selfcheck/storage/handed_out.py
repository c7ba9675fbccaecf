"""Files that are made for somebody: a page, a calendar, a table, an archive. Whole, or not there at all."""

from __future__ import annotations

import os
from pathlib import Path

from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.storage.folder import CHECKS, HOUSEHOLD, OPEN, PUMP_OUTS
from selfcheck.storage.lock import LOCK
from selfcheck.storage.writing import EARLIER, sync_folder, temporary, write_new


def hand_out(target: Path, data: bytes, *, replace: bool = False, record: Path | None = None) -> None:
    """Write a file in one step. One that is there already stays, unless it may be replaced.

    `record`: the household folder, whose own files are never written over. Raises UsageProblem for a target that is
    taken, and FolderProblem when it cannot be saved; nothing is left half written then.
    """
    if record is not None and _belongs_to(target, record):
        raise UsageProblem(f"{target} belongs to the record itself.", "Name another file.")
    if target.is_dir():
        raise UsageProblem(f"{target} is a folder.", "Name a file in it.")
    if os.path.lexists(target) and not replace:
        raise UsageProblem(f"{target} is there already. It was left as it is.", "Name another file, or add --replace.")
    if not target.parent.is_dir():
        raise UsageProblem(f"There is no folder {target.parent}.", "Make it first, or name another place.")
    try:
        if not replace:
            if not write_new(target, data):
                raise UsageProblem(f"{target} is there already. It was left as it is.", "Name another file.")
            return
        with temporary(target.parent, data) as part:
            os.replace(part, target)
        sync_folder(target.parent)
    except OSError as error:
        what = f"{target} could not be saved ({error.strerror or error}). Nothing was left half written."
        raise FolderProblem(what, "Make room or allow writing there, and try again.") from error


def _belongs_to(target: Path, record: Path) -> bool:
    """Whether the target is a file of the record in this folder, or lies among them."""
    try:
        inside = target.resolve().relative_to(record.resolve())
    except (ValueError, OSError):
        return False
    return bool(inside.parts) and inside.parts[0] in (HOUSEHOLD, CHECKS, PUMP_OUTS, OPEN, EARLIER, LOCK)
