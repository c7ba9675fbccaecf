"""Vessels: what they rest on, that they rise and turn back, and that what does not agree is said."""

from __future__ import annotations

from math import inf, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.charts import Chart
from selfcheck.domain.geometry import Lying, Part, Profile, Straight
from selfcheck.domain.household import Box, Drum, Oval, Table, Tank, UnknownShape, Upright
from selfcheck.domain.shapes import compartments, vessel

GALLON = 0.003785411784
LENGTH = st.floats(0.5, 5.0)
SHARE = st.floats(0.0, 1.0)


def charts(draw: st.DrawFn) -> Chart:
    steps = draw(st.lists(st.tuples(st.floats(0.05, 0.5), st.floats(0.02, 2.0)), min_size=2, max_size=8))
    heights, volumes = [0.0], [0.0]
    for rise, more in steps:
        heights.append(heights[-1] + rise)
        volumes.append(volumes[-1] + more)
    chart = Chart.of(heights, volumes)
    assert chart is not None
    return chart


@st.composite
def profiles(draw: st.DrawFn) -> tuple[Profile, float]:
    """Any form, with a height that it reaches."""
    kind = draw(st.sampled_from(["straight", "lying", "chart"]))
    if kind == "straight":
        form: Profile = Straight(draw(LENGTH) * draw(LENGTH), 0.5)
        return (Part(form, 0.6) if draw(st.booleans()) else form), draw(st.floats(0.5, 3.0))
    if kind == "lying":
        rise = draw(st.floats(0.3, 1.5))
        form = Lying(rise, draw(LENGTH), draw(st.floats(0.5, 2.0)), draw(st.sampled_from([0.0, 0.5, 1.0])) * rise)
        return (Part(form, 0.6) if draw(st.booleans()) else form), 2 * rise
    chart = charts(draw)
    return chart, chart.heights[-1]


@given(profiles(), SHARE, SHARE)
def test_volume_rises_with_height(made: tuple[Profile, float], one: float, other: float) -> None:
    form, top = made
    low, high = sorted((one * top, other * top))
    assert form.volume(low) <= form.volume(high) * (1 + 1e-14)
    assert form.area(low) >= 0
    if high - low > 1e-6 * top and low > 1e-3 * top:
        assert form.volume(low) < form.volume(high)


@given(profiles(), st.floats(0.001, 0.999))
def test_height_is_the_inverse_of_volume(made: tuple[Profile, float], share: float) -> None:
    form, top = made
    volume = form.volume(share * top)
    assert form.volume(form.height(volume)) == pytest.approx(volume, rel=1e-11)
    if form.area(share * top) > 1e-6:
        assert form.height(volume) == pytest.approx(share * top, rel=1e-6)


@given(profiles(), st.floats(0.05, 0.95))
def test_area_is_the_slope_of_volume(made: tuple[Profile, float], share: float) -> None:
    form, top = made
    height, step = share * top, 1e-6 * top
    slope = (form.volume(height + step) - form.volume(height - step)) / (2 * step)
    assert form.area(height) == pytest.approx(slope, rel=1e-3, abs=1e-5)


def test_below_the_floor_and_above_the_top() -> None:
    drum = vessel(Tank(shape=Drum(diameter_m=1.5, length_m=3), liquid_depth_m=1.2))
    assert drum.volume_below(-0.1) == 0.0
    assert drum.volume_below(9.0) == pytest.approx(pi * 0.75**2 * 3)
    assert drum.height_of(99.0) == 1.5
    assert drum.height_of(0.0) == drum.height_of(-1.0) == 0.0
    assert drum.top_m == 1.5
    box = vessel(Tank(shape=Box(length_m=2, width_m=1), liquid_depth_m=1.2))
    assert box.top_m is None
    assert box.volume_below(1.5) == pytest.approx(3.0)


def test_chart_follows_scipy_between_its_lines_and_stops_at_the_last() -> None:
    """The same monotone cubic as scipy's PchipInterpolator."""
    from scipy.interpolate import PchipInterpolator

    heights, volumes = [0.1, 0.3, 0.6, 1.0, 1.2, 1.4], [0.12, 0.5, 1.4, 2.9, 3.3, 3.35]
    tank = vessel(Tank(shape=Table(heights_m=heights, volumes_m3=volumes), liquid_depth_m=1.2))
    reference = PchipInterpolator([0.0, *heights], [0.0, *volumes])
    for k in range(141):
        assert tank.volume_below(k / 100) == pytest.approx(float(reference(k / 100)), rel=1e-12, abs=1e-15)
        assert tank.surface_area(k / 100) == pytest.approx(float(reference(k / 100, 1)), rel=1e-9, abs=1e-12)
    assert tank.volume_below(2.0) == 3.35
    assert tank.top_m == 1.4
    assert tank.basis == "shape"


