"""What may be typed at any prompt of the yearly check: commands, questions, answers at steps. Nothing is lost by it."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from itertools import pairwise

import pytest

from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import begin, play, says_of, situations
from tests.situations.reaching import reach

#: lines that are answered, and after which the open question is as it was
ASKED = (
    "why",
    "how do I do that?",
    "help",
    "say it again",
    "what is sludge?",
    "what if the lid breaks",
    "who won the game?",
)


@cache
def answers_so_far() -> tuple[tuple[str, int], ...]:
    """Every prompt of a check outside: its question, and how many answers come before it."""
    met: list[tuple[str, int]] = []
    conversation = begin("buyer")

    def hear(line: str) -> None:
        assert conversation.prompt is not None
        met.append((conversation.prompt.question, len(conversation.answers)))
        conversation.hear(line)

    play(conversation, says_of("buyer"), hear=hear)
    return tuple(met)


@cache
def whole() -> Conversation:
    """The check outside, from its beginning to its end."""
    return play(begin("buyer"), says_of("buyer")).conversation


@pytest.mark.parametrize("line", ASKED)
def test_asking_at_any_prompt_gives_the_open_question_back_unchanged(line: str) -> None:
    for question, count in answers_so_far():
        conversation = begin("buyer")
        conversation.record(*whole().answers[:count])
        before = conversation.prompt
        assert before is not None
        assert before.question == question
        said = conversation.hear(line)
        assert conversation.prompt == before, question
        assert any(message.kind in ("help", "caution", "ask", "say") for message in said), question
        assert said[-1].text == before.text, question


def test_save_and_leave_works_at_every_prompt_and_asks_for_the_lid_where_it_may_be_off() -> None:
    for question, count in answers_so_far():
        conversation = begin("buyer")
        conversation.record(*whole().answers[:count])
        may_stand_open = conversation.state.open
        conversation.hear("save and leave")
        if may_stand_open:
            assert conversation.prompt is not None
            assert conversation.node is not None
            assert conversation.node.closes, question
        else:
            assert conversation.ending is not None
            assert conversation.ending.left, question


def test_something_is_wrong_lists_what_can_be_at_every_prompt() -> None:
    for question, count in answers_so_far():
        conversation = begin("buyer")
        conversation.record(*whole().answers[:count])
        conversation.hear("something is wrong")
        assert conversation.prompt is not None
        assert any("fell into the tank" in choice.label for choice in conversation.prompt.choices), question
        conversation.hear("none of these, go on")
        assert conversation.prompt.question == question


@pytest.mark.parametrize("line", ["none", "2", "the neighbor waves", "no"])
def test_a_line_at_a_step_that_answers_nothing_leaves_it_where_it_is(line: str) -> None:
    steps = [(name, count) for name, count in answers_so_far() if whole().script.nodes[name].kind == "say"]
    assert len(steps) > 4
    for question, count in steps:
        if line == "2" and question in ("crust_do", "pole_do", "pole_again"):
            continue  # a number alone may be the reading that is due
        conversation = begin("buyer")
        conversation.record(*whole().answers[:count])
        conversation.hear(line)
        assert conversation.prompt is not None
        assert conversation.prompt.question == question


def test_the_same_words_are_not_said_twice_running_to_a_class() -> None:
    played = play(begin("teacher"), says_of("teacher"), {"level": ["asdf"] * 6})
    troubles = [message.text for message in played.conversation.messages if message.kind == "trouble"]
    assert len(troubles) > 5
    assert all(one != other for one, other in pairwise(troubles))


def test_there_are_forty_situations_and_more() -> None:
    assert len(situations()) >= 40
    assert all(one.why.endswith(".") and one.title for one in situations().values())


@pytest.mark.parametrize(("bedrooms", "asked"), [(None, True), (3, False)])
def test_bedrooms_are_asked_for_only_where_the_record_has_none(bedrooms: int | None, asked: bool) -> None:
    first = begin("buyer")
    house = first.context.household.model_copy(update={"bedrooms": bedrooms})
    talk = Conversation(first.script, replace(first.context, household=house))
    talk.start()
    reach(talk, "size", says_of("buyer"))
    talk.hear("I don't know")
    assert talk.node is not None
    assert (talk.node.id == "bedrooms") == asked
