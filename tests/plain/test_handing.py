"""The doors that hand something out or take it in, from the command line."""

from __future__ import annotations

import io
import json
import shutil
import sys
from pathlib import Path

import icalendar
import pytest

from selfcheck.__main__ import main
from selfcheck.plain.arguments import HANDING
from selfcheck.storage.folder import read
from selfcheck.storage.working_copy import demo_household
from tests.browsing import reaching_out

DAY = "2026-06-01"


@pytest.fixture(autouse=True)
def _own_places(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name))
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


def verdict(folder: Path, capsys: pytest.CaptureFixture[str]) -> dict[str, object]:
    capsys.readouterr()
    assert main(["judge", str(folder), "--json", "--today", DAY]) == 0
    found: dict[str, object] = json.loads(capsys.readouterr().out)
    return found


def test_each_of_them_makes_what_it_says(home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = {path: path.read_bytes() for path in home.rglob("*") if path.is_file()}
    for command, name in (("report", "a.html"), ("calendar", "a.ics"), ("table", "a.csv"), ("sheet", "s.html")):
        target = tmp_path / name
        assert main([command, str(home), "--to", str(target), "--today", DAY]) == 0
        first = target.read_bytes()
        assert main([command, str(home), "--to", str(target), "--today", DAY]) == 2
        assert "--replace" in capsys.readouterr().err
        assert main([command, str(home), "--to", str(target), "--today", DAY, "--replace"]) == 0
        assert target.read_bytes() == first
    assert reaching_out((tmp_path / "a.html").read_text("utf-8")) == []
    assert reaching_out((tmp_path / "s.html").read_text("utf-8")) == []
    assert icalendar.Calendar.from_ical((tmp_path / "a.ics").read_bytes()).walk("VEVENT")
    for command in ("sheet", "note"):
        assert main([command, str(home), "--today", DAY]) == 0
        assert len(capsys.readouterr().out.splitlines()) > 10
    assert {path: path.read_bytes() for path in home.rglob("*") if path.is_file()} == before


def test_the_whole_record_goes_elsewhere_with_its_verdict(
    home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    packed, back = tmp_path / "record.zip", tmp_path / "back"
    assert main(["pack", str(home), "--to", str(packed)]) == 0
    assert main(["unpack", str(packed), str(back)]) == 0
    assert verdict(back, capsys) == verdict(home, capsys)
    assert main(["unpack", str(packed), str(tmp_path / "record.zip")]) == 2
    assert main(["unpack", str(home / "household.json"), str(tmp_path / "other")]) == 2
    assert not (tmp_path / "other").exists()


def test_a_table_taken_in_elsewhere_leads_to_the_same_verdict(
    home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    table, new = tmp_path / "a.csv", tmp_path / "new"
    assert main(["table", str(home), "--to", str(table)]) == 0
    new.mkdir()
    shutil.copy(home / "household.json", new)
    shutil.copytree(home / "pump_outs", new / "pump_outs")
    assert main(["take-in", str(table), str(new), "--today", DAY]) == 0
    assert verdict(new, capsys) == verdict(home, capsys)
    assert main(["take-in", str(table), str(new), "--today", DAY]) == 0
    assert "0 taken" in capsys.readouterr().out


def test_what_is_not_clear_is_asked(
    home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    table = tmp_path / "own.csv"
    table.write_text("When,Depth A,Water cm\n3/4/2015,20,122\n5/4/2016,24,122\n")
    arguments = ["take-in", str(table), str(home), "--today", DAY]
    assert main(arguments) == 2
    assert '--columns "Depth A=' in capsys.readouterr().err
    monkeypatch.setattr(sys, "stdin", io.StringIO("99\n2\n2\n1\n"))  # no such choice; sludge; cm; the day first
    assert main(arguments) == 0
    out = capsys.readouterr().out
    assert "2 taken" in out
    new = {check.id: check.seen.readings.sludge[0].m for check in read(home).checks if check.on.year < 2017}
    assert new == {"2015-04-03": pytest.approx(0.2), "2016-04-05": pytest.approx(0.24)}


def test_the_same_can_be_said_on_the_command_line(home: Path, tmp_path: Path) -> None:
    table = tmp_path / "own.csv"
    table.write_text("When,Depth A,Water cm\n3/4/2015,20,122\n5/4/2016,24,122\n")
    arguments = ["take-in", str(table), str(home), "--today", DAY]
    assert main([*arguments, "--columns", "Depth A=sludge cm"]) == 2
    assert main([*arguments, "--columns", "Depth A=sludge cm", "--days", "day-first"]) == 0
    assert "2015-04-03" in {check.id for check in read(home).checks}


def test_the_invented_household_itself_is_left_as_it_is(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    table = tmp_path / "own.csv"
    table.write_text("date,sludge (in)\n2015-04-03,5\n")
    assert main(["take-in", str(table), str(demo_household()), "--today", DAY]) == 2
    assert "stays as it is" in capsys.readouterr().err


def test_what_cannot_be_used_is_said(home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for command in HANDING:
        if command in ("take-in", "unpack"):
            arguments = [command, str(tmp_path / "none.file"), str(home)]
        else:
            arguments = [command, str(tmp_path / "none"), *(["--to", str(tmp_path / "x")] if command != "note" else [])]
        assert main(arguments) == 2
        told = capsys.readouterr().err
        assert len(told.splitlines()) == 2
        assert "mistake" not in told
    for command, ending in (("pack", "zip"), ("table", "csv"), ("report", "html"), ("calendar", "ics")):
        assert main([command, str(home), "--to", str(tmp_path / "x.txt")]) == 2
        assert f"Name it x.{ending}." in capsys.readouterr().err
        assert not (tmp_path / "x.txt").exists()
    assert main(["sheet", str(home), "--tank", "none"]) == 2
    assert main(["report", str(home), "--to", str(home / "household.json"), "--replace"]) == 2
    assert main(["note", str(home), "--rules", "none"]) == 2


def test_an_educators_words_are_used(home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    words = tmp_path / "content" / "en" / "words"
    words.mkdir(parents=True)
    packaged = Path(__file__).parents[2] / "content" / "en" / "words" / "call_note.toml"
    words.joinpath("call_note.toml").write_text(
        packaged.read_text("utf-8").replace("What to say", "Read this"), "utf-8"
    )
    assert main(["note", str(home), "--today", DAY, "--content", str(tmp_path / "content")]) == 0
    assert capsys.readouterr().out.startswith("Read this")
