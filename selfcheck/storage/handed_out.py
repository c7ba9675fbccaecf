"""Files that are made for somebody: a page, a calendar, a table, an archive. Whole, or not there at all."""

from __future__ import annotations

import os
import stat
import unicodedata
from collections.abc import Iterator
from pathlib import Path

from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, OPEN, PUMP_OUTS
from selfcheck.storage.lock import LOCK
from selfcheck.storage.writing import EARLIER, sync_folder, temporary, write_new
from selfcheck.text import REPLACEMENT, clean

_FOLDERS = (CHECKS, PUMP_OUTS, OPEN, EARLIER)
_OURS = frozenset((HOUSEHOLD, LOCK, *_FOLDERS))
#: what no name of a file may hold: controls, and the signs that end a line or a paragraph
_REFUSED = ("Cc", "Zl", "Zp")


def hand_out(target: Path, data: bytes, *, replace: bool = False, record: Path | None = None) -> None:
    """Write a file in one step. One that is there already stays, unless it may be replaced.

    `record`: the household folder it was made from. No file of a record, this or another, is ever written over, and
    nothing that is no plain file. Raises UsageProblem for a target that is taken or cannot be one, and FolderProblem
    when it cannot be saved; nothing is left half written then.
    """
    if any(unicodedata.category(sign) in _REFUSED for sign in str(target)):
        shown = clean(str(target)).replace("\n", REPLACEMENT).replace("\t", REPLACEMENT)
        raise UsageProblem(f"{shown} has a sign in it that no file name may have.", "Name another file.")
    try:
        _refuse(target, replace, record)
        if not replace:
            if not write_new(target, data):
                raise _taken(target)
            return
        with temporary(target.parent, data) as part:
            os.replace(part, target)
        sync_folder(target.parent)
    except OSError as error:
        what = f"{target} could not be saved ({error.strerror or error}). Nothing was left half written."
        raise FolderProblem(what, "Make room or allow writing there, and try again.") from error


def holds(path: Path, data: bytes) -> bool:
    """Whether a plain file holds these bytes and no others."""
    try:
        return not path.is_symlink() and path.is_file() and path.read_bytes() == data
    except OSError:
        return False


def _refuse(target: Path, replace: bool, record: Path | None) -> None:
    """Raise UsageProblem for a target that must not be written."""
    there = os.path.lexists(target)
    if target.is_dir():
        raise UsageProblem(f"{target} is a folder.", "Name a file in it.")
    if _belongs_to_a_record(target, record):
        raise UsageProblem(f"{target} belongs to the record itself.", "Name another file.")
    if not target.parent.is_dir():
        raise UsageProblem(f"There is no folder {target.parent}.", "Make it first, or name another place.")
    if there and target.exists() and not stat.S_ISREG(target.stat().st_mode):
        raise UsageProblem(f"{target} is no plain file. It was left as it is.", "Name another file.")
    if there and not replace:
        raise _taken(target)


def _taken(target: Path) -> UsageProblem:
    return UsageProblem(f"{target} is there already. It was left as it is.", "Name another file, or add --replace.")


def _belongs_to_a_record(target: Path, record: Path | None) -> bool:
    """Whether the target is, or lies among, the files of a household folder; by its name, and where links lead."""
    own = {Path(os.path.realpath(record / name)) for name in _OURS} if record is not None else set()
    for path in _ways(target):
        for inside in (path, *path.parents):
            if inside in own or (inside.name.casefold() in _OURS and _is_record(inside.parent)):
                return True
    return False


def _ways(target: Path) -> Iterator[Path]:
    """The target as it is named, with the links to its folder followed, and with all links followed."""
    yield Path(os.path.abspath(target))
    yield Path(os.path.realpath(target.parent)) / target.name
    yield Path(os.path.realpath(target))


def _is_record(folder: Path) -> bool:
    """Whether a household's record lies in this folder, sound or not."""
    if any(os.path.lexists(folder / name) for name in (HOUSEHOLD, LOCK)):
        return True
    return any(name.endswith(".json") for part in (CHECKS, PUMP_OUTS) for name in _names(folder / part)) or any(
        ".json" in name for name in _names(folder / OPEN)
    )


def _names(folder: Path) -> list[str]:
    try:
        return os.listdir(folder)
    except OSError:  # not there, or not to be looked into
        return []
