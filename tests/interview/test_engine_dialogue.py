"""What is said to what is typed, in a conversation about bread."""

from dataclasses import replace
from datetime import date
from itertools import pairwise

import pytest

from selfcheck.interview.answers import HAZARD, NOTE, Answer
from selfcheck.interview.dialogue import Ending
from tests.interview.toys import CONTEXT, TO_END, TO_OVEN, Told, at, talk, words


def test_a_whole_conversation_ends_in_its_outcome_and_its_records() -> None:
    baked = talk([*TO_END, "yes"])
    assert baked.ending == Ending("baked", left=False)
    assert baked.draft() == {
        "loaf": {
            "seen": {
                "flour": "white",
                "readings": {"rise": [{"m": pytest.approx(0.1016), "said": "4 in"}]},
                "faults": [],
                "fresh": True,
                "sound": True,
                "smoke": "none",
            },
            "starter": {"fed": "2025-07-02", "asked": "2026-05-18"},
            "door_shut": True,
            "remark": "nothing more",
            "gate": "passed",
        },
        "household": {"eaters": 3},
    }


def test_an_answer_is_kept_before_the_next_question_is_made() -> None:
    kept: list[tuple[str, str]] = []
    conversation = talk(keep=lambda answer: kept.append((answer.question, at(conversation_so_far[0]))))
    conversation_so_far = [conversation]
    conversation.hear("white")
    assert kept == [("flour", "flour")]


def test_an_answer_that_cannot_be_kept_does_not_count() -> None:
    def fail(answer: Answer) -> None:
        raise OSError("full")

    conversation = talk(keep=fail)
    with pytest.raises(OSError, match="full"):
        conversation.hear("white")
    assert conversation.answers == ()
    assert at(conversation) == "flour"


@pytest.mark.parametrize(
    ("line", "option"),
    [
        ("1", "white"),
        ("White wheat flour", "white"),
        ("  white WHEAT flour. ", "white"),
        ("wheat", "white"),
        ("plain", "white"),
        ("rye", "rye"),
        ("dark", "rye"),
        ("it is dark rye flour", "rye"),
        ("sifted", None),
        ("not sifted", "spelt"),
        ("not rye", None),
        ("flour", None),
        ("4", None),
        ("0", None),
    ],
)
def test_part_of_an_options_words_is_enough_when_only_one_fits(line: str, option: str | None) -> None:
    conversation = talk([line])
    given_ = conversation.state.given.get("flour")
    assert (given_.value if given_ else None) == option


def test_words_that_fit_several_options_are_asked_about() -> None:
    conversation = talk(["flour"])
    assert conversation.prompt is not None
    assert [choice.label for choice in conversation.prompt.choices] == ["White wheat flour", "Dark rye flour"]
    conversation.hear("2")
    assert conversation.state.given["flour"].value == "rye"


def test_a_gate_is_not_passed_by_ok_or_done_or_words_around_it() -> None:
    for line in ("ok", "done", "yes", "sure", "kitchen", "we saw them leave the kitchen but one came back"):
        conversation = talk([*TO_OVEN[:-2], line])
        assert "gate_child" not in conversation.state.given, line
    passed = talk([*TO_OVEN[:-2], "leave the kitchen"])
    assert passed.state.given["gate_child"].value == "away"


def test_a_gate_cannot_be_skipped_or_left_unknown() -> None:
    for line in ("skip", "I don't know"):
        conversation = talk([*TO_OVEN[:-2], line])
        assert at(conversation) == "gate_child"
        assert "safe" in words(conversation.messages, "note")


def test_a_failed_gate_opens_nothing() -> None:
    conversation = talk([*TO_OVEN[:-1], "my hands are bare"])
    assert at(conversation) == "remark"
    assert not conversation.state.open
    conversation.hear("no")
    conversation.hear("")
    conversation.hear("yes")
    assert conversation.ending == Ending("cold")
    assert conversation.draft()["loaf"]["gate"] == "not_confirmed"


