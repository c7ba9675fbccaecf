"""Every fact of the record, put right by the question that asks for it."""

from __future__ import annotations

from itertools import product
from pathlib import Path
from typing import Any

import pytest

from selfcheck.domain.shapes import vessel
from selfcheck.sitting import Sitting
from selfcheck.sitting.record_pages import RecordPages
from selfcheck.storage.examine import examine
from selfcheck.storage.folder import read
from tests.sitting.desks import TODAY, Driven

HOUSE, TANK, PLACE = "The people and the house", "The tank", "Where the lid is"


def put_right(sitting: Sitting, group: str, fact: str, *said: str) -> Driven:
    desk = Driven(RecordPages(sitting).desk()).say("facts", group)
    labels = [way.label for way in desk.desk.page.ways]
    number = next(at for at, label in enumerate(labels, 1) if label.casefold().startswith(fact))
    return desk.say(str(number), *said)


@pytest.mark.parametrize(
    ("group", "fact", "said", "told", "kept"),
    [
        (TANK, "form", ["upright", "6 ft"], "upright and round, 6 ft (183 cm) across",
         {"kind": "upright", "diameter_m": 1.8288}),
        (TANK, "form", ["drum", "5 ft", "8 ft", "round like"], "a lying drum, 5 ft",
         {"kind": "drum", "diameter_m": 1.524, "length_m": 2.4384, "ends": "round"}),
        (TANK, "form", ["oval", "2 m", "1.5 m", "I don't know"], "long",
         {"kind": "oval", "width_m": 2.0, "height_m": 1.5, "length_m": None}),
        (TANK, "form", ["box", "9 ft", "5 ft"], "a box, 9 ft", {"kind": "box", "length_m": 2.7432, "width_m": 1.524}),
    ],
)  # fmt: skip
def test_the_form_is_told_with_its_own_sizes_only(
    sitting: Sitting, home: Path, group: str, fact: str, said: list[str], told: str, kept: dict[str, Any]
) -> None:
    desk = put_right(sitting, group, fact, *said)
    assert desk.talk is None, desk.heard
    assert "Kept: form of the tank" in desk.desk.said.text
    assert told in desk.text
    shape = read(home).household.tank().shape.model_dump()
    assert {name: shape[name] for name in kept} == {
        name: pytest.approx(value) if isinstance(value, float) else value for name, value in kept.items()
    }
    assert examine(home, TODAY).problems == ()
    if None not in kept.values():
        assert vessel(read(home).household.tank()).basis == "shape"


FACTS = [
    (TANK, "number of parts", ["two parts", "2/3"], "Two parts, two thirds of the tank"),
    (TANK, "number of parts", ["one part"], "number of parts: One part\n"),
    (TANK, "outlet edge", ["15 in"], "15 in (38 cm)"),
    (TANK, "inlet side", ["the end toward the kitchen"], "the end toward the kitchen"),
    (TANK, "tank size", ["1500 gallons"], "1,500 gal"),
    (PLACE, "truck to lid", ["80 feet"], "80 ft"),
    (HOUSE, "people", ["5", "June 2025"], "5"),
    (HOUSE, "food grinder", ["daily"], "most days"),
    (HOUSE, "months", ["6"], "6"),
    (HOUSE, "where the house is", ["Mason County, Washington"], "Mason County"),
    (HOUSE, "rule to go by", ["Minnesota"], "Minnesota"),
    (HOUSE, "water meter", ["gallons", "120000", "I don't know"], "120,000 gal"),
]


def test_a_fact_is_told_anew_and_the_one_before_stays_on_disk(sitting: Sitting, home: Path) -> None:
    for done, (group, fact, said, told) in enumerate(FACTS, 1):
        desk = put_right(sitting, group, fact, *said)
        assert desk.talk is None, desk.heard
        assert "Kept: " in desk.desk.said.text, fact
        assert told in desk.text
        assert len(list((home / "earlier").glob("household-*.json"))) == done
    assert read(home).household == sitting.household
    assert examine(home, TODAY).problems == ()


def test_what_is_passed_over_stays_as_it_was(sitting: Sitting, home: Path) -> None:
    before = read(home).household
    for fact, said in product(("form", "outlet edge", "inlet side"), ("skip", "leave")):
        desk = put_right(sitting, TANK, fact, said)
        assert desk.talk is None, desk.heard
        assert "stays as it was" in desk.desk.said.text
    assert read(home).household == before


def test_the_way_of_the_hose_is_said_on_the_phone(sitting: Sitting) -> None:
    from selfcheck.sitting.papers import note

    assert "pace it out" in dict(note(sitting).said)["Hose"]
    put_right(sitting, PLACE, "truck to lid", "80 feet")
    put_right(sitting, TANK, "inlet side", "the kitchen end")
    said = dict(note(sitting).said)
    assert said["Hose"] == "80 ft (24.38 m) from where a truck can stand to the lid"
    assert "inlet: the kitchen end" in said["Access"]


@pytest.mark.parametrize("line", ["form of the tank", "the form of the tank", "Form", "months a year", "outlet edge"])
def test_a_fact_that_is_named_is_the_one_that_is_asked_for(sitting: Sitting, line: str) -> None:
    """From the page of all facts, and from the page that has its row."""
    group = HOUSE if "months" in line else TANK
    for ways in (["facts"], ["facts", group]):
        desk = Driven(RecordPages(sitting).desk()).say(*ways, line)
        assert desk.talk is not None, desk.desk.said
        asked = desk.talk.conversation
        assert asked.node is not None
        assert {*line.casefold().split()} - {"the", "of"} <= {*asked.script.name_of(asked.node.id).split()}


def test_what_no_record_can_hold_is_named_in_words(sitting: Sitting) -> None:
    before = sitting.household
    desk = put_right(sitting, HOUSE, "months", "40", "yes")
    assert any("The most is 12." in one for one in desk.heard)
    assert sitting.household == before
    whole = before.model_dump(mode="json", by_alias=True)
    whole["occupancy"][-1]["months_per_year"] = 40
    sitting.keep_household(whole)
    assert sitting.household == before
    assert sitting.trouble == "This was left out, since it cannot be so: months per year."
