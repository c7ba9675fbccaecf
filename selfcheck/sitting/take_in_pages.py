"""Bringing in what was kept elsewhere: a table of past readings, or a packed record; and taking a table out again."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.loading.conversations import texts
from selfcheck.sitting.endings import LANGUAGE, page_words
from selfcheck.sitting.steps import Back, Go, Page, Part, Stay, Step, Way
from selfcheck.sitting.table_of_readings import UNITS, Open, TableOfReadings
from selfcheck.storage import importing
from selfcheck.storage.archive import unpack
from selfcheck.storage.archive_contents import contents
from selfcheck.storage.import_rows import Row
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, PUMP_OUTS
from selfcheck.storage.named import files_in, is_archive, named
from selfcheck.storage.taking_out import Batch, Moves, batches, put_back, take_out

if TYPE_CHECKING:
    from selfcheck.sitting.record_pages import RecordPages

#: what a column may be, on the first page and on the one of the crust; so many that each has a number key
MEANINGS = ("date", "sludge", "liquid_depth", "outlet_bottom_below_surface", "pumped", "note", "leave_out")
SCUM = ("scum_total", "scum_above", "scum_below")
ROWS = 40  # rows of a table that stand on one page
LISTED = 6  # files or columns that are offered at once
ENDINGS = (".csv", ".tsv", ".txt", ".zip")
SHEETS = (".xlsx", ".xlsm", ".ods", ".numbers")  # archives too, and still no packed records


class TakeInPages:
    """The pages that lead from the name of a file to what is on record then, and back."""

    def __init__(self, record: RecordPages) -> None:
        self._sitting = record.sitting
        self._day = record.day
        self._words = page_words(record.sitting, "take_in")
        self._moves: Moves = []  # what was taken out last; it can be put back as long as these pages are open

    def ways(self) -> tuple[Way, ...]:
        """The way from the first page of the record to these."""
        return (Way(self._words("pages", "way"), lambda: Go(self.root), ("import", "take in", "table", "unpack")),)

    def root(self) -> Page:
        """Which file? And what was brought in from files before, to be taken out again."""
        words, sitting = self._words, self._sitting
        ways = [
            Way(self._out_label(one), partial(Go, partial(self._out, one)), ("undo", "take out"))
            for one in batches(sitting.checks, sitting.pump_outs)[:LISTED]
        ]
        if self._moves:
            label = words("pages", "back", count=str(len(self._moves)))
            ways.append(Way(label, self._put_back, ("put back",), slow=True))
        about = Part((words("pages", "about"), words("pages", "about_more")))
        return Page(words("pages", "title"), (about,), tuple(ways), hear=self._named, ask=words("pages", "ask_file"))

    # ------------------------------------------------------------------------------------------------- the file

    def _named(self, line: str) -> Step:
        """A file as it was typed, pasted or dragged into the terminal; or a folder, to choose from."""
        path = named(line)
        return Go(partial(self._inside, path, files_in(path, ENDINGS))) if path.is_dir() else self._opened(path)

    def _inside(self, folder: Path, found: list[Path], start: int = 0) -> Page:
        words = self._words
        ways = [Way(one.name, partial(self._named, str(one))) for one in found[start : start + LISTED]]
        if len(found) > start + LISTED:
            ways.append(Way(words("pages", "more"), lambda: Go(partial(self._inside, folder, found, start + LISTED))))
        empty = () if found else (Part((words("pages", "no_files", folder=str(folder)),)),)
        return Page(words("pages", "title"), empty, tuple(ways), hear=self._named, ask=words("pages", "ask_file"))

    def _opened(self, path: Path) -> Step:
        if is_archive(path) and path.suffix.lower() not in SHEETS:
            files, others = contents(path)
            return Go(partial(self._packed, path, tuple(files), len(others)))
        table = TableOfReadings(path, self._words, texts(self._sitting.place, "take_in", LANGUAGE))
        return self._next(table, replace=False)

    # ------------------------------------------------------------------------------------------ the conversation

    def _next(self, table: TableOfReadings, replace: bool = True) -> Step:
        """What is still to be said of the columns, one thing at a time; then all of them at once."""
        asked = table.open()
        if asked is not None:
            return Go(partial(self._question, table, asked), replace)
        if table.reviewed:  # the page of all columns lies below this one
            return Back()
        table.reviewed = True
        return Go(partial(self._columns, table), replace)

    def _question(self, table: TableOfReadings, asked: Open) -> Page:
        words, title = self._words, table.file.name
        if asked.what == "order":
            ways = tuple(
                Way(words("ask", order), partial(self._ordered, table, order)) for order in ("day_first", "month_first")
            )
            return Page(title, ways=ways, ask=asked.ask)
        assert asked.column is not None
        if asked.what == "unit":
            return self._unit(table, asked.column.place, asked.ask)
        return self._meaning(table, asked.column.place, asked.ask)

    def _ordered(self, table: TableOfReadings, order: str) -> Step:
        table.order = "day_first" if order == "day_first" else "month_first"
        return self._next(table)

    def _meaning(self, table: TableOfReadings, place: int, ask: str, kinds: Sequence[str] = MEANINGS) -> Page:
        meanings = self._words.of("meanings")

        def mean(kind: str) -> Step:
            table.mean(place, kind)
            return self._next(table)

        ways = [Way(str(meanings[kind]), partial(mean, kind)) for kind in kinds]
        if kinds is MEANINGS:
            crust = Go(partial(self._meaning, table, place, ask, SCUM), replace=True)
            ways.insert(2, Way(self._words("pages", "crust"), lambda: crust, ("scum",)))
        return Page(table.file.name, ways=tuple(ways), ask=ask)

    def _unit(self, table: TableOfReadings, place: int, ask: str) -> Page:
        def count(unit: str) -> Step:
            table.count_in(place, unit)
            return self._next(table)

        names = self._words.of("units")
        ways = tuple(Way(str(names[unit]), partial(count, unit), (unit,)) for unit in UNITS)
        return Page(table.file.name, ways=ways, ask=ask)

    def _columns(self, table: TableOfReadings) -> Page:
        """What every column is taken as, before anything is taken in."""
        words = self._words
        parts = [Part(table.told(), words("pages", "columns"), "items")]
        ways = [
            Way(words("pages", "go_on"), lambda: self._previewed(table), ("go on", "yes"), slow=True),
            Way(words("pages", "change"), lambda: Go(partial(self._which, table)), ("change",)),
        ]
        if table.order_asked:
            parts.append(Part((words("pages", f"now_{table.order}"),)))
            other = "month_first" if table.order == "day_first" else "day_first"
            ways.append(Way(words("pages", other), partial(self._turned, table)))
        return Page(table.file.name, tuple(parts), tuple(ways))

    def _turned(self, table: TableOfReadings) -> Step:
        table.order = "month_first" if table.order == "day_first" else "day_first"
        return Stay()

    def _which(self, table: TableOfReadings, start: int = 0) -> Page:
        """Which column means something else?"""
        words, here = self._words, table.columns[start : start + LISTED]

        def change(place: int) -> Step:
            table.reopen(place)
            return self._next(table)

        ways = [Way(one.heading, partial(change, one.place)) for one in here if table.table.samples(one.place)]
        if len(table.columns) > start + LISTED:
            ways.append(Way(words("pages", "more"), lambda: Go(partial(self._which, table, start + LISTED), True)))
        return Page(table.file.name, ways=tuple(ways), ask=words("pages", "ask_which"))

    # ------------------------------------------------------------------------------------------------- every row

    def _planned(self, table: TableOfReadings) -> list[Row]:
        sitting = self._sitting
        return table.rows(sitting.held, sitting.today)

    def _previewed(self, table: TableOfReadings) -> Step:
        asked = table.open()
        if asked is not None:
            return Go(partial(self._question, table, asked))
        try:
            rows = self._planned(table)
        except importing.UnlikelyUnit as error:
            return Stay(f"{error.what} {self._words('pages', 'mend')}", "trouble")
        return Go(partial(self._preview, table, rows))

    def _preview(self, table: TableOfReadings, rows: list[Row]) -> Page:
        """How many are taken; each that is not simply taken, with the reason."""
        words, units = self._words, self._sitting.household.units
        odd = [row for row in rows if row.state != "taken"]
        shown = tuple(table.tell_row(row, units) for row in odd[:ROWS])
        parts = [Part((words("pages", "would"), table.summary(rows)), kind="strong")]
        parts += [Part(shown, kind="items")] if shown else []
        taken = sum(row.state != "left_out" for row in rows)
        ways = []
        if taken:
            label = words("pages", "yes", count=str(taken))
            ways.append(Way(label, lambda: self._take(table, rows), ("yes", "take in"), slow=True))
        ways.append(Way(words("pages", "each", count=str(len(rows))), lambda: Go(partial(self._rows, table, rows))))
        return Page(table.file.name, tuple(parts), tuple(ways), ask=words("pages", "ask_sure") if taken else "")

    def _rows(self, table: TableOfReadings, rows: list[Row], start: int = 0) -> Page:
        words, units = self._words, self._sitting.household.units
        lines = tuple(table.tell_row(row, units) for row in rows[start : start + ROWS])
        left = len(rows) - start - len(lines)
        further = Go(partial(self._rows, table, rows, start + ROWS))
        ways = (Way(words("pages", "further", count=str(left)), lambda: further, ("more",)),) if left else ()
        return Page(table.file.name, (Part(lines, kind="items"),), ways)

    def _take(self, table: TableOfReadings, shown: list[Row]) -> Step:
        sitting, words = self._sitting, self._words

        def write(folder: Path) -> bool:
            rows = self._planned(table)  # another program may have written meanwhile
            if [(one.number, one.state) for one in rows] != [(one.number, one.state) for one in shown]:
                return False
            importing.write(folder, [row for row in rows if row.state != "left_out"], sitting.today, table.file.name)
            return True

        if not sitting.change_files(write):
            return Back(1, words("pages", "changed"))
        return Back(3, f"{table.summary(shown)} {words('pages', 'undo')}")

    # ------------------------------------------------------------------------------------------- a packed record

    def _packed(self, path: Path, names: tuple[str, ...], others: int) -> Page:
        words = self._words
        counts = {part: sum(name.startswith(f"{part}/") for name in names) for part in (CHECKS, PUMP_OUTS)}
        lines = [words("packed", "holds", checks=str(counts[CHECKS]), pump_outs=str(counts[PUMP_OUTS]))]
        lines += [] if HOUSEHOLD in names else [words("packed", "no_facts")]
        lines += [words("packed", "others", count=str(others))] if others else []
        lines.append(words("packed", "only"))

        def bring() -> Step:
            done = self._sitting.change_files(partial(unpack, path, alone_there=True))
            return Back(2, words("packed", "done", written=str(done.written), there=str(done.there)))

        way = Way(words("packed", "yes"), bring, ("yes",), slow=True)
        return Page(path.name, (Part(tuple(lines), kind="items"),), (way,))

    # -------------------------------------------------------------------------------------------------- out again

    def _put_back(self) -> Step:
        self._sitting.change_files(lambda folder: put_back(folder, self._moves))
        self._moves = []
        return Stay(self._words("pages", "back_done"))

    def _out_label(self, batch: Batch) -> str:
        day = self._day(batch.on)
        return self._words("pages", "out", file=batch.file, day=day, count=str(batch.count))

    def _out(self, batch: Batch) -> Page:
        """Take out again what one table brought in, after one more yes."""
        words, sitting = self._words, self._sitting
        mended = {f"{CHECKS}/{one.replaces}" for one in sitting.checks if one.replaces}
        mended |= {f"{PUMP_OUTS}/{one.replaces}" for one in sitting.pump_outs if one.replaces}

        def out() -> Step:
            self._moves = sitting.change_files(lambda folder: take_out(folder, batch.mark, mended))
            return Back(1, words("pages", "out_done", count=str(len(self._moves))))

        lines = (words("pages", "out_what", count=str(batch.count), file=batch.file), words("pages", "out_where"))
        way = Way(words("pages", "out_yes"), out, ("yes",), slow=True)
        return Page(words("pages", "out_title"), (Part(lines),), (way,))
