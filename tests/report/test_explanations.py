"""Every verdict says what it rests on, which line was crossed and how far, what had no say, and what would turn it."""

from __future__ import annotations

import json
from datetime import timedelta
from typing import Any

import pytest

from selfcheck.domain.check import Check, Reading
from selfcheck.domain.explain import not_used
from selfcheck.domain.judging import Case, judge
from selfcheck.domain.limits import chance_over
from selfcheck.domain.verdict import Judgement
from selfcheck.practice.dice import Dice
from selfcheck.practice.readings import look
from selfcheck.practice.tank import draw
from selfcheck.report.summary import judgement_json
from selfcheck.report.wording import verdict_screen
from tests.cases import INCH, TODAY, all_signs, judged, rule_sets, verdict_words

SEEDS = range(20)


def drawn(seed: int) -> Case:
    """A practice household with one or two checks, and its own rule set alone."""
    tank, dice = draw(seed, TODAY), Dice(9000 + seed)
    days = [TODAY - timedelta(days=365), TODAY] if seed % 2 else [TODAY]
    checks = [look(tank.truth(day), dice).check for day in days if day > tank.pump_outs[0].on]
    own = rule_sets()[tank.household.rules]
    return Case(tank.household, checks, tank.pump_outs, {own.id: own}, all_signs(), TODAY)


def without(case: Case, path: str) -> Judgement:
    """The judgement with one answer of the last check taken away."""
    *earlier, last = case.checks
    *_, name = path.split(".")
    if ".readings." in path:
        readings = last.seen.readings.model_copy(update={name: []})
        seen = last.seen.model_copy(update={"readings": readings})
    else:
        seen = last.seen.model_copy(update={name: None})
    return judge(laid(case, [*earlier, last.model_copy(update={"seen": seen})]))


def laid(case: Case, checks: list[Check]) -> Case:
    """The same household with other checks."""
    return Case(case.household, checks, case.pump_outs, case.rule_sets, case.signs, case.today)


@pytest.mark.parametrize("seed", SEEDS)
def test_each_cited_answer_matters(seed: int) -> None:
    """Taken away, it changes the verdict, the sureness, or the finding; or an earlier check must speak in its place."""
    case = drawn(seed)
    found = judge(case)
    for one in found.deciding:
        for path in one.uses:
            if path.startswith("seen."):
                then = without(case, path)
                kept = any(other == one for other in then.findings)
                stood_in = any(other.facts.get("field") == path[5:] for other in then.findings)
                changed = then.verdict != found.verdict or then.sure != found.sure or not kept
                assert changed or stood_in, (one.id, path)


@pytest.mark.parametrize("seed", SEEDS)
def test_what_had_no_say_can_be_taken_away(seed: int) -> None:
    case = drawn(seed)
    found = judge(case)
    for path in not_used(found):
        assert without(case, path).verdict == found.verdict, path


@pytest.mark.parametrize("seed", SEEDS)
def test_the_smallest_change_turns_the_verdict(seed: int) -> None:
    case = drawn(seed)
    found = judge(laid(case, list(case.checks[-1:])))
    change = found.would_change
    if change is None or change.what not in ("sludge", "scum") or change.then_m is None:
        return
    last = case.checks[-1]
    kinds = ("scum_total", "scum_above", "scum_below") if change.what == "scum" else ("sludge",)
    update: dict[str, list[Reading]] = {kind: [] for kind in kinds}
    times = 1 if change.what == "scum" else len(last.seen.readings.sludge)
    update["scum_total" if change.what == "scum" else "sludge"] = [Reading(m=change.then_m)] * times
    seen = last.seen.model_copy(update={"readings": last.seen.readings.model_copy(update=update)})
    then = judge(laid(case, [last.model_copy(update={"seen": seen})]))
    assert then.verdict == change.verdict, (found.verdict, change)


FILLING = {"set": {"pump_out.on": "2026-05-08", "household.tanks.0.outlet_bottom_below_surface_m": 17 * INCH}}


