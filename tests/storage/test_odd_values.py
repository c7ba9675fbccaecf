"""Values that no tank and no day can have are named with their file and their place in it."""

from __future__ import annotations

import json
import shutil
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from selfcheck.storage.examine import examine
from selfcheck.storage.working_copy import demo_household

TODAY = date(2026, 6, 1)
CHECK = "checks/2026-05-16.json"


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


def change(file: Path, *keys: Any, to: object) -> None:
    """Put `to` where `keys` lead in a file."""
    whole = here = json.loads(file.read_text("utf-8"))
    for key in keys[:-1]:
        here = here[key]
    here[keys[-1]] = to
    file.write_text(json.dumps(whole), "utf-8")


def test_the_invented_household_has_none(home: Path) -> None:
    assert examine(home, TODAY).problems == ()


@pytest.mark.parametrize(("metres", "what"), [(-0.2, "below zero"), (44.0, "beyond any tank")])
@pytest.mark.parametrize("part", ["readings", "second_compartment"])
def test_a_length_that_cannot_be_is_named(home: Path, part: str, metres: float, what: str) -> None:
    change(home / CHECK, "seen", part, to={"sludge": [{"m": 0.1}, {"m": metres}], "liquid_depth": [{"m": 1.2}]})
    (problem,) = examine(home, TODAY).problems
    assert problem.file == CHECK
    assert "sludge, reading 2" in problem.what
    assert what in problem.what
    assert ("second_compartment." in problem.what) == (part == "second_compartment")


def test_an_outlet_above_the_water_may_be(home: Path) -> None:
    change(home / CHECK, "seen", "readings", "outlet_bottom_below_surface", to=[{"m": -0.1}])
    assert examine(home, TODAY).problems == ()


@pytest.mark.parametrize("year", ["0001", "9999"])
def test_a_day_that_cannot_be_meant_is_named(home: Path, year: str) -> None:
    name = f"checks/{year}-05-16.json"
    (home / CHECK).rename(home / name)
    change(home / name, "id", to=f"{year}-05-16")
    change(home / name, "on", to=f"{year}-05-16")
    (problem,) = examine(home, TODAY).problems
    assert problem.file == name
    assert f"{year}-05-16" in problem.what


def test_days_of_the_household_that_cannot_be_or_have_not_come_are_named(home: Path) -> None:
    people = [{"from": day, "people": 3} for day in ("0201-01-01", "2019-01-01", "2030-01-01")]
    meter = [
        {"on": day, "m3": m3}
        for day, m3 in (("1018-01-01", 5), ("2018-01-01", 900), ("2026-01-01", 400), ("2031-01-01", 990))
    ]
    change(home / "household.json", "occupancy", to=people)
    change(home / "household.json", "meter", to=meter)
    found = examine(home, TODAY)
    named = [str(one) for one in found.problems]
    assert len(named) == 2
    assert all(any(day in one for one in named) for day in ("0201-01-01", "1018-01-01"))
    for words in (
        "3 people from 2030-01-01",
        "2031-01-01 lies after",
        "2026-01-01 is lower",
        "2018-01-01 lies before 2019",
    ):
        assert any(words in note for note in found.notes), words


def test_sizes_of_nothing_are_named(home: Path) -> None:
    change(home / "household.json", "tanks", 0, "liquid_depth_m", to=0)
    change(home / "household.json", "tanks", 0, "lid", to={"form": "round", "diameter_m": 0})
    change(home / "household.json", "tanks", 0, "shape", to={"kind": "box", "length_m": 0, "width_m": 1.5})
    named = [problem.what for problem in examine(home, TODAY).problems]
    assert len(named) == 3
    for words in ("liquid_depth_m", "lid.diameter_m", "shape.length_m"):
        assert any(words in one and one.startswith("household.json") for one in named)


def test_a_check_before_anybody_lived_there_is_worth_knowing(home: Path) -> None:
    change(home / "household.json", "occupancy", to=[{"from": "2020-01-01", "people": 3}])
    found = examine(home, TODAY)
    assert found.problems == ()
    assert any(note.startswith("checks/2019-05-11.json") and "2020-01-01" in note for note in found.notes)
    assert not any(note.startswith("checks/2021") for note in found.notes)
