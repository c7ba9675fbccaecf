"""A day that was told as a month or a year stays as wide as that, wherever it is said again."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.showing import show_date
from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.phrases import FILLS
from selfcheck.interview.septic_finishing import make_pump_out
from tests.situations.playing import TODAY, begin
from tests.situations.test_half_understood import standing_at

WIDE = [("May 2020", "May 2020"), ("2019", "2019"), ("May 3, 2021", "May 3, 2021")]


def pump_out(talk: Conversation) -> PumpOut:
    made, lost = make_pump_out({"tank": "main", **talk.draft()["pump_out"]})
    assert made is not None
    assert not lost
    return made


@pytest.mark.parametrize(("line", "shown"), WIDE)
def test_no_exact_day_is_made_up_for_a_pump_out(line: str, shown: str) -> None:
    made = pump_out(standing_at("last_pump_out", line))
    assert show_date(made.on, "us", *made.span) == shown
    context = replace(begin("homeowner").context, pump_outs=[made])
    facts = FILLS["facts"](standing_at("last_pump_out").state.answered, context) or ""
    assert facts.endswith(f"last pumped {shown}")


def test_a_day_told_later_as_one_day_is_no_span() -> None:
    talk = standing_at("last_pump_out", "May 2020", "no, it was May 3, 2020")
    assert pump_out(talk).on == date(2020, 5, 3)
    assert pump_out(talk).within_days is None


@pytest.mark.parametrize(("line", "asked"), [("today", True), ("I don't know", True), ("May 2020", False)])
def test_the_truck_is_asked_about_only_on_the_day_itself(line: str, asked: bool) -> None:
    talk = begin("homeowner", "after_pump_out")
    assert talk.node is not None
    assert talk.node.id == "pumped_on"
    talk.hear(line)
    assert TODAY
    assert (talk.node.id == "truck") is asked
