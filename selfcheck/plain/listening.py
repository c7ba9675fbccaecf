"""Lines from a person or a pipe, and the signals that end a program, met only while it waits for a line."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType
from typing import TextIO

#: A longer line is no answer; the rest of it is thrown away. Our choice.
LONGEST_LINE = 20_000


class Interrupted(Exception):
    """A signal came while the program waited for a line, or just before it. `number`: which."""

    def __init__(self, number: int) -> None:
        super().__init__(f"signal {number}")
        self.number = number


class Listener:
    """Reads lines. A signal that comes while an answer is being saved waits until that is done."""

    def __init__(self, stream: TextIO) -> None:
        self._stream = stream
        self._waiting = False
        self._pending = 0
        self.shows_typing = stream.isatty()

    def line(self) -> str | None:
        """The next line without its end; None when there are no more. Raises Interrupted."""
        self._waiting = True
        try:
            self._meet_signal()
            text = self._stream.readline(LONGEST_LINE)
            rest = text
            while rest and not rest.endswith("\n"):
                rest = self._stream.readline(LONGEST_LINE)
        finally:
            self._waiting = False
        return text.rstrip("\r\n") if text else None

    @contextmanager
    def minding_signals(self) -> Iterator[None]:
        """Turn signals into `Interrupted` while this lasts."""
        names = [name for name in ("SIGINT", "SIGTERM", "SIGHUP", "SIGBREAK") if hasattr(signal, name)]
        before = {number: signal.signal(number, self._take) for number in (getattr(signal, name) for name in names)}
        try:
            yield
        finally:
            for number, handler in before.items():
                signal.signal(number, handler)

    def _take(self, number: int, frame: FrameType | None) -> None:
        self._pending = number
        if self._waiting:
            self._meet_signal()

    def _meet_signal(self) -> None:
        if self._pending:
            number, self._pending = self._pending, 0
            raise Interrupted(number)
