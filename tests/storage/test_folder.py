"""A household folder is read whole, whatever one of its files looks like."""

from __future__ import annotations

import json
import os
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from selfcheck.domain.household import Household
from selfcheck.errors import FolderProblem, RecordProblem
from selfcheck.storage.examine import examine
from selfcheck.storage.folder import parse, read
from selfcheck.storage.migrate import migrate
from selfcheck.storage.reading import MOST_BYTES, sound

CHECK: dict[str, Any] = {
    "format": "selfcheck-check",
    "version": 1,
    "id": "2026-05-18",
    "on": "2026-05-18",
    "recorded_at": "2026-05-18T17:40:03Z",
    "tank": "main",
    "seen": {"readings": {"sludge": [{"m": 0.2, "said": '8"'}]}, "smell": "earthy", "yard": []},
}


@pytest.fixture
def home(tmp_path: Path) -> Path:
    (tmp_path / "checks").mkdir()
    (tmp_path / "pump_outs").mkdir()
    write(tmp_path / "household.json", {"format": "selfcheck-household", "version": 1, "name": "Juniper Lane"})
    write(tmp_path / "checks/2026-05-18.json", CHECK)
    write(tmp_path / "pump_outs/2024-04-12.json", {"format": "selfcheck-pump-out", "version": 1, "on": "2024-04-12"})
    return tmp_path


def write(path: Path, content: dict[str, Any]) -> None:
    path.write_text(json.dumps(content), encoding="utf-8")


def again(name: str = "2027-05-18", **changes: Any) -> dict[str, Any]:
    return {**CHECK, "id": name, "on": name[:10], **changes}


def test_a_sound_folder_has_no_problems(home: Path) -> None:
    household, checks, pump_outs, problems, household_read, _ = read(home)
    assert (household.name, [check.id for check in checks], [p.on for p in pump_outs]) == (
        "Juniper Lane",
        ["2026-05-18"],
        [date(2024, 4, 12)],
    )
    assert problems == ()
    assert household_read


