"""A table of one's own: its text → rows of cells, and what each column is taken to mean.

Only a heading tells what a column is. One that does not is asked for; nothing is guessed from the numbers.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from selfcheck.domain.check import Readings, Seen
from selfcheck.errors import UsageProblem
from selfcheck.storage.reading import MOST_BYTES
from selfcheck.text import clean

#: Rows and columns that one table may have at most. Our choice.
MOST_ROWS, MOST_COLUMNS = 5_000, 100
READINGS = frozenset(Readings.model_fields)
SIGNS = frozenset(Seen.model_fields) - {"readings", "second_compartment"}
#: Names of units as they stand in headings.
UNITS = {
    "in": "in", "inch": "in", "inches": "in", '"': "in", "″": "in", "ft": "ft", "feet": "ft", "foot": "ft",
    "cm": "cm", "centimeter": "cm", "centimeters": "cm", "centimetre": "cm", "centimetres": "cm",
    "mm": "mm", "millimeter": "mm", "millimeters": "mm", "millimetre": "mm", "millimetres": "mm",
    "m": "m", "meter": "m", "meters": "m", "metre": "m", "metres": "m",
}  # fmt: skip
_BARE = re.compile(r"[\d\s.,/¼½¾⅛⅜⅝⅞-]*[\d¼½¾⅛⅜⅝⅞][\d\s.,/¼½¾⅛⅜⅝⅞]*")
_LAST_WORD = re.compile(r"""(?:[\s(\[/,]|^)(["″]|[a-z]+)[)\].]*$""")
_MERGED = "Merged cells leave such gaps. Take the cells apart, fill each one, and save the table again."


@dataclass(frozen=True, slots=True)
class Table:
    """Headings, and the rows with the line of the file that each begins on."""

    headings: tuple[str, ...]
    rows: tuple[tuple[int, tuple[str, ...]], ...]

    def samples(self, place: int, most: int = 3) -> list[str]:
        """The first cells of a column that are not empty."""
        return [cells[place] for _, cells in self.rows if cells[place]][:most]


@dataclass(frozen=True, slots=True)
class Column:
    """A column and what it is taken to mean: `kind`, or "" when that is not clear; `unit` where its heading has one.

    `given`: the person said so.
    """

    place: int
    heading: str
    kind: str = ""
    unit: str = ""
    second: bool = False
    given: bool = False


def read_table(file: Path) -> Table:
    """The table in a CSV file with commas, semicolons or tabs. Raises UsageProblem when it is none."""
    lines = _cells(_text(file), file)
    filled = [(number, cells) for number, cells in lines if any(cells)]
    if len(filled) < 2:
        raise UsageProblem(
            f"There is no row of readings in {file}.", "The first row holds headings, the rest readings."
        )
    first, headings = filled[0]
    if sum(map(bool, headings)) == 1 and sum(map(bool, filled[1][1])) > 1:
        raise UsageProblem(f"Line {first} of {file} is one cell over several columns, not a row of headings.", _MERGED)
    width = max((place + 1 for place, heading in enumerate(headings) if heading), default=0)
    if width > MOST_COLUMNS or len(filled) > MOST_ROWS:
        raise UsageProblem(
            f"{file} has too many rows or columns.", f"At most {MOST_ROWS} rows, {MOST_COLUMNS} columns."
        )
    rows = []
    for number, cells in filled[1:]:
        if any(cells[width:]):
            raise UsageProblem(f"Line {number} of {file} has more cells than there are headings.", _MERGED)
        rows.append((number, tuple((cells + [""] * width)[:width])))
    table = Table(tuple(headings[:width]), tuple(rows))
    for place, heading in enumerate(table.headings):
        if not heading and table.samples(place):
            raise UsageProblem(f"Column {place + 1} of {file} has no heading.", _MERGED)
    twice = next((one for one in table.headings if one and table.headings.count(one) > 1), None)
    if twice is not None:
        raise UsageProblem(f'Two columns of {file} are headed "{twice}".', "Give each column a heading of its own.")
    return table


def columns(table: Table, words: Mapping[str, Any], given: Mapping[str, str] | None = None) -> list[Column]:
    """What each column means. `words`: the tables of `take_in`; `given`: heading → meaning, as the person said it.

    Raises UsageProblem for a heading that is not there and a meaning that is not known.
    """
    told = {heading.casefold().strip(): (heading.strip(), meaning) for heading, meaning in (given or {}).items()}
    found = []
    for place, heading in enumerate(table.headings):
        _, said = told.pop(heading.casefold(), ("", None))
        if said is None:
            found.append(_meant(Column(place, heading), heading, words))
            continue
        column = _meant(Column(place, heading, given=True), said, words)
        if not column.kind:
            raise UsageProblem(f'"{clean(said, 60)}" is no meaning of a column.', _known(words))
        found.append(column)
    wanted = next((heading for heading, _ in told.values()), None)
    if wanted is not None:
        headings = ", ".join(f'"{one}"' for one in table.headings if one)
        raise UsageProblem(f'No column is headed "{clean(wanted, 60)}".', f"There are: {headings}.")
    return found


def with_unit(column: Column, unit: str) -> Column:
    """The column with a unit that the person named."""
    return replace(column, unit=unit, given=True)


def needs_meaning(column: Column, table: Table) -> bool:
    """Whether it is not clear what a column is, and there is something in it."""
    return not column.kind and bool(table.samples(column.place))


def needs_unit(column: Column, table: Table) -> bool:
    """Whether a column of readings has numbers without a unit, and none in its heading either."""
    if column.kind not in READINGS or column.unit:
        return False
    return any(is_bare(cell) and cell.strip("0., ") for cell in table.samples(column.place, MOST_ROWS))


def is_bare(cell: str) -> bool:
    """Whether a cell is a number and nothing else."""
    return _BARE.fullmatch(cell) is not None


def _meant(column: Column, said: str, words: Mapping[str, Any]) -> Column:
    """The column with the first meaning that fits what is said of it."""
    low = said.casefold().strip()
    if low.replace(" ", "_") in SIGNS:
        return replace(column, kind=low.replace(" ", "_"))
    heads = words["heads"]
    second = _holds(low, heads["second"]["any"])
    if second:
        low = re.sub("|".join(map(re.escape, heads["second"]["any"])), " ", low)
    for kind, head in heads.items():
        if kind == "second" or not _holds(low, head["any"]):
            continue
        if "with" in head and not _holds(low, head["with"]):
            continue
        if head.get("alone") and low not in head["any"]:
            continue
        unit = _unit(low) if kind in READINGS else ""
        return replace(column, kind=kind, unit=unit, second=second)
    return column


def _holds(said: str, parts: Sequence[str]) -> bool:
    return any(re.search(rf"(?<![^\W_]){re.escape(part)}(?![^\W_])", said) for part in parts)


def _unit(said: str) -> str:
    """The unit at the end of a heading: `sludge (in)`, `sludge, cm`, `sludge mm`."""
    match = _LAST_WORD.search(said)
    return UNITS.get(match[1], "") if match else ""


def _known(words: Mapping[str, Any]) -> str:
    listed = ", ".join(name.replace("_", " ") for name in words["meanings"])
    return f'Write it as "HEADING=sludge in". It may be: {listed}; lengths with in, cm, mm, ft or m.'


def _text(file: Path) -> str:
    try:
        if not file.is_file():
            raise UsageProblem(f"There is no file {file}.", "Check the name.")
        if file.stat().st_size > MOST_BYTES:
            raise UsageProblem(f"{file} is larger than {MOST_BYTES // 1_000_000} MB.", "Take in a smaller part of it.")
        data = file.read_bytes()
    except OSError as error:
        what = f"{file} cannot be read ({error.strerror})."
        raise UsageProblem(what, "Check the name and who may read it.") from error
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        text = data.decode("utf-16", errors="replace")
    else:
        try:
            text = data.decode("utf-8-sig")
        except UnicodeDecodeError:
            text = data.decode("cp1252", errors="replace")
    if "\0" in text or data.startswith(b"PK"):
        raise UsageProblem(f"{file} is no table in plain text.", "Open it in its own program and save it as CSV.")
    return text


def _cells(text: str, file: Path) -> list[tuple[int, list[str]]]:
    first = text.lstrip("\r\n").partition("\n")[0]
    between = max((",", ";", "\t"), key=first.count)
    try:
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=between, strict=True)
        begun, rows = 1, []
        for cells in reader:
            rows.append((begun, [_cell(one) for one in cells]))
            begun = reader.line_num + 1
        return rows
    except csv.Error as error:
        raise UsageProblem(
            f"{file} breaks off or its quotes do not match ({error}).", "Save it as CSV again."
        ) from error


def _cell(text: str) -> str:
    """The cell without what was put ahead of it so that no spreadsheet runs it."""
    kept = " ".join(clean(text, 500).split())
    return kept[1:] if len(kept) > 1 and kept[0] == "'" and not kept[1].isalnum() else kept
