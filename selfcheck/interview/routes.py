"""Every way through a conversation, for proofs: from each state every answer that makes a difference, every way out,
every hazard, a break.

States that cannot differ in what comes later are one; "I don't know" and "skip" make no difference unless a condition
names only one of them. What a state is known by: the open question, what the
conversation itself remembers, and the answers that some later condition looks at, each as its representative value.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from functools import cached_property

from selfcheck.interview.answers import BREAK, HAZARD, LEAVING, Answer, Value
from selfcheck.interview.collect import drafting
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.nodes import Condition, Node
from selfcheck.interview.predicates import BUILT_IN, PREDICATES
from selfcheck.interview.replay import follow, replay
from selfcheck.interview.routing import reviewed, true_of
from selfcheck.interview.script import Script
from selfcheck.interview.state import State

#: more states than this are a sign of a predicate that does not say what it reads
MOST_STATES = 200_000
Key = tuple[object, ...]


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
    key_of = _key_maker(script, context)
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


def _key_maker(script: Script, context: Context) -> Callable[[State], Key]:
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
