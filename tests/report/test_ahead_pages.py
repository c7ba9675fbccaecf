"""The pages of looking ahead and after a pump-out: every word is there, short and plain, and the figures are right."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date

import pytest

from selfcheck.domain.after_pumping import SeenEmpty, residue
from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.flow import Flow, leak
from selfcheck.domain.household import Household
from selfcheck.domain.judging import judge
from selfcheck.domain.limits import LENGTHS, SHARES
from selfcheck.domain.showing import show_day
from selfcheck.domain.verdict import Case
from selfcheck.domain.what_if import Change, compare, each_limit
from selfcheck.errors import ContentProblem
from selfcheck.loading import content_place, rules, signs, texts
from selfcheck.report.ahead import Water, ahead_page, nothing_ahead
from selfcheck.report.parts import PageWords, PartedPage
from selfcheck.report.pumped import Pumped, pumped_page
from selfcheck.report.wording import verdict_screen
from tests.cases import verdict_words

PLACE = content_place(own=False)
TODAY = date(2026, 6, 1)
BANNED = re.compile(r"!|\b(invalid|please|sorry|oops|great|well done|perfect)\b", re.IGNORECASE)


def page_words(name: str) -> PageWords:
    return PageWords(f"words/{name}.toml", texts(PLACE, name))


def case(rules_id: str = "us-epa-homeowner", checks: bool = True, **household: object) -> Case:
    shape = {"kind": "box", "length_m": 2.44, "width_m": 1.27}
    known = {
        "rules": rules_id,
        "occupancy": [{"from": "2016-06-01", "people": 3}],
        "tanks": [{"id": "main", "shape": shape, "liquid_depth_m": 1.22, "outlet_bottom_below_surface_m": 0.43}],
        **household,
    }
    readings = {"sludge": [{"m": 0.15}, {"m": 0.16}], "scum_total": [{"m": 0.07}]}
    seen = {"level": "at_outlet", "readings": readings}
    check = Check.model_validate({"id": "2026-05-18", "on": "2026-05-18", "seen": seen})
    emptied = PumpOut.model_validate({"on": "2023-05-20", "sludge_left_m": 0.0})
    return Case(
        Household.model_validate(known), [check] if checks else [], [emptied], rules(PLACE), signs(PLACE), TODAY
    )


def ahead(asked: Case, change: Change | None = None, water: Water | None = None) -> PartedPage:
    judged = judge(asked)
    words = verdict_words()
    compared = compare(asked, change) if change is not None else None
    return ahead_page(
        judged, each_limit(asked, judged), page_words("ahead_page"), words.sources, compared=compared, water=water
    )


def lines_of(page: PartedPage) -> str:
    return "\n".join([page.headline, *page.lead, *(line for part in page.parts for line in (part.title, *part.lines))])


@pytest.mark.parametrize("name", ["ahead_page", "pumped_page"])
def test_words_are_short_and_plain(name: str) -> None:
    for table, phrases in texts(PLACE, name).items():
        for key, text in phrases.items():
            assert not BANNED.search(text), (table, key)
            for sentence in re.split(r"(?<=[.:;])\s+", text):
                assert len(sentence.split()) <= 20, (table, key, sentence)


def test_every_kind_of_limit_has_a_name() -> None:
    named = texts(PLACE, "ahead_page")["limits"]
    assert {*LENGTHS, *SHARES, "years", "sludge_to_outlet_by_table"} <= set(named)


@pytest.mark.parametrize("rules_id", sorted(rules(PLACE)))
@pytest.mark.parametrize("units", ["us", "metric"])
def test_every_rule_set_has_a_whole_page(rules_id: str, units: str) -> None:
    page = ahead(case(rules_id, units=units))
    told = lines_of(page)
    assert "{" not in told
    assert rules(PLACE)[rules_id].title in told
    assert "Ask your local authority" in told
    assert "we fitted" in told
    assert "Source: " in told


def test_the_dates_are_those_of_the_verdict() -> None:
    asked = case()
    judged = judge(asked)
    whole = min(row.due.p50 for row in each_limit(asked, judged) if row.due.p50 is not None)
    assert judged.due.p50 is not None
    assert abs((whole - judged.due.p50).days) < 400
    assert whole >= judged.due.p50


def test_with_an_unknown_household_it_says_what_was_assumed() -> None:
    asked = replace(case(checks=False, occupancy=[], tanks=[]), pump_outs=[])
    told = lines_of(ahead(asked))
    assert "The size is not known" in told
    assert "How many people live here is not known" in told
    assert "last pump-out is not known" in told
    assert "No sludge reading of yours" in told
    assert "The usual one was taken (WAC 246-272C-0220)." in told


def test_a_size_by_the_bedrooms_names_the_table() -> None:
    for bedrooms, table, how in (
        (3, "Uniform Plumbing Code", "read where others print it"),
        (8, "International Private Sewage Disposal Code", "from memory, not looked up"),
    ):
        told = lines_of(ahead(case(tanks=[{"id": "main"}], bedrooms=bedrooms)))
        assert f"{table}, septic tank capacity by bedrooms ({how})." in told
        assert "give or take 25%" in told


def test_old_and_new_stand_side_by_side() -> None:
    told = lines_of(ahead(case(), Change(people=6, disposal="daily")))
    assert "With 6 people at home." in told
    assert "used most days" in told
    assert re.search(r"Middle date as it is: .*\. With the change: .*\.", told)
    assert "sooner" in told
    assert "None of this was written down." in told
    assert "no change" in lines_of(ahead(case(), Change()))


def test_the_water_is_told_with_its_source_and_its_leaks() -> None:
    water = Water(Flow(400.0, 0.1, "meter", "own-meter"), 0.6, leak(meter_turns=True, toilet_runs=True))
    told = lines_of(ahead(case(), None, water))
    assert "By your meter" in told
    assert "short of a full day" in told
    assert "EPA 832-F-00-079 (read where others print it)." in told
    assert "The meter turns" in told
    assert "toilet runs on" in told


def test_nothing_on_record_foretells_nothing() -> None:
    page = nothing_ahead(judge(case()), page_words("ahead_page"), verdict_words().sources)
    assert "nothing on record" in page.headline
    assert not re.search(r"20\d\d", lines_of(page).replace("2026", ""))


def pumped(seen: SeenEmpty) -> PartedPage:
    judged = judge(case())
    left = residue(judged.forecast, judged.rules.limits, seen.left_m, TODAY) if seen.left_m is not None else None
    page = verdict_screen(judged, verdict_words())
    return pumped_page(Pumped(TODAY, seen, left), page, page_words("pumped_page"), verdict_words(), "us")


def test_a_pump_out_of_some_day_of_a_month_is_told_as_that_month() -> None:
    verdict = verdict_screen(judge(case()), verdict_words())
    told = Pumped(date(2020, 5, 16), SeenEmpty(), None, 30)
    page = pumped_page(told, verdict, page_words("pumped_page"), verdict_words(), "us")
    assert any("May 2020" in line for line in page.lead)
    assert "May 16, 2020" not in lines_of(page)


def test_all_that_can_be_seen_in_an_empty_tank_has_words() -> None:
    worst = SeenEmpty(
        "no", "no", "no", "missing", "loose", "crumbling", "missing", "no", "strong", 0.08
    )  # fmt: skip
    told = lines_of(pumped(worst))
    for words in (
        "Only one of the two",
        "small pipe",
        "outlet tee is loose",
        "crumbling",
        "filter was not",
        "A lot of",
    ):
        assert words in told, words
    assert "gallons" not in told
    assert re.search(r"is \d+ gal", told)
    assert re.search(r"about \d+ months to gather", told)
    assert "take all of it out" in told
    assert "leave a little" in told
    for mild in ("damp_white", "pitted"):
        assert "small holes" in lines_of(pumped(SeenEmpty(wall=mild)))
    for back in ("slight", "none"):
        assert "ran back" in lines_of(pumped(SeenEmpty(backflow=back)))


def test_what_was_seen_is_never_milder_than_its_own_verdict() -> None:
    page = pumped(SeenEmpty(both_compartments="no"))
    assert page.verdict != "carry_on"
    assert "come back for the other one" in " ".join(page.lead)


def test_what_was_not_told_is_worth_asking() -> None:
    told = lines_of(pumped(SeenEmpty(all_out="unknown", wall="unknown", backflow="unknown")))
    assert "ask the service" in told
    assert "how the wall looks" in told
    assert "How much was left is not known" in told


def test_a_phrase_that_is_missing_is_named() -> None:
    with pytest.raises(ContentProblem):
        PageWords("words/x.toml", {})("title", "seen")


def test_a_limit_without_a_figure_is_told_with_why_and_gives_no_date() -> None:
    small = {"id": "main", "volume_m3": 1.9, "liquid_depth_m": 1.2}
    deep = {"id": "main", "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27}, "liquid_depth_m": 1.83}
    for tank, why in ((small, "begins at 750 gal"), (deep, "ends at water 5 ft")):
        asked = case("phs-526", tanks=[tank])
        page = ahead(asked)
        told = lines_of(page)
        assert "has no figure for this tank" in page.headline, why
        assert why in told
        assert re.search(r"Scum, .* too near the outlet: (around|more than)", told)
        changed = lines_of(ahead(replace(asked, rules="us-epa-homeowner"), Change(rules="phs-526")))
        assert "one limit has no figure for this tank" in changed
    assert "no figure" not in lines_of(ahead(case("phs-526")))


def test_a_tank_behind_another_is_said_to_be_reckoned_with_all_that_comes() -> None:
    tank = {"volume_m3": 3.8, "liquid_depth_m": 1.2}
    alone, behind = (lines_of(ahead(case(tanks=[{"id": "main", "follows": first, **tank}]))) for first in (None, "a"))
    assert "water of another one" in behind
    assert "water of another one" not in alone


def test_a_date_beyond_the_horizon_is_told_as_such() -> None:
    big = {"id": "main", "volume_m3": 20.0, "liquid_depth_m": 1.2}
    one = [{"from": "2016-06-01", "people": 1}]
    told = lines_of(ahead(case("auckland", checks=False, tanks=[big], occupancy=one)))
    assert "Late: 1 chance in 10 that it takes more than 40 years." in told
    assert "before more than" not in told


@pytest.mark.parametrize("people", [3, 40])
def test_a_date_that_is_past_or_today_is_reached_already(people: int) -> None:
    asked = case(occupancy=[{"from": "2016-06-01", "people": people}])
    asked = replace(asked, today=date(2029, 6, 1))
    page = ahead(asked, Change(people=1))
    told = lines_of(page)
    dates, due = lines_of(ahead(asked)), judge(asked).due
    for name, day in zip(("Early", "Middle", "Late"), due, strict=True):
        past = day is not None and day <= asked.today
        assert (f"{name}: reached already" in dates) is past, name
        assert (f"{name} date as it is: reached already" in told) is past, name
        assert day is None or not past or show_day(day, "us") not in dates
    assert due.p10 is not None
    assert due.p10 <= asked.today


@pytest.mark.parametrize("change", [Change(people=1), Change(people=8), Change(tank_m3=6.0)])
def test_a_change_stands_in_the_headline_and_the_rest_is_marked(change: Change) -> None:
    asked = case()
    compared = compare(asked, change)
    page = ahead(asked, change)
    old, new = compared.now.due.p50, compared.then.due.p50
    assert old is not None
    assert new is not None
    told = [page.headline.index(show_day(day, "us")) for day in (new, old)]
    assert told == sorted(told)
    assert page.parts[0].title == "What if"
    assert all(part.title.startswith("As it is now · ") for part in page.parts[1:])
    assert "With 1 people" not in lines_of(page)


def test_a_change_that_changes_nothing_says_so_in_the_headline() -> None:
    asked = case()
    page = ahead(asked, Change(people=3))
    assert page.headline.startswith("With the change, the date of your limit stays about the same: around ")
    assert not ahead(asked, Change()).headline.startswith("With the change")


def test_one_person_is_not_told_of_as_people() -> None:
    told = lines_of(ahead(case(occupancy=[{"from": "2016-06-01", "people": 1}]), Change(people=1, months_per_year=1)))
    assert "With 1 person at home." in told
    assert "1 month a year" in told
    assert "1 people" not in told
