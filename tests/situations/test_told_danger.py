"""A danger that was told stays told, and a lid known as heavy is not opened as a light one."""

from __future__ import annotations

from dataclasses import replace

import pytest

from selfcheck.domain.household import Lid
from selfcheck.interview.dialogue import Conversation
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach

WAYS_BACK = ("back", "undo", "scratch that", "change lid", "change the lid", "no, it did not move", "I meant 2", "oops")
TELLING = (
    "the lid cracked, my foot went through",
    "it has a crack",
    "the lid rocked",
    "it wobbles",
    "the lid is broken",
)
BIG = {"form": "round", "diameter_m": 0.6096, "thickness_m": 0.0762}
SMALL = {"form": "round", "diameter_m": 0.3048, "thickness_m": 0.0254}


def at_home(lid: dict[str, object] | None) -> Conversation:
    """A check of a tank with this lid on record."""
    first = begin("homeowner")
    house = first.context.household
    tank = house.tanks[0].model_copy(update={"lid": Lid.model_validate(lid) if lid else None})
    context = replace(first.context, household=house.model_copy(update={"tanks": [tank, *house.tanks[1:]]}))
    talk = Conversation(first.script, context)
    talk.start()
    return talk


def pushed(*lines: str, lid: dict[str, object] | None = None) -> Conversation:
    """A check that stands at the push of the lid, after these lines."""
    talk = at_home(lid)
    reach(talk, "gate_lid", says_of("homeowner"))
    for line in lines:
        talk.hear(line)
    return talk


@pytest.mark.parametrize("telling", TELLING)
def test_a_lid_told_in_words_as_weak_keeps_the_tank_shut_whatever_follows(telling: str) -> None:
    for way in WAYS_BACK:
        talk = pushed(telling, way, "2", "yes", "1", "back", "2")
        reach(talk, "", says_of("homeowner"), {"gate_lid": "2"})
        assert not talk.state.opened, way
        assert "lid_broken" in talk.state.answered.hazards, way


def test_a_lid_picked_as_weak_by_number_is_asked_about_before_it_is_unsaid() -> None:
    talk = pushed("4", "back")
    assert talk.prompt is not None
    assert "You said: it has a crack, or a piece is gone. Was that a slip?" in talk.prompt.text
    talk.hear("no")
    reach(talk, "", says_of("homeowner"))
    assert not talk.state.opened
    slipped = pushed("4", "back", "yes")
    assert slipped.prompt is not None
    assert slipped.prompt.question == "gate_lid"
    reach(slipped, "", says_of("homeowner"))
    assert slipped.state.opened


@pytest.mark.parametrize("telling", ["4", "it has a crack", "the lid is broken"])
def test_a_break_does_not_unsay_a_weak_lid(telling: str) -> None:
    before = pushed(telling)
    after = Conversation(before.script, before.context, before.answers)
    after.start()
    reach(after, "", says_of("homeowner"))
    assert not after.state.opened
    assert "lid_broken" in after.state.answered.hazards


@pytest.mark.parametrize("lid", [{**BIG, "material": "concrete"}, {**SMALL, "material": "concrete"},
                                 {**SMALL, "material": "cast_iron"}, {**BIG, "material": "plastic"},
                                 {"form": "round", "material": "concrete"}])  # fmt: skip
def test_a_lid_known_as_heavy_is_not_passed_as_light(lid: dict[str, object]) -> None:
    for light in ("1", "light", "plastic", "It did not move, has no crack, and is light plastic"):
        talk = pushed(light, "yes", "1", "yes", lid=lid)
        assert "gate_lid" not in talk.state.given, light
        assert any("not light plastic" in one.text for one in talk.messages), light
        talk.hear("heavy")
        assert talk.state.given["gate_lid"].value == "firm_heavy"


def test_a_lid_told_of_now_as_heavy_is_not_passed_as_light() -> None:
    told = {"lid_form": "round", "lid_diameter": "24 in", "lid_thickness": "3 in", "lid_material": "concrete"}
    talk = at_home(None)
    reach(talk, "gate_lid", says_of("homeowner"), told)
    talk.hear("1")
    talk.hear("1")
    assert "gate_lid" not in talk.state.given
    assert not talk.state.opened


def test_a_light_plastic_lid_is_passed_as_light() -> None:
    for lid in (None, {**SMALL, "material": "plastic"}, {"form": "round", "material": "fibreglass"}):
        talk = pushed("1", lid=lid)
        assert talk.state.given["gate_lid"].value == "firm_light"


@pytest.mark.parametrize("line", ["What do I do", "what now?", "what should we do"])
def test_who_is_in_need_and_asks_what_to_do_is_asked_what_is_wrong_and_told_when_to_call(line: str) -> None:
    come, listed = begin("homeowner", "trouble"), begin("homeowner")
    listed.do("trouble")
    for talk in (come, listed):
        asked, before = talk.prompt, talk.answers
        said = talk.hear(line)
        assert "call your local emergency number" in " ".join(one.text for one in said if one.kind == "help")
        assert talk.prompt is not None
        assert asked is not None
        assert (talk.prompt.choices, talk.answers) == (asked.choices, before)


@pytest.mark.parametrize("question", ["level", "smell", "scum_total", "sludge_1"])
def test_a_lid_that_breaks_while_it_is_off_is_not_moved_and_nothing_more_is_read(question: str) -> None:
    talk = begin("homeowner")
    reach(talk, question, says_of("homeowner"))
    said = talk.hear("the lid just cracked")
    assert not any("Slide it back" in one.text for one in said)
    assert talk.prompt is not None
    assert talk.prompt.question == "lid_weak"
    talk.hear("it is covered")
    reach(talk, "", says_of("homeowner"))
    assert talk.ending is not None
    assert talk.ending.outcome == "call_today"
    asked = [one.question for one in talk.answers]
    assert set(asked[asked.index("lid_weak") + 1 :]) <= {"urgent_first", "read_back"}
