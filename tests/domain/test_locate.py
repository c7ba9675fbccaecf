from __future__ import annotations

import math
import random
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from selfcheck.domain.locate import (
    FARTHEST,
    LIKELY,
    SETBACK,
    Point,
    fall,
    fix,
    pipe_depth,
    search,
    top_depth,
)

INCH, FOOT = 0.0254, 0.3048


@pytest.mark.parametrize(
    ("pipe", "inches_a_foot"), [(2, 0.25), (2.5, 0.25), (3, 0.125), (4, 0.125), (6, 0.125), (8, 0.0625), (12, 0.0625)]
)
def test_least_fall_by_code(pipe: float, inches_a_foot: float) -> None:
    """ipc-704-1."""
    assert fall(pipe * INCH) * 12 == pytest.approx(inches_a_foot)


def test_depth_along_the_pipe_by_hand() -> None:
    """Out at 18 in, 20 ft away, a quarter inch a foot: 18 + 5 = 23 in; the top 8 in of air and 4 in of concrete
    higher: 11 in.
    """
    inlet = pipe_depth(18 * INCH, 20 * FOOT, fall())
    assert inlet == pytest.approx(23 * INCH)
    top = top_depth(inlet)
    assert top.likely == pytest.approx(11 * INCH)
    assert top.least < top.likely < top.most < inlet
    assert top_depth(5 * INCH).least == 0.0
    for bad in (lambda: fall(0), lambda: pipe_depth(-1, 0), lambda: top_depth(-0.1)):
        with pytest.raises(ValueError, match="0"):
            bad()


@given(st.floats(0, 3), st.floats(0, 30), st.floats(0.01, 10))
def test_the_pipe_only_goes_down(start: float, x: float, more: float) -> None:
    assert pipe_depth(start, x + more) > pipe_depth(start, x)
    a, b = top_depth(pipe_depth(start, x)), top_depth(pipe_depth(start, x + more))
    assert a.likely <= b.likely
    assert a.least <= a.likely <= a.most


def test_the_likeliest_strip_comes_first_and_none_is_left_out() -> None:
    plan = search(1.5)
    assert (plan.strips[0].near, plan.strips[0].far) == LIKELY
    edges = sorted((one.near, one.far) for one in plan.strips)
    assert edges[0][0] == SETBACK
    assert edges[-1][1] == FARTHEST
    assert all(a[1] == b[0] for a, b in pairwise(edges))
    assert search(1.5, 3.5).strips[-1].far <= 3.5
    with pytest.raises(ValueError, match="setback"):
        search(1.5, 1.0)
    with pytest.raises(ValueError, match="width"):
        search(0)


def corners(x: float, y: float, width: float, length: float, turn: float) -> list[tuple[float, float]]:
    c, s = math.cos(turn), math.sin(turn)
    return [
        (x + c * a - s * b, y + s * a + c * b)
        for a, b in (
            (-length / 2, -width / 2),
            (length / 2, -width / 2),
            (length / 2, width / 2),
            (-length / 2, width / 2),
        )
    ]


@given(st.floats(0.9, 2.5), st.floats(1, 3), st.floats(2, 12), st.floats(-3, 3), st.floats(0, math.pi))
def test_no_tank_lies_between_two_lines(width: float, longer: float, x: float, y: float, turn: float) -> None:
    step = search(width).line_step
    reach = [corner[0] for corner in corners(x, y, width, width * longer, turn)]
    assert math.floor(max(reach) / step + 1e-9) >= math.ceil(min(reach) / step - 1e-9)


def test_no_tank_lies_between_the_probes() -> None:
    dice = random.Random(4)
    for _ in range(2000):
        width, turn = dice.uniform(0.9, 2.5), dice.uniform(0, math.pi)
        length, x, y = width * dice.uniform(1, 3), dice.uniform(0, 10), dice.uniform(0, 10)
        step, c, s = search(width).point_step, math.cos(turn), math.sin(turn)
        reach = int(length / step) + 2
        hit = False
        for i in range(int(x / step) - reach, int(x / step) + reach + 1):
            for j in range(int(y / step) - reach, int(y / step) + reach + 1):
                dx, dy = i * step - x, j * step - y
                hit = hit or (abs(c * dx + s * dy) <= length / 2 and abs(c * dy - s * dx) <= width / 2)
        assert hit


def test_a_right_triangle_by_hand() -> None:
    """3, 4 and 5: the place lies straight out from corner A."""
    found = fix(3, 4, 5)
    assert found is not None
    assert (found.left.x, found.left.y) == pytest.approx((0.0, 4.0))
    assert found.on("right") == Point(found.left.x, -found.left.y)


places = st.floats(-30, 30)


@given(places, st.floats(0.5, 30), st.floats(1, 30), places, st.floats(1, 30), st.booleans())
def test_a_place_measured_is_a_place_found(
    x: float, y: float, apart: float, other: float, off_line: float, on_left: bool
) -> None:
    true = Point(x, y if on_left else -y)
    a, b, third = Point(0, 0), Point(apart, 0), Point(other, off_line)
    found = fix(apart, true.to(a), true.to(b))
    assert found is not None
    assert found.on("left" if on_left else "right").to(true) < 1e-6
    chosen, clearer = found.nearest(third, true.to(third))
    assert chosen.to(true) < 1e-6
    assert clearer > 0


def test_a_third_corner_on_the_line_cannot_tell() -> None:
    found = fix(10, 8, 7)
    assert found is not None
    _, clearer = found.nearest(Point(20, 0), found.left.to(Point(20, 0)))
    assert clearer == pytest.approx(0.0)


def test_tapes_that_do_not_meet() -> None:
    assert fix(10, 3, 4) is None
    assert fix(10, 25, 4) is None
    just = fix(10, 5.95, 4.0)
    assert just is not None
    assert just.left.y == just.right.y == 0.0
    for bad in ((0, 1, 1), (5, -1, 5)):
        with pytest.raises(ValueError, match="apart"):
            fix(*bad)


@given(st.floats(2, 15), st.floats(-5, 20), st.floats(1, 20))
def test_the_error_of_a_place_agrees_with_many_noisy_tapes(apart: float, x: float, y: float) -> None:
    a, b = math.hypot(x, y), math.hypot(x - apart, y)
    found = fix(apart, a, b, tape_error_m=0.01)
    assert found is not None
    assume(found.error_m < 0.1)  # tapes that nearly lie on each other are beyond first order
    dice = random.Random(1)
    spots = [fix(apart, a + dice.gauss(0, 0.01), b + dice.gauss(0, 0.01)) for _ in range(300)]
    xs, ys = [p.left.x for p in spots if p], [p.left.y for p in spots if p]
    mx, my = sum(xs) / len(xs), sum(ys) / len(ys)
    sxx, syy = sum((v - mx) ** 2 for v in xs) / len(xs), sum((v - my) ** 2 for v in ys) / len(ys)
    sxy = sum((u - mx) * (v - my) for u, v in zip(xs, ys, strict=True)) / len(xs)
    widest = math.sqrt((sxx + syy) / 2 + math.hypot((sxx - syy) / 2, sxy))
    assert found.error_m == pytest.approx(widest, rel=0.25)
