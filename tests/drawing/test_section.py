"""The tank in section: what is drawn is what is there."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.check import Readings
from selfcheck.domain.household import Drum, Tank, Upright
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import Limit, RuleSet, stand
from selfcheck.domain.shapes import vessel
from selfcheck.drawing.lengths import number, with_error
from selfcheck.drawing.section import (
    Band,
    LimitLine,
    SectionPicture,
    as_lines,
    as_one_line,
    as_words,
    between,
    describe,
)
from selfcheck.drawing.spans import ROLES, as_text

INCH = 0.0254
TANK = SectionPicture(
    inside_height=62 * INCH,
    liquid_depth=48 * INCH,
    scum=Band(44 * INCH, 50 * INCH, INCH),
    sludge=Band(0, 8.5 * INCH, 0.75 * INCH),
    outlet=31 * INCH,
    last_scum=4 * INCH,
    last_sludge=6 * INCH,
)


def picture_text(picture: SectionPicture, width: int = 44, height: int = 22) -> str:
    return "\n".join(as_text(as_lines(picture, width, height)))


def rows_with(picture: SectionPicture, signs: str, height: int = 22) -> int:
    return sum(any(sign in line for sign in signs) for line in as_text(as_lines(picture, 44, height)))


def test_layers_outlet_and_last_time_are_labelled_with_number_and_error() -> None:
    text = picture_text(TANK)
    for words in (
        "crust 6 ± 1 in",
        "clear 35½ in",
        "sludge 8½ ± ¾ in",
        "outlet edge",
        "last time: crust 4, sludge 6 in",
    ):
        assert words in text


def test_the_order_from_the_top_is_lid_crust_clear_sludge() -> None:
    lines = as_text(as_lines(TANK, 44, 22))
    places = [
        next(row for row, line in enumerate(lines) if words in line) for words in ("lid", "crust", "clear", "sludge")
    ]
    assert places == sorted(places)
    textures = [next(row for row, line in enumerate(lines) if sign in line) for sign in "░▓"]
    assert textures == sorted(textures)


def test_thickness_is_to_scale() -> None:
    """Rows of texture times the height of a row give the thickness back to within one row."""
    rows = 18
    step = TANK.inside_height / rows
    for inches in range(2, 30, 3):
        picture = replace(TANK, sludge=Band(0, inches * INCH))
        drawn = rows_with(picture, "▓") * step
        assert drawn == pytest.approx(inches * INCH, abs=step)


def test_eighths_make_fine_steps() -> None:
    pictures = {picture_text(replace(TANK, sludge=Band(0, tenth * INCH / 10))) for tenth in range(0, 200, 2)}
    assert len(pictures) >= 40


@pytest.mark.parametrize("inches", [0.05, 0.2, 0.5, 1.0])
@pytest.mark.parametrize("height", [8, 12, 22])
def test_a_thin_crust_is_seen_and_numbered(inches: float, height: int) -> None:
    thin = replace(TANK, scum=Band(TANK.liquid_depth - inches * INCH * 2 / 3, TANK.liquid_depth + inches * INCH / 3))
    assert rows_with(thin, "▔▀▁▂▃▄▅▆▇░", height) > rows_with(replace(thin, scum=Band(1.2, 1.2)), "▔▀▁▂▃▄▅▆▇░", height)
    assert f"crust {number(inches * INCH, 'us')} in" in picture_text(thin)


def test_thin_sludge_is_seen() -> None:
    bare = replace(TANK, scum=Band(1.2, 1.2))
    assert rows_with(replace(bare, sludge=Band(0, 0.001)), "▁") == rows_with(replace(bare, sludge=Band(0, 0)), "▁") + 1


def test_what_is_not_known_is_a_question_mark_and_never_a_zero() -> None:
    unknown = replace(TANK, scum=None, sludge=None)
    assert picture_text(unknown).count("?") == 4  # in the tank and beside it, for crust and sludge
    assert as_one_line(unknown) == "crust ? · clear ? · sludge ? of 48 in"
    none = replace(TANK, scum=Band(48 * INCH, 48 * INCH), sludge=Band(0, 0))
    assert "crust none" in picture_text(none)
    assert "?" not in picture_text(none)
    assert as_one_line(none) == "crust 0 · clear 48 · sludge 0 of 48 in"


def test_the_one_line_form() -> None:
    assert as_one_line(replace(TANK, scum=Band(41.5 * INCH, 47.5 * INCH))) == "crust 6 · clear 33 · sludge 8½ of 48 in"
    assert as_one_line(TANK, "metric") == "crust 15 · clear 90 · sludge 22 of 122 cm"


def test_the_words_say_all_that_the_picture_shows() -> None:
    picture = replace(TANK, limits=(LimitLine("sludge limit", 19 * INCH),), outlet_assumed=True)
    assert as_words(picture) == [
        "crust: 6 give or take 1 in",
        "clear: 35½ give or take 1¼ in",
        "sludge: 8½ give or take ¾ in",
        "outlet edge: 31 in above the floor (a guess)",
        "sludge limit: 19 in above the floor",
        "last time: crust 4, sludge 6 in",
    ]
    assert as_words(replace(TANK, sludge=None))[2] == "sludge: not known yet"


def test_limits_are_dotted_lines_with_their_names() -> None:
    picture = replace(TANK, limits=(LimitLine("crust limit", 36 * INCH), LimitLine("sludge limit", 19 * INCH)))
    lines = as_text(as_lines(picture, 44, 22))
    for name in ("crust limit", "sludge limit"):
        line = next(line for line in lines if name in line)
        assert "┄┄┄" in line


def test_a_round_tank_is_drawn_narrower_where_it_is() -> None:
    round_tank = Tank(shape=Drum(diameter_m=1.5, length_m=2.4), liquid_depth_m=1.2)
    picture = describe(vessel(round_tank), None)
    lines = as_text(as_lines(picture, 44, 22))
    indents = [len(line) - len(line.lstrip()) for line in lines[1:19]]
    assert indents[0] > min(indents) + 3
    assert indents[-1] > min(indents) + 3
    assert "╱" in "".join(lines)
    straight = describe(vessel(Tank(shape=Upright(diameter_m=1.5), liquid_depth_m=1.2)), None)
    assert "╱" not in picture_text(straight)


def test_a_picture_is_described_from_readings_and_rules() -> None:
    tank = Tank.model_validate({"shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27}, "liquid_depth_m": 1.22,
                                "outlet_bottom_below_surface_m": 0.43})  # fmt: skip
    readings = Readings.model_validate({"sludge": [{"m": 0.2}, {"m": 0.21}], "scum_total": [{"m": 0.15}]})
    shape = vessel(tank)
    now = layers(tank, shape, readings)
    rules = RuleSet(
        "one", "One", "a publisher", "source", (Limit("sludge_to_outlet", inches=12), Limit("scum", inches=9))
    )
    picture = describe(shape, now, stand(rules, now, shape), layers(tank, shape, Readings()))
    assert now.sludge is not None
    assert picture.sludge == Band(0.0, now.sludge.value, now.sludge.error)
    assert picture.scum is not None
    assert picture.scum.thickness == pytest.approx(0.15)
    assert picture.scum.bottom < picture.liquid_depth < picture.scum.top
    assert picture.outlet == pytest.approx(0.79)
    assert picture.last_sludge is None
    heights = {line.name: line.height for line in picture.limits}
    assert heights == {
        "sludge limit": pytest.approx(0.79 - 12 * INCH),
        "crust limit": pytest.approx(1.22 - 9 * INCH * 2 / 3),
    }


def test_a_layer_settles_from_nothing_to_its_place() -> None:
    empty = replace(TANK, scum=None, sludge=None)
    tops = [between(empty, TANK, share).sludge.top for share in (0.0, 0.25, 0.5, 1.0)]  # type: ignore[union-attr]
    assert tops == pytest.approx([0.0, 0.25 * 8.5 * INCH, 0.5 * 8.5 * INCH, 8.5 * INCH])
    assert between(empty, TANK, 1.0) == TANK


heights = st.floats(0, 3, allow_nan=False)


@given(
    inside=st.floats(0.3, 3), share=st.floats(0.2, 1), sludge=heights, scum=heights, outlet=st.none() | heights,
    width=st.integers(1, 90), height=st.integers(1, 40), round_=st.booleans(), limit=heights,
)  # fmt: skip
def test_every_picture_fits_its_frame(
    inside: float, share: float, sludge: float, scum: float, outlet: float | None,
    width: int, height: int, round_: bool, limit: float,
) -> None:  # fmt: skip
    depth = inside * share
    widths = tuple(math.sqrt(1 - (2 * step / 32 - 1) ** 2) for step in range(33)) if round_ else (1.0, 1.0)
    picture = SectionPicture(
        inside, depth, widths, Band(depth - scum, depth + scum / 3), Band(0, sludge), outlet, True,
        (LimitLine("sludge limit", limit),), scum, sludge,
    )  # fmt: skip
    lines = as_lines(picture, width, height)
    assert 0 < len(lines) <= height
    for line in lines:
        assert sum(len(span.text) for span in line) == width
        assert all(span.role in ROLES for span in line)


@given(st.integers(0, 400))
def test_numbers_are_quarters_and_read_back(quarters: int) -> None:
    from selfcheck.domain.quantities import read_length

    metres = quarters / 4 * INCH
    reading = read_length(f"{number(metres, 'us')} in")
    assert reading.metres == pytest.approx(metres, abs=1e-6)


def test_numbers_with_their_error() -> None:
    assert with_error(6 * INCH, INCH, "us") == "6 ± 1 in"
    assert with_error(6 * INCH, 0.0001, "us") == "6 ± ¼ in"
    assert with_error(6 * INCH, 0, "us") == "6 in"
    assert with_error(0.35, 0.015, "metric") == "35 ± 2 cm"
    assert number(-2.5 * INCH, "us") == "-2½"


def test_a_water_line_that_nobody_knows_is_no_figure_in_the_line() -> None:
    assert as_one_line(describe(vessel(Tank()), None)).endswith("of ?")
    assert as_one_line(describe(vessel(Tank(liquid_depth_m=48 * INCH)), None)).endswith("of 48 in")
