"""Finished files of the record: whole on the disk, or not there at all.

Text goes to a temporary file in the same folder, is forced to the disk, gets its name in one step, and the folder is
forced to the disk after it. A finished file is never written again; `household.json` alone is replaced, and each one
before it is kept under `earlier/`.
"""

from __future__ import annotations

import contextlib
import os
import secrets
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from pydantic import BaseModel

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import FolderProblem
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, IDENT, PUMP_OUTS

EARLIER = "earlier"
PART = ".part"  # the ending of a file that is still being written; left behind only by a crash


def write_check(folder: Path, check: Check) -> Check:
    """Write a new check under its day, `2026-05-18`, or `2026-05-18-2` when that is taken; it comes back with its id.

    Raises FolderProblem when it cannot be saved; nothing is left half written then.
    """

    def numbered(name: str) -> bytes:
        return as_json(check.model_copy(update={"id": name}))

    return check.model_copy(update={"id": _write_dated(folder, CHECKS, check.on, numbered)})


def write_pump_out(folder: Path, pump_out: PumpOut) -> str:
    """Write a new pump-out under its day, and say the name of its file, which is its id. Raises FolderProblem."""

    def numbered(name: str) -> bytes:
        return as_json(pump_out.model_copy(update={"id": name}))

    return _write_dated(folder, PUMP_OUTS, pump_out.on, numbered)


def write_household(folder: Path, household: Household, today: date) -> None:
    """Replace `household.json` in one step; the one before is kept as `earlier/household-DAY.json`.

    Raises FolderProblem when it cannot be saved; the old one stays as it was then.
    """
    with _told(HOUSEHOLD):
        make_folder(folder)
        target = folder / HOUSEHOLD
        if target.exists():
            before = target.read_bytes()
            _write_dated(folder, EARLIER, today, lambda _: before, "household-")
        with temporary(folder, as_json(household)) as part:
            os.replace(part, target)
        sync_folder(folder)


def as_json(model: BaseModel) -> bytes:
    """The text of a record: indented, keys in a fixed order, fields that this version does not know kept."""
    return model.model_dump_json(indent=2, by_alias=True).encode() + b"\n"


def make_folder(folder: Path) -> None:
    """Make a folder that only its owner may open, and everything above it."""
    if folder.is_dir():
        return
    make_folder(folder.parent)
    with contextlib.suppress(FileExistsError):
        folder.mkdir(mode=0o700)
    sync_folder(folder.parent)


def sync_folder(folder: Path) -> None:
    """Force the names in a folder to the disk, where the system can do that."""
    try:
        handle = os.open(folder, os.O_RDONLY | getattr(os, "O_DIRECTORY", 0))
    except OSError:  # some systems do not open folders
        return
    try:
        with contextlib.suppress(OSError):  # some file systems do not sync them
            os.fsync(handle)
    finally:
        os.close(handle)


def _write_dated(folder: Path, part: str, day: date, text: Callable[[str], bytes], prefix: str = "") -> str:
    """Write `text(name)` as the first free of DAY, DAY-2, DAY-3 … and give back that name."""
    base = f"{prefix}{day.isoformat()}"
    inside = folder / part
    with _told(f"{part}/{base}.json"):
        make_folder(folder)
        make_folder(inside)
        number = 1
        while True:
            name = base if number == 1 else f"{base}-{number}"
            assert IDENT.fullmatch(name)
            target = inside / f"{name}.json"
            if not os.path.lexists(target) and write_new(target, text(name)):
                return name
            number += 1


def write_new(target: Path, data: bytes) -> bool:
    """Write a file that was not there before, in one step. False: another program was quicker with that name."""
    with temporary(target.parent, data) as part:
        try:
            os.link(part, target)
        except FileExistsError:
            return False
        except OSError:  # a file system without hard links; the lock of the folder keeps others out
            if os.path.lexists(target):
                return False
            os.rename(part, target)
    sync_folder(target.parent)
    return True


@contextlib.contextmanager
def temporary(folder: Path, data: bytes) -> Iterator[Path]:
    """A file with these bytes, forced to the disk, under a passing name that is gone afterwards."""
    path = folder / f".{secrets.token_hex(6)}{PART}"
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0)
    try:
        handle = os.open(path, flags, 0o600)
        try:
            write_all(handle, data)
            os.fsync(handle)
        finally:
            os.close(handle)
        yield path
    finally:
        with contextlib.suppress(OSError):
            os.unlink(path)


def write_all(handle: int, data: bytes) -> None:
    """Write every byte; the system may take fewer at a time."""
    rest = memoryview(data)
    while rest:
        rest = rest[os.write(handle, rest) :]


@contextlib.contextmanager
def _told(name: str) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        what = f"{name} could not be saved ({error.strerror or error})."
        raise FolderProblem(what, "Make room or allow writing there, and try again.") from error
