"""A copy of an invented household to play with; the original stays as it is."""

from __future__ import annotations

import hashlib
import os
import secrets
import shutil
from pathlib import Path

from selfcheck.errors import FolderProblem
from selfcheck.storage.folder import CHECKS, HOUSEHOLD, PUMP_OUTS
from selfcheck.storage.journal import OPEN
from selfcheck.storage.locations import working_copies
from selfcheck.storage.writing import make_folder

_PARTS = (CHECKS, PUMP_OUTS, OPEN)


def demo_household() -> Path:
    """The household that comes with the program: inside the package when installed, else that of the checkout."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "_demo_household"
    return inside if inside.is_dir() else package.parent / "demo_household"


def working_copy(original: Path) -> Path:
    """The copy of this household in the user's own folder, made now if there is none of this state of the original.

    Raises FolderProblem when it cannot be made.
    """
    place = working_copies()
    if original.resolve().is_relative_to(place.resolve()):
        return original
    copy = place / f"copy-{_fingerprint(original)}"
    if copy.is_dir():
        return copy
    passing = place / f".{secrets.token_hex(6)}"
    try:
        make_folder(place)
        copy_record(original, passing)
        os.rename(passing, copy)
    except OSError as error:
        shutil.rmtree(passing, ignore_errors=True)
        if copy.is_dir():  # another program made the same copy meanwhile
            return copy
        what = f"The example household could not be copied to {place} ({error.strerror or error})."
        raise FolderProblem(what, "Make room or allow writing there, and try again.") from error
    return copy


def copy_record(original: Path, target: Path) -> None:
    """Copy the files of a record to a new folder; links are not followed out of it. Raises OSError."""
    target.mkdir(mode=0o700, parents=True)
    for path in _files(original):
        goal = target / path.relative_to(original)
        if not goal.parent.is_dir():
            goal.parent.mkdir(mode=0o700)
        goal.write_bytes(path.read_bytes())
        goal.chmod(0o600)


def _files(folder: Path) -> list[Path]:
    found = [folder / HOUSEHOLD, *(path for part in _PARTS for path in sorted((folder / part).glob("*.json*")))]
    return [path for path in found if path.is_file() and not path.is_symlink()]


def _fingerprint(folder: Path) -> str:
    """The same for the same files, so that a household begun yesterday is found again today."""
    sums = hashlib.sha256()
    for path in _files(folder):
        sums.update(path.relative_to(folder).as_posix().encode() + b"\0")
        sums.update(hashlib.sha256(path.read_bytes()).digest())
    return sums.hexdigest()[:12]
