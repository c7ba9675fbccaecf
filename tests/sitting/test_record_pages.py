"""My record page by page: what is there to read, what can be put right, and that the old one stays."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path
from typing import get_args

import pytest

from selfcheck.domain.check import PumpOut, Seen
from selfcheck.domain.household import Table
from selfcheck.errors import FolderProblem
from selfcheck.interview.side_questions import Reply
from selfcheck.sitting import Sitting
from selfcheck.sitting.check_page import check_page
from selfcheck.sitting.record_pages import RecordPages, desk_of
from selfcheck.sitting.steps import Back, Danger, Stay
from selfcheck.storage import folder as folders
from selfcheck.storage.removing import bring_back
from tests.faults.walking import lines_through
from tests.sitting.desks import PLACE, Driven, demo, opened


def at(sitting: Sitting) -> Driven:
    return Driven(RecordPages(sitting).desk())


def test_the_list_has_everything_newest_first_each_check_with_its_verdict(sitting: Sitting) -> None:
    desk = at(sitting).say("checks")
    labels = [way.label for way in desk.desk.page.ways]
    assert labels[0] == "May 16, 2026 · check: Carry on. The tank can wait."
    assert labels[3] == "May 22, 2023 · pump-out"
    assert labels[4] == "May 6, 2023 · check: Book a licensed professional."
    desk.say("earlier")
    older = [way.label for way in desk.desk.page.ways]
    assert older[0].startswith("May 11, 2019")
    assert older[1] == "June 10, 2017 · pump-out"
    assert "7 to 8 of 8" in desk.text
    assert desk.say("2021").desk.page.ways[0].label.startswith("May 15, 2021")
    assert "6 to 8 of 8" in desk.text
    assert "8 to 8 of 8" in desk.say("in 1950").text
    assert "1 to 6 of 8" in desk.say("2050").text
    assert "Type one number" in desk.say("99").desk.said.text


def test_a_verdict_of_old_stands_as_it_was_on_its_day(sitting: Sitting, home: Path) -> None:
    old = next(check for check in sitting.checks if check.id == "2023-05-06")
    then = sitting.verdict_then(old)
    alone = home.parent / "then"
    demo(alone)
    for part, last in (("checks", "2023-05-06"), ("pump_outs", "2023-05-06")):
        for file in (alone / part).iterdir():
            if file.stem > last:
                file.unlink()
    assert Sitting.open(alone, PLACE, old.on, in_place=True).verdict().headline == then.headline


def test_one_check_is_told_whole(sitting: Sitting) -> None:
    desk = at(sitting).say("1", "1")
    assert desk.title == "Check of May 16, 2026"
    for words in ("sludge: 6½ in (17 cm), typed as “6 1/2 in”", "tee on the field side: in place", "wet up to"):
        assert words in desk.text + "\n".join(desk.desk.page.drawn.words if desk.desk.page.drawn else ())
    assert "was not kept with this check" in desk.say("what was asked").text


def test_every_value_that_a_check_may_hold_has_its_words(sitting: Sitting) -> None:
    words = RecordPages(sitting).words
    for name, field in Seen.model_fields.items():
        if name in ("readings", "second_compartment"):
            continue
        table = words.of(f"seen_{name}")
        assert table["name"], name
        for value in _values(field.annotation):
            assert value in table or value == "unknown", (name, value)


def _values(kind: object) -> set[str]:
    found = {kind} if isinstance(kind, str) else set()
    for inner in get_args(kind):
        found |= _values(inner)
    return {value for value in found if isinstance(value, str)}


def test_a_check_is_mended_and_the_old_one_stays(home: Path) -> None:
    spoken = opened(demo(home.parent / "walk"))
    lines = lines_through(spoken.folder, "yearly", spoken.today, {"way_in": "sheet"})
    spoken.close()
    sitting = opened(home)
    talk = sitting.begin("yearly")
    talk.start()
    for line in lines:
        talk.hear(line)
    sitting.conclude(talk)
    pages = RecordPages(sitting)
    made = sitting.checks[-1]
    desk = Driven(desk_of(sitting, partial(check_page, pages, made), pages.words)).say("what was asked")
    assert "said: " in desk.text
    desk.say("back", "mend")
    assert desk.talk is not None
    assert desk.talk.then is None  # it is kept as every check is
    assert desk.talk.conversation.answers
    sitting.close()


def test_a_fact_is_put_right_by_its_own_question(sitting: Sitting, home: Path) -> None:
    desk = at(sitting).say("house", "people", "bedrooms")
    assert "How many bedrooms does the house have?" in desk.heard
    desk.say("5")
    assert "Kept: bedrooms, 5. It was 3 before." in desk.text
    assert json.loads((home / "household.json").read_text())["bedrooms"] == 5
    assert json.loads(next((home / "earlier").iterdir()).read_text())["bedrooms"] == 3
    assert sitting.unfinished() is None  # nothing is left half done by it


def test_the_chart_of_a_maker_is_typed_off(sitting: Sitting) -> None:
    desk = at(sitting).say("house", "the tank", "2", "chart", "9 in 100 gal; 8 in 120 gal")
    assert any("cannot read that" in line for line in desk.heard)
    desk.say("no", "12 in 150 gal; 24 in 400 gal, 48: 1,000")
    assert "3 lines up to 48 in" in desk.text or "3 lines up to 4 ft" in desk.text
    shape = sitting.household.tank().shape
    assert isinstance(shape, Table)
    assert shape.heights_m == pytest.approx([0.3048, 0.6096, 1.2192])
    assert shape.volumes_m3 == pytest.approx([0.5678, 1.5142, 3.7854], abs=1e-3)


def test_another_tank_is_added_and_has_facts_of_its_own(sitting: Sitting, home: Path) -> None:
    first = sitting.household.tanks[0]
    desk = at(sitting).say("house", "add another tank")
    assert "called tank-2" in desk.text
    desk.say("the tank: tank-2", "number of parts")
    assert "It was not known before" in desk.say("2", "i don't know").text
    again = opened(home)
    kept, added = again.household.tanks
    again.close()
    assert kept == first
    assert (added.id, added.follows, added.compartments) == ("tank-2", first.id, 2)


def test_a_pump_out_of_some_day_of_a_month_stands_in_the_list_as_that_month(sitting: Sitting) -> None:
    wide = PumpOut.model_validate({"id": "2026-04-15", "on": "2026-04-15", "within_days": 29})
    sitting.hold(pump_outs=(*sitting.pump_outs, wide))
    desk = at(sitting).say("1")
    row = next(way.label for way in desk.desk.page.ways if "April 2026" in way.label)
    assert "April 15, 2026" not in desk.text
    assert "April 2026" in desk.say(row).title


def test_people_are_added_as_of_a_day_and_the_years_before_stay(sitting: Sitting, home: Path) -> None:
    at(sitting).say("house", "people", "1", "6", "may 2025")
    rows = json.loads((home / "household.json").read_text())["occupancy"]
    assert [row["people"] for row in rows] == [2, 4, 6]
    assert rows[-1]["from"].startswith("2025-05")


def test_a_day_told_as_a_month_or_a_year_is_shown_as_that(sitting: Sitting, home: Path) -> None:
    days = (("2024", "2024"), ("may 2025", "May 2025"), ("4 june 2025", "June 4, 2025"))
    for said, told in days:
        desk = at(sitting).say("house", "people", "1", "6", said)
        assert f"people at home, 6 since {told}." in desk.text, said
    assert json.loads((home / "household.json").read_text())["occupancy"][-1]["within_days"] == 0


def test_leaving_the_question_changes_nothing(sitting: Sitting, home: Path) -> None:
    before = (home / "household.json").read_bytes()
    desk = at(sitting).say("house", "the tank", "2", "save and leave")
    assert "It stays as it was." in desk.text
    assert (home / "household.json").read_bytes() == before


def test_units_and_name_are_changed(sitting: Sitting) -> None:
    desk = at(sitting).say("house", "units", "meters")
    assert sitting.household.units == "metric"
    assert "It was feet, inches and gallons before." in desk.text
    desk.say("name", "Alder Bend")
    assert sitting.household.name == "Alder Bend"


def test_contacts_are_added_changed_taken_off_and_put_back(sitting: Sitting, home: Path) -> None:
    def kept() -> list[dict[str, str]]:
        return [
            {key: one[key] for key in ("role", "name", "phone")}
            for one in json.loads((home / "household.json").read_text())["contacts"]
        ]

    desk = at(sitting).say("contacts", "add", "county health office", "name", "Front desk", "number", "none yet")
    assert "needs a digit" in desk.text
    desk.say("555 0100", "back")
    assert kept()[-1] == {"role": "county health office", "name": "Front desk", "phone": "555 0100"}
    desk.say("front desk", "take off")
    assert [one["role"] for one in kept()] == ["pump-out service"]
    assert "You can put it back" in desk.text
    desk.say("put back")
    assert kept()[-1]["phone"] == "555 0100"


def test_everything_is_taken_away_only_after_the_words_and_comes_back(sitting: Sitting, home: Path) -> None:
    (home / "my notes.txt").write_text("mine")
    (home / "checks" / "photo.jpg").write_text("mine too")
    before = folders.read(home)
    desk = at(sitting).say("delete everything", "1", "yes")
    assert "Nothing was taken away." in desk.text
    assert folders.read(home).checks == before.checks
    desk.say("delete everything", "1", "Delete everything.")
    left = sorted(str(path.relative_to(home)) for path in home.rglob("*") if path.is_file() and path.name != ".lock")
    assert left == ["checks/photo.jpg", "my notes.txt"]
    assert sitting.checks == ()
    assert "There is nothing on record yet." in desk.text
    away = home.parent / "home-taken-away-2026-06-01"
    assert len(folders.read(away).checks) == 6
    desk.say("bring back")
    assert "All of it is back." in desk.text
    assert folders.read(home).checks == before.checks
    assert len(sitting.checks) == 6
    assert not away.exists()


def test_what_is_brought_back_never_covers_a_new_record(sitting: Sitting, home: Path) -> None:
    desk = at(sitting).say("delete everything", "1", "delete everything")
    desk.say("whom to call", "add", "1")
    assert (home / "household.json").exists()
    desk.say("back", "back")
    assert "bring back" not in desk.text.lower()  # first the new one has to be taken away
    with pytest.raises(FolderProblem, match="already"):
        sitting.change_files(partial(bring_back, home.parent / "home-taken-away-2026-06-01"))


def test_a_danger_typed_on_any_page_comes_first(sitting: Sitting) -> None:
    assert at(sitting).say("contacts", "add", "my son fell in").danger == "my son fell in"
    assert sitting.household.contacts[-1].role == "pump-out service"


def test_a_question_is_answered_and_the_page_stays(sitting: Sitting) -> None:
    desk = at(sitting).say("what is scum?")
    assert desk.title == "My record"
    assert "float" in desk.desk.said.text
    assert desk.desk.said.source


def test_a_question_without_a_sure_answer_offers_those_that_may_be_meant(sitting: Sitting) -> None:
    near = [
        Reply("a", "Fat floats.", "A book", asked="what floats"),
        Reply("b", "Grit sinks.", "A code", asked="what sinks"),
    ]
    desk = at(sitting)
    desk.desk.ask_back, desk.desk.ask_near = lambda line: None, lambda line: near
    assert desk.say("what moves?").title == "I am not sure what you ask. Is it one of these?"
    assert [way.label for way in desk.desk.page.ways] == ["What floats?", "What sinks?", "Go back"]
    assert desk.say("2").title == "My record"
    assert (desk.desk.said.text, desk.desk.said.source) == ("Grit sinks.", "A code")
    assert desk.say("what moves?", "back").desk.said.text == ""
    desk.desk.ask_back = lambda line: replace(near[0], sure=False)
    assert desk.say("what moves?").desk.said.text == "I take it that you ask: What floats? Fat floats."


def test_words_that_fit_nothing_or_several_ways_say_so(sitting: Sitting) -> None:
    desk = at(sitting).say("qwertz")
    assert "Type one number from 1 to 8" in desk.desk.said.text
    assert "Type one number" in desk.say("99").desk.said.text


@pytest.mark.parametrize("word", ["quit", "Leave.", "exit"])
def test_a_word_for_leaving_leaves_all_pages(sitting: Sitting, word: str) -> None:
    assert at(sitting).say("checks", "1", word).desk.over


def test_an_empty_record_has_pages_too(tmp_path: Path) -> None:
    sitting = opened(tmp_path / "new", begin=True)
    desk = at(sitting)
    assert "There is nothing on record yet." in desk.text
    for way in ("checks", "layers", "house", "contacts", "papers"):
        desk.say(way)
        assert desk.title != "My record", way
        desk.say("back")
    assert "Delete" not in desk.text
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("flow", ["trouble", "after_pump_out"])
def test_what_was_typed_in_any_conversation_is_kept_and_shown(tmp_path: Path, flow: str) -> None:
    sitting = opened(demo(tmp_path / "home"))
    talk = sitting.begin(flow)
    talk.start()
    first = "no, all are well" if flow == "trouble" else "it is gone"
    talk.hear(first)
    talk.hear("my kid is leaning over the hole")
    sitting.conclude(talk)
    page = Driven(RecordPages(sitting).desk()).say("list", "1", "words").text
    assert "was not kept with this check" not in page
    assert "my kid is leaning over the hole" in page
    assert f"said: {first}" in page


def test_the_clock_warning_is_a_sentence_with_days_as_the_household_writes_them(tmp_path: Path) -> None:
    sitting = Sitting.open(demo(tmp_path / "home"), PLACE, date(2024, 1, 1), in_place=True, fixed_day=True)
    (problem,) = sitting.home().problems
    assert str(problem).startswith("The record: a day in it, May 16, 2026, lies after today, January 1, 2024.")


def test_the_size_that_the_form_gives_is_told_where_none_was_stated(sitting: Sitting) -> None:
    page = Driven(RecordPages(sitting).desk()).say("house").text
    assert "tank size: 998 gal (3.78 m³), from its form" in page
    assert "tank size: not known" not in page


def test_somebody_without_name_and_number_is_told_once_and_without_empty_brackets(sitting: Sitting) -> None:
    desk = Driven(RecordPages(sitting).desk()).say("contacts", "add", "inspector")
    assert "()" not in desk.text
    assert "Change the name (none yet)" in desk.text
    assert desk.text.count("inspector") == 1


def test_the_start_names_the_next_look_only_while_it_is_ahead(tmp_path: Path) -> None:
    folder = demo(tmp_path / "home")
    for today, ahead in ((date(2026, 6, 1), True), (date(2027, 12, 1), False)):
        sitting = Sitting.open(folder, PLACE, today, in_place=True, fixed_day=True)
        assert sitting.home().by.startswith("Look again by ") is ahead
        sitting.close()


def test_the_start_names_the_day_to_act_by_in_place_of_a_next_look(tmp_path: Path) -> None:
    folder = demo(tmp_path / "home")
    sitting = Sitting.open(folder, PLACE, date(2027, 12, 1), in_place=True, fixed_day=True)
    home = sitting.home()
    assert sitting.judgement().verdict == "call_soon"
    assert home.by == sitting.verdict().by != ""
    sitting.close()


@pytest.mark.parametrize(
    ("line", "kind", "said"),
    [
        ("help", Stay, "Type a number"),
        ("why", Stay, "Type a number"),
        ("how do I", Stay, "Type a number"),
        ("change something", Stay, "To set something right"),
        ("none", Stay, "Type one number"),
        ("I don't know", Stay, "Type one number"),
        ("skip", Stay, "Type one number"),
        ("something is wrong", Danger, ""),
        ("say it again", Stay, ""),
        ("one back", Back, ""),
        ("I have to go", Back, ""),
    ],
)
def test_a_page_does_what_a_conversation_does_at_the_same_words(
    sitting: Sitting, line: str, kind: type, said: str
) -> None:
    desk = RecordPages(sitting).desk()
    step = desk.hear("papers") and desk.hear(line)
    assert isinstance(step, kind)
    assert desk.said.text.startswith(said)
    assert not desk.said.source
    assert getattr(step, "again", False) == (line == "say it again")
    assert desk.over == (line == "I have to go")
