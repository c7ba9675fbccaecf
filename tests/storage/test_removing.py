"""Taking a record away moves this program's own files and nothing else, and it comes back whole."""

from __future__ import annotations

import os
import shutil
from datetime import date
from pathlib import Path

import pytest

from selfcheck.errors import FolderProblem
from selfcheck.storage import removing
from selfcheck.storage.removing import bring_back, ours, take_away, taken_away
from selfcheck.storage.working_copy import demo_household

DAY = date(2026, 6, 1)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


def everything(folder: Path) -> dict[str, bytes]:
    return {str(path.relative_to(folder)): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_away_and_back_is_the_same(home: Path) -> None:
    before = everything(home)
    away = take_away(home, DAY)
    assert everything(away) == before
    assert list(home.iterdir()) == []
    assert taken_away(home) == (away, DAY)
    bring_back(away, home)
    assert everything(home) == before
    assert taken_away(home) is None
    assert not away.exists()


def test_what_is_not_ours_stays(home: Path, tmp_path: Path) -> None:
    outside = tmp_path / "outside.json"
    outside.write_text("{}")
    (home / "checks" / "linked.json").symlink_to(outside)
    (home / "checks" / "photo.jpg").write_text("x")
    (home / "letters").mkdir()
    (home / "letters" / "a.json").write_text("x")
    (home / "my file.json").write_text("x")
    take_away(home, DAY)
    assert set(everything(home)) == {"checks/photo.jpg", "checks/linked.json", "letters/a.json", "my file.json"}
    assert outside.exists()


def test_two_on_one_day_and_the_newest_counts(home: Path) -> None:
    first = take_away(home, DAY)
    shutil.copytree(demo_household(), home, dirs_exist_ok=True)
    second = take_away(home, DAY)
    assert second.name == f"{first.name}-2"
    assert taken_away(home) == (second, DAY)


def test_a_record_that_is_there_is_never_covered(home: Path) -> None:
    away = take_away(home, DAY)
    shutil.copytree(demo_household(), home, dirs_exist_ok=True)
    with pytest.raises(FolderProblem, match="already"):
        bring_back(away, home)
    assert ours(away)


def test_a_stop_in_the_middle_says_where_the_rest_is_and_loses_nothing(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = everything(home)
    rename, moved = os.rename, []

    def stops(source: Path, target: Path) -> None:
        if len(moved) == 3:
            raise OSError(28, "No space left on device")
        moved.append(target)
        rename(source, target)

    monkeypatch.setattr(removing.os, "rename", stops)
    with pytest.raises(FolderProblem, match="No space left"):
        take_away(home, DAY)
    away = home.parent / "home-taken-away-2026-06-01"
    assert {**everything(home), **everything(away)} == before
    assert (home / "household.json").exists()
