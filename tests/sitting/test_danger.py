"""After a danger was told, in whatever words and wherever: the record says danger, and nothing milder is shown."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from selfcheck.loading import content_place
from selfcheck.report.wording import VerdictPage
from selfcheck.sitting import Sitting
from selfcheck.sitting.opening import verdict_desk
from selfcheck.sitting.record_pages import RecordPages
from selfcheck.sitting.steps import Stay
from tests.sitting.desks import Driven, demo, opened

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
        assert isinstance(page, VerdictPage)
        assert page.verdict == "danger"
        assert sitting.checks[-1].hazards == [hazard]
        home = sitting.home()
        assert (home.verdict_line, home.by) == (page.headline, page.by)
        assert page.when_next[0] == "Look again only once a licensed professional has seen the tank."
        step = verdict_desk(sitting, page).hear("What do I do?")
        assert isinstance(step, Stay)
        assert page.do in step.say
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


TO_THE_OPEN_TANK = (
    "1", "none", "no alarm", "May 2024", "3", "1000 gallons", "", "skip", "", "adult here", "indoors", "none near",
    "beside it", "firm and heavy", "gloves and goggles on", "we said it", "call and stay out", "",
)  # fmt: skip


@pytest.mark.parametrize("line", ["that was a joke", "no, I meant the stick", "he did not fall in", "nobody is hurt"])
def test_a_danger_that_was_taken_wrong_is_taken_back_once_all_are_well(tmp_path: Path, line: str) -> None:
    sitting = Sitting.open(tmp_path / "home", content_place(own=False), TODAY, begin=True, fixed_day=True)
    try:
        talk = sitting.begin("yearly")
        talk.start()
        for typed in (*TO_THE_OPEN_TANK, "he fell in"):
            talk.hear(typed)
        assert talk.prompt is not None
        assert talk.prompt.question == "danger_lid"
        said = talk.hear(line)
        assert any(message.kind == "caution" for message in said)  # it stays on the screen
        talk.hear("3 inches")  # the question waits
        talk.hear("no")
        assert talk.state.told == ("fell_in",)
        talk.hear(line)
        talk.hear("yes")
        assert talk.state.told == ()
        assert talk.state.open  # and is still treated as open
        assert [one.question for one in talk.answers].count("_hazard") == 1  # both stand in the list
        assert any(one.question == "_note" and one.said == line for one in talk.answers)
    finally:
        sitting.close()


def test_after_a_break_a_danger_stands(tmp_path: Path) -> None:
    place = content_place(own=False)
    sitting = Sitting.open(tmp_path / "home", place, TODAY, begin=True, fixed_day=True)
    talk = sitting.begin("yearly")
    talk.start()
    for typed in (*TO_THE_OPEN_TANK, "he fell in"):
        talk.hear(typed)
    sitting.close()
    again = Sitting.open(tmp_path / "home", place, TODAY, begin=True, fixed_day=True)
    try:
        talk = again.resume()
        talk.start()
        talk.hear("that was a joke")
        assert talk.state.told == ("fell_in",)
    finally:
        again.close()


@pytest.mark.parametrize(("line", "hazard"), [("my husband fell in", "fell_in"), ("the lid is cracked", "lid_broken")])
def test_a_danger_told_while_one_fact_is_put_right_is_written_at_once(tmp_path: Path, line: str, hazard: str) -> None:
    sitting = opened(demo(tmp_path / "home"))
    try:
        desk = Driven(RecordPages(sitting).desk()).say("facts", "1", "1", line)
        assert any("Call" in text for text in desk.heard)
        assert sitting.checks[-1].hazards == [hazard]
        assert sitting.verdict().verdict == ("danger" if hazard == "fell_in" else "call_now")
        if desk.talk is not None:
            assert desk.say("that was a joke", "yes").talk is not None
            assert sitting.checks[-1].hazards == []
            assert sitting.checks[-1].replaces == sitting.checks[-2].id
            assert sitting.verdict().verdict == "carry_on"
        else:
            assert desk.desk.page.verdict is not None
    finally:
        sitting.close()


@pytest.mark.parametrize(
    "line", ["we are standing on the lid", "my kid is leaning over the hole", "sparks at the vent"]
)
def test_a_danger_told_after_a_pump_out_is_one_of_the_day_it_is_told(tmp_path: Path, line: str) -> None:
    sitting = opened(demo(tmp_path / "home"))
    try:
        talk = sitting.begin("trouble")
        talk.start()
        talk.hear(line)
        page = sitting.conclude(talk)
        assert not isinstance(page, str)
        assert page.headline.startswith("Danger:")
        assert sitting.danger_before() is None
    finally:
        sitting.close()
