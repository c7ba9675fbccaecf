"""Everything can be done with the keyboard, and every way out passes the lid."""

from __future__ import annotations

import asyncio
from dataclasses import replace
from typing import Any
from unittest.mock import patch

import pytest
from textual import events

from selfcheck.app.after_number import NumberThenEnter
from selfcheck.app.screens.conversation import ConversationScreen
from selfcheck.app.widgets.choices import Choices
from selfcheck.errors import FolderProblem, SelfcheckError
from tests.app.fakes import FACTS, HALF_DONE, STEPS, FakeConversation, FakeSitting, app_of, painted, running


def text_of(app: Any) -> str:
    return "\n".join(painted(app))


async def to_the_crust(pilot: Any) -> None:
    await pilot.press("1")
    await pilot.settle()
    await pilot.press("1")
    await pilot.say("none")


async def test_a_conversation_from_start_to_verdict_by_keys_alone() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (60, 20)) as pilot:
        await pilot.press("down", "enter")  # the first choice of the start
        await pilot.settle()
        await pilot.press("down", "down", "up", "enter")
        await pilot.press("3", "1", "3", "enter")
        await pilot.say("6 in", "8.5 in")
        await pilot.press("down", "enter")
        await pilot.settle()
        assert sitting.talks[0].heard == ["1", "1", "6 in", "8.5 in", "1"]
        assert sitting.concluded == sitting.talks
        await pilot.press("enter")
        await pilot.settle()
        assert "Have the tank pumped soon." in text_of(app)
        await pilot.press("enter")
        await pilot.settle()
        assert "What would you like to do?" in text_of(app)