def test_a_bare_number_is_asked_about_and_echoed_in_both_units() -> None:
    conversation = talk(["white", "4"])
    assert conversation.prompt is not None
    assert [choice.label for choice in conversation.prompt.choices][:2] == ["4 in", "4 cm"]
    assert "4 in (10 cm)" in words(conversation.hear("1"), "echo")


def test_about_is_echoed_with_its_error() -> None:
    assert "give or take" in words(talk(["white", "about 6 in"]).messages, "echo")
    assert "give or take" not in words(talk(["white", "6 in"]).messages, "echo")


def test_an_odd_value_is_questioned_and_kept_as_it_is_when_the_person_insists() -> None:
    conversation = talk(["rye", "no", "1 in"])
    asked = words(conversation.messages, "say", "ask")
    assert "not usual" in asked
    assert "seldom lies that flat" in asked
    assert "rise" not in conversation.state.given
    conversation.hear("yes")
    assert conversation.draft()["loaf"]["seen"]["readings"]["rise"][0]["m"] == pytest.approx(0.0254)


def test_an_impossible_value_is_never_kept_by_insisting_nor_clamped_and_what_was_typed_stays() -> None:
    conversation = talk(["white", "9 ft"])
    assert "more than can be" in words(conversation.messages, "trouble")
    conversation.hear("yes, it is so")
    conversation.hear("9 ft")
    assert at(conversation) == "rise"
    assert "rise" not in conversation.state.given
    assert [one.said for one in conversation.answers].count("9 ft") == 2
    conversation.hear("9 in")
    assert conversation.state.given["rise"].value == pytest.approx(0.2286)


def test_an_impossible_value_among_others_is_left_out_and_asked_for() -> None:
    conversation = talk(["white", "first rise 9 ft, sticky", "yes"])
    assert "more than can be" in words(conversation.messages, "trouble")
    assert "faults" in conversation.state.given
    assert at(conversation) == "rise"


def test_a_new_value_at_the_doubt_takes_the_place_of_the_odd_one() -> None:
    conversation = talk(["rye", "no", "1 in", "9 in"])
    assert conversation.state.given["rise"].value == pytest.approx(0.2286)
    assert at(conversation) == "people"


def test_zero_unknown_skipped_and_not_asked_are_never_mixed_up() -> None:
    zero = talk(["white", "0", "yes"]).draft()["loaf"]["seen"]
    unknown = talk(["white", "I don't know"])
    skipped = talk(["white", "skip"])
    assert zero["readings"]["rise"][0]["m"] == 0
    assert unknown.state.given["rise"].state == "unknown"
    assert skipped.state.given["rise"].state == "skipped"
    assert "readings" not in unknown.draft()["loaf"]["seen"]
    assert talk(["I don't know"]).draft()["loaf"]["seen"]["flour"] == "unknown"
    assert talk(["white", "4 in", "I don't know"]).draft()["household"] == {"eaters": None}
    assert "household" not in talk(["white", "4 in", "skip"]).draft()


def test_several_answers_in_one_line_are_read_back_and_not_asked_again() -> None:
    conversation = talk(["white"])
    said = conversation.hear("first rise 4 in, sticky, fed 2019")
    assert "First rise: 4 in" in words(said, "echo")
    assert "Faults: it sticks to the hands" in words(said, "echo")
    assert "Starter fed: 2019" in words(said, "echo")
    assert at(conversation) == "rise"
    assert "rise" not in conversation.state.given
    conversation.hear("yes")
    assert at(conversation) == "people"
    conversation.hear("3")
    assert at(conversation) == "gate_child"
    assert conversation.draft()["loaf"]["seen"]["faults"] == ["sticky"]


def test_what_was_not_understood_of_several_is_told_and_kept() -> None:
    conversation = talk(["white"])
    said = conversation.hear("rise 4 in, sticky, the cat sings")
    assert "the cat sings" in words(said, "note")
    conversation.hear("no")
    assert at(conversation) == "rise"
    assert any(answer.question == NOTE and "the cat sings" in str(answer.value) for answer in conversation.answers)