HOSTILE: dict[str, tuple[bytes, str]] = {
    "empty": (b"", "empty"),
    "only zeros": (b"\0" * 4096, "empty"),
    "cut short": (json.dumps(again()).encode()[:90], "line 1, column 8"),
    "no json": (b"<html>", "line 1, column 1"),
    "a list": (b"[]", "no record"),
    "not utf-8": (b'{"id": "\xff\xfe"}', "UTF-8"),
    "zero byte": (b'{"id": "a\0b"}', "zero byte at byte 10"),
    "key twice": (b'{"id": "2027-05-18", "on": "2027-05-18", "on": "2028-05-18"}', '"on" is given twice'),
    "nested key twice": (
        b'{"id": "2027-05-18", "on": "2027-05-18", "seen": {"smell": "none", "smell": "chemical"}}',
        '"smell" is given twice',
    ),
    "not a number": (json.dumps(again(seen={"readings": {"sludge": [{"m": float("nan")}]}})).encode(), "NaN"),
    "infinite, in an unknown field": (json.dumps(again(new=float("inf"))).encode(), "Infinity"),
    "deep": (b'{"a":' * 100_000 + b"1" + b"}" * 100_000, "deep"),
    "deep but not too deep for the first reader": (
        json.dumps(again()).encode()[:-1] + b',"a":' + b"[" * 400 + b"]" * 400 + b"}",
        "recursion",
    ),
    "long number": (b'{"id": "x", "on": ' + b"9" * 10_000 + b"}", "number too long"),
    "length as words": (
        json.dumps(again(seen={"readings": {"sludge": [{"m": "0.2"}]}})).encode(),
        "readings.sludge.0.m",
    ),
    "length as yes": (json.dumps(again(seen={"readings": {"sludge": [{"m": True}]}})).encode(), "readings.sludge.0.m"),
    "day as number": (json.dumps({**again(), "on": 1_800_000_000}).encode(), '"on"'),
    "smell nobody knows": (json.dumps(again(seen={"smell": "roses"})).encode(), "seen.smell"),
    "newer": (json.dumps(again(version=7)).encode(), "newer selfcheck (version 7"),
    "version in words": (json.dumps(again(version="one")).encode(), "version"),
    "another kind": (json.dumps(again(format="selfcheck-pump-out")).encode(), "format"),
    "id that climbs": (json.dumps(again(id="../../etc/passwd")).encode(), "cannot be the name"),
    "half a pair": (rb'{"id": "2027-05-18", "on": "2027-05-18", "tank": "\ud800"}', "hex escape"),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_damaged_file_is_named_and_left_alone_and_the_rest_is_used(home: Path, name: str) -> None:
    content, words = HOSTILE[name]
    file = home / "checks/2027-05-18.json"
    file.write_bytes(content)
    before = file.stat()
    found = read(home)
    assert [check.id for check in found.checks] == ["2026-05-18"]
    assert len(found.problems) == 1
    assert str(found.problems[0]).startswith("checks/2027-05-18.json: ")
    assert words in str(found.problems[0])
    assert (file.read_bytes(), file.stat().st_mtime_ns) == (content, before.st_mtime_ns)
    assert examine(home, date(2026, 6, 1)).problems[0].what == found.problems[0].what


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16", "utf-8"])
def test_any_usual_text_file_is_read(home: Path, encoding: str) -> None:
    text = json.dumps(again(note="wasserdicht für Ö"), ensure_ascii=False, indent=4)
    (home / "checks/2027-05-18.json").write_bytes(text.encode(encoding))
    found = read(home)
    assert found.problems == ()
    assert found.checks[1].model_extra == {"note": "wasserdicht für Ö"}


def test_what_is_no_plain_file_is_named(home: Path) -> None:
    checks = home / "checks"
    (checks / "2027-01-01.json").mkdir()
    os.mkfifo(checks / "2027-01-02.json")
    (checks / "2027-01-03.json").symlink_to("/etc/hostname")
    (checks / "2027-01-04.json").symlink_to(checks / "nowhere.json")
    with (checks / "2027-01-05.json").open("wb") as file:
        file.truncate(MOST_BYTES + 1)
    (checks / ".2027-01-06.json").write_text("hidden files are not ours")
    (checks / "notes.txt").write_text("nor are others")
    write(home / "inside.json", again())
    (checks / "2027-05-18.json").symlink_to(home / "inside.json")
    found = read(home)
    assert [check.id for check in found.checks] == ["2026-05-18", "2027-05-18"]
    assert [problem.file[7:17] for problem in found.problems] == [f"2027-01-0{n}" for n in range(1, 6)]


def test_a_damaged_household_leaves_the_checks(home: Path) -> None:
    (home / "household.json").write_text("{")
    found = read(home)
    assert not found.household_read
    assert (found.household, len(found.checks)) == (Household(), 1)
    (home / "household.json").unlink()
    assert "missing" in str(read(home).problems[0])


@pytest.mark.parametrize("case", ["missing", "file", "empty", "zero byte"])
def test_no_folder_is_said_with_what_to_do(tmp_path: Path, case: str) -> None:
    (tmp_path / "file").write_text("")
    (tmp_path / "empty").mkdir()
    with pytest.raises(FolderProblem) as caught:
        read(tmp_path / case.replace("zero byte", "a\0b"))
    assert caught.value.mend


def test_two_files_with_one_id_both_count_and_the_stray_goes_by_the_name_of_its_file(home: Path) -> None:
    write(home / "checks/2026-05-18 (copy).json", {**CHECK, "tank": "copy"})
    write(home / "checks/renamed.json", again("2025-05-18"))
    found = read(home)
    told = [(check.id, check.tank) for check in found.checks]
    assert told == [("2025-05-18", "main"), ("2026-05-18", "main"), ("2026-05-18--copy-", "copy")]
    assert [one.used for one in found.problems] == [True, True]
    assert [one.shared for one in found.problems if one.shared] == [("2026-05-18", "2026-05-18--copy-")]


def test_a_record_written_by_hand_without_a_version_is_read() -> None:
    record = parse(b'{"name": "Juniper Lane", "bedrooms": 3}', "household.json", Household, "selfcheck-household")
    assert (record.name, record.version) == ("Juniper Lane", 1)
    old = b'{"format": "selfcheck-household", "version": 0, "name": "Juniper Lane"}'
    assert parse(old, "household.json", Household, "selfcheck-household").name == "Juniper Lane"


def test_migration_goes_step_by_step(monkeypatch: pytest.MonkeyPatch) -> None:
    from selfcheck.storage import migrate as module

    monkeypatch.setitem(module.CURRENT, "selfcheck-check", 3)
    monkeypatch.setitem(module.STEPS, ("selfcheck-check", 1), lambda raw: {**raw, "way": raw.get("way", "") + "1"})
    monkeypatch.setitem(module.STEPS, ("selfcheck-check", 2), lambda raw: {**raw, "way": raw["way"] + "2"})
    assert migrate({"version": 1}, "selfcheck-check", "x")["way"] == "12"
    assert migrate({"version": 2, "way": ""}, "selfcheck-check", "x")["way"] == "2"
    with pytest.raises(RecordProblem, match="newer"):
        migrate({"version": 4}, "selfcheck-check", "x")


def test_quick_look_sees_a_key_given_twice_at_any_depth() -> None:
    assert sound(b'{"a" : 1, "b": {"c":"12:30", "a" :2}}')
    assert not sound(b'{"a": {"b": {"c": 1, "c": 1}}}')
    assert not sound(b'{"a": NaN}')


def test_examining_names_loose_ends(home: Path) -> None:
    write(home / "checks/2026-05-18-2.json", {**CHECK, "id": "2026-05-18-2", "replaces": "2020-01-01"})
    write(home / "checks/2027-05-18.json", again(replaces="2027-05-18"))
    write(home / "checks/2028-05-18.json", again("2028-05-18", tank="second"))
    (home / "checks/.abc.part").write_text("")
    (home / "checks/photo.png").write_text("")
    found = examine(home, date(2027, 6, 1))
    words = "\n".join([*map(str, found.problems), *found.notes])
    for expected in ("2020-01-01", "replacing itself", "after today", "cut short", "photo.png"):
        assert expected in words
