"""A danger that was told stands: it is not taken back in passing, and nothing is opened after all.

What was told in words may have been taken wrong. Then it is asked once, with the caution on the screen; it stays in the
list of answers, and that it was taken back stands behind it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from selfcheck.interview.answers import BREAK, HAZARD, NOTE, Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.hazard_fitting import fitting
from selfcheck.interview.hazards import denied, find
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.prompting import caution_message
from selfcheck.interview.routing import guards, is_danger
from selfcheck.interview.script import Script
from selfcheck.interview.showing import inline, show_answer
from selfcheck.interview.state import State
from selfcheck.interview.typed_line import after_opening, normal
from selfcheck.interview.understanding import exact

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from selfcheck.interview.dialogue import Conversation

#: `free`: may be changed as any other; `ask`: once it is said to be a slip; `well`: once it is said that it was taken
#: wrong, and of a danger that all are well; `stands`: not in this conversation
Hold = Literal["free", "ask", "well", "stands"]


def hold(talk: Conversation, question: str) -> Hold:
    """How firmly an answer stands. A number may be a slip of the finger; a danger told in words is none."""
    if question == HAZARD:
        told = _last_told(talk)
        if told is not None and not _in_words(told):
            return "ask"
        held = told is None or talk.state.ended or not _in_this_sitting(talk, told) or _at_an_opening(talk, told)
        return "stands" if held else "well"
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

    told = _told(talk, question)
    if held == "ask":
        choices = (("yes", talk.phrases.say("slip_yes")), ("no", talk.phrases.say("slip_no")))
        return talk.ask(Pending(talk.phrases.say("slip_ask", value=told), choices, choose))
    danger = any(is_danger(talk.script, hazard) for hazard in talk.state.answered.hazards)
    yes = talk.phrases.say("misheard_all_well" if danger else "misheard_yes")
    asked = talk.phrases.say("misheard_danger" if danger else "misheard_ask", told=told)
    cautions = tuple(_cautions(talk)) if danger else ()
    choices = (("yes", yes), ("no", talk.phrases.say("slip_no")))
    return talk.ask(Pending(asked, choices, choose, lead=cautions, firm=danger, parting=cautions))


def misheard(talk: Conversation, text: str) -> list[Message] | None:
    """A line that says of the hazard told last that it is not so: asked once. None when it says no such thing.

    A danger that ended the conversation is on record by then; what follows asks whether it was so.
    """
    interface, node = talk.script.interface, talk.node
    plain = f" {normal(text)} "
    said = any(f" {words} " in plain for words in interface.listen.get("misheard", ()))
    if talk.state.ended:
        if talk.state.answered.danger and (said or denied(text) is not None):
            return [Message("note", talk.phrases.say("misheard_at_end"))]
        return None
    if not talk.state.told or hold(talk, HAZARD) != "well":
        return None
    if node is not None and exact(talk.script, node, text).answer is not None:
        return None
    spoken_of = denied(text)
    spoken_of = spoken_of and fitting(spoken_of, text)
    just_said = said or after_opening(interface, "correction", text) or spoken_of is not None
    if not (just_said if _just_told(talk) else spoken_of == talk.state.told[-1]):
        return None
    talk.record(Answer(NOTE, "value", text, said=text))
    return unless_it_stands(talk, HAZARD, lambda: taken_back(talk))


def taken_back(talk: Conversation) -> list[Message]:
    """The hazard told last no longer counts, nor an answer that the same line gave."""
    told = _last_told(talk)
    raising = _raising(talk, told) if told is not None else []
    talk.misses = 0
    talk.take_back(HAZARD)
    for ident in raising:
        talk.take_back(ident)
    return [Message("note", talk.phrases.say("stay")), *talk.present()]


def _last_told(talk: Conversation) -> Answer | None:
    last = talk.state.told[-1] if talk.state.told else ""
    return next((one for one in reversed(talk.answers) if one.question == HAZARD and one.value == last), None)


def _raising(talk: Conversation, told: Answer) -> list[str]:
    """The questions that the same line answered, with the same hazard."""
    given = talk.state.given
    return [one for one in given if given[one].said == told.said and told.value in raised(talk.script, talk.state, one)]


def _at_an_opening(talk: Conversation, told: Answer) -> bool:
    """Whether it was told where the next thing is to open something. Then nothing is opened today."""
    return any(guards(talk.script, talk.script.nodes[one]) for one in _raising(talk, told))


def _just_told(talk: Conversation) -> bool:
    """Whether nothing was answered since a hazard was told."""
    return next((one.question for one in reversed(talk.answers) if one.question != NOTE), "") == HAZARD


def _in_this_sitting(talk: Conversation, answer: Answer) -> bool:
    """Whether it was answered since the last break."""
    since = max((place for place, one in enumerate(talk.answers) if one.question == BREAK), default=-1)
    return any(one is answer for one in talk.answers[since + 1 :])


def _cautions(talk: Conversation) -> Iterator[Message]:
    for hazard in talk.state.answered.hazards:
        caution = talk.script.cautions.get(hazard)
        if caution is not None and is_danger(talk.script, hazard):
            yield caution_message(caution, talk.phrases, whole=False)


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
