"""Lines of which only a little is understood: nothing is written down or offered from a common word alone."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach, reached


def standing_at(question: str, *lines: str, person: str = "buyer") -> Conversation:
    talk = reached(question, person=person)
    for line in lines:
        talk.hear(line)
    return talk


@pytest.mark.parametrize("line", ["The tank, all emptied", "the tank", "the lid, we think", "tank and pole", "is one"])
def test_a_common_word_picks_no_option(line: str) -> None:
    talk = standing_at("parts", line)
    assert talk.pending is None
    assert "parts" not in talk.state.given


def test_readings_told_one_after_the_other_are_all_kept() -> None:
    talk = standing_at("smell", "crust 0 in", "wet 48 in", "none", "go", "yes")
    assert talk.state.given["scum_total"].value == 0
    assert talk.state.given["wet_line"].value == pytest.approx(1.2192)


@pytest.mark.parametrize(
    ("reply", "value"),
    [("no", None), ("neither", None), ("in", None), ("gallons", None), ("3000 litres", 3.0), ("1000 gal", 3.785411784)],
)
def test_of_several_meanings_only_a_unit_or_a_choice_settles_one(reply: str, value: float | None) -> None:
    talk = standing_at("size", "3", reply)
    given = talk.state.given.get("size")
    assert (given.value if given else None) == (pytest.approx(value) if value else None)


@pytest.mark.parametrize("line", ["go", "ready", "go out", "we are ready", "ok go", "found it"])
def test_no_step_that_leads_to_opening_is_offered_at_another_question(line: str) -> None:
    talk = standing_at("people", line)
    assert talk.pending is None or not {"ready", "search"} & {one.question for one in talk.pending.offered}
    said = talk.messages[-1].text
    talk.hear("go")
    assert talk.node is not None
    assert talk.node.id == "people"
    assert said


@pytest.mark.parametrize("line", ["lid is off", "the lid is off now", "my pole is broken", "we use a rod"])
def test_a_statement_is_not_answered_by_the_guide(line: str) -> None:
    before = standing_at("smell")
    assert not [one for one in before.hear(line) if one.kind == "help"]


def test_what_a_probe_is_comes_from_the_glossary() -> None:
    talk = standing_at("smell")
    assert "thin rod" in talk.hear("what is a probe")[1].text


def test_another_way_through_is_offered_at_a_later_question_and_taken_after_a_yes() -> None:
    talk = standing_at("lid_form", "we did it on paper")
    assert talk.node is not None
    assert talk.pending is not None
    assert [one.question for one in talk.pending.offered] == ["way_in"]
    talk.hear("yes")
    assert talk.node.id == "sheet_lid"


def test_where_one_stands_is_asked_after_a_break_only() -> None:
    before = standing_at("lid_form")
    assert "ready" not in before.state.answered
    after = Conversation(before.script, before.context, before.answers)
    after.start()
    assert after.node is not None
    assert after.node.id == "ready"
    after.hear("the sheet is filled in")
    assert after.node.id == "sheet_lid"
    back_out = Conversation(before.script, before.context, before.answers)
    back_out.start()
    back_out.hear("not today")
    assert back_out.node is not None
    assert back_out.node.id == "lid_look"


@pytest.mark.parametrize(
    ("question", "line", "taken"),
    [
        ("wrong_now", "house and yard", {"wrong_now": ("house", "yard")}),
        ("wrong_now", "drains, lawn", {"wrong_now": ("house", "yard")}),
        ("parts", "the outlet tee is missing", {"parts": ("outlet_tee",), "outlet_tee_state": "missing"}),
        ("sludge_1", "no the 8 was last year's, it was 18", {"sludge_1": pytest.approx(0.4572)}),
        ("sludge_1", "a foot", {"sludge_1": pytest.approx(0.3048)}),
        ("sludge_1", "oops 8in", {"sludge_1": pytest.approx(0.2032)}),
        ("sludge_2", "same", {"sludge_2": pytest.approx(0.127)}),
        ("sludge_2", "no, the first was 18 in", {"sludge_1": pytest.approx(0.4572)}),
        ("read_back", "change the crust to 4 in", {"scum_total": pytest.approx(0.1016)}),
        ("wrong_now", "wet ground, smells of sewage", {"wrong_now": ("yard",)}),
        ("wrong_now", "gurgling and all drains slow", {"wrong_now": ("house",)}),
        ("gate_teach", "jump in and save them", {"gate_teach": "climb_down"}),
        ("alarm", "no", {"alarm": "not_fitted"}),
    ],
)
def test_what_is_said_is_taken_for_what_it_means(question: str, line: str, taken: dict[str, object]) -> None:
    talk = standing_at(question, line)
    if talk.pending is not None:
        talk.hear("yes")
    assert {name: talk.state.given[name].value for name in taken} == taken


@pytest.mark.parametrize(
    ("question", "line"),
    [
        ("smell", "can't smell, I have a cold"),
        ("level", "i cant see"),
        ("parts", "couldn't see the wall"),
        ("scum_total", "couldn't push through"),
    ],
)
def test_what_could_not_be_done_or_seen_is_offered_as_not_known(question: str, line: str) -> None:
    talk = standing_at(question, line)
    assert question not in talk.state.given
    assert talk.pending is not None
    talk.hear("yes")
    assert talk.state.given[question].state == "unknown"


@pytest.mark.parametrize(
    ("question", "line"),
    [
        ("wrong_now", "yard and banana"),
        ("alarm", "buzz off"),
        ("parts", "tees are fine, wall pitted"),
        ("gate_hands", "gloves"),
        ("gate_hands", "gloves on"),
        ("lid_back", "on"),
        ("level", "full"),
    ],
)
def test_half_an_answer_is_not_written_down_by_itself(question: str, line: str) -> None:
    talk = standing_at(question, line)
    assert question not in talk.state.given
    assert talk.pending is None or question in {one.question for one in talk.pending.offered}


def test_what_is_said_to_be_wrong_is_asked_once_more() -> None:
    talk = standing_at("read_back", "the wet line is wrong")
    assert talk.revising == "wet_line"
    talk = standing_at("read_back", "wrong")
    assert talk.pending is not None
    assert "wet_line" in {ident for ident, _ in talk.pending.choices}


def test_a_list_of_signs_told_in_part_is_asked_for_whole() -> None:
    for line in ("gurgling and all drains slow", "wet ground, smells of sewage"):
        talk = standing_at("wrong_now", line)
        if talk.pending is not None:
            talk.hear("yes")
        assert talk.node is not None
        assert talk.node.id in ("house_signs", "yard_signs")


def test_more_signs_join_those_that_were_read_back() -> None:
    talk = standing_at("wrong_now", "the yard and banana", "drains", "yes")
    assert talk.state.given["wrong_now"].value == ("house", "yard")


def test_a_no_that_belongs_to_a_word_takes_nothing_back() -> None:
    talk = begin("buyer", "learn")
    for line in ("buying", "no idea", "no sewer bill, out in the country"):
        talk.hear(line)
    assert talk.state.given["sewer_or_tank"].state == "unknown"
    assert talk.state.given["clues"].value == ("no_sewer_bill", "rural")


def test_not_knowing_is_one_of_the_ways_out_of_a_date() -> None:
    talk = standing_at("last_pump_out", "x", "y", "z")
    assert talk.pending is not None
    talk.hear("don't know")
    assert talk.state.given["last_pump_out"].state == "unknown"


@pytest.mark.parametrize(("line", "months"), [("all year", 12), ("half the year", 6), ("summers only", 3), ("9", 9)])
def test_parts_of_a_year_are_months(line: str, months: int) -> None:
    talk = begin("buyer", "learn")
    reach(talk, "learn_months", says_of("buyer"), {"my_stage": "buying", "sewer_or_tank": "tank"})
    talk.hear(line)
    assert talk.state.given["learn_months"].value == months


@pytest.mark.parametrize(
    ("line", "people"), [("3.5", 3.5), ("2 or 3", 2.5), ("single", 1), ("two and a half", 2.5), ("2,5", 2.5)]
)
def test_people_are_counted(line: str, people: float) -> None:
    assert standing_at("people", line).state.given["people"].value == people


@pytest.mark.parametrize("line", ["a couple and a baby", "my husband, me and 2 kids"])
def test_groups_of_people_are_not_counted_in_part(line: str) -> None:
    assert "people" not in standing_at("people", line).state.given


def test_an_answer_to_the_open_question_joins_what_is_read_back() -> None:
    talk = standing_at("lid_form", "we did it on paper", "it is round")
    assert talk.pending is not None
    assert {one.question for one in talk.pending.offered} == {"way_in", "lid_form"}


def test_what_is_read_back_is_let_go_after_three_lines_that_are_neither_yes_nor_no() -> None:
    talk = standing_at("lid_form", "we did it on paper", "idk", "hm")
    assert talk.pending is not None
    talk.hear("idk")
    assert talk.pending is None
    assert talk.node is not None
    assert talk.node.id == "lid_form"


@pytest.mark.parametrize("line", ["not all of it", "none of them", "no", "I don't know", "not sure", "skip"])
def test_boxes_that_nobody_can_vouch_for_count_as_not_ticked(line: str) -> None:
    talk = standing_at("sheet_gate", line, person="teacher")
    assert "sheet_gate" in talk.state.given
    assert talk.draft()["check"]["gate"] == "not_confirmed"
    assert line == "skip" or any("leave the tank shut until" in one.text for one in talk.messages)


def test_what_was_said_before_is_not_offered_once_more() -> None:
    talk = standing_at("people", "no alarm")
    assert talk.pending is None
    assert talk.node is not None
    assert talk.node.id == "people"
    talk.hear("the alarm is quiet")
    assert talk.pending is not None


@pytest.mark.parametrize(
    "line",
    [
        "the {old} was wrong, it was 13",
        "no, the {old} in was last year's, it was 13 in",
        "it was 13, not {old}",
        "not {old} but 13 in",
        "instead of {old} it should be 13",
        "change {old} to 13",
    ],
)
def test_a_correction_that_cites_a_number_mends_the_answer_that_had_it(line: str) -> None:
    talk = standing_at("sludge_2")
    before = talk.state.given["sludge_1"]
    old = talk.state.given["scum_total"].said.split()[0]
    assert old != before.said.split()[0]
    talk.hear(line.format(old=old))
    assert talk.pending is not None
    if not talk.pending.offered:  # as many people live there
        assert {"scum_total", "people"} <= {ident for ident, _ in talk.pending.choices}
        talk.hear("crust, top to bottom")
    else:
        assert [one.question for one in talk.pending.offered] == ["scum_total"]
        talk.hear("yes")
    assert talk.state.given["scum_total"].value == pytest.approx(13 * 0.0254)
    assert talk.state.given["sludge_1"] == before


@pytest.mark.parametrize("line", ["4 people, a 1000 gallon tank", "four people and the tank is 1000 gallons"])
def test_the_size_of_the_tank_is_heard_in_a_line_with_other_facts(line: str) -> None:
    talk = standing_at("alarm", line)
    assert talk.pending is not None
    assert [one.question for one in talk.pending.offered] in (["size", "people"], ["people", "size"])
