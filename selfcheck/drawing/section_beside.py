"""What stands beside and below the section: names joined to their places, and the tank seen from its end."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.drawing.lengths import with_error
from selfcheck.drawing.section_frame import LABELS, THICK, Frame
from selfcheck.drawing.section_picture import Band
from selfcheck.drawing.section_words import last_time, read_then, second_part
from selfcheck.drawing.svg import SMALL, TEXT, WIDTH, path, spread, wrap
from selfcheck.drawing.tones import AIR, INK, LIMIT, QUIET, WALL, WALL_EDGE, WATER

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


def labels(frame: Frame) -> float:
    """The labels beside the tank, joined to their places; returns how far down they reach."""
    labels = sorted(_wanted(frame), key=lambda label: label.y)
    tops = spread([(label.y, label.height) for label in labels], 12.0)
    for label, top in zip(labels, tops, strict=True):
        middle = top + label.height / 2
        frame.sheet.line([(label.start, label.y), (LABELS - 12, label.y), (LABELS - 3, middle)],
                        label.colour if label.dashes else QUIET, 1.0, label.dashes)  # fmt: skip
        for number, (text, bold) in enumerate(label.lines):
            y = top + 15.5 + 16 * number
            frame.sheet.text(LABELS, y, text, bold=bold, colour=label.colour, size=TEXT if bold else SMALL)
    return max((top + label.height for label, top in zip(labels, tops, strict=True)), default=0.0)


def _wanted(frame: Frame) -> list[_Label]:
    picture, words, depth = frame.picture, frame.words, frame.picture.liquid_depth
    room = WIDTH - LABELS - 2
    wall = frame.middle + frame.reach_most() + THICK

    def layer(name: str, band: Band | None, otherwise: float) -> _Label:
        height = (band.top + band.bottom) / 2 if band is not None else otherwise
        height = min(max(height, 0.0), picture.inside_height)
        says = words.not_known if band is None else words.nothing
        if band is not None and band.thickness > 0:
            says = with_error(band.thickness, band.error, frame.units)
        return _Label(frame.y(height), ((name, True), (says, False)), INK, wall)

    labels = [
        layer(words.crust, picture.scum, depth),
        layer(words.clear, picture.clear, depth * 0.45),
        layer(words.sludge, picture.sludge, 0.0),
    ]
    if picture.outlet is not None:
        lines = (words.outlet_edge, *([f"({words.assumed})"] if picture.outlet_assumed else []))
        labels.append(_Label(frame.y(picture.outlet), tuple((line, False) for line in lines), QUIET, wall - 8))
    for limit in picture.limits:
        name = tuple((line, False) for line in wrap(limit.name, room, SMALL, 2))
        labels.append(_Label(frame.y(limit.height), name, LIMIT, wall, "1.5 3"))
    return labels


def below(frame: Frame, top: float) -> float:
    """Which way the water runs, what last time's outlines are, and the second part; returns how far down it reaches."""
    frame.sheet.text(4, top + 8, f"← {frame.words.house_side}", size=SMALL, colour=QUIET, most=116)
    frame.sheet.text(
        LABELS - 8, top + 8, f"{frame.words.field_side} →", size=SMALL, colour=QUIET, anchor="end", most=116
    )
    top += 16
    last, second = last_time(frame.picture, frame.units), second_part(frame.picture, frame.units)
    if last:
        frame.sheet.add("rect", x=4.0, y=top + 2, width=20.0, height=10.0, fill="none", stroke=INK, stroke_width=1.2,
                        stroke_dasharray="6 3")  # fmt: skip
    for text, x in ((last, 30.0), (read_then(frame.picture, frame.units), 4.0), (second, 4.0)):
        for line in wrap(text, WIDTH - x - 4, SMALL, 2):
            frame.sheet.text(x, top + 12, line, size=SMALL)
            top += 16
    return top


def end_view(frame: Frame, top: float) -> float:
    """The same tank seen from its end, smaller, in its own true shape."""
    sheet, picture = frame.sheet, frame.picture
    widest = max(across for _, _, across in frame.outline)
    scale = min(_END_HIGH / picture.inside_height, 150 / (2 * widest))
    middle, floor = frame.middle, top + 14 + picture.inside_height * scale
    points = [(middle + across * scale, floor - height * scale) for height, _, across in frame.outline]
    points += [(middle - across * scale, floor - height * scale) for height, _, across in reversed(frame.outline)]
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
    beside = middle + widest * scale + 16
    for number, line in enumerate(wrap(frame.words.end_view, WIDTH - beside - 2, SMALL, 2)):
        sheet.text(beside, floor - 16 + 16 * number, line, size=SMALL, colour=QUIET)
    return floor + 10
