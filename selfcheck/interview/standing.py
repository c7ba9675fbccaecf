"""A danger that was told stands: it is not taken back in passing, and nothing is opened after all."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from selfcheck.interview.answers import HAZARD, Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.hazards import find
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.routing import guards, is_danger
from selfcheck.interview.script import Script
from selfcheck.interview.showing import inline, show_answer
from selfcheck.interview.state import State
from selfcheck.interview.understanding import exact

if TYPE_CHECKING:
    from collections.abc import Callable

    from selfcheck.interview.dialogue import Conversation

#: `free`: may be changed as any other; `ask`: once it is said to be a slip; `stands`: not in this conversation
Hold = Literal["free", "ask", "stands"]


def hold(talk: Conversation, question: str) -> Hold:
    """How firmly an answer stands. A number may be a slip of the finger; a danger told in words is none."""
    if question == HAZARD:
        told = next((answer for answer in reversed(talk.answers) if answer.question == HAZARD), None)
        return "ask" if told is not None and not _in_words(told) else "stands"
    if not raised(talk.script, talk.state, question):
        return "free"
    node, answer = talk.script.nodes[question], talk.state.given[question]
    if not _in_words(answer) or not _keeps_shut(talk.script, node, answer):
        return "ask"
    plain = find(answer.said) is not None or not exact(talk.script, node, answer.said).nothing
    return "stands" if plain else "ask"


def raised(script: Script, state: State, question: str) -> tuple[str, ...]:
    """The hazards that the answer to a question raised. What is shut again may be told at any time."""
    node, answer = script.nodes.get(question), state.given.get(question)
    if node is None or answer is None or node.closes:
        return ()
    return tuple(node.hazard[option] for option in choices_of(answer) if option in node.hazard)


def unless_it_stands(talk: Conversation, question: str, change: Callable[[], list[Message]]) -> list[Message]:
    """Carries out a change of an answer, once it is free to be changed."""
    held = hold(talk, question)
    if held == "free":
        return change()
    if held == "stands":
        return [Message("note", talk.phrases.say("told_stands")), *talk.question()]

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            return change()
        return [Message("note", talk.phrases.say("slip_none")), *talk.question()]

    choices = (("yes", talk.phrases.say("slip_yes")), ("no", talk.phrases.say("slip_no")))
    return talk.ask(Pending(talk.phrases.say("slip_ask", value=_told(talk, question)), choices, choose))


def _in_words(answer: Answer) -> bool:
    return any(sign.isalpha() for sign in answer.said)


def _keeps_shut(script: Script, node: Node, answer: Answer) -> bool:
    """Whether the hazard is a danger to life, or was told where the next thing is to open something."""
    dangers = [node.hazard[option] for option in choices_of(answer) if option in node.hazard]
    return guards(script, node) or any(is_danger(script, hazard) for hazard in dangers)


def _told(talk: Conversation, question: str) -> str:
    if question != HAZARD:
        return inline(show_answer(talk.script, talk.state.given[question], talk.context.units))
    caution = talk.script.cautions.get(talk.state.told[-1]) if talk.state.told else None
    return inline(caution.told or caution.hazard) if caution is not None else ""
