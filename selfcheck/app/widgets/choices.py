"""The choices of the open question: on one row where they fit, one below the other where they do not."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from textual import events
from textual.message import Message
from textual.strip import Strip

from selfcheck.app.content_text import wrapped
from selfcheck.app.widgets.lines import Lines, Piece, PieceLine, cells, strip_of

_GAP = 3
_POINTER = "▸"


class Option(NamedTuple):
    """One choice: the number that picks it, and its words."""

    number: int
    label: str


class Choices(Lines, can_focus=False):
    """Numbered choices. A number key, the arrow keys with enter, or a click picks one."""

    class Picked(Message):
        """A choice was clicked."""

        def __init__(self, number: int) -> None:
            super().__init__()
            self.number = number

    def __init__(self, *, more: str = "", id: str | None = None) -> None:
        super().__init__(id=id)
        self.options: tuple[Option, ...] = ()
        self.several = False
        self.marked: list[int] = []
        self._more = more
        self._at: int | None = None
        self._top = 0
        self._places: list[tuple[int, int, int, int]] = []  # line, first cell, last cell, index of the option

    def set(self, options: Sequence[Option], several: bool = False) -> None:
        """Show these and highlight none. `several`: any of them may be marked."""
        self.options = tuple(options)
        self.several = several
        self.marked = []
        self._at, self._top = None, 0
        self.display = bool(options)
        self.changed()

    @property
    def highlighted(self) -> int | None:
        """The number of the highlighted choice."""
        return None if self._at is None else self.options[self._at].number

    def move(self, by: int) -> None:
        """Move the highlight; it goes round."""
        if not self.options:
            return
        if self._at is None:
            self._at = 0 if by > 0 else len(self.options) - 1
        else:
            self._at = (self._at + by) % len(self.options)
        self.changed()
        self._bring_into_view()

    def mark(self, number: int) -> None:
        """Mark a choice, or take the mark off again."""
        if number in self.marked:
            self.marked.remove(number)
        else:
            self.marked.append(number)
        self.changed()

    def has(self, number: int) -> bool:
        """True if one of the choices carries this number."""
        return any(option.number == number for option in self.options)

    def pieces(self, width: int) -> Sequence[PieceLine]:
        self._places = []
        parts = [self._pieces_of(index) for index in range(len(self.options))]
        if parts and not self.several and sum(map(cells, parts)) + _GAP * (len(parts) - 1) <= width:
            return [self._on_one_row(parts)]
        lines: list[PieceLine] = []
        for index, option in enumerate(self.options):
            chosen = index == self._at
            indent = len(f"{option.number}") + 2
            mark = ("■ " if option.number in self.marked else "□ ") if self.several else ""
            indent += len(mark)
            texts = wrapped(option.label, width - indent - 1)
            for row, text in enumerate(texts):
                self._places.append((len(lines), 0, width, index))
                lead = f"{option.number} {_POINTER if chosen else ' '}{mark}" if row == 0 else " " * indent
                lines.append([Piece(lead, "chosen" if chosen else "key"), Piece(text, "chosen" if chosen else "text")])
        return lines

    def _on_one_row(self, parts: Sequence[Sequence[Piece]]) -> PieceLine:
        row: list[Piece] = []
        x = 0
        for index, pieces in enumerate(parts):
            if index:
                row.append(Piece(" " * _GAP))
                x += _GAP
            self._places.append((0, x, x + cells(pieces) - 1, index))
            x += cells(pieces)
            row.extend(pieces)
        return row

    def _pieces_of(self, index: int) -> list[Piece]:
        option, chosen = self.options[index], index == self._at
        lead = Piece(f"{option.number} {_POINTER if chosen else ' '}", "chosen" if chosen else "key")
        return [lead, Piece(option.label, "chosen" if chosen else "text")]

    def render_line(self, y: int) -> Strip:
        width, height = self.size
        lines = self.lines_at(width)
        hidden = len(lines) - height
        self._top = max(0, min(self._top, hidden))
        if hidden > 0 and y == height - 1 and self._top < hidden:
            return strip_of([Piece(f" ↓ {self._more}", "muted")], width, self.app.theme)
        index = y + self._top
        return strip_of(lines[index] if index < len(lines) else (), width, self.app.theme)

    def _bring_into_view(self) -> None:
        self.lines_at(self.size.width)
        rows = [line for line, _, _, index in self._places if index == self._at]
        height = self.size.height
        if rows and height:
            self._top = min(self._top, rows[0])
            if rows[-1] >= self._top + height - 1:
                self._top = rows[-1] - height + 2

    def on_click(self, event: events.Click) -> None:
        self.lines_at(self.size.width)
        for line, first, last, index in self._places:
            if line == event.y + self._top and first <= event.x <= last:
                self.post_message(self.Picked(self.options[index].number))
                return
