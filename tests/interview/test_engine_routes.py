"""Every way through the bread, and what must hold on each."""

import random

import pytest

from selfcheck.interview.answers import BREAK, HAZARD, LEAVING, Answer
from selfcheck.interview.replay import begin, follow, replay
from selfcheck.interview.routes import Graph, answers_to, explore
from selfcheck.interview.state import State
from tests.interview.toys import CONTEXT, bread

SAMPLES = {"rise": [0.03, 0.1], "people": [3.0], "fed": [CONTEXT.today]}


@pytest.fixture(scope="module")
def graph() -> Graph:
    return explore(bread(), CONTEXT, SAMPLES, hazards=("smoke", "fire"), breaks=True)


def test_every_question_and_every_end_can_be_reached(graph: Graph) -> None:
    asked = {state.node.id for state in graph.states.values() if state.node}
    assert asked == {node.id for node in bread().nodes.values() if node.kind != "stop"}
    assert {state.step.outcome for state in graph.ends()} == {"", "cold", "baked", "burning"}


def test_every_option_of_every_question_is_an_edge(graph: Graph) -> None:
    tried = {(edge.answer.question, edge.answer.value) for edge in graph.all_edges()}
    for node in bread().nodes.values():
        for option in node.options if node.kind == "choose" else ():
            assert (node.id, option) in tried


def test_nothing_opens_before_every_gate_item_has_passed(graph: Graph) -> None:
    for state in graph.states.values():
        if state.node is not None and state.node.opens:
            given = {name: answer.value for name, answer in state.answered.items()}
            assert (given["gate_child"], given["gate_mitts"]) == ("away", "on")
            assert not state.answered.hazards


def test_no_way_out_passes_by_the_shutting_question(graph: Graph) -> None:
    for edge in graph.all_edges():
        if edge.before.open and edge.after.ended and not edge.after.answered.danger:
            assert edge.answer.question == "door_shut" or edge.before.tries >= 2
            assert not edge.after.open or edge.after.tries >= 2


def test_danger_is_met_at_once_from_everywhere(graph: Graph) -> None:
    for edge in graph.all_edges():
        if edge.kind == "hazard" and edge.answer.value == "fire":
            assert edge.after.step.outcome == "burning"


def test_a_break_with_the_door_open_asks_about_the_door_first(graph: Graph) -> None:
    for edge in graph.all_edges():
        if edge.kind == "break" and edge.before.open and not edge.before.answered.danger:
            assert edge.after.node is not None
            assert edge.after.node.id == "door_shut"


def test_no_gate_answer_outlives_a_break_before_it_was_shut(graph: Graph) -> None:
    for edge in graph.all_edges():
        if edge.kind == "break" and not edge.before.settled:
            assert not {"gate_child", "gate_mitts", "door_open"} & set(edge.after.given)


def test_there_is_no_loop_and_no_dead_end(graph: Graph) -> None:
    assert 10 < graph.lengths[graph.start] < 25
    for state in graph.ends():
        assert state.step.outcome or state.step.left
    assert graph.count_routes() > 20


def test_routes_are_different_and_end() -> None:
    small = explore(bread(), CONTEXT, SAMPLES, leaving=False)
    ways = [tuple((one.answer.question, one.answer.state, one.answer.value) for one in way) for way in small.routes(99)]
    assert len(set(ways)) == len(ways)
    assert all(way[0][0] == "flour" for way in ways)


def test_states_taken_for_one_ask_the_same_from_then_on() -> None:
    """Random walks by the real replay never meet a question, an end or a next step that the graph does not have."""
    graph = explore(bread(), CONTEXT, SAMPLES, leaving=True, hazards=("smoke",))
    edges = {
        (edge.before.node.id if edge.before.node else "", edge.answer.question, edge.answer.value, _what(edge.after))
        for edge in graph.all_edges()
    }
    chance = random.Random(7)
    for _ in range(400):
        state = begin(bread(), CONTEXT)
        while state.node is not None:
            answer = chance.choice(_tried(state))
            after = follow(bread(), CONTEXT, state, answer)
            assert (state.node.id, answer.question, answer.value, _what(after)) in edges
            state = after


def test_replay_is_the_fold_of_single_steps() -> None:
    chance = random.Random(3)
    for _ in range(60):
        state, answers = begin(bread(), CONTEXT), []
        while state.node is not None:
            answers.append(chance.choice([*_tried(state), Answer(BREAK, "value"), Answer(HAZARD, "value", "smoke")]))
            state = follow(bread(), CONTEXT, state, answers[-1])
        assert replay(bread(), CONTEXT, answers).essence() == state.essence()


def _tried(state: State) -> list[Answer]:
    assert state.node is not None
    answers = answers_to(bread(), state.node, CONTEXT, SAMPLES)
    others = [Answer(HAZARD, "value", "smoke")] if not state.told else []
    return answers * 4 + others + ([] if state.leaving else [Answer(LEAVING, "value")])


def _what(state: State) -> tuple[object, ...]:
    return (state.node.id if state.node else "", state.step.outcome, state.step.left, state.open)
