"""A household folder → models. Reads, and changes nothing.

One damaged file never hides the others: it is named with the reason and the place in it, and the rest is used.
"""

from __future__ import annotations

import gc
import json
import os
import re
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path
from typing import Any, NamedTuple, TypeVar

from pydantic import BaseModel, ValidationError

from selfcheck.domain.check import CHECK_FORMAT, PUMP_OUT_FORMAT, Check, PumpOut, standing_pump_outs
from selfcheck.domain.household import HOUSEHOLD_FORMAT, Household
from selfcheck.errors import FolderProblem, RecordProblem
from selfcheck.progress import tell
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, IDENT, MOST_FILES, OPEN, PUMP_OUTS, holds, listing
from selfcheck.storage.migrate import migrate
from selfcheck.storage.reading import MEND, as_utf8, read_bytes, sound, thorough

#: So many files are read between two words on how far that has come.
TELL_EACH = 100

Model = TypeVar("Model", bound=BaseModel)


class Folder(NamedTuple):
    """What a folder holds, oldest first. `problems` names each file that was left out or is odd."""

    household: Household
    checks: tuple[Check, ...]
    pump_outs: tuple[PumpOut, ...]
    problems: tuple[RecordProblem, ...]
    household_read: bool = True  # False: there was no household.json that could be used, and an empty one stands in
    mended_pump_outs: tuple[PumpOut, ...] = ()  # each of them replaced by one that counts


#: A record in which there is nothing yet.
NOTHING = Folder(Household(), (), (), ())


def read(folder: Path) -> Folder:
    """The record in `folder`.

    A conversation left open is the beginning of one. Raises FolderProblem when there is no such folder, when it may not
    be read, or when nothing in it is a record.
    """
    names = listing(folder)
    problems: list[RecordProblem] = []
    with _without_collecting():
        household = _one(folder / HOUSEHOLD, HOUSEHOLD, Household, HOUSEHOLD_FORMAT, problems, HOUSEHOLD in names)
        checks = _checks(folder, problems)
        named = _many(folder, PUMP_OUTS, PumpOut, PUMP_OUT_FORMAT, problems)
        pump_outs = [found.model_copy(update={"id": stem}) for stem, found in named]
    if household is None and not checks and not pump_outs and not problems:
        if holds(folder / OPEN):
            return Folder(Household(), (), (), (), False)
        raise FolderProblem(
            f"There is no household record in {folder}.",
            "Name a folder that holds household.json, or start the assistant there to begin one.",
        )
    if household is None and HOUSEHOLD not in names:
        problems.insert(0, RecordProblem(HOUSEHOLD, "it is missing.", "The checks are used without it."))
    checks.sort(key=lambda check: (check.on, check.id))
    pump_outs.sort(key=lambda pump_out: pump_out.on)
    kept = household if household is not None else Household()
    emptied, mended = standing_pump_outs(pump_outs)
    return Folder(kept, tuple(checks), emptied, tuple(problems), household is not None, mended)


def parse(data: bytes, name: str, model: type[Model], form: str) -> Model:
    """One record from the bytes of its file. Raises RecordProblem with the reason and the place in it."""
    if sound(data):
        try:
            return model.model_validate_json(data, strict=True)
        except ValidationError:
            pass  # looked at again below, slowly, for the reason and for records of another version
    text = as_utf8(data, name)
    raw = migrate(thorough(text, name), form, name)
    try:
        return model.model_validate_json(json.dumps(raw), strict=True)
    except ValidationError as error:
        raise RecordProblem(name, _reason(error), MEND) from error


