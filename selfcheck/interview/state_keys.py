"""What a state of a conversation is known by: two states with the same key cannot differ in what comes later.

That is the open question, what the conversation itself remembers, and what later conditions make of its answers, or
the answers where that is still open. "I don't know" and "skip" make no difference unless a condition names only one of
them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import drafting
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.nodes import Condition
from selfcheck.interview.predicates import BUILT_IN, PREDICATES
from selfcheck.interview.routing import reviewed, true_of
from selfcheck.interview.script import Script
from selfcheck.interview.state import State

Key = tuple[object, ...]


@dataclass(frozen=True, slots=True)
class _Look:
    """One condition, and the place of the last node that has it."""

    condition: Condition
    last: int
    reads: tuple[str, ...]


class _Watched(Answered):
    """Answers that notice when somebody looks at the conversation itself, which may still change."""

    def __init__(self, answered: Answered) -> None:
        super().__init__()
        self.update(answered)
        self.noticed: set[str] = set()
        for name in _ABOUT_ITSELF:
            setattr(self, name, getattr(answered, name))

    def __getattribute__(self, name: str) -> object:
        if name in _ABOUT_ITSELF:
            object.__getattribute__(self, "__dict__").setdefault("noticed", set()).add(name)
        return object.__getattribute__(self, name)


_ABOUT_ITSELF = frozenset({"gate", "open", "leaving", "danger", "hazards", "before"})


def key_maker(script: Script, context: Context) -> Callable[[State], Key]:
    """What a state is known by: what later conditions make of its answers, or the answers where that is open."""
    looks = _looks(script)
    order = script.order
    told_apart = {look.condition.question for look in looks if len({"unknown", "skipped"} & {*look.condition.is_}) == 1}
    raised = tuple(
        dict.fromkeys((*script.cautions, *(one for node in script.nodes.values() for one in node.hazard.values())))
    )

    def key(state: State) -> Key:
        answered = state.answered
        return (
            state.node.id if state.node is not None else "",
            state.step.outcome,
            state.step.left,
            () if state.leaving or state.ended else settled(state),
            tuple((name, one.state, one.value) for name, one in sorted(state.before.items())),
            answered.gate,
            answered.hazards,
            state.told,
            (state.leaving, state.open, state.opened, state.close_first, state.must_close, state.settled),
            min(state.tries, 2),
            recent(state),
        )

    def settled(state: State) -> Key:
        node = state.step.reached or state.node
        here = order[node.id] if node is not None else len(order)
        watched = _Watched(state.answered)
        view = drafting(script, context, state.answered)
        raw = {name for name in state.given if order[name] >= here}
        results: list[object] = []
        for look in looks:
            if look.last < here:
                continue
            if all(order.get(name, -1) < here for name in look.reads):
                watched.noticed = set()
                value: object = true_of((look.condition,), watched, view)
                if watched.noticed <= {"hazards", "open"}:
                    results.append(value if not watched.noticed else imagined(look.condition, watched, view))
                    continue
            results.append(None)
            raw.update(name for name in look.reads if name in state.given)
        kept = ((name, known_as(state.given[name]), state.given[name].value) for name in sorted(raw))
        return (tuple(results), tuple(kept))

    def known_as(answer: Answer) -> str:
        return "unknown" if answer.state == "skipped" and answer.question not in told_apart else answer.state

    def imagined(condition: Condition, watched: _Watched, view: Context) -> Key:
        """What a condition would say with each hazard told as well, and with all shut or something open."""
        told, was_open = watched.hazards, watched.open
        values = []
        for hazard in ("", *raised):
            for standing_open in (False, True):
                watched.hazards = (*told, hazard) if hazard and hazard not in told else told
                watched.open = standing_open
                values.append(true_of((condition,), watched, view))
        watched.hazards, watched.open = told, was_open
        return tuple(values)

    def recent(state: State) -> Key:
        """Which closing and read-back answers still count: they are told apart by what came after them."""
        since = max(state.opened_at, state.close_from)
        closing = tuple(
            (name, state.given[name].value, state.at[name] > state.opened_at, state.at[name] > since)
            for name in sorted(state.given)
            if script.nodes[name].on_leaving
        )
        latest = max((state.at[name] for name in reviewed(script, state.answered) if name in state.at), default=0)
        confirmed = tuple(
            (name, state.at[name] >= latest) for name in sorted(state.given) if script.nodes[name].kind == "confirm"
        )
        return closing, confirmed

    return key


def _looks(script: Script) -> list[_Look]:
    """Every condition that asks for answers, once, with the last place where it is asked."""
    looks: dict[Condition, _Look] = {}
    everything = tuple(script.nodes)
    for section, node in script.flow.nodes():
        barring = (Condition(predicate=name) for name in node.barred.values())
        for condition in (*section.when, *node.when, *barring):
            name = condition.predicate or condition.unless
            if name in BUILT_IN:
                continue
            if condition.question:
                reads: tuple[str, ...] = (condition.question,)
            else:
                declared = PREDICATES[name].reads
                reads = everything if declared is None else declared
            looks[condition] = _Look(condition, script.order[node.id], reads)
    return list(looks.values())
