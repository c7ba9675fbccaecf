"""Bringing in what was kept elsewhere, page by page: nothing dropped without a word, all of it or nothing, and back."""

from __future__ import annotations

import errno
import os
import zipfile
from pathlib import Path

import pytest

from selfcheck.sitting import Sitting
from selfcheck.sitting.papers import PAPERS
from selfcheck.sitting.record_pages import RecordPages
from selfcheck.storage import writing
from selfcheck.storage.archive import pack
from tests.faults.test_failing_disk import Breaking
from tests.sitting.desks import Driven, demo, opened

PLAIN = "date,sludge (in),scum (in),pumped\n2014-05-03,6,2,\n2015-05-09,8,3,yes\n"


def at(sitting: Sitting) -> Driven:
    return Driven(RecordPages(sitting).desk()).say("bring in past readings")


def files(home: Path) -> set[str]:
    return {path.relative_to(home).as_posix() for path in home.rglob("*.json")}


def table(home: Path, text: str, name: str = "old.csv") -> str:
    path = home.parent / name
    path.write_text(text, encoding="utf-8")
    return str(path)


def test_a_table_comes_in_after_a_look_at_every_row_and_goes_out_again(sitting: Sitting, home: Path) -> None:
    before = files(home)
    text = PLAIN + "someday,7,2,\n2016-05-01,99,2,\n2026-05-16,7,2,\n2017-05-01,,,\n"
    desk = at(sitting).say(table(home, text))
    assert '"sludge (in)" is taken as: sludge (in)' in desk.text
    desk.say("1")
    assert files(home) == before
    for told in ("3 taken, 1 of them to look at, 3 left out", 'the day "someday"', "far from usual", "nothing to take"):
        assert told in desk.text
    rows = desk.say("read what becomes of each").text
    assert [f"Line {number}" in rows for number in range(2, 8)] == [True] * 6
    desk.say("back", "yes")
    assert desk.title == "My record"
    assert "3 taken" in desk.desk.said.text
    came = files(home) - before
    assert came == {f"checks/{day}.json" for day in ("2014-05-03", "2015-05-09", "2016-05-01")} | {
        "pump_outs/2015-05-09.json"
    }
    again = opened(home)
    assert len(again.checks) == len(sitting.checks) == 9
    desk.say("bring in past readings")
    assert "Take out again what came from old.csv on June 1, 2026 (4)" in desk.text
    desk.say("take out", "yes")
    assert "Taken out: 4." in desk.desk.said.text
    assert {name for name in files(home) if not name.startswith("earlier/")} == before
    assert len([name for name in files(home) if name.startswith("earlier/out-")]) == 4
    assert "Take out" not in desk.text
    assert len(sitting.checks) == 6
    desk.say("put back")
    assert "All of it is back." in desk.desk.said.text
    assert {name for name in files(home) if not name.startswith("earlier/")} == before | came
    assert "Put back" not in desk.text
    assert len(sitting.checks) == 9


def test_what_was_mended_since_stays_when_its_table_goes_out(sitting: Sitting, home: Path) -> None:
    at(sitting).say(table(home, PLAIN), "1", "yes")
    mended = next(one for one in sitting.checks if one.id == "2014-05-03").model_copy(
        update={"replaces": "2014-05-03", "taken_in": None}
    )
    writing.write_check(home, mended)
    sitting.close()
    desk = at(opened(home)).say("take out", "yes")
    assert {"checks/2014-05-03.json", "checks/2014-05-03-2.json"} <= files(home)
    assert "checks/2015-05-09.json" not in files(home)
    assert "Taken out: 2." in desk.desk.said.text


def test_columns_units_and_the_order_of_days_are_asked_and_can_be_changed(sitting: Sitting, home: Path) -> None:
    desk = at(sitting).say(table(home, "when,bottom,top\n5/4/2014,20,5\n6/3/2015,25,8\n"))
    assert 'The column "bottom" holds 20, 25' in desk.text
    desk.say("sludge")
    assert "In which unit" in desk.text
    desk.say("cm")
    assert '"top"' in desk.text
    desk.say("scum", "scum, from top to bottom", "cm")
    assert "Which comes first?" in desk.text
    desk.say("the month")
    assert "Days in figures are read with the month first." in desk.text
    desk.say("begin with the day")
    assert "Days in figures are read with the day first." in desk.text
    desk.say("means something else", "top", "a note")
    assert '"top" is taken as: a note' in desk.text
    desk.say("1", "yes")
    assert desk.title == "My record"
    found = {one.on.isoformat(): one for one in sitting.checks if one.on.year < 2016}
    assert set(found) == {"2014-04-05", "2015-03-06"}
    assert found["2014-04-05"].seen.readings.sludge[0].m == pytest.approx(0.2)
    assert found["2014-04-05"].seen.readings.scum_total == []


