"""The cloth drawn with characters: dark where stained, light where wet, bare above."""

from __future__ import annotations

from selfcheck.drawing.cloth import ClothPicture, Stain
from selfcheck.drawing.layer_cells import sludge_cell
from selfcheck.drawing.lengths import Units, number, unit, with_error
from selfcheck.drawing.section_picture import Band
from selfcheck.drawing.spans import Grid, Line, Role, Span
from selfcheck.drawing.words import say

_LABEL = 21
_LEAST_EACH, _LEAST_ROWS, _MOST_ROWS = 8, 5, 18
_WET, _DRY, _POLE = "░", " ", "║"


def as_lines(picture: ClothPicture, width: int, height: int, units: Units) -> list[Line]:
    """At most `height` lines of exactly `width` cells; without the room for a picture, the readings in a line each."""
    number_of = max(1, len(picture.stains))
    each = (width - _LABEL) // number_of
    rows = min(height - 3, _MOST_ROWS)
    if each < _LEAST_EACH or rows < _LEAST_ROWS:
        says = [_says(picture, index, units) for index in range(number_of)]
        return [[Span(text[:width].ljust(width), "label")] for text in says[: max(0, height)]]
    return _Cloth(picture, width, each, rows, units).lines()


def _says(picture: ClothPicture, index: int, units: Units) -> str:
    if index >= len(picture.stains):
        return say(picture.words, "not_read")
    stain = picture.stains[index]
    return f"{say(picture.words, 'stain_short')} {with_error(stain.height, stain.error, units)}"


class _Cloth:
    def __init__(self, picture: ClothPicture, width: int, each: int, rows: int, units: Units) -> None:
        self.picture, self.each, self.rows, self.units = picture, each, rows, units
        self.grid = Grid(width, rows + 3)
        self.step = picture.top / rows
        self.right = each * max(1, len(picture.stains))

    def lines(self) -> list[Line]:
        picture = self.picture
        stains: tuple[Stain | None, ...] = picture.stains or (None,)
        for index, stain in enumerate(stains):
            self._pole(index, stain, picture.wet[index])
        self.grid.put(0, self.rows + 1, "▔" * self.right, "wall")
        self._marks()
        return self.grid.lines()

    def _row(self, height: float) -> int:
        return 1 + max(0, min(self.rows - 1, int((self.picture.top - height) / self.step + 1e-9)))

    def _pole(self, index: int, stain: Stain | None, wet: float | None) -> None:
        words = self.picture.words
        middle = self.each * index + self.each // 2
        half = max(2, min(4, self.each // 3 - 1))
        if len(self.picture.stains) > 1:
            self._centred(middle, 0, say(words, "reading", number=str(index + 1)), "plain")
        for line in range(1, self.rows + 1):
            top = self.picture.top - (line - 1) * self.step
            low = top - self.step
            if low + self.step / 2 > self.picture.cloth:
                self.grid.put(middle, line, _POLE, "wall")
                continue
            character, role = self._cell(stain, wet, low, top)
            self.grid.put(middle - half, line, f"│{character * (2 * half - 1)}│", role)
            self.grid.put(middle - half, line, "│", "plain")
            self.grid.put(middle + half, line, "│", "plain")
        text = say(words, "not_known") if stain is None else with_error(stain.height, stain.error, self.units)
        self._centred(middle, self.rows + 2, text, "label")

    def _cell(self, stain: Stain | None, wet: float | None, low: float, top: float) -> tuple[str, Role]:
        if stain is not None and (found := sludge_cell(Band(0.0, stain.height), low, top)):
            return found
        if wet is not None and (low + top) / 2 <= wet:
            return _WET, "water"
        return _DRY, "plain"

    def _centred(self, middle: int, line: int, text: str, role: Role) -> None:
        text = text[: self.each - 1]
        self.grid.put(middle - len(text) // 2, line, text, role)

    def _marks(self) -> None:
        """The marks and the wet line across all poles, each with its name and height at the right."""
        words, picture = self.picture.words, self.picture
        wet = next((level for level in reversed(picture.wet) if level is not None), None)
        wanted: list[tuple[float, str, Role, str]] = []
        if picture.book is not None:
            wanted.append((picture.book, "book_short", "limit", "┄"))
        if wet is not None:
            wanted.append((wet, "wet_line", "water", "─"))
        if picture.full is not None and (wet is None or self._row(picture.full) != self._row(wet)):
            wanted.append((picture.full, "full_short", "plain", "·"))
        taken: set[int] = set()
        for height, name, role, sign in wanted:
            line = self._row(height)
            for x in range(self.right):
                if self.grid.role_at(x, line) in ("plain", "wall", "water"):
                    self.grid.put(x, line, sign, "limit_line" if role == "limit" else role)
            spot = next(at for at in (line, line - 1, line + 1, line + 2) if at not in taken and at > 0)
            taken.add(spot)
            text = f"{say(words, name)} {number(height, self.units)} {unit(self.units)}"
            self.grid.put(self.right + 1, spot, text[: self.grid.width - self.right - 1], role)
