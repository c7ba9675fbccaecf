"""Facts of the house and the tank that are told where nobody asks for them."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message
from tests.situations.playing import says_of
from tests.situations.reaching import reach, reached

#: a person with 3 people, a grinder used daily, a tank of 998 gallons and a pump-out of April 12, 2024 on record
KNOWN = "homeowner"


def at(question: str, person: str = KNOWN) -> Conversation:
    return reached(question, person=person)


def notes(said: list[Message]) -> str:
    return " ".join(one.text for one in said if one.kind == "note")


@pytest.mark.parametrize("question", ["way_in", "wrong_now", "facts_same", "smell"])
@pytest.mark.parametrize(
    "line",
    ["we are 3 now", "3 people", "1000 gallons", "3 bedrooms", "we use the disposal daily", "pumped in 4/2024"],
)
def test_what_is_on_record_just_so_is_said_to_be(question: str, line: str) -> None:
    talk = at(question)
    before = len(talk.answers)
    assert "on record already" in notes(talk.hear(line)).casefold()
    assert talk.pending is None
    assert len(talk.answers) == before


@pytest.mark.parametrize("question", ["way_in", "facts_same", "smell"])
@pytest.mark.parametrize(
    ("line", "path", "value"),
    [
        ("we are 5 now", ("occupancy", -1, "people"), 5),
        ("the tank is plastic", ("tanks", 0, "material"), "plastic"),
        ("no garbage disposal", ("occupancy", -1, "disposal"), "none"),
        ("we don't have a grinder", ("occupancy", -1, "disposal"), "none"),
        ("1,500 gallons", ("tanks", 0, "volume_m3"), pytest.approx(5.678, abs=0.001)),
        ("we live here 6 months", ("occupancy", -1, "months_per_year"), 6),
    ],
)
def test_what_differs_is_read_back_as_a_change_and_kept(
    question: str, line: str, path: tuple[str | int, ...], value: object
) -> None:
    talk = at(question)
    asked = talk.hear(line)
    assert talk.pending is not None
    assert "plastic" in line or "before" in " ".join(one.text for one in asked if one.kind == "echo").casefold()
    talk.hear("yes")
    assert (talk.node.id if talk.node else "") in (question, "people_since")
    reach(talk, "gate_begin" if question != "smell" else "scum_total", says_of(KNOWN))
    here: object = talk.draft()["household"]
    for name in path:
        here = here[name]  # type: ignore[index]
    assert here == value


def test_a_line_with_facts_on_record_and_others_takes_each_for_what_it_is() -> None:
    talk = at("way_in")
    said = " ".join(one.text for one in talk.hear("blue sky, 5 people, 1000 gallons, pumped in May 2026"))
    assert "People at home: 5. Before, it was 3" in said
    assert "pump-out: May 2026" in said
    assert "already: tank size" in said
    assert "did not understand: blue sky" in said
    talk.hear("yes")
    reach(talk, "facts_same", says_of(KNOWN))
    assert "5 people" in talk.messages[-2].text + talk.messages[-1].text
    reach(talk, "bring", says_of(KNOWN))
    assert talk.draft()["pump_out"]["on"].startswith("2026-05")


def test_a_fact_told_without_what_is_so_is_asked() -> None:
    talk = at("way_in")
    talk.hear("we have a garbage disposal")
    assert talk.node is not None
    assert talk.node.id == "disposal"
    talk.hear("now and then")
    assert talk.node.id == "way_in"
    reach(talk, "bring", says_of(KNOWN))
    assert talk.draft()["household"]["occupancy"][-1]["disposal"] == "sometimes"


def test_a_fact_told_can_be_told_otherwise_and_taken_back() -> None:
    talk = at("way_in")
    for line in ("we are 5 now", "yes", "6 people", "yes"):
        talk.hear(line)
    reach(talk, "bring", says_of(KNOWN))
    assert talk.draft()["household"]["occupancy"][-1]["people"] == 6
    talk.take_back("people")
    assert "household" not in talk.draft()


@pytest.mark.parametrize("line", ["we are 5 now", "the tank is plastic", "we have a garbage disposal"])
def test_at_a_safety_item_nothing_is_taken_in_passing(line: str) -> None:
    talk = at("gate_helper")
    talk.hear(line)
    talk.hear("yes")
    assert not talk.state.aside
    assert talk.node is not None
    assert talk.node.id == "gate_helper"


def test_nothing_is_kept_of_a_house_that_no_people_are_known_of() -> None:
    talk = at("way_in", "teacher")
    talk.hear("no disposal")
    talk.hear("yes")
    assert "household" not in talk.draft()
    reach(talk, "scum_total", says_of("teacher"))
    assert talk.draft()["household"]["occupancy"][-1]["disposal"] == "none"


def test_two_names_of_one_question_make_one_answer() -> None:
    said = at("alarm").hear("no alarm. we are 4 people, and the tank is 1500 gal")
    assert "understand" not in notes(said)
    assert "People at home: 4" in " ".join(one.text for one in said)
