"""Danger is heard in any wording; denials, the past, questions and everyday lines are not taken for it."""

import time
import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.interview.hazard_words import normal
from selfcheck.interview.hazards import VERDICTS, Hazard, asked, denied, find

LINES = tomllib.loads((Path(__file__).parent / "hazard_lines.toml").read_text(encoding="utf-8"))
ALL_TOLD = [(hazard, line) for part in LINES.values() for hazard, lines in part["told"].items() for line in lines]
ALL_HARMLESS = [line for part in LINES.values() for line in part["harmless"]]
#: every second one: to read all of them takes too long for a test
TOLD, HARMLESS = ALL_TOLD[::2], ALL_HARMLESS[::2]
#: of the lines that the assistant has learned from; what it makes of others is measured by a command
MISSED_SHARE = 0.005
HARMLESS_SHARE = 0.01


@pytest.fixture(scope="module")
def found() -> dict[str, Hazard | None]:
    """What each line is taken for, read once for all tests."""
    return {line: find(line) for line in (*(line for _, line in TOLD), *HARMLESS)}


def test_the_corpus_is_large_enough() -> None:
    assert len(ALL_TOLD) >= 7000
    assert len(ALL_HARMLESS) >= 8000
    assert {hazard for hazard, _ in TOLD} == set(VERDICTS)


def test_nearly_every_told_danger_is_heard(found: dict[str, Hazard | None]) -> None:
    missed = [line for _, line in TOLD if found[line] is None]
    assert len(missed) <= MISSED_SHARE * len(TOLD), missed


def test_it_is_seldom_taken_for_something_milder(found: dict[str, Hazard | None]) -> None:
    dangers = [line for hazard, line in TOLD if VERDICTS[hazard] == "danger"]
    milder = [line for line in dangers if (told := found[line]) and told.verdict != "danger"]
    assert len(milder) <= MISSED_SHARE * len(dangers), milder


def test_capitals_and_missing_punctuation_change_nothing(found: dict[str, Hazard | None]) -> None:
    for _, line in TOLD:
        assert normal(line.upper()) == normal(line), line
        bare = line.rstrip("!?. ")
        assert bare == line or found[line] is None or find(bare) is not None, line


def test_harmless_lines_seldom_fire(found: dict[str, Hazard | None]) -> None:
    fired = [line for line in HARMLESS if found[line] is not None]
    assert len(fired) <= HARMLESS_SHARE * len(HARMLESS), fired


def test_a_danger_is_heard_beside_much_harmless_talk(found: dict[str, Hazard | None]) -> None:
    for number, (hazard, line) in enumerate(TOLD[::20]):
        talk = HARMLESS[5 * number : 5 * number + 4]
        if found[line] is not None and not any(found[one] for one in talk):
            assert find(". ".join([*talk, line])) is not None, (hazard, talk, line)


@pytest.mark.parametrize("times", [25, 40, 100, 400])
@pytest.mark.parametrize("line", ["my son fell in the tank", "i feel dizzy", "the lid is cracked"])
def test_a_danger_is_heard_at_either_end_of_a_line_of_any_length(line: str, times: int) -> None:
    talk = "We went out to look at the garden. " * times
    assert find(talk + line) is not None
    assert find(f"{line}. {talk}") is not None


@pytest.mark.parametrize(
    ("line", "hazard"),
    [
        ("not kidding, he fell in", "fell_in"),
        ("not kidding he fell in", "fell_in"),
        ("the dog is fine but my son fell in", "fell_in"),
        ("no he fell in", "fell_in"),
        ("no no no he fell in", "fell_in"),
        ("nobody is here my son fell in", "fell_in"),
        ("I don't know what to do she passed out", "feeling_ill"),
        ("I can't believe it the lid cracked", "lid_broken"),
        ("no smell, but the lid is cracked", "lid_broken"),
        ("nobody fell in but I feel dizzy", "feeling_ill"),
    ],
)
def test_a_denial_elsewhere_hides_nothing(line: str, hazard: str) -> None:
    found = find(line)
    assert found is not None
    assert found.id == hazard


@pytest.mark.parametrize(
    "line",
    [
        "nobody fell in",
        "no one has fallen in",
        "he did not fall in",
        "none of the kids fell in",
        "we are not dizzy",
        "the lid isn't cracked",
        "lid cracked? no",
        "sewage in the house: none",
        "any sewage in the house? no",
        "there is no crack in the lid",
        "no sewage in the house or yard",
    ],
)
def test_a_denial_is_heard(line: str) -> None:
    assert find(line) is None


@pytest.mark.parametrize(
    ("line", "hazard"),
    [
        ("what do I do if someone falls in?", "fell_in"),
        ("what if my dog falls in", "fell_in"),
        ("what if the lid breaks", "lid_broken"),
        ("is it ok to smoke near it", "fire"),
        ("what happens if sewage backs up", "sewage_in_house"),
        ("what should I do if I feel dizzy", "feeling_ill"),
        ("can I go in to get my phone", "going_in"),
        ("can my kids watch", "child_near"),
    ],
)
def test_a_question_ahead_names_its_danger(line: str, hazard: str) -> None:
    assert find(line) is None
    assert asked(line) == hazard


def test_everyday_questions_name_none() -> None:
    for line in ("what does it cost", "tell me a joke", "8 inches", "what is sludge", "who won the game last night"):
        assert asked(line) is None


def test_a_doubtful_telling_is_not_sure() -> None:
    plain, doubtful = find("the lid is cracked"), find("I think the lid might be cracked")
    assert plain is not None
    assert doubtful is not None
    assert plain.sure
    assert not doubtful.sure


def test_the_worst_of_two_is_given() -> None:
    found = find("the lid is cracked and my son fell in")
    assert found is not None
    assert (found.id, found.verdict) == ("fell_in", "danger")


def test_what_is_plain_is_not_hidden_by_something_worse_that_is_in_doubt() -> None:
    found = find("the lid is cracked. maybe someone fell in")
    assert found is not None
    assert (found.id, found.sure, found.also) == ("fell_in", False, "lid_broken")


def test_a_denial_names_what_it_denies() -> None:
    for line, hazard in (
        ("nobody fell in", "fell_in"),
        ("he did not fall in", "fell_in"),
        ("the lid isn't cracked", "lid_broken"),
    ):
        assert denied(line) == hazard
    for line in ("he fell in", "what if he falls in?", "did he fall in?", "8 inches", "that was a joke"):
        assert denied(line) is None


@pytest.mark.parametrize(
    "hostile",
    [
        "no " * 4000,
        "he fell in " * 500,
        "a" * 5000,
        "\x00\u202e" * 3000,
        "(" * 5000,
        "lid is a an " * 600,
        "|" * 5000,
        "' " * 5000,
    ],
)
def test_hostile_text_is_read_in_bounded_time(hostile: str) -> None:
    start = time.perf_counter()
    find(hostile)
    asked(hostile)
    assert time.perf_counter() - start < 5  # a catastrophic pattern would take minutes


def test_hidden_characters_do_not_hide_a_danger() -> None:
    assert find("he f\u200bell in") is not None
    assert find("he \u202efell in") is not None


@given(st.text(max_size=120))
def test_any_text_gets_an_answer(text: str) -> None:
    found = find(text)
    assert found is None or VERDICTS[found.id] == found.verdict
    assert asked(text) in {None, *VERDICTS}
