"""What a pump-out showed counts in the verdict, until a later check shows that part healthy."""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest

from selfcheck.domain.after_pumping import seen_empty
from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.findings import rank, worst
from selfcheck.domain.judging import judge
from selfcheck.domain.pump_visit import told_at
from selfcheck.domain.showing import show_day
from selfcheck.domain.verdict import Judgement
from selfcheck.report.wording import verdict_screen
from tests.cases import TODAY, build, check_of, verdict_words

PUMPED = date(2026, 5, 1)


def judged(checks: list[Check], *pump_outs: PumpOut) -> Judgement:
    return judge(replace(build(), checks=checks, pump_outs=list(pump_outs)))


def ids(found: Judgement) -> set[str]:
    return {one.id for one in found.findings}


def notes(on: date = PUMPED, **seen: Any) -> Check:
    """What is written when something was found wrong at a pump-out, and nothing else was asked."""
    return Check.model_validate({"id": f"notes-{on}", "on": on, "gate": "not_opened", "seen": seen})


ALL = list(
    itertools.product(
        (None, "none", "slight", "strong"), (None, "both", "one_of_two", "only_one"), (None, "manhole", "small_pipe"),
        (None, 0.0, 0.02, 0.1),
    )
)  # fmt: skip


@pytest.mark.parametrize("checks", [[], [check_of("2026-04-01")]], ids=["never checked", "checked before"])
def test_never_milder_than_what_was_seen(checks: list[Check]) -> None:
    for backflow, parts, through, left in ALL[::3]:  # three meets every value of each
        pump_out = PumpOut(on=PUMPED, backflow=backflow, parts=parts, through=through, sludge_left_m=left)
        told = seen_empty(told_at(pump_out))
        found = judged(checks, pump_out)
        assert rank(found.verdict) >= rank(worst([one.verdict for one in told]))
        assert {one.id for one in told} <= ids(found)


def test_the_verdict_says_it_in_words() -> None:
    found = judged([check_of("2026-04-01")], PumpOut(on=PUMPED, backflow="strong", sludge_left_m=0.1))
    page = verdict_screen(found, verdict_words())
    assert page.verdict == "call_soon"
    assert "drain field" in page.do
    assert any("ran back" in line and "May 1, 2026" in line for line in page.seen)


@pytest.mark.parametrize(("day", "wide", "told"), [("2026-04-15", 29, "April 2026"), ("2025-07-02", 364, "2025")])
def test_a_pump_out_of_some_day_of_a_month_or_year_is_told_as_such(day: str, wide: int, told: str) -> None:
    on = date.fromisoformat(day)
    pump_out = PumpOut(on=on, within_days=wide, backflow="slight", through="small_pipe", sludge_left_m=0.1)
    loose = notes(on, inlet_tee="loose")
    for found in (judged([check_of("2024-04-01"), loose], pump_out), judged([check_of("2024-04-01")], pump_out)):
        page = verdict_screen(found, verdict_words())
        lines = [*page.seen, *page.why, page.do, page.headline]
        assert any(told in line for line in lines)
        assert not any(show_day(on) in line for line in lines)
    assert any("of sludge was left" in line for line in page.seen)


@pytest.mark.parametrize(("cleaned", "later", "told"), [
    (False, None, True), (False, "unknown", True), (False, "clean", False), (False, "clogged", False),
    (True, None, False), (None, None, False),
])  # fmt: skip
def test_a_filter_that_was_not_cleaned_is_told_until_a_check_has_seen_it(
    cleaned: bool | None, later: str | None, told: bool
) -> None:
    checks = [check_of("2026-04-01"), check_of(str(TODAY), filter=later)]
    found = judged(checks, PumpOut(on=PUMPED, filter_cleaned=cleaned, sludge_left_m=0.0))
    assert ("pump_out_filter_not_cleaned" in ids(found)) is told


def test_a_later_check_of_a_sound_field_speaks_in_its_place() -> None:
    pump_out = PumpOut(on=PUMPED, backflow="strong")
    assert judged([check_of(str(TODAY))], pump_out).verdict == "carry_on"
    for bad in ({"level": "below_outlet"}, {"level": "unknown"}, {"yard": ["wet_after_rain"]}, {"yard": "unknown"}):
        assert "pump_out_backflow_strong" in ids(judged([check_of(str(TODAY), **bad)], pump_out))
    assert "pump_out_backflow_strong" in ids(judged([check_of(str(PUMPED))], pump_out))


