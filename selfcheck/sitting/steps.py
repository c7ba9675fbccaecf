"""Pages that both faces show, as data: something to read, and numbered ways on, each of which gives a `Step`."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from selfcheck.drawing.spans import Line
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage

    EndingPage = VerdictPage | PartedPage

PartKind = Literal["text", "strong", "muted", "trouble", "items", "fixed"]


@dataclass(frozen=True, slots=True)
class Part:
    """Lines that belong together, under a title or none. "items" are a list; "fixed" lines keep their spaces."""

    lines: tuple[str, ...]
    title: str = ""
    kind: PartKind = "text"


@dataclass(frozen=True, slots=True)
class Drawn:
    """A picture: `lines(width, height)` for a terminal, `words` for who hears it."""

    lines: Callable[[int, int], Sequence[Line]]
    words: tuple[str, ...]
    spread: bool = False  # it needs the whole width


@dataclass(frozen=True, slots=True)
class Go:
    """Open a page above this one. `replace`: in its place instead."""

    page: Callable[[], Page]
    replace: bool = False


@dataclass(frozen=True, slots=True)
class Talk:
    """Hold a conversation. `then` gives the step after its end; None: it is kept as every conversation is."""

    conversation: Conversation
    then: Callable[[Conversation], Step] | None = None
    beside: Drawn | None = None  # shown beside it in place of the household's tank
    before: tuple[str, ...] = ()  # said before the first question


@dataclass(frozen=True, slots=True)
class Stay:
    """Remain on the page, made anew. `say`: what is said to what was done, "trouble" where it went wrong.

    `again`: all of the page is wanted once more.
    """

    say: str = ""
    kind: Literal["text", "trouble"] = "text"
    again: bool = False


@dataclass(frozen=True, slots=True)
class Back:
    """So many pages back. `say`: what is said there, with the `source` it is from."""

    pages: int = 1
    say: str = ""
    source: str = ""


@dataclass(frozen=True, slots=True)
class Danger:
    """The line that was typed tells of danger; "" where it says only that something is wrong."""

    line: str


Step = Go | Talk | Stay | Back | Danger


@dataclass(frozen=True, slots=True)
class Way:
    """One way on: its words, other words for it, and what it does. `slow`: it may take over a second; `takes`: tells
    whether any other line means it.
    """

    label: str
    go: Callable[[], Step]
    also: tuple[str, ...] = ()
    slow: bool = False
    takes: Callable[[str], bool] | None = None


@dataclass(frozen=True, slots=True)
class Page:
    """One page. `hear`: takes a typed line in, where the page asks for one; `hint` says what for. None: not for it.

    `finds`: the way to something that stands on the page and is named by a line that no way of its own is.
    """

    title: str
    parts: tuple[Part, ...] = ()
    ways: tuple[Way, ...] = ()
    hear: Callable[[str], Step | None] | None = None
    hint: str = ""
    verdict: EndingPage | None = None
    drawn: Drawn | None = None
    ask: str = ""
    finds: Callable[[str], Step | None] | None = None

    @property
    def picks(self) -> bool:
        """Whether a number alone picks a way; where a line is asked for and the only way is back, it is that line."""
        return self.hear is None or len(self.ways) > 1
