"""Amounts that a conversation takes: whatever is insisted on, the record can hold it."""

from __future__ import annotations

from datetime import date
from functools import cache

import pytest
from pydantic import BaseModel

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import collect
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.nodes import Node
from selfcheck.loading import content_place, script

FLOWS = ("yearly", "learn", "tank_facts", "find_tank", "after_pump_out", "look_ahead", "practice_read", "trouble")
CONTEXT = Context(
    date(2026, 5, 18), household=Household.model_validate({"occupancy": [{"from": "2020-01-01", "people": 2}]})
)
MODELS: dict[str, tuple[type[BaseModel], dict[str, str]]] = {
    "household": (Household, {}),
    "check": (Check, {"id": "2026-05-18", "on": "2026-05-18"}),
    "pump_out": (PumpOut, {"on": "2026-05-18"}),
}


@cache
def talk_of(flow: str) -> Conversation:
    talk = Conversation(script(content_place(own=False), flow), CONTEXT)
    talk.start()
    return talk


AMOUNTS = [
    pytest.param(flow, node, id=f"{flow}-{node.id}")
    for flow in FLOWS
    for node in talk_of(flow).script.nodes.values()
    if node.kind in ("length", "volume", "number")
]


@pytest.mark.parametrize(("flow", "node"), AMOUNTS)
def test_no_amount_beyond_the_bounds_is_kept_and_any_within_can_be_stored(flow: str, node: Node) -> None:
    assert node.least is not None
    assert node.most is not None
    talk = talk_of(flow)
    too_little = [node.least / 2] if node.least else []
    for value in (*too_little, 1.5 * node.most):
        talk.revise(node.id)
        said = talk.accept(Answer(node.id, "value", value, said=f"{value} I insist"))
        assert node.id not in talk.state.given
        assert talk.node is node
        assert "can be" in said[0].text
    for value in (node.least, node.most):
        talk.revise(node.id)
        talk.accept(Answer(node.id, "value", value))
        assert talk.state.given[node.id].value == value
        _stored(talk, node, value)
    talk.take_back(node.id)


def _stored(talk: Conversation, node: Node, value: float) -> None:
    """Writes the answer, behind those that lead to its question, into the record that takes it."""
    nodes, answered = talk.script.nodes, Answered()
    for condition in node.when:
        if condition.question and condition.is_[0] in nodes[condition.question].options:
            answered[condition.question] = Answer(condition.question, "value", condition.is_[0])
    answered[node.id] = Answer(node.id, "value", value, said="as typed")
    for name, record in collect(talk.script, CONTEXT, answered).items():
        model, must = MODELS[name]
        model.model_validate({**must, **record})


@pytest.mark.parametrize(("flow", "question", "typed", "bound"), [
    ("learn", "learn_months", "40", "The most is 12."),
    ("learn", "learn_depth", "0 in", "The least is 12 in."),
    ("yearly", "bedrooms", "80", "The most is 50."),
])  # fmt: skip
def test_the_bounds_are_said_and_the_question_is_asked_again(flow: str, question: str, typed: str, bound: str) -> None:
    talk = talk_of(flow)
    talk.revise(question)
    said = [message.text for message in talk.hear(typed)]
    assert any(bound in text for text in said)
    assert talk.node is talk.script.nodes[question]
    assert talk.pending is None
    assert talk.answers[-1].said == typed  # kept as a note
    talk.hear("yes")
    assert question not in talk.state.given
    talk.revise("")
