"""The section as SVG: to scale along the tank, with tees, compartments, error bands and the layers of last time."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from selfcheck.drawing.lengths import with_error
from selfcheck.drawing.section_form import Outline
from selfcheck.drawing.section_picture import Band, SectionPicture, Units
from selfcheck.drawing.section_words import as_words, last_time
from selfcheck.drawing.svg import SMALL, TEXT, WIDTH, Element, Sheet, path, spread, wrap
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
)

_MOST_WIDE, _MOST_HIGH = 196.0, 214.0  # room for the inside of the tank
_LEFT = 20.0  # inner face of the wall at the house side, at its widest
_GROUND, _ROOF = 34.0, 58.0  # level of the ground, and of the inside of the roof
_THICK = 6.0  # drawn thickness of walls; not to scale, since it is not known
_LABELS = 240.0
_PIPE_M = 0.1  # the usual drain pipe, four inches
_PROPORTION = 1.8  # length to height where no outline is known
_INLET_TEE = 0.25  # how far the house-side tee is drawn into the water, as a share of its depth
_END_HIGH = 96.0


@dataclass(frozen=True, slots=True)
class _Label:
    y: float
    lines: tuple[tuple[str, bool], ...]
    colour: str
    start: float  # where its leader begins
    dashes: str = ""

    @property
    def height(self) -> float:
        return 16.0 * len(self.lines) + 5


class _Section:
    def __init__(self, picture: SectionPicture, units: Units, prefix: str) -> None:
        words = picture.words
        self.picture, self.units, self.words = picture, units, words
        self.sheet = Sheet(prefix, words.title, (f"{line}." for line in as_words(picture, units)))
        top = picture.inside_height
        half = top * _PROPORTION / 2
        self.outline: Outline = picture.outline or tuple(
            (top * step / (len(picture.half_widths) - 1), half, half * share)
            for step, share in enumerate(picture.half_widths)
        )
        longest = max(max(along for _, along, _ in self.outline), 1e-6)
        self.scale = min(_MOST_WIDE / (2 * longest), _MOST_HIGH / top)
        self.middle = _LEFT + _MOST_WIDE / 2
        self.floor = _ROOF + top * self.scale

    def y(self, height: float) -> float:
        return self.floor - max(-0.2, min(height, 1.5 * self.picture.inside_height)) * self.scale

    def reach(self, height: float) -> float:
        """Half of the drawn inside length at a height."""
        before = self.outline[0]
        for point in self.outline:
            if point[0] >= height:
                span = point[0] - before[0]
                share = (height - before[0]) / span if span > 0 else 1.0
                return (before[1] + (point[1] - before[1]) * share) * self.scale
            before = point
        return self.outline[-1][1] * self.scale

    def draw(self) -> str:
        sheet, picture = self.sheet, self.picture
        inside = self._side()
        bottom = self.floor + 18
        sheet.add("rect", x=0.0, y=_GROUND, width=_LABELS - 8, height=bottom - _GROUND, fill=sheet.fill("earth"))
        sheet.line([(0, _GROUND), (_LABELS - 8, _GROUND)], QUIET, 1.2)
        self._lid()
        sheet.add("path", d=path(inside, True), stroke=WALL, stroke_width=2 * _THICK, stroke_linejoin="round")
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
        bottom = max(bottom, self._labels()) + 8
        bottom = self._sides(bottom)
        if any(abs(across - self.outline[0][2]) > 1e-9 for _, _, across in self.outline):
            bottom = self._end(bottom)
        return sheet.finish(bottom + 6)

    def reach_most(self) -> float:
        return max(along for _, along, _ in self.outline) * self.scale

    def _side(self) -> list[tuple[float, float]]:
        right = [(self.middle + along * self.scale, self.y(height)) for height, along, _ in self.outline]
        return right + [(2 * self.middle - x, y) for x, y in reversed(right)]

    def _lid(self) -> None:
        """The way up from the house-side tee to the ground, with its cover."""
        x = self.middle - self.reach_most() * 0.62
        deep = self.y(self.picture.liquid_depth) - _GROUND  # the tank is drawn over the lower end
        self.sheet.add("rect", x=x - 16, y=_GROUND, width=32.0, height=deep, fill=WALL)
        self.sheet.add("rect", x=x - 12, y=_GROUND, width=24.0, height=deep, fill=AIR)
        self.sheet.add("rect", x=x - 20, y=_GROUND - 7, width=40.0, height=7.0, rx=1.5, fill=WALL_EDGE)
        self.sheet.text(x, _GROUND - 13, self.words.lid, anchor="middle", colour=QUIET, size=SMALL)

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
            outer = wall + side * (_THICK + 10)
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

    def _labels(self) -> float:
        """The labels beside the tank, joined to their places; returns how far down they reach."""
        labels = sorted(self._wanted(), key=lambda label: label.y)
        tops = spread([(label.y, label.height) for label in labels], 12.0)
        for label, top in zip(labels, tops, strict=True):
            middle = top + label.height / 2
            self.sheet.line([(label.start, label.y), (_LABELS - 12, label.y), (_LABELS - 3, middle)],
                            label.colour if label.dashes else QUIET, 1.0, label.dashes)  # fmt: skip
            for number, (text, bold) in enumerate(label.lines):
                y = top + 15.5 + 16 * number
                self.sheet.text(_LABELS, y, text, bold=bold, colour=label.colour, size=TEXT if bold else SMALL)
        return max((top + label.height for label, top in zip(labels, tops, strict=True)), default=0.0)

    def _wanted(self) -> list[_Label]:
        picture, words, depth = self.picture, self.words, self.picture.liquid_depth
        room = WIDTH - _LABELS - 2
        wall = self.middle + self.reach_most() + _THICK

        def layer(name: str, band: Band | None, otherwise: float) -> _Label:
            height = (band.top + band.bottom) / 2 if band is not None else otherwise
            height = min(max(height, 0.0), picture.inside_height)
            says = words.not_known if band is None else words.nothing
            if band is not None and band.thickness > 0:
                says = with_error(band.thickness, band.error, self.units)
            return _Label(self.y(height), ((name, True), (says, False)), INK, wall)

        labels = [
            layer(words.crust, picture.scum, depth),
            layer(words.clear, picture.clear, depth * 0.45),
            layer(words.sludge, picture.sludge, 0.0),
        ]
        if picture.outlet is not None:
            lines = (words.outlet_edge, *([f"({words.assumed})"] if picture.outlet_assumed else []))
            labels.append(_Label(self.y(picture.outlet), tuple((line, False) for line in lines), QUIET, wall - 8))
        for limit in picture.limits:
            name = tuple((line, False) for line in wrap(limit.name, room, SMALL, 2))
            labels.append(_Label(self.y(limit.height), name, LIMIT, wall, "1.5 3"))
        return labels

    def _sides(self, top: float) -> float:
        """Which way the water runs, and what last time's outlines are."""
        self.sheet.text(4, top + 8, f"← {self.words.house_side}", size=SMALL, colour=QUIET, most=116)
        self.sheet.text(
            _LABELS - 8, top + 8, f"{self.words.field_side} →", size=SMALL, colour=QUIET, anchor="end", most=116
        )
        top += 16
        if last := last_time(self.picture, self.units):
            self.sheet.add("rect", x=4.0, y=top + 2, width=20.0, height=10.0, fill="none", stroke=INK, stroke_width=1.2,
                           stroke_dasharray="6 3")  # fmt: skip
            for number, line in enumerate(wrap(last, WIDTH - 34, SMALL, 2)):
                self.sheet.text(30, top + 12 + 16 * number, line, size=SMALL)
                top += 16
        return top

    def _end(self, top: float) -> float:
        """The same tank seen from its end, smaller, in its own true shape."""
        sheet, picture = self.sheet, self.picture
        widest = max(across for _, _, across in self.outline)
        scale = min(_END_HIGH / picture.inside_height, 150 / (2 * widest))
        middle, floor = self.middle, top + 14 + picture.inside_height * scale
        points = [(middle + across * scale, floor - height * scale) for height, _, across in self.outline]
        points += [(middle - across * scale, floor - height * scale) for height, _, across in reversed(self.outline)]
        sheet.add("path", d=path(points, True), fill=AIR, stroke=WALL, stroke_width=8.0, stroke_linejoin="round")
        group = sheet.clip("end", path(points, True))
        bands: list[tuple[float, float, str]] = [(0.0, picture.liquid_depth, WATER)]
        if picture.scum is not None and picture.scum.thickness > 0:
            bands.append((picture.scum.bottom, picture.scum.top, sheet.fill("crust")))
        if picture.sludge is not None and picture.sludge.thickness > 0:
            bands.append((0.0, picture.sludge.top, sheet.fill("sludge")))
        for low, high, fill in bands:
            sheet.add("rect", group, x=middle - widest * scale, y=floor - high * scale, width=2 * widest * scale,
                      height=max(0.0, high - low) * scale, fill=fill)  # fmt: skip
        sheet.add("path", d=path(points, True), fill="none", stroke=WALL_EDGE, stroke_width=1.0)
        for number, line in enumerate(wrap(self.words.end_view, WIDTH - _LABELS - 2, SMALL, 2)):
            sheet.text(_LABELS, floor - 16 + 16 * number, line, size=SMALL, colour=QUIET)
        return floor + 10


def as_svg(picture: SectionPicture, units: Units = "us", prefix: str = "tank") -> str:
    """The section as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    return _Section(picture, units, prefix).draw()
