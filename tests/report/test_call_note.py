"""The call note: one screen, every part, and only what the record says."""

from __future__ import annotations

import re
from datetime import timedelta
from functools import cache
from typing import Any

import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.household import Contact, Lid, Place
from selfcheck.domain.judging import judge
from selfcheck.domain.verdict import Judgement
from selfcheck.loading import content_place
from selfcheck.loading.conversations import texts
from selfcheck.report.call_note import MOST_ROWS, WIDTH, call_note, note_lines
from tests.cases import build, judged, verdict_words, written_cases


@cache
def words() -> dict[str, Any]:
    return texts(content_place(None), "call_note")


def lines(judgement: Judgement, pump_outs: Any = (), columns: int = WIDTH) -> list[str]:
    return note_lines(call_note(judgement, pump_outs, verdict_words(), words()), columns)


def said(judgement: Judgement) -> dict[str, str]:
    return dict(call_note(judgement, build().pump_outs, verdict_words(), words()).said)


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("case", written_cases()[::4], ids=lambda case: case["id"])
def test_it_fits_one_screen(case: dict[str, Any], units: str) -> None:
    built = build(case)
    tank = built.household.tanks[0] if built.household.tanks else None
    if tank is not None:
        lid = Lid(form="round", diameter_m=0.61, thickness_m=0.076, material="concrete", buried_m=0.3)
        place = Place(corner_a="kitchen " * 8, corner_b="porch " * 8, from_a_m=5.2, from_b_m=4.1, note="stone " * 30)
        tank = tank.model_copy(update={"lid": lid, "place": place, "compartments": 2, "filter": True})
    contact = Contact(role="pump-out service", name="N" * 80, phone="555 0100")
    about = {"units": units, "tanks": [tank] if tank else [], "contacts": [contact]}
    household = built.household.model_copy(update=about)
    judgement = judge(type(built)(household, *[getattr(built, one) for one in built.__slots__[1:]]))
    whole = {name: said(judgement).get(words()["labels"][name], "") for name in ("call", "want", "by", "signs")}
    for columns, widest in ((20, 60), (80, 80), (300, 100)):
        found = lines(judgement, columns=columns)
        together = " ".join(" ".join(line[10:].split()) for line in found)
        assert [name for name, what in whole.items() if what not in together] == []
        assert len(found) <= MOST_ROWS
        assert widest - 15 <= max(map(len, found)) <= widest
    for label in ("access", "hose", "ask", "not_done", "tank", "want"):
        assert any(line.startswith(words()["labels"][label]) for line in found), label


def test_it_says_what_is_wanted_by_what_decides() -> None:
    labels = words()["labels"]
    assert said(judged())[labels["want"]] == words()["want"]["service"]
    assert words()["note"]["no_need"] in lines(judged())
    assert said(judged(sludge=[30, 30]))[labels["want"]] == words()["want"]["pump"]
    assert said(judged(outlet_tee="missing"))[labels["want"]] == words()["want"]["look"]
    assert said(judged(house=["sewage_backup"]))[labels["want"]].startswith(words()["want"]["today"])
    both = said(judged(outlet_tee="missing", sludge=[30, 30]))[labels["want"]]
    assert words()["want"]["pump"] in both
    assert words()["want"]["look"] in both
    assert labels["by"] in said(judged(sludge=[30, 30]))
    assert labels["by"] not in said(judged())


def test_right_after_a_pump_out_it_does_not_ask_for_another() -> None:
    labels, built = words()["labels"], build({"set": {"check.seen.outlet_tee": "missing"}})
    kept = {name: getattr(built, name) for name in built.__slots__}
    later = PumpOut(on=built.today + timedelta(days=1), sludge_left_m=0.0)
    for days, just in ((2, True), (400, False)):
        case = type(built)(**kept | {"pump_outs": [later], "today": built.today + timedelta(days=days)})
        note = dict(call_note(judge(case), [later], verdict_words(), words()).said)
        assert ("emptied" not in note[labels["ask"]]) is just
        assert (words()["not_done"]["since"] in note[labels["not_done"]]) is just
        assert words()["not_done"]["shut"] not in note[labels["not_done"]]


def test_what_cannot_wait_is_said_first() -> None:
    want = words()["labels"]["want"]
    assert said(judged(house=["sewage_backup"]))[want] == words()["want"]["sewage_backup"]
    assert said(judged(lid="missing"))[want] == words()["want"]["safe"]
    both = said(judged(house=["sewage_backup"], lid="cracked"))[want]
    assert both.startswith(words()["want"]["sewage_backup"])
    assert words()["want"]["look"] in both


def test_a_weight_is_told_with_its_unit_once() -> None:
    lid = Lid(form="round", diameter_m=0.61, thickness_m=0.076, material="concrete")
    found = judged()
    tank = found.tank.model_copy(update={"lid": lid})
    told = dict(call_note(found._replace(tank=tank), [], verdict_words(), words()).said)[words()["labels"]["access"]]
    assert re.search(r"\d to \d+ (lb|kg)", told), told


def test_danger_sends_to_the_emergency_number_first() -> None:
    assert "911" in " ".join(lines(judged(people_hurt="fell_in"))[1:3])


def test_readings_stand_with_date_and_error_and_signs_as_they_were_seen() -> None:
    labels = words()["labels"]
    told = said(judged(sludge=[14, 14], outlet_tee="missing", wall="crumbling"))
    assert "May 18, 2026" in told[labels["read"]]
    assert "sludge 14 ± " in told[labels["read"]]
    assert "partly estimated" in told[labels["read"]]
    assert "outlet tee" in told[labels["signs"]]
    assert "May 20, 2024" in told[labels["pumped"]]


def test_it_asks_for_what_a_good_pump_out_is() -> None:
    asked = said(judged())[words()["labels"]["ask"]]
    for part in ("license", "price", "manhole", "tees", "receipt"):
        assert part in asked
    assert "compartments" not in asked  # this tank has one
    many = said(judged({"set": {"household.tanks.0.compartments": 2, "household.tanks.0.filter": True}}))
    assert words()["ask"]["both"] in many[words()["labels"]["ask"]]
    assert words()["ask"]["filter"] in many[words()["labels"]["ask"]]


def test_what_was_not_done_is_said() -> None:
    label = words()["labels"]["not_done"]
    assert words()["not_done"]["shut"] in said(judged({"set": {"check.gate": "not_opened"}}))[label]
    assert words()["not_done"]["unsafe"] in said(judged({"set": {"check.gate": "not_confirmed"}}))[label]
    assert "roots" in said(judged(roots="unknown"))[label]
    assert words()["not_done"]["shut"] in said(judged({"no_check": True}))[label]
