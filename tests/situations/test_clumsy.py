"""Lines of people in a hurry, at whatever question they are typed."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach


def at(question: str, flow: str = "yearly", person: str = "teacher") -> Conversation:
    talk = begin(person, flow)
    reach(talk, question, says_of(person))
    return talk


def text_of(said: list[Message]) -> str:
    return " ".join(one.text for one in said if one.kind != "said")


@pytest.mark.parametrize("question", ["last_pump_out", "people", "size", "sheet_gate", "smell", "parts", "sludge_1"])
@pytest.mark.parametrize(
    "line",
    [
        "I do not remember", "I forgot", "no clue", "can't remember", "beats me", "no idea at all", "who knows",
        "I don't really remember", "we have forgotten the day", "Honestly no clue",
    ],
)  # fmt: skip
def test_not_remembering_is_not_knowing(question: str, line: str) -> None:
    talk = at(question)
    talk.hear(line)
    assert talk.state.given[question].state == "unknown"


@pytest.mark.parametrize(("line", "value"), [("I don't smell anything", "none"), ("forget it", None)])
def test_not_every_not_is_not_knowing(line: str, value: str | None) -> None:
    talk = at("smell")
    talk.hear(line)
    given = talk.state.given.get("smell")
    assert (given.value if given else None) == value


@pytest.mark.parametrize(
    ("line", "question", "inches"),
    [
        ("The first sludge reading should be 14 in", "sludge_1", 14),
        ("first one was 14", "sludge_1", 14),
        ("change the first one to 14", "sludge_1", 14),
        ("1st reading 14 in", "sludge_1", 14),
        ("make the first sludge 14", "sludge_1", 14),
        ("the second one was 9", "sludge_2", 9),
        ("my second reading was 9 inches, not 11", "sludge_2", 9),
        ("make the scum 4", "scum_total", 4),
        ("set the water depth to 50", "wet_line", 50),
        ("the last one should be 9 in", "sludge_2", 9),
    ],
)
def test_a_reading_is_mended_by_its_name_and_place(line: str, question: str, inches: float) -> None:
    talk = at("read_back")
    said = text_of(talk.hear(line))
    assert f"{inches} in" in said or "4 ft 2 in" in said
    if talk.pending is not None:
        talk.hear("yes")
    assert talk.state.given[question].value == pytest.approx(inches * 0.0254)
    assert talk.node is not None
    assert talk.node.id in ("read_back", "sludge_3")  # a third reading, where two differ by much


def test_a_reading_that_was_not_given_is_not_mended_and_one_said_to_be_wrong_is_asked_again() -> None:
    talk = at("read_back")
    before = dict(talk.state.given)
    talk.hear("the third one was 9")
    assert talk.state.given == before
    talk.hear("the first one was wrong")
    assert talk.revising == "sludge_1"


def test_the_second_one_is_the_open_question_where_that_is_open() -> None:
    talk = at("sludge_2")
    talk.hear("the second one was 9 in")
    if talk.pending is not None:
        talk.hear("yes")
    assert talk.state.given["sludge_2"].value == pytest.approx(9 * 0.0254)
