"""What was said so far. One widget that paints only the lines in view, so it stays quick however long it gets."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple, Protocol

from textual import events
from textual.geometry import Size
from textual.scroll_view import ScrollView
from textual.strip import Strip

from selfcheck.app.content_text import wrapped
from selfcheck.app.widgets.lines import Piece, PieceLine, strip_of

_WIDEST = 74  # cells of text on a line: longer lines are hard to read
_LEAST_READ = 3  # lines of a grave caution that stand above the question held at the foot; our choice
_BARRED = {"caution": "▌", "help": "│", "trouble": "│"}


class Said(Protocol):
    """A message as the conversation gives it."""

    @property
    def kind(self) -> str: ...
    @property
    def text(self) -> str: ...
    @property
    def title(self) -> str: ...
    @property
    def source(self) -> str: ...


class Own(NamedTuple):
    """A message of the face's own."""

    kind: str
    text: str
    title: str = ""
    source: str = ""


class MessageLog(ScrollView, can_focus=False):
    """Messages as lines: the assistant flush left, the person behind `›`, cautions with a bar down their side.

    A turn with a grave caution is shown from its first word. Where not all fits, the question is held at the foot.
    """

    ALLOW_SELECT = False

    def __init__(self, *, more: str = "", id: str | None = None) -> None:
        super().__init__(id=id)
        self._more = more
        self._grave: int | None = None  # line at which the first grave caution of the present turn starts
        self._asked = 0  # lines of the question that the present turn ends in
        self._rest = 0  # line at the top while nobody has scrolled
        self._messages: list[Said] = []
        self._lines: list[PieceLine] = []
        self._laid_out_for = 0
        self._turn = 0  # line at which the present turn starts
        self._turn_message = 0
        self._short_say = False

    @property
    def message_count(self) -> int:
        """How many messages are held."""
        return len(self._messages)

    def add(self, messages: Sequence[Said]) -> None:
        """Add one turn at the end and bring it into view. Earlier turns step back."""
        self._turn, self._turn_message = len(self._lines), len(self._messages)
        self._messages.extend(messages)
        self._grave, self._asked = None, 0
        if self._laid_out_for:
            for message in messages:
                self._append(message, of_turn=True)
            self._fit()
        self.refresh()

    def clear(self) -> None:
        """Forget everything."""
        self._messages, self._lines = [], []
        self._turn = self._turn_message = 0
        self._grave, self._asked = None, 0
        self._fit()
        self.refresh()

    def turn_page(self, pages: int) -> None:
        """Read back, or come forward again, by what is in view."""
        self.scroll_relative(y=pages * max(1, self._read_rows() - 2), animate=False)

    def _append(self, message: Said, of_turn: bool) -> None:
        gap = bool(self._lines) and not self._runs_on(message)
        self._lines.extend([()] if gap else [])
        lines = lines_of(message, self._laid_out_for)
        if of_turn and self._grave is None and _is_grave(message):
            self._grave = len(self._lines)
        self._asked = len(lines) if of_turn and message.kind == "ask" else 0
        self._lines.extend(lines)
        self._short_say = _is_short(message, self._laid_out_for)

    def _runs_on(self, message: Said) -> bool:
        """Whether no empty line goes before it: what was understood, and short lines that make a list."""
        return message.kind == "echo" or (self._short_say and _is_short(message, self._laid_out_for))

    def _fit(self) -> None:
        self.virtual_size = Size(self.scrollable_content_region.width, len(self._lines))
        end = max(0, len(self._lines) - self.size.height)
        self._rest = end if self._grave is None else min(end, self._grave)
        self.scroll_to(y=self._rest, animate=False, force=True)

    def _read_rows(self) -> int:
        """Rows that show the lines in their order: all, but where a question is held at the foot."""
        height = self.size.height
        cut = self._grave is not None and self._rest + height < len(self._lines)
        if not cut or self.scroll_offset.y != self._rest:
            return height
        return max(1, height - 1 - self._held())

    def _held(self) -> int:
        return self._asked if self.size.height - 1 - self._asked >= _LEAST_READ else 0

    def on_resize(self, event: events.Resize) -> None:
        width = self.scrollable_content_region.width
        if width != self._laid_out_for and width > 0:
            self._laid_out_for = width
            self._lines, self._short_say, self._grave = [], False, None
            for index, message in enumerate(self._messages):
                if index == self._turn_message:
                    self._turn = len(self._lines)
                self._append(message, of_turn=index >= self._turn_message)
        self._fit()
        self.refresh()

    def render_line(self, y: int) -> Strip:
        width = self.scrollable_content_region.width
        above = max(0, self.size.height - len(self._lines))  # a short conversation stands at the foot, by its choices
        index, rows = y + self.scroll_offset.y - above, self._read_rows()
        if y == rows:
            return strip_of([Piece(f"↓ {self._more}", "muted")], width, self.app.theme)
        if y > rows:
            index = len(self._lines) - self.size.height + y
        line: PieceLine = self._lines[index] if 0 <= index < len(self._lines) else ()
        if index < self._turn:
            line = [Piece(piece.text, _stepped_back(piece.part)) for piece in line]
        return strip_of(line, width, self.app.theme)


def _stepped_back(part: str) -> str:
    return "past" if part in ("text", "strong", "said", "help", "trouble") else part


def _is_grave(message: Said) -> bool:
    """A caution that must be read from its first word, even where what follows does not fit below it."""
    return message.kind == "caution" and _level(message) in ("danger", "stop")


def _level(message: Said) -> str:
    """The level of a caution, by its signal word."""
    return next((level for level in ("danger", "stop", "note") if message.title.lower().startswith(level)), "caution")


def _is_short(message: Said, width: int) -> bool:
    return message.kind == "say" and not message.title and len(message.text) <= min(width, _WIDEST)


def lines_of(message: Said, width: int) -> list[PieceLine]:
    """One message as lines of at most `width` cells."""
    lines: list[PieceLine] = []
    room = min(width, _WIDEST)
    if message.kind == "said":
        indent = width // 4
        for number, text in enumerate(wrapped(message.text, max(8, room - indent - 2))):
            mark = "› " if number == 0 else "  "
            lines.append([Piece(" " * indent), Piece(mark, "mark"), Piece(text, "said")])
    elif message.kind in _BARRED:
        lines.extend(_barred(message, room))
    else:
        part = {"ask": "strong", "note": "muted"}.get(message.kind, "text")
        if message.title:
            lines.append([Piece(message.title, "strong")])
        lines.extend([Piece(text, part)] for text in wrapped(message.text, room))
        if message.source:
            lines.extend([Piece(text, "muted")] for text in wrapped(message.source, room))
    return lines


def _barred(message: Said, room: int) -> list[PieceLine]:
    part = message.kind
    if part == "caution":
        part = _level(message)
    bar = Piece(_BARRED[message.kind] + " ", "stop" if part == "danger" else part)
    lines: list[PieceLine] = []
    if message.title:
        title = f" {message.title} " if part == "danger" else message.title
        lines.append([bar, Piece(title, part if message.kind == "caution" else "strong")])
    lines.extend([bar, Piece(text)] for text in wrapped(message.text, room - 2))
    if message.source:
        lines.extend([bar, Piece(text, "muted")] for text in wrapped(message.source, room - 2))
    return lines
