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


def _records(top: Path) -> Path:
    home = top / "home"
    for part in ("checks", "pump_outs", "open", "earlier"):
        (home / part).mkdir(parents=True)
    (home / "household.json").write_text("{}")
    (home / "checks" / "2026-05-18.json").write_text("check")
    return home


@pytest.mark.parametrize("record", ["home", "other", None])
@pytest.mark.parametrize(
    "name",
    [
        "home/household.json",
        "home/HOUSEHOLD.JSON",
        "home/.lock",
        "home/checks/2026-05-18.json",
        "home/pump_outs/new.html",
        "home/earlier/new.html",
        "linked/household.json",
        "linked_checks/2026-05-18.json",
        "to_check.html",
        "home/../home/open/new.html",
    ],
)
def test_no_file_of_any_record_is_written_over(tmp_path: Path, name: str, record: str | None) -> None:
    home = _records(tmp_path)
    (tmp_path / "linked").symlink_to(home)
    (tmp_path / "linked_checks").symlink_to(home / "checks")
    (tmp_path / "to_check.html").symlink_to(home / "checks" / "2026-05-18.json")
    before = sorted(home.rglob("*"))
    with pytest.raises(UsageProblem, match="record itself"):
        hand_out(tmp_path / name, b"x", replace=True, record=tmp_path / record if record else None)
    assert sorted(home.rglob("*")) == before
    assert (home / "household.json").read_text() == "{}"
    assert (home / "checks" / "2026-05-18.json").read_text() == "check"


def test_a_record_whose_parts_are_links_is_safe_as_well(tmp_path: Path) -> None:
    home, elsewhere = tmp_path / "home", tmp_path / "elsewhere"
    home.mkdir()
    elsewhere.mkdir()
    (elsewhere / "facts").write_text("{}")
    (home / "household.json").symlink_to(elsewhere / "facts")
    (home / "checks").symlink_to(elsewhere)
    for target in (home / "household.json", elsewhere / "facts", home / "checks" / "new.html", elsewhere / "new.html"):
        with pytest.raises(UsageProblem, match="record itself"):
            hand_out(target, b"x", replace=True, record=home)
    assert [path.name for path in elsewhere.iterdir()] == ["facts"]


def test_a_folder_of_such_a_name_that_is_no_record_may_be_used(tmp_path: Path) -> None:
    (tmp_path / "checks").mkdir()
    hand_out(tmp_path / "checks" / "page.html", b"x")
    hand_out(tmp_path / "checks" / "page.html", b"y", replace=True)
    assert (tmp_path / "checks" / "page.html").read_bytes() == b"y"


@pytest.mark.parametrize("replace", [False, True])
@pytest.mark.parametrize("through_a_link", [False, True])
def test_what_is_no_plain_file_stays(tmp_path: Path, replace: bool, through_a_link: bool) -> None:
    target = tmp_path / "pipe"
    os.mkfifo(target)
    if through_a_link:
        (tmp_path / "link").symlink_to(target)
    name = tmp_path / ("link" if through_a_link else "pipe")
    with pytest.raises(UsageProblem, match="no plain file"):
        hand_out(name, b"x", replace=replace)
    assert target.is_fifo()
    assert name.is_symlink() == through_a_link


@pytest.mark.parametrize("replace", [False, True])
def test_a_name_that_is_too_long_cannot_be_saved(tmp_path: Path, replace: bool) -> None:
    with pytest.raises(FolderProblem, match=r"could not be saved \(File name too long\)"):
        hand_out(tmp_path / ("x" * 300), b"x", replace=replace)
    with pytest.raises(FolderProblem, match="too long"):
        hand_out(tmp_path / ("x" * 300) / "page.html", b"x", replace=replace)
    (tmp_path / "ring").symlink_to(tmp_path / "ring")
    with pytest.raises(UsageProblem, match="no folder"):
        hand_out(tmp_path / "ring" / "page.html", b"x", replace=replace)


@pytest.mark.parametrize("sign", ["\n", "\r", "\t", "\0", "\x1b", "\x9b", "\u2028"])
def test_a_name_with_a_control_in_it_is_refused_in_one_line(tmp_path: Path, sign: str) -> None:
    with pytest.raises(UsageProblem, match="no file name may have") as caught:
        hand_out(tmp_path / f"a{sign}b.html", b"x", replace=True)
    assert len(caught.value.what.splitlines()) == 1
    assert list(tmp_path.iterdir()) == []


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
