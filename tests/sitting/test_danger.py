"""After a danger was told, in whatever words and wherever: the record says danger, and nothing milder is shown."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from selfcheck.loading import content_place
from selfcheck.sitting import Sitting

TODAY = date(2026, 5, 18)
#: a check on record that is newer than the sheet that is typed in
LATER = (
    '{"format": "selfcheck-check", "version": 1, "id": "2026-05-17", "on": "2026-05-17", "tank": "main", "seen": {},'
    ' "lid_closed": true}'
)
TOLD = {
    "my kid is leaning over the hole": "child_near",
    "I'm climbing in to get my keys": "going_in",
    "my husband fell in": "fell_in",
    "I feel dizzy": "feeling_ill",
}


@pytest.mark.parametrize("flow", ["yearly", "trouble", "learn", "after_pump_out", "look_ahead", "find_tank"])
@pytest.mark.parametrize(("line", "hazard"), list(TOLD.items()))
def test_a_danger_told_in_any_conversation_is_on_record_and_judged(
    tmp_path: Path, flow: str, line: str, hazard: str
) -> None:
    sitting = Sitting.open(tmp_path / "home", content_place(own=False), TODAY, begin=True, fixed_day=True)
    try:
        conversation = sitting.begin(flow)
        conversation.start()
        conversation.hear(line)
        assert conversation.ending is not None
        assert conversation.ending.outcome == "danger"
        page = sitting.conclude(conversation)
        assert not isinstance(page, str)
        assert page.verdict == "danger"
        assert sitting.checks[-1].hazards == [hazard]
        assert sitting.home().verdict_line == page.headline
    finally:
        sitting.close()


def test_no_milder_page_follows_when_a_newer_check_stands_on_record(tmp_path: Path) -> None:
    home = tmp_path / "home"
    (home / "checks").mkdir(parents=True)
    (home / "checks" / "2026-05-17.json").write_text(LATER, encoding="utf-8")
    sitting = Sitting.open(home, content_place(own=False), TODAY, begin=True, fixed_day=True)
    try:
        conversation = sitting.begin("yearly")
        conversation.start()
        for line in ("I have my sheet", "none", "no alarm", "May 2024", "3", "1000 gallons", "back on", "2026-05-10"):
            conversation.hear(line)
        conversation.hear("my kid is leaning over the hole")
        page = sitting.conclude(conversation)
        assert isinstance(page, str) or page.verdict == "danger"
        assert any(check.hazards for check in sitting.checks)
    finally:
        sitting.close()


def test_what_was_answered_at_the_gate_stays_when_a_hazard_is_told(tmp_path: Path) -> None:
    sitting = Sitting.open(tmp_path / "home", content_place(own=False), TODAY, begin=True, fixed_day=True)
    try:
        conversation = sitting.begin("yearly")
        conversation.start()
        for line in ("start", "none", "no alarm", "May 2024", "3", "1000 gallons", "", "I don't know", ""):
            conversation.hear(line)
        conversation.hear("my sister is here")
        conversation.hear("the lid just cracked")
        assert conversation.state.answered.chosen("gate_helper", "adult_here")
        assert conversation.draft()["check"]["gate"] == "not_confirmed"
    finally:
        sitting.close()
