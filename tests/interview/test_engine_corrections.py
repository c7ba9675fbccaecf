"""Answers that are mended in words, told in passing, too early, or at a step that only wanted Enter."""

from __future__ import annotations

import pytest

from selfcheck.interview.answers import HAZARD, NOTE
from tests.interview.toys import TO_OVEN, Told, at, talk, words


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("no, it was 5 in", 5),
        ("no, the 4 was last year's, it was 8", 8),
        ("sorry, 5", 5),
        ("actually 5 in, not 4", 5),
        ("no, 5", 5),
        ("I meant cm", 4 / 2.54),
        ("that was in cm", 4 / 2.54),
        ("cm, not inches", 4 / 2.54),
        ("not inches, cm", 4 / 2.54),
    ],
)
def test_a_length_is_mended_in_words_and_in_the_unit_it_had(line: str, inches: float) -> None:
    conversation = talk(["white", "4 in"])
    conversation.hear(line)
    assert conversation.state.given["rise"].value == pytest.approx(inches * 0.0254, rel=1e-3)
    assert at(conversation) == "people"
    assert "Before, it was 4 in" in words(conversation.messages, "echo")


@pytest.mark.parametrize("line", ["scratch that", "oops", "no wait", "never mind that"])
def test_an_answer_is_taken_back_in_words(line: str) -> None:
    conversation = talk(["white", "4 in", line])
    assert at(conversation) == "rise"
    assert "rise" not in conversation.state.given


def test_a_question_that_is_named_is_mended_from_anywhere() -> None:
    conversation = talk(["white", "4 in", "3"])
    conversation.hear("no, the first rise was 5 in")
    assert conversation.state.given["rise"].value == pytest.approx(0.127)
    assert at(conversation) == "fed"


def test_the_unit_alone_settles_a_bare_number() -> None:
    conversation = talk(["white", "4", "cm"])
    assert conversation.state.given["rise"].value == pytest.approx(0.04)


def test_an_answer_to_another_question_is_called_that_and_never_more_than_one() -> None:
    conversation = talk(["white"])
    said = words(conversation.hear("fed May 2020"))
    assert "another question" in said
    assert "more than one" not in said
    conversation.hear("no")
    assert "fed" not in conversation.state.given
    assert at(conversation) == "rise"


def test_nothing_about_the_inside_is_taken_before_it_is_open() -> None:
    conversation = talk(TO_OVEN[:-2])
    said = words(conversation.hear("smoke grey"))
    assert "smoke" not in conversation.state.given
    assert conversation.pending is None
    assert "too early" in said or "later" in said
    assert any(answer.question == NOTE for answer in conversation.answers)
    assert at(conversation) == "gate_child"


def test_what_was_told_before_the_opening_is_asked_again_once_it_is_open() -> None:
    """With nothing answered yet it may have been seen before; once something is opened today, it is looked at anew."""
    conversation = talk(["smoke no smoke at all, first rise 4 in"])
    conversation.hear("yes")
    assert "smoke" in conversation.state.given
    for line in ["white", "3", "2025", "none", "1", "1", "opened"]:
        conversation.hear(line)
    assert at(conversation) == "smoke"


def test_an_option_with_a_slip_in_it_is_offered_and_taken_only_with_a_yes() -> None:
    conversation = talk(["dakr rye"])
    assert conversation.prompt is not None
    assert "dark rye flour?" in conversation.prompt.text
    assert "flour" not in conversation.state.given
    assert at(talk(["dakr rye", "no"])) == "flour"
    assert talk(["dakr rye", "yes"]).state.given["flour"].value == "rye"


@pytest.mark.parametrize("line", ["kichten", "they left the kichten"])
def test_no_slip_passes_a_safety_item(line: str) -> None:
    conversation = talk([*TO_OVEN[:-2], line, "yes"])
    assert "gate_child" not in conversation.state.given


@pytest.mark.parametrize("line", ["why", "how", "help", "say it again", "what is a leaven?", "can I freeze the dough?"])
@pytest.mark.parametrize(
    "lines", [["white", "4"], ["rye", "no", "1 in"], ["white", "4 in, sticky"], ["flour"], ["white", "change"]]
)
def test_a_small_question_outlives_whatever_is_asked_meanwhile(lines: list[str], line: str) -> None:
    conversation = talk([*lines], ask_back=lambda text: Told("Yes, you may.") if "freeze" in text else None)
    small = conversation.pending
    assert small is not None
    said = conversation.hear(line)
    assert conversation.pending is small
    assert said[-1].text == small.text


def test_what_if_is_answered_with_the_caution_and_tells_of_no_hazard(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("selfcheck.interview.hazards.asked", lambda text: "fire" if "burns" in text else None)
    conversation = talk(["white"])
    said = conversation.hear("what if it burns")
    assert [message.title for message in said if message.kind == "caution"] == ["DANGER"]
    assert not [answer for answer in conversation.answers if answer.question == HAZARD]
    assert at(conversation) == "rise"


def test_no_echo_doubles_a_mark_or_shouts_in_the_middle_of_a_line() -> None:
    conversation = talk([*TO_OVEN, "opened"])
    echoes = words(conversation.messages, "echo")
    assert "?." not in echoes
    assert ".." not in echoes
    assert "white wheat flour" in echoes


def test_what_was_told_of_late_is_not_taken_back_in_passing() -> None:
    conversation = talk(["smoke comes out of the oven", "white"])
    told = conversation.state.told
    conversation.hear("actually rye")
    assert conversation.state.told == told


def test_at_the_end_a_danger_stands() -> None:
    ended = talk(["there is a fire"])
    assert ended.ending is not None
    assert "It counts as told" in words(ended.hear("that was a joke"), "note")
    assert ended.state.told == ("fire",)
