"""Taking in past readings: what is not clear is asked, and each row is told what became of it."""

from __future__ import annotations

import sys
from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from selfcheck.domain.showing import show_day
from selfcheck.errors import UsageProblem
from selfcheck.interview.phrases import PLACE
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import Place
from selfcheck.plain.speaking import Speaker
from selfcheck.storage import importing
from selfcheck.storage.folder import read
from selfcheck.storage.import_columns import (
    Column,
    Table,
    columns,
    needs_meaning,
    needs_unit,
    read_table,
    with_unit,
)
from selfcheck.storage.working_copy import demo_household

_UNITS = ("in", "cm", "mm", "ft", "m")
_TRIES = 3


def take_in(file: Path, folder: Path, place: Place, today: date, given: Sequence[str], days: str | None) -> None:
    """Take the table in `file` into the household in `folder`, asking for what is not clear.

    `given`: "HEADING=MEANING" as the person wrote it; `days`: how days in figures are meant. Raises UsageProblem for a
    table that cannot be used, FolderProblem for a folder that cannot be written; nothing is written then.
    """
    record = read(folder)
    if folder.resolve() == demo_household().resolve():
        raise UsageProblem("The invented household stays as it is.", "Name the folder of a household of your own.")
    told = _Told(texts(place, "take_in"))
    table = read_table(file)
    found = columns(table, told.words, _given(given))
    found = [_clear(one, table, told) for one in found]
    importing.all_clear(table, found)
    order: importing.Order
    if days:
        order = "day_first" if days == "day-first" else "month_first"
    else:
        order, sample = importing.day_order(table, found)
        if not order:
            order = told.which_order(sample)
    rows = importing.plan(table, found, record, today, order, file.name)
    taken = [row for row in rows if row.state != "left_out"]
    told.columns(found)
    if taken and not told.sure(len(taken)):
        told.say("ask", "none")
        return
    importing.write(folder, taken)
    for row in rows:
        told.row(row, record.household.units)
    doubtful = sum(row.state == "questioned" for row in rows)
    told.say("end", "taken", taken=len(taken), questioned=doubtful, left_out=len(rows) - len(taken))


def _given(said: Sequence[str]) -> dict[str, str]:
    found = {}
    for one in (part for whole in said for part in whole.split(";") if part.strip()):
        heading, equals, meaning = one.rpartition("=")
        if not equals or not heading.strip():
            raise UsageProblem(f'"{one.strip()}" names no column.', 'Write it as "HEADING=sludge in".')
        found[heading.strip()] = meaning
    return found


def _clear(column: Column, table: Table, told: _Told) -> Column:
    """The column with what the person says of it, where its heading does not say enough."""
    if needs_meaning(column, table):
        kinds = list(told.words["meanings"])
        asked = told.text("ask", "column", heading=column.heading, samples=_listed(column, table))
        number = told.pick(asked, [told.words["meanings"][kind] for kind in kinds])
        if number is None:
            return column
        named = columns(table, told.words, {column.heading: kinds[number].replace("_", " ")})
        column = named[column.place]
    if needs_unit(column, table):
        asked = told.text("ask", "unit", heading=column.heading, samples=_listed(column, table))
        number = told.pick(asked, _UNITS)
        if number is not None:
            column = with_unit(column, _UNITS[number])
    return column


def _listed(column: Column, table: Table) -> str:
    return ", ".join(table.samples(column.place))


class _Told:
    """Asks and tells, line by line. When nobody answers, a question stays open and is told as what to mend."""

    def __init__(self, words: Mapping[str, Any]) -> None:
        self.words = words
        self.out = Speaker(sys.stdout)

    def text(self, table: str, name: str, /, **values: object) -> str:
        phrase: str = self.words[table][name]
        return PLACE.sub(lambda match: str(values.get(match[1], "")), phrase)

    def say(self, table: str, name: str, /, **values: object) -> None:
        self.out.say(self.text(table, name, **values))

    def pick(self, question: str, choices: Sequence[str]) -> int | None:
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
            self.say("ask", "pick", most=len(choices))
        return None

    def which_order(self, sample: str) -> importing.Order:
        """Whether the day or the month stands first. Raises UsageProblem when nobody answers."""
        asked = self.text("ask", "order", sample=sample)
        number = self.pick(asked, [self.words["ask"]["day_first"], self.words["ask"]["month_first"]])
        if number is None:
            what = f"Days like {sample} can be read in two ways."
            raise UsageProblem(what, "Add --days day-first or --days month-first.")
        return "day_first" if number == 0 else "month_first"

    def sure(self, count: int) -> bool:
        """Whether the person says yes; without a person at the keyboard it was meant as it was written."""
        if not sys.stdin.isatty():
            return True
        self.say("ask", "sure", count=count)
        line = self._hear()
        return line is not None and line.casefold() in ("y", "yes")

    def columns(self, found: Sequence[Column]) -> None:
        """What each column was taken as."""
        for one in found:
            meaning = self.words["meanings"].get(one.kind)
            if meaning is not None:  # headings of our own tables say themselves what they are
                unit = f" ({one.unit})" if one.unit else ""
                self.say("end", "column", heading=one.heading, meaning=f"{meaning}{unit}")
        self.out.gap()

    def row(self, row: importing.Row, units: Any) -> None:
        """What became of one row, and why."""
        why = "; ".join(self.text("why", name, **told) for name, told in row.why)
        day = show_day(row.day, units) if row.day else ""
        if row.state == "left_out":
            self.say("row", "left_out", row=row.number, why=why)
        elif row.state == "questioned":
            self.say("row", "questioned", row=row.number, day=day, why=why)
        else:
            self.say("row", "taken" if row.check is not None else "pumped", row=row.number, day=day)

    def _hear(self) -> str | None:
        self.out.ask()
        line = sys.stdin.readline()
        if not line:
            return None
        if not sys.stdin.isatty():
            self.out.heard(line.strip())
        return line.strip()
