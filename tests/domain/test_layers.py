"""Readings to layers: figures, errors against a Monte Carlo run, and what stands in for what was not read."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.household import Box, Drum, Tank
from selfcheck.domain.layers import Layers, layers
from selfcheck.domain.shapes import vessel

INCH = 0.0254
FACTS = {"outlet_bottom_below_surface_m": 17 * INCH, "outlet_top_above_surface_m": 6 * INCH}
TANK = Tank(shape=Box(length_m=2.44, width_m=1.27), liquid_depth_m=48 * INCH, **FACTS)
VESSEL = vessel(TANK)


def inches(**kinds: float | list[float]) -> Readings:
    lists = {kind: given if isinstance(given, list) else [given] for kind, given in kinds.items()}
    return Readings(**{kind: [Reading(m=value * INCH) for value in values] for kind, values in lists.items()})


def near(found: object, value: float, error: float | None = None, unit: float = INCH) -> None:
    assert found.value / unit == pytest.approx(value)
    if error is not None:
        assert found.error / unit == pytest.approx(error)


def test_figures_of_a_plain_check() -> None:
    found = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=[8, 8.5], scum_above=2), "at_outlet")
    near(found.sludge, 8.5)
    near(found.scum, 6)
    near(found.scum_below, 4)
    near(found.clear_zone, 48 - 8.5 - 4)
    near(found.outlet_height, 31)
    near(found.sludge_to_outlet, 22.5)
    near(found.scum_to_outlet, 13)
    near(found.scum_top_to_outlet_top, 4)
    near(found.solids_by_depth, 14.5 / 48, unit=1)
    near(found.solids_by_volume, 14.5 / 48, unit=1)
    near(found.sludge_m3, 2.44 * 1.27 * 8.5 * INCH, unit=1)
    near(found.scum_m3, 2.44 * 1.27 * 6 * INCH, unit=1)
    assert (found.agreement, found.odd, found.scum_way) == ("agree", (), "above")


def test_errors_of_single_readings_are_the_parts_in_quadrature() -> None:
    """Mark 0.25, stain 0.5 and floor 0.5 in: 0.75 for sludge, 0.56 for the wet line; crust 20 % and 3 marks."""
    found = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=8, scum_above=2), "at_outlet")
    near(found.sludge, 8, 0.75)
    near(found.liquid_depth, 48, (0.25**2 + 0.5**2) ** 0.5)
    near(found.scum, 6, ((0.2 * 6) ** 2 + 0.75**2) ** 0.5)
    near(found.scum_below, 4, ((0.2 * 6) ** 2 + 0.5**2) ** 0.5)
    own = Readings(sludge=[Reading(m=8 * INCH, error_m=1 * INCH)])
    near(layers(TANK, VESSEL, own).sludge, 8, (1 + 0.5**2 + 0.5**2) ** 0.5)


WAYS = {
    "above": ({"scum_above": 2.0}, {"scum_above": 0.25}),
    "below": ({"scum_below": 4.0}, {"scum_below": 0.5}),
    "total": ({"scum_total": 6.0}, {"scum_total": 0.5}),
    "both parts": ({"scum_above": 2.0, "scum_below": 4.0}, {"scum_above": 0.25, "scum_below": 0.5}),
}


def drum_volume(height: np.ndarray, radius: float, length: float) -> np.ndarray:
    """Lying drum with 2:1 ellipsoidal ends, written out anew."""
    straight = length * (radius**2 * np.arccos(1 - height / radius))
    straight -= length * (radius - height) * np.sqrt(height * (2 * radius - height))
    return straight + np.pi * height**2 * (3 * radius - height) / 6


@pytest.mark.parametrize("level", ["at_outlet", None])
@pytest.mark.parametrize("way", sorted(WAYS))
def test_errors_against_a_monte_carlo_run(way: str, level: str | None) -> None:
    """100,000 tries of each reading about its value, in a lying drum where nothing is proportional.

    The share of the crust that hangs varies by a fifteenth, so that three times what stands above is off by 20 %.
    """
    radius, length, full = 0.75, 2.4, 48 * INCH
    tank = Tank(shape=Drum(diameter_m=2 * radius, length_m=length, ends="dished"), liquid_depth_m=full, **FACTS)
    kinds, errors = WAYS[way]
    found = layers(tank, vessel(tank), inches(liquid_depth=47, sludge=[10, 10], **kinds), level)

    chance = np.random.default_rng(526)

    def tries(value: float, error: float) -> np.ndarray:
        return chance.normal(value * INCH, error * INCH, 100_000)

    depth = tries(47, 0.3125**0.5)
    sludge = tries(0, 0.5) + (tries(10, 0.3125**0.5) + tries(10, 0.3125**0.5)) / 2  # one floor, two dips
    top, edge, outlet_top = tries(48, 0.5), tries(17, 0.5), tries(6, 0.5)
    read = {kind: tries(value, errors[kind]) for kind, value in kinds.items()}
    rule = tries(0, 6 / 15)  # by how much the part below is off when the whole is known
    if way == "above":
        above = read["scum_above"]
        below = 2 * above + 3 * rule
    elif way == "below":
        below = read["scum_below"]
        above = below / 2 - 1.5 * rule
    elif way == "total":
        below = read["scum_total"] * 2 / 3 + rule
        above = read["scum_total"] - below
    else:
        above, below = read["scum_above"], read["scum_below"]
    outlet = top - edge
    surface = 2 * np.sqrt(depth * (2 * radius - depth)) * length + np.pi / 2 * depth * (2 * radius - depth)
    whole = drum_volume(depth, radius, length)
    low = drum_volume(sludge, radius, length)
    high = whole - drum_volume(depth - below, radius, length) + surface * above
    scale = chance.normal(1, 0.03, 100_000)
    # water that is seen to stand at the outlet is the line that outlet and crust both hang on
    lifted = 0 if level == "at_outlet" else depth - top
    expected = {
        "liquid_depth": depth,
        "sludge": sludge,
        "scum": above + below,
        "scum_above": above,
        "scum_below": below,
        "clear_zone": depth - sludge - below,
        "outlet_height": outlet,
        "sludge_to_outlet": outlet - sludge,
        "scum_to_outlet": lifted + edge - below,
        "scum_top_to_outlet_top": outlet_top - lifted - above,
        "solids_by_depth": (sludge + above + below) / depth,
        "solids_by_volume": (low + high) / whole,
        "sludge_m3": low * scale,
        "scum_m3": high * scale,
    }
    for name, sample in expected.items():
        figure = getattr(found, name)
        assert figure.error == pytest.approx(float(np.std(sample)), rel=0.03), name
        assert figure.value == pytest.approx(float(np.mean(sample)), abs=0.1 * figure.error), name


def test_error_of_the_crust_in_a_nearly_full_drum() -> None:
    """Near the top the surface narrows fast, so the wet line's error counts through the crust above it too."""
    radius, length = 0.75, 2.4
    tank = Tank(shape=Drum(diameter_m=2 * radius, length_m=length), liquid_depth_m=53 * INCH)
    read = inches(liquid_depth=53, scum_above=9, scum_below=1)
    found = layers(tank, vessel(tank)._replace(relative_error=1e-9), read, "at_outlet")

    def crust(depth: float, above: float, below: float) -> float:
        def chord(height: float) -> float:
            return 2 * float(np.sqrt(height * (2 * radius - height)))

        return length * (quad(chord, depth - below, depth)[0] + chord(depth) * above)

    errors = {"depth": 0.3125**0.5 * INCH, "above": 0.25 * INCH, "below": 0.5 * INCH}
    here = {"depth": 53 * INCH, "above": 9 * INCH, "below": 1 * INCH}
    step = 1e-6
    slopes = {
        name: (crust(**{**here, name: value + step}) - crust(**{**here, name: value - step})) / (2 * step)
        for name, value in here.items()
    }
    near(found.scum_m3, crust(**here), unit=1)
    expected = sum((slopes[name] * error) ** 2 for name, error in errors.items()) ** 0.5
    assert found.scum_m3.error == pytest.approx(expected, rel=1e-4)


