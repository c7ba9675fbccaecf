"""First-order propagation: shared causes add before they are squared."""

from __future__ import annotations

from math import hypot

import pytest

from selfcheck.domain.uncertain import Measure, Uncertain, combined


def test_independent_errors_add_in_quadrature() -> None:
    total = Uncertain.read("one", 5.0, 0.3) + Uncertain.read("two", 2.0, 0.4)
    assert total.measure()[:2] == (7.0, pytest.approx(0.5))


def test_a_shared_cause_cancels_in_a_difference_and_doubles_in_a_sum() -> None:
    depth = Uncertain.read("floor", 5.0, 0.3)
    assert (depth - depth).error == 0.0
    assert (depth + depth).error == pytest.approx(0.6)
    assert (depth * 3).measure()[:2] == (15.0, pytest.approx(0.9))


def test_slopes_scale_each_cause() -> None:
    one, two = Uncertain.read("one", 4.0, 0.1), Uncertain.read("two", 8.0, 0.2)
    ratio = combined(0.5, (one, 1 / 8), (two, -0.5 / 8))
    assert ratio.error == pytest.approx(hypot(0.1 / 8, 0.2 / 16))
    assert one.also("rule", 0.3).error == pytest.approx(hypot(0.1, 0.3))


def test_the_causes_of_an_error_come_with_their_shares() -> None:
    total = Uncertain.read("one", 5.0, 0.3) + Uncertain.read("two", 2.0, 0.4)
    causes = total.measure().causes()
    assert list(causes) == ["two", "one"]
    assert causes == pytest.approx({"two": 0.64, "one": 0.36})
    assert Measure(1.0, 0.0).causes() == {}
