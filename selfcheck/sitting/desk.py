"""Where one is among pages: the `Desk` keeps those one came through, takes lines in, and does what their ways ask for.

Pages are made anew each time they come into view, so that they never show what is no longer so.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from typing import TYPE_CHECKING, TypeVar

from selfcheck.errors import SelfcheckError
from selfcheck.sitting.steps import Back, Danger, Go, Page, Stay, Step, Talk, Way
from selfcheck.text import clean

if TYPE_CHECKING:
    from selfcheck.interview.side_questions import Reply

Taken = TypeVar("Taken", Step, "Step | None")
#: commands that no page takes for what it asks for
_ANYWHERE = ("why", "how", "help", "repeat", "trouble")


@dataclass(slots=True)
class Said:
    """What is said to the last thing done on a page."""

    text: str = ""
    kind: str = "text"
    source: str = ""


@dataclass
class Desk:
    """Where one is among pages. The words are those of `words/record.toml`, table "desk".

    `ask_back` answers questions; `ask_near` gives the answers that may be meant where it has none that is sure;
    `command_in` tells which command of a conversation a line is, or "call_for_help", or "answer" for a bare yes, no or
    none; "" for neither. Whoever drives it calls `pick` or `hear`, and does what the step that comes back asks for: a
    conversation to hold, after which `ended` is called, or a danger to take up. `over`: the first page was left.
    """

    first: Callable[[], Page]
    phrases: Callable[..., str]
    ask_back: Callable[[str], Reply | None] = lambda line: None
    ask_near: Callable[[str], Sequence[Reply]] = lambda line: ()
    command_in: Callable[[str], str] = lambda line: ""
    own_tank: bool = True  # the household's tank may stand beside the pages
    over: bool = False
    said: Said = field(default_factory=Said)
    _stack: list[Callable[[], Page]] = field(default_factory=list)
    _page: Page | None = None

    def __post_init__(self) -> None:
        self._stack = [self.first]

    @property
    def page(self) -> Page:
        """The page in view, with the way back as its last way."""
        if self._page is None:
            made = self._stack[-1]()
            back = self.phrases("back" if len(self._stack) > 1 else "to_start")
            self._page = replace(made, ways=(*made.ways, Way(back, Back, ("close",))))
        return self._page

    def pick(self, number: int) -> Step:
        """Go the way of that number, from 1. A number that is none stays, and says so."""
        ways = self.page.ways
        if not 1 <= number <= len(ways):
            return self.take(Stay(self.phrases("pick", most=str(len(ways))), "trouble"))
        return self._try(ways[number - 1].go)

    def hear(self, line: str) -> Step:
        """A typed line: danger first, then a number or words of a way, then what the page asks for, then a question."""
        from selfcheck.interview.hazards import find

        line = clean(line).strip()
        hazard, command = find(line), self.command_in(line) if line else ""
        urgent = hazard is not None and (hazard.sure or command not in _ANYWHERE)  # "help" may ask for the ways on
        if urgent or command == "call_for_help":
            return Danger(line)
        page = self.page
        bare = line.rstrip(".").casefold()
        if bare in ("back", "go back", "close"):
            return self.back()
        if bare in ("quit", "leave", "exit", "save and leave"):
            return self.take(Back(len(self._stack)))
        number = int(bare) if bare.isascii() and bare.isdecimal() and len(bare) < 5 else 0
        if number and (page.hear is None or (page.picks and number <= len(page.ways))):
            return self.pick(number)
        exact = [place for place, way in enumerate(page.ways, 1) if _is_called(bare, way)]
        if command in _ANYWHERE and not exact:
            return self._do(command)
        if page.hear is not None and line and len(exact) != 1:
            heard = self._try(partial(page.hear, line))
            if heard is not None:
                return heard
            if number:
                return self.pick(number)
        fitting = exact or [place for place, way in enumerate(page.ways, 1) if _fits(bare, way)]
        if len(fitting) == 1:
            return self.pick(fitting[0])
        if page.finds is not None and line and (found := self._try(partial(page.finds, bare))) is not None:
            return found
        if command:
            return self._do(command)
        return (self._answered(line) if line else None) or self.take(
            Stay(self.phrases("pick", most=str(len(page.ways))), "trouble")
        )

    def _do(self, command: str) -> Step:
        """Carry out a command of the conversations as far as a page can; what it cannot is met with the ways on."""
        if command == "trouble":
            return Danger("")
        if command == "back":
            return self.back()
        if command in ("leave", "quit"):
            return self.take(Back(len(self._stack)))
        if command == "repeat":
            return self.take(Stay(again=True))
        if command in ("why", "how", "help", "change"):
            return self.take(Stay(self.phrases("change" if command == "change" else "help")))
        return self.take(Stay(self.phrases("pick", most=str(len(self.page.ways))), "trouble"))

    def _answered(self, line: str) -> Step | None:
        """The guide's answer to a question; where none is sure, a page with those that may be meant."""
        reply = self.ask_back(line)
        if reply is not None:
            taken = "" if reply.sure else self.phrases("taken_as", asked=reply.question) + " "
            self.said = Said(taken + reply.text, "help", reply.source)
            return Stay()
        near = self.ask_near(line)
        ways = tuple(Way(one.question, partial(Back, 1, one.text, one.source)) for one in near)
        return self.take(Go(lambda: Page(self.phrases("near"), ways=ways))) if ways else None

    def back(self) -> Step:
        """One page back; from the first one, away."""
        return self.take(Back())

    def ended(self, talk: Talk) -> Step:
        """A conversation that a way began has come to its end."""
        return self._try(partial(talk.then, talk.conversation) if talk.then is not None else Stay)

    def _try(self, act: Callable[[], Taken]) -> Taken | Stay:
        """Take a step; one that cannot be taken stays on the page and says why. None is no step."""
        step: Taken | Stay
        try:
            step = act()
        except SelfcheckError as error:
            step = Stay(f"{error.what} {error.mend}", "trouble")
        if step is not None:
            self.take(step)
        return step

    def take(self, step: Step) -> Step:
        """Do what a step asks for as far as that lies here, and give it back."""
        self.said = Said()
        if isinstance(step, Go):
            if step.replace:
                self._stack.pop()
            self._stack.append(step.page)
        elif isinstance(step, Back):
            del self._stack[max(0, len(self._stack) - step.pages) :]
            self.over = not self._stack
            self.said = Said(step.say, "help" if step.source else "text", step.source)
        elif isinstance(step, Stay):
            self.said = Said(step.say, step.kind)
        self._page = None
        return step


def _is_called(line: str, way: Way) -> bool:
    """Whether what was typed is the whole label of a way, or one of its other wordings."""
    named = line in (way.label.rstrip(".").casefold(), *(other.casefold() for other in way.also))
    return named or (way.takes is not None and way.takes(line))


def _fits(line: str, way: Way) -> bool:
    """Whether what was typed is words of a way, all of them in its label."""
    typed = words_of(line)
    return bool(typed) and typed <= words_of(way.label.casefold())


def words_of(text: str) -> set[str]:
    """The telling words of a line or a label in small letters."""
    kept = "".join(character if character.isalnum() else " " for character in text)
    return set(kept.split()) - {"the", "a", "an", "my", "to", "of", "it"}
