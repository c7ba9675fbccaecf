"""The start, line by line: how things stand with the household, and what was left half done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from selfcheck.errors import RecordProblem
from selfcheck.loading.conversations import script
from selfcheck.plain import pages
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone
from selfcheck.plain.waiting import patience
from selfcheck.sitting import HomeFacts, Sitting, Unfinished

HOME = "home"
WHAT_NOW = "what_now"
GO_ON, ANEW, LATER = "unfinished_on", "unfinished_anew", "unfinished_later"
#: so many damaged files are named at the start. Our choice: more would push the question off the screen.
MOST_NAMED = 8


class AtStart:
    """Says what belongs before the question what to do. `line` gives one typed line."""

    def __init__(self, sitting: Sitting, out: Speaker, words: Words, line: Callable[[], str]) -> None:
        self._sitting = sitting
        self._out = out
        self._words = words
        self._line = line

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
        if home.look_again is not None:
            self._out.say(say("menu", "look_again", day=pages.day(home.look_again, self._sitting)))
        if home.problems:
            self._out.gap()
            self._out.say(say("menu", "problems"))
            self._name(home.problems)
        self._out.gap()
        return home

    def offer(self, unfinished: Unfinished) -> str:
        """What to do about what was left half done: `GO_ON`, `ANEW` or `LATER`. Raises Gone when they leave."""
        self._name(unfinished.problems)
        return self._pick(unfinished, LATER)

    def go_on_or_anew(self, unfinished: Unfinished) -> str:
        """The same where its kind of conversation has just been picked: `GO_ON` or `ANEW`."""
        return self._pick(unfinished)

    def _name(self, problems: Sequence[RecordProblem]) -> None:
        """Each file that cannot be used; after some, only how many more there are."""
        for problem in problems[:MOST_NAMED]:
            self._out.say(str(problem), indent="  ", first="- ")
        if len(problems) > MOST_NAMED:
            self._out.say(
                self._words("menu", "more_problems", count=len(problems) - MOST_NAMED), indent="  ", first="- "
            )

    def _pick(self, unfinished: Unfinished, *others: str) -> str:
        """One of the choices. With a lid off nothing begins anew: going on begins with where the lid is."""
        options: tuple[str, ...] = (GO_ON, *(() if unfinished.lid_off else (ANEW,)), *others)
        self._out.say(self._told(unfinished))
        self._out.say(self._words("menu", "unfinished_ask"))
        for number, name in enumerate(options, 1):
            self._out.choice(number, self._words("menu", name))
        while True:
            line = self._line().strip().rstrip(".")
            if line.isdecimal() and 1 <= int(line) <= len(options):
                return options[int(line) - 1]
            if line.lower() in ("quit", "leave", "exit", "save and leave"):
                self._out.say(self._words("menu", "bye"))
                raise Gone(0)
            self._out.say(self._words("menu", "pick", most=len(options)))

    def _told(self, unfinished: Unfinished) -> str:
        labels = script(self._sitting.place, HOME).words_of(WHAT_NOW).options
        flow = labels.get(unfinished.flow, unfinished.flow)
        try:
            began = pages.day(date.fromisoformat(unfinished.started[:10]), self._sitting)
        except ValueError:
            began = "?"
        line = self._words("menu", "unfinished", flow=flow.rstrip("?."), day=began)
        return f"{line} {self._words('menu', 'unfinished_lid')}" if unfinished.lid_off else line
