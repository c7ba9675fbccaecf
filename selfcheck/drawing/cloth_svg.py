"""The cloth as SVG: poles side by side, to scale in height."""

from __future__ import annotations

from selfcheck.drawing.cloth import ClothPicture, Stain, as_words
from selfcheck.drawing.lengths import Units, number, unit, with_error
from selfcheck.drawing.svg import SMALL, WIDTH, Sheet, path, spread, text_width, wrap
from selfcheck.drawing.tones import AIR, INK, LIMIT, QUIET, SLUDGE_EDGE, WALL, WATER_LINE
from selfcheck.drawing.words import say

_TOP, _HIGH = 30.0, 260.0
_LABELS = 246.0
_CLOTH_HALF, _POLE_HALF = 17.0, 5.0


class _Cloth:
    def __init__(self, picture: ClothPicture, units: Units, prefix: str) -> None:
        self.picture, self.units, self.words = picture, units, picture.words
        self.sheet = Sheet(prefix, say(self.words, "title"), as_words(picture, units))
        self.floor = _TOP + _HIGH
        self.scale = _HIGH / picture.top

    def y(self, height: float) -> float:
        return self.floor - height * self.scale

    def draw(self) -> str:
        sheet, picture = self.sheet, self.picture
        stains: tuple[Stain | None, ...] = picture.stains or (None,)
        each = (_LABELS - 16) / len(stains)
        sheet.add("rect", x=4.0, y=self.floor, width=_LABELS - 14, height=9.0, fill=WALL)
        for index, stain in enumerate(stains):
            self._pole(4 + each * (index + 0.5), each, index, stain)
        bottom = max(self.floor + 50, self._marks())
        if not picture.stains:
            sheet.text(8, bottom, say(self.words, "not_read"), size=SMALL)
            bottom += 16
        if any(picture.above(stain) for stain in picture.stains):
            for line in wrap(say(self.words, "above"), WIDTH - 16, SMALL, 2):
                bottom += 4
                sheet.text(8, bottom + 6, line, size=SMALL, colour=LIMIT, bold=True)
                bottom += 14
        return sheet.finish(bottom + 4)

    def _pole(self, x: float, each: float, index: int, stain: Stain | None) -> None:
        sheet, picture = self.sheet, self.picture
        sheet.add(
            "rect", x=x - _POLE_HALF, y=_TOP, width=2 * _POLE_HALF, height=_HIGH, fill=sheet.fill("pole"),
            stroke=QUIET, stroke_width=0.8,
        )  # fmt: skip
        top = self.y(picture.cloth)
        cloth = self._outline(x, top)
        sheet.add("path", d=cloth, fill=sheet.fill("cloth"))
        group = sheet.clip(f"cloth-{index}", cloth)
        wet = picture.wet[index]
        if wet is not None:
            high, texture = self.y(min(wet, picture.cloth)), sheet.fill("wet_cloth")
            sheet.add("rect", group, x=x - 30, y=high, width=60.0, height=self.floor - high, fill=texture)
        if stain is not None and stain.height > 0:
            sheet.add("path", group, d=self._ragged(x, self.y(stain.height)), fill=sheet.fill("sludge"),
                      stroke=SLUDGE_EDGE, stroke_width=1.0)  # fmt: skip
        sheet.add("path", d=cloth, fill="none", stroke=QUIET, stroke_width=1.2)
        for share in (0.33, 0.7):  # the cloth is tied to the pole
            y = top + 8 + (self.floor - top) * share * 0.2
            sheet.line([(x - _CLOTH_HALF, y), (x + _CLOTH_HALF, y + 3)], QUIET, 1.6)
        if wet is not None:
            sheet.line([(x - _CLOTH_HALF - 5, self.y(wet)), (x + _CLOTH_HALF + 5, self.y(wet))], WATER_LINE, 2.0)
        if len(picture.stains) > 1:
            name = say(self.words, "reading", number=str(index + 1))
            sheet.text(x, 18, name, anchor="middle", size=SMALL, colour=QUIET, most=each - 4)
        if stain is not None:
            self._whisker(x + _CLOTH_HALF + 8, stain)
            said = with_error(stain.height, stain.error, self.units)
            lines = [said] if text_width(said, SMALL) * 1.08 < each - 4 else said.replace(" ±", "\n±").split("\n")
            for number_of, line in enumerate(lines):
                sheet.text(
                    x, self.floor + 25 + 15 * number_of, line, anchor="middle", size=SMALL, bold=True, most=each - 2
                )

    def _outline(self, x: float, top: float) -> str:
        left, right = x - _CLOTH_HALF, x + _CLOTH_HALF
        return (
            path([(left, self.floor), (left, top + 3)])
            + f"Q{x - 8:.1f} {top - 3:.1f} {x:.1f} {top + 1:.1f}T{right:.1f} {top + 2:.1f}"
            + f"L{right:.1f} {self.floor:.1f}Z"
        )

    def _ragged(self, x: float, top: float) -> str:
        """The stain's upper edge as a cloth soaks it up: a low wave, its middle at the height that was read."""
        left, right = x - _CLOTH_HALF - 2, x + _CLOTH_HALF + 2
        return (
            f"M{left:.1f} {self.floor + 2:.1f}L{left:.1f} {top:.1f}"
            f"q4.5 -2.6 9 0t9 0t9 0t9 0t9 0L{right:.1f} {self.floor + 2:.1f}Z"
        )

    def _whisker(self, x: float, stain: Stain) -> None:
        high, low = self.y(stain.height + stain.error), self.y(max(0.0, stain.height - stain.error))
        for points in (((x, high), (x, low)), ((x - 3, high), (x + 3, high)), ((x - 3, low), (x + 3, low))):
            self.sheet.line(points, INK, 1.4)

    def _marks(self) -> float:
        """The marks and the wet line with name and height, joined to their places."""
        picture, sheet = self.picture, self.sheet
        wet = next((level for level in reversed(picture.wet) if level is not None), None)
        wanted = [
            (height, name, colour, dashes)
            for height, name, colour, dashes in (
                (wet, "wet_line", WATER_LINE, ""),
                (picture.full, "full_short", QUIET, "6 4"),
                (picture.book, "book_short", LIMIT, "0.1 5"),
            )
            if height is not None
        ]
        wanted.sort(key=lambda mark: -mark[0])
        tops = spread([(self.y(height), 36.0) for height, *_ in wanted], 10.0)
        for (height, name, colour, dashes), top in zip(wanted, tops, strict=True):
            y = self.y(height)
            if name != "wet_line":
                for tone, width in ((AIR, 4.0), (colour, 2.0)) if name == "book_short" else ((colour, 1.2),):
                    line = sheet.line([(6, y), (_LABELS - 12, y)], tone, width, dashes)
                    line.set("stroke-linecap", "round")
            sheet.line([(_LABELS - 12, y), (_LABELS - 3, top + 17)], colour, 1.0)
            ink = colour if name == "book_short" else INK
            sheet.text(_LABELS, top + 14, say(self.words, name), size=SMALL, bold=True, colour=ink)
            sheet.text(_LABELS, top + 30, f"{number(height, self.units)} {unit(self.units)}", size=SMALL, colour=ink)
        return max((top + 40 for top in tops), default=0.0)


def as_svg(picture: ClothPicture, units: Units = "us", prefix: str = "cloth") -> str:
    """The cloth as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    return _Cloth(picture, units, prefix).draw()
