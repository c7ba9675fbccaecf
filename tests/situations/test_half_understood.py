"""Lines of which only a little is understood: nothing is written down or offered from a common word alone."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach


def standing_at(question: str, *lines: str, person: str = "buyer") -> Conversation:
    talk = begin(person)
    reach(talk, question, says_of(person))
    for line in lines:
        talk.hear(line)
    return talk


@pytest.mark.parametrize("line", ["The tank, all emptied", "the tank", "the lid, we think", "tank and pole", "is one"])
def test_a_common_word_picks_no_option(line: str) -> None:
    talk = standing_at("parts", line)
    assert talk.pending is None
    assert "parts" not in talk.state.given


def test_readings_told_one_after_the_other_are_all_kept() -> None:
    talk = standing_at("smell", "crust 0 in", "wet 48 in", "none", "go", "yes")
    assert talk.state.given["scum_total"].value == 0
    assert talk.state.given["wet_line"].value == pytest.approx(1.2192)


@pytest.mark.parametrize("line", ["go", "ready", "go out", "we are ready", "ok go", "found it"])
def test_no_step_that_leads_to_opening_is_offered_at_another_question(line: str) -> None:
    talk = standing_at("people", line)
    assert talk.pending is None or not {"ready", "search"} & {one.question for one in talk.pending.offered}
    said = talk.messages[-1].text
    talk.hear("go")
    assert talk.node is not None
    assert talk.node.id == "people"
    assert said


@pytest.mark.parametrize("line", ["lid is off", "the lid is off now", "my pole is broken", "we use a rod"])
def test_a_statement_is_not_answered_by_the_guide(line: str) -> None:
    before = standing_at("smell")
    assert not [one for one in before.hear(line) if one.kind == "help"]


def test_what_a_probe_is_comes_from_the_glossary() -> None:
    talk = standing_at("smell")
    assert "thin rod" in talk.hear("what is a probe")[1].text


def test_another_way_through_is_offered_at_a_later_question_and_taken_after_a_yes() -> None:
    talk = standing_at("lid_form", "we did it on paper")
    assert talk.node is not None
    assert talk.pending is not None
    assert [one.question for one in talk.pending.offered] == ["way_in"]
    talk.hear("yes")
    assert talk.node.id == "sheet_lid"


def test_where_one_stands_is_asked_after_a_break_only() -> None:
    before = standing_at("lid_form")
    assert "ready" not in before.state.answered
    after = Conversation(before.script, before.context, before.answers)
    after.start()
    for line in ("none", "no alarm"):
        after.hear(line)
    assert after.node is not None
    assert after.node.id == "ready"
    after.hear("the sheet is filled in")
    assert after.node.id == "sheet_lid"
    back_out = Conversation(before.script, before.context, before.answers)
    back_out.start()
    for line in ("none", "no alarm", "not today"):
        back_out.hear(line)
    assert back_out.node is not None
    assert back_out.node.id == "lid_look"
