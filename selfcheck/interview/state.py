"""Where a conversation stands."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Answered
from selfcheck.interview.nodes import Node


@dataclass(frozen=True, slots=True)
class Step:
    """Where a walk through the flow came to: the node to ask, or the end.

    `answered`: what counts, in the order it was met. `outcome`: of the stop that was reached. `left`: gone, unfinished.
    `reached`: where the ordinary course stands while something else comes first.
    """

    node: Node | None
    answered: Answered
    outcome: str = ""
    left: bool = False
    reached: Node | None = None


@dataclass(frozen=True, slots=True)
class State:
    """A conversation after some answers; made by `replay` alone.

    `given`: the last answer to each question, those taken back left out. `at`: its place in the list of answers.
    `aside`: those of `given` that were told where they were not asked for.
    `before`: safety and opening answers that a break made void; `resumed`: there was such a break. `told`: hazards told
    in words. `open`: something may stand open, from the moment an opening step was shown until it was said to be shut.
    `opened`: an opening step was reached at some time, first at `first_opened`, last at `opened_at`. `close_first`: the
    question about shutting comes before everything. `must_close`: it comes before leaving. `close_from`: answers about
    shutting before this place do not count for that. `settled`: it was shut in the ordinary course, so that a break
    need not begin it again. `tries`: answers about shutting that did not say that it is shut.
    """

    given: Mapping[str, Answer] = field(default_factory=dict)
    at: Mapping[str, int] = field(default_factory=dict)
    aside: frozenset[str] = frozenset()
    before: Mapping[str, Answer] = field(default_factory=dict)
    resumed: bool = False
    told: tuple[str, ...] = ()
    length: int = 0
    leaving: bool = False
    open: bool = False
    opened: bool = False
    opened_at: int = 0
    first_opened: int = 0
    close_from: int = 0
    close_first: bool = False
    must_close: bool = False
    settled: bool = False
    tries: int = 0
    step: Step = field(default_factory=lambda: Step(None, Answered()))

    @property
    def node(self) -> Node | None:
        """The node to ask next; None at the end."""
        return self.step.node

    @property
    def answered(self) -> Answered:
        """The answers that count, up to the node to ask next."""
        return self.step.answered

    @property
    def ended(self) -> bool:
        """Whether there is nothing more to ask."""
        return self.step.node is None

    def essence(self) -> tuple[Any, ...]:
        """Everything that later questions and the records can depend on, but not the history by which it came about."""
        given = {name: (answer.state, answer.value) for name, answer in self.given.items()}
        node = self.node.id if self.node else ""
        shut = (self.opened, self.must_close, self.close_first, self.settled)
        flags = (self.told, self.leaving, self.open, *shut, self.resumed)
        return given, node, self.step.outcome, self.step.left, tuple(self.answered), flags, self.aside