async def test_each_key_gives_its_command() -> None:
    keys = {"f2": "why", "f3": "how", "f5": "change", "f6": "unknown", "f8": "trouble", "f9": "repeat"}
    app = app_of(FakeSitting())
    async with running(app, (80, 40)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        for key, command in keys.items():
            await pilot.press(key)
            await pilot.settle()
            assert f"Here is the {command} of it" in text_of(app)


async def test_marks_and_typed_words_go_together_and_a_number_in_a_length_is_typed() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("1", "1", *" and 3", "enter")
        assert sitting.talks[0].heard == ["1", "1 and 3"]
        assert app.screen.query_one(Choices).marked == []
        await pilot.press("1", "2")
        assert sitting.talks[0].heard == ["1", "1 and 3"]
        assert app.screen.query_one("AnswerInput").value == "12"


async def test_what_was_not_understood_stays_to_be_mended() -> None:
    app = app_of(FakeSitting())
    async with running(app, (80, 24)) as pilot:
        await to_the_crust(pilot)
        await pilot.say("rather thick")
        await pilot.settle()
        assert app.screen.query_one("AnswerInput").value == "rather thick"
        assert "I need a length here" in text_of(app)
        await pilot.say("6 in")  # typing replaces it
        await pilot.settle()
        assert "6 in, give or take half an inch." in text_of(app)


async def test_an_answer_that_cannot_be_kept_is_said_and_stays() -> None:
    class Full(FakeConversation):
        def hear(self, line: str) -> Any:
            raise FolderProblem("The disk is full.", "Make room and send the answer again.")

    sitting = FakeSitting()
    sitting.begin = lambda flow: Full(sitting.steps)  # type: ignore[method-assign]
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.say("alone")
        await pilot.settle()
        assert "The disk is full." in text_of(app)
        assert app.screen.query_one("AnswerInput").value == "alone"


async def test_leaving_with_the_lid_shut_warns_once() -> None:
    app = app_of(FakeSitting())
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("ctrl+c")
        await pilot.settle()
        assert "Press ctrl+c again to leave." in text_of(app)
        assert app.is_running
        await pilot.press("ctrl+c")
        await pilot.settle()
    assert app.return_value == 0


async def test_leaving_with_the_lid_open_asks_about_it_first() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await to_the_crust(pilot)
        await pilot.press("f1", "ctrl+c")  # also from a page on top
        await pilot.settle()
        assert "Is the lid on?" in text_of(app)
        await pilot.press("1")
        await pilot.settle()
    assert sitting.talks[0].ending is not None
    assert sitting.talks[0].ending.left
    assert not sitting.concluded
    assert app.return_value == 0


async def test_a_typed_quit_is_a_way_out() -> None:
    app = app_of(FakeSitting())
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.press(*" quit ", "enter")
        await pilot.settle()
    assert app.return_value == 0


async def test_saving_and_leaving_goes_back_to_the_start() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("f10")
        await pilot.settle()
        assert app.screen is app.home
        assert app.is_running
        await pilot.press("ctrl+c", "ctrl+c")
        await pilot.settle()
    assert app.return_value == 0


@pytest.mark.parametrize(("line", "begun"), [("go on", ["resume"]), ("he fell in", ["trouble"])])
async def test_what_is_half_done_is_offered(line: str, begun: list[str]) -> None:
    sitting = FakeSitting(facts=replace(FACTS, unfinished=HALF_DONE))
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        assert "Half done: Do the yearly check" in text_of(app)
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("escape")
        await pilot.settle()
        assert sitting.begun == []
        assert app.screen is app.home
        await pilot.press("1")
        await pilot.settle()
        await pilot.say(line)
        await pilot.settle()
        assert sitting.begun == begun


async def test_keys_pressed_before_the_record_is_read_are_kept() -> None:
    import threading

    sitting, gate = FakeSitting(), threading.Event()

    def slowly() -> Any:
        gate.wait(10)
        return sitting

    app = app_of(sitting)
    app._open_sitting = slowly
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.press("1")
        await pilot.pause()
        assert "Reading the record." in text_of(app)
        gate.set()
        await app.workers.wait_for_complete()
        await pilot.pause()
        await app.workers.wait_for_complete()
        await pilot.pause()
        assert "Who is with you at the tank?" in text_of(app)


async def test_a_record_that_cannot_be_used_ends_with_its_reason() -> None:
    def fails() -> Any:
        raise FolderProblem("There is no such folder.", "Name another.")

    app = app_of(FakeSitting())
    app._open_sitting = fails
    async with app.run_test(size=(80, 24)):
        while app.return_value is None:
            await asyncio.sleep(0.01)
    assert isinstance(app.fault, SelfcheckError)
    assert app.return_value == 2


async def test_what_is_not_saved_stands_before_the_next_question() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        sitting.trouble = "The disk is full."
        await pilot.press("1")
        await pilot.settle()
        assert "NOT SAVED. The disk is full." in text_of(app)


async def test_a_prepared_conversation_is_played_by_enter() -> None:
    sitting = FakeSitting()
    app = app_of(sitting, play=["1", "none", "6 in"], play_flow="yearly")
    async with running(app, (80, 24)) as pilot:
        await pilot.settle()
        assert sitting.begun == ["yearly"]
        await pilot.press("enter", "enter", "enter")
        await pilot.settle()
        assert sitting.talks[0].heard == ["1", "none", "6 in"]
        assert "You can go on yourself." in text_of(app)
        await pilot.say("8 in")
        assert sitting.talks[0].heard[-1] == "8 in"


@pytest.mark.parametrize(("typed", "said"), [("why", "why"), ("5", "unknown"), ("say it again", "repeat")])
async def test_the_list_of_commands_gives_what_its_key_gives(typed: str, said: str) -> None:
    app = app_of(FakeSitting())
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("ctrl+p")
        await pilot.settle()
        assert "Save and leave (f10)" in text_of(app)
        await pilot.say(typed)
        await pilot.settle()
        assert f"Here is the {said} of it" in text_of(app)


async def test_the_page_can_be_turned_light_and_plain() -> None:
    app = app_of(FakeSitting())
    async with running(app, (80, 24)) as pilot:
        for number, theme in enumerate(("dark page", "light page", "plain page"), 1):
            await pilot.press("ctrl+p")
            await pilot.settle()
            await pilot.say("colors of the page")
            assert "Plain page" in text_of(app)
            await pilot.press(str(number))
            await pilot.settle()
            assert app.theme == theme
            assert "What would you like to do?" in text_of(app)


async def test_a_click_does_what_the_key_does() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.click("#choices", offset=(5, 0))
        await pilot.settle()
        assert sitting.begun == ["yearly"]
        await pilot.click("#choices", offset=(5, 1))
        await pilot.settle()
        assert sitting.talks[0].heard == ["2"]
        await pilot.click("#keys", offset=(1, 0))
        await pilot.settle()
        assert "Here is the why of it" in text_of(app)


async def test_a_fault_of_its_own_is_handed_on_and_not_printed() -> None:
    class Broken(FakeSitting):
        def conclude(self, conversation: FakeConversation) -> Any:
            raise ZeroDivisionError("a secret in memory")

    app = app_of(Broken())
    async with running(app, (80, 24)) as pilot:
        await to_the_crust(pilot)
        await pilot.say("6 in", "8 in")
        await pilot.press("1")
        while app.return_value is None:
            await asyncio.sleep(0.01)
    assert isinstance(app.fault, ZeroDivisionError)
    assert not app._exit_renderables


async def test_a_fault_while_painting_is_handed_on_and_not_printed() -> None:
    app = app_of(FakeSitting())

    async def press() -> None:
        async with running(app, (80, 24)) as pilot:
            app.home.pick = lambda number: 1 / 0  # type: ignore[assignment, return-value]
            await pilot.press("1")
            await pilot.pause()

    with pytest.raises(ZeroDivisionError):
        await press()
    assert isinstance(app.fault, ZeroDivisionError)
    assert not app._exit_renderables


async def test_a_verdict_that_cannot_be_made_is_said() -> None:
    class Broken(FakeSitting):
        def conclude(self, conversation: FakeConversation) -> Any:
            raise FolderProblem("The rules cannot be read.", "Mend the file.")

    app = app_of(Broken())
    async with running(app, (80, 24)) as pilot:
        await to_the_crust(pilot)
        await pilot.say("6 in", "8 in")
        await pilot.press("1")
        await pilot.settle()
        await pilot.press("enter")
        await pilot.settle()
        assert "The rules cannot be read." in text_of(app)


async def test_a_key_hit_twice_does_not_answer_what_nobody_has_read() -> None:
    sitting = FakeSitting(steps=(STEPS[0], STEPS[0], STEPS[0]))
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        with patch.object(ConversationScreen, "BREATH", 1000.0):
            await pilot.press("1", "1", "1")
            await pilot.settle()
            assert sitting.talks[0].heard == []
        await pilot.press("1")
        await pilot.settle()
        assert sitting.talks[0].heard == ["1"]


async def test_the_enter_behind_a_number_closes_no_page() -> None:
    sitting = FakeSitting(facts=replace(FACTS, unfinished=HALF_DONE))
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        with patch.object(NumberThenEnter, "SOON", 1000.0):
            await pilot.press("1", "enter")
            await pilot.settle()
            assert app.screen is not app.home
            opened = app.screen
            await pilot.press("1", "enter")  # goes on with what is half done; there the enter answers nothing
            await pilot.settle()
            assert isinstance(app.screen, ConversationScreen)
            assert app.screen is not opened
            assert sitting.talks[0].heard == []
            await pilot.press("1", "enter", *"all well", "enter")
            await pilot.settle()
            assert sitting.talks[0].heard[0] == "1"
        await pilot.press("ctrl+c", "escape")


async def test_an_enter_with_no_number_before_it_or_long_after_one_goes_a_page_back() -> None:
    for before in ((), ("1",), ("x", "1", "ctrl+u")):
        app = app_of(FakeSitting(facts=replace(FACTS, unfinished=HALF_DONE)))
        async with running(app, (80, 24)) as pilot:
            await pilot.press("1")
            await pilot.settle()
            assert app.screen is not app.home
            if before != ("1",):
                with patch.object(NumberThenEnter, "SOON", 1000.0):
                    await pilot.press("left", *before, "enter")
            else:
                await pilot.press("enter")
            await pilot.settle()
            assert app.screen is app.home


async def test_keys_typed_ahead_belong_to_the_next_answer() -> None:
    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await to_the_crust(pilot)
        for key in ("6", "space", "i", "n", "enter", "x", "ctrl+u", "8", "space", "i", "n", "enter"):
            app.post_message(events.Key(key, {"space": " "}.get(key, key) if len(key) == 1 or key == "space" else None))
        await pilot.settle()
        await pilot.settle()
        assert sitting.talks[0].heard[2:] == ["6 in", "8 in"]
