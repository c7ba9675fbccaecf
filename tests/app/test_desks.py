"""Pages with ways on in the terminal: the real record behind them, by keys and by words."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from selfcheck.app.screens.conversation import ConversationScreen
from selfcheck.app.screens.desk import DeskScreen
from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.loading import quick
from selfcheck.sitting import Sitting, papers
from tests.app.fakes import PLACE, SelfcheckApp, face_words, painted, running
from tests.sitting.desks import demo, opened


@pytest.fixture
def sitting(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Sitting:
    monkeypatch.setattr(papers, "papers", lambda: tmp_path / "papers")
    return opened(demo(tmp_path / "home"))


def app_of(sitting: Sitting) -> SelfcheckApp:
    return SelfcheckApp(quick.home(PLACE), face_words(), lambda: sitting)


def text_of(app: Any) -> str:
    return "\n".join(painted(app))


async def say(pilot: Any, *lines: str) -> None:
    for line in lines:
        await (pilot.press(line[1:]) if line.startswith("^") else pilot.say(line))
        await pilot.settle()


async def test_a_fact_is_changed_and_a_check_is_read(sitting: Sitting) -> None:
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await say(pilot, "my record", "house", "people", "bedrooms")
        assert isinstance(app.screen, ConversationScreen)
        assert "How many bedrooms" in text_of(app)
        await say(pilot, "5")
        assert isinstance(app.screen, DeskScreen)
        assert "Kept: bedrooms, 5. It was 3 before." in text_of(app)
        assert json.loads((sitting.folder / "household.json").read_text())["bedrooms"] == 5
        await say(pilot, "^escape", "^escape", "^1", "^1")
        assert "Check of May 16, 2026" in text_of(app)
        await say(pilot, "^f7")
        assert "wet line 48 in" in text_of(app)
        await say(pilot, "^enter", "^escape", "^escape", "^2")
        assert "sludge limit" in text_of(app)
        await say(pilot, "^escape", "^escape")
        assert app.screen is app.home


async def test_papers_removing_and_danger(sitting: Sitting, tmp_path: Path) -> None:
    app = app_of(sitting)
    async with running(app, (60, 20)) as pilot:
        await say(pilot, "my record", "papers", "3")
        assert "It is made, and lies here:" in text_of(app)
        assert len(list((tmp_path / "papers").iterdir())) == 1
        await say(pilot, "^escape", "delete everything", "1", "delete everything")
        assert "The record here is empty now." in text_of(app)
        assert "crust" not in text_of(app).partition("Kept in")[0]
        assert not (sitting.folder / "household.json").exists()
        await say(pilot, "bring back")
        assert "crust 3" in text_of(app)
        assert (sitting.folder / "household.json").exists()
        await say(pilot, "contacts", "my son fell in the tank")
        assert isinstance(app.screen, ConversationScreen)
        assert "Do not go in, not even to help." in " ".join(text_of(app).replace("▌", " ").split())


async def test_a_danger_told_in_practice_has_the_whole_page(sitting: Sitting) -> None:
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await say(pilot, "practice", "number", "42", "^1")
        assert "1st cloth" in text_of(app)
        await say(pilot, "my husband fell in")
        assert "1st cloth" not in text_of(app)
        assert "Stay out, stay back, and call your local emergency number" in text_of(app)
        await say(pilot, "^enter")
        assert "Danger: get everyone away from the tank." in text_of(app)


async def test_practice_shows_the_strips_and_comes_back_with_grades(sitting: Sitting) -> None:
    app = app_of(sitting)
    async with running(app, (120, 40)) as pilot:
        await say(pilot, "practice", "number", "42", "^1")
        assert "1st cloth" in text_of(app)
        assert "Pretend tank 42" in text_of(app)
        await say(pilot, "5.5 in", "5.5 in", "I don't know", "none", "^1")
        assert "How near you came" in text_of(app)
        await say(pilot, "^1")
        assert "The tank as it truly is" in text_of(app)
        assert sitting.unfinished() is None


async def test_the_sheet_is_printed_before_going_out(sitting: Sitting, tmp_path: Path) -> None:
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await say(pilot, "^1", "print the sheet")
        assert "The sheet is made." in text_of(app)
        await say(pilot, "^f12")
        assert len(list((tmp_path / "papers").iterdir())) == 1  # nothing has changed
        assert "How do you want to do the check?" in text_of(app)


@pytest.mark.parametrize("size", [(60, 20), (80, 24)])
async def test_danger_is_read_from_its_first_word_with_the_question_below(sitting: Sitting, size: Any) -> None:
    app = app_of(sitting)
    async with running(app, size) as pilot:
        await say(pilot, "^2", "my husband fell in")
        shown = text_of(app).replace("▌", " ").split()
        assert "DANGER" in shown
        assert "emergency number (911 in the United States) now" in " ".join(shown)


async def test_a_danger_of_an_earlier_day_is_asked_about_first(sitting: Sitting) -> None:
    talk = sitting.begin("trouble")
    talk.start()
    talk.hear("my husband fell in")
    sitting.conclude(talk)
    sitting.close()
    later = Sitting.open(sitting.folder, PLACE, date(2027, 1, 2), in_place=True, fixed_day=True)
    app = app_of(later)
    async with running(app, (60, 20)) as pilot:
        assert "Is it over, and is everyone safe?" in text_of(app)
        await say(pilot, "^1", "^escape")
        assert app.screen is app.home
        assert "Keep everyone away" not in text_of(app)


async def test_a_choice_that_does_not_fit_at_the_start_is_said_to_be_below(sitting: Sitting) -> None:
    early = Sitting.open(sitting.folder, PLACE, date(2024, 1, 1), in_place=True, fixed_day=True)
    app = app_of(early)
    async with running(app, (60, 20)) as pilot:
        assert "See my record" not in text_of(app)
        assert "more below" in text_of(app)
        await say(pilot, *["^down"] * 8)
        assert "See my record" in text_of(app)


@pytest.mark.parametrize(
    ("typed", "then"),
    [
        ("", "Checks and pump-outs"),
        ("house", "Which one is not right?"),
        ("house|people", "The people and the house"),
        ("someone fell in", "Do not go in"),
        ("someone fell in|house", "Do not go in"),
    ],
)
async def test_what_takes_long_is_said_and_what_is_typed_meanwhile_is_heard(
    sitting: Sitting, typed: str, then: str
) -> None:
    import threading

    gate = threading.Event()
    first = sitting.verdict

    def slowly() -> Any:
        gate.wait(10)
        return first()

    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        sitting.verdict = slowly  # type: ignore[method-assign]
        await pilot.say("my record")
        screen = app.screen
        while not isinstance(screen, DeskScreen):
            await pilot.pause()
            screen = app.screen
        screen._still_busy()
        await pilot.pause()
        assert "One moment." in text_of(app)
        for line in filter(None, typed.split("|")):
            await pilot.say(line)
        await pilot.press("2")
        gate.set()
        await pilot.settle()
        await pilot.settle()
        await pilot.settle()
        assert then in text_of(app)
        assert "One moment." not in text_of(app)
        if isinstance(app.screen, DeskScreen):  # a number key picks nothing that could not be seen, and is not lost
            assert app.screen.query_one(AnswerInput).value == "2"


async def test_the_tank_at_the_start_is_that_of_the_last_readings(sitting: Sitting) -> None:
    shut = sitting.checks[-1].model_copy(
        update={"id": "2026-05-30", "on": sitting.today, "seen": type(sitting.checks[-1].seen)()}
    )
    sitting.hold(checks=(*sitting.checks, shut))
    app = app_of(sitting)
    async with running(app, (80, 24)):
        assert "crust 3 · clear 39 · sludge 7 of 48 in" in text_of(app)


async def test_the_key_to_read_on_stands_only_where_there_is_more(sitting: Sitting) -> None:
    app = app_of(sitting)
    async with running(app, (60, 22)) as pilot:
        await say(pilot, "my record")
        assert "pgdn" not in text_of(app)
        await say(pilot, "whom to call")
        assert "pgdn" not in text_of(app)
        await say(pilot, "^escape", "how the layers grew")
        assert "pgdn more below" in text_of(app)
        await say(pilot, *["^pagedown"] * 6)
        assert "pgdn" not in text_of(app)
