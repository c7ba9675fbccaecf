"""Every way through a conversation, for proofs: from each state every answer that makes a difference, every way out,
every hazard, a break. States that cannot differ in what comes later are one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from functools import cached_property

from selfcheck.interview.answers import BREAK, HAZARD, LEAVING, Answer, Value
from selfcheck.interview.context import Context
from selfcheck.interview.nodes import Node
from selfcheck.interview.replay import follow, replay
from selfcheck.interview.script import Script
from selfcheck.interview.state import State
from selfcheck.interview.state_keys import Key, key_maker

#: more states than this are a sign of a predicate that does not say what it reads
MOST_STATES = 200_000


@dataclass(frozen=True, slots=True)
class Edge:
    """One answer given in one state. `kind`: "answer", "leave", "hazard" or "break"."""

    before: State
    answer: Answer
    after: State
    kind: str


@dataclass
class Graph:
    """All states that can be reached, and all edges between them. Built by `explore`."""

    script: Script
    start: Key
    states: dict[Key, State] = field(default_factory=dict)
    edges: dict[Key, list[tuple[Edge, Key]]] = field(default_factory=dict)

    def all_edges(self) -> Iterator[Edge]:
        """Every edge, once."""
        for leaving in self.edges.values():
            for edge, _ in leaving:
                yield edge

    def ends(self) -> list[State]:
        """Every state in which the conversation is over."""
        return [state for state in self.states.values() if state.ended]

    @cached_property
    def lengths(self) -> dict[Key, int]:
        """The most questions still to come from each state by answers alone; a loop raises ValueError."""
        longest: dict[Key, int] = {}
        on_the_way: set[Key] = set()
        stack: list[tuple[Key, bool]] = [(self.start, False)]
        while stack:
            key, done = stack.pop()
            if done:
                on_the_way.discard(key)
                longest[key] = max((1 + longest[after] for _, after in self._answered(key)), default=0)
            elif key not in longest:
                if key in on_the_way:
                    raise ValueError(f"a loop goes through {key[0]}")
                on_the_way.add(key)
                stack.append((key, True))
                for _, after in self._answered(key):
                    if after in on_the_way and after not in longest:
                        raise ValueError(f"a loop goes through {after[0]}")
                    stack.append((after, False))
        return longest

    def count_routes(self) -> int:
        """How many different ways lead from the start to an end by answers alone."""
        counts: dict[Key, int] = {}
        for key in sorted(self.lengths, key=lambda one: self.lengths[one]):
            after = {target for _, target in self._answered(key)}
            counts[key] = sum(counts[target] for target in after) if after else 1
        return counts[self.start]

    def routes(self, most: int = 10_000) -> Iterator[list[Edge]]:
        """Different ways from the start to an end by answers alone, at most so many, each as its edges."""
        stack: list[tuple[Key, list[Edge]]] = [(self.start, [])]
        given = 0
        while stack and given < most:
            key, way = stack.pop()
            following = self._answered(key)
            if not following:
                given += 1
                yield way
                continue
            for edge, after in following:
                stack.append((after, [*way, edge]))

    def _answered(self, key: Key) -> list[tuple[Edge, Key]]:
        return [(edge, after) for edge, after in self.edges.get(key, []) if edge.kind == "answer"]


def explore(
    script: Script,
    context: Context,
    samples: Mapping[str, Sequence[Value]] | None = None,
    *,
    leaving: bool = True,
    hazards: Iterable[str] = (),
    breaks: bool = False,
    skipping: bool = True,
    given: Iterable[Answer] = (),
) -> Graph:
    """Every state and edge of a conversation in one context.

    `samples`: values to try at a question, beside "don't know" and "skip" where these are answers; without them every
    option, and for a measure a common and a high value. `leaving`, `hazards`, `breaks`: try these in every state too.
    `given`: the answers that it starts with.
    Raises ValueError when there are more than `MOST_STATES` states.
    """
    key_of = key_maker(script, context)
    first = replay(script, context, given)
    graph = Graph(script, key_of(first))
    graph.states[graph.start] = first
    waiting = [graph.start]
    others = [(Answer(HAZARD, "value", hazard), "hazard") for hazard in hazards]
    others += [(Answer(LEAVING, "value"), "leave")] if leaving else []
    others += [(Answer(BREAK, "value"), "break")] if breaks else []
    while waiting:
        key = waiting.pop()
        state = graph.states[key]
        following: list[tuple[Edge, Key]] = []
        node = state.node
        if node is not None:
            tried = [(answer, "answer") for answer in answers_to(script, node, context, samples or {}, skipping)]
            extra = [(one, kind) for one, kind in others if not (state.leaving and kind == "leave")]
            for answer, kind in tried + extra:
                after = follow(script, context, state, answer)
                target = key_of(after)
                following.append((Edge(state, answer, after, kind), target))
                if target not in graph.states:
                    graph.states[target] = after
                    waiting.append(target)
        graph.edges[key] = following
        if len(graph.states) > MOST_STATES:
            raise ValueError(f"over {MOST_STATES} states; give fewer samples, or say what the predicates read")
    return graph


def answers_to(
    script: Script, node: Node, context: Context, samples: Mapping[str, Sequence[Value]], skipping: bool = True
) -> list[Answer]:
    """The answers worth trying at a question."""
    if node.id in samples:
        values = list(samples[node.id])
    else:
        values = _values(node, context)
    answers = [Answer(node.id, "value", value) for value in values]
    if node.kind in ("say", "confirm"):
        return answers
    if node.unknown_allowed:
        answers.append(Answer(node.id, "unknown"))
        if skipping and not (node.gate or node.opens or node.closes or node.on_leaving):
            answers.append(Answer(node.id, "skipped"))
    return answers


def _values(node: Node, context: Context) -> list[Value]:
    if node.kind == "choose":
        return list(node.options)
    if node.kind == "choose_several":
        return [(), *((option,) for option in node.options), node.options]
    if node.kind in ("length", "volume", "number"):
        low, high = node.usual_least or node.least or 0.0, node.usual_most or node.most or 2.0
        return [low + (high - low) / 3, high]
    if node.kind == "date":
        return [context.today - timedelta(days=days) for days in (0, 400, 4000)]
    return ["words"] if node.kind == "note" else [None]
