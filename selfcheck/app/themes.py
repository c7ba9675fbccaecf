"""Colours made of what the thing is made of: earth, water, cloth, pole. One dark page, one light, one plain.

Everything on a screen is a *part* (see `PARTS`). Parts differ in lightness and weight before they differ in hue, so a
page read in grey says the same. Text stands at 4.5 to 1 or more against its ground.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from rich.style import Style
from textual.theme import Theme

PARTS = (
    "text", "strong", "muted", "past", "said", "mark", "key", "chosen", "line", "stage", "open",
    "caution", "stop", "danger", "note", "help", "trouble", "band_calm", "band_soon", "band_now",
    "plain", "label", "scum", "scum_edge", "clear", "sludge", "sludge_edge", "water", "wall", "tee", "limit",
    "limit_line", "last", "earth", "air", "unknown",
)  # fmt: skip


class Palette(NamedTuple):
    """The colours of one page."""

    name: str
    dark: bool
    ground: str  # the page
    ink: str  # text
    quiet: str  # what was said before, hints
    water: str  # keys, the stage one is in
    straw: str  # a caution
    brick: str  # stop and danger
    rule: str  # lines that carry no words
    crust: str
    crust_ground: str
    crust_edge: str
    sludge: str
    sludge_ground: str
    sludge_edge: str
    pool: str  # the clear zone
    sky: str  # the air above it


DARK = Palette(
    name="dark page", dark=True, ground="#1c1a17", ink="#ebe4d4", quiet="#a79d8a", water="#8fc1cc", straw="#e3bd6a",
    brick="#f0967c", rule="#5d564a", crust="#e0c792", crust_ground="#6d5a3c", crust_edge="#a08a62",
    sludge="#54412f", sludge_ground="#2b2018", sludge_edge="#4a392a", pool="#203036", sky="#1c1a17",
)  # fmt: skip
LIGHT = Palette(
    name="light page", dark=False, ground="#f6f1e6", ink="#2a251d", quiet="#665d4d", water="#20596a", straw="#7a5200",
    brick="#9c2f14", rule="#b5ab97", crust="#8d6f35", crust_ground="#e9d9b2", crust_edge="#c9b283",
    sludge="#3d2f22", sludge_ground="#75604a", sludge_edge="#54422f", pool="#d9e8ea", sky="#f6f1e6",
)  # fmt: skip
PLAIN = Palette(
    name="plain page", dark=True, ground="#000000", ink="#ffffff", quiet="#b4b4b4", water="#ffffff", straw="#ffffff",
    brick="#ffffff", rule="#808080", crust="#ffffff", crust_ground="#606060", crust_edge="#b0b0b0",
    sludge="#505050", sludge_ground="#1c1c1c", sludge_edge="#484848", pool="#000000", sky="#000000",
)  # fmt: skip
PALETTES = {palette.name: palette for palette in (DARK, LIGHT, PLAIN)}
#: the phrase that names each page, and the page
CHOICES = (("dark_page", DARK.name), ("light_page", LIGHT.name), ("plain_page", PLAIN.name))


def themes() -> list[Theme]:
    """The three pages as textual themes."""
    return [_theme(palette) for palette in PALETTES.values()]


def _theme(palette: Palette) -> Theme:
    return Theme(
        name=palette.name,
        dark=palette.dark,
        primary=palette.water,
        secondary=palette.quiet,
        accent=palette.straw,
        warning=palette.straw,
        error=palette.brick,
        success=palette.water,
        foreground=palette.ink,
        background=palette.ground,
        surface=palette.ground,
        panel=palette.ground,
        text_alpha=1.0,
        variables={
            "rule": palette.rule,
            "quiet": palette.quiet,
            "text-disabled": palette.quiet,
            "text-muted": palette.quiet,
            "scrollbar": palette.rule,
            "scrollbar-background": palette.ground,
            "input-cursor-background": palette.ink,
            "input-cursor-foreground": palette.ground,
            "input-selection-background": palette.rule,
            "block-cursor-background": palette.ink,
            "block-cursor-foreground": palette.ground,
        },
    )


def colours(palette: Palette, part: str) -> tuple[str, str, str]:
    """Foreground, background and weight of a part; an empty weight is the ordinary one."""
    ground, ink = palette.ground, palette.ink
    table = {
        "strong": (ink, ground, "bold"),
        "muted": (palette.quiet, ground, ""),
        "past": (palette.quiet, ground, ""),
        "said": (ink, ground, ""),
        "mark": (palette.water, ground, "bold"),
        "key": (palette.water, ground, "bold"),
        "chosen": (ground, palette.water, "bold"),
        "line": (palette.rule, ground, ""),
        "stage": (palette.water, ground, "bold"),
        "open": (palette.straw, ground, "bold"),
        "caution": (palette.straw, ground, "bold"),
        "stop": (palette.brick, ground, "bold"),
        "danger": (ground, palette.brick, "bold"),
        "band_calm": (ground, palette.water, "bold"),
        "band_soon": (ground, palette.straw, "bold"),
        "band_now": (ground, palette.brick, "bold"),
        "note": (palette.water, ground, "bold"),
        "help": (palette.water, ground, ""),
        "trouble": (palette.straw, ground, ""),
        "plain": (palette.quiet, ground, ""),
        "scum": (palette.crust, palette.crust_ground, ""),
        "scum_edge": (palette.crust_edge, palette.pool, ""),
        "clear": (palette.quiet, palette.pool, ""),
        "sludge": (palette.sludge, palette.sludge_ground, ""),
        "sludge_edge": (palette.sludge_edge, palette.pool, ""),
        "water": (palette.water, palette.pool, ""),
        "wall": (palette.quiet, ground, ""),
        "tee": (palette.ink, palette.pool, ""),
        "limit": (palette.straw, ground, ""),
        "limit_line": (palette.straw, palette.pool, ""),
        "last": (palette.ink, ground, "bold"),
        "earth": (palette.quiet, ground, ""),
        "air": (palette.quiet, palette.sky, ""),
        "unknown": (palette.ink, palette.pool, "bold"),
    }
    return table.get(part, (ink, ground, ""))


@lru_cache(maxsize=256)
def style(theme: str, part: str) -> Style:
    """The style of a part on the page of that name; an unknown page counts as the dark one."""
    ink, ground, weight = colours(PALETTES.get(theme, DARK), part)
    return Style(color=ink, bgcolor=ground, bold=weight == "bold")