def test_the_second_chamber_has_to_be_read_or_pumped() -> None:
    half = PumpOut(on=PUMPED, parts="one_of_two")
    assert judged([check_of(str(TODAY))], half).verdict == "call_soon"
    second = {"sludge": [{"m": 0.05}], "scum_total": [{"m": 0.0}]}
    healthy = check_of(str(TODAY))
    seen = {**healthy.seen.model_dump(), "second_compartment": second}
    read = Check.model_validate({**healthy.model_dump(), "seen": seen})
    assert "pump_out_one_compartment_only" not in ids(judged([read], half))
    assert "pump_out_one_compartment_only" not in ids(judged([], half, PumpOut(on=date(2026, 5, 10), parts="both")))


@pytest.mark.parametrize(
    ("field", "bad", "good", "finding"),
    [
        ("backflow", "strong", "none", "pump_out_backflow_strong"),
        ("divider", "damaged", "sound", "pump_out_divider"),
        ("divider", "missing", "sound", "pump_out_divider"),
    ],
)
def test_what_was_seen_is_not_forgotten_where_the_next_time_nobody_told(
    field: str, bad: str, good: str, finding: str
) -> None:
    first, silent = PumpOut.model_validate({"on": "2023-05-01", field: bad}), PumpOut(on=PUMPED)
    found = judged([], first, silent)
    assert finding in ids(found)
    assert found.verdict == "call_soon"
    assert finding not in ids(judged([], first, silent.model_copy(update={field: good})))


def test_notes_of_a_pump_out_leave_the_check_before_in_force() -> None:
    pump_out = PumpOut(on=PUMPED)
    assert judged([check_of("2026-04-01"), notes(outlet_tee="missing")], pump_out).verdict == "call_soon"
    backed_up = [check_of("2026-04-01", house=["sewage_backup"]), notes(wall="damp_white")]
    assert judged(backed_up, pump_out).verdict == "call_now"


def test_what_was_not_asked_at_a_pump_out_is_no_gap() -> None:
    found = judged([check_of("2026-04-01"), notes(wall="pitted")], PumpOut(on=PUMPED))
    assert "not_seen" not in ids(found)
    alone = judged([notes(wall="pitted")], PumpOut(on=PUMPED))
    assert "not_seen" not in ids(alone)
    assert "never_checked" in ids(alone)
    assert "not_seen" not in ids(judged([check_of(str(PUMPED), smell=None)], PumpOut(on=PUMPED)))
    assert "not_seen" in ids(judged([check_of(str(PUMPED), smell="unknown")], PumpOut(on=PUMPED)))
    assert "not_seen" in ids(judged([check_of("2026-04-01", smell=None)], PumpOut(on=PUMPED)))


def test_notes_told_days_later_do_not_bring_the_pumped_layers_back() -> None:
    late = notes(date(2026, 5, 4), inlet_tee="loose")
    found = judged([check_of("2026-04-01", sludge=[14, 14]), late], PumpOut(on=PUMPED))
    assert found.pumped_since
    assert {"inlet_tee_loose", "pumped_since"} <= ids(found)
    assert "not_read" not in ids(found)
    page = verdict_screen(found, verdict_words())
    assert any(line.startswith("Seen at the pump-out of May 1, 2026:") for line in page.seen)


def test_a_lid_left_open_at_a_pump_out_is_a_danger() -> None:
    left = notes(lid="unknown").model_copy(update={"lid_closed": False})
    assert judged([check_of("2026-04-01"), left], PumpOut(on=PUMPED)).verdict == "danger"


def test_a_check_after_the_notes_sees_what_was_mended() -> None:
    found = judged([notes(outlet_tee="missing"), check_of(str(TODAY))], PumpOut(on=PUMPED))
    assert found.verdict == "carry_on"


def test_the_day_to_act_by_runs_from_the_pump_out() -> None:
    found = judged([check_of("2026-04-01")], PumpOut(on=PUMPED, backflow="strong"))
    assert found.act_by == PUMPED + timedelta(days=30)
    mended = judged([check_of("2026-04-01"), notes(outlet_tee="missing")], PumpOut(on=PUMPED))
    assert mended.act_by == PUMPED + timedelta(days=14)
