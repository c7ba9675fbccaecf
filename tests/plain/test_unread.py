"""What could not be read is named first, in whatever is made from the rest; and things are counted in plain words."""

from __future__ import annotations

import io
import json
import shutil
import sys
from pathlib import Path

import icalendar
import pytest

from selfcheck.__main__ import main
from selfcheck.errors import RecordProblem
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import content_place
from selfcheck.report.unread import unread_line
from selfcheck.storage.working_copy import demo_household

DAY = "2026-06-01"
BROKEN = "checks/2019-05-11.json"


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name))
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


@pytest.mark.parametrize("damaged", [False, True])
def test_what_is_told_names_it_first(
    home: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], damaged: bool
) -> None:
    if damaged:
        (home / BROKEN).write_text("{")
    for command in ("judge", "note"):
        assert main([command, str(home), "--today", DAY]) == 0
        assert (BROKEN in capsys.readouterr().out.splitlines()[0]) == damaged
    page, dates = tmp_path / "a.html", tmp_path / "a.ics"
    assert main(["report", str(home), "--to", str(page), "--today", DAY]) == 0
    assert main(["calendar", str(home), "--to", str(dates), "--today", DAY]) == 0
    assert (BROKEN in page.read_text("utf-8").partition("<header")[2].partition("</header>")[0]) == damaged
    events = icalendar.Calendar.from_ical(dates.read_bytes()).walk("VEVENT")
    assert events
    assert all((BROKEN in str(event["DESCRIPTION"])) == damaged for event in events)


def test_a_danger_comes_before_it(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = home / "checks/2026-05-16.json"
    check = json.loads(file.read_text("utf-8"))
    check["seen"]["people_hurt"] = "fell_in"
    file.write_text(json.dumps(check), "utf-8")
    (home / BROKEN).write_text("{")
    assert main(["judge", str(home), "--today", "2026-05-16"]) == 0
    out = capsys.readouterr().out
    assert BROKEN not in out.splitlines()[0]
    assert BROKEN in out


def test_many_are_counted_and_odd_ones_that_were_used_left_out() -> None:
    words = texts(content_place(own=False), "unread")
    many = [RecordProblem(f"checks/{number}.json", "it breaks off.", "Mend it.") for number in range(6)]
    assert unread_line(many, words).count("checks/") == 4
    assert "and 2 more" in unread_line(many, words)
    assert unread_line([RecordProblem("checks/1.json", "odd.", "Mend it.", used=True)], words) == ""
    assert unread_line([], words) == ""


def test_one_thing_is_one_thing(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for file in [*sorted((home / "checks").iterdir())[1:], *sorted((home / "pump_outs").iterdir())[1:]]:
        file.unlink()
    assert main(["examine", str(home), "--today", DAY]) == 0
    assert "1 check, 1 pump-out, 0 left open." in capsys.readouterr().out
    next((home / "checks").iterdir()).write_text("{")
    assert main(["examine", str(home), "--today", DAY]) == 2
    assert "One thing is wrong." in capsys.readouterr().out
