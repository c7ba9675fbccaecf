"""The paper sheet: in the order of the screens, nothing about opening ahead of the safety boxes, on one page."""

from __future__ import annotations

import re
import shutil
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from selfcheck.domain.household import Contact, Household, Lid, Place
from selfcheck.domain.judging import judge
from selfcheck.domain.verdict import Judgement
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.loading import content_place, script
from selfcheck.loading.conversations import texts
from selfcheck.report.sheet import Sheet, sheet
from selfcheck.report.sheet_page import SIZES, sheet_page
from selfcheck.report.sheet_text import LARGE, PAGE, SCREEN, WIDTH, sheet_text, sheet_to_read
from selfcheck.storage.working_copy import demo_household
from tests.browsing import browser, pages_of, reaching_out
from tests.cases import build, judged

OPENING = re.compile(r"\b(lid off|slide|lift|uncover|take off|lower the pole|push the foot|air out)\b", re.IGNORECASE)


@cache
def yearly() -> Script:
    return script(content_place(None), "yearly")


@cache
def words() -> dict[str, Any]:
    return texts(content_place(None), "sheet_page")


def made(judgement: Judgement | None = None) -> Sheet:
    return sheet(judgement or judged(), yearly(), words())


def metric(case_household: Household) -> Household:
    return case_household.model_copy(update={"units": "metric", "name": "A long <b>name</b> & more " * 5})


def judged_for(household: Household, **about: bool) -> Judgement:
    case = build(about)
    return judge(type(case)(household, case.checks, case.pump_outs, case.rule_sets, case.signs, case.today))


def gate_nodes() -> list[Node]:
    section = next(one for one in yearly().flow.sections if one.id == "gate")
    return [node for node in section.nodes if node.gate and node.id != "gate_teach_again"]


def plain_words(text: str) -> set[str]:
    return set(re.findall(r"[a-z]{4,}", text.lower()))


def test_every_safety_item_of_the_conversation_is_a_box_of_what_lets_one_go_on() -> None:
    ticks = list(made().gate)
    for node in gate_nodes():
        boxes = words()["ticks"][node.id]
        assert ticks[: len(boxes)] == boxes, node.id
        del ticks[: len(boxes)]
        said = yearly().words_of(node.id)
        let_on = [label for option, label in said.options.items() if option in node.passes]
        known = plain_words(" ".join([*let_on, said.short, said.ask, said.before]))
        for box in boxes:
            assert len(plain_words(box) & known) >= 2, (node.id, box)
    assert ticks == []


def test_an_item_without_words_of_its_own_stands_in_those_of_the_conversation() -> None:
    fewer = {**words(), "ticks": {}}
    found = sheet(judged(), yearly(), fewer).gate
    assert len(found) == len(gate_nodes())
    assert found[0].startswith(f"{yearly().name_of('gate_helper')}: ")
    teach = yearly().words_of("gate_teach").options
    assert teach["call_stay_out"] in found[-1]
    assert teach["reach_in"] not in found[-1]


@pytest.mark.parametrize("form", ["text", "page"])
def test_nothing_about_opening_stands_ahead_of_the_safety_boxes(form: str) -> None:
    found = made()
    text = "\n".join(sheet_text(found)) if form == "text" else re.sub(r"<style>.*?</style>", "", sheet_page(found))
    flat = " ".join(re.sub(r"<[^>]+>", " ", text).split())
    before, _, after = flat.partition(found.gate_stop)
    assert after
    assert not OPENING.search(before), OPENING.search(before)
    assert OPENING.search(after)
    places = [flat.index(part) for part in (found.danger[1], found.before_title, found.gate_title, found.gate_stop)]
    assert places == sorted(places)


def test_signs_are_the_options_of_the_screens() -> None:
    found = made()
    choices = [choice for item in found.look[2] for choice in item.choices]
    left_out = [yearly().label_of(*one) for one in (("level", "stayed_shut"), ("parts", "not_seen"))]
    left_out += yearly().words_of("filter").options.values()  # this tank has none
    for ident in ("level", "surface", "smell", "parts", "wall_state", "filter"):
        for label in yearly().words_of(ident).options.values():
            assert label in choices or label in left_out
    assert sum(len(box.name) > 0 for box in found.crust[3]) == 3
    assert [box.name for box in found.boxes][1:3] == [yearly().name_of(one) for one in ("sludge_1", "sludge_2")]


def test_marks_stand_in_the_units_of_the_household_and_are_never_milder_in_the_other() -> None:
    us = {mark.name: mark.figure for mark in (*made().pole[1], *made().stick[1])}
    other = made(judged_for(metric(build().household)))
    si = {mark.name: mark.figure for mark in (*other.pole[1], *other.stick[1])}
    assert us["wet line of a full tank"] == "48 in"
    assert si["wet line of a full tank"] == "122 cm"
    assert us.keys() == si.keys()
    for name, figure in us.items():
        inches = float(figure.replace("½", ".5").removesuffix(" in"))
        centimetres = float(si[name].removesuffix(" cm"))
        assert abs(inches * 2.54 - centimetres) <= 2.54, name
    assert any("_____ cm" in line for line in sheet_text(other))


