"""The whole assistant line by line: the start, the conversations, the verdict."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.errors import RecordProblem
from selfcheck.interview import hazards
from selfcheck.loading.conversations import flow_ids, script
from selfcheck.loading.place import Place, content_place
from selfcheck.plain import pages
from selfcheck.plain.desks import DeskFace
from selfcheck.plain.listening import Interrupted, Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone, Talk
from selfcheck.plain.waiting import patience
from selfcheck.sitting import HomeFacts, Sitting, Unfinished

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage
    from selfcheck.sitting.desk import Desk
    from selfcheck.sitting.desk import Talk as DeskTalk

HOME = "home"
WHAT_NOW = "what_now"
TROUBLE = "trouble"
#: so many damaged files are named at the start. Our choice: more would push the question off the screen.
MOST_NAMED = 8


def run(
    folder: Path | None,
    today: date,
    *,
    rules: str | None = None,
    content: Path | None = None,
    begin: bool = False,
    fixed_day: bool = False,
) -> int:
    """The assistant on standard input and output, until the person leaves. Gives the exit code.

    `begin`: the folder may be new. `fixed_day`: `today` was given, so that it stands for the clock in the record too.
    """
    place = content_place(content)
    speaker, listener, words = Speaker(sys.stdout), Listener(sys.stdin), Words(place)
    with patience(speaker, words("menu", "opening"), words):
        sitting = Sitting.open(folder, place, today, rules, begin=begin, fixed_day=fixed_day)
    face = Face(sitting, speaker, listener)
    try:
        with listener.minding_signals():
            return face.run()
    except Gone as gone:
        return gone.code
    finally:
        sitting.close()


class Danger(Exception):
    """Something was typed, outside of any conversation, that tells of danger. `line`: what."""

    def __init__(self, line: str) -> None:
        super().__init__(line)
        self.line = line


class Face:
    """The line-by-line face of one household."""

    def __init__(self, sitting: Sitting, speaker: Speaker, listener: Listener) -> None:
        self._sitting = sitting
        self._place: Place = sitting.place
        self._out = speaker
        self._in = listener
        self._words = Words(sitting.place)
        self._asked_if_over = False
        self._talk = Talk(sitting, speaker, listener, self._words)
        self._desks = DeskFace(speaker, self._words, self._line, self._at_desk)

    def run(self) -> int:
        """Start screen, what the person picks, and back again, until they leave. Gives the exit code."""
        while True:
            try:
                if self._say_home().danger_on is not None and not self._asked_if_over:
                    self._ask_if_over()
                    continue
                if self._offer_unfinished():
                    self._open(self._what_now())
            except Danger as danger:
                self._converse(self._sitting.begin(TROUBLE), danger.line)

    def _ask_if_over(self) -> None:
        """Ask once whether a danger told on an earlier day is over."""
        from selfcheck.sitting.over import over_desk

        self._asked_if_over = True
        self._desks.run(over_desk(self._sitting))

    def _open(self, wish: str) -> None:
        """Do what was picked at the start: a conversation, or a page to read."""
        if wish in flow_ids(self._place):
            unfinished = self._sitting.unfinished()
            if unfinished is not None and unfinished.flow == wish and not self._may_begin_anew(unfinished):
                self._converse(self._sitting.resume())
                return
            self._converse(self._sitting.begin(wish))
            return
        desk = self._desk(wish)
        if desk is None:
            self._out.say(self._words("menu", "not_here"))
            self._wait()
        else:
            self._desks.run(desk)

    def _desk(self, wish: str) -> Desk | None:
        """The pages that a choice of the start opens; None when it opens none."""
        from selfcheck.sitting.opening import desk

        return desk(self._sitting, wish)

    def _converse(self, conversation: Conversation, first: str = "") -> None:
        """Talk to the end, then finish the files and show the verdict. Raises Gone when the person leaves before it."""
        found = self._hold(conversation, first)
        if isinstance(found, str):
            self._wait()
            return
        from selfcheck.sitting.opening import verdict_desk

        self._desks.run(verdict_desk(self._sitting, found))

    def _hold(self, conversation: Conversation, first: str = "") -> VerdictPage | PartedPage | str:
        """Talk to the end and finish the files; the page that follows. Raises Gone when the person leaves before it."""
        self._talk.run(conversation, first=first)
        if conversation.ending is None or conversation.ending.left:
            raise Gone(0)
        found = self._sitting.conclude(conversation)
        if self._sitting.trouble:
            self._out.gap()
            self._out.say(self._words("talk", "not_saved", trouble=self._sitting.trouble))
        return found

    def _at_desk(self, desk: Desk, talk: DeskTalk) -> None:
        """Hold a conversation that a page began, then go on among the pages."""
        if talk.then is not None:
            for line in (*talk.before, *(talk.beside.words if talk.beside is not None else ())):
                self._out.say(line, indent="  ", first="- ")
            self._talk.run(talk.conversation)
        else:
            found = self._hold(talk.conversation)
            if not isinstance(found, str):
                pages.show(found, self._out, self._words)
                self._wait()
        desk.ended(talk)

    def _say_home(self) -> HomeFacts:
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
            self._out.say(home.verdict_line)
        if home.look_again is not None:
            self._out.say(say("menu", "look_again", day=pages.day(home.look_again, self._sitting)))
        if home.problems:
            self._out.gap()
            self._out.say(say("menu", "problems"))
            self._name(home.problems)
        self._out.gap()
        return home

    def _name(self, problems: Sequence[RecordProblem]) -> None:
        """Each file that cannot be used; after some, only how many more there are."""
        for problem in problems[:MOST_NAMED]:
            self._out.say(str(problem), indent="  ", first="- ")
        if len(problems) > MOST_NAMED:
            self._out.say(
                self._words("menu", "more_problems", count=len(problems) - MOST_NAMED), indent="  ", first="- "
            )

    def _what_now(self) -> str:
        """What the person picks at the start. Raises Gone when they leave."""
        from selfcheck.sitting.at_start import start_talk

        conversation = start_talk(self._sitting)
        self._talk.run(conversation, until=WHAT_NOW, before_each=_mind_danger)
        picked = [one.value for one in conversation.answers if one.question == WHAT_NOW and one.state == "value"]
        if not picked:
            raise Gone(0)
        return str(picked[-1])

    def _offer_unfinished(self) -> bool:
        """Offer to go on where the person stopped. False: that was done, and the start comes again."""
        unfinished = self._sitting.unfinished()
        if unfinished is None:
            return True
        self._name(unfinished.problems)
        options: tuple[str, ...] = ("unfinished_on", "unfinished_anew", "unfinished_later")
        if unfinished.lid_off:  # first it is asked where the lid is, which begins what is gone on with
            options = ("unfinished_on", "unfinished_later")
        picked = self._pick(self._unfinished_line(unfinished), "unfinished_ask", options)
        if picked == "unfinished_on":
            self._converse(self._sitting.resume())
            return False
        if picked == "unfinished_anew":
            self._sitting.discard()
            return self._offer_unfinished()
        return True

    def _may_begin_anew(self, unfinished: Unfinished) -> bool:
        options = ("unfinished_on",) if unfinished.lid_off else ("unfinished_on", "unfinished_anew")
        return self._pick(self._unfinished_line(unfinished), "unfinished_ask", options) == "unfinished_anew"

    def _unfinished_line(self, unfinished: Unfinished) -> str:
        labels = script(self._place, HOME).words_of(WHAT_NOW).options
        flow = labels.get(unfinished.flow, unfinished.flow)
        began = unfinished.started[:10]
        try:
            began = pages.day(date.fromisoformat(began), self._sitting)
        except ValueError:
            began = "?"
        line = self._words("menu", "unfinished", flow=flow.rstrip("?."), day=began)
        return f"{line} {self._words('menu', 'unfinished_lid')}" if unfinished.lid_off else line

    def _pick(self, before: str, question: str, options: tuple[str, ...]) -> str:
        """A small question of this face's own. Raises Gone at the end of the input."""
        self._out.say(before)
        self._out.say(self._words("menu", question))
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

    def _wait(self) -> None:
        self._out.gap()
        self._out.say(self._words("menu", "press_enter"))
        self._line()

    def _line(self) -> str:
        self._out.ask()
        try:
            line = self._in.line()
        except Interrupted as interrupted:
            self._out.line("")
            raise Gone(130) from interrupted
        if line is None:
            self._out.line("")
            raise Gone(0)
        if not self._in.shows_typing:
            self._out.heard(line)
        _mind_danger(line)
        return line


def _mind_danger(line: str) -> None:
    """Raises Danger when a line tells of one; a lone word that only may is left to what is being asked."""
    hazard = hazards.find(line)
    if hazard is not None and (hazard.sure or len(line.split()) > 1):
        raise Danger(line)
