"""Values that are unlikely: questioned, kept when the person stands by them, never changed."""

from __future__ import annotations

from collections.abc import Iterable
from copy import copy
from typing import TYPE_CHECKING

from selfcheck.interview.answers import Answer
from selfcheck.interview.bounds import beyond, unusual
from selfcheck.interview.collect import drafting
from selfcheck.interview.context import Answered, choices_of
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.phrases import filled
from selfcheck.interview.predicates import holds
from selfcheck.interview.replay import follow
from selfcheck.interview.routing import is_barred
from selfcheck.interview.state import State

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def accept_or_question(talk: Conversation, node: Node, answer: Answer) -> list[Message]:
    """Accept an answer, after asking "is that what you saw?" where something about it is odd."""
    no_answer = _barred(talk, node, answer)
    if no_answer:
        return [*(Message("trouble", reason) for reason in no_answer), *talk.question()]
    doubts = [] if beyond(talk, answer) else oddities(talk, node, answer)
    if not doubts:
        return talk.accept(answer)

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            return [Message("note", talk.phrases.say("odd_kept")), *talk.accept(answer)]
        return [Message("note", talk.phrases.say("odd_again")), *talk.question()]

    def other(line: str) -> list[Message] | None:
        """That it stands in another one's place: then it is taken as it is, and the two are swapped."""
        from selfcheck.interview import correcting

        if not correcting.tells_of_a_swap(talk, line):
            return None
        talk.drop_pending()
        talk.record(answer)
        return correcting.correction(talk, line) or talk.present()

    choices = (("yes", talk.phrases.say("odd_yes")), ("no", talk.phrases.say("odd_no")))
    lead = tuple(Message("say", doubt) for doubt in doubts)
    return talk.ask(Pending(talk.phrases.say("odd_ask"), choices, choose, other, lead=lead))


def oddities(talk: Conversation, node: Node, answer: Answer, others: Iterable[Answer] = ()) -> list[str]:
    """What is odd about an answer, each in a sentence: out of range, unusual, or against another answer.

    `others`: answers that are given along with it.
    """
    found = [unusual(talk, node, answer)]
    if node.odd_when:
        after = talk.state
        for one in (*others, answer):
            after = follow(talk.script, talk.context, after, one)
        told = _all_told(after)
        context = drafting(talk.script, talk.context, told)
        words = talk.script.words_of(node.id).odd
        found.extend(
            filled(words.get(name, ""), talk.script, told, context)
            for name in node.odd_when
            if holds(name, told, context)
        )
    return [doubt for doubt in found if doubt]


def _barred(talk: Conversation, node: Node, answer: Answer) -> list[str]:
    """Why an answer cannot be one, by what is known already."""
    answered, words = talk.state.answered, talk.script.words_of(node.id).barred
    context = drafting(talk.script, talk.context, answered)
    names = [node.barred[one] for one in choices_of(answer) if is_barred(node, one, answered, context)]
    return [filled(words[name], talk.script, answered, context) for name in names]


def _all_told(state: State) -> Answered:
    """What counts, and what was told ahead of its question or is about to be left out."""
    told = copy(state.answered)
    for question, answer in state.given.items():
        told.setdefault(question, answer)
    return told
