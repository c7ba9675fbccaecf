"""The history drawn with characters: one column for a stretch of days, sludge below, crust above."""

from __future__ import annotations

from datetime import date, timedelta

from selfcheck.drawing.history import HistoryPicture, count, due_lines, reading_name, thinner
from selfcheck.drawing.layer_cells import scum_cell, sludge_cell
from selfcheck.drawing.lengths import Units, number, unit
from selfcheck.drawing.section_picture import Band as Layer
from selfcheck.drawing.spans import Grid, Line, Role
from selfcheck.drawing.words import say

_LEFT = 7  # cells for the depths
_LEAST_WIDTH, _LEAST_ROWS, _MOST_ROWS = 30, 5, 16
_AROUND = 4  # lines around the plot, before the key: marks above it, years, people, due
_EACH = 3  # columns for a reading; where they stand closer, fewer are drawn. Our choice
AHEAD, DOUBT, DOTS, READING, PUMPED = "▒", ":", "┄", "●", "▼"


def as_lines(picture: HistoryPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The history as at most `height` lines of exactly `width` cells; without the room for it, when it is due."""
    picture = thinner(picture, (width - _LEFT - 1) // _EACH)
    key = _key(picture, width)
    rows = min(height - _AROUND - len(key), _MOST_ROWS)
    if width < _LEAST_WIDTH or rows < _LEAST_ROWS:
        grid = Grid(width, max(0, min(height, len(due_lines(picture)))))
        for y, text in enumerate(due_lines(picture)):
            grid.put(0, y, text, "label")
        return grid.lines()
    return _Plot(picture, width, rows, key, units).lines()


_Named = tuple[str, str, Role]  # a sign, what it is called, how it is drawn


class _Plot:
    def __init__(self, picture: HistoryPicture, width: int, rows: int, key: list[list[_Named]], units: Units) -> None:
        self.picture, self.rows, self.key, self.units = picture, rows, key, units
        self.columns = width - _LEFT - 1
        self.grid = Grid(width, rows + _AROUND + len(key))
        self.top = picture.liquid_depth * 1.12
        self.step = self.top / rows

    def lines(self) -> list[Line]:
        self._layers()
        self._limits()
        self._depths()
        self._moments()
        self._readings()
        self._limit_names()
        self._years()
        self._people(self.rows + 2)
        self._due(self.rows + 3)
        self._put_key(self.rows + 4)
        return self.grid.lines()

    def _x(self, day: date) -> int:
        return _LEFT + max(0, min(self.columns - 1, round(self.picture.share(day) * (self.columns - 1))))

    def _day(self, column: int) -> date:
        picture = self.picture
        return picture.first + timedelta(
            days=round((picture.last - picture.first).days * column / max(1, self.columns - 1))
        )

    def _row(self, height: float) -> int:
        return 1 + max(0, min(self.rows - 1, int((self.top - height) / self.step + 1e-9)))

    def _layers(self) -> None:
        surface = self._row(self.picture.liquid_depth - 1e-6)
        for column in range(self.columns):
            day = self._day(column)
            band = self.picture.band(day)
            for line in range(1, self.rows + 1):
                top = self.top - (line - 1) * self.step
                role: Role = "air" if line < surface else "clear"
                character = "─" if line == surface else " "
                if line == surface:
                    role = "water"
                if band is not None:
                    found = self._cell(band.sludge, band.scum, top - self.step, top, day > self.picture.today)
                    character, role = found or (character, role)
                self.grid.put(_LEFT + column, line, character, role)

    def _cell(
        self, sludge: tuple[float, float, float], scum: tuple[float, float, float], low: float, top: float, ahead: bool
    ) -> tuple[str, Role] | None:
        edge = self.picture.crust_edge
        at = 0 if ahead else 1
        hung = Layer(edge(scum[at]), edge(scum[at]) + scum[at])
        if found := sludge_cell(Layer(0.0, sludge[at]), low, top):
            return (AHEAD if ahead and found[1] == "sludge" else found[0]), found[1]
        if found := scum_cell(hung, low, top):
            return found
        middle = (low + top) / 2
        if ahead and (sludge[0] < middle <= sludge[2] or edge(scum[2]) <= middle < edge(scum[0])):
            return DOUBT, "unknown"
        return None

    def _limits(self) -> None:
        for limit in self.picture.limits:
            line = self._row(limit.height)
            for x in range(_LEFT, _LEFT + self.columns):
                if self.grid.role_at(x, line) in ("clear", "air", "water"):
                    self.grid.put(x, line, DOTS, "limit_line")

    def _limit_names(self) -> None:
        for limit in self.picture.limits:
            self.grid.put(_LEFT + 1, self._row(limit.height), f" {limit.name} "[: self.columns - 2], "limit")

    def _depths(self) -> None:
        for height in (self.picture.liquid_depth, self.picture.liquid_depth / 2, 0.0):
            text = f"{number(height, self.units)} {unit(self.units)}"[: _LEFT - 1]
            self.grid.put(_LEFT - 1 - len(text), self._row(max(0.0, height - 1e-6)), text, "plain")

    def _moments(self) -> None:
        """Pump-outs and today, above the plot and down through it."""
        picture = self.picture
        today = self._x(picture.today)
        self._mark(today, say(picture.words, "today"), "│", "label")
        for day in picture.emptied:
            x = self._x(day)
            for line in range(1, self.rows + 1):
                self.grid.put(x, line, "│", "wall")
            self._mark(x, say(picture.words, "pumped"), PUMPED, "wall")
        for line in range(1, self.rows + 1):
            self.grid.put(today, line, "│", "label")

    def _mark(self, x: int, words: str, sign: str, role: Role) -> None:
        """A sign above the plot with its word beside it, where that is free."""
        self.grid.put(x, 0, sign, role)
        start = x + 1 if x + 1 + len(words) <= _LEFT + self.columns else x - len(words)
        if all(self.grid.role_at(at, 0) == "plain" for at in range(start, start + len(words))):
            self.grid.put(start, 0, words, role)

    def _readings(self) -> None:
        for one in self.picture.readings:
            x = self._x(one.on)
            heights = []
            if one.sludge is not None:
                heights.append((one.sludge.value, one.sludge.error))
            if one.scum is not None:
                heights.append((self.picture.crust_edge(one.scum.value), one.scum.error * 2 / 3))
            for height, error in heights:
                for line in range(self._row(height + error), self._row(max(0.0, height - error)) + 1):
                    self.grid.put(x, line, "┃", "label")
                self.grid.put(x, self._row(height), READING, "label")

    def _years(self) -> None:
        line, free = self.rows + 1, _LEFT
        for year in range(self.picture.first.year, self.picture.last.year + 1):
            day = date(year, 1, 1)
            x = self._x(day)
            if self.picture.first <= day <= self.picture.last and x >= free and x + 5 <= _LEFT + self.columns:
                self.grid.put(x, line, f"╵{year}", "plain")
                free = x + 6

    def _people(self, line: int) -> None:
        free = _LEFT
        for day, people in self.picture.people:
            x = self._x(day)
            text = say(self.picture.words, "people", count=count(people))
            if x + 1 + len(text) > _LEFT + self.columns:
                text = count(people)
            if x >= free:
                self.grid.put(x, line, f"╵{text}", "plain")
                free = x + len(text) + 2

    def _due(self, line: int) -> None:
        due, end = self.picture.due, _LEFT + self.columns - 1
        self.grid.put(1, line, say(self.picture.words, "due")[: _LEFT - 2], "limit")
        if due.p10 is None:
            self.grid.put(_LEFT, line, due_lines(self.picture)[0][: self.columns], "limit")
            return
        picture = self.picture
        start, stop = self._x(due.p10), self._x(due.p90) if due.p90 is not None else end
        self.grid.put(start, line, "─" * (stop - start + 1), "limit")
        self.grid.put(start, line, "├" if due.p10 >= picture.first else "◀", "limit")
        self.grid.put(stop, line, "┤" if due.p90 is not None and due.p90 <= picture.last else "▶", "limit")
        if due.p50 is not None and picture.first <= due.p50 <= picture.last:
            self.grid.put(self._x(due.p50), line, "◆", "limit")

    def _put_key(self, line: int) -> None:
        for below, named in enumerate(self.key):
            x = 1
            for sign, text, role in named:
                self.grid.put(x, line + below, sign, role)
                self.grid.put(x + 2, line + below, text, "plain")
                x += len(text) + 4


def _key(picture: HistoryPicture, width: int) -> list[list[_Named]]:
    """What the signs are, in as many lines as it takes."""
    signs: tuple[tuple[str, str, Role], ...] = (
        ("░", "crust", "scum"), ("▓", "sludge", "sludge"), (READING, "reading_short", "label"),
        (DOUBT, "ahead_short", "unknown"),
    )  # fmt: skip
    lines: list[list[_Named]] = []
    free = 0
    for sign, name, role in signs:
        text = reading_name(picture, name) if name == "reading_short" else say(picture.words, name)
        if not lines or free + 2 + len(text) > width:
            lines.append([])
            free = 1
        lines[-1].append((sign, text[: width - 3], role))
        free += len(text) + 4
    return lines
