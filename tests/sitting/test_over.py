"""A danger told on an earlier day: it is dated, asked about, and ended by a file of its own."""

from __future__ import annotations

import io
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from selfcheck.domain.check import Check, Seen
from selfcheck.plain.face import Face
from selfcheck.plain.listening import Listener
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone
from selfcheck.sitting import Sitting
from selfcheck.sitting.opening import verdict_desk
from selfcheck.sitting.over import over_desk
from selfcheck.sitting.record_pages import RecordPages
from selfcheck.storage.writing import write_check
from tests.sitting.desks import PLACE, Driven, demo

TOLD, LATER = date(2026, 6, 20), date(2027, 6, 20)


def sit(folder: Path, today: date) -> Sitting:
    return Sitting.open(folder, PLACE, today, in_place=True, fixed_day=True)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    folder = demo(tmp_path / "home")
    sitting = sit(folder, TOLD)
    talk = sitting.begin("trouble")
    talk.start()
    talk.hear("my husband fell in")
    sitting.conclude(talk)
    assert sitting.home().danger_on is None  # on the day itself the page says what to do, and asks nothing
    assert sitting.verdict().headline == "Danger: get everyone away from the tank."
    sitting.close()
    return folder


def test_a_danger_of_an_earlier_day_is_dated(home: Path) -> None:
    facts = sit(home, LATER).home()
    assert facts.danger_on == TOLD
    assert facts.verdict_line == ("Told on June 20, 2026: Someone fell in. Keep everyone away until it is over.")
    assert sit(home, LATER).verdict().by == ""


def test_saying_that_it_is_over_is_a_new_file_and_ends_it(home: Path) -> None:
    before = {path: path.read_bytes() for path in (home / "checks").iterdir()}
    sitting = sit(home, LATER)
    desk = Driven(over_desk(sitting))
    assert "Someone fell in." in desk.text
    assert "licensed professional" in desk.say("yes").text
    assert sitting.judgement().verdict != "danger"
    sitting.close()
    after = {path: path.read_bytes() for path in (home / "checks").iterdir()}
    assert {path: after[path] for path in before} == before
    assert [path.name for path in after if path not in before] == ["2027-06-20.json"]
    assert sit(home, LATER).home().danger_on is None


def test_not_over_leads_to_what_to_do(home: Path) -> None:
    desk = Driven(over_desk(sit(home, LATER))).say("2")
    assert desk.talk is not None
    assert desk.talk.conversation.script.flow.id == "trouble"


def test_it_can_be_said_from_the_record_on_the_same_day(home: Path) -> None:
    sitting = sit(home, TOLD)
    Driven(RecordPages(sitting).desk()).say("it is over", "yes")
    assert sitting.judgement().verdict == "cannot_tell"
    assert "it is over" not in Driven(RecordPages(sitting).desk()).text.lower()


def test_line_by_line_it_is_asked_once_at_the_start(home: Path) -> None:
    out, sitting = io.StringIO(), sit(home, LATER)
    with pytest.raises(Gone):
        Face(sitting, Speaker(out), Listener(io.StringIO("\nquit\n"))).run()
    sitting.close()
    assert out.getvalue().count("Is it over, and is everyone safe?") == 1
    assert "What do you want to do?" in out.getvalue()


def test_the_page_that_a_danger_ends_in_lets_it_be_said_that_it_was_not_so(tmp_path: Path) -> None:
    sitting = sit(demo(tmp_path / "home"), TOLD)
    before = sitting.judgement()
    talk = sitting.begin("trouble")
    talk.start()
    talk.hear("my husband fell in")
    talk.hear("that was a joke")
    page = sitting.conclude(talk)
    assert not isinstance(page, str)
    desk = Driven(verdict_desk(sitting, page)).say("nobody fell in, I was joking")
    assert "Stay out" in desk.text.replace("stay out", "Stay out")
    assert sitting.judgement().verdict == "danger"
    after = desk.say("3").text
    assert sitting.verdict().headline in after
    assert (sitting.judgement().findings, sitting.judgement().check) == (before.findings, before.check)
    assert before.check is not None
    assert sitting.home().last_check == before.check.on
    assert [check.hazards for check in sitting.checks[-2:]] == [["fell_in"], []]
    assert "never happened" in str(sitting.checks[-1].model_dump())
    assert "not so" not in desk.say("back").text
    sitting.close()


@pytest.mark.parametrize(
    "line", ["sorry was a mistake nobody is dizzy", "mistake, it never happened", "nobody fell in", "he is fine now"]
)
def test_that_it_is_not_so_in_any_words_is_asked_and_picks_nothing(home: Path, line: str) -> None:
    write_check(home, Check(id="", on=TOLD, seen=Seen(people_hurt="fell_in"), gate="not_opened"))
    sitting = sit(home, TOLD)
    desk = Driven(over_desk(sitting)).say(line)
    assert "Did it end, or was it never so?" in desk.text
    assert sitting.judgement().verdict == "danger"


@pytest.mark.parametrize(
    ("seen", "hazards", "verdict"),
    [
        ({}, ["child_near"], "carry_on"),
        ({"people_hurt": "feeling_ill", "lid": "sound"}, ["feeling_ill"], "carry_on"),
        ({"lid": "cracked"}, ["fire", "lid_broken"], "call_now"),
        ({"house": ["sewage_backup"]}, ["going_in"], "call_now"),
        ({"level": "at_outlet"}, ["child_near"], "cannot_tell"),
    ],
)
def test_what_was_told_beside_a_danger_that_is_taken_back_still_counts(
    tmp_path: Path, seen: dict[str, Any], hazards: list[str], verdict: str
) -> None:
    folder = demo(tmp_path / "home")
    told = {"id": "", "on": TOLD, "seen": seen, "hazards": hazards, "gate": "not_opened"}
    for _ in range(2):  # told twice, and taken back once
        write_check(folder, Check.model_validate(told))
    sitting = sit(folder, TOLD)
    assert sitting.judgement().verdict == "danger"
    assert sitting.danger_never("it never happened")
    assert sitting.judgement().verdict == verdict


def test_a_danger_of_an_earlier_day_is_not_taken_back_with_one_of_today(home: Path) -> None:
    write_check(home, Check(id="", on=LATER, seen=Seen(people_hurt="fell_in"), gate="not_opened"))
    sitting = sit(home, LATER)
    sitting.danger_never("it never happened")
    assert sitting.home().danger_on == TOLD
