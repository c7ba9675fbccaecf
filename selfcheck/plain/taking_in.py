"""Taking in past readings as a command: what is not clear is asked, and each row is told what became of it."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path

from selfcheck.errors import UsageProblem
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import Place
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.waiting import patience
from selfcheck.report.parts import PageWords
from selfcheck.sitting.table_of_readings import UNITS, Open, TableOfReadings
from selfcheck.storage import importing
from selfcheck.storage.folder import read
from selfcheck.storage.lock import alone
from selfcheck.storage.working_copy import demo_household

_TRIES = 3


def take_in(file: Path, folder: Path, place: Place, today: date, given: Sequence[str], days: str | None) -> None:
    """Take the table in `file` into the household in `folder`, asking for what is not clear.

    `given`: "HEADING=MEANING" as the person wrote it; `days`: how days in figures are meant. Raises UsageProblem for a
    table that cannot be used, FolderProblem for a folder that cannot be written; nothing is written then.
    """
    record = read(folder)
    if folder.resolve() == demo_household().resolve():
        raise UsageProblem("The invented household stays as it is.", "Name the folder of a household of your own.")
    tables = texts(place, "take_in")
    words = PageWords("en/words/take_in.toml", tables)
    asking = _Asking(words)
    table = TableOfReadings(file, words, tables)
    table.give(_given(given))
    if days:
        table.order = "day_first" if days == "day-first" else "month_first"
    while (asked := table.open()) is not None and asking.clear(table, asked):
        pass
    rows = table.rows(record, today)
    taken = [row for row in rows if row.state != "left_out"]
    for line in table.told():
        asking.out.say(line)
    asking.out.gap()
    if taken and not asking.sure(len(taken)):
        asking.out.say(words("ask", "none"))
        return
    with alone(folder), patience(asking.out, words("ask", "working"), Words(place)):
        importing.write(folder, taken, today, file.name)
    for row in rows:
        asking.out.say(table.tell_row(row, record.household.units))
    asking.out.say(table.summary(rows))


def _given(said: Sequence[str]) -> dict[str, str]:
    found = {}
    for one in (part for whole in said for part in whole.split(";") if part.strip()):
        heading, equals, meaning = one.rpartition("=")
        if not equals or not heading.strip():
            raise UsageProblem(f'"{one.strip()}" names no column.', 'Write it as "HEADING=sludge in".')
        found[heading.strip()] = meaning
    return found


class _Asking:
    """Asks line by line. When nobody answers, a question stays open and is told as what to mend."""

    def __init__(self, words: PageWords) -> None:
        self.words = words
        self.out = Speaker(sys.stdout)

    def clear(self, table: TableOfReadings, asked: Open) -> bool:
        """Ask for what is not clear of a table. False: nobody answered. Raises UsageProblem for the days then."""
        if asked.what == "order":
            number = self._pick(asked.ask, [self.words("ask", name) for name in ("day_first", "month_first")])
            if number is None:
                raise UsageProblem("Some days can be read in two ways.", "Add --days day-first or --days month-first.")
            table.order = "day_first" if number == 0 else "month_first"
            return True
        assert asked.column is not None
        if asked.what == "unit":
            number = self._pick(asked.ask, UNITS)
            if number is not None:
                table.count_in(asked.column.place, UNITS[number])
            return number is not None
        meanings = self.words.of("meanings")
        number = self._pick(asked.ask, list(meanings.values()))
        if number is not None:
            table.mean(asked.column.place, list(meanings)[number])
        return number is not None

    def sure(self, count: int) -> bool:
        """Whether the person says yes; without a person at the keyboard it was meant as it was written."""
        if not sys.stdin.isatty():
            return True
        self.out.say(self.words("ask", "sure", count=str(count)))
        line = self._hear()
        return line is not None and line.casefold() in ("y", "yes")

    def _pick(self, question: str, choices: Sequence[str]) -> int | None:
        """The place of the choice that the person names by its number; None when nobody answers."""
        self.out.say(question)
        for number, label in enumerate(choices, 1):
            self.out.choice(number, label)
        for _ in range(_TRIES):
            line = self._hear()
            if line is None:
                return None
            if line.isdecimal() and 0 < int(line[:6]) <= len(choices):
                return int(line) - 1
            self.out.say(self.words("ask", "pick", most=str(len(choices))))
        return None

    def _hear(self) -> str | None:
        self.out.ask()
        line = sys.stdin.readline()
        if not line:
            return None
        if not sys.stdin.isatty():
            self.out.heard(line.strip())
        return line.strip()
