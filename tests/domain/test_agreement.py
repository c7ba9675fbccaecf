"""Which of several readings counts."""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.agreement import one_of, sludge_that_counts
from selfcheck.domain.check import Reading

INCH = 0.0254


def readings(*inches: float) -> list[Reading]:
    return [Reading(m=round(value * INCH, 5)) for value in inches]


@pytest.mark.parametrize(
    ("read", "counts", "agreement"),
    [
        ((8,), 8, "one"),
        ((8, 8.5), 8.5, "agree"),
        ((8, 9), 9, "agree"),
        ((8, 9.25), 9.25, "third_wanted"),
        ((3, 10), 10, "third_wanted"),
        ((9, 15, 15.5), 15, "median"),  # one wild reading beside two that agree
        ((4, 4.5, 15), 4.5, "median"),
        ((8, 9.5, 11), 9.5, "median"),  # none within an inch, but three inches in all
        ((6, 8, 10), 10, "clash"),
        ((3, 7, 12), 12, "clash"),
        ((8, 8.5, 9, 20), 9, "median"),
        ((3, 6, 9, 12), 12, "clash"),
    ],
)
def test_rule_in_any_order(read: tuple[float, ...], counts: float, agreement: str) -> None:
    for order in permutations(read):
        counted, found = sludge_that_counts(readings(*order))
        assert found == agreement
        assert counted is not None
        assert counted.m == pytest.approx(counts * INCH, abs=1e-5)


def test_nothing_read() -> None:
    assert sludge_that_counts([]) == (None, "none")
    assert one_of([], max, 0.01) is None


@given(st.lists(st.floats(0, 2), min_size=1, max_size=6))
def test_what_counts_was_read_and_lies_in_the_upper_half(heights: list[float]) -> None:
    counted, _ = sludge_that_counts([Reading(m=height) for height in heights])
    assert counted is not None
    assert counted.m in heights
    assert sum(height <= counted.m for height in heights) >= len(heights) / 2


def test_other_lengths_take_the_careful_one_or_the_median() -> None:
    assert one_of(readings(47, 48), min, 0.005) == (pytest.approx(47 * INCH, abs=1e-5), 0.005)
    assert one_of(readings(2, 3), max, 0.005) == (pytest.approx(3 * INCH, abs=1e-5), 0.005)
    assert one_of(readings(2, 3, 9), max, 0.005) == (
        pytest.approx(3 * INCH, abs=1e-5),
        pytest.approx(3.5 * INCH, abs=1e-5),
    )
    rough = one_of([Reading(m=1.0, error_m=0.04)], min, 0.005)
    assert rough == (1.0, 0.04)
