"""Practice: the same tank for everyone, graded against its truth, and nothing of it in the record."""

from __future__ import annotations

from pathlib import Path

import pytest

from selfcheck.domain.conversions import INCH
from selfcheck.drawing.ruled import Strip, as_lines, as_words
from selfcheck.drawing.spans import as_text
from selfcheck.practice.tank import draw
from selfcheck.sitting import Sitting
from selfcheck.sitting.practice_grades import wrong
from selfcheck.sitting.practice_pages import FIRST_DAY, PracticePages
from tests.sitting.desks import PLACE, Driven, demo


def at(sitting: Sitting) -> Driven:
    return Driven(PracticePages(sitting).desk())


def files(sitting: Sitting) -> dict[str, bytes]:
    return {str(path): path.read_bytes() for path in sorted(sitting.folder.rglob("*.json*"))}


def test_a_number_gives_everyone_the_same_tank(sitting: Sitting, tmp_path: Path) -> None:
    other = Sitting.open(demo(tmp_path / "other"), PLACE, sitting.today.replace(year=2031), in_place=True)
    assert at(sitting).say("number", "42").text == at(other).say("number", "42").text


def test_a_number_outside_of_them_is_said(sitting: Sitting) -> None:
    for line in ("0", "123456", "twelve", "-3", "²"):
        assert "whole number from 1 to 9999" in at(sitting).say("number", line).text, line
    assert at(sitting).say("take any tank").title.startswith("Pretend tank ")


def test_readings_that_are_read_well_are_called_near(sitting: Sitting) -> None:
    before = files(sitting)
    desk = at(sitting).say("number", "42", "look")
    assert desk.talk is not None
    assert desk.talk.beside is not None
    between = [line.split("between ")[1].split(" and ")[0] for line in desk.talk.beside.words]
    desk.say(*(f"{mark.replace('½', '.5')} in" for mark in between), "none", "carry on")
    assert desk.title == "How near you came"
    assert desk.text.count("That is near.") == 3
    assert "You said: Carry on." in desk.text
    assert "The tank calls for: " in desk.text
    assert "crust" in desk.say("truth").text
    assert files(sitting) == before
    assert sitting.unfinished() is None


def test_readings_far_off_and_left_out_are_called_so(sitting: Sitting) -> None:
    desk = at(sitting).say("number", "42", "look", "20 in", "I don't know", "3 ft", "1", "4")
    assert "That is far off." in desk.text
    assert "2nd cloth: you left it out." in desk.text


@pytest.mark.parametrize(
    ("lines", "hazard"),
    [(("my husband fell in",), "fell_in"), (("the lid is cracked", *["skip"] * 4, "1"), "lid_broken")],
)
def test_a_danger_told_meanwhile_is_kept_and_shown_as_anywhere_else(
    sitting: Sitting, lines: tuple[str, ...], hazard: str
) -> None:
    desk = at(sitting).say("number", "42", "look", *lines)
    assert (sitting.checks[-1].on, sitting.checks[-1].hazards) == (sitting.today, [hazard])
    assert desk.desk.page.verdict is not None
    assert desk.desk.page.verdict.verdict == ("danger" if hazard == "fell_in" else "call_now")


def test_what_is_wrong_with_the_pretend_tank_is_none_of_the_own_one(sitting: Sitting) -> None:
    before = files(sitting)
    desk = at(sitting).say("number", "42", "look", "4 in", "4 in", "2 in")
    assert desk.talk is not None
    talk = desk.talk.conversation
    desk.say("the tee is loose and the lid is cracked")
    assert set(talk.state.answered["pretend_signs"].value) == {"tees", "lid"}
    desk.say("carry on")
    assert files(sitting) == before


@pytest.mark.parametrize("number", range(1, 40))
def test_naming_just_what_is_wrong_is_right(sitting: Sitting, number: int) -> None:
    truth = draw(number, FIRST_DAY).truth(FIRST_DAY)
    groups = ("level", "tees", "wall", "lid", "inside", "outside")
    named = ", ".join(str(place) for place, group in enumerate(groups, 1) if group in wrong(truth)) or "none"
    desk = at(sitting).say("number", str(number), "look", "4 in", "4 in", "2 in", named, "carry on")
    assert "You named what is wrong" in desk.text or "Nothing is wrong to see" in desk.text
    if named != "none":
        other = at(sitting).say("number", str(number), "look", "4 in", "4 in", "2 in", "none", "carry on")
        assert "You did not name" in other.text


def test_years_pass_and_a_pump_out_empties(sitting: Sitting) -> None:
    desk = at(sitting).say("number", "42", "let a year pass", "let a year pass")
    assert "Today is May 31, 2028" in desk.text or "Today is June 1, 2028" in desk.text
    assert "last pumped out" in desk.say("pump").text
    for _ in range(60):
        if not any("year" in way.label for way in desk.desk.page.ways):
            break
        desk.say("let a year pass")
    assert len(desk.desk.page.ways) == 2


def test_the_strips_can_be_read_off() -> None:
    strips = [Strip("cloth", 8.75 * INCH, "sludge"), Strip("crust", 2 * INCH, "scum")]
    words = {"between": "{name}: {low} to {high} {unit}"}
    assert as_words(strips, words) == ["cloth: 8½ to 9 in", "crust: 2 to 2½ in"]
    assert as_words(strips, words, "metric") == ["cloth: 22 to 23 cm", "crust: 5 to 6 cm"]
    lines = as_text(as_lines(strips, 44, 14))
    assert "  8▁│▆▆│" in "\n".join(lines)
    assert lines[-1].split() == ["cloth", "crust"]
    for width in range(0, 60, 7):
        for height in range(0, 20, 3):
            assert all(len("".join(span.text for span in line)) == width for line in as_lines(strips, width, height))


def test_what_was_drawn_into_a_strip_is_told_and_what_an_expert_takes(sitting: Sitting) -> None:
    for number, units, unit in ((7, "us", " in "), (7, "metric", " cm "), (3, "us", " in ")):
        sitting.hold(household=sitting.household.model_copy(update={"units": units}))
        desk = at(sitting).say("number", str(number), "look", "10 in", "10 in", "2 in", "none", "carry on")
        part = next(part for part in desk.desk.page.parts if part.title == "What was drawn into the strips")
        strips = [line for line in part.lines if line.startswith(("1st", "2nd", "crust"))]
        assert len(strips) == 3
        assert any("which adds" in line or "which takes off" in line for line in strips)
        (expert,) = (line for line in part.lines if line.startswith("From these strips an expert takes "))
        assert expert.count("±") == 2
        assert unit in expert


def test_several_years_pass_at_once_and_no_more_than_there_are(sitting: Sitting) -> None:
    desk = at(sitting).say("number", "42", "let more than one pass")
    assert "whole number from 1 to 30" in desk.say("31").text
    assert desk.say("12").title == "Pretend tank 42, year 12"
    one_by_one = at(sitting).say("number", "42", *["let a year pass"] * 12)
    assert one_by_one.title == "Pretend tank 42, year 12"
    assert "whole number from 1 to 18" in desk.say("let more than one pass", "19").text
