"""The section drawn with characters: texture first, labels beside it, partial rows in eighths."""

from __future__ import annotations

from dataclasses import replace

from selfcheck.drawing.layer_cells import scum_cell, sludge_cell
from selfcheck.drawing.lengths import Units
from selfcheck.drawing.section_labels import apart, labels
from selfcheck.drawing.section_picture import (
    Band,
    Chamber,
    LimitLine,
    SectionPicture,
    SectionWords,
    between,
    describe,
)
from selfcheck.drawing.section_words import as_one_line, as_words, last_time, read_then, second_part
from selfcheck.drawing.spans import Grid, Line, Role, Span, filled

__all__ = [
    "Band",
    "Chamber",
    "LimitLine",
    "SectionPicture",
    "SectionWords",
    "as_lines",
    "as_one_line",
    "as_svg",
    "as_words",
    "between",
    "describe",
]

_DOTS = "┄"
_LABEL_WIDTH = 19
_TEE_WIDTH = 3
_LEAST_WIDTH, _LEAST_HEIGHT = 16, 7
_MOST_ROWS = 18


def as_lines(picture: SectionPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The tank as at most `height` lines of exactly `width` cells.

    With fewer than 16 × 7 cells there is no room for a picture and the one-line form stands in, cut to the width.
    """
    if width < _LEAST_WIDTH or height < _LEAST_HEIGHT:
        return [[Span(as_one_line(picture, units)[:width].ljust(width), "label")]][: max(height, 0)]
    return _Drawing(picture, width, height, units).lines()


def as_svg(picture: SectionPicture, units: Units = "us", prefix: str = "tank") -> str:
    """The section as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    from selfcheck.drawing.section_svg import as_svg as draw  # a terminal does without it

    return draw(picture, units, prefix)


class _Drawing:
    def __init__(self, picture: SectionPicture, width: int, height: int, units: Units) -> None:
        self.picture = picture
        self.units = units
        self.footer = _footer(picture, width, units)
        self.beside = width >= _LEAST_WIDTH + _LABEL_WIDTH
        self.rows = min(height - 2 - len(self.footer), _MOST_ROWS)
        self.left, self.right = 1, (width - _LABEL_WIDTH if self.beside else width) - 2  # columns of the widest walls
        self.grid = Grid(width, self.rows + 2)
        self.step = picture.inside_height / self.rows

    def lines(self) -> list[Line]:
        self._walls()
        self._layers()
        self._limits()
        self._inner_walls()
        self._tees()
        self._unknowns()
        self._marks_of_last_time()
        if self.beside:
            self._labels()
        return self.grid.lines() + self.footer

    def _row(self, height: float) -> int:
        """The grid line in which a height above the floor lies."""
        down = (self.picture.inside_height - height) / self.step + 1e-9  # endless in a tank of next to no height
        return 1 + int(max(0.0, min(self.rows - 1.0, down)))

    def _inside(self, line: int) -> tuple[int, int]:
        """First and last column inside the walls on one line."""
        widths = self.picture.half_widths
        share = (self.rows - line + 0.5) / self.rows
        width = widths[min(len(widths) - 1, int(share * (len(widths) - 1) + 0.5))]
        half = (self.right - self.left) / 2
        inset = round(half * (1 - max(0.3, width)))
        return self.left + 1 + inset, self.right - 1 - inset

    def _walls(self) -> None:
        top_first, top_last = self._inside(1)
        low_first, low_last = self._inside(self.rows)
        lid = f"╡ {self.picture.words.lid} ╞"
        self.grid.put(top_first, 0, "═" * (top_last - top_first + 1), "wall")
        self.grid.put((top_first + top_last - len(lid)) // 2 + 1, 0, lid, "wall")
        self.grid.put(top_first - 1, 0, "╔", "wall")
        self.grid.put(top_last + 1, 0, "╗", "wall")
        for line in range(1, self.rows + 1):
            first, last = self._inside(line)
            above = self._inside(line - 1)[0] if line > 1 else first
            left, right = ("║", "║") if first == above else ("╱", "╲") if first < above else ("╲", "╱")
            self.grid.put(first - 1, line, left, "wall")
            self.grid.put(last + 1, line, right, "wall")
            if first < above:
                self._shoulder(line - 1, first, above - 1, "▁")
            elif first > above:
                self._shoulder(line, above, first - 1, "▔")
        bottom = self.rows + 1
        self.grid.put(low_first, bottom, "═" * (low_last - low_first + 1), "wall")
        self.grid.put(low_first - 1, bottom, "╚", "wall")
        self.grid.put(low_last + 1, bottom, "╝", "wall")

    def _shoulder(self, line: int, start: int, end: int, character: str) -> None:
        """The flat stretch of a wall that moves by more than one cell from one line to the next, on both sides."""
        for x in range(start, end):
            self.grid.put(x, line, character, "wall")
            self.grid.put(self.left + self.right - x, line, character, "wall")

    def _layers(self) -> None:
        picture = self.picture
        surface = self._row(picture.liquid_depth - 1e-6)
        for line in range(1, self.rows + 1):
            first, last = self._inside(line)
            top = picture.inside_height - (line - 1) * self.step
            low = top - self.step
            role: Role = "air" if line < surface else "clear"
            character = " "
            if picture.scum is None and line == surface:
                character, role = "─", "water"
            if found := scum_cell(picture.scum, low, top):
                character, role = found
            if found := sludge_cell(picture.sludge, low, top):
                character, role = found
            self.grid.put(first, line, character * (last - first + 1), role)
            self._second(line, first, last, low, top)

    def _second(self, line: int, first: int, last: int, low: float, top: float) -> None:
        """The part behind the first inner wall, which has layers of its own."""
        picture = self.picture
        if not picture.walls or picture.second is None:
            return
        x = self._wall_at(picture.walls[0], first, last)
        surface = self._row(picture.liquid_depth - 1e-6)
        role: Role = "air" if line < surface else "clear"
        character = " "
        if picture.second.scum is None and line == surface:
            character, role = "─", "water"
        found = sludge_cell(picture.second.sludge, low, top) or scum_cell(picture.second.scum, low, top)
        character, role = found or (character, role)
        self.grid.put(x, line, character * (last - x + 1), role)

    def _wall_at(self, share: float, first: int, last: int) -> int:
        return first + max(1, min(last - first - 1, round((last - first) * share)))

    def _inner_walls(self) -> None:
        """Walls between compartments, with an opening half way down, where the clear zone passes."""
        depth = self.picture.liquid_depth
        opening = self._row(depth * 0.55)
        for share in self.picture.walls:
            for line in range(self._row(depth * 1.1), self.rows + 1):
                if line != opening:
                    self.grid.put(self._wall_at(share, *self._inside(line)), line, "│", "wall")

    def _limits(self) -> None:
        for limit in self.picture.limits:
            line = self._row(limit.height)
            first, last = self._inside(line)
            end = self._wall_at(self.picture.walls[0], first, last) if self.picture.walls else last + 1
            self.grid.put(first, line, _DOTS * (end - first), "limit_line")
            if self.beside:
                self.grid.put(last + 2, line, _DOTS, "limit")

    def _tees(self) -> None:
        picture = self.picture
        if picture.outlet is None:
            return
        pipe = self._row(picture.liquid_depth)
        top = max(1, pipe - 1)
        foot = max(pipe + 1, self._row(picture.outlet + 1e-6))
        first, last = self._inside(pipe)
        if last - first < 3 * _TEE_WIDTH:
            return
        surface = self._row(picture.liquid_depth - 1e-6)
        for line in range(top, foot + 1):
            for x in (first + 1, last - _TEE_WIDTH):
                self.grid.put(x, line, "│ │", "tee" if line >= surface else "wall")
        self.grid.put(first - 2, pipe, "══", "wall")
        self.grid.put(first, pipe, "═╡", "tee")
        self.grid.put(last - 1, pipe, "╞═", "tee")
        self.grid.put(last + 1, pipe, "══", "wall")
        if self.beside:
            edge = self._inside(foot)[1]
            self.grid.put(edge, foot, _DOTS, "tee")
            self.grid.put(edge + 2, foot, _DOTS * (self.right + 2 - edge - 1), "plain")

    def _unknowns(self) -> None:
        picture = self.picture
        first, last = self._inside(self.rows)
        walls = [self._wall_at(share, first, last) for share in picture.walls]
        edges = [first, *walls, last]
        parts = [(picture.scum, picture.sludge)]
        if picture.second is not None and walls:
            parts.append((picture.second.scum, picture.second.sludge))
        for left, right, (scum, sludge) in zip(edges, edges[1:], parts, strict=False):
            middle = (left + right) // 2
            if scum is None:
                self.grid.put(middle, self._row(picture.liquid_depth - self.step), picture.words.unknown, "unknown")
            if sludge is None:
                self.grid.put(middle, self.rows, picture.words.unknown, "unknown")

    def _marks_of_last_time(self) -> None:
        picture = self.picture
        heights = []
        if picture.last_sludge is not None:
            heights.append(picture.last_sludge)
        if picture.last_scum is not None:
            heights.append(picture.liquid_depth - picture.last_scum * 2 / 3)
        for height in heights:
            line = self._row(height)
            self.grid.put(self._inside(line)[0] - 1, line, "╟", "last")

    def _labels(self) -> None:
        wanted = labels(self.picture, self.units, self.step)
        for label in apart([replace(one, row=self._row(one.height)) for one in wanted], self.rows):
            self.grid.put(self.right + 3, label.row, label.text, label.role)


def _footer(picture: SectionPicture, width: int, units: Units) -> list[Line]:
    said: tuple[tuple[str, Role, str], ...] = (
        (" ╟ ", "last", last_time(picture, units)),
        ("   ", "plain", read_then(picture, units)),
        (" │ ", "wall", second_part(picture, units)),
    )
    return [[Span(sign, role), Span(filled(text, width - 3), "plain")] for sign, role, text in said if text]