def test_an_answer_to_another_question_is_read_back_too() -> None:
    for line in ("grey fur is on it", "fed May 2020"):
        conversation = talk([line.replace("grey fur is on it", "there is grey fur on it")])
        assert at(conversation) == "flour"
        conversation.hear("yes")
        assert set(conversation.state.given) <= {"faults", "fed"}
        assert conversation.state.given


def test_a_safety_item_is_never_answered_in_passing() -> None:
    conversation = talk(["white", "4 in, we saw them leave the kitchen"])
    conversation.hear("yes")
    assert "gate_child" not in conversation.state.given


def test_no_it_was_changes_the_answer_before_and_says_so() -> None:
    conversation = talk(["white", "4 in"])
    said = words(conversation.hear("no, it was 5 in"), "echo")
    assert "now 5 in" in said
    assert "Before, it was 4 in" in said
    assert at(conversation) == "people"
    assert [answer.value for answer in conversation.answers if answer.question == "rise"] == [
        pytest.approx(0.1016),
        pytest.approx(0.127),
    ]


def test_back_asks_the_question_before_and_the_rest_stays() -> None:
    conversation = talk(["white", "4 in", "3"])
    conversation.hear("back")
    assert at(conversation) == "people"
    conversation.hear("back")
    assert at(conversation) == "rise"
    assert "people" not in conversation.state.given
    conversation.hear("back")
    conversation.hear("back")
    assert at(conversation) == "flour"
    assert conversation.hear("back")[-1].text == "Which flour is it?"


def test_change_by_name_and_from_the_list() -> None:
    by_name = talk(["white", "4 in", "change the flour", "spelt"])
    from_list = talk(["white", "4 in", "change something", "1", "spelt"])
    by_word = talk(["white", "4 in", "change", "flour", "spelt"])
    for conversation in (by_name, from_list, by_word):
        assert conversation.state.given["flour"].value == "spelt"
        assert at(conversation) == "people"
        assert "Before: white wheat flour" in words(conversation.messages, "echo")


def test_only_what_depends_on_a_change_is_asked_again() -> None:
    conversation = talk(["white", "4 in", "3", "change flour", "rye"])
    assert at(conversation) == "soaked"
    conversation.hear("yes")
    assert at(conversation) == "fed"
    conversation.hear("change flour")
    conversation.hear("white")
    assert at(conversation) == "fed"
    assert "soaked" not in conversation.draft()["loaf"]["seen"]


def test_the_read_back_is_numbered_and_a_change_is_read_back_again() -> None:
    conversation = talk(TO_END)
    assert conversation.prompt is not None
    assert conversation.prompt.kind == "confirm"
    labels = [choice.label for choice in conversation.prompt.choices]
    assert labels[1:3] == ["Change flour: white wheat flour", "Change first rise: 4 in (10 cm)"]
    conversation.hear("3")
    conversation.hear("5 in")
    assert at(conversation) == "read_back"
    conversation.hear("yes")
    assert conversation.ending == Ending("baked")


def test_a_change_after_the_read_back_has_it_read_back_once_more() -> None:
    conversation = talk([*TO_END, "yes"])
    conversation.hear("change")
    conversation.hear("first rise")
    conversation.hear("7 in")
    assert at(conversation) == "read_back"


def test_why_how_what_is_and_help_lose_nothing() -> None:
    conversation = talk()
    for line, expected in (
        ("why", "Rye wants more water."),
        ("how do I do that?", "Read the front of the bag."),
        ("what is a leaven?", "Flour and water with live yeast"),
        ("help", "At any time you can type"),
        ("show me", "The bag is dry."),
    ):
        said = conversation.hear(line)
        assert expected in words(said, "help"), line
        assert said[-1].text == "Which flour is it?"
    assert conversation.answers == ()


