"""Single questions of the conversations, asked by themselves to put one fact right."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import collect
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.nodes import Condition, Flow, Section
from selfcheck.interview.predicates import PREDICATES
from selfcheck.interview.replay import begin, follow
from selfcheck.interview.script import Script
from selfcheck.interview.septic_finishing import kept
from selfcheck.loading.conversations import script
from selfcheck.loading.place import Place

#: what a small conversation still does when a danger is told in it
DANGER = "danger"
HAZARDS = "check.hazards"


def asking(place: Place, flow_id: str, questions: Sequence[str]) -> Script:
    """These questions of one conversation, whatever was answered before them, and its way out of danger.

    One that hangs on another of them is asked where that one's answer calls for it.
    """
    whole = script(place, flow_id)
    sections: list[Section] = []
    for section in whole.flow.sections:
        nodes = tuple(
            replace(node, when=_among(node.when, questions)) for node in section.nodes if node.id in questions
        )
        if section.id == DANGER:
            sections.append(section)
        elif nodes:
            when = tuple(one for one in section.when if one.unless)  # a danger that is told leads out of it
            sections.append(replace(section, nodes=nodes, stage="", when=when))
    words = {
        section.id: whole.words[section.id] if section.id == DANGER else replace(whole.words[section.id], opening="")
        for section in sections
    }
    return replace(whole, flow=Flow(flow_id, tuple(sections), ("household",), "", HAZARDS), words=words)


def noting(asked: Script, context: Context, write: Callable[[dict[str, Any]], str]) -> Callable[[Answer], None]:
    """Takes in the answers of a small talk, and writes at once what they tell of danger, as a check by itself.

    What is told further, or taken back, is a check in place of it. `write` gives the id of the check.
    """
    answers: list[Answer] = []
    state, before = begin(asked, context), ""
    told: tuple[str, ...] = ()

    def take(answer: Answer) -> None:
        nonlocal state, told, before
        answers.append(answer)
        state = follow(asked, context, state, answer)
        if state.answered.hazards == told:
            return
        told = state.answered.hazards
        only = Answered()
        only.hazards = told
        raw = {"gate": "not_opened", **collect(asked, context, only).get("check", {})}
        said = [kept(one) for one in answers]
        before = write({"tank": context.household.tank().id, **raw, "answers": said, "replaces": before or None})

    return take


def _among(when: Sequence[Condition], questions: Sequence[str]) -> tuple[Condition, ...]:
    """The conditions that hang on these questions alone."""

    def hangs_on(one: Condition) -> bool:
        if one.question:
            return one.question in questions
        reads = PREDICATES[one.predicate or one.unless].reads
        return bool(reads) and set(reads or ()) <= set(questions)

    return tuple(one for one in when if hangs_on(one))
