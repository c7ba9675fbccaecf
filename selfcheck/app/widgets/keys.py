"""The bottom row: keys and what they do. A click does the same."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from textual import events

from selfcheck.app.widgets.lines import Lines, Piece, PieceLine, cells


class KeyHint(NamedTuple):
    """A key as it is written, its word, and the action of the screen it stands for."""

    key: str
    word: str
    action: str


class KeyRow(Lines):
    """As many hints as fit; the ones at the front matter most."""

    def __init__(self, hints: Sequence[KeyHint], *, id: str | None = None) -> None:
        super().__init__(id=id)
        self._hints = tuple(hints)
        self._places: list[tuple[int, int, str]] = []

    def set(self, hints: Sequence[KeyHint]) -> None:
        """Show these."""
        self._hints = tuple(hints)
        self.changed()

    def pieces(self, width: int) -> Sequence[PieceLine]:
        self._places = []
        row: list[Piece] = []
        x = 0
        for hint in self._hints:
            hinted = [Piece(hint.key, "key"), Piece(f" {hint.word}", "muted")]
            gap = 2 if row else 0
            if x + gap + cells(hinted) > width:
                break
            row.extend([Piece(" " * gap), *hinted] if gap else hinted)
            self._places.append((x + gap, x + gap + cells(hinted) - 1, hint.action))
            x += gap + cells(hinted)
        return [row]

    async def on_click(self, event: events.Click) -> None:
        for first, last, action in self._places:
            if first <= event.x <= last:
                await self.screen.run_action(action)
                return