def test_more_dips_shrink_what_is_read_anew_each_time_and_not_the_floor() -> None:
    """Against a Monte Carlo run: of two, the higher lies above the truth as often as their mean, or more often."""
    chance = np.random.default_rng(35)
    floor = 0.5
    for dips in (1, 2, 3):
        read = 8 + chance.normal(0, 0.3125**0.5, (100_000, dips)) + chance.normal(0, floor, (100_000, 1))
        middle = np.median(read, axis=1)  # of two: their mean
        found = layers(TANK, VESSEL, inches(sludge=[8] * dips)).sludge
        assert found.error / INCH == pytest.approx(float(np.std(middle)), rel=0.01)
    many = layers(TANK, VESSEL, inches(sludge=[8] * 7)).sludge
    assert many.error == found.error
    vague = Readings(sludge=[Reading(m=8 * INCH, error_m=2 * INCH)] * 3)
    assert layers(TANK, VESSEL, vague).sludge.error > 2 * INCH  # doubt in the words stays


def test_what_was_measured_needs_no_rule_of_thumb() -> None:
    both = layers(TANK, VESSEL, inches(liquid_depth=48, scum_above=1, scum_below=5), "at_outlet")
    assert not both.two_thirds_used
    near(both.scum, 6, (0.25**2 + 0.5**2) ** 0.5)
    whole = layers(TANK, VESSEL, inches(liquid_depth=48, scum_total=6, scum_above=1), "at_outlet")
    near(whole.scum_below, 5)
    assert not whole.two_thirds_used
    assert layers(TANK, VESSEL, inches(scum_below=4)).scum_way == "below"
    assert layers(TANK, VESSEL, inches(scum_below=4)).two_thirds_used


