"""The 80 % band holds about 80 % of invented households whose truth is known (more: `tests.benchmarks.calibration`)."""

from __future__ import annotations

import random
from datetime import timedelta

from selfcheck.domain.limits import Limit
from tests.benchmarks.calibration import PUMPED, coverage, draw, look_unknown, too_late

#: of one case; its own sampling error is 2.5 %, so one case is held to 80 ± 6 % and all together to 80 ± 3 %
HOUSEHOLDS = 250


def test_the_band_holds_what_it_promises() -> None:
    shares = {readings: coverage(HOUSEHOLDS, readings, seed=1000 + readings) for readings in (0, 1, 2, 3, 5)}
    assert all(0.74 <= share <= 0.86 for share in shares.values()), shares
    assert 0.77 <= sum(shares.values()) / len(shares) <= 0.83, shares


def test_it_learns_that_a_household_makes_far_more_than_was_known() -> None:
    assert coverage(150, 2, seed=2002, rate_factor=1.8) >= 0.72


def test_without_a_reading_it_cannot_know_that() -> None:
    assert coverage(60, 0, seed=77, rate_factor=1.8) < 0.70


def test_a_pump_out_that_nobody_knows_of_gives_no_false_rest() -> None:
    """One in ten is over before the 10 % date; sampling error of the share: 3 %."""
    assert too_late(100, 1, seed=5) <= 0.16


def test_a_limit_in_years_goes_by_the_earliest_pump_out_there_may_have_been_and_by_a_known_one() -> None:
    dice = random.Random(4)
    found, _ = look_unknown(draw(dice), 1, dice)
    limit = (Limit("years", value=3.0),)
    for then, since in ((found, PUMPED), (found.what_if(pumped_on=found.today), found.today)):
        due = then.due(limit).p50
        assert due is not None
        assert abs(due - since - timedelta(days=3 * 365.25)) <= timedelta(days=2)
