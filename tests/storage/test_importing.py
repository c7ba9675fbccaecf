"""Past readings from a table of one's own: every row told of, nothing guessed, nothing half taken in."""

from __future__ import annotations

import errno
import os
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household, Tank
from selfcheck.errors import FolderProblem, SelfcheckError, UsageProblem
from selfcheck.loading import content_place
from selfcheck.loading.conversations import texts
from selfcheck.report.table import checks_table
from selfcheck.storage import importing, writing
from selfcheck.storage.folder import Folder, read
from selfcheck.storage.import_columns import Column, columns, needs_meaning, needs_unit, read_table
from selfcheck.storage.importing import Row, day_order, plan
from tests.cases import build, check_of
from tests.faults.test_failing_disk import Breaking

TODAY = date(2026, 6, 1)
HOME = Folder(Household(name="Case", tanks=[Tank(id="main")]), (), (), ())


@cache
def words() -> dict[str, Any]:
    return texts(content_place(None), "take_in")


def table_of(tmp_path: Path, text: str | bytes) -> Path:
    path = tmp_path / "own.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return path


def taken(tmp_path: Path, text: str | bytes, folder: Folder = HOME, **given_columns: str) -> list[Row]:
    table = read_table(table_of(tmp_path, text))
    found = columns(table, words(), given_columns)
    return plan(table, found, folder, TODAY, day_order(table, found)[0], "own.csv")


def why(row: Row) -> list[str]:
    return [name for name, _ in row.why]


@pytest.mark.parametrize(
    ("heading", "kind", "unit"),
    [
        ("Date", "date", ""),
        ("sludge (in)", "sludge", "in"),
        ("Sludge depth, inches", "sludge", "in"),
        ("Stain mm", "sludge", "mm"),
        ('sludge "', "sludge", "in"),
        ("Sludge in tank", "sludge", ""),
        ("Crust [cm]", "scum_total", "cm"),
        ("scum above water (cm)", "scum_above", "cm"),
        ("Scum below", "scum_below", ""),
        ("water depth ft", "liquid_depth", "ft"),
        ("outlet bottom below surface (in)", "outlet_bottom_below_surface", "in"),
        ("Pumped?", "pumped", ""),
        ("Remarks", "note", ""),
        ("tank", "tank", ""),
        ("yard", "yard", ""),
        ("people hurt", "people_hurt", ""),
        ("Depth", "", ""),
        ("Total", "", ""),
        ("tank depth (in)", "", ""),
    ],
)
def test_headings_say_what_a_column_is_or_that_it_is_not_clear(
    heading: str, kind: str, unit: str, tmp_path: Path
) -> None:
    quoted = heading.replace('"', '""')
    table = read_table(table_of(tmp_path, f'"{quoted}",x\n1,2\n'))
    found = columns(table, words())[0]
    assert (found.kind, found.unit) == (kind, unit)


def test_a_row_is_counted_by_the_line_it_begins_on(tmp_path: Path) -> None:
    table = read_table(table_of(tmp_path, 'date,sludge (in),note\n\n2019-05-04,8,"two\nlines"\n2020-05-04,9,x\n'))
    assert [line for line, _ in table.rows] == [3, 5]


def test_a_heading_that_is_not_there_is_named_as_it_was_written(tmp_path: Path) -> None:
    table = read_table(table_of(tmp_path, "date,Depth A\n2019-05-04,8\n"))
    with pytest.raises(UsageProblem, match='No column is headed "Depth B"'):
        columns(table, words(), {"Depth B": "sludge in"})


def test_readings_and_pump_outs_are_taken_with_where_they_are_from(tmp_path: Path) -> None:
    rows = taken(
        tmp_path,
        "date;sludge (cm);scum (cm);water (cm);pumped;note\n"
        "2019-05-04;21,5;7;122;;first\n2020-05-04;25;8.5;122;yes;\n2021-05-04;;;;x;\n",
    )
    assert [row.state for row in rows] == ["taken"] * 3
    first = rows[0].check
    assert first is not None
    assert first.on == date(2019, 5, 4)
    assert first.seen.readings.sludge[0].m == pytest.approx(0.215)
    assert first.seen.readings.sludge[0].said == "21,5 cm"
    told = [(one["question"], one["said"]) for one in first.model_dump()["answers"]]
    assert told[0] == ("taken_in", "own.csv, line 2")
    assert ("note", "first") in told
    assert [row.pump_out.on if row.pump_out else None for row in rows] == [None, date(2020, 5, 4), date(2021, 5, 4)]
    assert rows[2].check is None


