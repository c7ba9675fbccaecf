"""The surfaces drawn: with characters, and as SVG."""

from __future__ import annotations

from selfcheck.drawing.patches import Mark, Patch, PatchesPicture, as_words
from selfcheck.drawing.spans import Grid, Line, Role
from selfcheck.drawing.svg import SMALL, WIDTH, Sheet, path, wrap
from selfcheck.drawing.tones import INK, LIMIT, QUIET
from selfcheck.drawing.words import say

_SWATCH = 12  # cells
_MARKS: dict[Mark, str] = {"healthy": "○", "look": "△", "call": "■"}
#: two rows of each texture, and the role that colours it
_CELLS: dict[str, tuple[str, str, Role]] = {
    "brown": ("▒░▒▒░▒", "░▒▒░▒▒", "scum"),
    "no_crust": ("~  ~  ", "  ~  ~", "water"),
    "black": ("▓▓▓▓▓▓", "▓▓▓▓▓▓", "sludge"),
    "pale_grey": ("░  ░  ", "   ░  ", "label"),
    "sound": ("      ", "   .  ", "wall"),
    "damp_white": ("░ ░░ ░", "░░ ░ ░", "wall"),
    "pitted": ("o . o ", " . o .", "wall"),
    "crumbling": ("/\\ _/\\", "_/\\/ \\", "wall"),
    "steel_showing": ("══╪═══", "  │  ╵", "wall"),
}


def as_lines(picture: PatchesPicture, width: int, height: int) -> list[Line]:
    """At most `height` lines of exactly `width` cells: two for each surface, with a gap where there is room."""
    each = 3 if height >= 3 * len(picture.patches) - 1 else 2
    grid = Grid(width, min(height, each * len(picture.patches) - (each - 2)))
    for index, patch in enumerate(picture.patches):
        top = each * index
        upper, lower, role = _CELLS[patch.id]
        edge = "┃" if patch.seen else "│"
        for line, cells in ((top, upper), (top + 1, lower)):
            grid.put(0, line, edge, "label")
            grid.put(1, line, (cells * _SWATCH)[: _SWATCH - 2], role)
            grid.put(_SWATCH - 1, line, edge, "label")
        name = f"{_MARKS[patch.mark]} {say(picture.words, patch.id)} · {say(picture.words, patch.mark)}"
        if patch.seen:
            name += f" · {say(picture.words, 'seen')}"
        grid.put(_SWATCH + 2, top, name, "limit" if patch.mark == "call" else "label")
        grid.put(_SWATCH + 4, top + 1, say(picture.words, f"{patch.id}_means"), "plain")
    return grid.lines()


_LEFT, _WIDE, _HIGH, _STEP = 8.0, 116.0, 58.0, 72.0
_TEXT = 138.0


def as_svg(picture: PatchesPicture, prefix: str) -> str:
    """One swatch below the other, each with its sign, its name and what it means beside it."""
    sheet = Sheet(prefix, say(picture.words, f"title_{picture.topic}"), as_words(picture))
    for index, patch in enumerate(picture.patches):
        _patch(sheet, picture, patch, 8 + _STEP * index)
    return sheet.finish(8 + _STEP * len(picture.patches) - 4)


def _patch(sheet: Sheet, picture: PatchesPicture, patch: Patch, y: float) -> None:
    words = picture.words
    sheet.add(
        "rect", x=_LEFT, y=y, width=_WIDE, height=_HIGH, rx=5.0, fill=sheet.fill(patch.id),
        stroke=INK if patch.seen else QUIET, stroke_width=3.0 if patch.seen else 1.0,
    )  # fmt: skip
    name = f"{say(words, patch.id)} · {say(words, 'seen')}" if patch.seen else say(words, patch.id)
    sheet.text(_TEXT, y + 14, name, size=14.0, bold=True)
    colour = LIMIT if patch.mark == "call" else INK
    _sign(sheet, patch.mark, _TEXT + 6, y + 27, colour)
    sheet.text(_TEXT + 18, y + 31, say(words, patch.mark), size=SMALL, colour=colour)
    for number, line in enumerate(wrap(say(words, f"{patch.id}_means"), WIDTH - _TEXT - 4, SMALL, 2)):
        sheet.text(_TEXT, y + 47 + 14 * number, line, size=SMALL, colour=QUIET)


def _sign(sheet: Sheet, mark: Mark, x: float, y: float, colour: str) -> None:
    """A ring, a triangle or a filled square: what to do, told apart by form."""
    if mark == "healthy":
        sheet.add("circle", cx=x, cy=y, r=4.6, fill="none", stroke=colour, stroke_width=2.0)
    elif mark == "look":
        triangle = path([(x - 5.5, y + 4.5), (x + 5.5, y + 4.5), (x, y - 5)], True)
        sheet.add("path", d=triangle, fill="none", stroke=colour, stroke_width=2.0)
    else:
        sheet.add("rect", x=x - 5, y=y - 5, width=10.0, height=10.0, fill=colour)