@pytest.mark.parametrize("depth", [14, 24, 36])
@pytest.mark.parametrize("sludge", [1, 8, 12])
@pytest.mark.parametrize("rules", ["us-epa-homeowner", "mason-wa", "auckland"])
def test_in_a_tank_that_is_still_filling_the_smallest_change_turns_it_and_less_does_not(
    depth: float, sludge: float, rules: str
) -> None:
    case = {"set": {**FILLING["set"], "household.rules": rules}}
    read: dict[str, Any] = {"level": "below_outlet", "liquid_depth": [depth], "scum_above": [0]}
    found = judged(case, **read, sludge=[sludge, sludge])
    assert found.scene is not None
    assert found.scene.filling
    change = found.would_change
    if change is None or change.what != "sludge" or change.then_m is None:
        return
    then = change.then_m / INCH
    assert then <= depth + 1e-6  # no stick would read more
    assert judged(case, **read, sludge=[then, then]).verdict == change.verdict != found.verdict
    less = then - 0.1 if then > sludge else then + 0.1
    assert judged(case, **read, sludge=[less, less]).verdict == found.verdict


def test_with_no_crust_seen_the_sludge_alone_turns_it() -> None:
    case, blank = {"set": {"pump_out.on": "2026-02-10"}}, {"surface": "no_crust", "scum_above": [], "sludge": [1, 1]}
    found = judged(case, **blank)
    change = found.would_change
    assert change is not None
    assert change.then_m is not None
    then = change.then_m / INCH
    verdicts = [judged(case, **{**blank, "sludge": [one, one]}).verdict for one in (then - 1, then)]
    assert verdicts == [found.verdict, change.verdict]


@pytest.mark.parametrize("seed", list(SEEDS)[::6])
def test_the_json_explains_itself(seed: int) -> None:
    case = drawn(seed)
    found = judge(case)
    told: dict[str, Any] = json.loads(json.dumps(judgement_json(found, verdict_words())))
    for one in told["findings"]:
        line = one["line"]
        assert (line is None) == (not one["id"].endswith(("_over", "_close", "_under")) or "scum_parts" in one["id"])
        if line is not None and line["error"]:
            assert one["uses"]
            assert one["chance_over"] == pytest.approx(chance_over(line["margin"], line["error"]), abs=0.02)
            assert line["error_from"]
    for row in told["by_rule_set"]:
        assert {"p10", "p50", "p90"} == set(row["due"])
        for limit in row["limits"]:
            assert {"kind", "limit", "now", "margin", "error", "chance_over", "call"} == set(limit)
            if limit["margin"] is not None:
                side = -1 if "outlet" in limit["kind"] else 1
                assert limit["margin"] == pytest.approx(side * (limit["limit"] - limit["now"]), abs=2e-4)
    assert set(told["not_used"]).isdisjoint(path for one in found.deciding for path in one.uses)
    assert told["better_readings"] == list(found.better)


def test_every_rule_set_is_in_the_table_with_all_its_limits() -> None:
    told = judgement_json(judged(), verdict_words())
    assert {row["id"] for row in told["by_rule_set"]} == set(rule_sets())
    for row in told["by_rule_set"]:
        assert [one["kind"] for one in row["limits"]] == [one.kind for one in rule_sets()[row["id"]].limits]
        assert row["due"]["p50"]


def test_the_page_says_how_far_off_it_may_be_and_what_had_no_say() -> None:
    page = verdict_screen(judged(sludge=[13, 13]), verdict_words())
    assert any(line.startswith("Give or take") and "stain on the cloth" in line for line in page.why)
    assert len(page.not_used) == 1
    assert "the lid" in page.not_used[0]
    assert verdict_screen(judged(), verdict_words()).not_used == ()
    blind = {"set": {"household.tanks.0.outlet_bottom_below_surface_m": None, "household.rules": "mason-wa"}}
    offered = verdict_screen(judged(blind, sludge=[17, 17], scum_above=[0]), verdict_words())
    assert any("how far its lower edge is below the water" in line for line in offered.would_change)
