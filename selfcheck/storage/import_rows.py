"""One row of a table of past readings → a check, a pump-out, or the reason why not."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any, Literal, get_args

from pydantic import ValidationError

from selfcheck.domain.check import Check, HouseSign, PumpOut, Reading, Readings, YardSign
from selfcheck.domain.household import Household
from selfcheck.domain.quantities import read_date, read_length, read_yes_no, show_length
from selfcheck.storage.import_columns import READINGS, SIGNS, Column, is_bare

Order = Literal["", "day_first", "month_first"]
#: Least and most [m] of what is read at a household's tank; outside it a unit is likely wrong. Our choice.
USUAL_M = {
    "liquid_depth": (0.6, 2.5),
    "sludge": (0.0, 1.2),
    "scum_total": (0.0, 0.7),
    "scum_above": (0.0, 0.3),
    "scum_below": (0.0, 0.5),
    "outlet_bottom_below_surface": (0.15, 1.0),
}
_SEVERAL = {"yard": get_args(YardSign), "house": get_args(HouseSign)}
_TICKS = ("x", "✓", "✔")
#: A day in figures, of which it must be known which comes first.
NUMERIC_DAY = re.compile(r"(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})")
_TIME_OF_DAY = re.compile(r"[ T]\d{1,2}:\d{2}.*$")


@dataclass(slots=True)
class Row:
    """One row and what becomes of it. `why`: the reasons, as (id in the words, what is put in)."""

    number: int
    state: Literal["taken", "questioned", "left_out"] = "taken"
    day: date | None = None
    why: list[tuple[str, dict[str, str]]] = field(default_factory=list)
    check: Check | None = None
    pump_out: PumpOut | None = None

    def leave_out(self, why: str, **told: str) -> None:
        """It is not taken, for this reason."""
        self.state, self.check, self.pump_out = "left_out", None, None
        self.why.append((why, told))

    def question(self, why: str, **told: str) -> None:
        """It is taken, and a person should look at it."""
        self.state = "questioned"
        self.why.append((why, told))


def made_of(
    number: int,
    cells: Sequence[str],
    columns: Sequence[Column],
    household: Household,
    today: date,
    order: Order,
    file: str,
) -> Row:
    """What one row makes, the rest of the record left aside. `file`: where the row is from, for its check to say."""
    row = Row(number)
    told = {one.heading: cells[one.place] for one in columns if cells[one.place]}
    by_kind = {one.kind: cells[one.place] for one in columns}
    if by_kind.get("corrected"):
        row.leave_out("corrected")
        return row
    if not _set_day(row, by_kind.get("date", ""), bool(told), today, order):
        return row
    assert row.day is not None
    tank = _tank(row, by_kind.get("tank", ""), household)
    seen, second, signs = _read(row, cells, columns)
    _see_to_pumping(row, cells, columns, tank, today, file)
    if not (seen or second or signs):
        if row.pump_out is None:
            row.leave_out("nothing")
        return row
    answers = [{"question": "taken_in", "said": f"{file}, line {number}", "at": today.isoformat()}]
    answers += [{"question": heading, "said": said, "at": ""} for heading, said in told.items()]
    raw = {"id": "", "on": row.day, "tank": tank, "answers": answers, **_about(row, by_kind)}
    raw["seen"] = {**signs, "readings": Readings(**seen)}
    if second:
        raw["seen"]["second_compartment"] = Readings(**second)
    row.check = Check.model_validate(raw)
    if _too_thick(row.check.seen.readings):
        row.question("more_than_water")
    return row


def _set_day(row: Row, said: str, something: bool, today: date, order: Order) -> bool:
    """Find the row's day; False when it has none that can be used."""
    if not said:
        row.leave_out("no_day" if something else "empty")
        return False
    text = without_time(said)
    match = NUMERIC_DAY.fullmatch(text)
    if match:
        text = _iso(match, order, today)
    found = read_date(text, today)
    if found.day is None:
        row.leave_out("day_unclear", said=said)
        return False
    if found.day > today:
        row.leave_out("day_ahead")
        return False
    row.day = found.day
    if found.earliest != found.latest:
        row.question("day_about", said=said)
    return True


