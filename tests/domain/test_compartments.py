"""A tank of two compartments: what gathers in each, how long water rests, and which of them the dates go by."""

from __future__ import annotations

from typing import Any

import pytest

from selfcheck.domain.judging import Judgement, judge
from tests.cases import INCH, TODAY, build, rule_sets

SECOND = "check.seen.second_compartment"
RULES = rule_sets()["us-epa-homeowner"]


def case(share: float | None, length_m: float = 2.44, **more: Any) -> Any:
    parts = {"household.tanks.0.compartments": 1 if share is None else 2, "household.tanks.0.shape.length_m": length_m}
    first = {} if share is None else {"household.tanks.0.first_compartment_share": share}
    return {"set": {**parts, **first}, **more}


def read(inches: dict[str, float]) -> dict[str, list[dict[str, float]]]:
    return {kind: [{"m": length * INCH}] for kind, length in inches.items()}


def test_dates_are_those_of_a_tank_as_large_as_the_first_compartment() -> None:
    """All solids are taken to settle behind the inlet, so a wall at 60 % makes the tank fill like one of 60 %."""
    whole, parted, small = (
        judge(build(case(share, length, no_check=True)))
        for share, length in ((None, 2.44), (0.6, 2.44), (None, 0.6 * 2.44))
    )
    assert parted.due.p50 is not None
    assert whole.due.p50 is not None
    assert parted.due.p50 < whole.due.p50
    # only the table by capacity goes by the whole tank; the deciding rule set has none
    assert parted.due == small.due
    assert judge(build(case(0.75, no_check=True))).due.p50 > parted.due.p50  # type: ignore[operator]


def test_readings_mean_the_fewer_litres_the_smaller_the_first_compartment_is() -> None:
    rates = [judge(build(case(share))).forecast.litres_per_person_year for share in (None, 0.75, 0.5)]
    assert rates == sorted(rates, reverse=True)
    assert rates[2] < 0.7 * rates[0]


def test_water_rests_in_both_compartments_by_hand() -> None:
    """Three people let 3 · 58.6 gal a day through (source `reu-2016`); the clear zones are 2/3 and 1/3 of the floor."""
    second = {SECOND: read({"sludge": 2, "scum_total": 0})}
    found = judge(build({"set": {**case(2 / 3)["set"], **second}}))
    assert found.layers is not None
    assert found.layers.scum_below is not None
    floor = 2.44 * 1.27
    first = 48 * INCH - found.layers.sludge.value - found.layers.scum_below.value  # type: ignore[union-attr]
    clear = floor * (2 / 3 * first + 1 / 3 * (48 - 2) * INCH)
    assert found.detention_days == pytest.approx(clear / (3 * 58.6 * 0.003785411784), rel=1e-6)
    unread = judge(build(case(2 / 3)))
    assert unread.detention_days == pytest.approx(floor * first / (3 * 58.6 * 0.003785411784), rel=1e-6)


@pytest.mark.parametrize("sludge", [6.0, 16.0, 19.0])
def test_no_date_and_no_row_is_milder_than_the_second_compartment_says(sludge: float) -> None:
    """The share of solids, or the sludge under the outlet's edge, whichever compartment it lies in."""
    without = judge(build(case(2 / 3)))
    found = judge(build({"set": {**case(2 / 3)["set"], SECOND: read({"sludge": sludge, "scum_total": 1})}}))
    chance = found.forecast.chance_over(RULES.limits, TODAY)
    assert chance >= without.forecast.chance_over(RULES.limits, TODAY)
    row, before = (next(one for one in j.by_rule_set if one.rule_set is RULES) for j in (found, without))
    assert row.chance_over == pytest.approx(chance, abs=1e-9)
    assert before.chance_over is not None
    assert (row.chance_over or 0.0) >= before.chance_over
    assert found.look_again <= without.look_again
    if sludge == 19.0:
        assert found.verdict == "call_soon"
        assert row.call in ("over", "close")


CHANGES = [
    ([4, 4.5], 6.0, "sludge", 1),  # the first is nearer to its limit: 7½ in of 48 against 7
    ([4, 4.5], 9.0, "sludge", 2),
    ([4, 4.5], 19.0, "sludge", 2),
    ([14, 14], 9.0, "sludge", 1),
    ([14, 14], 19.0, None, 0),
]


@pytest.mark.parametrize(("first", "second", "what", "where"), CHANGES)
def test_the_smallest_change_lies_in_the_compartment_that_decides(
    first: list[float], second: float, what: str | None, where: int
) -> None:
    def at(first_in: list[float], second_in: float) -> Judgement:
        parts = {SECOND: read({"sludge": second_in, "scum_total": 1})}
        return judge(build({"set": {**case(2 / 3)["set"], **parts}, "seen": {"sludge": first_in}}))

    found = at(first, second)
    change = found.would_change
    assert (change is None) is (what is None)
    if change is None:
        return
    assert (change.what, change.compartment) == (what, where)
    assert change.then_m is not None
    then = change.then_m / INCH
    turned = at([then, then] if where == 1 else first, then if where == 2 else second)
    assert turned.verdict == change.verdict != found.verdict
