"""The rule set asked for at the start decides in conversations too, and does not become the household's."""

from __future__ import annotations

from pathlib import Path

import pytest

from selfcheck.interview.context import Answered
from selfcheck.interview.phrases import FILLS
from selfcheck.loading import content_place
from selfcheck.sitting import Sitting
from tests.sitting.test_endings import TODAY
from tests.sitting.test_second_part_and_tank import house

PLACE = content_place(own=False)


@pytest.mark.parametrize("asked", [None, "ma-310-cmr-15-351", "wi-one-third"])
def test_marks_and_fills_go_by_the_rules_asked_for(tmp_path: Path, asked: str | None) -> None:
    sitting = Sitting.open(house(tmp_path / "home"), PLACE, TODAY, asked)
    context = sitting.begin("yearly").context
    wanted = context.rule_sets[asked or "us-epa-homeowner"].title
    assert FILLS["rule_own"](Answered(), context) == wanted
    assert FILLS["mark_rule"](Answered(), context) == wanted
    assert sitting.judgement().rules.title == wanted
    assert sitting.household.rules == "us-epa-homeowner"
    sitting.close()


def test_the_booking_mark_moves_with_the_rules_asked_for(tmp_path: Path) -> None:
    said = {}
    for asked in ("us-epa-homeowner", "wi-one-third"):
        sitting = Sitting.open(house(tmp_path / asked), PLACE, TODAY, asked)
        reply = sitting.ask_back("marks")
        assert reply is not None
        said[asked] = reply.text
        sitting.close()
    assert said["us-epa-homeowner"] != said["wi-one-third"]
