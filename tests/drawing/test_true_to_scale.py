"""What is drawn as SVG has the proportions of what it stands for."""

from __future__ import annotations

import re
from itertools import pairwise
from math import dist
from xml.etree import ElementTree as ET

import pytest

from selfcheck.domain.household import Box, Drum, Oval, Place, Tank, Upright
from selfcheck.drawing import cloth, history, section, sketch
from tests.drawing import households as given_
from tests.drawing.svg_checks import SVG, parsed


def filled(root: ET.Element, texture: str) -> list[ET.Element]:
    """The shapes that are filled with a texture, in the order of drawing, patterns and keys left out."""
    return [one for one in root.iter() if one.get("fill", "").endswith(f"-{texture})")]


def points(element: ET.Element) -> list[tuple[float, float]]:
    numbers = [float(one) for one in re.findall(r"-?[\d.]+", element.attrib["d"])]
    return list(zip(numbers[::2], numbers[1::2], strict=True))


def clip(root: ET.Element, name: str) -> list[tuple[float, float]]:
    for one in root.iter(f"{SVG}clipPath"):
        if one.attrib["id"].endswith(f"-{name}"):
            return points(one[0])
    raise AssertionError(name)


def size(outline: list[tuple[float, float]]) -> tuple[float, float]:
    xs, ys = zip(*outline, strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


@pytest.mark.parametrize(
    ("shape", "length", "width", "height"),
    [
        (Box(length_m=2.4, width_m=1.2), 2.4, None, 1.2 * 1.2),
        (Upright(diameter_m=1.5), 1.5, None, 1.2 * 1.2),
        (Drum(diameter_m=1.5, length_m=2.0, ends="flat"), 2.0, 1.5, 1.5),
        (Drum(diameter_m=1.5, length_m=2.0, ends="dished"), 2.75, 1.5, 1.5),
        (Drum(diameter_m=1.5, length_m=2.0, ends="round"), 3.5, 1.5, 1.5),
        (Oval(width_m=1.9, height_m=1.5, length_m=2.2), 2.2, 1.9, 1.5),
    ],
    ids=str,
)
def test_a_tank_has_its_own_form(shape: object, length: float, width: float | None, height: float) -> None:
    tank = Tank.model_validate({"shape": shape, "liquid_depth_m": 1.2})
    root = parsed(section.as_svg(given_.section(tank)))
    wide, high = size(clip(root, "inside"))
    assert wide / high == pytest.approx(length / height, rel=0.01)
    if width is None:
        with pytest.raises(AssertionError):
            clip(root, "end")
    else:
        wide, high = size(clip(root, "end"))
        assert wide / high == pytest.approx(width / height, rel=0.01)


def test_layers_are_to_scale_and_in_order() -> None:
    tank = given_.TANK
    root = parsed(section.as_svg(given_.section(tank, given_.readings(liquid_depth=[48], sludge=[12], scum_total=[9]))))
    _, high = size(clip(root, "inside"))
    scale = high / (48 * 1.2)  # units for an inch
    (sludge,), (crust,) = filled(root, "sludge"), filled(root, "crust")
    assert float(sludge.attrib["height"]) == pytest.approx(12 * scale, abs=0.2)
    assert float(crust.attrib["height"]) == pytest.approx(9 * scale, abs=0.2)
    water = max(y for _, y in clip(root, "inside")) - 48 * scale
    assert float(crust.attrib["y"]) == pytest.approx(water - 3 * scale, abs=0.2)
    assert float(crust.attrib["y"]) < float(sludge.attrib["y"])


def test_a_thicker_layer_never_looks_thinner() -> None:
    seen = []
    for inches in range(0, 40, 3):
        picture = given_.section(now=given_.readings(liquid_depth=[48], sludge=[inches], scum_total=[2]))
        shapes = filled(parsed(section.as_svg(picture)), "sludge")
        seen.append(float(shapes[0].attrib["height"]) if shapes else 0.0)
    assert seen == sorted(seen)
    assert all(before < after for before, after in pairwise(seen))


def test_a_second_compartment_stands_where_its_wall_is() -> None:
    tank = given_.TANK.model_copy(update={"compartments": 2, "first_compartment_share": 0.6})
    read = given_.readings(liquid_depth=[48], sludge=[10])
    root = parsed(section.as_svg(given_.section(tank, read, second=given_.readings(liquid_depth=[48], sludge=[5]))))
    first, second = filled(root, "sludge")
    assert float(first.attrib["width"]) / float(second.attrib["width"]) == pytest.approx(0.6 / 0.4, rel=0.02)
    assert float(first.attrib["height"]) / float(second.attrib["height"]) == pytest.approx(2, rel=0.02)


def test_tapes_are_as_long_as_they_were_read() -> None:
    place = Place(corners_apart_m=6.4, from_a_m=5.2, from_b_m=4.1, side="garden side")
    root = parsed(sketch.as_svg(sketch.describe(place, given_.WORDS["sketch"])))
    first, second = [points(one) for one in root.iter(f"{SVG}path") if one.get("stroke") == "#b5822f"]
    apart = dist(first[0], second[0])
    assert dist(*first) / apart == pytest.approx(5.2 / 6.4, rel=0.01)
    assert dist(*second) / apart == pytest.approx(4.1 / 6.4, rel=0.01)
    assert first[1] == second[1]
    dashed = [points(one) for one in root.iter(f"{SVG}path") if one.get("stroke-dasharray") == "3 5"]
    lid, mirror, wall = first[1], dashed[0][1], first[0][1]
    assert mirror[0] == lid[0]
    assert mirror[1] - wall == pytest.approx(wall - lid[1], abs=0.2)


def test_stains_stand_as_high_as_they_were_read() -> None:
    read = given_.readings(liquid_depth=[48], sludge=[6, 12])
    root = parsed(cloth.as_svg(cloth.describe(read, given_.WORDS["cloth"])))
    low, high = [points(one) for one in filled(root, "sludge")]
    assert (high[0][1] - high[1][1] - 2) / (low[0][1] - low[1][1] - 2) == pytest.approx(2, rel=0.03)


def test_time_runs_evenly_and_pump_outs_empty_the_tank() -> None:
    picture = history.describe(given_.judged(), given_.CHECKS, given_.PUMP_OUTS, given_.WORDS["history"])
    days = [picture.first, *picture.emptied, picture.today, picture.last]
    shares = [picture.share(day) for day in days]
    assert shares == sorted(shares)
    assert (shares[0], shares[-1]) == (0, 1)
    before, after = picture.band(picture.emptied[1]), picture.band(picture.emptied[1].replace(day=30))
    assert before is not None
    assert after is not None
    assert after.sludge[1] < before.sludge[1] / 3
    for band in picture.bands:
        assert list(band.sludge) == sorted(band.sludge)
        assert list(band.scum) == sorted(band.scum)


def test_limits_are_drawn_though_nothing_was_read_yet() -> None:
    picture = history.describe(given_.judged(checks=[]), [], given_.PUMP_OUTS, given_.WORDS["history"])
    assert {limit.name for limit in picture.limits} == {"crust limit", "sludge limit"}
