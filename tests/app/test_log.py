"""What was said: laid out once a message, painted only where it is seen."""

from __future__ import annotations

from unittest.mock import patch

import pytest
from textual.app import App, ComposeResult

from selfcheck.app import themes
from selfcheck.app.widgets import log as log_module
from selfcheck.app.widgets.log import MessageLog, Own


class LogApp(App[None]):
    """A log and nothing else."""

    CSS = "MessageLog { height: 1fr; scrollbar-size-vertical: 1; scrollbar-gutter: stable; }"

    def __init__(self) -> None:
        super().__init__()
        for theme in themes.themes():
            self.register_theme(theme)
        self.theme = themes.DARK.name

    def compose(self) -> ComposeResult:
        yield MessageLog(id="log")


def turn(number: int) -> list[Own]:
    return [Own("said", f"answer {number}"), Own("say", f"Step {number}. " * 9), Own("ask", f"Question {number}?")]


@pytest.mark.parametrize("earlier", [3, 700])
async def test_a_turn_costs_the_same_however_long_the_talk_is(earlier: int) -> None:
    app = LogApp()
    async with app.run_test(size=(80, 24)) as pilot:
        log = app.query_one(MessageLog)
        for number in range(earlier):
            log.add(turn(number))
        await pilot.pause()
        laid_out, painted = 0, 0
        lines_of, render_line = log_module.lines_of, MessageLog.render_line

        def counted_lines(*arguments: object) -> object:
            nonlocal laid_out
            laid_out += 1
            return lines_of(*arguments)  # type: ignore[arg-type]

        def counted_paint(self: MessageLog, y: int) -> object:
            nonlocal painted
            painted += 1
            return render_line(self, y)

        with (
            patch.object(log_module, "lines_of", counted_lines),
            patch.object(MessageLog, "render_line", counted_paint),
        ):
            log.add(turn(earlier))
            await pilot.pause()
        assert laid_out == 3
        assert 0 < painted <= 24 * 3
        assert log.message_count == 3 * (earlier + 1)


async def test_the_newest_turn_is_in_view_and_the_earlier_ones_step_back() -> None:
    app = LogApp()
    async with app.run_test(size=(80, 24)) as pilot:
        log = app.query_one(MessageLog)
        for number in range(30):
            log.add(turn(number))
        await pilot.pause()
        strips = [log.render_line(y) for y in range(24)]
        assert "Question 29?" in strips[-1].text
        quiet = themes.style(app.theme, "past").color
        styles = {strip.text.strip(): [segment.style for segment in strip if segment.text.strip()] for strip in strips}
        assert all(style.color == quiet for style in styles["Question 28?"])
        assert all(style.color != quiet and style.bold for style in styles["Question 29?"])


async def test_a_new_width_lays_everything_out_anew() -> None:
    app = LogApp()
    async with app.run_test(size=(80, 24)) as pilot:
        log = app.query_one(MessageLog)
        for number in range(30):
            log.add(turn(number))
        await pilot.pause()
        wide = log.virtual_size.height
        await pilot.resize_terminal(40, 24)
        await pilot.pause()
        assert log.virtual_size.height > wide
        assert "Question 29?" in log.render_line(23).text
        assert all(len(log.render_line(y).text) <= 40 for y in range(24))


def test_a_caution_says_what_it_is_in_words_and_with_a_bar() -> None:
    for word, part in (("CAUTION", "caution"), ("STOP", "stop"), ("DANGER", "danger")):
        lines = log_module.lines_of(Own("caution", "Stay back. " * 12, word), 50)
        assert all(line[0].text == "▌ " for line in lines)
        assert lines[0][1].text.strip() == word
        assert lines[0][1].part == part


@pytest.mark.parametrize(("word", "first"), [("DANGER", True), ("STOP", True), ("CAUTION", False)])
async def test_a_grave_caution_is_read_from_its_first_word(word: str, first: bool) -> None:
    app = LogApp()
    async with app.run_test(size=(60, 12)) as pilot:
        log = app.query_one(MessageLog)
        log.add(turn(1))
        log.add([Own("caution", "Do not go in, not even to help. " * 30, word), Own("ask", "Is everyone out?")])
        await pilot.pause()
        seen = [log.render_line(y).text for y in range(12)]
        assert any(word in line for line in seen[:2]) is first
        assert "Is everyone out?" in seen[-1]
        log.turn_page(-9)
        await pilot.pause(0.05)
        assert "Step 1." in "".join(log.render_line(y).text for y in range(12))
        log.turn_page(9)
        await pilot.pause()
        assert "Is everyone out?" in log.render_line(11).text
        assert "▌" in log.render_line(9).text


async def test_a_grave_caution_stays_at_its_first_word_when_the_page_gets_lower() -> None:
    app = LogApp()
    async with app.run_test(size=(60, 30)) as pilot:
        log = app.query_one(MessageLog)
        log.add([*turn(1), Own("caution", "Do not go in, not even to help. " * 10, "DANGER"), Own("ask", "Out?")])
        for height in (7, 4, 8):
            await pilot.resize_terminal(60, height)
            await pilot.pause(0.05)
            assert "DANGER" in log.render_line(0).text
            assert ("Out?" in log.render_line(height - 1).text) is (height > 4)
