"""Leads a conversation on to one question, with what a person usually types."""

from __future__ import annotations

from collections.abc import Mapping

from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import MOST_TURNS, Says, begin, says_of


def reach(talk: Conversation, question: str, usual: Says, special: Mapping[str, str] | None = None) -> None:
    """Answers until this question is open, or to the end when it is "". Small questions in between get a yes."""
    for _ in range(MOST_TURNS):
        node = talk.node
        if talk.ending is not None or (node is not None and node.id == question and talk.pending is None):
            return
        if talk.pending is not None:
            talk.hear("yes")
        elif node is None or node.kind == "say":
            talk.hear("")
        else:
            line = (special or {}).get(node.id) or (*usual.get(node.id, ()), "")[0]
            talk.hear(line or ("skip" if node.kind == "note" else "I don't know"))


def reached(
    question: str, flow: str = "yearly", person: str = "teacher", special: Mapping[str, str] | None = None
) -> Conversation:
    """A conversation of one of the invented people that has come to this question."""
    talk = begin(person, flow)
    reach(talk, question, says_of(person), special)
    return talk
