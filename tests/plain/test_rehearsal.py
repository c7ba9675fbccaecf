"""Prepared conversations: read strictly, played the same each time, with nothing left behind."""

from __future__ import annotations

import io
from datetime import date
from pathlib import Path

import pytest

from selfcheck.__main__ import main
from selfcheck.errors import ContentProblem
from selfcheck.loading.journeys import Journey, load
from selfcheck.loading.place import content_place
from selfcheck.plain.rehearsal import play
from selfcheck.storage.working_copy import demo_household
from tests.faults.walking import lines_through

PLACE = content_place(own=False)
DAY = date(2026, 6, 1)
FIRST = "# selfcheck journey, format 1\n"


def journey(tmp_path: Path, body: str) -> Path:
    file = tmp_path / "journey.toml"
    file.write_text(FIRST + body, encoding="utf-8")
    return file


def test_a_journey_is_played_and_its_transcript_printed(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = {path: path.read_bytes() for path in demo_household().rglob("*.json")}
    file = journey(
        tmp_path,
        """
title = "From the sheet, and a slip"
person = "An owner with a filled-in sheet"
household = "demo"
today = 2026-06-01
flow = "yearly"
turns = [
    { type = "2", expect_question = "way_in", expect = "is any of this so" },
    { type = "someone fell in", expect = "danger.*do not go in" },
]
[expect]
verdict = "danger"
""",
    )
    assert main(["rehearse", str(file), "--plain"]) == 0
    shown = capsys.readouterr()
    assert shown.err == ""
    assert "> someone fell in" in shown.out
    assert "Juniper" not in shown.out or "copy" not in shown.out
    assert {path: path.read_bytes() for path in demo_household().rglob("*.json")} == before
    main(["rehearse", str(file), "--plain"])
    assert capsys.readouterr().out == shown.out


def test_surprises_are_named(tmp_path: Path) -> None:
    turns = '[{ type = "2", expect_question = "smell", expect = "a unicorn" }, { type = "back" }]'
    body = f'title = "x"\nhousehold = "demo"\ntoday = 2026-06-01\nturns = {turns}\n[expect]\nverdict = "carry_on"\n'
    played = play(load(journey(tmp_path, body)), PLACE, io.StringIO())
    words = "\n".join(played.surprises)
    for expected in ("way_in was asked, not smell", "a unicorn", "ran out", "not carry_on"):
        assert expected in words


def test_a_household_can_stand_in_the_journey_itself() -> None:
    prepared = Journey(
        title="x",
        household={"name": "Elder Row", "tanks": [{"id": "main"}]},
        checks=({"format": "selfcheck-check", "version": 1, "id": "2025-05-18", "on": "2025-05-18"},),
        pump_outs=({"format": "selfcheck-pump-out", "version": 1, "on": "2020-05-18"},),
        today=DAY,
        lines=("3", "someone fell in"),
    )
    out = io.StringIO()
    played = play(prepared, PLACE, out)
    assert played.surprises == ()
    assert played.page is not None
    assert played.page.verdict == "danger"


def test_a_whole_check_from_nothing(tmp_path: Path) -> None:
    lines = lines_through(tmp_path / "walk", "yearly", DAY, {"way_in": "sheet"})
    played = play(Journey(title="x", today=DAY, lines=tuple(lines)), PLACE, io.StringIO())
    assert played.surprises == ()
    assert played.page is not None
    assert played.outcome


@pytest.mark.parametrize(
    ("body", "key"),
    [
        ('title = "x"', "turns"),
        ('title = "x"\nlines = ["1"]\nturns = [{ type = "1" }]', "turns"),
        ('title = "x"\nlines = ["1"]\nfolder = "/etc"', "folder"),
        ('title = "x"\nlines = ["1"]\nchecks = [{ id = "a" }]', "checks"),
        ('title = "x"\nlines = ["1"]\nnonsense = 1', "nonsense"),
        ('lines = ["1"]', "title"),
    ],
)
def test_a_wrong_journey_names_the_key(tmp_path: Path, body: str, key: str) -> None:
    with pytest.raises(ContentProblem) as caught:
        load(journey(tmp_path, body))
    assert key in str(caught.value)