def test_a_reading_at_the_mark_is_under_and_one_step_higher_is_not() -> None:
    mark = float(made().pole[1][0].figure.replace("½", ".5").removesuffix(" in"))
    at = judged(sludge=[mark, mark], scum_total=[mark / 2], scum_above=[])
    above = judged(sludge=[mark + 0.5, mark + 0.5], scum_total=[(mark + 0.5) / 2], scum_above=[])
    assert {one.call for one in at.standings} == {"under"}
    assert {one.call for one in above.standings} & {"close", "over"}


BARE = 6  # lines that a printer usually leaves free: the most crowded sheet fits on the paper, edge to edge


def crowded(units: str) -> Household:
    """Long names, a contact, a filter: as much as a sheet ever says."""
    household = metric(build().household)
    place = Place(corner_a="kitchen " * 5, corner_b="porch " * 7, from_a_m=5, from_b_m=4, note="under the stone " * 9)
    tank = household.tanks[0].model_copy(update={"place": place, "filter": True, "lid": Lid(buried_m=0.3)})
    contact = Contact(role="pump-out service", name="N" * 80, phone="555 0100")
    return household.model_copy(update={"tanks": [tank], "contacts": [contact], "units": units})


def parted(units: str = "us") -> Household:
    """A tank of two parts."""
    household = build().household
    tank = household.tanks[0].model_copy(update={"compartments": 2, "filter": True})
    return household.model_copy(update={"tanks": [tank], "units": units})


def test_a_second_part_has_boxes_of_its_own() -> None:
    named = [box.name for box in made(judged_for(parted())).boxes]
    assert named[-3:] == words()["pole"]["second"]
    assert "lid" in named[-3]
    assert not {*words()["pole"]["second"]} & {box.name for box in made().boxes}


def test_text_is_one_page_and_boxes_stay_with_their_words() -> None:
    shut = [judged_for(crowded(units))._replace(verdict="call_now") for units in ("us", "metric")]
    two = [made(judged_for(parted(units))) for units in ("us", "metric")]
    plain = (made(), made(judged_for(Household())), *two)
    for found, over in (*((one, 0) for one in plain), *((made(one), BARE) for one in shut)):
        lines = sheet_text(found)
        assert len(lines) <= PAGE[found.unit] + over
        assert max(map(len, lines)) <= WIDTH
        assert not [line for line in lines if line.rstrip().endswith("[ ]")]
        assert max(map(len, sheet_to_read(found))) <= SCREEN


@pytest.mark.parametrize("units", ["us", "metric"])
def test_marks_stand_in_large_figures_and_in_words(units: str) -> None:
    found = made(judged_for(build().household.model_copy(update={"units": units})))
    lines = sheet_text(found)
    at = next(at for at, line in enumerate(lines) if line.startswith(f"{found.pole[0]}:"))
    marks = [*found.pole[1], *found.stick[1]]
    figures = [" ".join(LARGE.get(sign, ("", "", sign))[2] for sign in mark.figure.split()[0]) for mark in marks]
    assert re.search(".*".join(re.escape(f"{one} {found.unit}") for one in figures), lines[at + 3])
    below = " ".join(lines[at + 4 : at + 8])
    assert all(mark.figure in below for mark in marks)


@pytest.mark.parametrize("paper", list(SIZES))
def test_the_page_is_valid_escaped_and_asks_nothing_of_anybody(paper: str) -> None:
    household = metric(build().household)
    tank = household.tanks[0].model_copy(
        update={"place": Place(corner_a='"><script>x</script>', from_a_m=5, from_b_m=4, note="<img src=x>")}
    )
    page = sheet_page(made(judged_for(household.model_copy(update={"tanks": [tank]}))), paper)
    assert reaching_out(page) == []
    assert SIZES[paper] in page


def test_it_says_when_nothing_is_known_of_tank_and_lid() -> None:
    found = made(judged_for(Household(), no_check=True, no_pump_out=True))
    assert "not on record" in found.lid[1]
    assert any("usual depth" in mark.about for mark in found.stick[1])
    assert "wet line of a full tank" not in [mark.name for mark in found.pole[1]]


def test_a_record_that_calls_for_somebody_today_keeps_the_tank_shut() -> None:
    for judgement in (judged(lid="cracked"), judged(house=["sewage_backup"]), judged(people_hurt="fell_in")):
        found = made(judgement)
        assert "shut" in found.shut
        assert any(line.startswith("*** By the record") for line in sheet_text(found)[:3])
        assert found.shut in sheet_page(found)
    assert made().shut == ""


@pytest.mark.parametrize("paper", list(SIZES))
def test_it_prints_on_one_page(paper: str, tmp_path: Path) -> None:
    found = browser()
    if found is None:
        pytest.skip("no browser here")
    long = metric(build().household)
    for number, judgement in enumerate((judged(lid="cracked"), judged_for(long), judged_for(parted()))):
        file = tmp_path / f"sheet{number}.html"
        file.write_text(sheet_page(made(judgement), paper), encoding="utf-8")
        assert pages_of(found, file) == 1


def test_the_demonstration_has_one(tmp_path: Path) -> None:
    from selfcheck.__main__ import main

    home = shutil.copytree(demo_household(), tmp_path / "home")
    assert main(["sheet", str(home), "--to", str(tmp_path / "sheet.html"), "--today", "2026-06-01"]) == 0
    assert "Juniper Lane" in (tmp_path / "sheet.html").read_text(encoding="utf-8")
    assert "June 1, 2026" in (tmp_path / "sheet.html").read_text(encoding="utf-8")
