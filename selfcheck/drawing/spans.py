"""A drawn line is a list of spans: a piece of text and the part it plays. Faces map parts to colours."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal, get_args
from unicodedata import category, east_asian_width

Role = Literal[
    "plain", "label", "scum", "scum_edge", "clear", "sludge", "sludge_edge", "water", "wall", "tee", "limit",
    "limit_line", "last", "earth", "air", "unknown",
]  # fmt: skip
ROLES: tuple[Role, ...] = get_args(Role)


@dataclass(frozen=True, slots=True)
class Span:
    """A run of characters that share one role. The pictures' own are one cell wide; a household's may be two."""

    text: str
    role: Role = "plain"


Line = list[Span]


def cells(text: str) -> int:
    """How many cells of a terminal a text takes."""
    return len(text) if text.isascii() else sum(map(_cells, text))


def _cells(character: str) -> int:
    if category(character) in ("Mn", "Me") or 0x1160 <= ord(character) <= 0x11FF:
        return 0  # a mark on the letter before it
    wide = east_asian_width(character) in "WF" and category(character) != "Cn"
    return 2 if wide else 1


def clipped(text: str, width: int) -> str:
    """As much of a text as fits into that many cells."""
    while cells(text) > width:
        text = text[:-1]
    return text


def filled(text: str, width: int) -> str:
    """A text cut or filled up with spaces to just that many cells."""
    text = clipped(text, width)
    return text + " " * (width - cells(text))


def wrapped(text: str, width: int) -> list[str]:
    """A text in lines of at most that many cells, broken at spaces; a word too long for a line is cut there."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        if line and cells(line) + 1 + cells(word) <= width:
            line += " " + word
            continue
        if line:
            lines.append(line)
        while cells(word) > width and clipped(word, width):
            lines.append(clipped(word, width))
            word = word[len(lines[-1]) :]
        line = word
    return [*lines, line] if line else lines


class Grid:
    """A sheet of cells to draw on: one character and one role each."""

    def __init__(self, width: int, height: int) -> None:
        """An empty sheet of `width` × `height` cells."""
        self.width = width
        self.height = height
        self._cells: list[list[tuple[str, Role]]] = [[(" ", "plain")] * width for _ in range(height)]

    def put(self, x: int, y: int, text: str, role: Role) -> None:
        """Write `text` from cell x on line y; what falls outside the sheet is left out."""
        if not 0 <= y < self.height:
            return
        for character in text:
            taken = _cells(character)
            if x >= 0 and x + taken <= self.width:
                if taken == 0:
                    self._mark(x - 1, y, character)
                for at in range(x, x + taken):
                    self._clear(at, y)
                    self._cells[y][at] = (character if at == x else "", role)
            x += taken

    def _mark(self, x: int, y: int, mark: str) -> None:
        """A mark joins the letter before it."""
        if x > 0 and not self._cells[y][x][0]:
            x -= 1
        if 0 <= x < self.width:
            letter, role = self._cells[y][x]
            self._cells[y][x] = (letter + mark, role)

    def _clear(self, x: int, y: int) -> None:
        """No half of a wide letter stays when the other half is written over."""
        row = self._cells[y]
        if not row[x][0] and x > 0:
            row[x - 1] = (" ", row[x - 1][1])
        if x + 1 < self.width and not row[x + 1][0]:
            row[x + 1] = (" ", row[x + 1][1])

    def role_at(self, x: int, y: int) -> Role:
        """The role of one cell; `plain` outside the sheet."""
        if 0 <= y < self.height and 0 <= x < self.width:
            return self._cells[y][x][1]
        return "plain"

    def lines(self) -> list[Line]:
        """The sheet as lines of spans, neighbours of one role joined."""
        return [list(_joined(row)) for row in self._cells]


def _joined(cells: Sequence[tuple[str, Role]]) -> Iterable[Span]:
    start = 0
    for end in range(1, len(cells) + 1):
        if end == len(cells) or cells[end][1] != cells[start][1]:
            yield Span("".join(character for character, _ in cells[start:end]), cells[start][1])
            start = end


def as_text(lines: Iterable[Line]) -> list[str]:
    """The characters alone, without spaces at the ends of lines."""
    return ["".join(span.text for span in line).rstrip() for line in lines]
