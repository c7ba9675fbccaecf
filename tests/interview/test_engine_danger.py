"""Dangers told, ways out and breaks in a conversation about bread: what stands open is shut."""

import pytest

from selfcheck.interview import hearing
from selfcheck.interview.answers import BREAK
from selfcheck.interview.dialogue import Ending
from selfcheck.interview.hazards import Hazard
from tests.interview.toys import TO_OVEN, TO_SHUT, at, talk, words


def test_a_told_danger_is_met_in_the_next_message_and_ends_the_flow() -> None:
    conversation = talk(["white", "4 in"])
    said = conversation.hear("there is a fire")
    assert said[1].kind == "caution"
    assert said[1].title == "DANGER"
    assert conversation.ending == Ending("burning")
    assert conversation.draft()["loaf"]["burnt"] is True
    assert conversation.draft()["loaf"]["seen"]["flour"] == "white"


def test_a_hazard_by_option_is_met_too_and_shutting_comes_first() -> None:
    conversation = talk([*TO_OVEN, "opened", "some grey smoke"])
    assert "Smoke comes before fire." in words(conversation.messages, "caution")
    assert at(conversation) == "door_shut"
    assert talk([*TO_OVEN, "opened", "flames"]).ending == Ending("burning")


def test_something_is_wrong_lists_what_can_be() -> None:
    conversation = talk(["something is wrong"])
    assert conversation.prompt is not None
    labels = [choice.label for choice in conversation.prompt.choices]
    assert "Smoke comes out of the oven" in labels
    conversation.hear("Smoke comes out of the oven")
    assert conversation.state.told == ("smoke",)


def test_a_hazard_picked_by_number_may_be_a_slip_and_one_told_in_words_is_none() -> None:
    conversation = talk(["something is wrong"])
    choices = conversation.prompt.choices if conversation.prompt else ()
    conversation.hear(next(str(one.number) for one in choices if one.id == "smoke"))
    assert conversation.state.told == ("smoke",)
    assert "Was that a slip?" in conversation.hear("back")[-1].text
    conversation.hear("no")
    assert conversation.state.told == ("smoke",)
    conversation.hear("back")
    conversation.hear("yes")
    assert conversation.state.told == ()
    for line in ("there is a fire", "something burns and there are flames"):
        told = talk([line]).state.told
        assert told, line
        assert talk([line, "back", "1", "back", "yes", "undo"]).state.told == told, line


def test_an_option_that_raised_a_hazard_is_changed_only_as_a_slip() -> None:
    by_number = talk([*TO_OVEN, "opened", "2", "shut", "back", "back"])
    assert "Was that a slip?" in (by_number.prompt.text if by_number.prompt else "")
    by_number.hear("yes")
    assert at(by_number) == "smoke"
    for line in ("change smoke", "actually no smoke at all", "no, it was no smoke", "smoke: no smoke at all"):
        kept = talk([*TO_OVEN, "opened", "2", "shut", line, "none"])
        assert kept.state.given["smoke"].value == "some", line


def test_nothing_opens_once_a_hazard_was_told() -> None:
    conversation = talk(["something is wrong", "smoke comes out of the oven", *TO_OVEN])
    assert not conversation.state.opened
    assert "door_open" not in conversation.state.given


@pytest.mark.parametrize("way", ["leave", "quit"])
def test_every_way_out_passes_the_shutting_question_while_something_may_stand_open(way: str) -> None:
    conversation = talk(TO_OVEN)
    assert conversation.state.open
    conversation.do(way)
    assert at(conversation) == "door_shut"
    conversation.do(way)
    assert at(conversation) == "door_shut"
    conversation.hear("shut and latched")
    assert conversation.ending == Ending("", left=True)


def test_leaving_with_it_open_is_asked_once_more_and_let_go_with_the_caution() -> None:
    conversation = talk([*TO_OVEN, "save and leave", "not yet"])
    assert at(conversation) == "door_shut"
    said = conversation.hear("not yet")
    assert "Let nobody come near" in words(said, "caution")
    assert conversation.ending == Ending("", left=True)


def test_leaving_with_nothing_open_is_simple_and_can_be_taken_back() -> None:
    conversation = talk(["white", "quit"])
    assert conversation.ending == Ending("", left=True)
    assert "saved" in words(conversation.messages, "note")
    conversation.hear("back")
    assert at(conversation) == "rise"


def test_after_a_break_the_door_comes_first_and_the_gate_is_asked_anew() -> None:
    before = talk([*TO_OVEN, "opened"])
    after = talk(answers=before.answers)
    assert at(after) == "door_shut"
    for line, question in (("shut", "gate_child"), ("1", "gate_mitts"), ("1", "door_open"), ("opened", "smoke")):
        after.hear(line)
        assert at(after) == question
    after.hear("1")
    assert at(after) == "door_shut"
    assert after.answers[len(before.answers)].question == BREAK


def test_after_a_break_in_the_middle_of_opening_it_may_stand_open() -> None:
    assert at(talk(answers=talk(TO_OVEN).answers)) == "door_shut"


def test_after_all_was_shut_in_good_order_a_break_begins_nothing_again() -> None:
    before = talk([*TO_SHUT, "shut"])
    assert at(before) == "remark"
    assert at(talk(answers=before.answers)) == "remark"


def test_a_hazard_is_never_lost_behind_a_small_question() -> None:
    conversation = talk(["white", "4"])
    assert conversation.pending is not None
    conversation.hear("the oven is on fire")
    assert conversation.state.told == ("fire",)


@pytest.fixture
def doubtful(monkeypatch: pytest.MonkeyPatch) -> None:
    """Every line with "glow" in it may tell of a fire."""
    monkeypatch.setattr(hearing, "find", lambda text: Hazard("fire", "danger", sure=False) if "glow" in text else None)


@pytest.mark.usefixtures("doubtful")
def test_a_doubtful_hazard_is_asked_about_until_it_is_answered() -> None:
    for answer, told in (("yes", ("fire",)), ("no", ())):
        conversation = talk(["white", "something glows"])
        assert conversation.prompt is not None
        assert "the oven is on fire" in conversation.prompt.text
        for line in ("4 in", "back", "", "skip", "whatever"):
            conversation.hear(line)
            assert conversation.pending is not None, line
            assert "rise" not in conversation.state.given
        conversation.hear(answer)
        assert conversation.pending is None
        assert conversation.state.told == told


@pytest.mark.usefixtures("doubtful")
def test_leaving_instead_of_answering_is_let_go_with_the_caution() -> None:
    conversation = talk(["white", "something glows"])
    said = conversation.hear("quit")
    assert "Fire in the oven spreads." in words(said, "caution")
    assert conversation.ending == Ending("", left=True)


@pytest.mark.usefixtures("doubtful")
def test_a_line_that_told_of_nothing_is_taken_as_an_answer_after_all() -> None:
    conversation = talk([*TO_SHUT, "shut", "the crust glows"])
    conversation.hear("no")
    assert conversation.draft()["loaf"]["remark"] == "the crust glows"
