"""What is handed to a person: made from the record, as a file, or as lines to read."""

from __future__ import annotations

import os
import re
import textwrap
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal, NamedTuple

from selfcheck.errors import FolderProblem
from selfcheck.loading.conversations import script, texts
from selfcheck.storage.handed_out import hand_out, holds
from selfcheck.storage.locations import papers
from selfcheck.storage.writing import make_folder

if TYPE_CHECKING:
    from selfcheck.loading.place import Place
    from selfcheck.report.call_note import Note
    from selfcheck.report.sheet import Sheet
    from selfcheck.sitting.kept_record import KeptRecord
    from selfcheck.sitting.table import Sitting

LANGUAGE = "en"


class Paper(NamedTuple):
    """One kind of paper: what makes it, and the ending of its file."""

    make: Callable[[KeptRecord], bytes]
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


def sheet_to_read(record: KeptRecord) -> tuple[str, ...]:
    """The sheet for the tank, as lines for a screen."""
    from selfcheck.report.sheet_text import sheet_to_read

    return tuple(sheet_to_read(_sheet_of(record)))


def sheet_lines(record: KeptRecord) -> tuple[str, ...]:
    """The sheet for the tank, as lines of plain text to print."""
    from selfcheck.report.sheet_text import sheet_text

    return tuple(sheet_text(_sheet_of(record)))


def sheet_to_print(record: KeptRecord, size: Literal["letter", "a4"] | None = None) -> bytes:
    """The sheet as a page to print; the size of the paper follows the units unless it is given."""
    from selfcheck.report.sheet_page import sheet_page

    return sheet_page(_sheet_of(record), size or ("a4" if record.household.units == "metric" else "letter")).encode()


def note(record: KeptRecord) -> Note:
    """What to say when calling a service."""
    from selfcheck.report.call_note import call_note

    return call_note(record.judgement(), record.pump_outs, record.verdict_words(), _tables(record.place, "call_note"))


def note_text(record: KeptRecord, columns: int | None = None) -> bytes:
    """The same as lines, set to so many columns; without them, to those of a plain page."""
    from selfcheck.report.call_note import WIDTH, note_lines

    lines = note_lines(note(record), columns or WIDTH)
    return "\n".join((*textwrap.wrap(unread(record), columns or WIDTH), *lines, "")).encode()


def unread(record: KeptRecord) -> str:
    """Which parts of the record could not be read, in one line; empty when all could."""
    if not record.problems:
        return ""
    from selfcheck.report.unread import unread_line

    return unread_line(record.problems, _tables(record.place, "unread"))


def _sheet_of(record: KeptRecord) -> Sheet:
    from selfcheck.report.sheet import sheet

    return sheet(record.judgement(), script(record.place, "yearly"), _tables(record.place, "sheet_page"))


def _page(record: KeptRecord) -> bytes:
    from selfcheck.report.page import PageWords, household_page

    place = record.place
    words = PageWords(record.verdict_words(), _tables(place, "report_page"), _tables(place, "pictures"))
    return household_page(record.judgement(), record.checks, record.pump_outs, words, unread(record)).encode()


def _calendar(record: KeptRecord) -> bytes:
    from selfcheck.report.calendar import calendar
    from selfcheck.storage.earlier import earlier_households
    from selfcheck.storage.taking_out import taken_out

    before, words = earlier_households(record.folder), _tables(record.place, "calendar")
    gone = 2 * taken_out(record.folder) + len(record.mended_pump_outs)
    return calendar(record.judgement(), record.checks, record.pump_outs, words, before, unread(record), gone).encode()


def _table(record: KeptRecord) -> bytes:
    from selfcheck.report.table import checks_table

    return checks_table(record.household, record.checks, _tables(record.place, "table")).encode()


def _archive(record: KeptRecord) -> bytes:
    from selfcheck.storage.archive import pack

    return pack(record.folder).data


def _tables(place: Place, name: str) -> Mapping[str, Any]:
    tables: Mapping[str, Any] = texts(place, name, LANGUAGE)
    return tables


#: every paper, in the order in which they are offered
PAPERS: dict[str, Paper] = {
    "sheet": Paper(sheet_to_print, ".html"),
    "page": Paper(_page, ".html"),
    "note": Paper(note_text, ".txt"),
    "calendar": Paper(_calendar, ".ics"),
    "table": Paper(_table, ".csv"),
    "archive": Paper(_archive, ".zip"),
}
