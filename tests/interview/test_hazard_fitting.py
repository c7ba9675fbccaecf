"""The caution that follows a danger fits the line, and who may reach for a thing is warned before anything else."""

from __future__ import annotations

import pytest

from selfcheck.interview.hazard_fitting import fitting, lost
from selfcheck.interview.hazards import find
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach

FITS = {
    "too_near": (
        "we are standing on the lid", "I stood on the lid", "we are on the lid", "grandpa is on the lid",
        "I'm kneeling on the lid", "he is standing on the cover", "somebody sits on the lid",
        "my husband walked on the lid", "my husband is leaning over the hole",
    ),
    "child_near": (
        "the kids are by the hole", "my toddler is standing on the lid", "the dog keeps sniffing at the opening",
        "the kids jump on the lid", "a cow is standing on the lid", "my kid is leaning over the hole",
    ),
    "lid_left_open": (
        "the lid is gone", "there is no lid", "the lid fell in", "someone stole the lid", "the lid is missing",
        "there is only plywood over the hole",
    ),
    "driven_on": (
        "our car is on the lid", "a truck drove over the tank", "the tractor is parked on the tank",
        "the mower went over the lid",
    ),
    "lid_broken": (
        "the lid is cracked", "the lid rocks", "lid broke in two", "the lid is loose", "rusted through lid",
        "the lid is crumbling",
    ),
}  # fmt: skip
LOST = (
    "pole got stuck", "the pole got stuck in the tank", "dropped the pole in", "my phone fell in",
    "lost my ring in the tank", "dropped my glasses in", "the flashlight fell into the tank",
    "my keys fell in the hole",
)  # fmt: skip
KEPT = (
    "I dropped the tape measure on the lawn", "the pole stuck at 8 inches", "the pole is not stuck",
    "I lost my glasses", "the ball fell in the yard", "the pole went in to the floor",
    "where do I get a pole?", "what if the pole gets stuck",
)  # fmt: skip


@pytest.mark.parametrize("hazard", FITS)
def test_the_caution_fits_what_was_told(hazard: str) -> None:
    for line in FITS[hazard]:
        found = find(line)
        assert found is not None, line
        assert fitting(found.id, line) == hazard, line


def test_a_thing_that_fell_in_is_told_from_one_that_did_not() -> None:
    assert [line for line in LOST if not lost(line)] == []
    assert [line for line in KEPT if lost(line)] == []


def test_who_lost_a_thing_is_told_never_to_reach_for_it_and_asked_again() -> None:
    talk = begin("homeowner")
    reach(talk, "level", says_of("homeowner"))
    for line in ("pole got stuck", "my keys fell in the hole"):
        said = talk.hear(line)
        assert (said[1].kind, said[-1].kind) == ("caution", "ask")
        assert "Never reach in" in said[1].text
        assert talk.prompt is not None
        assert talk.prompt.question == "level"
        assert talk.answers[-1].said == line


def test_who_stands_on_the_lid_is_told_to_get_off_and_it_is_on_record() -> None:
    talk = begin("homeowner")
    talk.start()
    said = talk.hear("we are standing on the lid")
    assert "Never stand on any lid" in said[1].text
    assert talk.ending is not None
    assert talk.draft()["check"]["hazards"] == ["too_near"]


@pytest.mark.parametrize(
    "line", ["what do i do", "HELP ME!!", "who do I call?", "call who", "im scared", "im panicking"]
)
def test_who_asks_in_haste_what_to_do_hears_the_caution_again(line: str) -> None:
    talk = begin("homeowner", "trouble")
    talk.hear("poop is coming out of the shower")
    said = talk.hear(line)
    assert (said[1].kind, said[-1].kind) == ("caution", "ask")
    assert "Stop all water now" in said[1].text
    calm = begin("homeowner", "trouble")
    assert "caution" not in {one.kind for one in calm.hear("what do i do")}
