"""A picture of the record, as large as its widget is."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from selfcheck.app.widgets.lines import Lines, Piece, PieceLine

if TYPE_CHECKING:
    from selfcheck.sitting.steps import Drawn

_LOWEST = 8  # lines below which a picture says nothing


class DrawnPanel(Lines):
    """Draws itself for the room it has."""

    def __init__(self, *, id: str | None = None) -> None:
        super().__init__(id=id)
        self._drawn: Drawn | None = None

    def set(self, drawn: Drawn | None) -> None:
        """Show this picture."""
        self._drawn = drawn
        self.changed()

    def on_resize(self) -> None:
        """The picture depends on the height too."""
        self._laid_out = None

    def pieces(self, width: int) -> Sequence[PieceLine]:
        if self._drawn is None or width < _LOWEST:
            return []
        lines = self._drawn.lines(width, max(_LOWEST, self.size.height))
        return [[Piece(span.text, span.role) for span in line] for line in lines]