def test_no_crust_and_no_reading_of_the_crust_differ() -> None:
    none = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=8, scum_total=0), "at_outlet")
    near(none.scum, 0)
    near(none.solids_by_depth, 8 / 48, unit=1)
    unread = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=8), "at_outlet")
    assert unread.scum is None
    assert unread.clear_zone is None
    assert unread.solids_by_depth is None
    near(unread.least_by_depth, 8 / 48, unit=1)


def test_nothing_read_is_nothing_known() -> None:
    assert layers(Tank(), vessel(Tank()), Readings()) == Layers()


def test_outlet_hangs_on_the_tank_not_on_todays_water() -> None:
    low = layers(TANK, VESSEL, inches(liquid_depth=40, sludge=8, scum_total=3), "below_outlet")
    near(low.outlet_height, 31)
    near(low.sludge_to_outlet, 23)
    near(low.scum_to_outlet, 40 - 2 - 31)
    high = layers(TANK, VESSEL, inches(liquid_depth=54, sludge=8, scum_total=3), "above_outlet")
    near(high.outlet_height, 31)
    near(high.scum_top_to_outlet_top, 48 + 6 - 54 - 1)


def test_outlet_read_from_todays_water_line() -> None:
    found = layers(TANK, VESSEL, inches(liquid_depth=46, sludge=8, outlet_bottom_below_surface=15), "below_outlet")
    near(found.outlet_height, 31)
    assert not found.outlet_assumed


def test_outlet_assumed_from_the_published_share() -> None:
    """Source `wac-246-272c`: 30 to 40 % of the depth below the surface, a lying drum 25 to 35 %."""
    box = TANK.model_copy(update={"outlet_bottom_below_surface_m": None})
    found = layers(box, vessel(box), inches(liquid_depth=48, sludge=8), "at_outlet")
    assert found.outlet_assumed
    near(found.outlet_height, 0.65 * 48)
    assert found.outlet_height.error / INCH >= 0.05 * 48
    drum = Tank(shape=Drum(diameter_m=60 * INCH, length_m=2.5), liquid_depth_m=48 * INCH)
    near(layers(drum, vessel(drum), inches(liquid_depth=48), "at_outlet").outlet_height, 0.70 * 48)


