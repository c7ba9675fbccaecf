"""The start, line by line: how things stand with the household, and what was left half done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial

from selfcheck.errors import RecordProblem
from selfcheck.loading.conversations import script
from selfcheck.plain import pages
from selfcheck.plain.desks import DeskFace
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone
from selfcheck.plain.waiting import patience
from selfcheck.sitting import HomeFacts, Sitting, Unfinished
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.steps import Back, Page, Step, Talk, Way

HOME = "home"
WHAT_NOW = "what_now"
GO_ON, ANEW, LATER = "unfinished_on", "unfinished_anew", "unfinished_later"
#: so many damaged files are named at the start. Our choice: more would push the question off the screen.
MOST_NAMED = 8
_LEAVING = ("quit", "leave", "exit", "save and leave")


class AtStart:
    """Says what belongs before the question what to do. `line` gives a typed line, `danger` takes up one of danger."""

    def __init__(
        self, sitting: Sitting, out: Speaker, words: Words, line: Callable[[], str], danger: Callable[[str], None]
    ) -> None:
        self._sitting = sitting
        self._out = out
        self._words = words
        self._line = line
        self._danger = danger

    def say(self) -> HomeFacts:
        """Whose record it is, the last check, when to look again, and which files cannot be used."""
        say = self._words
        with patience(self._out, say("menu", "opening"), say):
            home = self._sitting.home()
        self._out.gap()
        self._out.say(say("menu", "hello", name=home.name) if home.name else say("menu", "no_name"))
        if self._sitting.demonstration:
            self._out.say(say("menu", "demonstration"))
        if home.last_check is None:
            self._out.say(say("menu", "no_check"))
        else:
            self._out.say(say("menu", "last_check", day=pages.day(home.last_check, self._sitting)))
            self._out.say(f"{home.verdict_line} {home.by}".rstrip())
        if home.problems:
            self._out.gap()
            self._out.say(say("menu", "problems"))
            self._name(home.problems)
        self._out.gap()
        return home

    def offer(self, unfinished: Unfinished) -> str:
        """What to do about what was left half done: `GO_ON`, `ANEW` or `LATER`. Raises Gone when they leave."""
        self._name(unfinished.problems)
        return self.go_on_or_anew(unfinished)

    def go_on_or_anew(self, unfinished: Unfinished) -> str:
        """The same where its kind of conversation has just been picked."""
        from selfcheck.sitting.endings import page_words
        from selfcheck.sitting.record_pages import desk_of

        picked = [LATER]

        def pick(name: str) -> Step:
            picked.append(name)
            return Back()

        def answered(line: str) -> Step | None:
            listen = script(self._sitting.place, HOME).interface.listen
            yes, no = (line in listen.get(name, ()) for name in ("yes", "no"))
            return pick(GO_ON) if yes else Back() if no else None

        def page() -> Page:
            # with a lid off nothing begins anew: going on begins with where the lid is
            options = (GO_ON,) if unfinished.lid_off else (GO_ON, ANEW)
            ways = tuple(Way(self._words("menu", name), partial(pick, name)) for name in options)
            return Page(self._told(unfinished), ways=ways, ask=self._words("menu", "unfinished_ask"), finds=answered)

        desk = desk_of(self._sitting, page, page_words(self._sitting, "record"))
        DeskFace(self._out, self._words, self._line_or_gone, _no_talk, self._danger).run(desk)
        return picked[-1]

    def _line_or_gone(self) -> str:
        line = self._line()
        if line.strip().rstrip(".").casefold() in _LEAVING:
            self._out.say(self._words("menu", "bye"))
            raise Gone(0)
        return line

    def _name(self, problems: Sequence[RecordProblem]) -> None:
        """Each file that cannot be used; after some, only how many more there are."""
        for problem in problems[:MOST_NAMED]:
            self._out.say(str(problem), indent="  ", first="- ")
        if len(problems) > MOST_NAMED:
            self._out.say(
                self._words("menu", "more_problems", count=len(problems) - MOST_NAMED), indent="  ", first="- "
            )

    def _told(self, unfinished: Unfinished) -> str:
        labels = script(self._sitting.place, HOME).words_of(WHAT_NOW).options
        flow = labels.get(unfinished.flow, unfinished.flow)
        try:
            began = pages.day(date.fromisoformat(unfinished.started[:10]), self._sitting)
        except ValueError:
            began = "?"
        line = self._words("menu", "unfinished", flow=flow.partition(":")[0].rstrip("?."), day=began)
        return f"{line} {self._words('menu', 'unfinished_lid')}" if unfinished.lid_off else line


def _no_talk(desk: Desk, talk: Talk) -> None:
    """No way of this page holds a conversation."""
