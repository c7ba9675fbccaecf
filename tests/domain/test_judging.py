"""From a record to one verdict: corrections, time, several tanks, what the record may say in place of an answer."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from selfcheck.domain.check import PumpOut
from selfcheck.domain.judging import judge
from tests.cases import TODAY, build, check_of, judged


def ids(judgement: object) -> set[str]:
    return {one.id for one in judgement.findings}  # type: ignore[attr-defined]


def test_a_healthy_tank_carries_on_with_a_date() -> None:
    found = judged()
    assert found.verdict == "carry_on"
    assert found.sure == "sure"
    assert found.act_by is None
    assert TODAY < found.look_again <= TODAY + timedelta(days=365)
    assert not found.call_professional


def test_act_by_follows_the_urgency() -> None:
    assert judged(lid="cracked").act_by == TODAY
    assert judged(outlet_tee="missing").act_by == TODAY + timedelta(days=14)
    assert judged(sludge=[14, 14]).act_by == TODAY + timedelta(days=30)
    # the nearest of several
    assert judged(sludge=[14, 14], filter="clogged").act_by == TODAY + timedelta(days=7)


def test_sludge_cannot_shrink_without_a_pump_out() -> None:
    case = build(sludge=[4, 4])
    found = judge(replace(case, checks=[check_of("2025-05-17", sludge=[9, 9]), *case.checks]))
    assert found.verdict == "cannot_tell"
    assert "sludge_shrank" in found.questionable
    pumped = [*case.pump_outs, PumpOut(on=date(2025, 6, 1))]
    found = judge(replace(case, checks=[check_of("2025-05-17", sludge=[9, 9]), *case.checks], pump_outs=pumped))
    assert "sludge_shrank" not in found.questionable


def test_a_slow_part_seen_last_year_speaks_for_this_one() -> None:
    case = build(outlet_tee="unknown")
    assert judge(case).verdict == "cannot_tell"
    found = judge(replace(case, checks=[check_of("2025-05-17", sludge=[3, 3]), *case.checks]))
    assert found.verdict == "carry_on"
    assert found.rests_on_record
    assert found.sure != "sure"
    assert "on_record" in found.because


def test_an_old_look_does_not_speak() -> None:
    case = build(outlet_tee="unknown")
    found = judge(replace(case, checks=[check_of("2019-05-17", sludge=[3, 3]), *case.checks]))
    assert found.verdict == "cannot_tell"


def test_a_fault_stays_until_it_is_seen_mended() -> None:
    case = build(outlet_tee="unknown")
    before = check_of("2025-05-17", outlet_tee="missing", sludge=[3, 3])
    assert judge(replace(case, checks=[before, *case.checks])).verdict == "call_soon"
    mended = build()
    assert judge(replace(mended, checks=[before, *mended.checks])).verdict == "carry_on"


def test_what_changes_fast_is_never_taken_from_the_record() -> None:
    case = build(house="unknown")
    assert judge(replace(case, checks=[check_of("2026-05-01", sludge=[4, 4]), *case.checks])).verdict == "cannot_tell"


def test_a_pump_out_later_that_day_clears_the_layers() -> None:
    case = build(sludge=[14, 14])
    assert judge(case).verdict == "call_soon"
    found = judge(replace(case, pump_outs=[*case.pump_outs, PumpOut(on=TODAY)]))
    assert found.verdict == "carry_on"
    assert found.pumped_since
    assert found.layers is None


def test_a_back_up_stays_after_a_pump_out_and_slow_drains_are_asked_about() -> None:
    emptied = [PumpOut(on=date(2026, 5, 20))]
    backed = replace(build(house=["sewage_backup"]), pump_outs=emptied, today=date(2026, 5, 25))
    assert judge(backed).verdict == "call_now"
    slow = judge(replace(build(house=["slow_all_drains"]), pump_outs=emptied, today=date(2026, 5, 25)))
    assert slow.verdict == "cannot_tell"
    assert "seen_before_pump_out" in ids(slow)


def test_the_worst_of_two_tanks_counts() -> None:
    shapes = {"shape": {"kind": "box", "length_m": 2.0, "width_m": 1.0}, "liquid_depth_m": 1.2192}
    case = build({"set": {"household.tanks": [{"id": "main", **shapes}, {"id": "shed", **shapes}]}})
    shed = check_of("2026-05-17", lid="rocking").model_copy(update={"tank": "shed"})
    found = judge(replace(case, checks=[*case.checks, shed]))
    assert (found.verdict, found.tank.id) == ("call_now", "shed")
    assert [one.tank.id for one in found.others] == ["main"]


def test_a_check_of_a_tank_nobody_named_is_questioned() -> None:
    case = build()
    stray = check_of("2026-05-17").model_copy(update={"tank": "attic"})
    found = judge(replace(case, checks=[*case.checks, stray]))
    assert found.verdict == "cannot_tell"
    assert "tank_not_on_record" in found.questionable


def test_entries_after_today_are_not_there_yet() -> None:
    case = build()
    later = check_of("2026-11-01", sludge=[14, 14])
    found = judge(replace(case, checks=[*case.checks, later]))
    assert found.verdict == "carry_on"
    assert found.check is not None
    assert found.check.on == TODAY


def test_the_same_record_gives_the_same_judgement() -> None:
    case = build(sludge=[7, 7.5])
    first, again = judge(case), judge(case)
    assert (first.findings, first.due, first.look_again) == (again.findings, again.due, again.look_again)


def test_rule_sets_disagree_and_all_are_shown() -> None:
    found = judged(sludge=[9, 9], scum_above=[1.5])
    rows = {row.rule_set.id: row for row in found.by_rule_set}
    assert set(rows) == {"us-epa-homeowner", *rows}
    assert rows["us-epa-homeowner"].over
    assert not rows["auckland"].over
    assert all(row.by == "readings" for row in found.by_rule_set)


def test_an_unknown_rule_set_gives_way_and_it_is_said() -> None:
    found = judged({"set": {"household.rules": "nowhere"}})
    assert found.rules.id == "us-epa-homeowner"
    assert "rules_not_known" in found.questionable


def test_the_second_compartment_counts_when_it_is_worse() -> None:
    case = build()
    check = case.checks[0]
    readings = check.seen.readings.model_copy(
        update={"sludge": check_of("2026-05-18", sludge=[15, 15]).seen.readings.sludge}
    )
    seen = check.seen.model_copy(update={"second_compartment": readings})
    found = judge(replace(case, checks=[check.model_copy(update={"seen": seen})]))
    assert found.verdict == "call_soon"
    assert any("second_compartment" in path for one in found.deciding for path in one.uses)


def test_no_check_of_a_house_without_people() -> None:
    found = judged({"set": {"household.occupancy": []}, "no_check": True, "no_pump_out": True})
    assert found.verdict in ("cannot_tell", "call_soon")
    empty = judged({"set": {"household.occupancy": [{"from": "2016-06-01", "people": 0}]}})
    assert empty.verdict == "carry_on"


def test_smallest_change() -> None:
    found = judged()
    assert found.would_change is not None
    assert found.would_change.verdict == "call_soon"
    # 8¾ in of sludge with 3 in of scum is 11¾ of 12 in; too close counts, so the turn comes about an inch before that
    assert found.would_change.then_m == pytest.approx(7.4 * 0.0254, abs=0.006)
    turned = judged(sludge=[found.would_change.then_m / 0.0254 + 0.05] * 2)
    assert turned.verdict == "call_soon"
    still = judged(sludge=[found.would_change.then_m / 0.0254 - 0.1] * 2)
    assert still.verdict == "carry_on"


def test_sureness_falls_with_the_evidence() -> None:
    assert judged().sure == "sure"
    assert judged(sludge=[4.5]).sure == "fairly_sure"
    assert judged({"set": {"household.tanks.0.outlet_bottom_below_surface_m": "null"}}).sure == "fairly_sure"
    assert judged(sludge=[8, 8]).sure == "not_very_sure"
    assert judged(sludge=[20, 20]).sure == "sure"


def test_detention_needs_people_and_layers() -> None:
    found = judged()
    assert found.detention_days == pytest.approx(4.9, abs=0.2)  # 3.27 m³ of clear water, three people at 222 L a day
    assert judged(sludge=[]).detention_days is None
