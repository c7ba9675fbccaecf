"""The history as SVG: the tank drawn out in time."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from selfcheck.domain.forecast import Band
from selfcheck.drawing.history import HistoryPicture, as_words, count, due_lines, reading_name
from selfcheck.drawing.lengths import METRES_PER_INCH, Units, number, unit
from selfcheck.drawing.svg import SMALL, WIDTH, Sheet, path, text_width, wrap
from selfcheck.drawing.tones import AIR, CRUST_EDGE, FAINT, INK, LIMIT, QUIET, SLUDGE_EDGE, WATER, WATER_LINE
from selfcheck.drawing.words import say

_LEFT, _RIGHT = 40.0, WIDTH - 8
_TOP, _FLOOR = 30.0, 236.0
_ABOVE = 1.1  # drawn height as a share of the liquid depth
_CROWDED = 30  # more readings than this stand closer than their marks are wide. Our choice
_TICKS_M = {"us": 12 * METRES_PER_INCH, "metric": 0.25}

Points = list[tuple[float, float]]


class _History:
    def __init__(self, picture: HistoryPicture, units: Units, prefix: str) -> None:
        self.picture, self.units, self.words = picture, units, picture.words
        self.sheet = Sheet(prefix, say(self.words, "title"), as_words(picture, units))
        self.scale = (_FLOOR - _TOP) / (picture.liquid_depth * _ABOVE)
        self.crowded = len(picture.readings) > _CROWDED

    def x(self, day: date) -> float:
        return _LEFT + (_RIGHT - _LEFT) * min(1.0, max(0.0, self.picture.share(day)))

    def y(self, height: float) -> float:
        return min(_FLOOR, max(_TOP, _FLOOR - height * self.scale))

    def draw(self) -> str:
        picture, sheet = self.picture, self.sheet
        surface = self.y(picture.liquid_depth)
        sheet.add("rect", x=_LEFT, y=_TOP, width=_RIGHT - _LEFT, height=_FLOOR - _TOP, fill=AIR)
        sheet.add("rect", x=_LEFT, y=surface, width=_RIGHT - _LEFT, height=_FLOOR - surface, fill=WATER)
        sheet.line([(_LEFT, surface), (_RIGHT, surface)], WATER_LINE, 1.0)
        self._depths()
        self._past()
        self._ahead()
        self._limits()
        self._changes()
        self._readings()
        sheet.line([(_LEFT, _TOP), (_LEFT, _FLOOR), (_RIGHT, _FLOOR), (_RIGHT, _TOP)], QUIET, 1.2)
        self._years()
        bottom = self._people(_FLOOR + 38)
        bottom = self._due(bottom + 14)
        return sheet.finish(self._key(bottom + 8) + 6)

    def _depths(self) -> None:
        step = _TICKS_M[self.units]
        while self.picture.liquid_depth / step > 6:
            step *= 2
        for at in range(int(self.picture.liquid_depth * 1.001 / step) + 1):
            y = self.y(at * step)
            self.sheet.line([(_LEFT - 4, y), (_LEFT, y)], QUIET)
            self.sheet.text(_LEFT - 6, y + 4, number(at * step, self.units), anchor="end", size=SMALL, colour=QUIET)
        self.sheet.text(_LEFT - 6, _TOP - 6, unit(self.units), anchor="end", size=SMALL, colour=QUIET)

    def _edge(self, bands: Sequence[Band], height: Callable[[Band], float]) -> Points:
        return [(self.x(band.day), self.y(height(band))) for band in bands]

    def _fill(self, upper: Points, lower: Points, texture: str) -> None:
        if len(upper) > 1:
            self.sheet.add("path", d=path([*upper, *reversed(lower)], True), fill=self.sheet.fill(texture))

    def _past(self) -> None:
        """What the readings and rates say of the time behind, pump-out by pump-out."""
        picture = self.picture
        bands = [band for band in picture.bands if band.day <= picture.today]
        top = self._edge(bands, lambda band: picture.crust_edge(band.scum[1]) + band.scum[1])
        low = self._edge(bands, lambda band: picture.crust_edge(band.scum[1]))
        self._fill(top, low, "crust")
        sludge = self._edge(bands, lambda band: band.sludge[1])
        self._fill(sludge, [(x, _FLOOR) for x, _ in sludge], "sludge")
        self.sheet.line(low, CRUST_EDGE, 1.2)
        self.sheet.line(sludge, SLUDGE_EDGE, 1.2)

    def _ahead(self) -> None:
        """The likely range from today on: to its near edge as a layer, from there to its far edge as doubt."""
        picture = self.picture
        bands = [band for band in picture.bands if band.day >= picture.today]
        sludge = [[(self.x(band.day), self.y(band.sludge[at])) for band in bands] for at in range(3)]
        crust = [[(self.x(band.day), self.y(picture.crust_edge(band.scum[at]))) for band in bands] for at in range(3)]
        top = self._edge(bands, lambda band: picture.crust_edge(band.scum[1]) + band.scum[1])
        self._fill(sludge[0], [(x, _FLOOR) for x, _ in sludge[0]], "sludge_ahead")
        self._fill(top, crust[0], "crust_ahead")
        ranges = ((sludge, "doubt", SLUDGE_EDGE), (crust, "doubt_above", CRUST_EDGE))
        for (low, middle, high), texture, colour in ranges:
            self._fill(high, low, texture)
            self.sheet.line(low, colour, 0.8)
            self.sheet.line(high, colour, 0.8)
            self.sheet.line(middle, INK, 1.5, "5 3")
        x = self.x(picture.today)
        self.sheet.line([(x, _TOP), (x, _FLOOR)], INK, 1.0)

    def _limits(self) -> None:
        for limit in self.picture.limits:
            y = self.y(limit.height)
            for colour, width in ((AIR, 4.0), (LIMIT, 2.0)):
                line = self.sheet.line([(_LEFT + 2, y), (_RIGHT - 2, y)], colour, width, "0.1 5")
                line.set("stroke-linecap", "round")
            self._tag(_LEFT + 6, y - 5, limit.name, LIMIT)

    def _tag(self, x: float, y: float, words: str, colour: str) -> None:
        """Words on a strip of paper, so that no texture runs through them."""
        room = text_width(words, SMALL)
        self.sheet.add("rect", x=x - 2, y=y - 11, width=room + 2, height=14.0, fill=AIR, opacity="0.8", rx=2.0)
        self.sheet.text(x, y, words, size=SMALL, colour=colour)

    def _changes(self) -> None:
        """Pump-outs: the tank opens at the top. People: a dashed line down to their row."""
        free = 0.0
        for day, _ in self.picture.people[1:]:
            x = self.x(day)
            self.sheet.line([(x, _TOP), (x, _FLOOR + 42)], QUIET, 1.0, "2 3")
        for day in self.picture.emptied:
            x = self.x(day)
            self.sheet.add("path", d=path([(x - 5, _TOP - 9), (x + 5, _TOP - 9), (x, _TOP - 1)], True), fill=INK)
            self.sheet.line([(x, _TOP), (x, _FLOOR)], INK, 1.0)
            words = say(self.words, "pumped")
            room = text_width(words, SMALL)
            start = min(max(_LEFT, x - room / 2), _RIGHT - room)
            if start > free:
                self.sheet.text(start, _TOP - 13, words, size=SMALL)
                free = start + room + 6
        words = say(self.words, "today")
        room = text_width(words, SMALL)
        start = min(self.x(self.picture.today) - room / 2, _RIGHT - room)
        if start > free:
            self.sheet.text(start, _TOP - 5, words, size=SMALL)

    def _readings(self) -> None:
        """Each with its error; crowded ones as thin lines, so that the layers stay to be seen."""
        self.crowded = len(self.picture.readings) > _CROWDED
        for one in self.picture.readings:
            x = self.x(one.on)
            if one.sludge is not None:
                self._reading(x, one.sludge.value, one.sludge.error)
            if one.scum is not None:
                self._reading(x, self.picture.crust_edge(one.scum.value), one.scum.error * 2 / 3)

    def _reading(self, x: float, height: float, error: float) -> None:
        high, low = self.y(height + error), self.y(height - error)
        if self.crowded:
            self.sheet.line([(x, high), (x, low)], INK, 0.7)
            self.sheet.add("circle", cx=x, cy=self.y(height), r=1.6, fill=INK, stroke=AIR, stroke_width=0.7)
            return
        for colour, width in ((AIR, 3.6), (INK, 1.4)):
            self.sheet.line([(x - 3.5, high), (x + 3.5, high)], colour, width)
            self.sheet.line([(x - 3.5, low), (x + 3.5, low)], colour, width)
            self.sheet.line([(x, high), (x, low)], colour, width)
        self.sheet.add("circle", cx=x, cy=self.y(height), r=2.5, fill=INK, stroke=AIR, stroke_width=1.2)

    def _years(self) -> None:
        free = 0.0
        room = text_width("2000", SMALL)
        for year in range(self.picture.first.year, self.picture.last.year + 1):
            day = date(year, 1, 1)
            if not self.picture.first <= day <= self.picture.last:
                continue
            x = self.x(day)
            self.sheet.line([(x, _FLOOR), (x, _FLOOR + 4)], QUIET)
            start = min(x - room / 2, _RIGHT - room)
            if start >= free:
                self.sheet.text(start, _FLOOR + 17, str(year), size=SMALL, colour=QUIET)
                free = start + room + 6

    def _people(self, y: float) -> float:
        people = self.picture.people
        if not people:
            return y - 14
        free = 0.0
        for day, number_of in people:
            x = self.x(day)
            self.sheet.line([(x, y + 4), (x, y - 8)], QUIET, 1.2)
            words = say(self.words, "people", count=count(number_of))
            start = min(x + 4, _RIGHT - text_width(words, SMALL))
            if start < free:
                words = count(number_of)
                start = min(x + 4, _RIGHT - text_width(words, SMALL))
            if start >= free:
                self.sheet.text(start, y, words, size=SMALL)
                free = start + text_width(words, SMALL) + 4
        self.sheet.line([(_LEFT, y + 4), (_RIGHT, y + 4)], FAINT, 1.0)
        return y + 8

    def _due(self, y: float) -> float:
        due = self.picture.due
        self.sheet.text(_LEFT - 6, y + 5, say(self.words, "due"), anchor="end", size=SMALL, bold=True, colour=LIMIT)
        if due.p10 is not None:
            picture = self.picture
            start, end = self.x(due.p10), self.x(due.p90) if due.p90 is not None else _RIGHT
            self.sheet.line([(start, y), (max(end, start + 2), y)], LIMIT, 2.4)
            early = due.p10 < picture.first
            late = due.p90 is None or due.p90 > picture.last
            tips = ((start, 6 if early else 0), (end, -6 if late else 0))
            for x, back in tips:
                self.sheet.line([(x + back, y - 7), (x, y), (x + back, y + 7)], LIMIT, 2.0)
            if due.p50 is not None and picture.first <= due.p50 <= picture.last:
                x = self.x(due.p50)
                diamond = path([(x, y - 6), (x + 5, y), (x, y + 6), (x - 5, y)], True)
                self.sheet.add("path", d=diamond, fill=LIMIT, stroke=AIR, stroke_width=1.2)
        y += 8
        for line in due_lines(self.picture):
            for part in wrap(line, WIDTH - 16, SMALL, 2):
                y += 16
                self.sheet.text(8, y, part, size=SMALL)
        return y

    def _key(self, y: float) -> float:
        """What the textures and marks are."""
        x = 8.0
        for texture, name in (("crust", "crust"), ("sludge", "sludge")):
            self.sheet.add("rect", x=x, y=y + 3, width=20.0, height=11.0, fill=self.sheet.fill(texture), stroke=QUIET,
                           stroke_width=0.8)  # fmt: skip
            self.sheet.text(x + 25, y + 13, say(self.words, name), size=SMALL, most=70)
            x += 100
        y += 18
        self._plain_mark(18, y + 8)
        self.sheet.text(33, y + 13, reading_name(self.picture, "reading_mark"), size=SMALL)
        y += 18
        for number_of, line in enumerate(wrap(say(self.words, "ahead"), WIDTH - 40, SMALL, 2)):
            if number_of == 0:
                self.sheet.add("rect", x=8.0, y=y + 3, width=20.0, height=11.0, fill=self.sheet.fill("doubt"),
                               stroke=QUIET, stroke_width=0.8)  # fmt: skip
            self.sheet.text(33, y + 13, line, size=SMALL)
            y += 16
        return y

    def _plain_mark(self, x: float, y: float) -> None:
        for points in (
            [(x, y - 6), (x, y + 6)],
            [(x - 3.5, y - 6), (x + 3.5, y - 6)],
            [(x - 3.5, y + 6), (x + 3.5, y + 6)],
        ):
            self.sheet.line(points, INK, 1.4)
        self.sheet.add("circle", cx=x, cy=y, r=2.5, fill=INK)


def as_svg(picture: HistoryPicture, units: Units = "us", prefix: str = "history") -> str:
    """The history as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    return _History(picture, units, prefix).draw()
