"""Which question comes next, given the answers: one walk through the flow, from its beginning, every time."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import drafting
from selfcheck.interview.context import Answered, Context, choices_of
from selfcheck.interview.nodes import Condition, Node, Section
from selfcheck.interview.predicates import PREDICATES, holds
from selfcheck.interview.script import Script
from selfcheck.interview.state import State, Step

HAZARD_PREDICATES = frozenset({"danger_told", "hazard_told", "urgent_told"})
#: after so many answers that it is not shut, the person is let go, with the caution said
MOST_TRIES = 2


def is_danger(script: Script, hazard: str) -> bool:
    """Whether a hazard is a danger to life; one that the content does not know is taken to be."""
    caution = script.cautions.get(hazard)
    return caution is None or caution.level == "danger"


def guards(script: Script, node: Node) -> bool:
    """Whether a node is a safety item, an opening, or a look that an opening rests on."""
    return node.gate or node.opens or ("safety" in node.tags and node.id in script.asked_before_opening)


def is_barred(node: Node, option: str, answered: Answered, context: Context) -> bool:
    """Whether an option is no answer as things stand."""
    return option in node.barred and holds(node.barred[option], answered, context)


def true_of(conditions: Iterable[Condition], answered: Answered, context: Context) -> bool:
    """Whether all conditions hold."""
    for condition in conditions:
        if condition.question:
            if not answered.chosen(condition.question, *condition.is_):
                return False
        elif condition.predicate:
            if not holds(condition.predicate, answered, context):
                return False
        elif holds(condition.unless, answered, context):
            return False
    return True


def section_holds(script: Script, context: Context, state: State, node: Node) -> bool:
    """Whether the conditions of a question's section hold as things stand now."""
    answered = state.answered
    context = drafting(script, context, answered)
    return true_of(script.section_of[node.id].when, answered, context)


def called_for(script: Script, context: Context, state: State, node: Node) -> bool:
    """Whether the conditions of a question hold by the answers that count now."""
    answered = state.answered
    return section_holds(script, context, state, node) and true_of(
        node.when, answered, drafting(script, context, answered)
    )


def next_step(script: Script, context: Context, state: State) -> Step:
    """The next node to ask, or how the conversation ends.

    Before everything else: a danger that was told; then whatever may stand open, after a break, when leaving, and
    before any end. What `opens` is passed over unless the gate has passed and no hazard was told.
    """
    answered = _blank(state)
    context = drafting(script, context, answered)
    step = _along(script, context, state, answered)
    if state.told and not state.opened:
        answered.gate = "failed"
    if any(is_danger(script, hazard) for hazard in answered.hazards):
        return _in_danger(script, context, state, answered)
    if state.close_first and (node := _to_close(script, context, state, answered, shutting_only=True)):
        return Step(node, answered, reached=step.node)
    if state.leaving:
        node = _to_close(script, context, state, answered) if state.must_close else None
        return Step(node, answered, left=node is None)
    if step.node is None and state.open and (node := _to_close(script, context, state, answered)):
        return Step(node, answered)
    return step


def reviewed(script: Script, answered: Mapping[str, Answer]) -> list[str]:
    """The questions whose answers decide, for the read-back."""
    return [
        ident
        for ident in answered
        if (node := script.nodes.get(ident)) is not None
        and "verdict" in node.tags
        and not node.gate
        and node.kind not in ("say", "confirm", "stop")
    ]


def _along(script: Script, context: Context, state: State, answered: Answered) -> Step:
    """The ordinary walk. A danger is not looked at, so that what was answered before it stays on record."""
    passed_over: Section | None = None
    for section, node in script.steps:
        if node.on_leaving:
            if not _applies(section, node, state, answered, context):
                continue
        elif section is passed_over:
            continue
        elif not true_of(section.when, answered, context):
            passed_over = section  # nothing is answered in it, so that nothing of it can come to hold
            continue
        elif not true_of(node.when, answered, context) and not (
            node.id in answered.aside and true_of(node.told_when, answered, context)
        ):
            continue
        if node.kind == "stop":
            return Step(None, answered, node.outcome)
        answer = _valid(script, node, state, answered)
        if answer is None and state.told and not state.opened and answered.gate != "failed":
            answered.gate = "failed"  # not before: what was answered up to here stays on record
            if not _applies(section, node, state, answered, context):
                continue
        if node.gate and answered.gate == "failed":
            continue
        if answer is None:
            if node.opens and (answered.gate != "passed" or answered.hazards):
                continue
            if section.at_opening and state.opened and answered.hazards:
                continue
            return Step(node, answered)
        _count(node, answer, answered, state, context)
    return Step(None, answered)


