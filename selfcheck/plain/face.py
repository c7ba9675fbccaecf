"""The whole assistant line by line: the start, the conversations, the verdict."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.interview import hazards
from selfcheck.loading.conversations import flow_ids
from selfcheck.loading.place import Place, content_place
from selfcheck.plain import pages
from selfcheck.plain.at_start import ANEW, GO_ON, LATER, WHAT_NOW, AtStart
from selfcheck.plain.desks import DeskFace
from selfcheck.plain.listening import Interrupted, Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone, Talk
from selfcheck.plain.waiting import patience
from selfcheck.sitting import Sitting

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage
    from selfcheck.sitting.desk import Desk
    from selfcheck.sitting.steps import Talk as DeskTalk

TROUBLE = "trouble"


def run(open_sitting: Callable[[Place], Sitting], content: Path | None = None) -> int:
    """The assistant on standard input and output, until the person leaves. Gives the exit code.

    `open_sitting` reads the record; `content`: an educator's own folder.
    """
    place = content_place(content)
    speaker, listener, words = Speaker(sys.stdout), Listener(sys.stdin), Words(place)
    with patience(speaker, words("menu", "opening"), words):
        sitting = open_sitting(place)
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
        self._start = AtStart(sitting, speaker, self._words, self._line, _in_danger)
        self._talk = Talk(sitting, speaker, listener, self._words)
        self._desks = DeskFace(speaker, self._words, self._line, self._at_desk, _in_danger)

    def run(self) -> int:
        """Start screen, what the person picks, and back again, until they leave. Gives the exit code."""
        while True:
            try:
                if self._start.say().danger_on is not None and not self._asked_if_over:
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
            if unfinished is not None and unfinished.flow == wish:
                picked = self._start.go_on_or_anew(unfinished)
                if picked != LATER:
                    self._converse(self._sitting.resume() if picked == GO_ON else self._sitting.begin(wish))
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
        picked = self._start.offer(unfinished)
        if picked == GO_ON:
            self._converse(self._sitting.resume())
            return False
        if picked == ANEW:
            self._sitting.discard()
            return self._offer_unfinished()
        return True

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


def _in_danger(line: str) -> None:
    """Raises Danger for a line that a page took for one; "" where it says only that something is wrong."""
    raise Danger(line)


def _mind_danger(line: str) -> None:
    """Raises Danger when a line tells of one; a lone word that only may is left to what is being asked."""
    hazard = hazards.find(line)
    if hazard is not None and (hazard.sure or len(line.split()) > 1):
        raise Danger(line)
