"""What was understood in passing stays on offer until a yes or a no, and what was hardly understood is not offered."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from tests.interview.toys import Told, at, talk, words

OFFERED = ["white", "sticky, eaters 3"]


def offer(*lines: str) -> Conversation:
    conversation = talk([*OFFERED, *lines])
    assert conversation.pending is not None
    return conversation


@pytest.mark.parametrize("line", ["none", "go", "ok then", "skip", "I don't know", "blue sky", "7", "all", "0", ""])
def test_what_is_read_back_stays_on_offer_until_it_is_answered(line: str) -> None:
    conversation = offer(line)
    assert {answer.question for answer in conversation.pending.offered} == {"people", "faults"}  # type: ignore[union-attr]
    conversation.hear("yes")
    assert conversation.state.given["people"].value == 3
    assert conversation.state.given["faults"].value == ("sticky",)


@pytest.mark.parametrize("line", ["4 in", "rise 4 in", "height 4 in"])
def test_more_answers_join_those_on_offer(line: str) -> None:
    conversation = offer(line)
    assert "First rise: 4 in" in words(conversation.messages, "echo")
    conversation.hear("yes")
    assert {"rise", "people", "faults"} <= set(conversation.state.given)


def test_a_correction_mends_what_is_on_offer() -> None:
    conversation = talk([*OFFERED, "no, eaters 5", "yes"])
    assert conversation.state.given["people"].value == 5
    assert conversation.state.given["faults"].value == ("sticky",)


def test_turning_the_offer_down_is_said() -> None:
    conversation = offer()
    assert "one at a time" in words(conversation.hear("no"), "note")
    assert "people" not in conversation.state.given
    assert at(conversation) == "rise"
    unlike = offer()
    assert words(unlike.hear("no, it was something else"), "note")


def test_a_danger_that_was_none_gives_the_offer_back(monkeypatch: pytest.MonkeyPatch) -> None:
    from selfcheck.interview import hearing
    from selfcheck.interview.hazards import Hazard

    monkeypatch.setattr(hearing, "find", lambda text: Hazard("fire", "danger", sure=False) if "glow" in text else None)
    conversation = talk([*OFFERED, "it glows", "no", "yes"])
    assert conversation.state.given["people"].value == 3


def test_a_part_of_a_label_is_not_offered_beside_words_that_mean_nothing() -> None:
    doubtful = talk(["the hands, all over"])
    assert doubtful.pending is None
    assert "faults" not in doubtful.state.given
    sure = talk(["white", "4 in", "3", "2025", "sticky, and blue sky"])
    assert "It sticks to the hands" in words(sure.messages, "echo") or "sticks to the hands" in words(sure.messages)


@pytest.mark.parametrize("line", ["the oven is warm now", "my dough is resting well", "yes", "11", "no", "8 9", "ok"])
def test_the_guide_answers_only_what_is_asked(line: str) -> None:
    asked: list[str] = []

    def answer(text: str) -> Told:
        asked.append(text)
        return Told("Freeze it.")

    conversation = talk(["white"], ask_back=answer)
    conversation.hear(line)
    assert asked == []
    conversation.hear("can I freeze it")
    conversation.hear("explain the proving to me")
    assert len(asked) == 2


@pytest.mark.parametrize(
    ("line", "asks"),
    [
        ("my dough is flat, what now", True),
        ("the dough grew a skin is that bad", True),
        ("is dough freezing ok", True),
        ("4 in, is that bad", False),
        ("my dough is resting well", False),
    ],
)
def test_a_line_that_answers_nothing_may_ask_behind_its_beginning(line: str, asks: bool) -> None:
    asked: list[str] = []

    def answer(text: str) -> Told:
        asked.append(text)
        return Told("Freeze it.")

    conversation = talk(["white"], ask_back=answer)
    said = conversation.hear(line)
    assert asked == ([line] if asks else [])
    assert ("Freeze it." in words(said, "help")) is asks


def test_a_word_of_the_glossary_comes_before_the_guide() -> None:
    conversation = talk(["white"], ask_back=lambda text: Told("Freeze it."))
    for line in ("what is a leaven", "what's a starter?", "what does leaven mean"):
        assert "live yeast" in words(conversation.hear(line), "help"), line


NEAR = [Told("A week.", asked="how long does it keep"), Told("Yes, you may.", asked="can I freeze it")]


def unsure(*lines: str) -> Conversation:
    """One who asked what the guide is not sure of, at the question of the flour."""
    return talk(["how about keeping it cold?", *lines], ask_back=lambda text: None, ask_near=lambda text: NEAR)


def test_what_may_have_been_asked_is_offered_by_number() -> None:
    conversation = unsure()
    assert conversation.prompt is not None
    assert [choice.label for choice in conversation.prompt.choices] == [
        "How long does it keep?",
        "Can I freeze it?",
        "None of these",
    ]
    said = conversation.hear("2")
    reply = next(message for message in said if message.kind == "help")
    assert (reply.text, reply.source) == ("Yes, you may.", "the baker")
    assert said[-1].text == "Which flour is it?"
    assert not conversation.state.given


@pytest.mark.parametrize("line", ["3", "no", "none", "none of these"])
def test_none_of_what_was_offered_is_owned_up_to(line: str) -> None:
    conversation = unsure()
    said = conversation.hear(line)
    assert "guide" in words(said, "help")
    assert said[-1].text == "Which flour is it?"
    assert not conversation.state.given


@pytest.mark.parametrize("line", ["yes", "y", "7", ""])
def test_no_yes_to_an_offer_of_topics_answers_the_open_question(line: str) -> None:
    conversation = unsure()
    conversation.hear(line)
    assert conversation.pending is not None
    assert not conversation.state.given


def test_an_answer_beside_the_offer_of_topics_counts_and_a_break_asks_the_open_question() -> None:
    conversation = unsure("white")
    assert conversation.pending is None
    assert conversation.state.given["flour"].value == "white"
    resumed = talk(answers=unsure().answers)
    assert at(resumed) == "flour"
    assert [answer.said for answer in resumed.answers if answer.said] == ["how about keeping it cold?"]


def test_an_answer_that_is_not_quite_sure_names_the_question_it_answers() -> None:
    doubtful = Told("Yes, you may.", asked="can I freeze it", sure=False)
    said = talk(ask_back=lambda text: doubtful).hear("what about the cold?")
    assert [message.text for message in said if message.kind == "note"] == ["I take it that you ask: Can I freeze it?"]
    assert said[-1].text == "Which flour is it?"
