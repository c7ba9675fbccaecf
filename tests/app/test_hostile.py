"""Text that tries to act: from the person, from the record, from content. It may be shown, never obeyed."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import replace
from typing import Any

import pytest

from selfcheck.app.content_text import shown, wrapped
from selfcheck.errors import RecordProblem
from selfcheck.interview.messages import Message
from tests.app.fakes import FACTS, HALF_DONE, PAGE, FakeSitting, Step, app_of, painted, running, sent

CORPUS = (
    "[@click=app.quit]press me[/]",
    "[/] [b] [not a tag",
    "[red]x[/red] \\[b] $accent",
    "\x1b]52;c;aGVsbG8=\x07",
    "\x1b]8;;https://example.org\x1b\\link\x1b]8;;\x1b\\",
    "\x1b[2J\x1b[H\x1b[31mred",
    "\x9b31mc1 \x90q\x9c \x85",
    "nul\x00bell\x07back\x08tab\tdel\x7f",
    "right\u202eto left\u2066 \u200bzero\u200d\ufeff",
    "lines\u2028and\u2029paragraphs\r\nand more",
    "tag\U000e0041\U000e0042 \ufffe",
    "{name} %s {0} ${x}",
    "wide 漢字かな字 and e\u0301\u0302\u0303 marks",
    "x" * 5000,
)
COLOUR = re.compile(r"\x1b\[[0-9;]*m")


def harmless(text: str) -> None:
    """Nothing but colours and plain signs reach the terminal."""
    left = COLOUR.sub("", text)
    bad = {character for character in left if unicodedata.category(character) in ("Cc", "Cf", "Cs", "Zl", "Zp")}
    assert not bad, bad


def everywhere(text: str) -> FakeSitting:
    """A record in which every text that can come from outside is this one."""
    problem = RecordProblem(text, text, text)
    kinds = ("say", "echo", "caution", "help", "note", "trouble", "ask", "said")
    said = [Message(kind, text, text, text) for kind in kinds]  # type: ignore[arg-type]
    steps = (
        Step("first", "choose", text, said, (text, text), text, True),
        Step("second", "choose_several", text, said, (text, text), text, True),
        Step("third", "length", text, said, (), text),
        Step("fourth", "note", text, said, (), text),
    )
    texts = (text, text)
    page = replace(
        PAGE,
        headline=text, do=text, by=text, sure=text, because=texts, kind=text, seen=texts, why=texts, rule_rows=texts,
        when_next=texts, not_checked=texts, questionable=texts, would_change=texts, always=texts,
    )  # fmt: skip
    facts = replace(FACTS, name=text, verdict_line=text, problems=(problem,))
    return FakeSitting(steps=steps, page=page, facts=facts, problems=(problem,), read_only=text, trouble=text)


@pytest.mark.parametrize(
    ("text", "size"),
    [("\n".join(CORPUS[:6]), (120, 40)), (" ".join(CORPUS[6:]), (60, 20))],
    ids=["acting", "odd and long"],
)
async def test_every_page_stays_harmless(text: str, size: tuple[int, int]) -> None:
    app = app_of(everywhere(text))
    async with running(app, size) as pilot:

        async def look(*keys: str) -> None:
            await pilot.press(*keys)
            await pilot.settle()
            harmless(sent(app))

        await look()
        await look("5")  # the record
        await look("1")
        await look("1")
        await look("escape")
        await look("escape")
        await look("3")
        await look("escape")
        await look("4")
        await look("1")
        await look("escape")
        await look("escape")
        await look("escape")
        await look("1")  # a conversation
        await look("f2")
        await look("1")
        await look("2", "enter")
        pilot.app.screen.query_one("AnswerInput").insert_text_at_cursor(text)
        await look()
        await look("enter")
        await look("ctrl+u")
        await pilot.say("6 in")
        await look()
        await look("f7")
        await look("enter")
        await look("x", "enter")
        await look("enter")  # the verdict
        assert app.is_running


async def test_a_half_done_one_with_a_hostile_day_is_harmless() -> None:
    unfinished = replace(HALF_DONE, started="\x1b]52;c;x\x07[/]")
    app = app_of(FakeSitting(facts=replace(FACTS, unfinished=unfinished)))
    async with running(app, (80, 24)) as pilot:
        harmless(sent(app))
        await pilot.press("1")
        await pilot.settle()
        harmless(sent(app))
        assert app.is_running


async def test_square_brackets_are_shown_as_they_are() -> None:
    app = app_of(everywhere("[@click=app.quit]press me[/]"))
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        assert any("[@click=app.quit]press me[/]" in line for line in painted(app))


async def test_what_is_pasted_is_made_harmless_before_it_is_sent_on() -> None:
    from textual.events import Paste

    sitting = FakeSitting()
    app = app_of(sitting)
    async with running(app, (80, 24)) as pilot:
        await pilot.press("1")
        await pilot.settle()
        app.screen.query_one("AnswerInput").post_message(Paste("a\x1b]52;c;x\x07b\u202ec"))
        await pilot.settle()
        harmless(sent(app))
        await pilot.press("enter")
        await pilot.settle()
    assert sitting.talks[0].heard == ["a\ufffd]52;c;x\ufffdb\ufffdc"]


@pytest.mark.parametrize("text", CORPUS, ids=range(len(CORPUS)))
def test_the_one_function_leaves_nothing_that_acts(text: str) -> None:
    harmless(shown(text))
    for width in (1, 7, 40):
        lines = wrapped(text, width)
        assert lines
        harmless("".join(lines))


def test_wrapping_keeps_every_word_and_the_width() -> None:
    from rich.cells import cell_len

    text: Any = "Lower the pole until it rests on the floor, 漢字 and wait half a minute. " * 5
    for width in (10, 33, 74):
        lines = wrapped(text, width)
        assert all(cell_len(line) <= width for line in lines)
        assert " ".join(lines).split() == text.split()
