"""The checks as a table (CSV, RFC 4180): one row a check, units in the header, and no cell that a program would run."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, get_args

from selfcheck.domain.check import Check, Readings, Seen
from selfcheck.domain.conversions import INCH
from selfcheck.domain.household import Household
from selfcheck.text import clean

Tables = Mapping[str, Any]
KINDS: tuple[str, ...] = tuple(Readings.model_fields)
SIGNS: tuple[str, ...] = tuple(
    name for name, field in Seen.model_fields.items() if Readings not in (field.annotation, *get_args(field.annotation))
)
SIZES = {"us": INCH, "metric": 0.01}
#: A spreadsheet takes a cell that begins with one of these for something to run.
DANGEROUS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
#: Stands between several signs in one cell.
BETWEEN = "; "


class _Lines(list[str]):
    """Takes what the writer of tables writes."""

    def write(self, text: str) -> int:
        self.append(text)
        return len(text)


def checks_table(household: Household, checks: Sequence[Check], words: Tables) -> str:
    """Every check, oldest first, also those that a later one corrects. `words`: the tables of `table`.

    Lengths in inches or centimetres as the household counts, to a thousandth; several readings of one kind in columns
    of their own. An empty cell: not read, not asked.
    """
    units = household.units
    corrected = {one.replaces: one.id for one in checks if one.replaces}
    columns = _columns(checks)
    lines = _Lines()
    writer = csv.writer(lines, lineterminator="\r\n")
    named = words["columns"]
    head = [named[one] for one in ("date", "tank", "check", "corrected")]
    head += [_heading(column, words, units) for column in columns]
    head += [*SIGNS, named["gate"], named["lid_closed"]]
    writer.writerow([cell(one) for one in head])
    for check in checks:
        row = [check.on.isoformat(), check.tank, check.id, corrected.get(check.id, "")]
        row += [_reading(check, column, SIZES[units]) for column in columns]
        row += [_sign(getattr(check.seen, name)) for name in SIGNS]
        closed = "" if check.lid_closed is None else words["values"]["yes" if check.lid_closed else "no"]
        row += [check.gate or "", closed]
        writer.writerow([cell(one) for one in row])
    return "".join(lines)


def cell(text: str) -> str:
    """A cell that no spreadsheet runs: one that could be is written with an apostrophe ahead of it."""
    safe = clean(text)
    return f"'{safe}" if safe.lstrip(" '").startswith(DANGEROUS) or safe.startswith(DANGEROUS) else safe


#: kind of reading, which one of several from 0, and whether it is of the second compartment
Column = tuple[str, int, bool]


def _columns(checks: Sequence[Check]) -> list[Column]:
    """A column for each reading that one check may hold; two for the sludge at least."""
    found: list[Column] = []
    for second in (False, True):
        for kind in KINDS:
            most = max((len(_list(check, kind, second)) for check in checks), default=0)
            least = 0 if second else 2 if kind == "sludge" else 1
            found += [(kind, number, second) for number in range(max(most, least))]
    return found


def _list(check: Check, kind: str, second: bool) -> Sequence[Any]:
    held = check.seen.second_compartment if second else check.seen.readings
    return getattr(held, kind) if held is not None else ()


def _heading(column: Column, words: Tables, units: str) -> str:
    kind, number, second = column
    name = words["readings"][kind]
    if second:
        name = words["readings"]["second"].format(reading=name)
    numbered = f"{name} {number + 1}" if number or kind == "sludge" else name
    return f"{numbered} ({words['units'][units]})"


def _reading(check: Check, column: Column, size: float) -> str:
    kind, number, second = column
    held = _list(check, kind, second)
    return f"{held[number].m / size:.3f}".rstrip("0").rstrip(".") if number < len(held) else ""


def _sign(value: str | Iterable[str] | None) -> str:
    if value is None:
        return ""
    return value if isinstance(value, str) else BETWEEN.join(value) or "none"