def test_dates_handed_out_after_each_change_come_after_those_before(sitting: Sitting, home: Path) -> None:
    def sequence() -> int:
        text = PAPERS["calendar"].make(sitting).decode()
        return max(int(line.partition(":")[2]) for line in text.splitlines() if line.startswith("SEQUENCE"))

    desk, numbers = at(sitting), [sequence()]
    for lines in ((table(home, PLAIN), "1", "yes"), ("bring in past readings", "take out", "yes"), ("put back",)):
        desk.say(*lines)
        numbers.append(sequence())
    assert numbers == sorted(set(numbers))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "There is no row of readings"),
        ("date,sludge (in)\n", "There is no row of readings"),
        ("Our tank,,\ndate,sludge (in),scum (in)\n2014-05-03,6,2\n", "one cell over several columns"),
        ("date,,sludge (in)\n2014-05-03,5,6\n", "has no heading"),
        ('date,sludge (in)\n"2014-05-03,6\n', "quotes do not match"),
        ("date,sludge (in),sludge (in)\n2014-05-03,5,6\n", "Two columns"),
        ("PK\3\4 not really", "no archive"),
    ],
)
def test_what_is_no_table_is_told_in_one_message(sitting: Sitting, home: Path, text: str, told: str) -> None:
    before = files(home)
    desk = at(sitting).say(table(home, text))
    assert told in desk.desk.said.text
    assert desk.desk.said.kind == "trouble"
    assert desk.title == "Bring in past readings"
    assert files(home) == before


def test_a_spreadsheet_that_is_no_table_in_text_says_how_to_save_it(sitting: Sitting, home: Path) -> None:
    sheet = home.parent / "old.xlsx"
    with zipfile.ZipFile(sheet, "w") as archive:
        archive.writestr("xl/workbook.xml", "<workbook/>")
    assert "save it as CSV" in at(sitting).say(str(sheet)).desk.said.text


def test_merged_cells_are_told_with_how_to_mend_them(sitting: Sitting, home: Path) -> None:
    desk = at(sitting).say(table(home, "date,sludge (in)\n2012-05-03,6\n,7\n,8\n"), "1")
    assert "Merged cells leave such gaps." in desk.desk.said.text


def test_a_likely_wrong_unit_is_told_before_anything_comes_in(sitting: Sitting, home: Path) -> None:
    before = files(home)
    desk = at(sitting).say(table(home, "date,sludge (m)\n2014-05-03,20\n2015-05-03,22\n"), "1")
    assert "is likely wrong" in desk.desk.said.text
    assert "--columns" not in desk.desk.said.text
    assert files(home) == before


@pytest.mark.parametrize(
    ("typed", "told"),
    [("no/such.csv", "no file or folder"), ("~nobody-here/x", "no file or folder"), ("x" * 5000, "cannot be used as")],
)
def test_a_file_that_is_not_there_is_told(sitting: Sitting, typed: str, told: str) -> None:
    assert told in at(sitting).say(typed).desk.said.text


def test_a_folder_offers_its_files_and_a_quoted_name_is_understood(sitting: Sitting, home: Path) -> None:
    name = table(home, PLAIN, "my old readings.csv")
    assert "my old readings.csv" in at(sitting).say(str(home.parent)).text
    for typed in (f"'{name}'", f"file://{name}", name.replace(" ", "\\ ")):
        assert at(sitting).say(typed).title == "my old readings.csv"


def test_on_a_full_disk_nothing_is_taken_in(sitting: Sitting, home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = files(home)
    desk = at(sitting).say(table(home, PLAIN), "1")
    monkeypatch.setattr(writing.os, "write", Breaking(os.write, errno.ENOSPC, 1))
    desk.say("yes")
    monkeypatch.undo()
    assert "Nothing was taken in." in desk.desk.said.text
    assert files(home) == before
    assert "3" not in desk.say("yes").desk.said.text[:1]
    assert len(files(home)) == len(before) + 3


def test_another_program_keeps_both_from_writing(sitting: Sitting, home: Path) -> None:
    other = opened(home)
    assert other.read_only == ""
    before = files(home)
    desk = at(sitting).say(table(home, PLAIN), "1", "yes")
    assert "Another selfcheck has this folder open." in desk.desk.said.text
    assert files(home) == before
    other.close()
    assert desk.say("yes").title == "My record"


def test_rows_are_shown_again_when_the_record_changed_meanwhile(sitting: Sitting, home: Path) -> None:
    desk = at(sitting).say(table(home, PLAIN), "1")
    writing.write_check(home, sitting.checks[0].model_copy(update={"on": sitting.checks[0].on.replace(2014, 5, 3)}))
    assert "changed meanwhile" in desk.say("yes").desk.said.text
    assert "another check of that day" in desk.say("1").text


def test_a_packed_record_comes_into_an_empty_folder_and_never_over_another(sitting: Sitting, home: Path) -> None:
    packed = home.parent / "old record.zip"
    packed.write_bytes(pack(home).data)
    fresh = opened(home.parent / "fresh", begin=True)
    desk = at(fresh).say(str(packed))
    assert "Checks in it: 6. Pump-outs: 2." in desk.text
    desk.say("yes")
    assert desk.title == "My record"
    assert (fresh.household, fresh.checks) == (sitting.household, sitting.checks)
    other = opened(demo(home.parent / "other"))
    other.keep_household({**other.household.model_dump(mode="json", by_alias=True), "name": "Another Lane"})
    before = files(other.folder)
    said = at(other).say(str(packed), "yes").desk.said
    assert "holds another household" in said.text
    assert files(other.folder) == before


def test_names_that_lead_out_of_an_archive_bring_nothing_in(sitting: Sitting, home: Path) -> None:
    bad = home.parent / "bad.zip"
    with zipfile.ZipFile(bad, "w") as archive:
        archive.writestr("../../household.json", "{}")
    before = files(home)
    assert "leads out of its folder" in at(sitting).say(str(bad)).desk.said.text
    assert files(home) == before
