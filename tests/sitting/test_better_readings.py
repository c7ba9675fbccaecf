"""The conversation asks for a better reading exactly where the verdict would name it."""

from __future__ import annotations

import itertools
import json
from pathlib import Path

import pytest

from selfcheck.interview.predicates import PREDICATES
from selfcheck.loading import content_place, script
from tests.sitting.test_endings import at
from tests.sitting.test_second_part_and_tank import HOUSE, asked, talked

PLACE = content_place(own=False)
#: question → the better reading that it takes
ASKED = {
    "crust_hangs": "scum_below", "crust_stands": "scum_above", "outlet_depth": "outlet_depth",
    "sludge_3": "sludge_third",
}  # fmt: skip


def house(folder: Path, rules: str, outlet: float | None) -> Path:
    folder.mkdir()
    tank = {**HOUSE["tanks"][0], "outlet_bottom_below_surface_m": outlet, "compartments": 1}  # type: ignore[index]
    tank["outlet_top_above_surface_m"] = 0.15
    whole = {**HOUSE, "rules": rules, "tanks": [tank]}
    (folder / "household.json").write_text(json.dumps(whole), encoding="utf-8")
    return folder


@pytest.mark.parametrize("rules", ["mason-wa", "on-obc-8-9-3"])
@pytest.mark.parametrize("outlet", [0.43, None])
@pytest.mark.parametrize("sludge", ["3 in", "16 in"])
@pytest.mark.parametrize("way", [("scum_total", "2 in"), ("scum_total", "14 in"), ("scum_above", "4 in")])
def test_it_is_asked_for_exactly_where_it_could_turn_the_verdict(
    tmp_path: Path, rules: str, outlet: float | None, sludge: str, way: tuple[str, str]
) -> None:
    told = {"scum_total": "i don't know", way[0]: way[1], "sludge_1": sludge, "sludge_2": sludge}
    with at(house(tmp_path / "home", rules, outlet)) as sitting:
        conversation = talked(sitting, told)
        questions = asked(conversation)
        sitting.conclude(conversation)
        found = sitting.judgement()
        assert {ASKED[one] for one in questions if one in ASKED} == {*found.better} & {*ASKED.values()}


@pytest.mark.parametrize("rules", ["mason-wa", "on-obc-8-9-3"])
@pytest.mark.parametrize("sign", [{"level": "above_outlet"}, {"parts": "outlet_tee", "outlet_tee_state": "missing"}])
def test_nothing_more_is_asked_for_where_a_sign_calls_somebody(
    tmp_path: Path, rules: str, sign: dict[str, str]
) -> None:
    told = {"scum_total": "3 in", "sludge_1": "8 in", "sludge_2": "13 in", **sign}
    with at(house(tmp_path / "home", rules, None)) as sitting:
        conversation = talked(sitting, told)
        sitting.conclude(conversation)
        assert sitting.judgement().better == ()
        assert not {*ASKED} & asked(conversation)


def test_what_is_read_again_stands_beside_what_was_read_first(tmp_path: Path) -> None:
    told = {"scum_total": "i don't know", "scum_above": "5 in", "sludge_1": "3 in", "sludge_2": "3 in"}
    with at(house(tmp_path / "home", "mason-wa", 0.43)) as sitting:
        conversation = talked(sitting, {**told, "crust_hangs": "7 in"})
        assert "crust_hangs" in asked(conversation)
        sitting.conclude(conversation)
        readings = sitting.checks[-1].seen.readings
        assert [one.said for one in readings.scum_above] == ["5 in"]
        assert [one.m for one in readings.scum_below] == [pytest.approx(0.1778)]
        assert "scum_below" not in sitting.judgement().better


def test_a_tank_whose_size_was_only_told_now_is_judged_by_that_size(tmp_path: Path) -> None:
    (tmp_path / "new").mkdir()
    told = {"size": "1000 gallons", "people": "3", "scum_total": "9 in", "sludge_1": "9 in", "sludge_2": "9 in"}
    with at(tmp_path / "new") as sitting:
        conversation = talked(sitting, told)
        questions = asked(conversation)
        sitting.conclude(conversation)
        better = {*sitting.judgement().better} & {*ASKED.values()}
        assert {ASKED[one] for one in questions if one in ASKED} == better


def test_all_that_is_seen_ahead_of_the_crust_is_named_as_looked_at() -> None:
    """Otherwise a walk over the routes could take two states for one."""
    ahead = itertools.takewhile(lambda node: node.id != "scum_total", script(PLACE, "yearly").nodes.values())
    paths = {node.id: [node.writes, *(path for told in node.implies.values() for path in told)] for node in ahead}
    seen = {name for name, written in paths.items() if any(path.startswith("check.seen") for path in written)}
    assert seen <= {*(PREDICATES["called_anyway"].reads or ())}
