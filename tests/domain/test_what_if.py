"""What a change does to the dates, against the forecast's own answer, and without touching the record."""

from __future__ import annotations

from datetime import date

import pytest

from selfcheck.domain.judging import judge
from selfcheck.domain.what_if import Change, compare, each_limit, with_people
from tests.report.test_ahead_pages import TODAY, case


def middle(change: Change) -> date:
    found = compare(case(), change).then.due.p50
    assert found is not None
    return found


def test_more_people_bring_the_date_closer_and_fewer_push_it_out() -> None:
    few, same, many = (middle(Change(people=people)) for people in (1, 3, 8))
    assert many < same < few


def test_months_away_push_it_out_and_a_grinder_brings_it_closer() -> None:
    assert middle(Change(months_per_year=4)) > middle(Change(months_per_year=12))
    assert middle(Change(disposal="daily")) < middle(Change(disposal="none"))


def test_no_change_gives_the_same_dates() -> None:
    found = compare(case(), Change())
    assert found.now == found.then
    assert found.months_later == 0.0


def test_another_rule_set_gives_the_date_of_its_own_row() -> None:
    asked = case()
    row = next(one for one in judge(asked).by_rule_set if one.rule_set.id == "auckland")
    found = compare(asked, Change(rules="auckland"))
    assert found.then.due == row.due
    assert found.then.rules.id == "auckland"
    with pytest.raises(KeyError):
        compare(asked, Change(rules="nowhere"))


def test_a_bigger_tank_and_what_is_left_in_it_are_counted_from_a_pump_out_today() -> None:
    bigger, smaller = (compare(case(), Change(tank_m3=size)) for size in (7.5, 2.0))
    assert bigger.months_later is not None
    assert smaller.months_later is not None
    assert bigger.months_later > 0 > smaller.months_later
    left = compare(case(), Change(residue_m=0.10))
    assert left.now.due.p50 is not None
    assert left.now.due.p50 > TODAY
    assert left.months_later is not None
    assert left.months_later < 0
    nothing_left = compare(case(), Change(residue_m=0.0))
    assert nothing_left.now.due == nothing_left.then.due


def test_the_years_before_stay_as_they_were() -> None:
    asked = case()
    changed = with_people(asked.household, judge(asked).forecast, Change(people=7))
    assert [one.people for one in changed.occupancy] == [3, 7]
    assert changed.occupancy[-1].from_ == TODAY
    assert [one.people for one in asked.household.occupancy] == [3]
    assert with_people(asked.household, judge(asked).forecast, Change(rules="auckland")) is asked.household


def test_people_who_nobody_told_of_can_be_tried() -> None:
    asked = case(occupancy=[])
    found = compare(asked, Change(people=9))
    assert found.months_later is None or found.months_later < 0


def test_a_rule_set_taken_apart_has_a_row_for_each_limit() -> None:
    asked = case("mn-7080-2450")
    judged = judge(asked)
    rows = each_limit(asked, judged)
    assert [row.rule_set.limits for row in rows] == [(limit,) for limit in judged.rules.limits]
    assert len(rows) == 3
