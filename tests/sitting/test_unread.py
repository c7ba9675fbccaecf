"""What could not be read of a record keeps its verdict from being calm, whichever door it is asked at."""

from __future__ import annotations

import json
import shutil
from datetime import date
from pathlib import Path

import pytest

from selfcheck.__main__ import main
from selfcheck.errors import RecordProblem
from selfcheck.sitting.verdicts import unread_in

DEMO = Path(__file__).parents[2] / "demo_household"


def judged(folder: Path, capsys: pytest.CaptureFixture[str], day: str) -> dict[str, object]:
    main(["judge", str(folder), "--json", "--today", day])
    return dict(json.loads(capsys.readouterr().out))


@pytest.fixture
def home(tmp_path: Path) -> Path:
    folder = tmp_path / "home"
    shutil.copytree(DEMO, folder)
    return folder


def newest(folder: Path, part: str) -> Path:
    return sorted((folder / part).glob("*.json"))[-1]


@pytest.mark.parametrize("part", ["household", "checks", "pump_outs"])
def test_a_damaged_file_never_leaves_a_calm_verdict(home: Path, part: str, capsys: pytest.CaptureFixture[str]) -> None:
    day = newest(home, "checks").stem[:10]
    file = home / "household.json" if part == "household" else newest(home, part)
    file.write_text("{", encoding="utf-8")
    found = judged(home, capsys, day)
    assert found["verdict"] != "carry_on"
    assert "record_unread" in found["questionable"]  # type: ignore[operator]


def test_files_that_are_only_odd_are_not_unread() -> None:
    odd = RecordProblem("checks/a.json", "it was used all the same.", "Rename it.", used=True)
    left_open = RecordProblem("open/2026-05-18.jsonl", "a line is damaged.", "Mend it.")
    dated = RecordProblem("checks/2026-05-18-2.json", "it is empty.", "Mend it.")
    folder = RecordProblem("pump_outs", "it cannot be read.", "Check who may read it.")
    found = unread_in([odd, left_open, dated, folder])
    assert [(one.part, one.day) for one in found] == [("check", date(2026, 5, 18)), ("pump_out", None)]


@pytest.mark.parametrize("day", ["0001-01-01", "1899-12-31", "2201-01-01", "9999-12-31"])
def test_a_day_far_off_is_refused_in_a_sentence(day: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["judge", str(DEMO), "--today", day]) == 2
    assert "1900 to 2200" in capsys.readouterr().err


def test_an_unknown_rule_set_is_said(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = home / "household.json"
    file.write_text(json.dumps({**json.loads(file.read_text(encoding="utf-8")), "rules": "nope"}), encoding="utf-8")
    main(["judge", str(home), "--today", newest(home, "checks").stem[:10]])
    assert "rule set named in the record is not here" in " ".join(capsys.readouterr().out.split())
