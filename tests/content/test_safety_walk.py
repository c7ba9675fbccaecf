"""Every edge of every conversation: nothing opens before the gate, nothing is left open, danger is answered at once."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from selfcheck.interview.answers import BREAK, Answer
from selfcheck.interview.context import Context, choices_of
from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.hazard_fitting import ALL
from selfcheck.interview.hazards import VERDICTS
from selfcheck.interview.nodes import Condition
from selfcheck.interview.replay import follow
from selfcheck.interview.routes import Graph, answers_to
from selfcheck.interview.routing import is_danger
from selfcheck.interview.state import State
from tests.content.texts import headed, section_files, sentences
from tests.content.walking import WALKS, graph, household, talk

ORDINARY = [("way", "new"), ("way", "known"), ("readings", "new"), ("trouble", "new"), ("learn", "new")]
ORDINARY += [("after_pump_out", "new"), ("look_ahead", "new"), ("find_tank", "new"), ("second", "two")]
ORDINARY += [("pumped_of_two", "two"), ("learn_of_two", "two"), ("find_of_two", "two"), ("again", "known")]
#: every item that has to be passed before the lid comes off; two more only where they apply
GATE = ("gate_helper", "gate_away", "gate_spark", "gate_load", "gate_lid", "gate_hands", "gate_promise", "gate_teach")
#: words that lead a person to open, lift, lower or reach; allowed only where a step `opens`, or in a "do not"
OPENING = re.compile(
    r"\b(lower the pole|push the foot|raise it|slide the lid aside|lift (the|a) lid|take (the lid off|off the lid)|"
    r"open the (tank|lid)|remove the lid|pry)\b",
    re.IGNORECASE,
)
REFUSED = re.compile(r"\b(not|never|nobody|no one)\b", re.IGNORECASE)
#: sentences between an answer and the next one, that which asks or bids among them; those of cautions count apart:
#: of the one ahead of a safety item, and of each that an answer raises, which tells all there is to do
MOST_SAID, MOST_AHEAD, MOST_RAISED = 3 + 1, 3, 9


@pytest.fixture(scope="module", params=ORDINARY, ids="-".join)
def walked(request: pytest.FixtureRequest) -> Graph:
    name, whose = request.param
    return graph(name, whose)


@pytest.fixture(scope="module", params=sorted(VERDICTS))
def any_moment(request: pytest.FixtureRequest) -> Graph:
    """A hazard or a wish to leave at every step."""
    return graph("path", "new", hazards=(request.param,))


def gate_passed(state: State, graph: Graph) -> bool:
    needed = [*GATE]
    answered = state.answered
    if not answered.chosen("alarm", "not_fitted"):
        needed.append("gate_power")
    if answered.chosen("gate_teach", "climb_down", "reach_in"):
        needed.append("gate_teach_again")
    hidden = answered.chosen("ready", "lid_hidden") or answered.chosen("way_in", "hidden")
    if hidden and answered.chosen("search", "found_covered"):
        needed += ["utility_call", "bared"]
    nodes = graph.script.nodes
    return all(name in answered and set(choices_of(answered[name])) <= set(nodes[name].passes) for name in needed)


def test_nothing_opens_before_every_item_of_the_gate_has_passed(walked: Graph) -> None:
    for state in walked.states.values():
        if state.node is not None and state.node.opens:
            assert gate_passed(state, walked), state.node.id
            assert not state.answered.hazards


def test_nothing_opens_from_a_sheet_or_with_the_tank_shut(walked: Graph) -> None:
    for state in walked.states.values():
        indoors = state.answered.chosen("way_in", "sheet", "closed")
        if indoors or state.answered.chosen("ready", "sheet_filled", "not_today"):
            assert state.node is None or not state.node.opens
            assert not state.open


def test_every_end_has_a_next_step_and_nothing_stands_open(walked: Graph) -> None:
    for state in walked.ends():
        if state.step.left:
            assert not state.open or state.tries >= 2
            continue
        outcome = walked.script.outcomes[state.step.outcome]
        assert outcome.title
        assert outcome.next_step
        if state.open:
            assert "lid_left_open" in state.answered.hazards or state.step.outcome == "danger"


def test_the_second_lid_is_pushed_before_its_step() -> None:
    walked = graph("second", "two")
    for state in walked.states.values():
        if state.node is not None and state.node.id == "second_do":
            assert gate_passed(state, walked)
            assert state.answered.chosen("second_lid", "firm")
            assert not state.answered.hazards


def test_there_is_no_dead_end_and_no_loop(walked: Graph) -> None:
    for key, state in walked.states.items():
        assert state.ended or walked.edges[key]
    assert 0 < walked.lengths[walked.start] < 60
    assert walked.count_routes() > 1


def test_every_question_is_reached() -> None:
    for flow in ("yearly", "trouble", "learn", "after_pump_out", "look_ahead", "find_tank"):
        graphs = [graph(name, whose) for name, whose in ORDINARY if WALKS[name].flow == flow]
        graphs += [graph("path", "new", hazards=("fell_in",))] if flow == "yearly" else []
        met = {state.node.id for one in graphs for state in one.states.values() if state.node is not None}
        met |= {state.step.outcome for one in graphs for state in one.ends()}
        script = talk(flow)
        asked = [one for one in script.nodes.values() if Condition(predicate="only_told") not in one.when]
        wanted = {node.outcome if node.kind == "stop" else node.id for node in asked}
        if flow == "yearly":
            wanted -= {"filter", "outlet_depth", "disposal", "crust_stands"} - met  # only with other facts on record
        if flow != "yearly":
            # nothing is opened there, and what is a danger or calls for a call today is told in words
            wanted -= {"danger_lid", "danger", "call_today", "left_open"} - met
        assert not sorted(wanted - met), flow


def test_little_is_said_between_an_answer_and_the_next_question(walked: Graph, request: pytest.FixtureRequest) -> None:
    context = household(request.node.callspec.params["walked"][1])
    wrong = []
    for state, answer in _turns(walked, context):
        talking = Conversation(walked.script, context)
        talking._state, talking._section = state, walked.script.section_of[answer.question].id
        messages = talking.accept(answer)
        if talking.prompt is None:
            continue
        raised = set(talking.state.answered.hazards) - set(state.answered.hazards)
        said = sum(_length(one.text) for one in messages if one.kind != "caution")
        warned = sum(len(sentences(one.text)) for one in messages if one.kind == "caution")
        if said > MOST_SAID or warned > MOST_AHEAD + MOST_RAISED * len(raised):
            wrong.append(f"{answer.question} {answer.value} → {talking.prompt.question}: {said}, cautions {warned}")
    assert not wrong, "\n".join(wrong)


def _turns(graph: Graph, context: Context) -> Iterator[tuple[State, Answer]]:
    """Each question with every answer there is to it, and each way from a question to the next."""
    met: set[tuple[object, ...]] = set()
    for edge in graph.all_edges():
        node = edge.before.node
        if node is None or edge.kind != "answer":
            continue
        if (node.id,) not in met:
            met.add((node.id,))
            yield from ((edge.before, one) for one in answers_to(graph.script, node, context, {}, skipping=False))
        way = node.id, edge.answer.state, edge.answer.value, edge.after.node.id if edge.after.node else ""
        if way not in met:
            met.add(way)
            yield edge.before, edge.answer


def _length(text: str) -> int:
    """Its sentences. The lines of a list, as of what is read back, are none."""
    return 0 if "\n" in text else len([one for one in sentences(text) if one.endswith((".", "?", ":"))])


def test_danger_is_answered_in_the_next_message(walked: Graph) -> None:
    met = _danger_answered(walked)
    without = (graph("readings", "new"), graph("second", "two"))
    assert met or walked.script.flow.id not in ("yearly", "trouble") or walked in without


def test_danger_told_at_any_moment_is_answered_in_the_next_message(any_moment: Graph) -> None:
    assert _danger_answered(any_moment)


def _danger_answered(graph: Graph) -> int:
    met = 0
    for edge in graph.all_edges():
        fresh = set(edge.after.answered.hazards) - set(edge.before.answered.hazards)
        if not any(is_danger(graph.script, one) for one in fresh):
            continue
        met += 1
        node = edge.after.node
        assert node is not None or edge.after.step.outcome == "danger"
        assert node is None or graph.script.section_of[node.id].id == "danger"
    return met


def test_leaving_with_the_tank_open_asks_for_the_lid(any_moment: Graph) -> None:
    for edge in any_moment.all_edges():
        if edge.kind == "leave" and edge.before.open and not edge.before.answered.danger:
            assert edge.after.node is not None
            assert edge.after.node.closes


def test_after_a_break_the_lid_comes_first_and_the_gate_is_asked_again(any_moment: Graph) -> None:
    opened = 0
    for state in any_moment.states.values():
        if state.ended:
            continue
        after = follow(any_moment.script, household("new"), state, Answer(BREAK, "value"))
        if state.open and not state.answered.danger:
            opened += 1
            assert after.node is not None
            assert after.node.closes
        if not state.settled:
            assert not any(any_moment.script.nodes[name].gate for name in after.given)
    assert opened


def test_a_person_can_leave_from_everywhere(any_moment: Graph) -> None:
    for state in any_moment.ends():
        if state.step.left:
            assert not state.open or state.tries >= 2 or state.answered.danger


def test_opening_words_stand_only_in_steps_that_open() -> None:
    words = section_files()
    found = []
    for flow in ("yearly", "trouble", "learn", "after_pump_out", "look_ahead", "find_tank", "home"):
        for section, node in talk(flow).flow.nodes():
            if node.opens:
                continue
            for key, text in words[section.id].get(node.id, {}).items():
                said = " ".join(text.values()) if key in ("options", "after", "odd") else text
                if not isinstance(said, str):
                    continue
                for sentence in re.split(r"(?<=[.?])\s+", said):
                    if OPENING.search(sentence) and not REFUSED.search(sentence):
                        found.append(f"{flow} · {node.id} · {key}: {sentence}")
    assert not found, "\n".join(found)


@pytest.mark.parametrize("hazard", sorted(ALL))
def test_every_hazard_has_its_caution(hazard: str) -> None:
    """What it is, what it does, how to keep safe; in danger also: do not go in, and the emergency number."""
    head, body = headed("cautions")[hazard]
    assert (head["level"] == "danger") == (ALL[hazard] == "danger")
    whole = f"{head['hazard']} {head['harm']} {head['avoid']} {body}"
    if ALL[hazard] == "danger":
        assert re.search(r"911 in the United States", whole)
        assert re.search(r"not even to help", whole)
    else:
        assert re.search(r"licensed septic service", whole)
    assert head["told"]
