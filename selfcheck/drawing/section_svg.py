"""The section as SVG: to scale along the tank, with tees, compartments, error bands and the layers of last time."""

from __future__ import annotations

from itertools import pairwise

from selfcheck.drawing.section_beside import below, end_view, labels
from selfcheck.drawing.section_frame import GROUND, LABELS, THICK, Frame
from selfcheck.drawing.section_picture import Band, SectionPicture, Units
from selfcheck.drawing.svg import SMALL, Element, path
from selfcheck.drawing.tones import (
    AIR,
    CRUST_EDGE,
    INK,
    LIMIT,
    PIPE,
    QUIET,
    SLUDGE_EDGE,
    WALL,
    WALL_EDGE,
    WATER,
    WATER_LINE,
)  # fmt: skip

_PIPE_M = 0.1  # the usual drain pipe, four inches
_INLET_TEE = 0.25  # how far the house-side tee is drawn into the water, as a share of its depth


class _Section(Frame):
    def draw(self) -> str:
        sheet, picture = self.sheet, self.picture
        inside = self.side()
        bottom = self.floor + 18
        sheet.add("rect", x=0.0, y=GROUND, width=LABELS - 8, height=bottom - GROUND, fill=sheet.fill("earth"))
        sheet.line([(0, GROUND), (LABELS - 8, GROUND)], QUIET, 1.2)
        self._lid()
        sheet.add("path", d=path(inside, True), stroke=WALL, stroke_width=2 * THICK, stroke_linejoin="round")
        sheet.add("path", d=path(inside, True), fill=AIR)
        group = sheet.clip("inside", path(inside, True))
        left, right = self.middle - self.reach_most(), self.middle + self.reach_most()
        edges = [left, *(left + (right - left) * share for share in picture.walls), right]
        surface = self.y(picture.liquid_depth)
        sheet.add("rect", group, x=left, y=surface, width=right - left, height=self.floor - surface, fill=WATER)
        sheet.add("path", group, d=path([(left, surface), (right, surface)]), stroke=WATER_LINE, stroke_width=1.4)
        self._chamber(group, edges[0], edges[1], picture.scum, picture.sludge)
        if picture.second is not None and len(edges) > 2:
            self._chamber(group, edges[1], edges[2], picture.second.scum, picture.second.sludge)
        self._last(group, edges[0], edges[1])
        self._limits(group, edges[0], edges[1])
        self._inner_walls(group, edges[1:-1])
        sheet.add("path", d=path(inside, True), fill="none", stroke=WALL_EDGE, stroke_width=1.0)
        self._pipes()
        self._unknown(edges)
        bottom = max(bottom, labels(self)) + 8
        bottom = below(self, bottom)
        if self.round:
            bottom = end_view(self, bottom)
        return sheet.finish(bottom + 6)

    def _lid(self) -> None:
        """The way up from the house-side tee to the ground, with its cover."""
        x = self.middle - self.reach_most() * 0.62
        deep = self.y(self.picture.liquid_depth) - GROUND  # the tank is drawn over the lower end
        self.sheet.add("rect", x=x - 16, y=GROUND, width=32.0, height=deep, fill=WALL)
        self.sheet.add("rect", x=x - 12, y=GROUND, width=24.0, height=deep, fill=AIR)
        self.sheet.add("rect", x=x - 20, y=GROUND - 7, width=40.0, height=7.0, rx=1.5, fill=WALL_EDGE)
        self.sheet.text(x, GROUND - 13, self.words.lid, anchor="middle", colour=QUIET, size=SMALL)

    def _chamber(self, group: Element, left: float, right: float, scum: Band | None, sludge: Band | None) -> None:
        sheet, width = self.sheet, right - left
        if scum is not None and scum.thickness > 0:
            top, low = self.y(scum.top), self.y(scum.bottom)
            low = max(low, top + 1.5)
            sheet.add("rect", group, x=left, y=top, width=width, height=low - top, fill=sheet.fill("crust"))
            sheet.add("path", group, d=path([(left, low), (right, low)]), stroke=CRUST_EDGE, stroke_width=1.2)
            self._doubt(group, left, right, scum.bottom, scum.error)
        if sludge is not None and sludge.thickness > 0:
            top = min(self.y(sludge.top), self.floor - 1.5)
            sheet.add("rect", group, x=left, y=top, width=width, height=self.floor - top, fill=sheet.fill("sludge"))
            sheet.add("path", group, d=path([(left, top), (right, top)]), stroke=SLUDGE_EDGE, stroke_width=1.2)
            self._doubt(group, left, right, sludge.top, sludge.error)

    def _doubt(self, group: Element, left: float, right: float, edge: float, error: float) -> None:
        """The stretch in which an edge lies, two times in three."""
        if error <= 0:
            return
        high, low = self.y(edge + error), self.y(edge - error)
        self.sheet.add(
            "rect", group, x=left, y=high, width=right - left, height=low - high,
            fill=self.sheet.fill("doubt"), opacity="0.55",
        )  # fmt: skip

    def _last(self, group: Element, left: float, right: float) -> None:
        """Three sides of each layer of last time: the fourth is the floor, or the crust's top."""
        picture = self.picture
        left, right = left + 3, right - 3
        edges = []
        if picture.last_sludge:
            edges.append((0.0, picture.last_sludge))
        if picture.last_scum:
            edges.append(
                (picture.liquid_depth + picture.last_scum / 3, picture.liquid_depth - picture.last_scum * 2 / 3)
            )
        for start, edge in edges:
            line = path([(left, self.y(start)), (left, self.y(edge)), (right, self.y(edge)), (right, self.y(start))])
            self.sheet.add("path", group, d=line, fill="none", stroke=AIR, stroke_width=2.4, opacity="0.7")
            self.sheet.add("path", group, d=line, fill="none", stroke=INK, stroke_width=1.3, stroke_dasharray="6 3")

    def _limits(self, group: Element, left: float, right: float) -> None:
        for limit in self.picture.limits:
            y = self.y(limit.height)
            for colour, width in ((AIR, 4.0), (LIMIT, 2.0)):
                self.sheet.add(
                    "path", group, d=path([(left, y), (right, y)]), stroke=colour, stroke_width=width,
                    stroke_dasharray="0.1 5", stroke_linecap="round",
                )  # fmt: skip

    def _inner_walls(self, group: Element, places: list[float]) -> None:
        """Walls with an opening half way down, where the clear zone passes."""
        depth = self.picture.liquid_depth
        for x in places:
            for high, low in ((1.1 * depth, 0.62 * depth), (0.45 * depth, 0.0)):
                self.sheet.add(
                    "rect", group, x=x - 3, y=self.y(high), width=6.0, height=self.y(low) - self.y(high), fill=WALL,
                    stroke=WALL_EDGE, stroke_width=0.8,
                )  # fmt: skip

    def _pipes(self) -> None:
        picture, sheet = self.picture, self.sheet
        bore = max(5.0, min(14.0, _PIPE_M * self.scale))
        depth = picture.liquid_depth
        for side, lift in ((-1, bore * 0.45), (1, 0.0)):
            wall = self.middle + side * self.reach(depth)
            inner = wall - side * (bore * 0.8 + 5)
            level = self.y(depth) - lift
            outer = wall + side * (THICK + 10)
            foot = self.y(depth * (1 - _INLET_TEE)) if side < 0 else self.y(picture.outlet or 0.0)
            if picture.outlet is not None:
                top = level - bore * 1.9
                sheet.add(
                    "rect", x=inner - bore / 2, y=top, width=bore, height=max(4.0, foot - top), fill=PIPE,
                    fill_opacity="0.72", stroke=INK, stroke_width=1.1,
                )  # fmt: skip
            start, end = sorted((outer, inner - side * bore / 2 if picture.outlet is None else inner + side * bore / 2))
            sheet.add("rect", x=start, y=level - bore, width=end - start, height=bore, fill=PIPE, stroke=INK,
                      stroke_width=1.1)  # fmt: skip

    def _unknown(self, edges: list[float]) -> None:
        chambers = [(self.picture.scum, self.picture.sludge)]
        if self.picture.second is not None:
            chambers.append((self.picture.second.scum, self.picture.second.sludge))
        for (left, right), (scum, sludge) in zip(pairwise(edges), chambers, strict=False):
            for band, y in ((scum, self.y(self.picture.liquid_depth) + 18), (sludge, self.floor - 6)):
                if band is None:
                    self.sheet.text((left + right) / 2, y, self.words.unknown, anchor="middle", bold=True, size=15.0)


def as_svg(picture: SectionPicture, units: Units = "us", prefix: str = "tank") -> str:
    """The section as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    return _Section(picture, units, prefix).draw()
