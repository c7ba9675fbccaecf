"""Amounts against the range of their question: what cannot be is never kept, what is unusual is read back."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.showing import show_answer, show_bound

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def beyond(talk: Conversation, answer: Answer) -> str:
    """How an amount lies outside what can be, in a sentence with the bound; "" where it can be.

    What stands on record for the open question may stand on, whatever its range.
    """
    node = talk.script.nodes.get(answer.question)
    recorded = talk.recorded
    if node is None or (recorded is not None and (recorded.question, recorded.value) == (node.id, answer.value)):
        return ""
    return _past(talk, node, answer, "odd_least", node.least) or _past(talk, node, answer, "odd_most", node.most)


def unusual(talk: Conversation, node: Node, answer: Answer) -> str:
    """How an amount lies outside what is usual, or what can be, in a sentence with the bound; "" where it does not."""
    return (
        beyond(talk, answer)
        or _past(talk, node, answer, "odd_usual_least", node.usual_least)
        or _past(talk, node, answer, "odd_usual_most", node.usual_most)
    )


def sorted_out(talk: Conversation, answers: Iterable[Answer]) -> tuple[tuple[Answer, ...], list[Message]]:
    """The answers that can be, and what is said to the others. What was typed for those is kept as a note."""
    kept: list[Answer] = []
    said: list[Message] = []
    for answer in answers:
        reason = beyond(talk, answer)
        if reason:
            talk.record(Answer(NOTE, "value", answer.said, said=answer.said))
            said.append(Message("trouble", reason))
        else:
            kept.append(answer)
    return tuple(kept), [*said, Message("note", talk.phrases.say("bound_again"))] if said else []


def _past(talk: Conversation, node: Node, answer: Answer, phrase: str, bound: float | None) -> str:
    value = answer.value
    if bound is None or not isinstance(value, (int, float)) or isinstance(value, bool):
        return ""
    below = phrase.endswith("least")
    if not (value < bound if below else value > bound):
        return ""
    units = talk.context.units
    shown = show_bound(node, bound, units, up=below)
    return talk.phrases.say(phrase, value=show_answer(talk.script, answer, units), bound=shown)
