"""Named conditions that flows refer to, and the ones that every conversation has.

A new one: write a function below `@predicate("name", reads=(question ids,))`. It sees the answers that count so far and
the context, and must not change either. `reads` names the questions it looks at, so that a walk over all routes knows
which answers make a difference; without it every answer is taken to.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from selfcheck.interview.context import Answered, Context

Test = Callable[[Answered, Context], bool]


@dataclass(frozen=True, slots=True)
class Named:
    """One predicate. `reads`: ids of the questions it looks at; None when that is not said."""

    test: Test
    reads: tuple[str, ...] | None


PREDICATES: dict[str, Named] = {}
#: about the conversation itself: what they look at is part of its state, not of single answers
BUILT_IN = {
    "gate_failed",
    "gate_open",
    "leaving",
    "danger_told",
    "hazard_told",
    "urgent_told",
    "may_stand_open",
    "resumed",
}


def predicate(name: str, *, reads: tuple[str, ...] | None = None) -> Callable[[Test], Test]:
    """Registers a predicate under `name`; ValueError when the name is taken."""

    def register(test: Test) -> Test:
        if name in PREDICATES:
            raise ValueError(f"there are two predicates named {name}")
        PREDICATES[name] = Named(test, reads)
        return test

    return register


def holds(name: str, answered: Answered, context: Context) -> bool:
    """Whether the predicate is true; KeyError when there is none of that name."""
    return PREDICATES[name].test(answered, context)


@predicate("gate_failed", reads=())
def gate_failed(answered: Answered, context: Context) -> bool:
    """A safety item was answered in a way that does not let the person go on."""
    return answered.gate == "failed"


@predicate("gate_open", reads=())
def gate_open(answered: Answered, context: Context) -> bool:
    """Every safety item asked so far lets the person go on, and there was at least one."""
    return answered.gate == "passed"


@predicate("leaving", reads=())
def leaving(answered: Answered, context: Context) -> bool:
    """The person has said that they want to leave."""
    return answered.leaving


@predicate("danger_told", reads=())
def danger_told(answered: Answered, context: Context) -> bool:
    """Something was told or chosen that is a danger to life."""
    return answered.danger


@predicate("hazard_told", reads=())
def hazard_told(answered: Answered, context: Context) -> bool:
    """Some hazard was told or chosen."""
    return bool(answered.hazards)


@predicate("urgent_told", reads=())
def urgent_told(answered: Answered, context: Context) -> bool:
    """A hazard was told or chosen, but none that is a danger to life."""
    return bool(answered.hazards) and not answered.danger


@predicate("may_stand_open", reads=())
def may_stand_open(answered: Answered, context: Context) -> bool:
    """Something dangerous may stand open right now."""
    return answered.open


@predicate("resumed", reads=())
def resumed(answered: Answered, context: Context) -> bool:
    """The conversation was taken up again, before everything was shut in good order."""
    return answered.resumed


@predicate("only_told", reads=())
def only_told(answered: Answered, context: Context) -> bool:
    """Never: the question is asked by nobody, and only what is told of it counts."""
    return False
