"""The names and numbers beside the section: what each says, at which height, and kept apart on their lines."""

from __future__ import annotations

from dataclasses import dataclass, replace

from selfcheck.drawing.lengths import Units, number, unit, with_error
from selfcheck.drawing.section_picture import Band, SectionPicture
from selfcheck.drawing.spans import Role


@dataclass(frozen=True, slots=True)
class Label:
    """A text that belongs to a height above the floor [m]; `row` is the line it is put on."""

    height: float
    text: str
    role: Role = "label"
    row: int = 0


def labels(picture: SectionPicture, units: Units, step: float) -> list[Label]:
    """One for each layer, the outlet and each limit. `step`: height of a line [m]."""
    words = picture.words
    found = [
        Label(_middle(picture.scum, picture.liquid_depth - step), _says(picture, words.crust, picture.scum, units)),
        Label(_middle(picture.sludge, 0.0), _says(picture, words.sludge, picture.sludge, units)),
    ]
    if picture.clear is not None:
        text = f"{words.clear} {number(picture.clear.thickness, units)} {unit(units)}"
        found.append(Label(_middle(picture.clear, 0.0), text))
    if picture.outlet is not None:
        text = f"{words.outlet_edge}{' ' + words.unknown if picture.outlet_assumed else ''}"
        found.append(Label(picture.outlet + 1e-6, text, "plain"))
    found.extend(Label(limit.height, limit.name, "limit") for limit in picture.limits)
    return found


def apart(placed: list[Label], rows: int) -> list[Label]:
    """The labels from the top down, no two on one line, each as near to its own line as the others let it."""
    ordered = sorted(placed, key=lambda label: label.row)[:rows]
    done: list[Label] = []
    for index, label in enumerate(ordered):
        row = max(label.row, done[-1].row + 1 if done else 1)
        done.append(replace(label, row=min(row, rows - (len(ordered) - 1 - index))))
    return done


def _middle(band: Band | None, otherwise: float) -> float:
    return (band.top + band.bottom) / 2 if band is not None else otherwise


def _says(picture: SectionPicture, name: str, band: Band | None, units: Units) -> str:
    if band is None:
        return f"{name} {picture.words.unknown}"
    if band.thickness == 0:
        return f"{name} {picture.words.nothing}"
    return f"{name} {with_error(band.thickness, band.error, units)}"
