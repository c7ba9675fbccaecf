"""Answers that do not go together, or do not say enough, are questioned before they count."""

from __future__ import annotations

from datetime import date

import pytest

from selfcheck.domain.household import Household, Tank
from selfcheck.interview.context import Context
from selfcheck.interview.dialogue import Conversation
from selfcheck.loading import content_place
from selfcheck.loading import script as load
from tests.content.texts import CONTENT
from tests.situations.test_half_understood import standing_at


@pytest.mark.parametrize("line", ["none", "0", "0 in", "zero"])
def test_a_crust_that_was_seen_is_not_without_thickness(line: str) -> None:
    talk = standing_at("scum_total", line)
    assert talk.pending is not None
    assert any("a crust on top of the water" in one.text for one in talk.messages)
    assert "scum_total" not in talk.state.given
    talk.hear("yes")
    assert talk.state.given["scum_total"].value == 0


def test_a_crust_that_was_measured_is_there() -> None:
    talk = standing_at("level", "crust 3 in", "yes", "above", "no crust")
    assert talk.pending is not None
    assert "surface" not in talk.state.given
    plain = standing_at("level", "above", "no crust")
    assert plain.pending is None


def test_a_filter_on_record_is_not_gone_without_a_word() -> None:
    script = load(content_place(own=False), "yearly")
    for fitted, asked in ((True, True), (False, False), (None, False)):
        house = Household(tanks=[Tank(filter=fitted)])
        talk = Conversation(script, Context(date(2026, 5, 18), household=house))
        talk.revise("filter")
        talk.hear("no filter")
        assert (talk.pending is not None) is asked
        assert any("a filter is fitted" in one.text for one in talk.messages) is asked
        talk.hear("yes")
        assert talk.state.given["filter"].value == "not_fitted"


def test_what_is_read_back_is_looked_at_too() -> None:
    talk = standing_at("level", "above, brown crust, crust 0 in")
    assert any("a crust on top of the water" in one.text for one in talk.messages)


@pytest.mark.parametrize("line", ["1", "3", "12"])
def test_a_bare_tank_size_in_no_usual_unit_is_asked_about(line: str) -> None:
    talk = standing_at("size", line)
    assert talk.pending is not None
    labels = [label for _, label in talk.pending.choices]
    assert len(labels) > 1
    assert any("gal" in label for label in labels)
    assert any("m³" in label for label in labels)
    assert "size" not in talk.state.given


@pytest.mark.parametrize("line", ["8 9", "8 or 9", "8 & 9", "5.5 6"])
def test_two_numbers_are_not_one_reading(line: str) -> None:
    talk = standing_at("sludge_1", line)
    assert talk.messages[-2].text.startswith(("Those are two", "One number"))
    assert "sludge_1" not in talk.state.given
    whole = standing_at("sludge_1", "8 1/2 in")
    assert whole.state.given["sludge_1"].value == pytest.approx(0.2159)


def test_no_warning_of_what_has_happened_takes_the_tank_to_be_shut_or_open() -> None:
    for path in sorted((CONTENT / "en" / "cautions").glob("*.md")):
        text = path.read_text("utf-8")
        if "\ntold = " not in text or path.stem == "lid_left_open":
            continue
        for wrong in (
            "leave the opening shut",
            "leave it shut",
            "do not open the tank",
            "leave the lid on",
            "stays shut",
        ):
            assert wrong not in text.casefold(), f"{path.stem}: {wrong}"


@pytest.mark.parametrize("line", ["May 3, 2021", "may 3rd, 2021", "Pumped May 3, 2021", "Tue, May 3, 2021"])
def test_a_date_with_a_comma_is_one_answer(line: str) -> None:
    talk = standing_at("last_pump_out", line)
    if talk.pending is not None:
        assert {one.question for one in talk.pending.offered} <= {"last_pump_out"}
        talk.hear("yes")
    assert str(talk.state.given["last_pump_out"].value) == "2021-05-03"
    assert "people" not in talk.state.given


def test_a_date_with_a_comma_stands_beside_other_answers() -> None:
    talk = standing_at("last_pump_out", "May 3, 2021, 4 people, 1000 gallons", "yes")
    told = {name: talk.state.given[name].value for name in ("last_pump_out", "people", "size")}
    assert str(told["last_pump_out"]) == "2021-05-03"
    assert told["people"] == 4
    assert told["size"] == pytest.approx(3.785, abs=0.01)
