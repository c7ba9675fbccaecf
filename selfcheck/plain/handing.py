"""The doors that hand something out or take it in: the sheet, the page, the note, dates, tables, the whole record."""

from __future__ import annotations

import shutil
import sys
from argparse import ArgumentParser, Namespace
from contextlib import AbstractContextManager, nullcontext
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.errors import UsageProblem
from selfcheck.loading.place import Place, content_place
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.waiting import patience
from selfcheck.sitting.kept_record import KeptRecord
from selfcheck.storage.folder import read
from selfcheck.storage.handed_out import hand_out
from selfcheck.text import clean

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
    _check_ending(command, getattr(chosen, "to", None))
    if command == "take-in":
        from selfcheck.plain.taking_in import take_in

        take_in(chosen.file, chosen.folder, place, today, chosen.columns, chosen.days)
    elif command == "unpack":
        _unpack(chosen.file, chosen.folder, place)
    elif command == "pack":
        _pack(chosen.folder, chosen.to, place, chosen.replace)
    else:
        to_file = getattr(chosen, "to", None) is not None
        with _waiting(place) if to_file else nullcontext():  # what is printed is the paper alone
            asked = _Asked(chosen, place, today)
            made = _made(command, asked)
        for problem in asked.problems:
            print(problem, file=sys.stderr)
        if not to_file:
            sys.stdout.write(made.decode())
            return
        hand_out(chosen.to, made, replace=chosen.replace, record=chosen.folder)
        _tell(place, "made", file=chosen.to)


def _check_ending(command: str, to: Path | None) -> None:
    """Raises UsageProblem for a file whose name does not tell what is in it; what is no plain file has no such name."""
    ending = Path(_TO.get(command, "")).suffix
    if to is None or to.suffix.lower() == ending or (to.exists() and not to.is_file()):
        return
    raise UsageProblem(f"{clean(str(to), 300)} does not end in {ending}.", f"Name it {to.stem or 'made'}{ending}.")


class _Asked(KeptRecord):
    """The record that the command line names, judged for the tank that was asked for."""

    def __init__(self, chosen: Namespace, place: Place, today: date) -> None:
        super().__init__(chosen.folder, place, today, getattr(chosen, "rules", None))
        self.chosen = chosen
        self.hold(**read(self.folder)._asdict())

    def judgement(self) -> Judgement:
        """That of the tank which was asked for. Raises UsageProblem when there is none of that name."""
        found = super().judgement()
        wanted = getattr(self.chosen, "tank", None)
        tanks = [found, *found.others]
        for one in tanks:
            if wanted in (None, one.tank.id):
                return one
        known = ", ".join(one.tank.id for one in tanks)
        raise UsageProblem(f'There is no tank "{wanted}".', f"Name one of these: {known}.")


def _made(command: str, asked: _Asked) -> bytes:
    from selfcheck.sitting import papers

    if command == "note":
        return papers.note_text(asked, shutil.get_terminal_size().columns if sys.stdout.isatty() else None)
    if command != "sheet":
        return papers.PAPERS["page" if command == "report" else command].make(asked)
    if asked.chosen.to is None:
        return "\n".join((*papers.sheet_lines(asked), "")).encode()
    return papers.sheet_to_print(asked, asked.chosen.paper)


def _pack(folder: Path, to: Path, place: Place, replace: bool) -> None:
    from selfcheck.storage.archive import pack

    with _waiting(place):
        packed = pack(folder)
    hand_out(to, packed.data, replace=replace, record=folder)
    _tell(place, "packed", file=to, count=packed.files)
    for name in packed.left_out:
        _tell(place, "left_out", name=name)


def _unpack(file: Path, folder: Path, place: Place) -> None:
    from selfcheck.storage.archive import unpack

    with _waiting(place):
        found = unpack(file, folder)
    _tell(place, "unpacked", written=found.written, folder=folder, there=found.there)
    for name in found.left_out:
        _tell(place, "left_out", name=name)


def _waiting(place: Place) -> AbstractContextManager[None]:
    words = Words(place)
    return patience(Speaker(sys.stdout), words("handing", "working"), words)


def _tell(place: Place, name: str, /, **values: object) -> None:
    Speaker(sys.stdout).say(Words(place)("handing", name, **values))
