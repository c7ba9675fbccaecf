"""The conversation asks for a better reading exactly where the verdict would name it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.sitting.test_endings import at
from tests.sitting.test_second_part_and_tank import HOUSE, asked, talked

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
        if any("rules" not in one.facts and one.verdict.startswith("call") for one in found.findings):
            assert found.better == ()  # somebody comes whatever the layers are
            return
        assert {ASKED[one] for one in questions if one in ASKED} == {*found.better} & {*ASKED.values()}


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
