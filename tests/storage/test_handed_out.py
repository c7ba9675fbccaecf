"""Files made for somebody: nothing written over by accident, nothing half written."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.storage import writing
from selfcheck.storage.handed_out import hand_out
from tests.faults.test_failing_disk import FAULTS, Breaking


def test_a_file_that_is_there_stays_unless_it_may_be_replaced(tmp_path: Path) -> None:
    target = tmp_path / "page.html"
    hand_out(target, b"first")
    with pytest.raises(UsageProblem, match="there already"):
        hand_out(target, b"second")
    assert target.read_bytes() == b"first"
    hand_out(target, b"second", replace=True)
    assert target.read_bytes() == b"second"
    assert [path.name for path in tmp_path.iterdir()] == ["page.html"]


def test_a_link_is_not_followed(tmp_path: Path) -> None:
    (tmp_path / "kept").write_text("kept")
    (tmp_path / "page.html").symlink_to(tmp_path / "kept")
    (tmp_path / "loose.html").symlink_to(tmp_path / "nowhere")
    for name in ("page.html", "loose.html"):
        with pytest.raises(UsageProblem):
            hand_out(tmp_path / name, b"new")
    hand_out(tmp_path / "page.html", b"new", replace=True)
    assert (tmp_path / "kept").read_text() == "kept"


@pytest.mark.parametrize(
    "name", ["household.json", "checks/2026-05-18.json", "open/new.html", "checks/../household.json"]
)
def test_the_record_itself_is_never_written_over(tmp_path: Path, name: str) -> None:
    home = tmp_path / "home"
    (home / "checks").mkdir(parents=True)
    (home / "household.json").write_text("{}")
    with pytest.raises(UsageProblem, match="record itself"):
        hand_out(home / name, b"x", replace=True, record=home)
    assert (home / "household.json").read_text() == "{}"
    hand_out(home / "page.html", b"x", record=home)


def test_a_folder_or_a_missing_place_is_said(tmp_path: Path) -> None:
    with pytest.raises(UsageProblem, match="is a folder"):
        hand_out(tmp_path, b"x", replace=True)
    with pytest.raises(UsageProblem, match="no folder"):
        hand_out(tmp_path / "not" / "here.html", b"x")


@pytest.mark.parametrize("number", FAULTS, ids=errno.errorcode.get)
@pytest.mark.parametrize("call", ["write", "fsync", "open"])
@pytest.mark.parametrize("replace", [False, True])
def test_a_failing_disk_leaves_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, number: int, replace: bool
) -> None:
    target = tmp_path / "page.html"
    if replace:
        target.write_bytes(b"before")
    monkeypatch.setattr(writing.os, call, Breaking(getattr(os, call), number))
    with pytest.raises(FolderProblem, match="half written") as caught:
        hand_out(target, b"after" * 100, replace=replace)
    monkeypatch.undo()
    assert os.strerror(number) in caught.value.what
    assert [path.name for path in tmp_path.iterdir()] == (["page.html"] if replace else [])
    assert not replace or target.read_bytes() == b"before"
