"""A date that nobody can give has a way out, and a length is no name of a corner."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import TODAY, begin
from tests.situations.test_half_understood import standing_at

MISSES = ("blah", "foo bar", "zork")


@pytest.mark.parametrize("question", ["observed_on", "last_pump_out"])
def test_after_three_misses_a_date_has_numbered_ways_out(question: str) -> None:
    person = "teacher" if question == "observed_on" else "buyer"
    talk = standing_at(question, *MISSES, person=person)
    assert talk.pending is not None
    assert [ident for ident, _ in talk.pending.choices] == ["today", "unknown", "leave"]
    for line, value in (("1", TODAY), ("2", None)):
        chosen = standing_at(question, *MISSES, line, person=person)
        assert chosen.state.given[question].value == value
    left = standing_at(question, *MISSES, "3", person=person)
    assert left.ending is not None
    assert left.ending.left
    dated = standing_at(question, *MISSES, "March 3, 2026", person=person)
    assert question in dated.state.given


def test_misses_add_one_line_about_the_note_and_no_more() -> None:
    talk = standing_at("last_pump_out", *MISSES, "zork again", "once more")
    kept = [one for one in talk.messages if one.kind == "note" and "note" in one.text]
    assert len(kept) == 1


def corners(*lines: str) -> Conversation:
    talk = begin("buyer", "find_tank")
    for _ in range(12):
        if talk.node is not None and talk.node.id == "corner_a":
            break
        talk.hear("1" if talk.node is not None and talk.node.kind != "say" else "")
    assert talk.node is not None
    assert talk.node.id == "corner_a"
    for line in lines:
        talk.hear(line)
    return talk


@pytest.mark.parametrize("line", ["17 ft", "11", "5.2 m", "17'", "3"])
def test_a_length_is_no_name_of_a_corner(line: str) -> None:
    talk = corners(line)
    assert talk.pending is not None
    assert "corner_a" not in talk.state.given
    second = corners("kitchen corner", line)
    assert second.pending is not None
    assert "corner_b" not in second.state.given


def test_a_name_is_one_and_not_twice() -> None:
    named = corners("kitchen corner", "porch post 2")
    assert {"corner_a", "corner_b"} <= set(named.state.given)
    assert corners("kitchen corner", "Kitchen corner").pending is not None


@pytest.mark.parametrize(
    "line", ["phone rings gotta go", "brb", "have to run", "im done for today", "I need to stop now"]
)
def test_who_says_in_passing_that_they_go_is_asked_for_the_lid_first(line: str) -> None:
    talk = standing_at("level", line)
    assert talk.prompt is not None
    assert talk.prompt.question == "lid_back"


@pytest.mark.parametrize("line", ["do I have to go on?", "the roots must have to go in from somewhere near the tank"])
def test_a_question_or_a_long_line_leaves_nothing(line: str) -> None:
    talk = standing_at("level", line)
    assert talk.prompt is not None
    assert talk.prompt.question != "lid_back"
