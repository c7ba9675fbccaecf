"""What is handed to a person: made from the record, as a file, or as lines to read."""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, NamedTuple

from selfcheck.errors import FolderProblem
from selfcheck.loading.conversations import script
from selfcheck.loading.files import read_table
from selfcheck.storage.handed_out import hand_out, holds
from selfcheck.storage.locations import papers
from selfcheck.storage.writing import make_folder

if TYPE_CHECKING:
    from selfcheck.report.call_note import Note
    from selfcheck.sitting.table import Sitting

LANGUAGE = "en"


class Paper(NamedTuple):
    """One kind of paper: what makes it, and the ending of its file."""

    make: Callable[[Sitting], bytes]
    ending: str


class Made(NamedTuple):
    """A paper as a file. `before`: it had been made already, and nothing has changed since."""

    path: Path
    before: bool = False


def make(sitting: Sitting, paper: str) -> Made:
    """Make one of `PAPERS` as a file among this user's papers, where the newest of today is not the same already.

    Raises FolderProblem.
    """
    kind, folder = PAPERS[paper], papers()
    name = re.sub(r"[^A-Za-z0-9]+", "-", sitting.household.name).strip("-")[:60] or "tank"
    stem = f"{name}-{paper}-{sitting.today.isoformat()}"
    target, number = folder / f"{stem}{kind.ending}", 1
    newest: Path | None = None
    while os.path.lexists(target):
        newest, number = target, number + 1
        target = folder / f"{stem}-{number}{kind.ending}"
    data = kind.make(sitting)
    if newest is not None and holds(newest, data):
        return Made(newest, before=True)
    try:
        make_folder(folder)
    except OSError as error:
        what = f"There is no folder {folder}, and it cannot be made ({error.strerror or error})."
        raise FolderProblem(what, "Make it, and try again.") from error
    hand_out(target, data, record=sitting.folder)
    return Made(target)


def sheet_lines(sitting: Sitting) -> tuple[str, ...]:
    """The sheet for the tank, as plain lines."""
    from selfcheck.report.sheet import sheet
    from selfcheck.report.sheet_text import sheet_text

    return tuple(
        sheet_text(sheet(sitting.judgement(), script(sitting.place, "yearly"), _tables(sitting, "sheet_page")))
    )


def note(sitting: Sitting) -> Note:
    """What to say when calling a service."""
    from selfcheck.report.call_note import call_note

    return call_note(sitting.judgement(), sitting.pump_outs, sitting.verdict_words(), _tables(sitting, "call_note"))


def _sheet(sitting: Sitting) -> bytes:
    from selfcheck.report.sheet import sheet
    from selfcheck.report.sheet_page import sheet_page

    made = sheet(sitting.judgement(), script(sitting.place, "yearly"), _tables(sitting, "sheet_page"))
    return sheet_page(made, "a4" if sitting.household.units == "metric" else "letter").encode()


def _page(sitting: Sitting) -> bytes:
    from selfcheck.report.page import PageWords, household_page

    words = PageWords(sitting.verdict_words(), _tables(sitting, "report_page"), _tables(sitting, "pictures"))
    return household_page(sitting.judgement(), sitting.checks, sitting.pump_outs, words).encode()


def _note(sitting: Sitting) -> bytes:
    from selfcheck.report.call_note import note_lines

    return "\n".join((*note_lines(note(sitting)), "")).encode()


def _calendar(sitting: Sitting) -> bytes:
    from selfcheck.report.calendar import calendar
    from selfcheck.storage.archive import earlier_households

    before = earlier_households(sitting.folder)
    words = _tables(sitting, "calendar")
    return calendar(sitting.judgement(), sitting.checks, sitting.pump_outs, words, before).encode()


def _table(sitting: Sitting) -> bytes:
    from selfcheck.report.table import checks_table

    return checks_table(sitting.household, sitting.checks, _tables(sitting, "table")).encode()


def _archive(sitting: Sitting) -> bytes:
    from selfcheck.storage.archive import pack

    return pack(sitting.folder).data


def _tables(sitting: Sitting, name: str) -> Mapping[str, Any]:
    tables: Mapping[str, Any] = read_table(sitting.place, f"{LANGUAGE}/words/{name}.toml")
    return tables


#: every paper, in the order in which they are offered
PAPERS: dict[str, Paper] = {
    "sheet": Paper(_sheet, ".html"),
    "page": Paper(_page, ".html"),
    "note": Paper(_note, ".txt"),
    "calendar": Paper(_calendar, ".ics"),
    "table": Paper(_table, ".csv"),
    "archive": Paper(_archive, ".zip"),
}
