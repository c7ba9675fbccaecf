"""The household's page: whole, valid, asking nothing of anybody, and on two sheets."""

from __future__ import annotations

import re
from datetime import date, timedelta
from functools import cache
from pathlib import Path
from typing import Any

import html5lib
import pytest

from selfcheck.domain.check import Check, Reading
from selfcheck.domain.household import Tank
from selfcheck.domain.judging import Case, judge
from selfcheck.loading import content_place
from selfcheck.loading.conversations import texts
from selfcheck.report.page import MOST_ROWS, PageWords, household_page
from selfcheck.report.summary import judgement_json
from selfcheck.report.verdict_text import what_to_do
from selfcheck.report.wording import verdict_screen
from tests.browsing import browser, pages_of, reaching_out
from tests.cases import build, check_of, verdict_words, written_cases

SVG = "{http://www.w3.org/2000/svg}"
HOSTILE = "</style><script>alert(1)</script>\x1b]8;;http://x\x07\u202e\"'><b onclick=x>"


@cache
def words() -> PageWords:
    place = content_place(None)
    return PageWords(verdict_words(), texts(place, "report_page"), texts(place, "pictures"))


def page_of(case: Case) -> str:
    return household_page(judge(case), case.checks, case.pump_outs, words())


def with_household(case: Case, **changes: Any) -> Case:
    return Case(
        case.household.model_copy(update=changes), case.checks, case.pump_outs, case.rule_sets, case.signs, case.today
    )


def text_of(page: str) -> str:
    tree = html5lib.parse(page, namespaceHTMLElements=False)
    return " ".join(" ".join(tree.find("body").itertext()).split())


def crowded() -> Case:
    """Many years, everything amiss, metric, long names."""
    case = build(
        wall="pitted", surface="pale_grey", smell="rotten_egg", outlet_tee="missing", inlet_tee="unknown",
        filter="unknown", yard=["wet_smelly", "lush_strip"], house=["slow_all_drains", "gurgling"], sludge=[20, 21],
    )  # fmt: skip
    older = [check_of(f"{year}-05-18") for year in range(1996, 2026)]
    case = Case(case.household, [*older, *case.checks], case.pump_outs, case.rule_sets, case.signs, case.today)
    return with_household(case, units="metric", name="A house with a long name, at the end of a long lane " * 2)


@pytest.mark.parametrize("case", written_cases()[::12], ids=lambda case: case["id"])
def test_a_case_has_a_valid_page_with_the_verdict_first(case: dict[str, Any]) -> None:
    built = build(case)
    page = page_of(built)
    assert reaching_out(page) == []
    text = text_of(page)
    screen = verdict_screen(judge(built), verdict_words())
    first = text.index(screen.headline)
    for line in (*screen.seen, *screen.not_checked, *screen.always):
        assert " ".join(line.split()) in text
        assert text.index(" ".join(line.split())) > first or line in text[:first]
    assert "{" not in text


def test_what_a_person_typed_comes_out_as_words_and_nothing_else() -> None:
    case = build()
    check = case.checks[0]
    read = check.seen.readings.model_copy(update={"sludge": [Reading(m=0.1, said=HOSTILE)]})
    hostile = check.model_copy(update={"seen": check.seen.model_copy(update={"readings": read})})
    case = Case(case.household, [hostile], case.pump_outs, case.rule_sets, case.signs, case.today)
    page = page_of(with_household(case, name=HOSTILE, rules=HOSTILE))
    assert reaching_out(page) == []
    assert "<script" not in page
    assert not re.search("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202e]", page)
    assert "alert(1)" in text_of(page)


def test_each_picture_has_a_title_and_a_description_and_ids_stand_once() -> None:
    page = page_of(crowded())
    tree = html5lib.parse(page, namespaceHTMLElements=False)
    drawn = list(tree.iter(f"{SVG}svg"))
    assert len(drawn) >= 4
    for one in drawn:
        assert one.find(f"{SVG}title").text
        assert len(one.find(f"{SVG}desc").text) > 20
    ids = re.findall(r'\bid="([^"]+)"', page)
    assert len(ids) == len(set(ids))


