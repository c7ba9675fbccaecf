"""The calendar file, read back by another program."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from functools import cache
from typing import Any

import icalendar
import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.household import Household, Tank
from selfcheck.domain.judging import Case, judge
from selfcheck.loading import content_place
from selfcheck.loading.conversations import texts
from selfcheck.report.calendar import LINE_OCTETS, calendar
from tests.cases import build, check_of, written_cases


@cache
def words() -> dict[str, Any]:
    return texts(content_place(None), "calendar")


def made(case: Case, earlier: Sequence[Household | None] = ()) -> str:
    return calendar(judge(case), case.checks, case.pump_outs, words(), earlier)


def events(text: str) -> dict[str, icalendar.Event]:
    return {str(one["UID"]): one for one in icalendar.Calendar.from_ical(text).walk("VEVENT")}


def kind(found: dict[str, icalendar.Event], name: str) -> icalendar.Event:
    return next(one for uid, one in found.items() if uid.endswith(f"-{name}@selfcheck"))


def on(case: Case, day: date) -> Case:
    return Case(case.household, case.checks, case.pump_outs, case.rule_sets, case.signs, day)


@pytest.mark.parametrize("case", written_cases()[::4], ids=lambda case: case["id"])
def test_another_program_reads_every_one(case: dict[str, Any]) -> None:
    built = build(case)
    text = made(built)
    assert text.endswith("END:VCALENDAR\r\n")
    lines = text.split("\r\n")
    assert "\n" not in text.replace("\r\n", "")
    assert all(len(line.encode()) <= LINE_OCTETS for line in lines)
    judgement = judge(built)
    found = events(text)
    look = kind(found, "look")
    assert look.decoded("DTSTART") >= max(judgement.look_again, judgement.today)
    assert look.decoded("DTEND") - look.decoded("DTSTART") == timedelta(days=1)
    standing = {uid for uid, one in found.items() if one["STATUS"] == "CONFIRMED"}
    assert any(uid.endswith("-call@selfcheck") for uid in standing) == (judgement.call_professional)
    for one in found.values():
        assert {"UID", "DTSTAMP", "SEQUENCE", "SUMMARY", "DTSTART"} <= set(one)
        assert one.decoded("DTSTART") >= judgement.today


def test_the_window_runs_from_one_chance_in_ten_to_an_even_one() -> None:
    case = build()
    due = judge(case).due
    window = kind(events(made(case)), "window")
    assert due.p10 is not None
    assert due.p50 is not None
    assert window.decoded("DTSTART") == max(due.p10, case.today)
    assert window.decoded("DTEND") == due.p50 + timedelta(days=1)


def test_a_look_that_is_late_stands_on_the_day_the_verdict_names() -> None:
    seen = 0
    for written in written_cases()[::6]:
        built = build(written)
        for case in (built, on(built, built.today + timedelta(days=500))):
            judgement = judge(case)
            day = kind(events(made(case)), "look").decoded("DTSTART")
            if judgement.look_again > judgement.today:
                assert day == judgement.look_again
            elif judgement.verdict == "cannot_tell" and judgement.act_by is not None:
                seen += 1
                assert day == max(judgement.act_by, judgement.today)
    assert seen


def test_titles_tell_nothing_of_the_tank() -> None:
    for one in events(made(build(house=["sewage_backup"]))).values():
        assert str(one["SUMMARY"]).startswith("House: ")
        assert not {"septic", "sludge", "sewage", "tank"} & set(str(one["SUMMARY"]).lower().split())


def test_it_follows_from_the_record_and_the_day_alone() -> None:
    assert made(build()) == made(build())
    stamps = {str(one["DTSTAMP"].dt) for one in events(made(build())).values()}
    assert stamps == {"2026-05-18 17:40:03+00:00"}


def test_events_keep_their_names_and_their_numbers_rise_with_the_record() -> None:
    case = build()
    first = events(made(case))
    later = [*case.checks, check_of("2026-06-20", sludge=[])]
    second = events(made(Case(case.household, later, case.pump_outs, case.rule_sets, case.signs, date(2026, 6, 20))))
    emptied = [*case.pump_outs, PumpOut(on=date(2026, 7, 1))]
    third = events(made(Case(case.household, later, emptied, case.rule_sets, case.signs, date(2026, 7, 2))))
    changed = events(made(case, earlier=[case.household]))
    look = next(uid for uid in first if uid.endswith("-look@selfcheck"))
    assert look in second
    assert look in third
    numbers = [int(one[look]["SEQUENCE"]) for one in (first, second, third)]
    assert numbers == sorted(set(numbers))
    assert int(changed[look]["SEQUENCE"]) > numbers[0]
    assert int(events(made(on(case, case.today + timedelta(days=40))))[look]["SEQUENCE"]) > numbers[0]


def test_an_event_that_falls_away_is_cancelled_under_its_own_name() -> None:
    full = build(sludge=[26, 26.5])
    before = events(made(full))
    assert kind(before, "call")["STATUS"] == "CONFIRMED"
    emptied = [*full.pump_outs, PumpOut(on=date(2026, 6, 20), sludge_left_m=0.0)]
    after = events(made(Case(full.household, full.checks, emptied, full.rule_sets, full.signs, date(2026, 6, 20))))
    assert set(before) <= set(after)
    uid = str(kind(before, "call")["UID"])
    assert after[uid]["STATUS"] == "CANCELLED"
    assert int(after[uid]["SEQUENCE"]) > int(before[uid]["SEQUENCE"])
    assert kind(after, "look")["STATUS"] == "CONFIRMED"
    assert kind(after, "window")["STATUS"] == "CONFIRMED"


def test_on_the_day_of_the_first_entry_nothing_is_cancelled() -> None:
    case = build()
    alone = Case(case.household, case.checks[-1:], (), case.rule_sets, case.signs, case.checks[-1].on)
    assert {str(one["STATUS"]) for one in events(made(alone)).values()} == {"CONFIRMED"}
    assert len(events(made(on(alone, alone.today + timedelta(days=1))))) == 3


def test_another_name_of_the_house_leaves_the_events_theirs() -> None:
    case = build()
    renamed = case.household.model_copy(update={"name": "Another Lane"})
    later = Case(renamed, case.checks, case.pump_outs, case.rule_sets, case.signs, case.today)
    assert set(events(made(case))) == set(events(made(later, earlier=[None, case.household])))
    assert not set(events(made(case))) & set(events(made(later)))


def test_hostile_names_break_no_line() -> None:
    case = build()
    tanks = [Tank(id="a;b,c\\n\r\nBEGIN:VALARM\u2028" + "ü" * 80), *case.household.tanks]
    household = case.household.model_copy(update={"tanks": tanks})
    text = made(Case(household, case.checks, case.pump_outs, case.rule_sets, case.signs, case.today))
    assert icalendar.Calendar.from_ical(text).walk("VALARM") == []
    assert "a;b,c\\n" in "".join(str(one["SUMMARY"]) for one in events(text).values())
    assert all(len(line.encode()) <= LINE_OCTETS for line in text.split("\r\n"))
