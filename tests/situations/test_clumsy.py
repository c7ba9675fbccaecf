"""Lines of people in a hurry, at whatever question they are typed."""

from __future__ import annotations

import pytest

from selfcheck.interview.messages import Message
from tests.situations.playing import says_of
from tests.situations.reaching import reach, reached


def text_of(said: list[Message]) -> str:
    return " ".join(one.text for one in said if one.kind != "said")


@pytest.mark.parametrize("question", ["last_pump_out", "people", "size", "sheet_gate", "smell", "parts", "sludge_1"])
@pytest.mark.parametrize(
    "line",
    [
        "I do not remember", "I forgot", "no clue", "can't remember", "beats me", "no idea at all", "who knows",
        "I don't really remember", "we have forgotten the day", "Honestly no clue",
    ],
)  # fmt: skip
def test_not_remembering_is_not_knowing(question: str, line: str) -> None:
    talk = reached(question)
    talk.hear(line)
    assert talk.state.given[question].state == "unknown"


@pytest.mark.parametrize(("line", "value"), [("I don't smell anything", "none"), ("forget it", None)])
def test_not_every_not_is_not_knowing(line: str, value: str | None) -> None:
    talk = reached("smell")
    talk.hear(line)
    given = talk.state.given.get("smell")
    assert (given.value if given else None) == value


@pytest.mark.parametrize(
    ("line", "question", "inches"),
    [
        ("The first sludge reading should be 14 in", "sludge_1", 14),
        ("first one was 14", "sludge_1", 14),
        ("change the first one to 14", "sludge_1", 14),
        ("1st reading 14 in", "sludge_1", 14),
        ("make the first sludge 14", "sludge_1", 14),
        ("the second one was 9", "sludge_2", 9),
        ("my second reading was 9 inches, not 11", "sludge_2", 9),
        ("make the scum 4", "scum_total", 4),
        ("set the water depth to 50", "wet_line", 50),
        ("the last one should be 9 in", "sludge_2", 9),
    ],
)
def test_a_reading_is_mended_by_its_name_and_place(line: str, question: str, inches: float) -> None:
    talk = reached("read_back")
    said = text_of(talk.hear(line))
    assert f"{inches} in" in said or "4 ft 2 in" in said
    if talk.pending is not None:
        talk.hear("yes")
    assert talk.state.given[question].value == pytest.approx(inches * 0.0254)
    assert talk.node is not None
    assert talk.node.id in ("read_back", "sludge_3")  # a third reading, where two differ by much


def test_a_reading_that_was_not_given_is_not_mended_and_one_said_to_be_wrong_is_asked_again() -> None:
    talk = reached("read_back")
    before = dict(talk.state.given)
    talk.hear("the third one was 9")
    assert talk.state.given == before
    talk.hear("the first one was wrong")
    assert talk.revising == "sludge_1"


def test_the_second_one_is_the_open_question_where_that_is_open() -> None:
    talk = reached("sludge_2")
    talk.hear("the second one was 9 in")
    if talk.pending is not None:
        talk.hear("yes")
    assert talk.state.given["sludge_2"].value == pytest.approx(9 * 0.0254)


SINK = "My sink drains slow and the toilet gurgles"


@pytest.mark.parametrize(("flow", "question"), [("trouble", "trouble_hurt"), ("yearly", "way_in"), ("yearly", "smell")])
def test_signs_told_at_another_question_are_kept_and_not_asked_again(flow: str, question: str) -> None:
    talk = reached(question, flow)
    said = text_of(talk.hear(SINK))
    assert "one drain is slow" in said
    assert "drains gurgle" in said
    talk.hear("all drains are slow")
    talk.hear("yes")
    signs = {"slow_all_drains", "slow_one_drain", "gurgling"}
    name = "trouble_house" if flow == "trouble" else "house_signs"
    assert set(talk.state.given[name].value) == signs  # type: ignore[arg-type]
    asked: list[str] = []
    usual = {"trouble_hurt": ("no",), "trouble_where": ("yard",), "wrong_now": ("none",), "trouble_yard": ("none",)}
    while talk.ending is None and talk.node is not None and talk.node.id != "gate_helper":
        asked.append(talk.node.id)
        reach(talk, talk.node.id, says_of("teacher"))
        talk.hear({**says_of("teacher"), **usual}.get(talk.node.id, ("I don't know",))[0])
        if talk.pending is not None:
            talk.hear("1")
    assert name not in asked
    assert set(talk.draft()["check"]["seen"]["house"]) == signs


def test_signs_told_where_their_list_comes_next_lead_to_the_whole_list() -> None:
    talk = reached("wrong_now")
    talk.hear(SINK)
    if talk.pending is not None:
        talk.hear("yes")
    assert talk.state.given["wrong_now"].value == ("house",)
    assert talk.node is not None
    assert talk.node.id == "house_signs"