@pytest.mark.parametrize(
    ("heights", "volumes"),
    [([0.2, 0.5], [1.0, 0.9]), ([0.5, 0.2], [0.5, 1.0]), ([0.2, 0.5], [1.0]), ([0.2, 0.2], [0.5, 1.0]), ([0.0], [0.0])],
)
def test_chart_that_does_not_rise_is_said_and_not_used(heights: list[float], volumes: list[float]) -> None:
    tank = vessel(Tank(shape=Table(heights_m=heights, volumes_m3=volumes), volume_m3=3.0, liquid_depth_m=1.2))
    assert "chart_not_rising" in tank.flags
    assert tank.basis == "volume"
    assert tank.full_m3 == pytest.approx(3.0)


def test_volume_alone_becomes_a_box_of_the_stated_depth() -> None:
    tank = vessel(Tank(shape=UnknownShape(), volume_m3=2.84, liquid_depth_m=1.1))
    assert (tank.basis, tank.kind) == ("volume", "box")
    assert tank.volume_below(0.55) == pytest.approx(1.42)
    assert tank.flags == ("drawn_as_box",)
    assert tank.depth_known
    assumed = vessel(Tank(volume_m3=2.84))
    assert "depth_assumed" in assumed.flags
    assert not assumed.depth_known
    assert assumed.liquid_depth_m == pytest.approx(48 * 0.0254)
    assert vessel(Tank(volume_m3=2.84), measured_depth_m=1.3).liquid_depth_m == 1.3


@pytest.mark.parametrize(
    ("bedrooms", "gallons", "table"),
    [
        (0, 750, "upc"),
        (2, 750, "upc"),
        (3, 1000, "upc"),
        (6, 1500, "upc"),
        (8, 2100, "ipsdc-sizing"),
        (12, 2100, "ipsdc-sizing"),
    ],
)
def test_size_by_bedrooms_names_its_table(bedrooms: int, gallons: float, table: str) -> None:
    tank = vessel(Tank(), bedrooms)
    assert (tank.basis, tank.table) == ("bedrooms", table)
    assert tank.full_m3 == pytest.approx(gallons * GALLON)
    assert tank.relative_error >= 0.25


def test_the_less_is_known_the_wider_the_error() -> None:
    shape = Box(length_m=2.44, width_m=1.27)
    known = vessel(Tank(shape=shape, liquid_depth_m=1.22))
    by_volume = vessel(Tank(volume_m3=3.8, liquid_depth_m=1.22))
    by_bedrooms = vessel(Tank(liquid_depth_m=1.22), 3)
    default = vessel(Tank())
    errors = [tank.relative_error for tank in (known, by_volume, by_bedrooms, default)]
    assert errors == sorted(set(errors))
    assert [t.basis for t in (known, by_volume, by_bedrooms, default)] == ["shape", "volume", "bedrooms", "default"]


def test_volume_that_does_not_fit_the_form_is_said() -> None:
    shape = Box(length_m=2.44, width_m=1.27)
    agreeing = vessel(Tank(shape=shape, liquid_depth_m=1.22, volume_m3=3.6))
    assert agreeing.flags == ()
    apart = vessel(Tank(shape=shape, liquid_depth_m=1.22, volume_m3=5.7))
    assert apart.flags == ("volume_disagrees",)
    assert apart.full_m3 == pytest.approx(2.44 * 1.27 * 1.22)
    assert apart.relative_error > agreeing.relative_error


def test_depth_above_the_inside_top_is_said_and_kept() -> None:
    tank = vessel(Tank(shape=Drum(diameter_m=1.2, length_m=2.5), liquid_depth_m=1.5))
    assert "depth_above_top" in tank.flags
    assert tank.liquid_depth_m == 1.5


def test_depth_follows_from_form_and_volume() -> None:
    box = vessel(Tank(shape=Box(length_m=2.0, width_m=1.5), volume_m3=3.6))
    assert box.liquid_depth_m == pytest.approx(1.2)
    assert box.flags == ("depth_from_volume",)
    drum = vessel(Tank(shape=Drum(diameter_m=1.5, length_m=2.5), volume_m3=3.5))
    assert drum.volume_below(drum.liquid_depth_m) == pytest.approx(3.5)


