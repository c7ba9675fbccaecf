"""Conversations that end in a page of their own: looking ahead, the rule of the place, water, after a pump-out."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

import pytest

from selfcheck.loading.place import Place, content_place
from selfcheck.report.parts import PartedPage
from selfcheck.sitting import Sitting
from tests.sitting.desks import lived_in

TODAY = date(2026, 6, 1)
PLACE = content_place(own=False)
COUNTY = """# selfcheck rule set, format 1
id = "our-county"
title = "Currant County tank rule"
publisher = "Currant County"
jurisdiction = "Currant County, Nowhere"
seen = "none"
note = "Made up for a test."

[[limits]]
kind = "sludge"
inches = 9
"""


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return lived_in(tmp_path / "home")


@contextmanager
def at(folder: Path, place: Place = PLACE) -> Iterator[Sitting]:
    sitting = Sitting.open(folder, place, TODAY, begin=True)
    try:
        yield sitting
    finally:
        sitting.close()


def page(sitting: Sitting, flow: str, *lines: str) -> PartedPage:
    conversation = sitting.begin(flow)
    conversation.start()
    for line in lines:
        assert conversation.ending is None, line
        conversation.hear(line)
    assert conversation.ending is not None, conversation.prompt
    found = sitting.conclude(conversation)
    assert isinstance(found, PartedPage)
    assert not sitting.trouble
    return found


def told(found: PartedPage) -> str:
    return "\n".join([found.headline, *found.lead, *(line for one in found.parts for line in one.lines)])


@pytest.mark.parametrize(
    ("flow", "lines"),
    [("after_pump_out", ("today", "gone", "closed")), ("find_tank", ()), ("look_ahead", ()), ("learn", ("1", "2"))],
)
def test_what_calls_for_a_call_today_is_said_at_the_end_with_its_reason(
    home: Path, flow: str, lines: tuple[str, ...]
) -> None:
    with at(home) as sitting:
        conversation = sitting.begin(flow)
        conversation.start()
        for line in ("the ground by the tank has sunk", *lines):
            conversation.hear(line)
        for _ in range(40):
            if conversation.prompt is None:
                break
            conversation.hear("skip" if conversation.prompt.unknown_allowed else "1")
        assert conversation.ending is not None
        assert conversation.ending.outcome == "call_today"
        said = conversation.messages[-1].text
        assert "Say why you call: the ground has sunk" in said
        assert said.splitlines()[-1].startswith("Call a licensed septic service today")
        found = sitting.conclude(conversation)
        assert not isinstance(found, str)
        assert found.verdict == "call_now"


@pytest.mark.parametrize("flow", ["after_pump_out", "find_tank", "look_ahead", "learn", "trouble"])
def test_a_tank_that_stands_open_is_what_is_said_at_the_end(home: Path, flow: str) -> None:
    with at(home) as sitting:
        conversation = sitting.begin(flow)
        conversation.start()
        conversation.hear("we cannot get the lid back on")
        for _ in range(40):
            if conversation.prompt is None:
                break
            conversation.hear("skip" if conversation.prompt.unknown_allowed else "1")
        assert conversation.ending is not None
        assert conversation.ending.outcome == "left_open"
        found = sitting.conclude(conversation)
        assert not isinstance(found, str)
        assert found.verdict in ("call_now", "danger")


def test_not_knowing_is_an_answer_to_the_first_question_of_what_do_i_own(home: Path) -> None:
    with at(home) as sitting:
        conversation = sitting.begin("learn")
        conversation.start()
        conversation.hear("I don't know")
        assert conversation.prompt is not None
        assert conversation.prompt.question == "sewer_or_tank"


def test_the_dates_are_shown_at_once_and_nothing_is_written(home: Path) -> None:
    before = {path: path.read_bytes() for path in home.rglob("*.json")}
    with at(home) as sitting:
        found = page(sitting, "look_ahead", "as it is")
        assert sitting.judgement().due.p50 is not None
        assert "1 chance in 10" in told(found)
    assert {path: path.read_bytes() for path in home.rglob("*.json")} == before


def test_what_is_tried_is_compared_and_never_written(home: Path) -> None:
    before = {path: path.read_bytes() for path in home.rglob("*.json")}
    lines = ("what if", "1, 2, 3, 4, 5, 6", "6", "12", "daily", "1500 gallons", "Minnesota", "3 in")
    with at(home) as sitting:
        said = told(page(sitting, "look_ahead", *lines))
    for words in (
        "With 6 people",
        "12 months a year",
        "used most days",
        "1,500 gal",
        "Minnesota Rules",
        "3 in (8 cm)",
    ):
        assert words in said, words
    assert {path: path.read_bytes() for path in home.rglob("*.json")} == before


def test_what_is_not_known_is_left_out_of_the_comparison(home: Path) -> None:
    with at(home) as sitting:
        said = told(page(sitting, "look_ahead", "what if", "people, size", "i don't know", "i don't know"))
        assert "nothing to compare" in said
        assert "nothing to compare" in told(page(sitting, "look_ahead", "what if", "i don't know"))


def test_in_a_new_folder_looking_ahead_makes_no_file(tmp_path: Path) -> None:
    with at(tmp_path / "new") as sitting:
        assert "nothing on record" in page(sitting, "look_ahead", "as it is").headline
    assert not list((tmp_path / "new").rglob("*.json"))


def test_the_rule_of_the_place_is_found_picked_and_kept(home: Path) -> None:
    with at(home) as sitting:
        conversation = sitting.begin("look_ahead")
        conversation.start()
        conversation.hear("rule")
        said = conversation.hear("near Duluth, Minnesota")
        assert any("Minnesota Rules 7080.2450" in one.text for one in said)
        assert any("Ask your local authority" in one.text for one in said)
        conversation.hear("pick")
        conversation.hear("Minnesota")
        found = sitting.conclude(conversation)
        assert isinstance(found, PartedPage)
        assert "By the rule that you go by: Minnesota Rules 7080.2450." in told(found)
    with at(home) as sitting:
        assert sitting.household.rules == "mn-7080-2450"
        assert sitting.household.region == "near Duluth, Minnesota"
        assert sitting.judgement().rules.id == "mn-7080-2450"


@pytest.mark.parametrize(
    "lines", [("skip", "keep"), ("i don't know", "i don't know"), ("the woods", "pick", "i don't know")]
)
def test_a_rule_that_is_not_changed_stays(home: Path, lines: tuple[str, ...]) -> None:
    with at(home) as sitting:
        page(sitting, "look_ahead", "rule", *lines)
        assert sitting.household.rules == "us-epa-homeowner"


def test_an_educators_rule_set_appears_without_code(home: Path, tmp_path: Path) -> None:
    overlay = tmp_path / "overlay"
    (overlay / "rules").mkdir(parents=True)
    (overlay / "rules" / "our-county.toml").write_text(COUNTY, encoding="utf-8")
    with at(home, content_place(overlay, own=False)) as sitting:
        assert "Currant County" in told(page(sitting, "look_ahead", "as it is"))
        assert any("Currant County" in row for row in sitting.verdict().rule_rows)
        tried = told(page(sitting, "look_ahead", "what if", "rules", "currant"))
        assert "By another rule: Currant County tank rule." in tried
        page(sitting, "look_ahead", "rule", "Currant County", "pick", "currant")
        assert sitting.household.rules == "our-county"


def test_two_meter_readings_become_litres_a_day(home: Path) -> None:
    with at(home) as sitting:
        lines = ("water", "cubic meters", "412.5", "385.5", "march 3 2026", "stands still", "no")
        said = told(page(sitting, "look_ahead", *lines))
        assert "By your meter, 79 gal (0.3 m³)" in said
        assert "days in the clear zone" in said
        assert "leak" not in said
    with at(home) as sitting:
        assert [(str(one.on), one.m3) for one in sitting.household.meter] == [
            ("2026-03-03", 385.5),
            ("2026-06-01", 412.5),
        ]


def test_without_a_meter_most_peoples_use_is_taken_and_leaks_are_told(home: Path) -> None:
    with at(home) as sitting:
        said = told(page(sitting, "look_ahead", "water", "no meter", "yes"))
        assert "By the number of people" in said
        assert "from memory" in said
        assert "A toilet runs on" in said
        assert sitting.household.meter == []


def test_a_lone_reading_is_kept_for_the_next_time(home: Path) -> None:
    with at(home) as sitting:
        page(sitting, "look_ahead", "water", "gallons", "109000", "i don't know", "turns", "no")
        assert len(sitting.household.meter) == 1


PUMPED = (
    "may 28 2026",
    "1",
    "a small pipe",
    "2",
    "yes",
    "more",
    "3 in",
    "strong",
    "none",
    "broken",
    "not cleaned",
    "skip",
    "",
    "yes",
)


def test_after_a_pump_out_each_thing_seen_is_explained_and_stored(home: Path) -> None:
    with at(home) as sitting:
        found = page(sitting, "after_pump_out", *PUMPED)
        said = told(found)
        for words in (
            "Only one of the two parts",
            "ran back",
            "small pipe",
            "filter was not cleaned",
            "no longer guards",
            "62 gal",
        ):
            assert words in said, words
        assert "months to gather" in said
        assert "leave a little as seed" in said
        assert found.verdict == "call_soon"
        stored = sitting.pump_outs[-1]
        assert (stored.sludge_left_m, stored.through, stored.parts, stored.backflow, stored.divider) == (
            pytest.approx(0.0762), "small_pipe", "one_of_two", "strong", "damaged",
        )  # fmt: skip


def test_after_a_pump_out_not_knowing_goes_through(home: Path) -> None:
    with at(home) as sitting:
        lines = ("i don't know", "2", "1", *["i don't know"] * 6, "skip", "", "yes")
        said = told(page(sitting, "after_pump_out", *lines))
        assert "it is not on record" in said
        assert "if both parts were emptied" in said


def test_the_marks_are_told_on_request_and_the_question_stays_open(home: Path, tmp_path: Path) -> None:
    with at(home) as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        said = "\n".join(one.text for one in conversation.hear("marks"))
        assert "a stain above" in said
        assert conversation.prompt is not None
        assert conversation.prompt.question == "way_in"
        assert not conversation.answers
    with at(tmp_path / "new") as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        assert any("not known well enough" in one.text for one in conversation.hear("show me the marks"))


def test_a_place_taped_once_is_kept_told_and_drawn(home: Path) -> None:
    lines = ("in sight", "kitchen corner", "porch post", "17 ft", "13 ft", "21 ft", "left", "80 ft", "under the stone")
    with at(home) as sitting:
        found = page(sitting, "find_tank", *lines)
        said = told(found)
        assert "17 ft from kitchen corner" in said
        assert "on the left" in said
        assert any("kitchen corner" in line for line in found.drawn)
        assert max(map(len, found.drawn)) <= 56
    with at(home) as sitting:
        place = sitting.household.tank().place
        assert place is not None
        assert place.from_a_m == pytest.approx(5.1816)
        assert place.note == "under the stone"
        assert place.from_truck_m == pytest.approx(24.384)


def test_lengths_that_cannot_meet_are_questioned_and_kept(home: Path) -> None:
    with at(home) as sitting:
        conversation = sitting.begin("find_tank")
        conversation.start()
        for line in ("in sight", "a post", "b post", "17 ft", "13 ft"):
            conversation.hear(line)
        assert any("cannot meet" in one.text for one in conversation.hear("60 ft"))


def test_a_search_without_knowing_anything_ends_in_a_plan(home: Path) -> None:
    with at(home) as sitting:
        lines = ("i don't know", "i don't know", "not yet", *["i don't know"] * 3, "", "", "not yet")
        said = told(page(sitting, "find_tank", *lines))
        assert "wait for its marks" in said
        assert "once the depth of the pipe" in said


def test_the_rod_is_spoken_of_only_where_the_ground_is_marked(home: Path) -> None:
    for answer, wanted in (("marked", True), ("not yet", False)):
        with at(home) as sitting:
            conversation = sitting.begin("find_tank")
            conversation.start()
            said: list[str] = []
            for line in ("no", "no", answer, "basement", "18 in", "usual", "", "", ""):
                said += [one.text for one in conversation.hear(line)]
            assert any("thin rod" in one for one in said) is wanted


def test_places_that_are_not_known_leave_no_trouble(home: Path) -> None:
    with at(home) as sitting:
        page(sitting, "find_tank", "covered", "not yet", *["i don't know"] * 3)
        assert not sitting.trouble


def test_another_number_of_parts_is_asked_about_before_it_changes_the_tank(home: Path) -> None:
    with at(home) as sitting:
        talk = sitting.begin("after_pump_out")
        talk.start()
        for line in ("today", "it is gone", "on and fastened", "the big lid"):
            talk.hear(line)
        said = [message.text for message in talk.hear("two parts, and both were pumped")]
        assert "Your record has another number of parts: 1. If you say yes, the record is changed." in said
        talk.hear("no")
        assert talk.prompt is not None
        assert talk.prompt.question == "compartments"
        talk.hear("only one part, and it was pumped")
        assert talk.prompt.question == "left"


def test_the_read_back_of_a_pump_out_holds_all_that_goes_into_the_record(home: Path) -> None:
    with at(home) as sitting:
        talk = sitting.begin("after_pump_out")
        talk.start()
        told = ("today", "it is gone", "on and fastened", "the big lid", "one part", "nothing", "a little", "none")
        for line in (*told, "it was cleaned", "Joe", ""):
            said = [message.text for message in talk.hear(line)]
        shown = "\n".join(said).lower()
        for words in ("the manhole", "only one part", "a little, and it stopped", "it was cleaned", "joe"):
            assert words in shown, words