def test_each_row_that_is_not_taken_or_not_sure_says_why(tmp_path: Path) -> None:
    rows = taken(
        tmp_path,
        "date,sludge (in),water (in)\n2019-05-04,8,48\n,9,48\n2030-01-01,9,48\nsome day,9,48\n2020-05-04,abc,48\n"
        "May 2021,9,48\n2022-05-04,60,48\n2019-05-04,8,48\n2023-05-04,,\n",
    )
    assert [(row.number, row.state, why(row)) for row in rows] == [
        (2, "taken", []),
        (3, "left_out", ["no_day"]),
        (4, "left_out", ["day_ahead"]),
        (5, "left_out", ["day_unclear"]),
        (6, "questioned", ["not_read"]),
        (7, "questioned", ["day_about"]),
        (8, "questioned", ["far_off", "more_than_water"]),
        (9, "questioned", ["twice"]),
        (10, "left_out", ["nothing"]),
    ]
    kept = rows[4].check
    assert kept is not None
    assert {"question": "sludge (in)", "said": "abc", "at": ""} in kept.model_dump()["answers"]
    for row in rows:
        for name, told in row.why:
            assert "{" not in words()["why"][name].format(**told)


@pytest.mark.parametrize(
    ("days", "read_as"),
    [
        (["3/4/2019", "13/4/2020"], [date(2019, 4, 3), date(2020, 4, 13)]),
        (["3/4/2019", "4/13/2020"], [date(2019, 3, 4), date(2020, 4, 13)]),
        (["3.4.19", "13.4.20"], [date(2019, 4, 3), date(2020, 4, 13)]),
        (["2019-04-03 00:00:00", "2020-04-13T10:00"], [date(2019, 4, 3), date(2020, 4, 13)]),
    ],
)
def test_one_day_after_the_twelfth_tells_how_all_are_written(
    days: list[str], read_as: list[date], tmp_path: Path
) -> None:
    text = "date,sludge (in)\n" + "".join(f"{day},8\n" for day in days)
    assert [row.day for row in taken(tmp_path, text)] == read_as


def test_days_that_can_be_read_both_ways_are_asked_and_mixed_ones_refused(tmp_path: Path) -> None:
    table = read_table(table_of(tmp_path, "date,sludge (in)\n3/4/2019,8\n"))
    assert day_order(table, columns(table, words())) == ("", "3/4/2019")
    mixed = read_table(table_of(tmp_path, "date,sludge (in)\n13/4/2019,8\n4/13/2019,8\n"))
    with pytest.raises(UsageProblem, match="day first"):
        day_order(mixed, columns(mixed, words()))


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("Readings 2019,,\ndate,sludge (in),note\n2019-05-04,8,x\n", "one cell over several columns"),
        ("date,sludge (in),\n2019-05-04,8,3\n", "more cells than there are headings"),
        ("date,,sludge (in)\n2019-05-04,8,3\n", "has no heading"),
        ("date,sludge (in)\n2019-05-04,8\n,9\n,10\n", "no day"),
        ("date,sludge (in),sludge (in)\n2019-05-04,8,9\n", "Two columns"),
        ("date,sludge (in),water (in)\n2019-05-04,20,122\n2020-05-04,21,122\n", 'unit of "water'),
        ("date,sludge (cm)\n2019-05-04,210\n", 'unit of "sludge'),
        ("date,sludge\n2019-05-04,21\n", "has no unit"),
        ("date,depth\n2019-05-04,21\n", "not clear what"),
        ("sludge (in)\n21\n", "no column with the day"),
        ("date,day,sludge (in)\n2019-05-04,2019-05-04,8\n", "more than one column"),
        ("date,sludge (in)\n", "no row"),
        ("", "no row"),
        (b"PK\x03\x04\0\0", "plain text"),
        ('date,sludge (in)\n"2019-05-04,8\n', "quotes"),
    ],
)
def test_merged_cells_wrong_units_and_the_like_end_in_one_clear_message(
    text: str | bytes, what: str, tmp_path: Path
) -> None:
    with pytest.raises(UsageProblem, match=what) as caught:
        taken(tmp_path, text)
    assert caught.value.mend


def test_a_unit_that_the_person_names_is_believed_and_questioned_by_row(tmp_path: Path) -> None:
    rows = taken(tmp_path, "date,Depth\n2019-05-04,210\n", Depth="sludge cm")
    assert (rows[0].state, why(rows[0])) == ("questioned", ["far_off"])
    with pytest.raises(UsageProblem, match="no meaning"):
        taken(tmp_path, "date,Depth\n2019-05-04,210\n", Depth="hat size")
    with pytest.raises(UsageProblem, match="No column is headed"):
        taken(tmp_path, "date,Depth\n2019-05-04,210\n", Wide="sludge cm")
    left = taken(tmp_path, "date,sludge (in),Depth\n2019-05-04,8,210\n", Depth="leave out")
    assert left[0].state == "taken"


