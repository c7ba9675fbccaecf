"""The cloth on the pole with its stain, described once: the readings side by side, to scale, with their marks.

Heights in metres above the foot of the pole, which stands on the floor of the tank.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot
from typing import TYPE_CHECKING

from selfcheck.domain.layers import FLOOR_ERROR_M, MARK_ERROR_M, STAIN_ERROR_M
from selfcheck.drawing.lengths import Units, number, unit, with_error
from selfcheck.drawing.words import Words, say

if TYPE_CHECKING:
    from selfcheck.domain.check import Reading, Readings
    from selfcheck.domain.marks import Marks
    from selfcheck.drawing.spans import Line

MOST_READINGS = 3
_CLOTH_M = 0.9  # a towel wound round the lower end: about three feet (common practice)
_USUAL_M = 1.2  # height drawn where nothing was read

#: A stain no further above a mark than this stands at it: less than anybody reads, and more than figures round by.
#: Our choice.
AS_HIGH_M = 0.0005


@dataclass(frozen=True, slots=True)
class Stain:
    """One reading of the cloth: height of the stain's upper edge and its standard error [m]."""

    height: float
    error: float


@dataclass(frozen=True, slots=True)
class ClothPicture:
    """What is drawn: the newest three readings at most, with the wet line of each (None: not read).

    `book`: the mark above which a stain says to book a pump-out; `full`: where a full tank would wet the pole.
    """

    stains: tuple[Stain, ...]
    wet: tuple[float | None, ...]
    book: float | None
    full: float | None
    words: Words

    @property
    def cloth(self) -> float:
        """Height of the cloth's upper edge [m]: it always reaches above every stain."""
        return max([_CLOTH_M, *(1.25 * stain.height for stain in self.stains)])

    @property
    def top(self) -> float:
        """Height to be drawn [m]."""
        marks = [mark for mark in (self.book, self.full, *self.wet) if mark is not None]
        return max([self.cloth, *marks, *([] if marks else [_USUAL_M])]) * 1.06

    def above(self, stain: Stain) -> bool:
        """Whether a stain stands above the booking mark."""
        return self.book is not None and stain.height > self.book + AS_HIGH_M


def describe(readings: Readings, words: Words, marks: Marks | None = None) -> ClothPicture:
    """The cloth as it was read at one check, with the marks for this tank where they are known."""
    read = readings.sludge[-MOST_READINGS:]
    levels = [one.m for one in readings.liquid_depth]
    wet = tuple(levels[min(index, len(levels) - 1)] if levels else None for index in range(max(1, len(read))))
    return ClothPicture(
        stains=tuple(Stain(max(0.0, one.m), _error(one)) for one in read),
        wet=wet,
        book=marks.book_sludge_m if marks is not None else None,
        full=marks.wet_line_m if marks is not None else None,
        words=words,
    )


def _error(reading: Reading) -> float:
    return hypot(max(MARK_ERROR_M, reading.error_m or 0.0), STAIN_ERROR_M, FLOOR_ERROR_M)


def as_words(picture: ClothPicture, units: Units = "us") -> list[str]:
    """The cloth for people who hear it: each reading, then the marks."""
    words = picture.words
    about = say(words, "about")

    def told(metres: float) -> str:
        return f"{number(metres, units)} {unit(units)}"

    lines = []
    for index, stain in enumerate(picture.stains):
        parts = [say(words, "stain", length=with_error(stain.height, stain.error, units, about))]
        wet = picture.wet[index]
        if wet is not None:
            parts.append(say(words, "wet", length=told(wet)))
        line = f"{say(words, 'reading', number=str(index + 1))}: {', '.join(parts)}."
        lines.append(f"{line} {say(words, 'above')}" if picture.above(stain) else line)
    if not lines:
        lines.append(say(words, "not_read"))
        lines += [say(words, "wet", length=told(wet)) + "." for wet in picture.wet if wet is not None]
    if picture.book is not None:
        lines.append(say(words, "book", length=told(picture.book)) + ".")
    if picture.full is not None:
        lines.append(say(words, "full", length=told(picture.full)) + ".")
    return lines


def as_lines(picture: ClothPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The cloth as at most `height` lines of exactly `width` cells."""
    from selfcheck.drawing.cloth_lines import as_lines as draw

    return draw(picture, width, height, units)


def as_svg(picture: ClothPicture, units: Units = "us", prefix: str = "cloth") -> str:
    """The cloth as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    from selfcheck.drawing.cloth_svg import as_svg as draw

    return draw(picture, units, prefix)