def _applies(section: Section, node: Node, state: State, answered: Answered, context: Context) -> bool:
    """Whether the conditions of a node hold. That it was shut does not undo the answer that says so."""
    if not _said_since_open(node, state):
        return true_of(section.when, answered, context) and true_of(node.when, answered, context)
    now, answered.open = answered.open, True
    try:
        return true_of(section.when, answered, context) and true_of(node.when, answered, context)
    finally:
        answered.open = now


def _said_since_open(node: Node, state: State) -> bool:
    return node.on_leaving and state.opened and state.at.get(node.id, -1) > state.opened_at


def _blank(state: State) -> Answered:
    answered = Answered()
    answered.open, answered.leaving, answered.before = state.open, state.leaving, state.before
    answered.resumed = state.resumed
    answered.hazards = state.told
    answered.aside = {name: state.given[name] for name in state.aside if name in state.given}
    return answered


def _count(node: Node, answer: Answer, answered: Answered, state: State, context: Context) -> None:
    answered[node.id] = answer
    chosen = choices_of(answer)
    if node.gate and answered.gate != "failed":
        passes = [one for one in chosen if one in node.passes and not is_barred(node, one, answered, context)]
        answered.gate = "passed" if passes else "failed"
    raised = [node.hazard[option] for option in chosen if option in node.hazard]
    if raised:
        answered.hazards += tuple(hazard for hazard in raised if hazard not in answered.hazards)
        if not state.opened:
            answered.gate = "failed"


def _valid(script: Script, node: Node, state: State, answered: Answered) -> Answer | None:
    """The answer to a node, unless what happened since makes it void."""
    answer = state.given.get(node.id)
    if answer is None:
        return None
    if node.on_leaving and state.at[node.id] <= state.opened_at:
        return None
    if state.first_opened and state.at[node.id] <= state.first_opened and _behind_an_opening(script, node):
        return None  # nobody can have seen it before it was opened
    if node.kind == "confirm":
        latest = max((state.at[ident] for ident in reviewed(script, answered)), default=0)
        if state.at[node.id] < latest:
            return None
    return answer


def _behind_an_opening(script: Script, node: Node) -> bool:
    first = script.first_opening
    return first is not None and script.order[node.id] > script.order[first.id]


def _in_danger(script: Script, context: Context, state: State, answered: Answered) -> Step:
    """Only what the flow says about a danger, and nothing when the person leaves."""
    answered.danger = True
    if state.leaving:
        return Step(None, answered, "danger", left=True)
    for section, node in script.steps:
        conditions = (*section.when, *node.when)
        if not any(condition.predicate in HAZARD_PREDICATES for condition in conditions):
            continue
        if node.opens or not _applies(section, node, state, answered, context):
            continue
        if node.kind == "stop":
            return Step(None, answered, node.outcome)
        answer = _valid(script, node, state, answered)
        if answer is None:
            return Step(node, answered)
        answered[node.id] = answer
    return Step(None, answered, "danger")


def _to_close(
    script: Script, context: Context, state: State, answered: Answered, *, shutting_only: bool = False
) -> Node | None:
    """The next question about shutting what may stand open; None when all were asked since it was opened.

    Of a node's conditions only those count that speak of the conversation itself or of another such question: what was
    seen or not seen so far is no reason to leave without asking.
    """
    since = max(state.opened_at, state.close_from)
    asked: list[Node] = []
    for section, node in script.steps:
        if not node.on_leaving or (shutting_only and not node.closes):
            continue
        answered.open = state.open or _said_since_open(node, state)
        applies = true_of(_about_leaving(script, section, node), answered, context)
        answered.open = state.open
        if not applies:
            continue
        if node.id not in state.given or state.at[node.id] <= since:
            return node
        answered[node.id] = state.given[node.id]
        asked.append(node)
    shutting = [node for node in asked if node.closes]
    return shutting[0] if state.open and shutting and state.tries < MOST_TRIES else None


def _about_leaving(script: Script, section: Section, node: Node) -> list[Condition]:
    kept: list[Condition] = []
    for condition in (*section.when, *node.when):
        if condition.question:
            other = script.nodes.get(condition.question)
            if other is not None and other.on_leaving:
                kept.append(condition)
        elif PREDICATES[condition.predicate or condition.unless].reads == ():
            kept.append(condition)
    return kept
