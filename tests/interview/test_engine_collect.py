"""Answers → records."""

from datetime import date

import pytest

from selfcheck.domain.household import Household
from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import collect, on_record
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.nodes import Flow, Node, Section
from selfcheck.interview.recorded import recorded_answer
from selfcheck.interview.script import Interface, Script

TODAY = date(2026, 5, 18)
SPELL = "household.occupancy.+"
HOUSE = Household.model_validate(
    {
        "name": "Juniper Lane",
        "occupancy": [{"from": "2019-06-01", "people": 3, "months_per_year": 12, "disposal": "daily"}],
        "tanks": [{"id": "main", "liquid_depth_m": 1.22, "filter": False}],
        "colour_of_the_door": "green",
    }
)


def collected(*pairs: tuple[Node, Answer], household: object = HOUSE) -> dict[str, object]:
    flow = Flow("f", (Section("s", tuple(node for node, _ in pairs)),))
    answered = Answered()
    for node, answer in pairs:
        answered[node.id] = answer
    return collect(Script(flow, {}, Interface()), Context(TODAY, household=household), answered)


def length(ident: str, path: str, metres: float, said: str = "") -> tuple[Node, Answer]:
    return Node(ident, "length", writes=path), Answer(ident, "value", metres, said)


def test_readings_are_listed_in_order_with_the_words() -> None:
    path = "check.seen.readings.sludge"
    draft = collected(length("a", path, 0.2, '8"'), length("b", path, 0.25, "about 10 in"))
    assert draft == {
        "check": {"seen": {"readings": {"sludge": [{"m": 0.2, "said": '8"'}, {"m": 0.25, "said": "about 10 in"}]}}}
    }


def test_a_household_keeps_everything_that_was_not_changed() -> None:
    draft = collected(length("a", "household.tanks.0.liquid_depth_m", 1.3))
    changed = Household.model_validate(draft["household"])
    assert changed.tank().liquid_depth_m == 1.3
    assert changed.model_dump()["colour_of_the_door"] == "green"
    assert changed.tank().filter is False
    assert changed.occupancy == HOUSE.occupancy


def test_a_new_item_is_begun_as_a_copy_of_the_last() -> None:
    people = Node("p", "number", writes=f"{SPELL}.people", also_writes={f"{SPELL}.from": "today"})
    draft = collected((people, Answer("p", "value", 5.0)))
    changed = Household.model_validate(draft["household"])
    assert [(one.from_.isoformat(), one.people, one.disposal) for one in changed.occupancy] == [
        ("2019-06-01", 3, "daily"),
        ("2026-05-18", 5, "daily"),
    ]


def test_without_a_household_one_is_begun() -> None:
    people = Node("p", "number", writes=f"{SPELL}.people", also_writes={f"{SPELL}.from": "today"})
    draft = collected(
        (people, Answer("p", "value", 5.0)),
        length("d", "household.tanks.0.liquid_depth_m", 1.2),
        household=None,
    )
    made = Household.model_validate(draft["household"])
    assert made.occupancy[0].people == 5
    assert made.tank().liquid_depth_m == 1.2


@pytest.mark.parametrize("state", ["unknown", "skipped"])
def test_unknown_is_told_apart_from_not_asked(state: str) -> None:
    seen = Node("s", "choose", options=("a",), writes="check.seen.smell")
    fact = Node("f", "volume", writes="household.tanks.0.volume_m3")
    draft = collected((seen, Answer("s", state)), (fact, Answer("f", state)))  # type: ignore[arg-type]
    if state == "unknown":
        assert draft["check"] == {"seen": {"smell": "unknown"}}
        assert draft["household"]["tanks"][0]["volume_m3"] is None  # type: ignore[index]
    else:
        assert draft == {}


def test_one_answer_settles_what_it_implies() -> None:
    parts = Node(
        "parts",
        "choose_several",
        options=("wall", "tee"),
        implies={
            "not wall": {"check.seen.wall": "sound"},
            "wall": {"check.seen.wall": "unknown"},
            "not tee": {"check.seen.inlet_tee": "in_place"},
            "none": {"check.seen.readings.scum_total": 0.0},
        },
    )
    seen = {"wall": "unknown", "inlet_tee": "in_place"}
    assert collected((parts, Answer("parts", "value", ("wall",)))) == {"check": {"seen": seen}}
    none = collected((parts, Answer("parts", "value", (), "none")))["check"]
    assert none["seen"]["wall"] == "sound"  # type: ignore[index]
    assert none["seen"]["readings"] == {"scum_total": [{"m": 0.0, "said": "none"}]}  # type: ignore[index]
    assert collected((parts, Answer("parts", "unknown"))) == {}


def test_what_is_on_record_is_found_and_turned_back_into_an_answer() -> None:
    context = Context(TODAY, household=HOUSE)
    assert on_record(context, "household.tanks.0.liquid_depth_m") == 1.22
    assert on_record(context, "household.occupancy.+.people") == 3
    assert on_record(context, "household.tanks.7.liquid_depth_m") is None
    assert on_record(context, "check.seen.smell") is None
    fitted = Node("f", "choose", options=("yes", "no"), values={"yes": True, "no": False})
    assert recorded_answer(fitted, False) == Answer("f", "value", "no")
    assert recorded_answer(fitted, None) is None
    assert recorded_answer(fitted, 0) is None
    assert recorded_answer(Node("d", "date"), "2024-04-12") == Answer("d", "value", date(2024, 4, 12))
    assert recorded_answer(Node("d", "date"), "soon") is None
    assert recorded_answer(Node("d", "number"), True) is None
