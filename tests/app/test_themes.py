"""Colours: text stands out from its ground, layers differ in grey, and without colour nothing is lost."""

from __future__ import annotations

import os
from unittest.mock import patch

import pytest
from textual.color import Color

from selfcheck.app.themes import PALETTES, PARTS, Palette, colours
from tests.app.fakes import FakeSitting, app_of, painted, running

#: parts that carry no words: lines and textures
WITHOUT_WORDS = {"line", "scum", "scum_edge", "sludge", "sludge_edge"}


def lightness(colour: str) -> float:
    """Relative luminance as in WCAG 2.1, from 0 to 1."""
    channels = [part / 255 for part in Color.parse(colour).rgb]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Contrast ratio as in WCAG 2.1, from 1 to 21."""
    light, dark = sorted((lightness(one), lightness(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_measure_itself() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # the well-known grey just short of 4.5


@pytest.mark.parametrize("part", [part for part in PARTS if part not in WITHOUT_WORDS])
@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda palette: palette.name)
def test_text_stands_out(palette: Palette, part: str) -> None:
    ink, ground, _ = colours(palette, part)
    assert contrast(ink, ground) >= 4.5


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda palette: palette.name)
def test_layers_differ_in_grey(palette: Palette) -> None:
    crust, pool, sludge = palette.crust_ground, palette.pool, palette.sludge
    assert contrast(palette.crust_edge, pool) >= 1.5
    assert contrast(palette.crust, crust) >= 1.7  # coarse: its grain shows
    assert contrast(palette.crust_edge, sludge) >= 1.5


async def test_without_colour_only_greys_are_sent() -> None:
    with patch.dict(os.environ, {"NO_COLOR": "1"}):
        app = app_of(FakeSitting())
        async with running(app, (120, 40)) as pilot:
            await pilot.press("1")
            await pilot.settle()
            strips = app.screen._compositor.render_strips()
            assert "▌ CAUTION" in "\n".join(painted(app))
    assert app.theme == "plain page"
    styles = [segment.style for strip in strips for segment in strip if segment.style is not None]
    used = {colour.get_truecolor() for style in styles for colour in (style.color, style.bgcolor) if colour is not None}
    assert len(used) > 3
    assert all(red == green == blue for red, green, blue in used)