def test_cells_may_bring_their_own_units(tmp_path: Path) -> None:
    rows = taken(tmp_path, 'date,sludge\n2019-05-04,"8 1/2 in"\n2020-05-04,20 cm\n2021-05-04,none\n')
    read_as = [row.check.seen.readings.sludge[0].m for row in rows if row.check is not None]
    assert read_as == pytest.approx([0.2159, 0.2, 0.0])


def test_what_is_on_record_is_not_taken_twice(tmp_path: Path) -> None:
    there = check_of("2019-05-04", sludge=[8.0], scum_above=[], liquid_depth=[])
    folder = Folder(HOME.household, (there,), (PumpOut(on=date(2020, 5, 4)),), ())
    text = "date,sludge (in),pumped\n2019-05-04,8,\n2020-05-04,,yes\n"
    assert [why(row) for row in taken(tmp_path, text, folder)] == [["same"], ["same"]]
    other = taken(tmp_path, "date,sludge (in)\n2019-05-04,9\n", folder)
    assert [why(row) for row in other] == [["other"]]


def test_our_own_table_comes_back_as_the_same_readings_and_signs(tmp_path: Path) -> None:
    checks = [
        check_of("2024-05-01", sludge=[4.0, 4.5, 9.0], yard=["lush_strip"], house=[]),
        check_of("2025-05-01", smell="none", wall="unknown", roots=None),
        check_of("2026-05-01", sludge=[], scum_above=[]),
    ]
    corrected = build({"correct": {"sludge": [6, 6]}}).checks
    for units in ("us", "metric"):
        household = build().household.model_copy(update={"units": units})
        text = checks_table(household, [*checks, *corrected], texts(content_place(None), "table"))
        rows = taken(tmp_path, text, Folder(household, (), (), ()))
        assert [row.state for row in rows] == ["taken"] * 3 + ["left_out", "taken"]
        came = [row.check for row in rows if row.check is not None]
        for before, after in zip([*checks, corrected[1]], came, strict=True):
            assert _lengths(after) == pytest.approx(_lengths(before), abs=2e-5)
            assert after.seen.model_dump(exclude={"readings"}) == before.seen.model_dump(exclude={"readings"})
            assert (after.gate, after.lid_closed) == (before.gate, before.lid_closed)


def _lengths(check: Check) -> list[float]:
    return [one.m for name in type(check.seen.readings).model_fields for one in getattr(check.seen.readings, name)]


def test_all_is_written_or_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    home = tmp_path / "home"
    writing.write_household(home, HOME.household, TODAY)
    rows = taken(tmp_path, "date,sludge (in),pumped\n2019-05-04,8,\n2020-05-04,9,yes\n2021-05-04,10,\n", read(home))
    monkeypatch.setattr(writing.os, "write", Breaking(os.write, errno.ENOSPC, 2))
    with pytest.raises(FolderProblem, match="Nothing was taken in"):
        importing.write(home, rows, TODAY, "old.csv")
    monkeypatch.undo()
    assert (read(home).checks, read(home).pump_outs) == ((), ())
    importing.write(home, rows, TODAY, "old.csv")
    found = read(home)
    assert [check.id for check in found.checks] == ["2019-05-04", "2020-05-04", "2021-05-04"]
    assert [one.on for one in found.pump_outs] == [date(2020, 5, 4)]
    assert found.problems == ()


@settings(max_examples=150)
@given(st.text(alphabet=st.sampled_from("date,;\t\n\"sludge (in)0123456789./-=@'½\0é"), max_size=200))
def test_any_text_ends_in_rows_or_in_words(text: str) -> None:
    import tempfile

    with tempfile.TemporaryDirectory() as folder:
        try:
            rows = taken(Path(folder), "date,sludge (in)\n2019-05-04,8\n" + text)
        except SelfcheckError:
            return
        assert all(row.state != "left_out" or row.why for row in rows)


def test_needs_are_only_of_columns_that_hold_something(tmp_path: Path) -> None:
    table = read_table(table_of(tmp_path, "date,odd,sludge,scum\n2019-05-04,,,0\n"))
    found = columns(table, words())
    assert not any(needs_meaning(one, table) or needs_unit(one, table) for one in found)
    assert isinstance(found[0], Column)
