"""A drawn line is a list of spans: a piece of text and the part it plays. Faces map parts to colours."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal, get_args

Role = Literal[
    "plain", "label", "scum", "scum_edge", "clear", "sludge", "sludge_edge", "water", "wall", "tee", "limit",
    "limit_line", "last", "earth", "air", "unknown",
]  # fmt: skip
ROLES: tuple[Role, ...] = get_args(Role)


@dataclass(frozen=True, slots=True)
class Span:
    """A run of characters that share one role. Every character used by the pictures is one cell wide."""

    text: str
    role: Role = "plain"


Line = list[Span]


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
        for offset, character in enumerate(text):
            if 0 <= x + offset < self.width:
                self._cells[y][x + offset] = (character, role)

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
