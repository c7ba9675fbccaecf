"""The state of a conversation as a pure function of its script, its context and the list of answers."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from selfcheck.interview.answers import BREAK, HAZARD, LEAVING, NOTE, TAKEN_BACK, Answer
from selfcheck.interview.context import Context, choices_of
from selfcheck.interview.nodes import Node
from selfcheck.interview.routing import called_for, guards, is_danger, next_step
from selfcheck.interview.script import Script
from selfcheck.interview.state import State


def replay(script: Script, context: Context, answers: Iterable[Answer]) -> State:
    """The state after all `answers`."""
    state = begin(script, context)
    for answer in answers:
        state = follow(script, context, state, answer)
    return state


def begin(script: Script, context: Context) -> State:
    """The state before any answer."""
    return _walked(script, context, State())


def follow(script: Script, context: Context, state: State, answer: Answer) -> State:
    """The state after one more answer. Answers to questions that the flow does not have make no difference."""
    here = state.length + 1
    moved = replace(state, length=here)
    if answer.question == BREAK:
        moved = _after_break(script, moved)
    elif answer.question == LEAVING:
        moved = replace(moved, leaving=True, close_from=here, must_close=state.open, tries=0)
    elif answer.question == HAZARD:
        moved = _told(script, moved, str(answer.value))
    elif answer.question == TAKEN_BACK:
        moved = _taken_back(script, moved, str(answer.value))
    elif answer.question != NOTE and answer.question in script.nodes:
        node = script.nodes[answer.question]
        moved = replace(_answered(node, moved, answer), aside=_aside(script, context, state, node))
    return _walked(script, context, moved)


def _aside(script: Script, context: Context, state: State, node: Node) -> frozenset[str]:
    """The questions answered where nothing asked for them, this one among them when it is so now."""
    if not node.told_when:
        return state.aside
    asked = state.node is node or called_for(script, context, state, node)
    return state.aside - {node.id} if asked else state.aside | {node.id}


def _answered(node: Node, state: State, answer: Answer) -> State:
    state = replace(
        state,
        given={**state.given, node.id: answer},
        at={**state.at, node.id: state.length},
        before={name: old for name, old in state.before.items() if name != node.id},
    )
    if not node.closes:
        return state
    if any(option in node.closes for option in choices_of(answer)):
        in_course = not (state.leaving or state.close_first or state.told)
        return replace(state, open=False, settled=state.settled or in_course, close_first=False, tries=0)
    return replace(state, open=state.opened, settled=False, close_first=False, tries=state.tries + 1)


def _told(script: Script, state: State, hazard: str) -> State:
    """A danger ends leaving: what to do is said first. With anything open, shutting it comes first."""
    told = state.told if hazard in state.told else (*state.told, hazard)
    leaving = state.leaving and not is_danger(script, hazard)
    return replace(state, told=told, leaving=leaving, close_first=state.open, close_from=state.length)


def _taken_back(script: Script, state: State, question: str) -> State:
    if question == LEAVING:
        return replace(state, leaving=False, must_close=False)
    if question == HAZARD:
        return replace(state, told=state.told[:-1], close_first=False)
    node, old = script.nodes.get(question), state.given.get(question)
    state = replace(
        state,
        given={name: answer for name, answer in state.given.items() if name != question},
        at={name: place for name, place in state.at.items() if name != question},
    )
    reopened = node is not None and old is not None and any(option in node.closes for option in choices_of(old))
    return replace(state, open=True, settled=False) if reopened and state.opened else state


def _after_break(script: Script, state: State) -> State:
    """Safety items and openings from before a break are void, unless all of that was over and shut in good order.

    A hazard that one of them raised stays told.
    """
    state = replace(state, leaving=False, must_close=False, close_first=state.open, close_from=state.length, tries=0)
    if state.settled:
        return state
    void = [name for name in state.given if guards(script, script.nodes[name])]
    raised = [
        script.nodes[name].hazard[option]
        for name in void
        for option in choices_of(state.given[name])
        if option in script.nodes[name].hazard
    ]
    return replace(
        state,
        resumed=True,
        told=tuple(dict.fromkeys((*state.told, *raised))),
        given={name: answer for name, answer in state.given.items() if name not in void},
        at={name: place for name, place in state.at.items() if name not in void},
        before={**state.before, **{name: state.given[name] for name in void}},
    )


def _walked(script: Script, context: Context, state: State) -> State:
    step = next_step(script, context, state)
    if step.node is None or not step.node.opens:
        return replace(state, step=step)
    step.answered.open = True
    return replace(
        state,
        step=step,
        open=True,
        opened=True,
        opened_at=state.length,
        first_opened=state.first_opened or state.length,
        settled=False,
        close_first=False,
        tries=0,
    )
