"""A tank of two parts, and two tanks in a row: whose readings are whose."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from selfcheck.domain.household import Tank
from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.septic_record import tank_of
from selfcheck.report.parts import PartedPage
from selfcheck.sitting import Sitting
from tests.faults.walking import lines_through
from tests.sitting.test_endings import TODAY, at

HOUSE = {
    "format": "selfcheck-household",
    "version": 1,
    "name": "Sedge Cottage",
    "units": "us",
    "occupancy": [{"from": "2019-06-01", "people": 3}],
    "tanks": [
        {
            "id": "front",
            "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27},
            "liquid_depth_m": 1.22,
            "outlet_bottom_below_surface_m": 0.43,
            "compartments": 2,
        }
    ],
}
BACK = {"id": "back", "shape": {"kind": "box", "length_m": 1.5, "width_m": 1.2}, "follows": "front", "compartments": 1}


def house(folder: Path, *more: dict[str, object]) -> Path:
    folder.mkdir()
    whole = {**HOUSE, "tanks": [*HOUSE["tanks"], *more]}  # type: ignore[misc]
    (folder / "household.json").write_text(json.dumps(whole), encoding="utf-8")
    return folder


def talked(sitting: Sitting, answers: dict[str, str]) -> Conversation:
    """The yearly check with these answers by question; whatever else is asked is answered as it comes."""
    conversation = sitting.begin("yearly")
    conversation.start()
    usual = {
        "way_in": "sheet", "wrong_now": "none", "alarm": "not_fitted", "last_pump_out": "May 2024",
        "sheet_lid": "whole",
        "observed_on": "today", "sheet_gate": "all_ticked", "level": "at_outlet", "surface": "brown", "smell": "earthy",
        "parts": "none", "scum_total": "2 in", "sludge_1": "6 in", "sludge_2": "6 in", "read_back": "yes",
        "facts_same": "same", "wet_line": "45 in", "people": "3",
    }  # fmt: skip
    for _ in range(60):
        if conversation.ending is not None:
            return conversation
        prompt = conversation.prompt
        assert prompt is not None
        wanted = {**usual, **answers}.get(prompt.question, "i don't know" if prompt.unknown_allowed else "1")
        numbers = {choice.id: str(choice.number) for choice in prompt.choices}
        conversation.hear(numbers.get(wanted, wanted))
    raise AssertionError(conversation.prompt)


def asked(conversation: Conversation) -> set[str]:
    return {answer.question for answer in conversation.answers}


def test_readings_of_the_second_part_are_kept_beside_those_of_the_first(tmp_path: Path) -> None:
    with at(house(tmp_path / "home")) as sitting:
        told = {
            "second_on_paper": "firm",
            "second_scum": "1 in",
            "second_sludge_1": "9 in",
            "second_sludge_2": "9 1/2 in",
        }
        sitting.conclude(talked(sitting, told))
        assert not sitting.trouble
        seen = sitting.checks[-1].seen
        assert seen.second_compartment is not None
        assert [one.m for one in seen.second_compartment.sludge] == [pytest.approx(0.2286), pytest.approx(0.2413)]
        assert [one.said for one in seen.second_compartment.scum_total] == ["1 in"]
        assert [one.m for one in seen.readings.sludge] == [pytest.approx(0.1524)] * 2
        assert sitting.judgement().second_layers is not None


@pytest.mark.parametrize("answer", ["no_lid", "leave_it", "i don't know"])
def test_a_second_part_that_was_not_read_is_said_to_be_open(tmp_path: Path, answer: str) -> None:
    with at(house(tmp_path / "home")) as sitting:
        conversation = talked(sitting, {"second_on_paper": answer})
        assert "second_scum" not in asked(conversation)
        sitting.conclude(conversation)
        assert sitting.checks[-1].seen.second_compartment is None
        assert "second_compartment" in sitting.judgement().missing


def test_not_knowing_a_reading_of_the_second_part_leaves_no_trouble(tmp_path: Path) -> None:
    with at(house(tmp_path / "home")) as sitting:
        sitting.conclude(talked(sitting, {"second_on_paper": "firm"}))
        assert not sitting.trouble


def test_outside_the_second_lid_is_pushed_before_its_step(tmp_path: Path) -> None:
    folder = house(tmp_path / "home")
    choices = {"way_in": "guided", "gate_teach": "call_stay_out", "second_lid": "firm"}
    with at(folder) as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        order: list[str] = []
        for line in lines_through(folder, "yearly", TODAY, choices):
            assert conversation.prompt is not None
            order.append(conversation.prompt.question)
            conversation.hear(line)
        assert order.index("second_lid") < order.index("second_do") < order.index("second_sludge_1")
        assert order.index("second_do") < order.index("lid_back")


def test_a_second_lid_that_rocks_stops_it_and_asks_for_a_call(tmp_path: Path) -> None:
    folder = house(tmp_path / "home")
    choices = {"way_in": "guided", "gate_teach": "call_stay_out", "second_lid": "rocked"}
    with at(folder) as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        order = []
        for line in lines_through(folder, "yearly", TODAY, choices):
            assert conversation.prompt is not None
            order.append(conversation.prompt.question)
            conversation.hear(line)
        assert "second_do" not in order
        assert "lid_weak" in order
        assert conversation.ending is not None
        assert conversation.ending.outcome == "call_today"


def test_with_one_tank_nobody_is_asked_which(tmp_path: Path) -> None:
    with at(house(tmp_path / "home")) as sitting:
        assert "which_tank" not in asked(talked(sitting, {}))


@pytest.mark.parametrize(("choice", "tank"), [("first", "front"), ("second", "back")])
def test_a_check_goes_to_the_tank_that_was_chosen(tmp_path: Path, choice: str, tank: str) -> None:
    with at(house(tmp_path / "home", BACK)) as sitting:
        conversation = talked(sitting, {"which_tank": choice})
        assert ("second_on_paper" in asked(conversation)) is (choice == "first")
        assert ("wet_line" in asked(conversation)) is (choice == "second")
        sitting.conclude(conversation)
        assert sitting.checks[-1].tank == tank
        assert [one.tank for one in sitting.pump_outs] == [tank]


def test_facts_told_of_the_second_tank_stay_with_it(tmp_path: Path) -> None:
    bare = {"id": "back", "follows": "front"}
    with at(house(tmp_path / "home", bare)) as sitting:
        sitting.conclude(talked(sitting, {"which_tank": "second", "size": "600 gallons"}))
        front, back = sitting.household.tanks
        assert front.volume_m3 is None
        assert back.volume_m3 == pytest.approx(2.271, abs=0.01)
        assert (front.id, back.id, back.follows) == ("front", "back", "front")


def test_after_a_break_the_second_lid_has_to_be_pushed_again(tmp_path: Path) -> None:
    folder = house(tmp_path / "home")
    choices = {"way_in": "guided", "gate_teach": "call_stay_out", "second_lid": "firm"}
    lines = lines_through(folder, "yearly", TODAY, choices)
    with at(folder) as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        for line in lines:
            assert conversation.prompt is not None
            conversation.hear(line)
            if "second_lid" in asked(conversation):
                break
    with at(folder) as sitting:
        conversation = sitting.resume()
        conversation.start()
        assert conversation.prompt is not None
        assert conversation.prompt.question == "lid_back"
        assert "second_lid" not in conversation.state.given


def told(conversation: Conversation, answers: dict[str, str]) -> list[str]:
    """Goes through a conversation with these answers, else not knowing, and gives the questions it asked."""
    conversation.start()
    questions = []
    for _ in range(60):
        prompt = conversation.prompt
        if conversation.ending is not None or prompt is None:
            return questions
        questions.append(prompt.question)
        numbers = {choice.id: str(choice.number) for choice in prompt.choices}
        wanted = answers.get(prompt.question, "i don't know" if prompt.unknown_allowed else "1")
        conversation.hear(numbers.get(wanted, wanted))
    raise AssertionError(conversation.prompt)


THIRD = {"id": "last", "follows": "back", "liquid_depth_m": 1.0}


@pytest.mark.parametrize(
    ("which", "tank", "parts"), [("first", "front", "both"), ("second", "back", "only_one"), ("third", "last", "both")]
)
def test_a_pump_out_is_put_to_the_tank_it_was_of(tmp_path: Path, which: str, tank: str, parts: str) -> None:
    with at(house(tmp_path / "home", THIRD, BACK)) as sitting:
        conversation = sitting.begin("after_pump_out")
        answers = {
            "truck": "gone", "pumped_lid": "closed", "which_tank": which, "pumped_on": "today", "left": "nothing",
            "backflow": "strong", "pumped_parts": "none", "pumped_read_back": "yes", "compartments": parts,
            "pumped_filter": "not_fitted",
        }  # fmt: skip
        assert "which_tank" in told(conversation, answers)
        before = {one.id: one for one in sitting.household.tanks}
        page = sitting.conclude(conversation)
        (pump_out,) = sitting.pump_outs
        assert pump_out.tank == tank
        assert isinstance(page, PartedPage)
        assert page.verdict == "call_soon"
        assert f"the one called {tank}." in page.lead[0]
        whole = sitting.judgement()
        judged = {one.tank.id: {finding.id for finding in one.findings} for one in (whole, *whole.others)}
        assert [name for name, found in judged.items() if "pump_out_backflow_strong" in found] == [tank]
        lines = sitting.verdict().seen
        assert f"the one called {whole.tank.id}." in lines[0]
        assert [line.split(":")[0] for line in lines[1:3]] == [f"The tank called {one.tank.id}" for one in whole.others]
        after = {one.id: one for one in sitting.household.tanks}
        assert [name for name in after if after[name] != before[name]] == [tank]
        assert (after[tank].filter, after[tank].compartments) == (False, 2 if parts == "both" else 1)


def test_a_fact_of_the_second_tank_that_the_first_one_has_too_is_kept(tmp_path: Path) -> None:
    with at(house(tmp_path / "home", {"id": "back", "follows": "front"})) as sitting:
        conversation = sitting.begin("learn")
        answers = {
            "my_stage": "long_here", "sewer_or_tank": "tank", "which_tank": "second", "learn_depth": "1.22 m",
            "learn_compartments": "two", "learn_people": "3", "learn_since": "June 2019", "learn_read_back": "yes",
            "learn_wrong": "none", "learn_alarm": "not_fitted", "learn_last_pump_out": "May 2024",
        }  # fmt: skip
        assert "which_tank" in told(conversation, answers)
        sitting.conclude(conversation)
        front, back = sitting.household.tanks
        assert front.model_dump() == Tank.model_validate(HOUSE["tanks"][0]).model_dump()  # type: ignore[index]
        assert (back.id, back.liquid_depth_m, back.compartments) == ("back", pytest.approx(1.22), 2)
        assert [one.tank for one in sitting.pump_outs] == ["back"]


def test_the_lid_that_was_taped_is_that_of_the_tank_that_was_looked_for(tmp_path: Path) -> None:
    with at(house(tmp_path / "home", BACK, THIRD)) as sitting:
        conversation = sitting.begin("find_tank")
        taped = {"corner_a": "porch", "from_a": "3 m", "corner_b": "shed", "from_b": "4 m", "corners_apart": "5 m"}
        answers = {"which_tank": "third", "find_known": "in_sight", "side": "left", **taped}
        assert "which_tank" in told(conversation, answers)
        sitting.conclude(conversation)
        assert [one.id for one in sitting.household.tanks if one.place is not None] == ["last"]


def test_as_many_tanks_are_offered_as_there_are_each_behind_the_one_that_drains_into_it(tmp_path: Path) -> None:
    with at(house(tmp_path / "home", THIRD, BACK)) as sitting:
        conversation = sitting.begin("after_pump_out")
        said = [message.text for message in conversation.start()]
        assert conversation.prompt is not None
        assert [choice.id for choice in conversation.prompt.choices] == ["first", "second", "third"]
        assert any("front, back, last" in line for line in said)
        assert tank_of(conversation.context).id == "front"


def test_with_one_tank_nobody_asks_which_was_pumped(tmp_path: Path) -> None:
    with at(house(tmp_path / "home")) as sitting:
        talk = sitting.begin("after_pump_out")
        talk.start()
        assert talk.prompt is not None
        assert talk.prompt.question == "pumped_on"
