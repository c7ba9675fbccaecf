"""The sketch as SVG: the wall between the corners, two tapes, the lid, and the other point where they meet."""

from __future__ import annotations

from selfcheck.domain.locate import Point
from selfcheck.drawing.lengths import Units, on_a_tape
from selfcheck.drawing.sketch import SketchPicture, as_words, lid_name, remarks, tapes
from selfcheck.drawing.svg import SMALL, TEXT, WIDTH, Sheet, text_width, wrap
from selfcheck.drawing.tones import AIR, INK, LIMIT, PAPER, PIPE, QUIET, WALL_EDGE
from selfcheck.drawing.words import say

_MARGIN = 46.0
_WIDE, _DEEP = WIDTH - 2 * _MARGIN, 170.0  # room for corners and lid; a mirror point takes as much above
_HOUSE = 34.0
_TAPE = "#b5822f"


class _Sketch:
    def __init__(self, picture: SketchPicture, units: Units, prefix: str) -> None:
        self.picture, self.units, self.words = picture, units, picture.words
        self.sheet = Sheet(prefix, say(self.words, "title"), as_words(picture, units))

    def draw(self) -> str:
        if self.picture.lid is not None and self.picture.apart is not None:
            bottom = self._plan(self.picture.lid, self.picture.apart)
        else:
            bottom = self._tapes_alone()
        for remark in remarks(self.picture, self.units):
            for line in wrap(remark, WIDTH - 16, SMALL, 3):
                bottom += 16
                self.sheet.text(8, bottom, line, size=SMALL)
            bottom += 3
        return self.sheet.finish(bottom + 8)

    def _tapes_alone(self) -> float:
        y = 4.0
        for told in tapes(self.picture, self.units):
            if told is not None:
                for line in wrap(told, (WIDTH - 16) / 1.08, TEXT, 3):
                    y += 18
                    self.sheet.text(8, y, line, bold=True)
        return y

    def _plan(self, lid: Point, apart: float) -> float:
        sheet, picture = self.sheet, self.picture
        least, most = min(0.0, lid.x), max(apart, lid.x)
        scale = min(_WIDE / max(most - least, 1e-6), _DEEP / max(-lid.y, 1e-6))
        left = (WIDTH - (most - least) * scale) / 2 - least * scale
        deep = -lid.y * scale
        wall = max(58.0 + _HOUSE, deep + 40) if picture.two_places else 58.0 + _HOUSE
        corner_a, corner_b = (left, wall), (left + apart * scale, wall)
        spot, mirror = (left + lid.x * scale, wall + deep), (left + lid.x * scale, wall - deep)
        sheet.add("rect", x=corner_a[0], y=wall - _HOUSE, width=corner_b[0] - corner_a[0], height=_HOUSE,
                  fill=sheet.fill("house"), opacity="0.7")  # fmt: skip
        known = bool(picture.side)
        if picture.two_places:
            for corner in (corner_a, corner_b):
                sheet.line([corner, mirror], QUIET, 1.2, "3 5")
        sheet.line([corner_a, corner_b], WALL_EDGE, 5.0)
        for corner in (corner_a, corner_b):
            sheet.line([corner, spot], INK, 4.2)
            sheet.line([corner, spot], _TAPE, 2.6)
            sheet.line([corner, spot], INK, 2.6, "1 11")
        self._lengths(corner_a, corner_b, spot)
        self._corners(corner_a, corner_b, apart)
        if picture.two_places:
            self._other(mirror, known)
        self._lid(spot, known or not picture.two_places)
        return spot[1] + 34

    def _corners(self, a: tuple[float, float], b: tuple[float, float], apart: float) -> None:
        sheet, picture = self.sheet, self.picture
        for x, y in (a, b):
            sheet.add("rect", x=x - 5, y=y - 5, width=10.0, height=10.0, fill=INK)
        middle = min(max((a[0] + b[0]) / 2, 90.0), WIDTH - 90)
        for name, corner, least, most in (
            (picture.first, a, 8.0, middle - 6),
            (picture.second, b, middle + 6, WIDTH - 8),
        ):
            lines = wrap(name, (most - least) / 1.08, SMALL, 2)
            for number, line in enumerate(lines):
                room = text_width(line, SMALL) * 1.08
                start = max(least, min(corner[0] - room / 2, most - room))
                y = corner[1] - _HOUSE - 11 - 14 * (len(lines) - 1 - number)
                sheet.add("rect", x=start - 2, y=y - 11, width=room + 4, height=14.0, fill=PAPER, opacity="0.85")
                sheet.text(start, y, line, size=SMALL, bold=True, most=most - start + 1)
            sheet.line([(corner[0], corner[1] - _HOUSE - 7), (corner[0], corner[1] - 6)], INK, 0.9)
        self._tag((a[0] + b[0]) / 2, a[1] - 12, on_a_tape(apart, self.units))

    def _lengths(self, a: tuple[float, float], b: tuple[float, float], spot: tuple[float, float]) -> None:
        """What each tape shows, half way along it, side by side where the tapes run close together."""
        told = [on_a_tape(metres or 0.0, self.units) for metres in (self.picture.from_first, self.picture.from_second)]
        places = [(corner[0] + spot[0]) / 2 for corner in (a, b)]
        rooms = [text_width(text, SMALL) + 6 for text in told]
        apart = (rooms[0] + rooms[1]) / 2 + 8
        if places[1] - places[0] < apart:
            middle = sum(places) / 2
            places = [middle - apart / 2, middle + apart / 2]
        for text, x, corner in zip(told, places, (a, b), strict=True):
            self._tag(x, (corner[1] + spot[1]) / 2 + 4, text)

    def _tag(self, x: float, y: float, words: str) -> None:
        room = text_width(words, SMALL) + 6
        x = min(max(x, room / 2 + 3), WIDTH - room / 2 - 3)
        self.sheet.add("rect", x=x - room / 2, y=y - 12, width=room, height=16.0, rx=3.0, fill=AIR, opacity="0.92")
        self.sheet.text(x, y, words, anchor="middle", size=SMALL)

    def _lid(self, spot: tuple[float, float], sure: bool) -> None:
        x, y = spot
        self.sheet.add("circle", cx=x, cy=y, r=11.0, fill=WALL_EDGE if sure else AIR, stroke=INK, stroke_width=1.6)
        if sure:
            self.sheet.add("circle", cx=x, cy=y, r=7.0, fill="none", stroke=PIPE, stroke_width=1.2)
            name = wrap(lid_name(self.picture), WIDTH / 2, SMALL, 1)[0]
            if self.picture.two_places:
                self._beside(x, y, name, INK)
            else:  # the tapes lie at both sides of it
                self.sheet.text(x, y + 26, name, size=SMALL, anchor="middle", bold=True)
        else:
            self.sheet.text(x, y + 5, "?", anchor="middle", bold=True)
            self._beside(x, y, say(self.words, "either"), INK)

    def _other(self, spot: tuple[float, float], known: bool) -> None:
        x, y = spot
        self.sheet.add("circle", cx=x, cy=y, r=11.0, fill=AIR, stroke=LIMIT if known else INK, stroke_width=1.6,
                       stroke_dasharray="4 3")  # fmt: skip
        if known:
            for way in (-1, 1):
                self.sheet.line([(x - 5, y - 5 * way), (x + 5, y + 5 * way)], LIMIT, 2.0)
            self._beside(x, y, say(self.words, "mirror"), LIMIT)
        else:
            self.sheet.text(x, y + 5, "?", anchor="middle", bold=True)
            self._beside(x, y, say(self.words, "either"), INK)

    def _beside(self, x: float, y: float, words: str, colour: str) -> None:
        """A name at the side of a point that has more room."""
        room = text_width(words, SMALL) * 1.08
        right = x + 17 + room < WIDTH - 4
        start = x + 15 if right else x - 15 - room
        self.sheet.add("rect", x=start - 2, y=y - 9, width=room + 4, height=17.0, rx=3.0, fill=AIR, opacity="0.9")
        self.sheet.text(start, y + 4.5, words, size=SMALL, bold=True, colour=colour)


def as_svg(picture: SketchPicture, units: Units = "us", prefix: str = "place") -> str:
    """The sketch as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    return _Sketch(picture, units, prefix).draw()
