"""Past readings from a table of one's own → checks and pump-outs, each row with what became of it.

Nothing is dropped without a word: a row is taken, taken with a question, or left out with the reason. What cannot be
read stays in the answers of its check as it was written.
"""

from __future__ import annotations

import contextlib
from collections.abc import Sequence
from datetime import date
from pathlib import Path

from selfcheck.domain.check import Check
from selfcheck.domain.quantities import show_length
from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.progress import tell
from selfcheck.storage.folder import Folder
from selfcheck.storage.import_columns import READINGS, Column, Table, needs_meaning, needs_unit
from selfcheck.storage.import_rows import NUMERIC_DAY, Order, Row, far_off, length_of, made_of, without_time
from selfcheck.storage.layout import CHECKS, PUMP_OUTS
from selfcheck.storage.taking_out import TAKEN_IN, new_mark
from selfcheck.storage.writing import write_check, write_pump_out

__all__ = ["Order", "Row", "all_clear", "day_order", "plan", "write"]


class UnlikelyUnit(UsageProblem):
    """A column is likely in another unit than its heading says."""


def day_order(table: Table, columns: Sequence[Column]) -> tuple[Order, str]:
    """Which of day and month comes first, and a day as it is written; "" when some may be read both ways.

    One day after the twelfth tells it for the whole table.
    """
    dates = [without_time(cell) for one in columns if one.kind == "date" for cell in table.samples(one.place, 10**6)]
    written = [match for cell in dates if (match := NUMERIC_DAY.fullmatch(cell))]
    orders: set[Order] = set()
    for match in written:
        if int(match[1]) > 12:
            orders.add("day_first")
        elif int(match[3]) > 12:
            orders.add("month_first")
    if len(orders) > 1:
        raise UsageProblem("Some days have the day first and some the month.", "Write all of them like 2024-05-18.")
    if orders or not written:
        return (orders.pop() if orders else "month_first"), ""
    return "", written[0][0]


def plan(table: Table, columns: Sequence[Column], folder: Folder, today: date, order: Order, file: str) -> list[Row]:
    """What becomes of each row; nothing is written yet.

    Raises UsageProblem when a column or its unit is not clear, when there is no date, and when a unit is likely wrong.
    """
    all_clear(table, columns)
    _units_likely(table, columns)
    found = [made_of(number, cells, columns, folder.household, today, order, file) for number, cells in table.rows]
    days = [one for one in found if ("no_day", {}) in one.why]
    if len(days) * 2 > len(found):
        raise UsageProblem(
            "Most rows have no day.", "Merged cells leave such gaps. Fill the day in on each row, and save it again."
        )
    _beside_the_record(found, folder)
    return found


def write(folder: Path, rows: Sequence[Row], today: date, file: str) -> None:
    """Write what was taken, all of it or nothing, as the one writer of the folder. Raises FolderProblem.

    Each record carries the same new mark, by which all of them can be taken out again. `file`: where they come from.
    """
    mark = {TAKEN_IN: new_mark(today, file)}
    written: list[Path] = []
    try:
        for number, row in enumerate(rows):
            tell(number, len(rows))
            if row.check is not None:
                check = write_check(folder, row.check.model_copy(update=mark))
                written.append(folder / CHECKS / f"{check.id}.json")
            if row.pump_out is not None:
                name = write_pump_out(folder, row.pump_out.model_copy(update=mark))
                written.append(folder / PUMP_OUTS / f"{name}.json")
    except BaseException as problem:  # an interrupt too must leave nothing half taken in
        for path in written:
            with contextlib.suppress(OSError):
                path.unlink()
        if isinstance(problem, FolderProblem):
            raise FolderProblem(f"{problem.what} Nothing was taken in.", problem.mend) from problem
        raise


def all_clear(table: Table, columns: Sequence[Column]) -> None:
    """Raises UsageProblem for a column whose meaning or unit is not clear, and when not just one holds the day."""
    for one in columns:
        if needs_meaning(one, table):
            what = f'It is not clear what the column "{one.heading}" is.'
            raise UsageProblem(what, f'Say so: --columns "{one.heading}=sludge in", or "{one.heading}=leave out".')
        if needs_unit(one, table):
            name = one.kind.replace("_", " ")
            what = f'The column "{one.heading}" has no unit.'
            raise UsageProblem(what, f'Put it in the heading, or say so: --columns "{one.heading}={name} in".')
    dates = [one for one in columns if one.kind == "date"]
    if len(dates) != 1:
        count = "no column" if not dates else "more than one column"
        raise UsageProblem(f"There is {count} with the day of the check.", "Head one column of the table: date.")


def _units_likely(table: Table, columns: Sequence[Column]) -> None:
    """Refuse a column most of which is far from what is read at a tank, unless its unit was named by the person."""
    for one in columns:
        if one.kind not in READINGS or one.given:
            continue
        read = [length_of(cell, one) for cell in table.samples(one.place, 10**6)]
        told = [metres for metres in read if metres]
        far = [metres for metres in told if far_off(one.kind, metres)]
        if len(far) * 2 > len(told):
            name = one.kind.replace("_", " ")
            what = f'The unit of "{one.heading}" is likely wrong: read so, it holds {show_length(far[0])}.'
            raise UnlikelyUnit(f"{what} Nothing was taken in.", f'Name it: --columns "{one.heading}={name} cm".')


def _beside_the_record(rows: Sequence[Row], folder: Folder) -> None:
    """Leave out what is on record already, and what another check of that day may say better."""
    on_record: dict[tuple[str, date], list[Check]] = {}
    for check in folder.checks:
        on_record.setdefault((check.tank, check.on), []).append(check)
    emptied = {(one.tank, one.on) for one in folder.pump_outs}
    days: set[tuple[str, date]] = set()
    for row in rows:
        if row.pump_out is not None and (row.pump_out.tank, row.pump_out.on) in emptied:
            row.pump_out = None
            if row.check is None:
                row.leave_out("same")
                continue
        if row.pump_out is not None:
            emptied.add((row.pump_out.tank, row.pump_out.on))
        if row.check is None:
            continue
        place = (row.check.tank, row.check.on)
        if place in on_record:
            same = any(_lengths(one) == _lengths(row.check) for one in on_record[place])
            if row.pump_out is None:
                row.leave_out("same" if same else "other")
            else:
                row.check = None
                row.question("same" if same else "other")
        elif place in days:
            row.question("twice")
        days.add(place)


def _lengths(check: Check) -> list[tuple[str, float]]:
    read = check.seen.readings
    return sorted((kind, round(one.m, 3)) for kind in READINGS for one in getattr(read, kind))
