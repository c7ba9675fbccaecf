"""A sheet to draw on that becomes one self-contained SVG element.

It names no font, file or address outside itself, scales with the page by its viewBox, and carries a title and a
description. Sheets are 360 units wide, about a telephone's width, so that text of 12 units can be read on one.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from unicodedata import east_asian_width
from xml.etree import ElementTree as ET

from selfcheck.drawing.tones import INK, PAPER, TEXTURES
from selfcheck.drawing.words import one_line

WIDTH = 360.0
TEXT = 13.0
SMALL = 12.0
_PREFIX = re.compile(r"[A-Za-z][A-Za-z0-9_-]{0,40}")
_NARROW = frozenset("iIljtfr.,;:'|!()[]-·/ ")
_WIDE = frozenset("mwMW@%&#+=<>~^—…±¼½¾←→")

Element = ET.Element


def text_width(text: str, size: float) -> float:
    """Room [units] that a text takes in any ordinary sans-serif face; rather more than less."""
    return size * sum(map(_advance, text))


def _advance(character: str) -> float:
    """In shares of the size of the type: at or above the widths of DejaVu Sans, wider than most faces of its kind."""
    if character in _NARROW:
        return 0.42
    if character in _WIDE:
        return 1.0
    if character.isascii():
        return 0.79 if character.isupper() else 0.64
    return 0.8 if character.isalpha() and east_asian_width(character) not in "WF" else 1.05


def fit(text: str, room: float, size: float) -> str:
    """The text, cut with an ellipsis where it is too long for the room."""
    if text_width(text, size) <= room:
        return text
    while text and text_width(text + "…", size) > room:
        text = text[:-1]
    return text.rstrip() + "…" if text else ""


def wrap(text: str, room: float, size: float, most: int) -> list[str]:
    """The text in at most that many lines, broken at spaces, the last one cut where it is too long."""
    lines: list[str] = []
    words = text.split()
    while words and len(lines) < most:
        line = words.pop(0)
        while words and text_width(f"{line} {words[0]}", size) <= room:
            line += " " + words.pop(0)
        if len(lines) == most - 1 and words:
            line = " ".join([line, *words])
            words = []
        lines.append(fit(line, room, size))
    return lines


def spread(wanted: Sequence[tuple[float, float]], top: float) -> list[float]:
    """Tops for labels of (middle wanted, height), in that order, none above `top`, none over another.

    Each stands as near to its place as the others let it: those that touch move together, to the mean of their places.
    """
    blocks: list[tuple[float, float, list[float]]] = []  # sum of wished tops of the first, height, heights
    for middle, height in wanted:
        blocks.append((middle - height / 2, height, [height]))
        while len(blocks) > 1 and _top(blocks[-2], top) + blocks[-2][1] > _top(blocks[-1], top):
            second, first = blocks.pop(), blocks.pop()
            wish = first[0] + second[0] - first[1] * len(second[2])
            blocks.append((wish, first[1] + second[1], first[2] + second[2]))
    places: list[float] = []
    for block in blocks:
        at = _top(block, top)
        for height in block[2]:
            places.append(at)
            at += height
    return places


def _top(block: tuple[float, float, list[float]], least: float) -> float:
    return max(least, block[0] / len(block[2]))


def at(value: float) -> str:
    """A coordinate as short as it may be, to a tenth of a unit."""
    text = f"{value:.1f}"
    return text.removesuffix(".0") if text != "-0.0" else "0"


def path(points: Iterable[tuple[float, float]], close: bool = False) -> str:
    """Path data of straight lines through the points."""
    joined = "L".join(f"{at(x)} {at(y)}" for x, y in points)
    return f"M{joined}{'Z' if close else ''}"


class Sheet:
    """One picture in the making. `prefix` begins every id, so that pictures can stand on one page."""

    def __init__(self, prefix: str, title: str, description: Iterable[str]) -> None:
        """An empty sheet. ValueError for a prefix that cannot begin an id."""
        if not _PREFIX.fullmatch(prefix):
            raise ValueError("a prefix is a letter and then letters, figures, - or _")
        self.prefix = prefix
        self.root = Element(
            "svg",
            {
                "xmlns": "http://www.w3.org/2000/svg",
                "role": "img",
                "aria-labelledby": f"{prefix}-title {prefix}-desc",
                "font-family": "sans-serif",
            },
        )
        ET.SubElement(self.root, "title", {"id": f"{prefix}-title"}).text = one_line(title)
        ET.SubElement(self.root, "desc", {"id": f"{prefix}-desc"}).text = one_line(" ".join(description), 4000)
        self._defs = ET.SubElement(self.root, "defs")
        self._paper = self.add("rect", x=0.0, y=0.0, width=WIDTH, height=0.0, fill=PAPER)
        self._patterns: set[str] = set()

    def add(self, tag: str, parent: Element | None = None, **attributes: str | float) -> Element:
        """One element; numbers are rounded, `stroke_width` becomes `stroke-width`."""
        named = {
            name.replace("_", "-"): value if isinstance(value, str) else at(value) for name, value in attributes.items()
        }
        return ET.SubElement(self.root if parent is None else parent, tag, named)

    def line(self, points: Iterable[tuple[float, float]], colour: str, width: float = 1.0, dashes: str = "") -> Element:
        """A line through points, without a filling."""
        line = self.add("path", d=path(points), fill="none", stroke=colour, stroke_width=width)
        if dashes:
            line.set("stroke-dasharray", dashes)
        return line

    def text(
        self, x: float, y: float, words: str, *, size: float = TEXT, anchor: str = "start", colour: str = INK,
        bold: bool = False, most: float | None = None,
    ) -> None:  # fmt: skip
        """One line of text on the base line `y`, cut to `most` and to what the sheet leaves from `x` on."""
        room = {"start": WIDTH - 2 - x, "end": x - 2, "middle": 2 * min(x - 2, WIDTH - 2 - x)}[anchor]
        scale = 1.08 if bold else 1.0
        shown = fit(one_line(words), min(room, most if most is not None else room) / scale, size)
        element = self.add("text", x=x, y=y, font_size=size, fill=colour)
        element.text = shown
        if bold:
            element.set("font-weight", "bold")
        if anchor != "start":
            element.set("text-anchor", anchor)

    def fill(self, texture: str) -> str:
        """The reference to a texture, which is put into the sheet when it is first used."""
        ident = f"{self.prefix}-{texture.replace('_', '-')}"
        if texture not in self._patterns:
            self._patterns.add(texture)
            look = TEXTURES[texture]
            pattern = self.add(
                "pattern", self._defs, id=ident, width=look.size, height=look.size, patternUnits="userSpaceOnUse"
            )
            self.add("rect", pattern, width=look.size, height=look.size, fill=look.ground)
            for d, width in look.strokes:
                self.add("path", pattern, d=d, fill="none", stroke=look.grain, stroke_width=width)
            for x, y, radius in look.dots:
                self.add("circle", pattern, cx=x, cy=y, r=radius, fill=look.grain)
        return f"url(#{ident})"

    def clip(self, name: str, d: str) -> Element:
        """A group that shows only what lies inside the path."""
        ident = f"{self.prefix}-{name}"
        self.add("path", self.add("clipPath", self._defs, id=ident), d=d)
        return self.add("g", clip_path=f"url(#{ident})")

    def finish(self, height: float) -> str:
        """The whole element, `height` units high."""
        self.root.set("viewBox", f"0 0 {at(WIDTH)} {at(height)}")
        self._paper.set("height", at(height))
        return ET.tostring(self.root, encoding="unicode")