def _iso(match: re.Match[str], order: Order, today: date) -> str:
    first, second, year = int(match[1]), int(match[3]), int(match[4])
    if len(match[4]) == 2:
        year += 2000 if year <= today.year % 100 else 1900
    day, month = (first, second) if order == "day_first" else (second, first)
    return f"{year:04}-{month:02}-{day:02}"


def without_time(said: str) -> str:
    """A day as it is written, without a time of day after it."""
    return _TIME_OF_DAY.sub("", said)


def _tank(row: Row, said: str, household: Household) -> str:
    known = [one.id for one in household.tanks]
    if said and known and said not in known:
        row.question("tank", said=said)
    return said or household.tank().id


def _read(
    row: Row, cells: Sequence[str], columns: Sequence[Column]
) -> tuple[dict[str, list[Reading]], dict[str, list[Reading]], dict[str, Any]]:
    """Readings of the first and second compartment, and signs."""
    seen: dict[str, list[Reading]] = {}
    second: dict[str, list[Reading]] = {}
    signs: dict[str, Any] = {}
    for one in columns:
        said = cells[one.place]
        if not said:
            continue
        if one.kind in READINGS:
            _take_length(row, said, one, second if one.second else seen)
        elif one.kind in SIGNS:
            _take_sign(row, said, one, signs)
    return seen, second, signs


def _take_length(row: Row, said: str, column: Column, into: dict[str, list[Reading]]) -> None:
    text = f"{said} {column.unit}".strip() if is_bare(said) else said
    found = read_length(text)
    if found.status == "none":
        return
    if found.metres is None:
        row.question("not_read", said=said, heading=column.heading)
        return
    into.setdefault(column.kind, []).append(Reading(m=round(found.metres, 6), said=text))
    if far_off(column.kind, found.metres):
        row.question("far_off", length=show_length(found.metres), heading=column.heading)


def _take_sign(row: Row, said: str, column: Column, into: dict[str, Any]) -> None:
    value: Any = said
    if column.kind in _SEVERAL and said != "unknown":
        value = [] if said == "none" else [part.strip() for part in said.split(";") if part.strip()]
    try:
        Check.model_validate({"id": "", "on": date(2000, 1, 1), "seen": {column.kind: value}})
    except ValidationError:
        row.question("sign", said=said, heading=column.heading)
        return
    into[column.kind] = value


def _see_to_pumping(
    row: Row, cells: Sequence[str], columns: Sequence[Column], tank: str, today: date, file: str
) -> None:
    """A pump-out that the row tells of: on its own day, or on the day that stands in the cell."""
    for one in columns:
        said = cells[one.place]
        if one.kind != "pumped" or not said:
            continue
        yes = True if said.casefold() in _TICKS else read_yes_no(said)
        told = read_date(without_time(said), today) if yes is None else None
        day = row.day if yes else told.day if told is not None else None
        if day is not None and day <= today:
            row.pump_out = PumpOut(tank=tank, on=day, note=f"{file}, line {row.number}")
        elif yes is None:
            row.question("pumped_unclear", said=said, heading=one.heading)


def _about(row: Row, by_kind: Mapping[str, str]) -> dict[str, Any]:
    about: dict[str, Any] = {}
    gate, closed = by_kind.get("gate", ""), by_kind.get("lid_closed", "")
    if gate in ("passed", "not_opened", "not_confirmed"):
        about["gate"] = gate
    if closed:
        about["lid_closed"] = read_yes_no(closed)
    return about


def length_of(cell: str, column: Column) -> float | None:
    """A cell of a column as a length [m]; None when it is none."""
    return read_length(f"{cell} {column.unit}".strip() if is_bare(cell) else cell).metres


def far_off(kind: str, metres: float) -> bool:
    """Whether a length [m] is far from what is read at a tank."""
    least, most = USUAL_M[kind]
    return not least <= metres <= most


def _too_thick(readings: Readings) -> bool:
    """Whether the sludge alone reaches up to the water line or beyond."""
    deep = max((one.m for one in readings.liquid_depth), default=None)
    return deep is not None and any(one.m >= deep for one in readings.sludge)
