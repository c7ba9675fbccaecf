"""What is said to an answer that was understood: what was noted, what was changed, what an option has said after it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.showing import at_start, inline, show_answer, show_error, show_within
from selfcheck.interview.state import State
from selfcheck.interview.understanding import CHOICES

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

#: an option of fewer letters, and one word, says nothing without its question. Our choice.
LONE = 12


def echo(talk: Conversation, answer: Answer, before: State, *, alone: bool) -> list[Message]:
    """What is said to one answer. `before`: the state it was given in. `alone`: no other was given with it."""
    node = talk.script.nodes.get(answer.question)
    if node is None or node.kind in ("say", "confirm"):
        return []
    old = before.given.get(node.id)
    line = ""
    if old is not None and (old.state, old.value) != (answer.state, answer.value):
        line = _changed(talk, node, answer, old)
    elif alone:
        line = _noted(talk, node, answer)
    after = talk.script.words_of(node.id).after
    told = [talk.words(after[option]) for option in choices_of(answer) if option in after]
    said = [Message("say", text) for text in told if text]
    return [Message("echo", line), *said] if line else said


def _changed(talk: Conversation, node: Node, answer: Answer, old: Answer) -> str:
    """A value that stands in the place of another one."""
    units = talk.context.units
    return talk.phrases.say(
        "changed_choice" if node.kind in CHOICES else "changed",
        name=at_start(talk.script.name_of(node.id)),
        value=show_within(talk.script, answer, units),
        old=show_within(talk.script, old, units),
    )


def _noted(talk: Conversation, node: Node, answer: Answer) -> str:
    """An answer as it is noted; nothing is said to a note."""
    if answer.state == "unknown":
        return talk.phrases.say("echo_unknown")
    if answer.state == "skipped":
        return talk.phrases.say("skipped")
    if node.kind == "note":
        return ""
    value = show_answer(talk.script, answer, talk.context.units)
    error = show_error(answer, node, talk.context.units)
    return talk.phrases.say("give_or_take", value=value, error=error) if error else _value(talk, node, answer, value)


def _value(talk: Conversation, node: Node, answer: Answer, value: str) -> str:
    """A value as it is noted: a sentence in quotes, a lone word, a figure, none with the name of what it tells."""
    say, bare = talk.phrases.say, value.rstrip(" .?")
    lone = node.kind in CHOICES and ((len(bare) < LONE and " " not in bare) or answer.value == ())
    if node.kind == "number" or lone:
        return say("echo_named", name=at_start(talk.script.name_of(node.id)), value=inline(value))
    if node.kind not in CHOICES:
        return say("echo", value=at_start(bare))
    if "?" in value or ". " in value:
        return say("echo_quoted", value=value)
    return say("echo_choice", value=inline(value))
