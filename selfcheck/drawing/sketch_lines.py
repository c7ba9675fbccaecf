"""The sketch drawn with characters. A cell is taken to be twice as high as it is wide."""

from __future__ import annotations

from selfcheck.domain.locate import Point
from selfcheck.drawing.lengths import Units, on_a_tape
from selfcheck.drawing.sketch import SketchPicture, lid_name, remarks, tapes
from selfcheck.drawing.spans import Grid, Line, Role, Span, cells, clipped, filled, wrapped
from selfcheck.drawing.words import say

_LEAST_WIDTH, _LEAST_ROWS, _MOST_ROWS = 36, 6, 15
_WALL, _CORNER, _TAPE, _LID, _MIRROR = "═", "■", "·", "●", "×"


def as_lines(picture: SketchPicture, width: int, height: int, units: Units) -> list[Line]:
    """At most `height` lines of exactly `width` cells: the plan where there is room, then what is to be said."""
    if width < 1 or height < 1:
        return []
    said = [line for text in remarks(picture, units) for line in wrapped(text, width)]
    rows = min(height - len(said) - 1, _MOST_ROWS)
    if picture.lid is not None and picture.apart is not None and width >= _LEAST_WIDTH and rows >= _LEAST_ROWS:
        lines = _plan(picture, picture.lid, picture.apart, width, rows, units).lines()
        lines.append([Span(" " * width)])
    else:
        told = [line for text in tapes(picture, units) if text is not None for line in wrapped(text, width)]
        lines = [[Span(filled(line, width), "label")] for line in told]
    lines += [[Span(filled(line, width), "plain")] for line in said]
    return lines[:height]


def _plan(picture: SketchPicture, lid: Point, apart: float, width: int, rows: int, units: Units) -> Grid:
    grid = Grid(width, rows)
    above = (rows - 2) // 2 if picture.two_places else 2
    below = min(above, rows - above - 1)
    least, most = min(0.0, lid.x), max(apart, lid.x)
    scale = min((width - 16) / max(most - least, 1e-6), 2 * below / max(-lid.y, 1e-6))
    left = round((width - (most - least) * scale) / 2 - least * scale)
    a, b = (left, above), (left + round(apart * scale), above)
    deep = round(-lid.y * scale / 2) if picture.two_places else 0
    spot = (left + round(lid.x * scale), above + deep)
    other = (spot[0], above - deep)
    known = bool(picture.side)
    if picture.two_places:
        for corner in (a, b):
            _line(grid, corner, other, "'", "plain")
    for corner in (a, b):
        _line(grid, corner, spot, _TAPE, "label")
    grid.put(a[0], above, _WALL * (b[0] - a[0] + 1), "wall")
    for x, y in (a, b):
        grid.put(x, y, _CORNER, "wall")
    _names(grid, picture, a, b, on_a_tape(apart, units))
    _lengths(grid, picture, (a, b), spot, units)
    if picture.two_places:
        name = say(picture.words, "mirror" if known else "either")
        _point(grid, other, _MIRROR if known else "?", name, "limit" if known else "label")
        _point(
            grid, spot, _LID if known else "?", lid_name(picture) if known else say(picture.words, "either"), "label"
        )
    else:
        grid.put(*spot, _LID, "label")
        _put(grid, spot[0], above + 2, say(picture.words, "lid"), "label")
    return grid


def _lengths(
    grid: Grid, picture: SketchPicture, corners: tuple[tuple[int, int], tuple[int, int]], spot: tuple[int, int],
    units: Units,
) -> None:  # fmt: skip
    """What each tape shows: outside of the two tapes, half way along; below them where they lie on the wall."""
    for corner, metres, outward in zip(corners, (picture.from_first, picture.from_second), (-1, 1), strict=True):
        text = on_a_tape(metres or 0.0, units)
        x, y = (corner[0] + spot[0]) // 2, (corner[1] + spot[1] + 1) // 2
        if picture.two_places:
            _put(grid, x - cells(text) - 1 if outward < 0 else x + 2, y, text, "label")
        else:
            _put(grid, x - cells(text) // 2, y + 1, text, "label")


def _names(grid: Grid, picture: SketchPicture, a: tuple[int, int], b: tuple[int, int], apart: str) -> None:
    """Each corner's name outside of it where it fits, else above it; and how far apart they are."""
    middle = max(10, min(grid.width - 10, (a[0] + b[0]) // 2))
    fits = a[0] - cells(picture.first) - 1 >= 0 and b[0] + 2 + cells(picture.second) <= grid.width
    first, second = picture.first, picture.second
    if fits:
        _put(grid, a[0] - cells(first) - 1, a[1], first, "label")
        _put(grid, b[0] + 2, b[1], second, "label")
    else:
        first, second = clipped(first, middle - 2), clipped(second, grid.width - middle - 2)
        _put(grid, min(middle - 2 - cells(first), a[0]), a[1] - 1, first, "label")
        _put(grid, max(middle + 2, b[0] - cells(second) + 1), b[1] - 1, second, "label")
    on_the_wall = picture.two_places and cells(apart) + 4 <= b[0] - a[0]
    line = a[1] if on_the_wall else a[1] - (1 if fits else 2)
    _put(grid, (a[0] + b[0] - cells(apart)) // 2 - 1, line, f" {apart} ", "label")


def _point(grid: Grid, spot: tuple[int, int], sign: str, name: str, role: Role) -> None:
    x, y = spot
    grid.put(x, y, sign, role)
    name = clipped(name, max(grid.width - x - 2, x - 1))
    _put(grid, x + 2 if x + 2 + cells(name) <= grid.width else x - 1 - cells(name), y, name, role)


def _put(grid: Grid, x: int, y: int, text: str, role: Role) -> None:
    grid.put(max(0, min(x, grid.width - cells(text))), y, text, role)


def _line(grid: Grid, start: tuple[int, int], end: tuple[int, int], sign: str, role: Role) -> None:
    steps = max(abs(end[0] - start[0]), abs(end[1] - start[1]), 1)
    for step in range(1, steps):
        x = start[0] + (end[0] - start[0]) * step / steps
        y = start[1] + (end[1] - start[1]) * step / steps
        grid.put(round(x), round(y), sign, role)
