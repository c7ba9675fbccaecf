"""Limits without a figure, layers that no rule lets pass, and parts of the record that could not be read."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.findings import rank
from selfcheck.domain.judging import Judgement, judge
from selfcheck.domain.unjudged import Unread
from selfcheck.report.finding_text import text_of
from selfcheck.report.summary import judgement_json
from selfcheck.report.wording import verdict_screen
from tests.cases import INCH, TODAY, build, check_of, judged, rule_sets, verdict_words

SHAPES: dict[str, dict[str, Any]] = {
    "box": {"shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27}, "liquid_depth_m": 1.2},
    "small": {"shape": {"kind": "box", "length_m": 1.2, "width_m": 1.0}, "liquid_depth_m": 1.2},
    "deep": {"shape": {"kind": "box", "length_m": 2.4, "width_m": 1.2}, "liquid_depth_m": 1.8},
    "upright": {"shape": {"kind": "upright", "diameter_m": 1.8}, "liquid_depth_m": 1.2},
    "drum": {"shape": {"kind": "drum", "diameter_m": 1.5, "length_m": 2.4}, "liquid_depth_m": 1.2},
    "oval": {"shape": {"kind": "oval", "width_m": 1.8, "height_m": 1.4, "length_m": 2.4}, "liquid_depth_m": 1.1},
    "table": {
        "shape": {"kind": "table", "heights_m": [0.0, 0.3, 0.6, 0.9], "volumes_m3": [0.0, 1.0, 2.2, 3.0]},
        "liquid_depth_m": 0.9,
    },
    "unknown": {"shape": {"kind": "unknown"}, "volume_m3": 3.8, "liquid_depth_m": 1.2},
}
SMALL = {"set": {"household.rules": "phs-526", "household.tanks": [{"id": "main", **SHAPES["small"]}]}}


def of_tank(
    shape: str, rules: str, sludge_m: float, scum_m: float | None, level: str | None = "at_outlet"
) -> Judgement:
    facts = SHAPES[shape]
    depth = facts["liquid_depth_m"]
    case = build(
        {"set": {"household.rules": rules, "household.tanks": [{"id": "main", **facts}]}},
        liquid_depth=[depth / INCH],
        sludge=[sludge_m / INCH] * 2,
        scum_above=[],
        scum_total=[] if scum_m is None else [scum_m / INCH],
        level=level,
    )
    return judge(replace(case, rule_sets={name: rule_sets()[name] for name in {rules, "us-epa-homeowner"}}))


def ids(found: Judgement) -> set[str]:
    return {one.id for one in found.findings}


@pytest.mark.parametrize("rules", sorted(rule_sets()))
def test_more_sludge_or_scum_is_never_milder_in_any_tank_by_any_rule(rules: str) -> None:
    for shape in ("box", "small", "deep", "drum", "table"):
        facts = SHAPES[shape]
        depth = facts["liquid_depth_m"]
        for scum in (None, 0.05):
            steps = [depth * share for share in (0.05, 0.6, 1.0)]
            ranks = [rank(of_tank(shape, rules, sludge, scum).verdict) for sludge in steps]
            assert ranks == sorted(ranks), (shape, scum, ranks)
            assert ranks[-1] >= rank("call_soon"), (shape, scum)
        ranks = [rank(of_tank(shape, rules, 0.05, depth * share).verdict) for share in (0.05, 0.5, 1.0)]
        assert ranks == sorted(ranks), (shape, ranks)
        assert ranks[-1] >= rank("call_soon"), shape


def test_a_tank_off_its_table_cannot_be_told_and_a_full_one_is_a_call() -> None:
    low = of_tank("small", "phs-526", 0.1, 0.02)
    assert low.verdict == "cannot_tell"
    assert "limit_has_no_figure" in ids(low)
    for depth in (0.80, 1.10):
        full = of_tank("small", "phs-526", depth, 0.02)
        assert full.verdict == "call_soon"
        assert "sludge_reaches_outlet" in ids(full)
    assert of_tank("box", "phs-526", 0.1, 0.02).verdict == "carry_on"


def test_a_rule_without_a_figure_is_not_told_as_far_off() -> None:
    found = of_tank("small", "phs-526", 0.1, 0.02)
    row = next(one for one in found.by_rule_set if one.rule_set.id == "phs-526")
    assert row.no_figure
    assert row.call == "cannot_tell"
    page = verdict_screen(found, verdict_words())
    told = verdict_words().say("when", "due_no_figure"), verdict_words().say("when", "due_none")
    assert set(page.when_next) & set(told)
    own = next(one for one in page.rules if one.own)
    assert "not due" not in own.text
    assert any("no figure" in line for line in own.limits)


def test_layers_that_touch_are_a_call_by_a_rule_that_does_not_ask_for_room() -> None:
    # by volume, two thirds of a tank may be filled before this rule speaks
    found = judged({"set": {"household.rules": "auckland"}}, sludge=[10, 10], scum_above=[], scum_below=[18])
    assert found.verdict == "call_soon"
    through = judged(sludge=[47, 47], scum_above=[], scum_below=[5])
    assert through.verdict == "call_soon"
    assert "clear_zone_gone" in ids(through)


def test_one_impossible_reading_does_not_hide_two_that_are_over() -> None:
    assert judged(sludge=[15, 15.5, 60]).verdict == "call_soon"
    assert judged(sludge=[60, 60]).verdict == "cannot_tell"


@pytest.mark.parametrize(
    "unread",
    [
        Unread("household", "household.json"),
        Unread("pump_out", "pump_outs/2025-01-01.json", date(2025, 1, 1)),
        Unread("check", "checks/2026-05-18-2.json", TODAY),
        Unread("check", "checks/copy.json"),
    ],
)
def test_a_part_that_could_not_be_read_keeps_the_verdict_from_being_calm(unread: Unread) -> None:
    found = judge(replace(build(), unread=(unread,)))
    assert found.verdict == "cannot_tell"
    assert found.findings[0].id == "record_unread"
    page = verdict_screen(found, verdict_words())
    assert unread.name in " ".join(page.seen)
    assert unread.name in " ".join(page.questionable)
    assert "could not be read" in page.kind
    worse = judge(replace(build(house=["sewage_backup"]), unread=(unread,)))
    assert worse.verdict == "call_now"
    assert "record_unread" in ids(worse)


def test_an_older_check_or_one_of_a_later_day_has_no_such_say() -> None:
    older = Unread("check", "checks/2024-01-01.json", date(2024, 1, 1))
    later = Unread("pump_out", "pump_outs/2027-01-01.json", date(2027, 1, 1))
    assert judge(replace(build(), unread=(older, later))).verdict == "carry_on"


def test_of_two_checks_that_share_an_id_the_worse_one_holds() -> None:
    case = build(house=["sewage_backup"])
    later = case.checks[0].recorded_at
    twin = check_of("2026-05-18", "2026-05-18-b", sludge=[4, 4]).model_copy(update={"recorded_at": later})
    both = replace(case, checks=[*case.checks, twin])
    assert judge(both).verdict == "carry_on"  # two looks on one day: the later one holds
    assert judge(replace(both, shared=("2026-05-18", "2026-05-18-b"))).verdict == "call_now"


@pytest.mark.parametrize("today", [date.min, date(1, 6, 1), date.max, date(9999, 1, 1)])
def test_the_ends_of_the_calendar_are_no_fault(today: date) -> None:
    for case in (build(), build({"no_check": True, "no_pump_out": True, "set": {"household.occupancy": []}})):
        found = judge(replace(case, today=today))
        assert judgement_json(found, verdict_words())["verdict"] != "carry_on"


def test_a_day_that_cannot_be_is_questioned() -> None:
    case = build()
    for day in (date.min, date(202, 5, 18)):
        found = judge(replace(case, pump_outs=[*case.pump_outs, PumpOut(on=day)]))
        assert found.verdict == "cannot_tell"
        assert "date_out_of_range" in found.questionable
        alone = judge(replace(case, checks=[check_of("2026-05-18").model_copy(update={"on": day})]))
        assert "date_out_of_range" in alone.questionable


def test_people_of_a_day_that_cannot_be_have_no_say_and_are_questioned() -> None:
    case = build({"no_pump_out": True})
    now = case.household.occupancy[0]
    crowd = now.model_copy(update={"from_": date(202, 5, 18), "people": 0.1})
    found = judge(replace(case, household=case.household.model_copy(update={"occupancy": [crowd, now]})))
    assert found.verdict != "carry_on"
    assert "date_out_of_range" in found.questionable
    assert found.due == judge(case).due
    ahead = now.model_copy(update={"from_": date(2126, 5, 18)})
    found = judge(replace(case, household=case.household.model_copy(update={"occupancy": [ahead]})))
    assert "people_in_future" in found.questionable
    assert any("May 18, 2126" in line for line in verdict_screen(found, verdict_words()).questionable)
    planned = judge(replace(case, household=case.household.model_copy(update={"occupancy": [now, ahead]})))
    assert "people_in_future" not in planned.questionable


def test_what_lies_past_the_edge_is_told_on_its_own_side() -> None:
    words, titles = verdict_words(), {"us-epa-homeowner": "This rule"}
    found = judged(sludge=[33, 33])
    said = next(text_of(one, words, "us", titles) for one in found.findings if one.id == "sludge_to_outlet_over")
    assert "ends 2 in (5 cm) above the outlet's lower edge" in said
    found = judged(scum_above=[], scum_below=[19], sludge=[1, 1])
    said = next(text_of(one, words, "us", titles) for one in found.findings if one.id == "scum_to_outlet_over")
    assert "below the outlet's lower edge" in said
    for shown in (said, verdict_screen(found, words).why[0]):
        assert "−" not in shown


def test_what_is_left_open_is_another_thing_than_what_is_mended() -> None:
    found = judged(house=["sewage_backup"], roots="unknown", wall="unknown")
    assert found.would_change is not None
    assert found.would_change.what == "mended"
    assert found.would_change.left not in ("", found.would_change.name)
    (told, *_) = verdict_screen(found, verdict_words()).would_change
    back_up = str(verdict_words().of("sewage_backup")["seen"])
    assert told.startswith(back_up)
    assert told.count(back_up) == 1


def test_a_reading_far_off_takes_the_sureness_and_is_named() -> None:
    for readings, verdict in (([0.375, 8.5, 9], "call_soon"), ([0.375, 20, 20.5], "call_soon")):
        found = judged(sludge=readings)
        assert found.verdict == verdict
        assert found.sure != "sure"
        page = verdict_screen(found, verdict_words())
        assert any("far off" in line for line in page.seen)
    assert judged(sludge=[4, 4.5, 5]).sure == "sure"


def test_a_date_on_the_day_of_the_pump_out_is_not_told() -> None:
    for seen in ({"sludge": [30, 30]}, {"sludge": [0.375, 20, 20.5]}):
        found = judged(**seen)
        page = verdict_screen(found, verdict_words())
        pumped = found.forecast.people.start
        assert not any("May 20, 2024" in line for line in (*page.when_next, *page.rule_rows)), pumped
