"""A household as one file and back: the same verdict, and no archive that writes where it should not."""

from __future__ import annotations

import errno
import io
import os
import random
import shutil
import stat
import zipfile
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from selfcheck.domain.judging import judge
from selfcheck.errors import FolderProblem, SelfcheckError, UsageProblem
from selfcheck.loading import content_place
from selfcheck.report.summary import judgement_json
from selfcheck.sitting.verdicts import case_of
from selfcheck.storage import archive_contents, writing
from selfcheck.storage.archive import pack, unpack
from selfcheck.storage.earlier import earlier_households
from selfcheck.storage.folder import read
from selfcheck.storage.lock import Lock
from selfcheck.storage.writing import write_household
from tests.cases import verdict_words
from tests.faults.test_failing_disk import Breaking

DAY = date(2026, 6, 1)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    from selfcheck.storage.working_copy import demo_household

    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


def files(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def zipped(path: Path, entries: dict[str, bytes], change: Callable[[zipfile.ZipInfo], None] | None = None) -> Path:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as made:
        for name, data in entries.items():
            entry = zipfile.ZipInfo(name)
            entry.compress_type = zipfile.ZIP_DEFLATED
            if change is not None:
                change(entry)
            made.writestr(entry, data)
    return path


def test_it_comes_back_the_same_with_the_same_verdict(home: Path, tmp_path: Path) -> None:
    (home / "open").mkdir()
    (home / "open/yearly-20260601T101010Z-0a1b2c3d.jsonl").write_text('{"flow": "yearly"}\n')
    write_household(home, read(home).household.model_copy(update={"bedrooms": 4}), DAY)
    (home / "checks/damaged.json").write_text("{half")
    packed = pack(home)
    assert packed.left_out == ()
    target = tmp_path / "record.zip"
    target.write_bytes(packed.data)
    found = unpack(target, tmp_path / "deep" / "back")
    assert (found.written, found.there, found.left_out) == (packed.files, 0, ())
    assert files(tmp_path / "deep" / "back") == files(home)
    there, here = read(tmp_path / "deep" / "back"), read(home)
    place = content_place(None, own=False)
    found_there, found_here = (judge(case_of(place, one, DAY)) for one in (there, here))
    assert judgement_json(found_there, verdict_words()) == judgement_json(found_here, verdict_words())
    assert [one.bedrooms for one in earlier_households(home) if one is not None] == [here.household.bedrooms - 1]
    for path in (tmp_path / "deep" / "back").rglob("*"):
        assert stat.S_IMODE(path.stat().st_mode) == (0o700 if path.is_dir() else 0o600)


def test_the_same_record_makes_the_same_bytes(home: Path, tmp_path: Path) -> None:
    first = pack(home).data
    again = Path(shutil.copytree(home, tmp_path / "again"))
    for path in again.rglob("*"):
        os.utime(path, (1, 1))
    assert pack(again).data == first


def test_what_is_no_part_of_the_record_is_named(home: Path) -> None:
    (home / "photo.jpg").write_bytes(b"x")
    (home / "checks/notes.txt").write_text("x")
    (home / "checks/out.json").symlink_to("/etc/hostname")
    packed = pack(home)
    assert [name.split(":")[0] for name in packed.left_out] == ["photo.jpg", "checks/notes.txt", "checks/out.json"]
    names = zipfile.ZipFile(io.BytesIO(packed.data)).namelist()
    assert "household.json" in names
    assert not {"photo.jpg", "checks/notes.txt", "checks/out.json", ".lock"} & set(names)


@pytest.mark.parametrize(
    "name",
    ["../out.json", "/etc/out.json", "checks/../../out.json", "checks\\..\\..\\out.json", "C:/out.json", "C:out.json",
     "checks//a.json", "./household.json", "checks/./a.json", "a/../../../b"],
)  # fmt: skip
def test_names_that_lead_out_are_refused(home: Path, tmp_path: Path, name: str) -> None:
    bad = zipped(tmp_path / "bad.zip", {**files(home), name: b"{}"})
    before = set(tmp_path.rglob("*"))
    with pytest.raises(UsageProblem, match="leads out"):
        unpack(bad, tmp_path / "new")
    assert set(tmp_path.rglob("*")) == before


@pytest.mark.parametrize("kind", [stat.S_IFLNK, stat.S_IFIFO, stat.S_IFCHR])
def test_links_and_devices_are_refused(home: Path, tmp_path: Path, kind: int) -> None:
    def as_kind(entry: zipfile.ZipInfo) -> None:
        entry.create_system = 3
        if entry.filename == "checks/2019-05-11.json":
            entry.external_attr = (kind | 0o777) << 16

    with pytest.raises(UsageProblem, match="link"):
        unpack(zipped(tmp_path / "bad.zip", files(home), as_kind), tmp_path / "new")
    assert not (tmp_path / "new").exists()


def test_what_unpacks_to_too_much_is_refused_before_it_is_read_whole(
    home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    swollen = {**files(home), "checks/big.json": b" " * 3_000_000}
    with pytest.raises(UsageProblem, match="more than a record"):
        unpack(zipped(tmp_path / "big.zip", swollen), tmp_path / "new")
    monkeypatch.setattr(archive_contents, "MOST_UNPACKED", 5_000)
    with pytest.raises(UsageProblem, match="more than a record"):
        unpack(zipped(tmp_path / "sum.zip", files(home)), tmp_path / "new")
    monkeypatch.setattr(archive_contents, "MOST_FILES", 3)
    with pytest.raises(UsageProblem, match="more than 3 files"):
        unpack(zipped(tmp_path / "many.zip", files(home)), tmp_path / "new")
    monkeypatch.setattr(archive_contents, "MOST_ARCHIVE", 100)
    with pytest.raises(UsageProblem, match="larger"):
        unpack(tmp_path / "many.zip", tmp_path / "new")
    assert not (tmp_path / "new").exists()


def test_two_files_of_one_name_are_refused(home: Path, tmp_path: Path) -> None:
    twice = {**files(home), "checks/2019-05-11.JSON".replace("JSON", "json").upper().lower(): b"{}"}
    bad = zipped(tmp_path / "bad.zip", twice)
    with zipfile.ZipFile(bad, "a") as made, pytest.warns(UserWarning, match="Duplicate"):
        made.writestr("checks/2019-05-11.json", b"{}")
    with pytest.raises(UsageProblem, match="two files of one name"):
        unpack(bad, tmp_path / "new")


def test_another_household_is_never_mixed_in(home: Path, tmp_path: Path) -> None:
    target = tmp_path / "record.zip"
    target.write_bytes(pack(home).data)
    other = Path(shutil.copytree(home, tmp_path / "other"))
    household = (other / "household.json").read_text().replace("Juniper Lane", "Elsewhere")
    (other / "household.json").write_text(household)
    (other / "checks/2019-05-11.json").unlink()
    before = files(other)
    with pytest.raises(FolderProblem, match="another household"):
        unpack(target, other)
    assert {name: data for name, data in files(other).items() if name != ".lock"} == before
    (other / "household.json").unlink()
    (other / "checks/2001-01-01.json").write_text("{}")
    with pytest.raises(FolderProblem, match="of the same household"):
        unpack(target, other)


def test_what_the_same_household_lacks_is_added_and_nothing_else_is_touched(home: Path, tmp_path: Path) -> None:
    target = tmp_path / "record.zip"
    target.write_bytes(pack(home).data)
    whole = files(home)
    (home / "checks/2019-05-11.json").unlink()
    found = unpack(target, home)
    assert (found.written, found.there) == (1, len(whole) - 1)
    assert {name: data for name, data in files(home).items() if name != ".lock"} == whole


def test_a_folder_zipped_by_hand_is_taken_with_its_top_folder_left_away(home: Path, tmp_path: Path) -> None:
    by_hand = {f"juniper/{name}": data for name, data in files(home).items()}
    by_hand |= {"__MACOSX/juniper/._x": b"x", "juniper/photo.jpg": b"x"}
    found = unpack(zipped(tmp_path / "hand.zip", by_hand), tmp_path / "new")
    assert files(tmp_path / "new") == files(home)
    assert set(found.left_out) == {"photo.jpg", "__MACOSX/juniper/._x"}


def test_damaged_archives_end_in_words(home: Path, tmp_path: Path) -> None:
    data = pack(home).data
    drawn = random.Random(7)
    target = tmp_path / "damaged.zip"
    for number in range(150):
        broken = bytearray(data)
        if number % 3 == 0:
            broken = broken[: drawn.randrange(len(broken))]
        else:
            for _ in range(drawn.randrange(1, 12)):
                broken[drawn.randrange(len(broken))] = drawn.randrange(256)
        target.write_bytes(bytes(broken))
        new = tmp_path / f"new{number}"
        try:
            unpack(target, new)
        except SelfcheckError:
            assert not new.exists()
        else:
            assert (new / "household.json").exists() or files(new)
    for text in (b"", b"PK", b"no archive at all"):
        target.write_bytes(text)
        with pytest.raises(UsageProblem):
            unpack(target, tmp_path / "new")


@pytest.mark.parametrize("good", [0, 1, 5])
@pytest.mark.parametrize("there", [False, True])
def test_a_full_disk_leaves_nothing_half_written(
    home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, good: int, there: bool
) -> None:
    target = tmp_path / "record.zip"
    target.write_bytes(pack(home).data)
    new = tmp_path / "new"
    if there:
        new.mkdir()
    monkeypatch.setattr(writing.os, "write", Breaking(os.write, errno.ENOSPC, good))
    with pytest.raises(FolderProblem, match=os.strerror(errno.ENOSPC)):
        unpack(target, new)
    monkeypatch.undo()
    assert not new.exists() or [name for name in files(new) if name != ".lock"] == []
    assert sorted(path.name for path in tmp_path.iterdir() if path.name.startswith(".")) == []
    assert unpack(target, new).written > 5


def test_a_folder_that_another_program_holds_is_left_alone(home: Path, tmp_path: Path) -> None:
    target = tmp_path / "record.zip"
    target.write_bytes(pack(home).data)
    (home / "checks/2019-05-11.json").unlink()
    lock = Lock(home)
    assert lock.take()
    try:
        with pytest.raises(FolderProblem, match="open"):
            unpack(target, home)
    finally:
        lock.release()
    assert not (home / "checks/2019-05-11.json").exists()
