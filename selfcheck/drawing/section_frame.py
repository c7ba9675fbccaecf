"""Where things lie on the sheet when a tank is drawn to scale along its length."""

from __future__ import annotations

from selfcheck.drawing.lengths import Units
from selfcheck.drawing.section_form import Outline
from selfcheck.drawing.section_picture import SectionPicture
from selfcheck.drawing.section_words import as_words
from selfcheck.drawing.svg import Sheet

GROUND, ROOF = 34.0, 58.0  # level of the ground, and of the inside of the roof
THICK = 6.0  # drawn thickness of walls; not to scale, since it is not known
LABELS = 240.0  # where the names beside the tank begin
_MOST_WIDE, _MOST_HIGH = 196.0, 214.0  # room for the inside of the tank
_LEFT = 20.0  # inner face of the wall at the house side, at its widest
_PROPORTION = 1.8  # length to height where no outline is known


class Frame:
    """A picture, its sheet, and the scale: one for lengths and heights."""

    def __init__(self, picture: SectionPicture, units: Units, prefix: str) -> None:
        """An empty sheet, with the tank as large on it as it may be."""
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
        self.floor = ROOF + top * self.scale

    @property
    def round(self) -> bool:
        """Whether the section across the tank is anything but upright walls."""
        return any(abs(across - self.outline[0][2]) > 1e-9 for _, _, across in self.outline)

    def y(self, height: float) -> float:
        """The level of a height above the floor; heights far off the tank stay on the sheet."""
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

    def reach_most(self) -> float:
        """The same where the tank is longest."""
        return max(along for _, along, _ in self.outline) * self.scale

    def side(self) -> list[tuple[float, float]]:
        """The inside as seen from the side, round about."""
        right = [(self.middle + along * self.scale, self.y(height)) for height, along, _ in self.outline]
        return right + [(2 * self.middle - x, y) for x, y in reversed(right)]