def test_missing_length_of_a_drum_follows_from_its_volume() -> None:
    whole = vessel(Tank(shape=Drum(diameter_m=1.5, length_m=2.5, ends="dished"), liquid_depth_m=1.2))
    found = vessel(Tank(shape=Drum(diameter_m=1.5, ends="dished"), liquid_depth_m=1.2, volume_m3=whole.full_m3))
    assert found.basis == "volume"
    assert found.volume_below(0.3) == pytest.approx(whole.volume_below(0.3))
    oval = vessel(Tank(shape=Oval(width_m=1.8, height_m=1.4), liquid_depth_m=1.1, volume_m3=3.0))
    assert oval.full_m3 == pytest.approx(3.0)
    assert oval.surface_area(0.7) > oval.surface_area(0.2)


@pytest.mark.parametrize("tank", [Tank(volume_m3=0), Tank(shape=Box(length_m=0, width_m=1)), Tank(liquid_depth_m=0)])
def test_a_size_of_zero_is_said(tank: Tank) -> None:
    found = vessel(tank)
    assert "size_is_zero" in found.flags
    assert found.full_m3 > 0
    assert found.liquid_depth_m > 0


def test_two_compartments_share_the_volume() -> None:
    tank = Tank(shape=Drum(diameter_m=1.5, length_m=3.0), liquid_depth_m=1.2, compartments=2)
    whole = vessel(tank)
    first, second = compartments(tank, whole)
    assert first.full_m3 == pytest.approx(2 / 3 * whole.full_m3)
    assert first.full_m3 + second.full_m3 == pytest.approx(whole.full_m3)
    assert first.volume_below(0.4) == pytest.approx(2 / 3 * whole.volume_below(0.4))
    assert first.height_of(first.volume_below(0.4)) == pytest.approx(0.4)
    half = compartments(tank.model_copy(update={"first_compartment_share": 0.5}), whole)
    assert half[0].full_m3 == pytest.approx(half[1].full_m3)
    three = compartments(tank.model_copy(update={"compartments": 3}), whole)
    assert sum(part.full_m3 for part in three) == pytest.approx(whole.full_m3)
    assert compartments(Tank(), whole) == (whole,)


def test_half_width() -> None:
    drum = vessel(Tank(shape=Drum(diameter_m=1.5, length_m=3.0), liquid_depth_m=1.2))
    assert drum.half_width(0.75) == pytest.approx(0.75)
    assert drum.half_width(0.0) == drum.half_width(1.5) == 0.0
    assert vessel(Tank(shape=Oval(width_m=2, height_m=1, length_m=3))).half_width(0.5) == pytest.approx(1.0)
    assert vessel(Tank(shape=Upright(diameter_m=1.4))).half_width(0.2) == pytest.approx(0.7)
    assert vessel(Tank(shape=Box(length_m=3, width_m=1.4))).half_width(0.2) == pytest.approx(0.7)


SIZE = st.none() | st.floats(0, 100)
ANY_SHAPE = st.one_of(
    st.builds(UnknownShape),
    st.builds(Box, length_m=SIZE, width_m=SIZE),
    st.builds(Upright, diameter_m=SIZE),
    st.builds(Drum, diameter_m=SIZE, length_m=SIZE, ends=st.sampled_from(["flat", "dished", "round"])),
    st.builds(Oval, width_m=SIZE, height_m=SIZE, length_m=SIZE),
    st.builds(Table, heights_m=st.lists(st.floats(0, 100)), volumes_m3=st.lists(st.floats(0, 1000))),
)
ANY_TANK = st.builds(Tank, shape=ANY_SHAPE, liquid_depth_m=SIZE, volume_m3=st.none() | st.floats(0, 1000))


@given(ANY_TANK, st.none() | st.integers(0, 50))
def test_any_facts_give_a_usable_vessel(tank: Tank, bedrooms: int | None) -> None:
    found = vessel(tank, bedrooms)
    assert 0 < found.full_m3 < inf
    assert 0 < found.liquid_depth_m < inf
    assert 0 < found.relative_error < inf
    assert found.volume_below(found.liquid_depth_m) == pytest.approx(found.full_m3)
    half = found.height_of(found.full_m3 / 2)
    assert 0 < half < found.liquid_depth_m
    assert found.volume_below(half) == pytest.approx(found.full_m3 / 2)
