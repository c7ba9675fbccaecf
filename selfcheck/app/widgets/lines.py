"""A widget made of painted lines: pieces of text, each with the part it plays."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from rich.cells import cell_len
from rich.segment import Segment
from rich.style import Style
from textual.geometry import Size
from textual.strip import Strip
from textual.widget import Widget

from selfcheck.app import themes
from selfcheck.app.content_text import shown, wrapped

_WIDEST = 76  # cells of text on a line


class Piece(NamedTuple):
    """A run of text and its part, one of `themes.PARTS`."""

    text: str
    part: str = "text"


PieceLine = Sequence[Piece]


def cells(pieces: Iterable[Piece]) -> int:
    """Width in cells."""
    return sum(cell_len(piece.text) for piece in pieces)


def strip_of(line: PieceLine, width: int, theme: str) -> Strip:
    """One line as it is painted, cut or filled to `width`. The text is made harmless here, whatever it was."""
    segments = [Segment(shown(piece.text), themes.style(theme, piece.part)) for piece in line if piece.text]
    ground = themes.style(theme, "text")
    return Strip(segments).adjust_cell_length(width, Style(bgcolor=ground.bgcolor))


class Lines(Widget):
    """Paints what `pieces` returns for its width; as high as there are lines unless its style says otherwise."""

    ALLOW_SELECT = False

    def pieces(self, width: int) -> Sequence[PieceLine]:
        """The lines at this width."""
        raise NotImplementedError

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._laid_out: Sequence[PieceLine] | None = None
        self._laid_out_for = -1

    def changed(self) -> None:
        """Lay out and paint anew."""
        self._laid_out = None
        self.refresh(layout=True)

    def lines_at(self, width: int) -> Sequence[PieceLine]:
        """The lines at this width, laid out once."""
        if self._laid_out is None or self._laid_out_for != width:
            self._laid_out, self._laid_out_for = self.pieces(width), width
        return self._laid_out

    def get_content_height(self, container: Size, viewport: Size, width: int) -> int:
        return len(self.lines_at(width))

    def get_content_width(self, container: Size, viewport: Size) -> int:
        return container.width

    def render_line(self, y: int) -> Strip:
        width = self.size.width
        lines = self.lines_at(width)
        return strip_of(lines[y] if y < len(lines) else (), width, self.app.theme)


class Block(Lines):
    """Lines that are set from outside, each wrapped by whoever sets them."""

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._paragraphs: list[tuple[str, str]] = []

    def set(self, paragraphs: Iterable[tuple[str, str]]) -> None:
        """Paragraphs as pairs of text and part; an empty text is an empty line."""
        self._paragraphs = list(paragraphs)
        self.changed()

    def pieces(self, width: int) -> Sequence[PieceLine]:
        lines: list[PieceLine] = []
        room = min(width, _WIDEST)
        for text, part in self._paragraphs:
            if part.startswith("band"):
                lines.append([Piece(" " * room, part)])
                lines.extend([Piece(f"  {line}".ljust(room), part)] for line in wrapped(text, room - 4))
                lines.append([Piece(" " * room, part)])
            else:
                hang = 2 if text.startswith(("· ", "  ")) else 0
                first, *rest = wrapped(text[hang:], room - hang)
                lines.append([Piece(text[:hang], "muted"), Piece(first, part)])
                lines.extend([Piece(" " * hang), Piece(line, part)] for line in rest)
        return lines


class Across(Lines):
    """A thin line over the whole width."""

    def pieces(self, width: int) -> Sequence[PieceLine]:
        return [[Piece("─" * width, "line")]]


class Mark(Lines):
    """The `›` before what a person says."""

    def pieces(self, width: int) -> Sequence[PieceLine]:
        return [[Piece("›", "mark")]]
