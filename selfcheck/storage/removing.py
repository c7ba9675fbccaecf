"""Taking a whole record away, and bringing it back: its files are moved to a dated folder beside it.

Only names that this program gives to its files are moved; everything else in the folder stays where it is.
"""

from __future__ import annotations

import contextlib
import os
import re
from collections.abc import Iterator
from datetime import date
from pathlib import Path

from selfcheck.errors import FolderProblem
from selfcheck.progress import tell
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, IDENT, OPEN, PUMP_OUTS
from selfcheck.storage.writing import EARLIER, make_folder, sync_folder

AWAY = "-taken-away-"
_DATED = re.compile(r"(\d{4}-\d{2}-\d{2})(?:-\d+)?")
_MEND = "Allow writing in both folders and try again."


def ours(folder: Path) -> list[Path]:
    """The files in `folder` that this program made, relative to it, `household.json` last."""
    found = [Path(part, name) for part in (CHECKS, PUMP_OUTS, OPEN, EARLIER) for name in _names(folder / part, part)]
    return [*found, *([Path(HOUSEHOLD)] if (folder / HOUSEHOLD).is_file() else [])]


def take_away(folder: Path, today: date) -> Path:
    """Move every file of the record to a new folder beside it, and give that.

    Raises FolderProblem when a file cannot be moved; what was moved before it is named there and can be brought back.
    """
    base = f"{folder.absolute().name}{AWAY}{today.isoformat()}"
    away, number = folder.absolute().parent / base, 1
    while os.path.lexists(away):
        number += 1
        away = folder.absolute().parent / f"{base}-{number}"
    _move(folder, away)
    return away


def taken_away(folder: Path) -> tuple[Path, date] | None:
    """The newest folder that a record was moved to from here, with its day; None when there is none."""
    begins = f"{folder.absolute().name}{AWAY}"
    found = []
    with contextlib.suppress(OSError):
        for name in os.listdir(folder.absolute().parent):
            dated = _DATED.fullmatch(name.removeprefix(begins)) if name.startswith(begins) else None
            if dated is not None and ours(folder.absolute().parent / name):
                found.append((dated[1], len(name), name))
    if not found:
        return None
    day, _, name = max(found)
    with contextlib.suppress(ValueError):
        return folder.absolute().parent / name, date.fromisoformat(day)
    return None


def bring_back(away: Path, folder: Path) -> None:
    """Move a record that was taken away back into its folder.

    Raises FolderProblem when there is a record there already, or when a file cannot be moved.
    """
    if ours(folder):
        raise FolderProblem(f"There is a record in {folder} already.", "Move that one away first.")
    _move(away, folder)
    with contextlib.suppress(OSError):  # gone when nothing else was in it
        away.rmdir()


def _move(source: Path, target: Path) -> None:
    try:
        make_folder(target)
        files = ours(source)
        for number, path in enumerate(files):
            tell(number, len(files))
            make_folder((target / path).parent)
            if os.path.lexists(target / path):
                raise FileExistsError(17, "there is a file of that name", str(target / path))
            os.rename(source / path, target / path)
        for part in (CHECKS, PUMP_OUTS, OPEN, EARLIER, ""):
            sync_folder(target / part)
            if part:
                with contextlib.suppress(OSError):  # stays when anything else is in it
                    (source / part).rmdir()
        sync_folder(source)
    except OSError as error:
        what = f"Not all of it could be moved ({error.strerror or error}). What was moved is in {target}."
        raise FolderProblem(what, _MEND) from error


def _names(folder: Path, part: str) -> Iterator[str]:
    """The files of one part of a record that bear a name as this program gives it."""
    with contextlib.suppress(OSError):
        for name in sorted(os.listdir(folder)):
            path = folder / name
            stem = name.removesuffix(".json") if part != OPEN else name
            if not IDENT.fullmatch(stem) or path.is_symlink() or not path.is_file():
                continue
            if part == OPEN or name.endswith(".json"):
                yield name
