from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.household import Lid
from selfcheck.domain.lid import area_m2, from_the_ground, mass, moving

INCH, FOOT, POUND = 0.0254, 0.3048, 0.45359237


def round_lid(inches: float, thick: float, material: str | None = "concrete") -> Lid:
    return Lid.model_validate(
        {"form": "round", "diameter_m": inches * INCH, "thickness_m": thick * INCH, "material": material}
    )


def test_a_concrete_lid_by_hand() -> None:
    """24 in across and 3 in thick is π · 1² · 0.25 = 0.785 ft³: 114 to 118 lb of concrete."""
    found = mass(round_lid(24, 3))
    assert found is not None
    assert (found.low_kg / POUND, found.high_kg / POUND) == (
        pytest.approx(113.9, abs=0.1),
        pytest.approx(117.8, abs=0.1),
    )
    assert not found.assumed


def test_square_and_rectangular_lids() -> None:
    """2 ft by 3 ft by 4 in is 2 ft³: 300 lb of concrete at most."""
    oblong = Lid(form="rectangular", length_m=3 * FOOT, width_m=2 * FOOT, thickness_m=4 * INCH, material="concrete")
    found = mass(oblong)
    assert found is not None
    assert found.high_kg / POUND == pytest.approx(300)
    assert moving(oblong).advice == "professional"
    assert area_m2(Lid(form="square", width_m=0.6)) == pytest.approx(0.36)


def test_heavier_materials_weigh_more() -> None:
    weights = [mass(round_lid(20, 1, name)) for name in ("plastic", "fibreglass", "concrete", "cast_iron", "steel")]
    heavy = [one.high_kg for one in weights if one is not None]
    assert len(heavy) == 5
    assert heavy == sorted(heavy)


def test_an_unknown_material_is_taken_from_plastic_to_concrete() -> None:
    found = mass(round_lid(24, 3, None))
    assert found is not None
    assert found.assumed
    assert found.high_kg == pytest.approx(math.pi * FOOT**2 * 3 * INCH * 150 * POUND / FOOT**3)
    assert found.low_kg < 0.5 * found.high_kg


def test_who_should_move_it() -> None:
    assert moving(round_lid(20, 0.5, "plastic")).advice == "one_person"
    assert moving(round_lid(24, 1.0, "fibreglass")).advice == "lever"
    assert moving(round_lid(20, 1.5, "plastic")).advice == "two_people"
    assert moving(round_lid(24, 3)).advice == "lever"
    assert moving(round_lid(30, 4)).advice == "professional"
    assert moving(round_lid(20, 0.5, "plastic"), sound=False).advice == "professional"


def test_what_is_not_known_is_not_guessed() -> None:
    assert moving(Lid()).advice == "cannot_tell"
    assert moving(Lid(form="round", diameter_m=0.6, material="concrete")).advice == "cannot_tell"
    assert from_the_ground(Lid(form="rectangular", length_m=1)) is None


def test_the_lift_from_the_ground() -> None:
    """60 cm across: hands 55 cm out, on the ground: 25/55, 1 − 0.003·75, 0.82 + 4.5/30, and 0.9 without handles."""
    held = from_the_ground(Lid(form="round", diameter_m=0.60))
    assert held is not None
    assert held.recommended == pytest.approx(23 * 25 / 55 * 0.775 * 0.97 * 0.9)
    assert moving(round_lid(24, 3)).index == pytest.approx(53.4 / 7.0, rel=0.03)


@given(st.floats(8, 40), st.floats(0.2, 8), st.floats(1.01, 2))
def test_a_thicker_lid_never_gets_lighter_advice(across: float, thick: float, more: float) -> None:
    ladder = ("one_person", "two_people", "lever", "professional")
    thin, heavy = moving(round_lid(across, thick)), moving(round_lid(across, thick * more))
    assert ladder.index(heavy.advice) >= ladder.index(thin.advice)
