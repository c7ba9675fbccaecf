"""One conversation, line by line."""

from __future__ import annotations

import contextlib
import signal
from collections.abc import Callable, Sequence

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message, Prompt
from selfcheck.plain.listening import Interrupted, Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.waiting import get_ready
from selfcheck.sitting import Sitting
from selfcheck.sitting.paper_pages import asks_for_sheet, sheet_made


class Gone(Exception):
    """The person, the terminal or the pipe has gone. `code`: the exit code."""

    def __init__(self, code: int) -> None:
        super().__init__(code)
        self.code = code


class Talk:
    """Puts a conversation on a speaker and feeds it from a listener."""

    def __init__(self, sitting: Sitting | None, speaker: Speaker, listener: Listener, words: Words) -> None:
        self._sitting = sitting
        self._out = speaker
        self._in = listener
        self._words = words
        self._stage = ""
        self._trouble = ""

    def run(
        self,
        conversation: Conversation,
        until: str = "",
        first: str = "",
        before_each: Callable[[str], None] = lambda line: None,
    ) -> None:
        """Talk until the conversation has ended, or until the question `until` has its answer.

        `first`: a line that was typed before it began. `before_each` sees every line first, and may raise. Raises Gone
        when there is nobody left to talk to; all that was said is saved then.
        """
        self.open(conversation)
        if first:
            self.hear(conversation, first)
        while conversation.ending is None and not (until and _answered(conversation, until)):
            line = self._ask(conversation)
            before_each(line)
            if self._sitting is not None and asks_for_sheet(self._sitting, line):
                self._out.say(sheet_made(self._sitting))
                continue
            said = conversation.hear(line)
            if until and _answered(conversation, until):
                said = [message for message in said if message.kind != "echo"]
            self._show(conversation, said)

    def open(self, conversation: Conversation) -> list[Message]:
        """Begin a conversation and show what is said; it is given back as well."""
        self._stage = ""
        said = conversation.start()
        self._show(conversation, said)
        return said

    def hear(self, conversation: Conversation, line: str) -> list[Message]:
        """A line that is known beforehand: shown as if it were typed, then answered."""
        self._out.ask()
        self._out.heard(line)
        said = conversation.hear(line)
        self._show(conversation, said)
        return said

    def _ask(self, conversation: Conversation) -> str:
        """The next line; on the way out, what must be asked before leaving is asked first."""
        leaving = False
        while True:
            self._out.ask()
            if self._in.shows_typing:  # somebody reads and types; a prepared conversation waits for nobody
                get_ready()
            try:
                line = self._in.line()
            except Interrupted as interrupted:
                with contextlib.suppress(OSError):
                    self._out.line("")
                if interrupted.number != signal.SIGINT or leaving:
                    self._goodbye(conversation, 130)
                leaving = True
                self._leave(conversation, 130)
                continue
            if line is None:
                self._out.line("")
                if not leaving:
                    self._leave(conversation, 0)
                self._goodbye(conversation, 0)
                raise AssertionError("goodbye always goes")
            if not self._in.shows_typing:
                self._out.heard(line)
            return line

    def _leave(self, conversation: Conversation, code: int) -> None:
        """Ask to leave, as if it had been typed. Raises Gone when nothing has to be asked before that."""
        self._show(conversation, conversation.do("leave"))
        if conversation.ending is not None:
            raise Gone(code)

    def _goodbye(self, conversation: Conversation, code: int) -> None:
        """Go without an answer: say what must be said about what may stand open. The terminal may be gone already."""
        prompt = conversation.prompt
        with contextlib.suppress(OSError):
            if prompt is not None and prompt.may_stand_open:
                self._out.say(conversation.script.interface.phrases["left_open"][0])
            self._out.say(self._words("talk", "interrupted"))
            self._out.flush()
        raise Gone(code)

    def _show(self, conversation: Conversation, messages: Sequence[Message]) -> None:
        self._say_trouble()
        prompt = conversation.prompt
        looking_back = [
            place for place, one in enumerate(messages, 1) if one.kind in ("said", "echo", "note", "trouble")
        ]
        turn = looking_back[-1] if looking_back else 0
        while turn < len(messages) and messages[turn].kind == "caution":
            turn += 1  # a danger comes before any heading
        for message in messages[:turn]:
            self._message(message)
        if prompt is not None:
            self._say_part(prompt)
        for message in messages[turn:]:
            self._message(message)
        if prompt is None:
            return
        for choice in prompt.choices:
            self._out.choice(choice.number, choice.label)
        if prompt.hint:
            self._out.say(f"({prompt.hint})")

    def _say_part(self, prompt: Prompt) -> None:
        """Which part of the conversation begins here, when another one does."""
        if not prompt.stage or prompt.stage == self._stage:
            return
        self._stage = prompt.stage
        place = next((number for number, one in enumerate(prompt.stages, 1) if one.state == "now"), 0)
        if place:
            title = prompt.stages[place - 1].title
            self._out.gap()
            self._out.say(self._words("talk", "part", now=place, all=len(prompt.stages), title=title))

    def _message(self, message: Message) -> None:
        if message.kind == "said":
            return  # the line itself is on the screen or on the paper already
        if message.kind in ("ask", "caution", "say"):
            self._out.gap()
        self._out.say(f"{message.title}: {message.text}" if message.title else message.text)
        if message.source:
            self._out.say(self._words("talk", "source", source=message.source), indent="  ")
        if message.kind == "caution":
            self._out.gap()

    def _say_trouble(self) -> None:
        """What could not be saved stands before the next question, so that nobody takes it for saved."""
        trouble = self._sitting.trouble if self._sitting is not None else ""
        if trouble and trouble != self._trouble:
            self._out.gap()
            self._out.say(self._words("talk", "not_saved", trouble=trouble))
            self._out.gap()
        self._trouble = trouble


def _answered(conversation: Conversation, question: str) -> bool:
    return any(answer.question == question and answer.state == "value" for answer in conversation.answers)
