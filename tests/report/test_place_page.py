"""The page after a search: the plan cannot miss a tank, and the place is told in words and drawn."""

from __future__ import annotations

import re

import pytest

from selfcheck.domain.conversions import FOOT, INCH
from selfcheck.domain.locate import TopDepth, pipe_depth, search, step_down, top_depth
from selfcheck.loading import content_place, sources, texts
from selfcheck.report.parts import PageWords
from selfcheck.report.place import Plan, place_page

PLACE = content_place(own=False)
WORDS = PageWords("words/place_page.toml", texts(PLACE, "place_page"))


def page_for(units: str, width: float | None = None, marked: bool = False) -> str:
    found = search(width)
    depths = tuple((strip.far, top_depth(pipe_depth(0.45, strip.far))) for strip in found.strips)
    page = place_page((), (), Plan(found, depths, marked), WORDS, sources(PLACE), units)  # type: ignore[arg-type]
    return "\n".join([page.headline, *(line for one in page.parts for line in (one.title, *one.lines))])


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_plan_tells_every_strip_likeliest_first_with_steps_and_depths(units: str) -> None:
    told = page_for(units)
    rows = [line for line in told.splitlines() if line.startswith("From ")]
    assert len(rows) == len(search().strips)
    assert ("10 ft (3.0 m)" if units == "us" else "3.0 m (10 ft)") in rows[0]
    assert "wait for its marks" in told
    assert told.count("Source: ") == 3
    assert "our choice" in told


def test_what_is_told_is_rounded_to_the_careful_side() -> None:
    for width in (1.0, 1.27, 1.524, 2.0):
        found = search(width)
        assert step_down(found.point_step) <= found.point_step + 1e-9
        assert found.point_step - step_down(found.point_step) < INCH
        told = page_for("us", width)
        for strip, row in zip(found.strips, (one for one in told.splitlines() if one.startswith("From ")), strict=True):
            side = re.search(r"and (\d+) ft", row)
            assert side is not None
            assert int(side[1]) * FOOT >= strip.half_width
    with pytest.raises(ValueError, match="grain"):
        step_down(1.0, 0.0)


def test_marked_ground_is_not_asked_for_again() -> None:
    assert "The ground is marked" in page_for("us", marked=True)


def test_a_known_place_is_told_and_drawn() -> None:
    page = place_page(["The lid is 17 ft from the corner."], ["a  b"], None, WORDS, sources(PLACE), "us")
    assert page.drawn == ("a  b",)
    assert "on record" in page.headline
    assert any("stays shut" in line for one in page.parts for line in one.lines)
    assert "not on record" in place_page((), (), None, WORDS, sources(PLACE), "us").headline


@pytest.mark.parametrize(("units", "most"), [("us", "1 in"), ("metric", "2 cm")])
def test_a_top_right_at_the_ground_is_told_in_one_sentence_without_a_depth_of_nothing(units: str, most: str) -> None:
    page = place_page((), (), Plan(search(None), ((3.0, TopDepth(0.0, 0.0, 0.0)),), False), WORDS, {}, units)  # type: ignore[arg-type]
    (depths,) = (one.lines for one in page.parts if one.title == WORDS("title", "depths"))
    assert f"just under the grass, no more than {most}" in depths[0]
    assert not any(re.search(r"\b0 (in|cm)", line) for line in depths)
