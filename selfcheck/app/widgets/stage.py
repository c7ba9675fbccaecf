"""The top line: whose tank, and where one is in the work."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from selfcheck.app.content_text import shown
from selfcheck.app.widgets.lines import Lines, Piece, PieceLine, cells

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Stage


class StageLine(Lines):
    """`Juniper Lane    find · lift · [pole] · close`; while something may stand open it says so in words."""

    def __init__(self, lid_open: str, *, id: str | None = None) -> None:
        super().__init__(id=id)
        self._lid_open = lid_open
        self._title = ""
        self._stages: Sequence[Stage] = ()
        self._open = False

    def set(self, title: str, stages: Sequence[Stage] = (), may_stand_open: bool = False) -> None:
        """Show this title, these stages, and the mark of an open lid."""
        if (title, stages, may_stand_open) == (self._title, self._stages, self._open):
            return
        self._title, self._stages, self._open = title, stages, may_stand_open
        self.changed()

    def pieces(self, width: int) -> Sequence[PieceLine]:
        mark = [Piece("  "), Piece(f"▲ {self._lid_open}", "open")] if self._open else []
        title = [Piece(shown(self._title), "strong")]
        for right in (self._all_stages(), self._only_now(), []):
            right = [*right, *mark]
            space = width - cells(title) - cells(right)
            if space >= 2:
                return [[*title, Piece(" " * space), *right]]
        return [self._only_now() + mark or title]

    def _all_stages(self) -> list[Piece]:
        pieces: list[Piece] = []
        for index, stage in enumerate(self._stages):
            if index:
                pieces.append(Piece(" · ", "line"))
            now = stage.state == "now"
            pieces.append(Piece(f"[{stage.title}]" if now else stage.title, "stage" if now else "muted"))
        return pieces

    def _only_now(self) -> list[Piece]:
        for index, stage in enumerate(self._stages):
            if stage.state == "now":
                place = Piece(f" {index + 1}/{len(self._stages)}", "muted")
                return [Piece(f"[{stage.title}]", "stage"), place]
        return []
