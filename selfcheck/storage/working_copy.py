"""A copy of an invented household to play with; the original stays as it is."""

from __future__ import annotations

import hashlib
import json
import os
import secrets
import shutil
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from selfcheck.domain.household import HOUSEHOLD_FORMAT, HOUSEHOLD_VERSION
from selfcheck.errors import FolderProblem
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, IDENT, OPEN, PUMP_OUTS, holds_record
from selfcheck.storage.locations import working_copies
from selfcheck.storage.writing import make_folder

_PARTS = (CHECKS, PUMP_OUTS, OPEN)


def demo_household() -> Path:
    """The household that comes with the program: inside the package when installed, else that of the checkout."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "_demo_household"
    return inside if inside.is_dir() else package.parent / "demo_household"


def working_copy(original: Path) -> Path:
    """The copy of this household in the user's own folder, made now if there is none of this folder as it stands.

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
    """The same for the same files in the same place, so that a household begun yesterday is found again today."""
    sums = hashlib.sha256(os.fsencode(folder.resolve()) + b"\0")
    for path in _files(folder):
        sums.update(path.relative_to(folder).as_posix().encode() + b"\0")
        sums.update(hashlib.sha256(path.read_bytes()).digest())
    return sums.hexdigest()[:12]


@contextmanager
def passing_household(
    household: str | dict[str, Any], checks: Sequence[dict[str, Any]], pump_outs: Sequence[dict[str, Any]], beside: Path
) -> Iterator[Path]:
    """A household folder that is gone afterwards, for a conversation that is only played.

    `household`: "demo", "none", a folder seen from `beside`, or what `household.json` should hold, with `checks` and
    `pump_outs` as their files. Raises FolderProblem when there is no such folder.
    """
    with TemporaryDirectory(prefix="selfcheck-") as passing:
        folder = Path(passing) / "household"
        if isinstance(household, dict):
            _lay_out(folder, household, checks, pump_outs)
        elif household != "none":
            original = demo_household() if household == "demo" else beside / household
            if not holds_record(original):
                raise FolderProblem(
                    f"There is no household record in {original}.", "Mend the household of the journey."
                )
            copy_record(original, folder)
        yield folder


def _lay_out(
    folder: Path, household: dict[str, Any], checks: Sequence[dict[str, Any]], pump_outs: Sequence[dict[str, Any]]
) -> None:
    for part in (CHECKS, PUMP_OUTS):
        (folder / part).mkdir(parents=True)
    _dump(folder / HOUSEHOLD, {"format": HOUSEHOLD_FORMAT, "version": HOUSEHOLD_VERSION, **household})
    for number, check in enumerate(checks):
        _dump(folder / CHECKS / f"{_name(check.get('id') or check.get('on'), number)}.json", check)
    for number, pump_out in enumerate(pump_outs):
        _dump(folder / PUMP_OUTS / f"{_name(pump_out.get('on'), number)}.json", pump_out)


def _name(wanted: object, number: int) -> str:
    return str(wanted) if IDENT.fullmatch(str(wanted)) else f"record-{number}"


def _dump(path: Path, content: dict[str, Any]) -> None:
    path.write_text(json.dumps(content, default=str), encoding="utf-8")
