"""The section in words: as one line, and whole for people who hear it."""

from __future__ import annotations

from selfcheck.domain.showing import show_day
from selfcheck.drawing.lengths import number, unit, with_error
from selfcheck.drawing.section_picture import SectionPicture, Units


def as_one_line(picture: SectionPicture, units: Units = "us") -> str:
    """`crust 6 · clear 33 · sludge 8½ of 48 in`: the layers from the top down, in one unit."""
    words = picture.words
    parts = [
        f"{name} {number(band.thickness, units) if band is not None else words.unknown}"
        for name, band in ((words.crust, picture.scum), (words.clear, picture.clear), (words.sludge, picture.sludge))
    ]
    then = f" · {show_day(picture.read_on, units)}" if picture.read_on is not None else ""
    if picture.depth_assumed:
        return f"{' · '.join(parts)} {words.of} {words.unknown}{then}"
    return f"{' · '.join(parts)} {words.of} {number(picture.liquid_depth, units)} {unit(units)}{then}"


def as_words(picture: SectionPicture, units: Units = "us") -> list[str]:
    """The picture for people who hear rather than see it: one short line a layer, then outlet, limits, last time."""
    words = picture.words
    named = [(words.crust, picture.scum), (words.clear, picture.clear), (words.sludge, picture.sludge)]
    if picture.second is not None:
        named += [
            (f"{words.second}, {words.crust}", picture.second.scum),
            (f"{words.second}, {words.sludge}", picture.second.sludge),
        ]
    lines = []
    for name, band in named:
        if band is None:
            lines.append(f"{name}: {words.not_known}")
        else:
            lines.append(f"{name}: {with_error(band.thickness, band.error, units, words.about)}")
    if picture.outlet is not None:
        assumed = f" ({words.assumed})" if picture.outlet_assumed else ""
        lines.append(f"{words.outlet_edge}: {number(picture.outlet, units)} {unit(units)} {words.below}{assumed}")
    lines.extend(f"{line.name}: {number(line.height, units)} {unit(units)} {words.below}" for line in picture.limits)
    lines.extend(text for text in (last_time(picture, units), read_then(picture, units)) if text)
    return lines


def read_then(picture: SectionPicture, units: Units = "us") -> str:
    """`read on May 4, 2024`; empty where the newest check is the one that read the layers."""
    return f"{picture.words.read_on} {show_day(picture.read_on, units)}" if picture.read_on is not None else ""


def last_time(picture: SectionPicture, units: Units = "us") -> str:
    """`last time: crust 4, sludge 6 in`; empty when there is no earlier check."""
    return _in_short(picture, picture.words.last, picture.last_scum, picture.last_sludge, units)


def second_part(picture: SectionPicture, units: Units = "us") -> str:
    """`second part: crust 1, sludge 4 in`; empty where there is none or nothing of it is known."""
    scum = picture.second.scum if picture.second is not None else None
    sludge = picture.second.sludge if picture.second is not None else None
    thick = [band.thickness if band is not None else None for band in (scum, sludge)]
    return _in_short(picture, picture.words.second, thick[0], thick[1], units)


def _in_short(picture: SectionPicture, what: str, scum: float | None, sludge: float | None, units: Units) -> str:
    known = ((picture.words.crust, scum), (picture.words.sludge, sludge))
    parts = [f"{name} {number(value, units)}" for name, value in known if value is not None]
    return f"{what}: {', '.join(parts)} {unit(units)}" if parts else ""
