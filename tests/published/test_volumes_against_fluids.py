"""Tank volumes against the tank geometry of the `fluids` package, and against handbook cases worked by hand."""

from __future__ import annotations

from math import pi, sqrt
from random import Random

import pytest
from fluids.geometry import TANK

from selfcheck.domain.household import Box, Drum, Oval, Tank, Upright
from selfcheck.domain.shapes import Vessel, vessel

ENDS = {"flat": (None, 0.0), "dished": ("ellipsoidal", 0.25), "round": ("spherical", 0.5)}


def lying(diameter: float, length: float, ends: str) -> Vessel:
    return vessel(Tank(shape=Drum(diameter_m=diameter, length_m=length, ends=ends), liquid_depth_m=0.8 * diameter))


def reference(diameter: float, length: float, ends: str) -> TANK:
    name, share = ENDS[ends]
    bulge = share * diameter if name else None
    return TANK(D=diameter, L=length, sideA=name, sideB=name, sideA_a=bulge, sideB_a=bulge)


@pytest.mark.parametrize("ends", sorted(ENDS))
def test_lying_drums_hold_what_fluids_says(ends: str) -> None:
    """2,000 drums of each kind at random fillings, to 1e-9 of the volume asked for."""
    chance = Random(f"drum {ends}")
    for _ in range(2000):
        diameter, length = chance.uniform(0.8, 3.0), chance.uniform(0.8, 8.0)
        height = chance.uniform(0.002, 0.999) * diameter
        found = lying(diameter, length, ends).volume_below(height)
        assert found == pytest.approx(reference(diameter, length, ends).V_from_h(height), rel=1e-9, abs=0)


def test_upright_tanks_hold_what_fluids_says() -> None:
    chance = Random("upright")
    for _ in range(1000):
        diameter, depth = chance.uniform(0.8, 3.0), chance.uniform(0.8, 2.5)
        height = chance.uniform(0.001, 1.0) * depth
        found = vessel(Tank(shape=Upright(diameter_m=diameter), liquid_depth_m=depth)).volume_below(height)
        expected = TANK(D=diameter, L=depth, horizontal=False).V_from_h(height)
        assert found == pytest.approx(expected, rel=1e-9, abs=0)


def test_oval_tanks_are_round_ones_drawn_wider() -> None:
    """An ellipse is a circle stretched sideways, so the volume is the round drum's times width over height."""
    chance = Random("oval")
    for _ in range(1000):
        width, tall, length = chance.uniform(0.8, 3.0), chance.uniform(0.8, 3.0), chance.uniform(0.8, 6.0)
        height = chance.uniform(0.002, 0.999) * tall
        shape = Oval(width_m=width, height_m=tall, length_m=length)
        found = vessel(Tank(shape=shape, liquid_depth_m=0.8 * tall)).volume_below(height)
        expected = TANK(D=tall, L=length).V_from_h(height) * width / tall
        assert found == pytest.approx(expected, rel=1e-9, abs=0)


def test_heights_come_back_as_fluids_finds_them() -> None:
    chance = Random("heights")
    for _ in range(100):
        diameter, length, ends = chance.uniform(0.8, 3.0), chance.uniform(0.8, 8.0), chance.choice(sorted(ENDS))
        tank = reference(diameter, length, ends)
        volume = chance.uniform(0.01, 0.99) * tank.V_from_h(diameter)
        found = lying(diameter, length, ends).height_of(volume)
        assert tank.V_from_h(found) == pytest.approx(volume, rel=1e-9, abs=0)


def test_half_full_drum_holds_half() -> None:
    for ends, whole in (
        ("flat", pi * 0.75**2 * 3),
        ("dished", pi * 0.75**2 * 3 + 2 * (2 / 3) * pi * 0.75**2 * 0.375),  # half an ellipsoid: two thirds of its box
        ("round", pi * 0.75**2 * 3 + 4 / 3 * pi * 0.75**3),
    ):
        drum = lying(1.5, 3.0, ends)
        assert drum.volume_below(0.75) == pytest.approx(whole / 2, rel=1e-12)
        assert drum.volume_below(1.5) == pytest.approx(whole, rel=1e-12)


def test_quarter_height_of_a_drum() -> None:
    """At h = R/2 the segment is R²(π/3 − √3/4): 19.55 % of the circle, not a quarter."""
    drum = lying(2.0, 4.0, "flat")
    assert drum.volume_below(0.5) == pytest.approx(4.0 * (pi / 3 - sqrt(3) / 4), rel=1e-12)
    assert drum.volume_below(0.5) / drum.volume_below(2.0) == pytest.approx(0.19550, abs=1e-5)


@pytest.mark.parametrize("height", [1e-6, 1e-5, 1e-4, 1e-3, 1.2e-3, 1.3e-3, 1e-2])
def test_a_film_on_the_floor_of_a_drum(height: float) -> None:
    """Where the closed formula loses its digits: the segment as the series of ∫2√(2x − x²)dx for R = 1."""
    terms = (1.0, -3 / 20, -3 / 224, -1 / 384, -15 / 22528)  # of (4√2/3)·h^1.5, in rising powers of h
    expected = 4 * sqrt(2) / 3 * height**1.5 * sum(term * height**power for power, term in enumerate(terms))
    assert lying(2.0, 1.0, "flat").volume_below(height) == pytest.approx(expected, rel=1e-11, abs=0)


def test_box_of_a_thousand_gallons() -> None:
    """8 ft by 4 ft 2 in by 4 ft is 133.33 cubic feet; at 7.4805 gallons each, 997.4 gallons."""
    box = vessel(Tank(shape=Box(length_m=8 * 0.3048, width_m=50 * 0.0254), liquid_depth_m=4 * 0.3048))
    assert box.full_m3 / 0.003785411784 == pytest.approx(133.3333 * 7.480519, rel=1e-6)


def test_half_full_box_example() -> None:
    """One foot of sludge in four feet of liquid is a quarter of the tank, by depth and by volume alike."""
    box = vessel(Tank(shape=Box(length_m=2.4, width_m=1.2), liquid_depth_m=4 * 0.3048))
    assert box.volume_below(0.3048) / box.full_m3 == pytest.approx(0.25, rel=1e-12)
