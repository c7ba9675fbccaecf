"""Sets of readings that do not fit: named, and reckoned as they were typed."""

from __future__ import annotations

import pytest

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.household import Box, Drum, Tank
from selfcheck.domain.layers import layers
from selfcheck.domain.shapes import vessel

INCH = 0.0254
BOX = Tank(shape=Box(length_m=2.44, width_m=1.27), liquid_depth_m=48 * INCH, outlet_bottom_below_surface_m=17 * INCH)
DRUM = Tank(shape=Drum(diameter_m=60 * INCH, length_m=2.5), liquid_depth_m=48 * INCH)


def odd(tank: Tank, level: str | None = "at_outlet", **kinds: float) -> tuple[str, ...]:
    read = Readings(**{kind: [Reading(m=value * INCH)] for kind, value in kinds.items()})
    return layers(tank, vessel(tank), read, level).odd


@pytest.mark.parametrize(
    ("kinds", "expected"),
    [
        ({"liquid_depth": 48, "sludge": 60}, "layers_do_not_fit"),
        ({"liquid_depth": 48, "sludge": 30, "scum_below": 24}, "layers_do_not_fit"),
        ({"liquid_depth": 48, "sludge": -2}, "negative"),
        ({"liquid_depth": 0, "sludge": 0}, "no_liquid"),
        ({"liquid_depth": 1e-300, "sludge": 0}, "no_liquid"),
        ({"liquid_depth": 48, "scum_total": 4, "scum_above": 7}, "scum_parts_do_not_fit"),
        ({"liquid_depth": 48, "scum_total": 9, "scum_above": 2, "scum_below": 3}, "scum_parts_do_not_fit"),
        ({"liquid_depth": 48, "outlet_bottom_below_surface": 50}, "outlet_below_floor"),
        ({"liquid_depth": 48, "outlet_bottom_below_surface": 24}, "outlet_disagrees"),
        ({"liquid_depth": 38}, "depth_not_as_known"),
    ],
)
def test_each_misfit_is_named(kinds: dict[str, float], expected: str) -> None:
    assert expected in odd(BOX, **kinds)


def test_water_or_sludge_above_the_inside_top() -> None:
    assert "liquid_deeper_than_tank" in odd(DRUM, "above_outlet", liquid_depth=63)
    assert "liquid_deeper_than_tank" in odd(DRUM, "above_outlet", sludge=63)
    assert odd(DRUM, "above_outlet", liquid_depth=60) == ()


@pytest.mark.parametrize(
    "kinds",
    [
        {"liquid_depth": 48, "sludge": 8, "scum_total": 5, "scum_above": 2, "scum_below": 3},
        {"liquid_depth": 48, "sludge": 8, "scum_above": 1, "outlet_bottom_below_surface": 17.5},
        {"liquid_depth": 48, "sludge": 36, "scum_below": 12.5},  # full of solids to the last inch, but it fits
        {"liquid_depth": 46.5},
        {},
    ],
)
def test_what_fits_is_not_odd(kinds: dict[str, float]) -> None:
    assert odd(BOX, **kinds) == ()


def test_another_depth_is_odd_only_when_the_water_is_said_to_stand_at_the_outlet() -> None:
    assert odd(BOX, "below_outlet", liquid_depth=38) == ()
    assert odd(BOX, None, liquid_depth=38) == ()


def test_odd_figures_are_kept_as_typed() -> None:
    read = Readings(liquid_depth=[Reading(m=48 * INCH)], sludge=[Reading(m=60 * INCH)], scum_total=[Reading(m=0)])
    found = layers(BOX, vessel(BOX), read, "at_outlet")
    assert found.sludge is not None
    assert found.sludge.value == pytest.approx(60 * INCH)
    assert found.clear_zone is not None
    assert found.clear_zone.value == pytest.approx(-12 * INCH)
    assert found.solids_by_depth is not None
    assert found.solids_by_depth.value == pytest.approx(60 / 48)
