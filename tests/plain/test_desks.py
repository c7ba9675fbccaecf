"""The record, papers and practice line by line: the same pages, as words."""

from __future__ import annotations

import io
import json
import shutil
import time
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from selfcheck.app import pages as app_pages
from selfcheck.app.words import FaceWords
from selfcheck.loading import quick
from selfcheck.loading.place import content_place
from selfcheck.plain import pages
from selfcheck.plain.face import Face
from selfcheck.plain.listening import Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone
from selfcheck.plain.waiting import PATIENCE, patience
from selfcheck.progress import tell
from selfcheck.sitting import Sitting, papers
from selfcheck.storage.working_copy import demo_household

PLACE = content_place(own=False)


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setattr(papers, "papers", lambda: tmp_path / "papers")
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


def typed(folder: Path, *lines: str) -> str:
    sitting = Sitting.open(folder, PLACE, date(2026, 6, 1), in_place=True, fixed_day=True)
    out = io.StringIO()
    face = Face(sitting, Speaker(out, 78), Listener(io.StringIO("".join(f"{line}\n" for line in lines))))
    try:
        with pytest.raises(Gone):
            face.run()
    finally:
        sitting.close()
    return out.getvalue()


def test_a_fact_is_changed_and_enter_goes_one_page_back(home: Path) -> None:
    said = typed(home, "see my record", "house", "people", "bedrooms", "5", "", "", "", "quit")
    assert "Kept: bedrooms, 5. It was 3 before." in said
    assert json.loads((home / "household.json").read_text())["bedrooms"] == 5
    assert said.count("What do you want to do?") == 2
    assert max(map(len, said.splitlines())) <= 78


def test_the_history_and_the_sheet_are_told_in_words(home: Path, tmp_path: Path) -> None:
    said = typed(home, "see my record", "2", "", "papers", "1", "1", "", "", "", "quit")
    assert "June 10, 2017: the tank was pumped out." in said
    assert "Safe or not" in said
    assert list((tmp_path / "papers").glob("*.html"))


def test_everything_is_taken_away_and_brought_back(home: Path) -> None:
    said = typed(home, "see my record", "delete everything", "1", "delete everything", "bring back", "", "quit")
    assert "The record here is empty now." in said
    assert "All of it is back." in said
    assert len(list((home / "checks").iterdir())) == 6


def test_practice_tells_between_which_marks_each_strip_ends(home: Path) -> None:
    before = sorted(path.name for path in home.rglob("*"))
    lines = (
        "practice",
        "number",
        "42",
        "look",
        "5.5 in",
        "5.5 in",
        "I don't know",
        "none",
        "carry on",
        "1",
        "",
        "",
        "",
    )
    said = typed(home, *lines, "quit")
    assert "1st cloth: ends between" in said
    assert "How near you came" in said
    assert "The tank as it truly is" in said
    assert sorted(path.name for path in home.rglob("*") if path.name != ".lock") == before


def test_danger_on_a_page_is_taken_up_at_once(home: Path) -> None:
    said = typed(home, "see my record", "contacts", "my son fell in the tank")
    assert "Do not go in, not even to help." in " ".join(said.split())


def test_whoever_waits_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("selfcheck.plain.waiting.PATIENCE", 0.01)
    monkeypatch.setattr("selfcheck.plain.waiting.AGAIN", 0.01)
    out, words = io.StringIO(), Words(content_place(own=False))
    with patience(Speaker(out, 78), "One moment.", words):
        while not out.getvalue():
            time.sleep(0.001)
    with monkeypatch.context() as more:
        more.setattr("selfcheck.plain.waiting.PATIENCE", 60.0)
        with patience(Speaker(out, 78), "Never said.", words):
            pass
    assert out.getvalue() == "One moment.\n"
    with patience(Speaker(out, 78), "One moment.", words):
        tell(1200, 5000)
        while "5,000" not in out.getvalue():
            time.sleep(0.001)
    assert "1,200 of 5,000 done." in out.getvalue()
    assert PATIENCE < 1.0


def test_the_place_of_a_file_is_never_broken_in_two() -> None:
    path = "/home/somebody/Documents with a space/septic-tank-papers/Juniper-Lane-sheet-2026-06-20.html"
    out = io.StringIO()
    speaker = Speaker(out, 40)
    speaker.say(f"It is made, and lies here:\n{path}")
    speaker.say("The details are in /home/somebody/.local/state/selfcheck/a-long-name/trace.txt.", "  ", "- ")
    lines = out.getvalue().splitlines()
    assert path in lines
    assert "  /home/somebody/.local/state/selfcheck/a-long-name/trace.txt." in lines


@pytest.mark.parametrize(("told", "listed"), [("danger", False), ("call_now", False), ("call_soon", True)])
def test_by_whose_rule_is_not_listed_where_no_rule_has_a_say(told: str, listed: bool) -> None:
    sitting = Sitting.open(demo_household(), content_place(own=False), date(2026, 6, 1), in_place=True)
    page = replace(sitting.verdict(), verdict=told)
    assert page.rule_rows
    out = io.StringIO()
    pages.verdict(page, Speaker(out), Words(sitting.place))
    assert ("By whose rule is it due?" in out.getvalue()) is listed
    shown = [text for text, _ in app_pages.verdict(page, FaceWords(quick.words(sitting.place, "screen")))]
    assert ("By whose rule is it due?" in shown) is listed