@pytest.mark.parametrize("line", ["help me", "please help", "I need help", "please help me", "help us"])
@pytest.mark.parametrize("before", [(), ("something is wrong",), ("the sink gurgles oddly near the hole",)])
@pytest.mark.parametrize(
    ("flow", "question"), [("trouble", "trouble_hurt"), ("yearly", "wrong_now"), ("home", "what_now")]
)
def test_who_calls_for_help_is_told_whom_to_call(flow: str, question: str, before: tuple[str, ...], line: str) -> None:
    talk = reached(question, flow)
    for one in before:
        talk.hear(one)
    said = text_of(talk.hear(line))
    assert "911" in said
    assert "stay out" in said.casefold()


@pytest.mark.parametrize("line", ["yes", "y", "sure", "ok", "yeah"])
@pytest.mark.parametrize("question", ["parts", "smell", "level"])
def test_a_bare_yes_to_a_list_is_asked_which_in_fresh_words(question: str, line: str) -> None:
    talk = reached(question)
    first, second = (text_of(talk.hear(line)) for _ in range(2))
    assert "which" in first.casefold()
    assert first != second
    assert "understand" not in first + second
    assert question not in talk.state.given


def test_a_bare_yes_to_the_list_of_what_is_wrong_is_asked_which() -> None:
    talk = reached("smell")
    talk.hear("something is wrong")
    assert "which" in text_of(talk.hear("yes")).casefold()
    assert talk.pending is not None


@pytest.mark.parametrize(
    ("question", "line", "value"),
    [
        ("wrong_now", "nope all good here", ()),
        ("wrong_now", "n", ()),
        ("wrong_now", "smells funny in the basement", ("house",)),
        ("way_in", "with my wife", "guided"),
        ("last_pump_out", "never i think", None),
        ("parts", "all fine thanks", ()),
        ("parts", "outlet tee is rusty", ("outlet_tee",)),
        ("sheet_lid", "its back on and fastened", "whole"),
        ("smell", "well um so, like earthy i think, thanks", "earthy"),
    ],
)
def test_small_talk_around_an_answer_is_passed_over(question: str, line: str, value: object) -> None:
    talk = reached(question)
    talk.hear(line)
    assert talk.state.given[question].value == value


@pytest.mark.parametrize(
    ("question", "line"),
    [
        ("sheet_lid", "its fine"),
        ("sheet_lid", "almost back on"),
        ("sheet_lid", "back on i think"),
        ("sheet_lid", "back on but a screw is gone"),
        ("sheet_gate", "sure"),
        ("smell", "stinks"),
        ("parts", "the inlet is ok"),
    ],
)
def test_what_is_doubtful_or_said_of_something_else_is_no_answer(question: str, line: str) -> None:
    talk = reached(question)
    talk.hear(line)
    assert question not in talk.state.given
    assert talk.pending is None or not talk.pending.offered


@pytest.mark.parametrize("line", ["well " * 400, "please " * 300 + "x", "i think " * 250, "so, " * 500 + "? "])
def test_any_amount_of_small_talk_is_met(line: str) -> None:
    talk = reached("smell")
    assert text_of(talk.hear(line))
    assert "smell" not in talk.state.given


def test_a_word_that_asks_is_no_option_by_itself() -> None:
    talk = reached("what_now", "home")
    talk.hear("idk where to start")
    assert "what_now" not in talk.state.given


def test_a_doubt_passes_no_safety_item() -> None:
    for question, line in (
        ("gate_helper", "my wife is here i think"),
        ("gate_helper", "my wife is here but she leaves"),
    ):
        talk = reached(question, person="homeowner")
        talk.hear(line)
        assert question not in talk.state.given


def test_a_part_that_is_said_to_be_in_order_is_not_named_as_wrong() -> None:
    talk = reached("parts")
    said = text_of(talk.hear("inlet ok, outlet broken off"))
    assert "side of the outlet" in said
    assert "house side" not in said


@pytest.mark.parametrize(
    ("line", "question"),
    [
        ("yes but the date was may 3", "observed_on"),
        ("we got it pumped in march", "last_pump_out"),
        ("now 5 ppl", "people"),
    ],
)
def test_a_name_in_the_middle_of_a_line_is_found(line: str, question: str) -> None:
    talk = reached("read_back")
    talk.hear(line)
    assert talk.pending is not None
    assert [one.question for one in talk.pending.offered] == [question]


def test_both_is_all_of_two_and_of_more_it_is_asked_which() -> None:
    talk = reached("trouble_where", "trouble", special={"trouble_hurt": "no", "trouble_lid": "on"})
    assert "which" in text_of(talk.hear("both")).casefold()
    assert "trouble_where" not in talk.state.given
    talk.hear("house")
    talk.hear("toilet won't flush")
    assert talk.state.given["trouble_house"].value == ("slow_one_drain",)


@pytest.mark.parametrize(
    ("question", "line", "value"),
    [("sludge_1", "10 in?", 0.254), ("people", "4?", 4), ("size", "1000 gallons ?", 3.785)],
)
def test_an_amount_with_a_question_mark_is_one(question: str, line: str, value: float) -> None:
    talk = reached(question)
    talk.hear(line)
    assert talk.state.given[question].value == pytest.approx(value, abs=0.001)
    asked = reached(question)
    asked.hear("is 10 in too much?")
    assert question not in asked.state.given
