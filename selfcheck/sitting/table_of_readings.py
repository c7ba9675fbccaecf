"""A table of past readings on its way into the record: what its columns mean, and what becomes of each row."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Literal, NamedTuple

from selfcheck.domain.showing import show_day
from selfcheck.storage import importing
from selfcheck.storage.import_columns import (
    Column,
    columns,
    needs_meaning,
    needs_unit,
    read_table,
    with_unit,
)

if TYPE_CHECKING:
    from selfcheck.report.parts import PageWords
    from selfcheck.storage.folder import Folder

UNITS = ("in", "cm", "mm", "ft", "m")


class Open(NamedTuple):
    """Something that has to be said by the person: what a column is, its unit, or which of day and month is first."""

    what: Literal["column", "unit", "order"]
    column: Column | None
    ask: str


class TableOfReadings:
    """The table in one file, and what is known of its columns so far. `words`: the tables of `take_in`."""

    def __init__(self, file: Path, words: PageWords, tables: Mapping[str, object]) -> None:
        """Raises UsageProblem when there is no table in the file."""
        self.file = file
        self._words = words
        self._tables = tables
        self.table = read_table(file)
        self.columns = columns(self.table, tables)
        self.order: importing.Order = ""
        self.order_asked = False  # some days can be read both ways
        self.reviewed = False  # the person has seen what every column is taken as

    def give(self, given: Mapping[str, str]) -> None:
        """Take what a person says of columns: heading → meaning. Raises UsageProblem for one that is not there."""
        self.columns = columns(self.table, self._tables, given)

    def mean(self, place: int, kind: str) -> None:
        """A column means this."""
        heading = self.table.headings[place]
        self.columns[place] = columns(self.table, self._tables, {heading: kind.replace("_", " ")})[place]
        if kind == "date":
            self.order, self.order_asked = "", False  # other days are read

    def reopen(self, place: int) -> None:
        """What a column means is to be said anew."""
        self.columns[place] = replace(self.columns[place], kind="", unit="")

    def count_in(self, place: int, unit: str) -> None:
        """The bare numbers of a column are in this unit."""
        self.columns[place] = with_unit(self.columns[place], unit)

    def open(self) -> Open | None:
        """The next thing that is not clear; None when all is. Raises UsageProblem when the days contradict."""
        for one in self.columns:
            samples = ", ".join(self.table.samples(one.place))
            if needs_meaning(one, self.table):
                return Open("column", one, self._words("ask", "column", heading=one.heading, samples=samples))
            if needs_unit(one, self.table):
                return Open("unit", one, self._words("ask", "unit", heading=one.heading, samples=samples))
        if not self.order:
            self.order, sample = importing.day_order(self.table, self.columns)
            if not self.order:
                self.order_asked = True
                return Open("order", None, self._words("ask", "order", sample=sample))
        return None

    def rows(self, record: Folder, today: date) -> list[importing.Row]:
        """What becomes of each row. Raises UsageProblem when the table cannot be taken in so."""
        return importing.plan(self.table, self.columns, record, today, self.order, self.file.name)

    def told(self) -> tuple[str, ...]:
        """What each column is taken as, in words."""
        return tuple(line for one in self.columns if (line := self.tell_column(one)))

    def tell_column(self, column: Column) -> str:
        """What a column is taken as; empty for one of our own tables, which says itself what it is."""
        meaning = self._words.of("meanings").get(column.kind)
        if meaning is None:
            return ""
        unit = f" ({column.unit})" if column.unit else ""
        return self._words("end", "column", heading=column.heading, meaning=f"{meaning}{unit}")

    def tell_row(self, row: importing.Row, units: Literal["us", "metric"]) -> str:
        """What became of one row, and why."""
        words = self._words
        why = "; ".join(words("why", name, **told) for name, told in row.why)
        day = show_day(row.day, units) if row.day else ""
        name = row.state if row.state != "taken" or row.check is not None else "pumped"
        return words("row", name, row=str(row.number), day=day, why=why)

    def summary(self, rows: Sequence[importing.Row]) -> str:
        """How many rows are taken, how many of them are to be looked at, how many are left out."""
        taken = [row for row in rows if row.state != "left_out"]
        doubtful = sum(row.state == "questioned" for row in rows)
        counts = {"taken": len(taken), "questioned": doubtful, "left_out": len(rows) - len(taken)}
        return self._words("end", "taken", **{name: str(count) for name, count in counts.items()})