@pytest.mark.parametrize(
    ("level", "known"), [("at_outlet", True), (None, True), ("below_outlet", False), ("above_outlet", False)]
)
def test_full_depth_not_on_record(level: str | None, known: bool) -> None:
    """Today's water line stands in for the full depth, unless the water was seen to stand elsewhere."""
    tank = TANK.model_copy(update={"liquid_depth_m": None})
    found = layers(tank, vessel(tank), inches(liquid_depth=40, sludge=8), level)
    assert (found.outlet_height is not None) == known
    if known:
        near(found.outlet_height, 40 - 17)


def test_water_line_not_read() -> None:
    seen = layers(TANK, VESSEL, inches(sludge=8, scum_total=3), "at_outlet")
    assert seen.depth_from_facts
    near(seen.liquid_depth, 48)
    unseen = layers(TANK, VESSEL, inches(sludge=8, scum_total=3), "unknown")
    assert unseen.liquid_depth.error > seen.liquid_depth.error
    assert layers(TANK, VESSEL, inches(sludge=8, scum_total=3), "below_outlet").liquid_depth is None
    nowhere = Tank(volume_m3=3.8)
    assert layers(nowhere, vessel(nowhere), inches(sludge=8), "at_outlet").liquid_depth is None


def test_readings_that_do_not_settle_it_are_all_kept() -> None:
    found = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=[3, 10], scum_above=0.5), "at_outlet")
    assert found.agreement == "third_wanted"
    near(found.sludge, 10)
    assert [round(each.sludge.value / INCH, 6) for each in found.alternatives] == [3, 10]
    assert found.alternatives[0].solids_by_depth.value < 0.25
    clash = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=[3, 7, 12]), "at_outlet")
    assert clash.agreement == "clash"
    assert len(clash.alternatives) == 3
    assert layers(TANK, VESSEL, inches(sludge=[9, 15, 15.5])).alternatives == ()


@given(st.floats(0, 24), st.floats(0, 24), st.floats(0, 8), st.floats(0, 8))
def test_more_of_a_layer_never_looks_better(sludge: float, more: float, scum: float, thicker: float) -> None:
    one = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=sludge, scum_above=scum), "at_outlet")
    two = layers(TANK, VESSEL, inches(liquid_depth=48, sludge=sludge + more, scum_above=scum + thicker), "at_outlet")
    for room in ("clear_zone", "sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top"):
        assert getattr(two, room).value <= getattr(one, room).value + 1e-12
    for solids in ("solids_by_depth", "solids_by_volume", "sludge_m3", "scum_m3"):
        assert getattr(two, solids).value >= getattr(one, solids).value - 1e-12


LENGTHS = st.lists(st.floats(allow_nan=False, allow_infinity=False), max_size=4).map(
    lambda values: [Reading(m=value) for value in values]
)


@given(
    st.builds(
        Readings,
        liquid_depth=LENGTHS,
        sludge=LENGTHS,
        scum_total=LENGTHS,
        scum_above=LENGTHS,
        scum_below=LENGTHS,
        outlet_bottom_below_surface=LENGTHS,
    ),
    st.sampled_from([None, "unknown", "at_outlet", "above_outlet", "below_outlet"]),
    st.sampled_from([TANK, Tank(), Tank(shape=Drum(diameter_m=1.5, length_m=2.0)), Tank(volume_m3=3.0)]),
)
def test_no_set_of_readings_raises(readings: Readings, level: str | None, tank: Tank) -> None:
    found = layers(tank, vessel(tank), readings, level)
    negative = any(reading.m < 0 for kind in Readings.model_fields for reading in getattr(readings, kind))
    assert ("negative" in found.odd) == negative
