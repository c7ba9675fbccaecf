"""The doors that hand something out or take it in: the sheet, the page, the note, dates, tables, the whole record."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from selfcheck.errors import UsageProblem
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import Place, content_place
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.sitting.verdicts import judged, verdict_words
from selfcheck.storage.folder import Folder, read
from selfcheck.storage.handed_out import hand_out

if TYPE_CHECKING:
    from selfcheck.domain.verdict import Judgement

ABOUT = {
    "sheet": "Makes the paper sheet for the check outside: as text, or as a page to print.",
    "report": "Makes the page for the household: one HTML file, to keep, to print and to hand over.",
    "note": "Prints what to say when calling a service.",
    "calendar": "Makes a calendar file with the next dates.",
    "table": "Makes a table (CSV) of all checks.",
    "take-in": "Takes in past readings from a table (CSV) of your own.",
    "pack": "Packs the whole record into one file.",
    "unpack": "Brings a packed record to a folder.",
}
#: what is made when `--to` must be given
_TO = {"sheet": "FILE.html", "report": "FILE.html", "calendar": "FILE.ics", "table": "FILE.csv", "pack": "FILE.zip"}


def add_arguments(parser: ArgumentParser, command: str) -> None:
    """The arguments of one of these doors, but for the day and the content, which all have."""
    if command in ("take-in", "unpack"):
        parser.add_argument("file", type=Path, help="the table" if command == "take-in" else "the packed record")
    parser.add_argument("folder", type=Path, help="folder of the household")
    if command in _TO:
        parser.add_argument("--to", type=Path, metavar=_TO[command], required=command != "sheet", help="file to make")
        parser.add_argument("--replace", action="store_true", help="write over a file that is there already")
    if command in ("sheet", "report", "note", "calendar"):
        parser.add_argument("--rules", metavar="ID", help="judge by this set of limits")
    if command in ("sheet", "note"):
        parser.add_argument("--tank", metavar="ID", help="which tank, where there are several")
    if command == "sheet":
        parser.add_argument("--paper", choices=("letter", "a4"), help="size of the paper")
    if command == "take-in":
        parser.add_argument(
            "--columns", action="append", default=[], metavar='"HEADING=MEANING"', help='as in "Depth A=sludge cm"'
        )
        parser.add_argument("--days", choices=("day-first", "month-first"), help="how 5/4/2024 is meant")


def open_door(command: str, chosen: Namespace, today: date) -> None:
    """Do what one of these doors is for. Raises a SelfcheckError that says what to mend."""
    place = content_place(chosen.content)
    if command == "take-in":
        from selfcheck.plain.taking_in import take_in

        take_in(chosen.file, chosen.folder, place, today, chosen.columns, chosen.days)
    elif command == "unpack":
        _unpack(chosen.file, chosen.folder, place)
    elif command == "pack":
        _pack(chosen.folder, chosen.to, place, chosen.replace)
    else:
        record = read(chosen.folder)
        made = _MAKERS[command](_Job(chosen, record, place, today))
        for problem in record.problems:
            print(problem, file=sys.stderr)
        if getattr(chosen, "to", None) is None:
            sys.stdout.write(made)
            return
        hand_out(chosen.to, made.encode(), replace=chosen.replace, record=chosen.folder)
        _tell(place, "made", file=chosen.to)


class _Job(NamedTuple):
    chosen: Namespace
    record: Folder
    place: Place
    today: date

    def judgement(self) -> Judgement:
        record = self.record
        found = judged(
            self.place,
            record.household,
            record.checks,
            record.pump_outs,
            self.today,
            getattr(self.chosen, "rules", None),
        )
        wanted = getattr(self.chosen, "tank", None)
        tanks = [found, *found.others]
        for one in tanks:
            if wanted in (None, one.tank.id):
                return one
        known = ", ".join(one.tank.id for one in tanks)
        raise UsageProblem(f'There is no tank "{wanted}".', f"Name one of these: {known}.")


def _sheet(job: _Job) -> str:
    from selfcheck.loading.conversations import script
    from selfcheck.report.sheet import sheet

    made = sheet(job.judgement(), script(job.place, "yearly"), texts(job.place, "sheet_page"))
    if job.chosen.to is None:
        from selfcheck.report.sheet_text import sheet_text

        return "\n".join(sheet_text(made)) + "\n"
    from selfcheck.report.sheet_page import sheet_page

    return sheet_page(made, job.chosen.paper or ("letter" if job.record.household.units == "us" else "a4"))


def _report(job: _Job) -> str:
    from selfcheck.report.page import PageWords, household_page

    words = PageWords(verdict_words(job.place), texts(job.place, "report_page"), texts(job.place, "pictures"))
    return household_page(job.judgement(), job.record.checks, job.record.pump_outs, words)


def _note(job: _Job) -> str:
    from selfcheck.report.call_note import call_note, note_lines

    note = call_note(job.judgement(), job.record.pump_outs, verdict_words(job.place), texts(job.place, "call_note"))
    return "\n".join(note_lines(note)) + "\n"


def _calendar(job: _Job) -> str:
    from selfcheck.report.calendar import calendar
    from selfcheck.storage.archive import earlier_households

    before = earlier_households(job.chosen.folder)
    record = job.record
    return calendar(job.judgement(), record.checks, record.pump_outs, texts(job.place, "calendar"), before)


def _table(job: _Job) -> str:
    from selfcheck.report.table import checks_table

    return checks_table(job.record.household, job.record.checks, texts(job.place, "table"))


_MAKERS: dict[str, Callable[[_Job], str]] = {
    "sheet": _sheet,
    "report": _report,
    "note": _note,
    "calendar": _calendar,
    "table": _table,
}


def _pack(folder: Path, to: Path, place: Place, replace: bool) -> None:
    from selfcheck.storage.archive import pack

    packed = pack(folder)
    hand_out(to, packed.data, replace=replace, record=folder)
    _tell(place, "packed", file=to, count=packed.files)
    for name in packed.left_out:
        _tell(place, "left_out", name=name)


def _unpack(file: Path, folder: Path, place: Place) -> None:
    from selfcheck.storage.archive import unpack

    found = unpack(file, folder)
    _tell(place, "unpacked", written=found.written, folder=folder, there=found.there)
    for name in found.left_out:
        _tell(place, "left_out", name=name)


def _tell(place: Place, name: str, /, **values: object) -> None:
    Speaker(sys.stdout).say(Words(place)("handing", name, **values))