def _checks(folder: Path, problems: list[RecordProblem]) -> list[Check]:
    """All checks, each with an id of its own. A file named otherwise than its id keeps that id while it is free, and
    else goes by the name of its file.
    """
    found: list[Check] = []
    strays: list[tuple[str, Check]] = []
    for stem, check in _many(folder, CHECKS, Check, CHECK_FORMAT, problems):
        if check.id == stem:
            found.append(check)
        else:
            strays.append((stem, check))
    taken = {check.id for check in found}
    for stem, check in strays:
        name = f"{CHECKS}/{stem}.json"
        if not IDENT.fullmatch(check.id):
            problems.append(RecordProblem(name, 'its "id" cannot be the name of a file.', "Give it the file's name."))
        elif check.id in taken:
            what = f'its "id" is {check.id}, and so is that of another check: both were used.'
            mend = "Take the copy out, or give it the file's name as its id."
            own = _free(stem, taken)
            problems.append(RecordProblem(name, what, mend, used=True, shared=(check.id, own)))
            taken.add(own)
            found.append(check.model_copy(update={"id": own}))
        else:
            what = f'its "id" is {check.id}: it was used all the same.'
            problems.append(RecordProblem(name, what, "Give the file and the id one name.", used=True))
            taken.add(check.id)
            found.append(check)
    return found


def _free(stem: str, taken: set[str]) -> str:
    """An id after the name of a file that no other check has."""
    own = re.sub(r"[^A-Za-z0-9._-]", "-", stem).lstrip("._-")[:56] or "check"
    return next(name for number in count(1) if (name := own if number == 1 else f"{own}-{number}") not in taken)


def _many(
    folder: Path, part: str, model: type[Model], form: str, problems: list[RecordProblem]
) -> Iterator[tuple[str, Model]]:
    """Every record of one kind with the name of its file (without .json), by name."""
    inside = os.path.join(folder, part)
    try:
        with os.scandir(inside) as entries:
            found = sorted((entry.name, entry) for entry in entries if _counts(entry.name))
    except FileNotFoundError:
        return
    except OSError as error:
        problems.append(RecordProblem(part, f"it cannot be read ({error.strerror}).", "Check who may read it."))
        return
    if len(found) > MOST_FILES:
        what = f"it holds more than {MOST_FILES} files; the oldest were left out."
        problems.append(RecordProblem(part, what, "Move the ones that are no checks elsewhere."))
        found = found[-MOST_FILES:]
    for number, (file, entry) in enumerate(found):
        name = f"{part}/{file}"
        if number and number % TELL_EACH == 0:
            tell(number, len(found))
        try:
            if entry.is_symlink() and not _stays_inside(folder, entry.path):
                raise RecordProblem(name, "it is a link that leads out of the folder.", "Put the file itself there.")
            yield file[:-5], parse(read_bytes(entry.path, name), name, model, form)
        except RecordProblem as problem:
            problems.append(problem)


def _one(
    path: Path, name: str, model: type[Model], form: str, problems: list[RecordProblem], there: bool
) -> Model | None:
    if not there:
        return None
    try:
        if path.is_symlink() and not _stays_inside(path.parent, str(path)):
            raise RecordProblem(name, "it is a link that leads out of the folder.", "Put the file itself there.")
        return parse(read_bytes(str(path), name), name, model, form)
    except RecordProblem as problem:
        problems.append(problem)
        return None


def _counts(name: str) -> bool:
    return name.endswith(".json") and not name.startswith(".")


def _stays_inside(folder: Path, path: str) -> bool:
    root = os.path.realpath(folder)
    return os.path.realpath(path).startswith(root + os.sep)


def _reason(error: ValidationError) -> str:
    """The first fault in words, with its place: `seen.smell` should be one of …"""
    first: Any = error.errors(include_url=False, include_input=False)[0]
    steps = [str(step) for step in first["loc"]]
    more = error.error_count() - 1
    tail = f" ({more} more like it)" if more else ""
    where = f'at "{".".join(steps)}": ' if steps else ""
    message = first["msg"].replace("Input should be", "it should be").replace("Invalid", "not")
    return f"{where}{message[:1].lower()}{message[1:]}{tail}."


@contextmanager
def _without_collecting() -> Iterator[None]:
    """Thousands of small objects that all stay: searching them for rubbish again and again would take half the time."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
