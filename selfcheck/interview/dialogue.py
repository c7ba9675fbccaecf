"""The conversation: what is typed goes in, what is said comes out.

Every answer is kept before anything further is said. The state is replayed from the answers alone; what stands here
beside it, such as the small question "which do you mean?", is gone after a break and asked again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import Any, Protocol

from selfcheck.interview import bounds, closing, commands, hearing
from selfcheck.interview.answers import BREAK, TAKEN_BACK, Answer
from selfcheck.interview.collect import collect, on_record
from selfcheck.interview.context import Context
from selfcheck.interview.echoing import echo
from selfcheck.interview.messages import Choice, Ending, Message, Prompt, Stage
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.phrases import Phrases, filled
from selfcheck.interview.prompting import introduce, numbered, prompt_for
from selfcheck.interview.recorded import recorded_answer
from selfcheck.interview.replay import follow, replay
from selfcheck.interview.script import Script
from selfcheck.interview.state import State
from selfcheck.interview.transcript import transcript
from selfcheck.text import clean

__all__ = ["Choice", "Conversation", "Ending", "Message", "Prompt", "Reply", "Stage"]


class Reply(Protocol):
    """An answer to a question asked back."""

    @property
    def text(self) -> str:
        """The answer in a few sentences."""

    @property
    def source(self) -> str:
        """Where that is said."""

    @property
    def asked(self) -> str:
        """The question that it answers."""

    @property
    def question(self) -> str:
        """The same, as it is shown to a person."""

    @property
    def sure(self) -> bool:
        """Whether that is surely what was asked."""


def _keep_nothing(answer: Answer) -> None:
    """Answers are held in memory only."""


class Conversation:
    """One conversation with one person.

    `answers`: those given before a break. `keep` is called with each answer before the next question is made, and may
    raise: then the answer does not count. `now` gives the time put on answers; the day of the context stands for it
    when it is not given. `ask_back` answers side questions; `ask_near` gives the answers that may be meant when it
    has none.
    """

    def __init__(
        self,
        script: Script,
        context: Context,
        answers: Iterable[Answer] = (),
        keep: Callable[[Answer], None] = _keep_nothing,
        now: Callable[[], str] | None = None,
        ask_back: Callable[[str], Reply | None] | None = None,
        ask_near: Callable[[str], Sequence[Reply]] | None = None,
    ) -> None:
        self.script = script
        self.context = context
        self.phrases = Phrases(script.interface)
        self.ask_back = ask_back
        self.ask_near = ask_near
        self.trouble: Callable[[], str] = str  # what is not saved and why; nothing where nobody says
        self.messages: list[Message] = []
        self.pending: Pending | None = None
        self.revising: str = ""  # id of a question that is asked once more, its old answer still counting
        self.asked_afresh: set[str] = set()  # questions whose value on record no longer holds
        self.misses = 0  # lines not understood since the question was asked
        self._answers = list(answers)
        self._keep = keep
        self._now = now or context.today.isoformat
        self._section = ""
        self._prompt: Prompt | None = None
        self._state = replay(script, context, self._answers)

    @property
    def answers(self) -> tuple[Answer, ...]:
        """Every answer in the order given, those taken back and the engine's own among them."""
        return tuple(self._answers)

    @property
    def state(self) -> State:
        """Where the conversation stands."""
        return self._state

    @property
    def node(self) -> Node | None:
        """The question that is open: the next one, or one that is being changed."""
        return self.script.nodes[self.revising] if self.revising else self._state.node

    @property
    def prompt(self) -> Prompt | None:
        """What is being asked; None at the end."""
        if self._prompt is None:
            self._prompt = self._make_prompt()
        return self._prompt

    @property
    def ending(self) -> Ending | None:
        """How it ended; None while it goes on."""
        if self.pending is not None or self.node is not None:
            return None
        return Ending(self._state.step.outcome, self._state.step.left)

    @property
    def recorded(self) -> Answer | None:
        """The value on record that is offered as "still true?" for the open question."""
        node = self.node
        if node is None or not node.carries or node.id in self.asked_afresh or self.revising:
            return None
        return recorded_answer(node, on_record(self.context, node.writes))

    def draft(self) -> dict[str, Any]:
        """The records collected so far: "check", "household" and "pump_out", each only where something is written."""
        return collect(self.script, self.context, self._state.answered)

    def start(self) -> list[Message]:
        """Begin, or go on after a break: what was said, what no longer holds, and the open question."""
        if not self._answers:
            return self.out(self.present())
        said = transcript(self.script, self.context, self._answers)
        self.record(Answer(BREAK, "value", at=self._now()))
        note = Message("note", self.phrases.say("welcome_back"))
        lead = [Message("note", self.phrases.say("close_first"))] if self._state.close_first else []
        return self.out([*said, note, *lead, *self.present()])

    def hear(self, line: str) -> list[Message]:
        """Take in one typed line, and give what is said to it. Never raises over what was typed."""
        text = clean(line).strip()
        said = [Message("said", text)] if text else []
        self.messages.extend(said)
        return said + self.out(hearing.hear(self, text))

    def do(self, command: str) -> list[Message]:
        """Carry out a command that was given by key: see `commands.COMMANDS`."""
        return self.out(commands.do(self, command))

    # ------------------------------------------------------------------------------ for the modules of the engine

    def out(self, messages: list[Message]) -> list[Message]:
        """Adds to the log what is said."""
        self.messages.extend(messages)
        return messages

    def record(self, *answers: Answer) -> None:
        """Keeps answers, one after the other, and goes on from them."""
        for answer in answers:
            kept = answer if answer.at else replace(answer, at=self._now())
            self._keep(kept)
            self._answers.append(kept)
            self._state = follow(self.script, self.context, self._state, kept)
        self._prompt = None

    def take_back(self, question: str) -> None:
        """What was answered to a question, or told, no longer counts."""
        self.record(Answer(TAKEN_BACK, "value", question))

    def ask(self, pending: Pending) -> list[Message]:
        """Puts a small question of the engine's own in between."""
        self.pending = pending
        self._prompt = None
        return [*pending.lead, Message("ask", pending.text)]

    def drop_pending(self) -> None:
        """The small question is over."""
        self.pending = None
        self._prompt = None

    def revise(self, question: str) -> None:
        """Asks a question once more while its answer still counts; "" ends that."""
        self.revising = question
        self.misses = 0
        self._prompt = None

    def afresh(self, question: str) -> None:
        """The value on record no longer holds: the question is asked in full."""
        self.asked_afresh.add(question)
        self._prompt = None

    def accept(self, *answers: Answer) -> list[Message]:
        """Answers that are understood: kept, echoed, their hazards said, and the next question asked.

        An amount that cannot be is told of and not kept; with no other answer beside it the question stays open.
        """
        self.drop_pending()
        answers, refused = bounds.sorted_out(self, answers)
        if refused and not answers:
            return [*refused, *self.question()]
        before = self._state
        self.record(*answers)
        self.revising = ""
        self.misses = 0
        echoes = [message for answer in answers for message in echo(self, answer, before, alone=len(answers) == 1)]
        if len(answers) > 1:  # they have just been read back
            echoes.insert(0, Message("echo", self.phrases.say("several_done")))
        return [*echoes, *refused, *closing.chosen_hazards(self, before), *self.present()]

    def present(self) -> list[Message]:
        """The open question with what belongs before it, or the end."""
        node = self.node
        if node is None:
            return closing.ending_messages(self)
        lead = [] if self.revising else introduce(self.script, self._state, self.context, self.phrases, self._section)
        if not self.revising:
            self._section = self.script.section_of[node.id].id
        if node.closes and self._state.tries and self._state.open:
            lead = [*lead, closing.still_open(self)]
        return [*lead, *self.question()]

    def question(self) -> list[Message]:
        """The open question alone, a small one of the engine's own first."""
        prompt = self.prompt
        return [Message("ask" if prompt.kind != "say" else "say", prompt.text)] if prompt and prompt.text else []

    def words(self, text: str) -> str:
        """A text of the content with its places filled in."""
        return filled(text, self.script, self._state.answered, self.context)

    def _viewed(self) -> State:
        """The state as if the question that is being changed were the next one."""
        if not self.revising:
            return self._state
        return replace(self._state, step=replace(self._state.step, node=self.node))

    def _make_prompt(self) -> Prompt | None:
        state = self._viewed()
        base = prompt_for(self.script, state, self.context, self.phrases, self.recorded)
        pending = self.pending
        if pending is None:
            return base
        asked = base or Prompt("", "choose", "", may_stand_open=state.open)
        return replace(
            asked,
            kind="choose",
            text=pending.text,
            choices=numbered(list(pending.choices)),
            hint=self.phrases.say("hint_choose"),
            unknown_allowed=False,
        )
