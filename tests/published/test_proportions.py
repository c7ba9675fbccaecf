"""What is assumed of a tank nobody measured, against the codes.

Sources by id: `wac-246-272c` (own text read: outlet device 30 to 40 % of the liquid depth down, in a lying drum 25 to
35 %; first compartment one half to two thirds), `ipsdc-2012-8` (own text read: two thirds), `mn-7080-1920` (own text
read: liquid depth 30 in at least, 84 in at most counted; 6 in of air space at least).
"""

from __future__ import annotations

import pytest

from selfcheck.domain.household import Box, Drum, Oval, Shape, Tank, UnknownShape, Upright
from selfcheck.domain.outlet import outlet_below_surface
from selfcheck.domain.shapes import compartments, vessel

INCH = 0.0254
UPRIGHT, LYING = (0.30, 0.40), (0.25, 0.35)
SHAPES: list[tuple[Shape, tuple[float, float]]] = [
    (Box(length_m=2.4, width_m=1.3), UPRIGHT),
    (Upright(diameter_m=1.8), UPRIGHT),
    (UnknownShape(), UPRIGHT),
    (Drum(diameter_m=1.6, length_m=2.4), LYING),
    (Oval(width_m=1.6, height_m=1.5, length_m=2.4), LYING),
]


@pytest.mark.parametrize(("shape", "printed"), SHAPES)
@pytest.mark.parametrize("depth_m", [0.9, 1.22, None])
def test_the_outlet_assumed_is_the_middle_of_the_code_and_its_error_reaches_both_ends(
    shape: Shape, printed: tuple[float, float], depth_m: float | None
) -> None:
    tank = Tank(shape=shape, liquid_depth_m=depth_m)
    body = vessel(tank)
    assumed = outlet_below_surface(tank, body)
    assert assumed.assumed
    share, spread = assumed.metres / body.liquid_depth_m, assumed.error / body.liquid_depth_m
    assert (share - spread, share + spread) == pytest.approx(printed)


def test_the_first_compartment_assumed_is_one_that_both_codes_allow() -> None:
    tank = Tank(shape=Box(length_m=2.4, width_m=1.3), liquid_depth_m=1.22, compartments=2)
    whole = vessel(tank)
    first, second = (part.full_m3 / whole.full_m3 for part in compartments(tank, whole))
    assert 1 / 2 <= first <= 2 / 3 + 1e-9
    assert first == pytest.approx(2 / 3)
    assert first + second == pytest.approx(1)


@pytest.mark.parametrize("across_m", [1.2, 1.5, 1.8])
def test_a_depth_assumed_is_one_that_a_code_would_take(across_m: float) -> None:
    for shape in (Box(length_m=2.4, width_m=1.3), Drum(diameter_m=across_m, length_m=2.4), UnknownShape()):
        body = vessel(Tank(shape=shape))
        assert 30 * INCH <= body.liquid_depth_m <= 84 * INCH
        if body.top_m is not None:
            assert body.top_m - body.liquid_depth_m >= 6 * INCH
