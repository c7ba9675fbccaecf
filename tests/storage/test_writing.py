"""Finished files: whole or not at all, never written twice."""

from __future__ import annotations

import json
import stat
from datetime import date
from pathlib import Path

import pytest

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.storage import locations, writing
from selfcheck.storage.folder import read
from selfcheck.storage.schemas import MODELS, all_schemas

DAY = date(2026, 5, 18)


def test_a_second_check_of_the_day_gets_a_number_and_the_first_stays(tmp_path: Path) -> None:
    home = tmp_path / "a" / "home"
    names = [writing.write_check(home, Check(id="", on=DAY, tank=tank)).id for tank in ("one", "two", "three")]
    assert names == ["2026-05-18", "2026-05-18-2", "2026-05-18-3"]
    found = read(home)
    assert [(check.id, check.tank) for check in found.checks] == list(zip(names, ("one", "two", "three"), strict=True))
    assert writing.write_pump_out(home, PumpOut(on=DAY)) == "2026-05-18"
    assert writing.write_pump_out(home, PumpOut(on=DAY)) == "2026-05-18-2"


def test_a_damaged_file_keeps_its_name(tmp_path: Path) -> None:
    (tmp_path / "checks").mkdir()
    (tmp_path / "checks/2026-05-18.json").write_text("{damaged")
    assert writing.write_check(tmp_path, Check(id="", on=DAY)).id == "2026-05-18-2"
    assert (tmp_path / "checks/2026-05-18.json").read_text() == "{damaged"


def test_files_are_for_their_owner_only_and_nothing_is_left_lying(tmp_path: Path) -> None:
    home = tmp_path / "home"
    writing.write_check(home, Check(id="", on=DAY))
    writing.write_household(home, Household(name="Juniper Lane"), DAY)
    for path in [home, *home.rglob("*")]:
        assert stat.S_IMODE(path.stat().st_mode) == (0o700 if path.is_dir() else 0o600)
    assert sorted(p.name for p in home.rglob("*")) == ["2026-05-18.json", "checks", "household.json"]


def test_every_household_before_is_kept(tmp_path: Path) -> None:
    for name in ("first", "second", "third"):
        writing.write_household(tmp_path, Household(name=name), DAY)
    assert read(tmp_path).household.name == "third"
    kept = sorted((tmp_path / "earlier").iterdir())
    assert [path.name for path in kept] == ["household-2026-05-18-2.json", "household-2026-05-18.json"]
    assert {json.loads(path.read_text())["name"] for path in kept} == {"first", "second"}


def test_unknown_fields_and_key_order_survive(tmp_path: Path) -> None:
    raw = '{"format": "selfcheck-household", "version": 1, "name": "x", "well": {"depth_m": 30}, "occupancy": []}'
    (tmp_path / "household.json").write_text(raw)
    writing.write_household(tmp_path, read(tmp_path).household, DAY)
    written = json.loads((tmp_path / "household.json").read_text())
    assert written["well"] == {"depth_m": 30}
    assert list(written)[:4] == ["format", "version", "name", "units"]


def test_without_hard_links_a_file_still_comes_whole(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def no_links(*_: object) -> None:
        raise PermissionError(1, "Operation not permitted")

    monkeypatch.setattr(writing.os, "link", no_links)
    names = [writing.write_check(tmp_path, Check(id="", on=DAY)).id for _ in range(2)]
    assert names == ["2026-05-18", "2026-05-18-2"]
    assert sorted(p.name for p in (tmp_path / "checks").iterdir()) == ["2026-05-18-2.json", "2026-05-18.json"]


def test_asking_where_things_are_makes_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "HOME"):
        monkeypatch.setenv(name, str(tmp_path / "none"))
    for place in (locations.default_household(), locations.working_copies(), locations.trace_file()):
        assert place.is_absolute()
    assert list(tmp_path.iterdir()) == []


def test_schemas_name_every_field() -> None:
    schemas = all_schemas()
    assert set(schemas) == set(MODELS)
    assert {"tanks", "occupancy", "rules"} <= set(schemas["household"]["properties"])
    assert "sludge" in json.dumps(schemas["check"])
    assert json.dumps(schemas)