def test_every_rule_set_stands_in_the_table_and_in_the_sources_with_how_it_was_seen() -> None:
    case = build()
    tree = html5lib.parse(page_of(case), namespaceHTMLElements=False)
    rows = [" ".join("".join(row.itertext()).split()) for row in tree.iter("tr")]
    sources = [" ".join("".join(item.itertext()).split()) for item in tree.iter("li")]
    for rule in case.rule_sets.values():
        assert any(row.startswith(rule.title) for row in rows), rule.id
        assert any(
            one.startswith(rule.title) and words().page["sources"][rule.seen].lower() in one.lower() for one in sources
        ), rule.id
    assert sum("your rule" in row for row in rows) == 1


def test_readings_stand_with_dates_errors_and_what_was_said() -> None:
    text = text_of(page_of(build(sludge=[7, 7.5])))
    assert re.search(r"May 18, 2026 7½ ± [\d¼½¾]+ in\s*read as 7 in; 7\.5 in", text)
    assert "May 20, 2024 Pump-out" in text


def test_old_readings_are_counted_not_dropped_without_a_word() -> None:
    case = crowded()
    text = text_of(page_of(case))
    assert f"{len(case.checks) + len(case.pump_outs) - MOST_ROWS} older entries" in text


def test_a_corrected_check_shows_once_and_the_units_are_the_households() -> None:
    case = build({"correct": {"sludge": [6, 6]}})
    text = text_of(page_of(with_household(case, units="metric")))
    assert "18 May 2026 15 ± 2 cm" in text
    assert text.count("18 May 2026 1") == 1


def test_a_second_tank_has_its_own_part() -> None:
    case = build()
    second = Tank(id="guest house")
    case = with_household(case, tanks=[*case.household.tanks, second])
    page = page_of(case)
    assert reaching_out(page) == []
    assert "guest house" in text_of(page)


def test_a_danger_of_an_earlier_day_stands_first_with_its_day_and_what_was_told() -> None:
    case = build(people_hurt="fell_in")
    later = Case(*(getattr(case, name) for name in case.__slots__[:5]), case.checks[0].on + timedelta(days=40))
    told = "Told on May 18, 2026: Someone fell in. Keep everyone away until it is over."
    found = judge(later)
    assert judgement_json(found, verdict_words())["headline"] == told
    text = text_of(household_page(found, later.checks, later.pump_outs, words()))
    assert text.index(told) < text.index(what_to_do(found, verdict_words(), "us")) < text.index("What was seen")


def test_the_same_record_and_day_make_the_same_page() -> None:
    assert page_of(crowded()) == page_of(crowded())


def test_a_household_with_nothing_on_record_has_a_page() -> None:
    case = build({"no_check": True, "no_pump_out": True})
    page = page_of(with_household(case, tanks=[], occupancy=[], bedrooms=None, name=""))
    assert reaching_out(page) == []
    assert "No reading is on record." in text_of(page)


@pytest.mark.parametrize("which", ["plain", "crowded"])
def test_it_prints_on_two_sheets(which: str, tmp_path: Path) -> None:
    found = browser()
    if found is None:
        pytest.skip("no browser here")
    file = tmp_path / "page.html"
    file.write_text(page_of(crowded() if which == "crowded" else build()), encoding="utf-8")
    assert pages_of(found, file) <= 2


def test_checks_of_the_future_stay_off_the_page() -> None:
    case = build()
    later = check_of((case.today + timedelta(days=30)).isoformat())
    whole: list[Check] = [*case.checks, later]
    case = Case(case.household, whole, case.pump_outs, case.rule_sets, case.signs, case.today)
    assert later.on > case.today
    text = text_of(page_of(case))
    readings = text[text.index("Readings") : text.index("By whose rule")]
    assert "June 17, 2026" not in readings
    assert date(2026, 6, 17) == later.on
