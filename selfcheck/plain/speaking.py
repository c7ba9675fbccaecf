"""Text onto a stream, line by line: cleaned, wrapped, and out before anything else happens."""

from __future__ import annotations

import re
import shutil
import textwrap
from typing import TextIO

from selfcheck.text import clean

#: Lines are no longer than this, also on a wide terminal: longer ones are hard to follow. Our choice.
WIDEST = 78
NARROWEST = 20
#: how the place of a file begins: it is never broken in two, so that it can be copied
_PLACE = re.compile(r"(?:^|(?<=\s))(?:~?/|[A-Za-z]:\\)[^\s/\\]")


class Speaker:
    """Writes paragraphs to one stream. `width`: columns, or None for that of the terminal."""

    def __init__(self, stream: TextIO, width: int | None = None) -> None:
        self._stream = stream
        wide = width if width is not None else shutil.get_terminal_size((WIDEST, 24)).columns - 1
        self.width = max(NARROWEST, min(wide, WIDEST))
        self._blank = True  # whether the last line was empty, so that there are never two

    def say(self, text: str, indent: str = "", first: str | None = None) -> None:
        """One or more paragraphs. `indent` stands before each line, `first` instead of it before the first."""
        lead = first if first is not None else indent
        for line in clean(text, 100_000).split("\n"):
            kept = line.expandtabs(4)
            own = kept[: len(kept) - len(kept.lstrip())]
            if _PLACE.match(kept.strip()):
                self.line(f"{lead}{own}{kept.strip()}")
                lead = indent
                continue
            wrapped = textwrap.wrap(
                kept.strip(),
                self.width,
                initial_indent=lead + own,
                subsequent_indent=indent + own,
                break_on_hyphens=False,
                break_long_words=_PLACE.search(kept) is None,
            )
            for piece in wrapped or [""]:
                self.line(piece)
            lead = indent

    def line(self, text: str) -> None:
        """One line as it is; the caller has seen to its length and its signs."""
        if not text.strip() and self._blank:
            return
        self._blank = not text.strip()
        print(text.rstrip(), file=self._stream)

    def gap(self) -> None:
        """An empty line, unless there is one already."""
        self.line("")

    def choice(self, number: int, label: str) -> None:
        """One numbered choice."""
        self.say(label, indent=" " * 5, first=f"{number:3}. ")

    def ask(self, mark: str = "> ") -> None:
        """The mark after which the person types. Everything before it is out when this comes back."""
        self._stream.write(mark)
        self._stream.flush()
        self._blank = False

    def heard(self, line: str) -> None:
        """What was typed, where no terminal shows it by itself."""
        self._stream.write(clean(line, 500).replace("\n", " ") + "\n")

    def flush(self) -> None:
        """Send everything on its way."""
        self._stream.flush()
