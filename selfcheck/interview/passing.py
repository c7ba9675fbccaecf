"""Answers given in passing: several in a line, or one to another question. They are read back for a yes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.messages import Message
from selfcheck.interview.pending import Pending
from selfcheck.interview.several import Several, several
from selfcheck.interview.showing import at_start, show_within

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


#: the phrases of a read-back: before it, the question, and what is said to a no
_SEVERAL = ("several", "several_ask", "several_no")
_OWN = ("understood_part", "elsewhere_ask", "several_no")
_ELSEWHERE = ("elsewhere", "elsewhere_ask", "elsewhere_no")


def in_passing(talk: Conversation, text: str) -> list[Message] | None:
    """More than one answer in a line, or one to another question: read back. None when the line is neither."""
    if talk.revising:
        return None
    found = several(talk.script, talk.state, text, talk.context)
    node = talk.node
    others = [answer for answer in found.answers if node is None or answer.question != node.id]
    if node is not None and node.gate and not found.later:
        return None
    if others and (len(found.answers) > 1 or not (found.rest or found.later)):
        return talk.ask(read_back(talk, found, text))
    if not found.answers and found.later:
        talk.record(Answer(NOTE, "value", text, said=text))
        return [Message("note", talk.phrases.say("told_too_early")), *talk.question()]
    return None


def in_part(talk: Conversation, text: str) -> list[Message] | None:
    """A line of which one part answers the open question, and the rest is too early or not clear: read back."""
    found = several(talk.script, talk.state, text, talk.context)
    if talk.revising or not found.answers or not (found.rest or found.later):
        return None
    return talk.ask(read_back(talk, found, text))


def read_back(talk: Conversation, found: Several, text: str) -> Pending:
    """What was understood, with what it takes the place of, and "is that right?"."""

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            return talk.accept(*found.answers)
        return [Message("note", talk.phrases.say(left)), *talk.question()]

    node = talk.node
    own = node is not None and all(answer.question == node.id for answer in found.answers)
    lead_in, ask, left = _OWN if own else _SEVERAL if len(found.answers) > 1 else _ELSEWHERE
    lines = [talk.phrases.say(lead_in), *(_line(talk, answer) for answer in found.answers)]
    lead = [Message("echo", "\n".join(lines))]
    if found.rest:
        lead.append(Message("note", talk.phrases.say("several_rest", rest="; ".join(found.rest))))
    if found.later:
        lead.append(Message("note", talk.phrases.say("told_too_early")))
    if found.rest or found.later:
        talk.record(Answer(NOTE, "value", text, said=text))
    choices = (("yes", talk.phrases.say("yes")), ("no", talk.phrases.say("no")))
    return Pending(talk.phrases.say(ask), choices, choose, lead=tuple(lead))


def _line(talk: Conversation, answer: Answer) -> str:
    name = at_start(talk.script.name_of(answer.question))
    value = show_within(talk.script, answer, talk.context.units)
    old = talk.state.answered.get(answer.question)
    if old is None:
        return talk.phrases.say("several_line", name=name, value=value)
    was = show_within(talk.script, old, talk.context.units)
    return talk.phrases.say("several_change", name=name, value=value, old=was)
