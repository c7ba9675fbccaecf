"""Hazards, ways out and ends: what comes before everything else."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.answers import HAZARD, LEAVING, Answer
from selfcheck.interview.messages import Message
from selfcheck.interview.prompting import caution_message
from selfcheck.interview.routing import is_danger
from selfcheck.interview.showing import inline
from selfcheck.interview.state import State

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def hazard_told(talk: Conversation, hazard: str, line: str) -> list[Message]:
    """A hazard that has happened: kept at once, its caution said, and what the flow says about it asked."""
    known = hazard in talk.state.told
    talk.drop_pending()
    talk.revising = ""
    talk.record(Answer(HAZARD, "value", hazard, said=line))
    messages = [caution_of(talk, hazard)]
    if known:
        messages.append(Message("note", talk.phrases.say("hazard_again")))
    if talk.state.close_first and not is_danger(talk.script, hazard):
        messages.append(Message("note", talk.phrases.say("close_first")))
    return [*messages, *talk.present()]


def chosen_hazards(talk: Conversation, before: State) -> list[Message]:
    """The cautions of hazards that an answer has just raised."""
    fresh = [hazard for hazard in talk.state.answered.hazards if hazard not in before.answered.hazards]
    return [caution_of(talk, hazard) for hazard in fresh]


def leave(talk: Conversation) -> list[Message]:
    """The person wants to go: what may stand open comes first."""
    talk.drop_pending()
    talk.revise("")
    if talk.state.leaving and not talk.state.ended:
        return [Message("note", talk.phrases.say("close_leave")), *talk.question()]
    open_before = talk.state.open
    talk.record(Answer(LEAVING, "value"))
    note = [Message("note", talk.phrases.say("close_leave"))] if open_before and not talk.state.ended else []
    return [*note, *talk.present()]


def ending_messages(talk: Conversation) -> list[Message]:
    """What is said at the end: the outcome and the next step, or that everything is saved."""
    state = talk.state
    messages: list[Message] = []
    if state.open:
        messages.append(still_open(talk))
    outcome = talk.script.outcomes.get(state.step.outcome)
    if outcome is not None:
        parts = (talk.words(outcome.body), _reasons(talk), talk.words(outcome.next_step))
        text = "\n".join(part for part in parts if part)
        messages.append(Message("say", text, talk.words(outcome.title)))
    if state.step.left:
        messages.append(Message("note", talk.phrases.say("left_unsaved" if talk.trouble() else "left")))
    return messages


def _reasons(talk: Conversation) -> str:
    """Why a service has to be called, each hazard told in a sentence; "" for none, and in danger, when others come."""
    if talk.state.answered.danger:
        return ""
    found = [talk.script.cautions.get(hazard) for hazard in talk.state.answered.hazards]
    told = [one.told for one in found if one is not None and one.told]
    return talk.phrases.say("end_reasons", told="; ".join(inline(one) for one in told)) if told else ""


def still_open(talk: Conversation) -> Message:
    """What holds as long as something stands open."""
    return Message("caution", talk.phrases.say("left_open"), talk.phrases.say("level_stop"))


def caution_of(talk: Conversation, hazard: str) -> Message:
    """What is said to a hazard, in full."""
    caution = talk.script.cautions.get(hazard)
    if caution is None:
        return Message("caution", talk.phrases.say("hazard_unnamed"), talk.phrases.say("level_danger"))
    return caution_message(caution, talk.phrases, whole=True)