def test_side_questions_are_answered_with_their_source_or_owned_up_to() -> None:
    knowing = talk(ask_back=lambda text: Told("Yes, you may.") if "freeze" in text else None)
    reply = next(message for message in knowing.hear("can I freeze the dough?") if message.kind == "help")
    assert (reply.text, reply.source) == ("Yes, you may.", "the baker")
    assert "not in my guide" in words(knowing.hear("who won the game?"), "help").replace("That is ", "")
    assert at(knowing) == "flour"


def test_lines_that_fit_nothing_are_kept_and_met_with_more_help_each_time() -> None:
    conversation = talk()
    first = words(conversation.hear("xyzzy"), "trouble")
    second = words(conversation.hear("plugh"), "trouble")
    third = words(conversation.hear("frobozz"), "trouble")
    assert "What does the bag say?" in first
    assert "white" in second
    assert "number" in third
    assert "save and leave" in third
    assert [answer.value for answer in conversation.answers if answer.question == NOTE] == ["xyzzy", "plugh", "frobozz"]


def test_the_same_words_never_come_twice_running() -> None:
    conversation = talk()
    spoken = [words(conversation.hear("xyzzy"), "trouble") for _ in range(12)]
    assert all(one != other for one, other in pairwise(spoken))


def test_a_resumed_conversation_shows_what_was_said() -> None:
    after = talk(answers=talk(["wheat", "4 in"]).answers)
    shown = words(after.messages)
    assert "wheat" in shown
    assert "4 in (10 cm)" in shown
    assert "still here" in shown


def test_a_value_on_record_is_offered_and_not_asked_afresh() -> None:
    context = replace(CONTEXT, household={"eaters": 4, "name": "the bakery"})
    conversation = talk(["white", "4 in"], context)
    assert conversation.prompt is not None
    assert "eaters: 4. Is that still true?" in conversation.prompt.text
    conversation.hear("yes")
    assert at(conversation) == "fed"
    assert conversation.draft()["household"] == {"eaters": 4, "name": "the bakery"}


def test_a_value_on_record_that_no_longer_holds_is_asked_for() -> None:
    context = replace(CONTEXT, household={"eaters": 4})
    for change in ("no", "it has changed", "2"):
        conversation = talk(["white", "4 in", change], context)
        assert conversation.prompt is not None
        assert conversation.prompt.text == "How many eat of it?"
        conversation.hear("6")
        assert conversation.draft()["household"] == {"eaters": 6}
    at_once = talk(["white", "4 in", "there are 7 of us"], context)
    assert at_once.draft()["household"] == {"eaters": 7}


def test_draft_holds_nothing_of_what_no_longer_applies() -> None:
    conversation = talk(["rye", "yes", "4 in", "change flour", "white"])
    assert "soaked" in conversation.state.given
    assert "soaked" not in conversation.draft()["loaf"]["seen"]


def test_prompts_say_where_one_is() -> None:
    prompt = talk(TO_OVEN).prompt
    assert prompt is not None
    assert prompt.stage == "oven"
    assert prompt.may_stand_open
    assert [(stage.id, stage.state) for stage in prompt.stages] == [
        ("dough", "done"),
        ("oven", "now"),
        ("shut", "ahead"),
        ("end", "ahead"),
    ]
    assert prompt.can_go_back
    assert not prompt.unknown_allowed
    first = talk().prompt
    assert first is not None
    assert not first.can_go_back


def test_every_answer_has_its_time_and_its_words() -> None:
    kept: list[Answer] = []
    conversation = talk(["  Wheat! "], keep=kept.append)
    assert kept == [Answer("flour", "value", "white", said="Wheat!", at="2026-05-18T10:00:00Z")]
    conversation.hear("there is a fire")
    assert kept[-1].question == HAZARD
    assert kept[-1].said == "there is a fire"


def test_a_date_far_back_is_kept_with_its_width() -> None:
    conversation = talk(["white", "4 in", "3", "2019"])
    answer = conversation.state.given["fed"]
    assert answer.value == date(2019, 7, 2)
    assert answer.error == pytest.approx(105.08, abs=0.1)
