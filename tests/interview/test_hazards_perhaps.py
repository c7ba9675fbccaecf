"""A line that nothing understands is asked about when it holds a cue of danger; what stands against it is heard."""

import pytest

from selfcheck.interview.hazards import find, perhaps
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach


@pytest.mark.parametrize(
    ("line", "hazard"),
    [
        ("a hole", "ground_sunk"),
        ("little boy there", "child_near"),
        ("fumes maybe", "feeling_ill"),
        ("smoke i guess", "fire"),
        ("sewage", "sewage_in_house"),
        ("my dog", "child_near"),
        ("alarm", "alarm_sounding"),
    ],
)
def test_a_lone_cue_may_tell_of_a_danger(line: str, hazard: str) -> None:
    told = find(line)
    assert told is None or not told.sure
    assert hazard in {one.id for one in (told, *perhaps(line)) if one is not None}


@pytest.mark.parametrize(
    "line",
    ["no hole", "no children here", "what about fumes?", "the tank", "48 inches", "thanks", "it was cracked last year"],
)
def test_what_is_denied_asked_past_or_of_other_things_does_not(line: str) -> None:
    assert perhaps(line) == ()


def test_a_cue_that_no_answer_takes_is_asked_about_and_heard() -> None:
    talk = begin("buyer")
    reach(talk, "parts", says_of("buyer"))
    talk.hear("my dog")
    assert talk.pending is not None
    assert "child_near" in {choice for choice, _ in talk.pending.choices}
    talk.hear("none of these")
    assert talk.pending is None
    assert not talk.state.told
    talk.hear("my dog")
    talk.hear("1")
    assert list(talk.state.told) == ["child_near"]
