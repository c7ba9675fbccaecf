"""Where the lid is, described once: two fixed corners, a tape from each, and the point where the tapes meet.

Metres, seen from above, the first corner at (0, 0) and the second at (apart, 0). North is not known and not implied.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from selfcheck.domain.locate import Point, fix
from selfcheck.drawing.lengths import METRES_PER_INCH, Units, on_a_tape
from selfcheck.drawing.words import Words, one_line, say

if TYPE_CHECKING:
    from selfcheck.domain.household import Place
    from selfcheck.drawing.spans import Line

_ON_THE_LINE_M = 0.02


@dataclass(frozen=True, slots=True)
class SketchPicture:
    """What is drawn. `lid` lies below the line between the corners; its mirror point is as far above it.

    `lid` is None where a length is missing, or where the tapes do not meet (`meets` is then False). `side`: the
    household's words for the side of the line on which the lid lies; empty is not known. `error`: how sure the place is
    [m], one standard deviation in its worst direction.
    """

    first: str
    second: str
    apart: float | None
    from_first: float | None
    from_second: float | None
    side: str
    note: str
    lid: Point | None
    error: float | None
    meets: bool
    words: Words

    @property
    def two_places(self) -> bool:
        """Whether the tapes meet in two places rather than on the line."""
        return self.lid is not None and self.lid.y < -_ON_THE_LINE_M


def describe(place: Place | None, words: Words) -> SketchPicture:
    """The sketch of a tank's place; what is not on record stays open."""
    apart = place.corners_apart_m if place is not None else None
    from_a = place.from_a_m if place is not None else None
    from_b = place.from_b_m if place is not None else None
    found = fix(apart, from_a, from_b) if apart and from_a is not None and from_b is not None else None
    known = bool(apart) and from_a is not None and from_b is not None
    return SketchPicture(
        first=(one_line(place.corner_a) if place is not None else "") or say(words, "first"),
        second=(one_line(place.corner_b) if place is not None else "") or say(words, "second"),
        apart=apart or None,
        from_first=from_a,
        from_second=from_b,
        side=one_line(place.side) if place is not None else "",
        note=one_line(place.note) if place is not None else "",
        lid=found.right if found is not None else None,
        error=found.error_m if found is not None else None,
        meets=found is not None or not known,
        words=words,
    )


def tapes(picture: SketchPicture, units: Units) -> tuple[str | None, str | None]:
    """`17 ft 1 in from kitchen corner`, for both corners; None for a length that is not on record."""

    def told(metres: float | None, corner: str) -> str | None:
        if metres is None:
            return None
        return say(picture.words, "from_a", length=on_a_tape(metres, units), corner=corner)

    return told(picture.from_first, picture.first), told(picture.from_second, picture.second)


def remarks(picture: SketchPicture, units: Units) -> list[str]:
    """What is said below the picture: which of two places it is, how sure, the household's note."""
    words = picture.words
    if picture.lid is None:
        side = [say(words, "lid_side", side=picture.side)] if picture.side else []
        return [*side, say(words, _why_not_drawn(picture)), *_note(picture)]
    lines = []
    if not picture.two_places:
        lines.append(say(words, "on_the_line"))
    elif picture.side:
        lines += [say(words, "lid_side", side=picture.side), say(words, "drawn_below"), say(words, "mirror_why")]
    else:
        lines.append(say(words, "either_why"))
    lines += _note(picture)
    if picture.error is not None:
        step = METRES_PER_INCH if units == "us" else 0.01
        lines.append(say(words, "error", length=on_a_tape(round(picture.error / step) * step, units)))
    return [*lines, say(words, "not_a_map")]


def lid_name(picture: SketchPicture) -> str:
    """What stands beside the lid: which side of the line it is on, since the picture cannot tell."""
    if picture.two_places and picture.side:
        return say(picture.words, "lid_on", side=picture.side)
    return say(picture.words, "lid")


def _why_not_drawn(picture: SketchPicture) -> str:
    if not picture.meets:
        return "not_meeting"
    both = picture.from_first is not None and picture.from_second is not None
    return "not_apart" if both and picture.apart is None else "not_known"


def _note(picture: SketchPicture) -> list[str]:
    return [say(picture.words, "note", note=picture.note)] if picture.note else []


def as_words(picture: SketchPicture, units: Units = "us") -> list[str]:
    """The place for people who hear it."""
    words = picture.words
    first, second = tapes(picture, units)
    lines = []
    if first is not None and second is not None:
        lines.append(say(words, "lid_at", first=first, second=second))
    else:
        lines += [say(words, "lid_one", one=one) for one in (first, second) if one is not None]
    if picture.apart is not None:
        length = on_a_tape(picture.apart, units)
        lines.append(say(words, "apart", length=length, first=picture.first, second=picture.second) + ".")
    return lines + remarks(picture, units)


def as_lines(picture: SketchPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The sketch as at most `height` lines of exactly `width` cells."""
    from selfcheck.drawing.sketch_lines import as_lines as draw

    return draw(picture, width, height, units)


def as_svg(picture: SketchPicture, units: Units = "us", prefix: str = "place") -> str:
    """The sketch as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    from selfcheck.drawing.sketch_svg import as_svg as draw

    return draw(picture, units, prefix)
