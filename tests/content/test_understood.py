"""What the content shows as an example, and the other words of each option, are understood at that very question."""

from __future__ import annotations

from datetime import date

import pytest

from selfcheck.interview.context import Context
from selfcheck.interview.measuring import measure
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.interview.typed_line import command_of
from selfcheck.interview.understanding import CHOICES, MEASURES, exact, loose
from selfcheck.loading import content_place, flow_ids, script

PLACE = content_place(own=False)
SCRIPTS = {name: script(PLACE, name) for name in flow_ids(PLACE)}
CONTEXT = Context(today=date(2026, 5, 18))
QUESTIONS = [(name, node) for name, talk in SCRIPTS.items() for _, node in talk.flow.nodes() if node.kind in CHOICES]
MEASURED = [(name, node) for name, talk in SCRIPTS.items() for _, node in talk.flow.nodes() if node.kind in MEASURES]


def chosen(talk: Script, node: Node, text: str) -> tuple[str, ...]:
    reading = exact(talk, node, text)
    if reading.nothing:
        reading = loose(talk, node, text)
    value = reading.answer.value if reading.answer else ()
    return value if isinstance(value, tuple) else (str(value),)


@pytest.mark.parametrize(("name", "node"), QUESTIONS, ids=lambda one: getattr(one, "id", one))
def test_every_wording_of_an_option_leads_to_it(name: str, node: Node) -> None:
    talk = SCRIPTS[name]
    words = talk.words_of(node.id)
    for option in node.options:
        for wording in (words.options[option], *words.also.get(option, ())):
            assert chosen(talk, node, wording) == (option,), wording


@pytest.mark.parametrize(("name", "node"), QUESTIONS, ids=lambda one: getattr(one, "id", one))
def test_the_example_of_a_choice_is_understood(name: str, node: Node) -> None:
    talk = SCRIPTS[name]
    example = talk.words_of(node.id).example
    known = exact(talk, node, example).answer or loose(talk, node, example).answer
    assert known is not None, example


@pytest.mark.parametrize(("name", "node"), MEASURED, ids=lambda one: getattr(one, "id", one))
def test_the_example_of_a_measure_is_understood(name: str, node: Node) -> None:
    example = SCRIPTS[name].words_of(node.id).example
    reading = measure(node, example, CONTEXT)
    assert reading.answer is not None, example
    if node.kind != "date":
        value = reading.answer.value
        assert isinstance(value, (int, float))
        assert (node.usual_least or 0) <= value <= (node.usual_most or value), example


def test_no_other_word_of_an_option_is_a_command() -> None:
    taken = []
    for name, talk in SCRIPTS.items():
        for _, node in talk.flow.nodes():
            for option, others in talk.words_of(node.id).also.items():
                taken += [f"{name} · {node.id} · {option}: {one}" for one in others if command_of(talk.interface, one)]
    assert not taken, "\n".join(taken)
