"""The lifting equation beside worked examples and figures of its publisher.

Sources by id: `niosh-94-110` (reprint), `ccohs-lifting` (primary; it uses coarse rows of tables instead of the
formulas).
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.lifting import Coupling, Lift, lift


def test_loading_a_hopper_by_formula() -> None:
    """niosh-94-110: H 23, V 15 to 64, D 49 inches, fair coupling. 16.0 and 14.2 lb by formula are from memory."""
    start = lift(23, 15, 49, coupling="fair", system="us")
    end = lift(23, 64, 49, coupling="fair", system="us")
    assert (start.recommended, end.recommended) == (pytest.approx(16.0, abs=0.05), pytest.approx(14.2, abs=0.06))


def test_loading_a_hopper_as_printed() -> None:
    """The same as printed, 16.3 and 14.5 lb, from factors rounded as its tables round them (horizontal 0.44)."""
    start = lift(23, 15, 49, coupling="fair", system="us")
    end = lift(23, 64, 49, coupling="fair", system="us")
    for found, factors, printed in ((start, (0.44, 0.89, 0.86, 0.95), 16.3), (end, (0.44, 0.75, 0.86, 1.0), 14.5)):
        ours = (found.horizontal, found.vertical, found.distance, found.coupling)
        assert ours == pytest.approx(factors, abs=0.0065)
        h, v, d, c = factors
        assert Lift(51, h, v, d, 1.0, 1.0, c).recommended == pytest.approx(printed, abs=0.05)


def test_ten_lifts_a_minute_all_day() -> None:
    """ccohs-lifting: 23 · 1.00 · 0.93 · 1.00 · 0.71 · 0.13 · 1.00 = 1.97 kg: hands at 100 cm, a quarter turn."""
    found = lift(25, 100, 25, asymmetry=90, per_minute=10, hours=8, coupling="good")
    factors = (found.horizontal, found.vertical, found.distance, found.asymmetry, found.frequency, found.coupling)
    assert factors == pytest.approx((1.00, 0.93, 1.00, 0.71, 0.13, 1.00), abs=0.0051)
    assert found.recommended == pytest.approx(1.97, abs=0.01)


def test_the_best_lift_is_the_load_constant() -> None:
    assert lift(10, 30, 10, system="us").recommended == 51
    assert lift(25, 75, 25).recommended == 23


@pytest.mark.parametrize(("hours", "factor"), [(1, 1.00), (2, 0.95), (8, 0.85)])
def test_few_lifts_a_minute(hours: int, factor: float) -> None:
    """From memory."""
    assert lift(25, 75, 25, per_minute=0.2, hours=hours).frequency == factor  # type: ignore[arg-type]


@pytest.mark.parametrize(("coupling", "low", "high"), [("good", 1.0, 1.0), ("fair", 0.95, 1.0), ("poor", 0.90, 0.90)])
def test_coupling(coupling: Coupling, low: float, high: float) -> None:
    assert lift(10, 29.9, 10, coupling=coupling, system="us").coupling == low
    assert lift(10, 30, 10, coupling=coupling, system="us").coupling == high


def test_limits_of_validity() -> None:
    assert lift(25, 30, 10, system="us").horizontal == pytest.approx(0.4)
    assert lift(25.1, 30, 10, system="us").recommended == 0
    assert lift(10, 70, 10, system="us").vertical == pytest.approx(0.7)
    assert lift(10, 70.1, 10, system="us").recommended == 0
    assert lift(10, 30, 70.1, system="us").recommended == 0
    assert lift(10, 30, 10, asymmetry=135, system="us").asymmetry == pytest.approx(0.568)
    assert lift(10, 30, 10, asymmetry=136, system="us").recommended == 0
    assert lift(63, 75, 25).horizontal == pytest.approx(25 / 63)
    assert lift(63.1, 75, 25).recommended == 0
    assert lift(25, 175.1, 25).recommended == 0
    assert lift(25, 75, 175.1).recommended == 0
    assert lift(25, 75, 25, per_minute=15.1).recommended == 0
    assert lift(25, 175.1, 25).index(1) == float("inf")
    with pytest.raises(ValueError, match="below 0"):
        lift(25, -1, 25)


@given(st.floats(0, 62), st.floats(0, 170), st.floats(0, 170), st.floats(0, 135), st.floats(0, 15))
def test_both_unit_systems_tell_the_same(h: float, v: float, d: float, a: float, f: float) -> None:
    """The metric constants are rounded, so they differ by a few parts in a hundred."""
    metric = lift(h, v, d, asymmetry=a, per_minute=f)
    us = lift(h / 2.54, v / 2.54, d / 2.54, asymmetry=a, per_minute=f, system="us")
    if metric.frequency == us.frequency:  # 75 cm and 30 inches are not quite the same height
        assert us.recommended * 0.45359237 == pytest.approx(metric.recommended, rel=0.06, abs=0.02)


@given(st.floats(0, 60), st.floats(0, 170), st.floats(0, 170), st.floats(0, 130), st.floats(0, 14))
def test_a_more_awkward_lift_never_allows_more(h: float, v: float, d: float, a: float, f: float) -> None:
    best = lift(h, v, d, asymmetry=a, per_minute=f).recommended
    assert 0 <= best <= 23
    assert lift(h + 3, v, d, asymmetry=a, per_minute=f).recommended <= best
    assert lift(h, v, d + 3, asymmetry=a, per_minute=f).recommended <= best
    assert lift(h, v, d, asymmetry=a + 5, per_minute=f).recommended <= best
    assert lift(h, v, d, asymmetry=a, per_minute=f + 1).recommended <= best
