"""The colours and textures of the pictures: earth, water, cloth, pole.

Every pair that stands for two different things differs in lightness and in texture, so the pictures read in grey. The
ground of a texture is its main colour; its grain is drawn on it.
"""

from __future__ import annotations

from dataclasses import dataclass

PAPER = "#fbf8f1"
AIR = "#fffdf8"
INK = "#2a251d"
QUIET = "#5f5646"  # text of less weight: 6.8 to 1 on paper
FAINT = "#b5ab97"  # lines that carry no words
LIMIT = "#9c2f14"
WALL = "#a89e8d"
WALL_EDGE = "#6d6455"
WATER = "#e3eff0"
WATER_LINE = "#3f7f8f"
CRUST_EDGE = "#8d6f35"
SLUDGE_EDGE = "#2f2218"
PIPE = "#f4f1ea"

Stroke = tuple[str, float]  # path data, stroke width


@dataclass(frozen=True, slots=True)
class Texture:
    """A tile of `size` × `size`: ground colour, grain colour, strokes, and dots as (x, y, radius)."""

    ground: str
    grain: str
    size: float
    strokes: tuple[Stroke, ...] = ()
    dots: tuple[tuple[float, float, float], ...] = ()


TEXTURES: dict[str, Texture] = {
    # coarse and light
    "crust": Texture(
        "#e2cd9c", "#8d6f35", 14, (("M1 4q3 -3 6 0", 1.4), ("M8 11q2.5 -2.5 5 0", 1.4)), ((10.5, 4, 1.0), (4, 9.5, 0.8))
    ),
    # dark and dense
    "sludge": Texture("#57422f", "#2f2218", 6, (), ((1.5, 1.5, 1.1), (4.5, 4.5, 1.1))),
    "sludge_ahead": Texture("#b39c83", "#7a6149", 6, (), ((1.5, 1.5, 0.8), (4.5, 4.5, 0.8))),
    "crust_ahead": Texture("#f1e6c9", "#b89d66", 14, (("M1 4q3 -3 6 0", 1.0), ("M8 11q2.5 -2.5 5 0", 1.0))),
    "earth": Texture("#ece2cf", "#c8b797", 18, (("M3 5l4 -2", 1.0), ("M11 13l4 -2", 1.0)), ((13, 4, 0.8),)),
    "doubt": Texture("none", "#2a251d", 5, (("M-1 6L6 -1", 0.9),)),
    "doubt_above": Texture("none", "#2a251d", 5, (("M-1 -1L6 6", 0.9),)),
    "cloth": Texture("#f7f2e6", "#d6ccb6", 6, (("M0 3H6", 0.7), ("M3 0V6", 0.7))),
    "wet_cloth": Texture("#d3dcd8", "#a9bab5", 6, (("M0 3H6", 0.9), ("M3 0V6", 0.9))),
    "pole": Texture("#cda56c", "#a47a45", 10, (("M3 0V10", 0.7), ("M7 0V10", 0.5))),
    "house": Texture("#e6ddd0", "#a89e8d", 12, (("M0 6H12", 1.0), ("M0 0H12", 1.0), ("M6 0V6", 1.0), ("M0 6V12", 1.0))),
    # surfaces and walls
    "brown": Texture("#a9824c", "#6f4f26", 14, (("M1 4q3 -3 6 0", 1.8), ("M8 11q2.5 -2.5 5 0", 1.8)), ((11, 4, 1.2),)),
    "pale_grey": Texture("#dfdedb", "#bdbbb6", 20, (("M2 6q4 3 8 0", 1.4), ("M10 15q4 3 8 0", 1.4))),
    "black": Texture("#2b2926", "#55514b", 16, (("M2 5q6 3 12 0", 1.2), ("M-2 13q6 3 12 0", 1.2))),
    "no_crust": Texture("#dbe9ea", "#7fa6ae", 26, (("M4 9q3 -3 6 0q3 3 6 0", 1.2), ("M12 20q3 -3 6 0q3 3 6 0", 1.2))),
    "sound": Texture("#bcb4a7", "#a59c8d", 22, (), ((5, 6, 0.9), (16, 14, 0.9), (9, 18, 0.6))),
    "damp_white": Texture("#958d81", "#f3f1ec", 24, (("M5 0q2 6 -1 12t1 12", 3.0), ("M17 0q-2 7 1 13t-1 11", 2.0))),
    "pitted": Texture("#b3aa9c", "#4a443b", 16, (), ((4, 4, 2.0), (12, 7, 1.4), (7, 12, 1.7), (14, 14, 1.0))),
    "crumbling": Texture(
        "#b3aa9c", "#3c362e", 26, (("M0 8l7 3l5 -5l6 6l8 -4", 1.7), ("M12 6l1 12l-6 8", 1.7), ("M13 18l9 8", 1.7))
    ),
    "steel_showing": Texture("#b3aa9c", "#5d2d18", 22, (("M0 11H22", 4.0), ("M4 11l2 9M15 11l-1 6", 1.6))),
}  # fmt: skip
