"""A pump-out told years later: nothing is asked that only that day could show, and what was found is of that day."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from tests.sitting.test_endings import TODAY, at
from tests.sitting.test_second_part_and_tank import house

ANSWERS = {
    "truck": "gone", "pumped_lid": "closed", "left": "nothing", "pumped_parts": "tee on the outlet side",
    "pumped_outlet_tee": "missing", "pumped_read_back": "yes",
}  # fmt: skip


@pytest.mark.parametrize(
    ("told", "lid_asked", "seen_on"),
    [
        ("2019", False, date(2019, 7, 2)),
        ("three weeks ago", False, date(2026, 5, 11)),
        ("May 2026", True, date(2026, 5, 16)),  # it may have been yesterday
        ("today", True, TODAY),
        ("I don't know", True, TODAY),
    ],
)
def test_the_lid_is_asked_for_while_it_may_still_be_as_it_was_left(
    tmp_path: Path, told: str, lid_asked: bool, seen_on: date
) -> None:
    with at(house(tmp_path / "home")) as sitting:
        conversation = sitting.begin("after_pump_out")
        conversation.start()
        asked: list[str] = []
        while (prompt := conversation.prompt) is not None:
            asked.append(prompt.question)
            line = {"pumped_on": told, **ANSWERS}.get(prompt.question, "skip" if prompt.unknown_allowed else "")
            conversation.hear(line)
        sitting.conclude(conversation)
        assert ("pumped_lid" in asked) == lid_asked
        assert [(one.on, one.seen.outlet_tee) for one in sitting.checks] == [(seen_on, "missing")]


def test_a_danger_told_meanwhile_is_one_of_today(tmp_path: Path) -> None:
    with at(house(tmp_path / "home")) as sitting:
        conversation = sitting.begin("after_pump_out")
        conversation.start()
        for line in ("2019", "my kid is leaning over the hole"):
            conversation.hear(line)
        sitting.conclude(conversation)
        assert [(one.on, bool(one.hazards)) for one in sitting.checks] == [(TODAY, True)]
