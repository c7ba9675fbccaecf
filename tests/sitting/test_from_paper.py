"""What was read outside and typed in later: the day it was seen is kept apart from the time it was typed."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.sitting.test_endings import TODAY, at
from tests.sitting.test_second_part_and_tank import house, talked

SEEN = ("sheet_gate", "level", "surface", "smell", "parts", "scum_total", "sludge_1", "sludge_2")
TOLD = ("way_in", "wrong_now", "alarm", "sheet_lid", "observed_on", "read_back")


@pytest.mark.parametrize(("day", "seen"), [("two days ago", "2026-05-30"), ("today", "")])
def test_each_reading_from_a_sheet_keeps_the_day_it_was_seen(tmp_path: Path, day: str, seen: str) -> None:
    with at(house(tmp_path / "home")) as sitting:
        sitting.conclude(talked(sitting, {"observed_on": day, "second_on_paper": "leave_it"}))
    written = next((tmp_path / "home" / "checks").glob("*.json"))
    whole = json.loads(written.read_text(encoding="utf-8"))
    assert whole["on"] == (seen or TODAY.isoformat())
    assert whole["gate"] == "passed"
    kept = {one["question"]: one for one in whole["answers"]}
    assert {name: kept[name].get("observed", "") for name in SEEN} == dict.fromkeys(SEEN, seen)
    assert {name: kept[name].get("observed", "") for name in TOLD} == dict.fromkeys(TOLD, "")
    assert all(one["at"] for one in whole["answers"])
