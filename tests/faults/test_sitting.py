"""A household at the table when things go wrong around it: two programs, a clock set back, no right to write."""

from __future__ import annotations

import errno
import json
import os
import shutil
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.interview.dialogue import Conversation
from selfcheck.loading.place import content_place
from selfcheck.sitting import Sitting
from selfcheck.storage import journal, lock, writing
from selfcheck.storage.examine import examine
from selfcheck.storage.layout import holds_record
from selfcheck.storage.working_copy import demo_household
from tests.faults.walking import lines_through
from tests.sitting.desks import lived_in

TODAY = date(2026, 6, 1)
SHEET = {"way_in": "sheet"}
PLACE = content_place(own=False)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return lived_in(tmp_path / "home")


@pytest.fixture(scope="module")
def lines(tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    folder = tmp_path_factory.mktemp("walk") / "home"
    shutil.copytree(demo_household(), folder)
    return lines_through(folder, "yearly", TODAY, SHEET)


def sit(folder: Path, today: date = TODAY, **more: Any) -> Sitting:
    return Sitting.open(folder, PLACE, today, **more)


def talk(conversation: Conversation, lines: list[str]) -> Conversation:
    conversation.start()
    for line in lines:
        conversation.hear(line)
    return conversation


def test_a_whole_check_becomes_one_file_and_a_verdict(home: Path, lines: list[str]) -> None:
    before = {path: path.read_bytes() for path in home.rglob("*.json")}
    sitting = sit(home)
    page = sitting.conclude(talk(sitting.begin("yearly"), lines))
    assert not isinstance(page, str)
    assert page.headline
    assert sitting.trouble == ""
    assert list((home / "open").iterdir()) == []
    (made,) = [path for path in (home / "checks").iterdir() if path not in before]
    content = json.loads(made.read_text())
    assert content["id"] == made.stem
    assert content["seen"]["readings"]["sludge"][0]["said"]
    assert [one["question"] for one in content["answers"]][:2] == ["way_in", "wrong_now"]
    assert {path: path.read_bytes() for path in before} == before
    assert sit(home).unfinished() is None


def test_going_on_after_a_stop_gives_the_same_check(home: Path, lines: list[str]) -> None:
    sitting = sit(home)
    talk(sitting.begin("yearly"), lines[:6])
    sitting.close()
    later = sit(home, date(2026, 6, 3))
    left = later.unfinished()
    assert left is not None
    assert (left.flow, len(left.answers)) == ("yearly", 6)
    conversation = later.resume()
    conversation.start()
    for line in lines[6:]:
        conversation.hear(line)
    assert conversation.ending is not None
    later.conclude(conversation)
    assert later.trouble == ""
    assert later.unfinished() is None


def test_a_check_written_just_before_a_crash_is_not_offered_or_written_again(
    home: Path, lines: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    sitting = sit(home)
    conversation = talk(sitting.begin("yearly"), lines)
    monkeypatch.setattr(journal.Journal, "remove", lambda book: book.close())  # the crash: the journal stays
    sitting.conclude(conversation)
    sitting.close()
    monkeypatch.undo()
    count = len(list((home / "checks").iterdir()))
    again = sit(home)
    assert again.unfinished() is None
    again.begin("yearly")
    assert [path.suffix for path in (home / "open").iterdir()] == []
    assert len(list((home / "checks").iterdir())) == count


def test_the_second_program_says_that_it_only_reads(home: Path, lines: list[str]) -> None:
    first, second = sit(home), sit(home)
    talk(first.begin("yearly"), lines[:5])
    conversation = talk(second.begin("yearly"), lines)
    assert "Another selfcheck" in second.trouble
    page = second.conclude(conversation)
    assert not isinstance(page, str)
    assert "Nothing was saved" in second.trouble
    assert len(list((home / "open").iterdir())) == 1
    assert len(list((home / "checks").iterdir())) == 6
    first.close()
    assert second.read_only == ""


def test_leaving_says_saved_only_where_all_is(home: Path) -> None:
    first, second = sit(home), sit(home)
    said = []
    for sitting in (first, second):
        conversation = sitting.begin("yearly")
        conversation.start()
        said.append(" ".join(message.text for message in conversation.hear("leave")))
    assert "Your answers are saved" in said[0]
    assert "Not all of your answers could be saved." in said[1]
    assert "are saved" not in said[1]
    first.close()


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EIO, errno.EACCES], ids=errno.errorcode.get)
def test_a_disk_that_fails_at_the_end_still_gives_the_verdict_and_keeps_the_answers(
    home: Path, lines: list[str], monkeypatch: pytest.MonkeyPatch, number: int
) -> None:
    sitting = sit(home)
    conversation = talk(sitting.begin("yearly"), lines)

    def failing(*_: object) -> int:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(writing, "write_all", failing)
    page = sitting.conclude(conversation)
    assert not isinstance(page, str)
    assert os.strerror(number) in sitting.trouble
    monkeypatch.undo()
    sitting.close()
    later = sit(home)
    assert later.unfinished() is not None
    resumed = later.resume()
    resumed.start()
    assert resumed.ending is not None
    later.conclude(resumed)
    assert later.trouble == ""
    assert len(list((home / "checks").iterdir())) == 7


def test_in_a_folder_that_does_not_allow_writing_everything_can_be_seen_and_asked(
    home: Path, lines: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def no_entry(path: Path, *rest: Any, **more: Any) -> int:
        if Path(path).is_relative_to(home) and rest and rest[0] & (os.O_CREAT | os.O_WRONLY | os.O_RDWR):
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), str(path))
        return real(path, *rest, **more)

    real = os.open
    monkeypatch.setattr(lock.os, "open", no_entry)
    sitting = sit(home)
    assert "does not allow writing" in sitting.read_only
    page = sitting.conclude(talk(sitting.begin("yearly"), lines))
    assert not isinstance(page, str)
    assert sitting.trouble
    assert not (home / "open").exists()


def test_a_clock_set_back_is_said_and_loses_nothing(home: Path, lines: list[str]) -> None:
    sitting = sit(home, date(2025, 1, 1))
    assert any("clock" in problem.mend for problem in sitting.home().problems)
    sitting.conclude(talk(sitting.begin("yearly"), lines))
    sitting.close()
    assert len(sit(home).checks) == 7


def test_beginning_anew_puts_the_old_answers_aside(home: Path, lines: list[str]) -> None:
    sitting = sit(home)
    talk(sitting.begin("yearly"), lines[:5])
    talk(sitting.begin("yearly"), lines[:2])
    left = sitting.unfinished()
    assert left is not None
    assert len(left.answers) == 2
    sitting.discard()
    assert sitting.unfinished() is None
    assert sorted(path.suffix for path in (home / "open").iterdir()) == [".left", ".left"]
    with pytest.raises(UsageProblem):
        sitting.resume()


def test_a_correction_is_a_new_file_and_the_old_one_stays(home: Path, lines: list[str]) -> None:
    sitting = sit(home)
    sitting.conclude(talk(sitting.begin("yearly"), lines))
    (made,) = [check for check in sitting.checks if "sitting" in (check.model_extra or {})]
    before = (home / f"checks/{made.id}.json").read_bytes()
    sitting.close()
    later = sit(home, date(2026, 7, 1))
    conversation = later.correct(made.id)
    conversation.start()
    assert conversation.ending is None  # it asks again whether all of it is right
    conversation.do("change")
    conversation.hear("the smell")
    prompt = conversation.prompt
    assert prompt is not None
    if prompt.question == "smell":
        conversation.hear("like rotten eggs")
    for _ in range(6):
        if conversation.ending is None:
            conversation.hear("yes")
    assert conversation.ending is not None
    later.conclude(conversation)
    assert later.trouble == ""
    (mended,) = [check for check in later.checks if check.replaces]
    assert (mended.replaces, mended.on) == (made.id, made.on)
    assert mended.id == f"{made.on}-2"
    assert mended.seen.readings == made.seen.readings
    assert (made.seen.smell, mended.seen.smell) == ("none", "rotten_egg")
    assert (home / f"checks/{made.id}.json").read_bytes() == before
    with pytest.raises(UsageProblem):
        later.correct("1999-01-01")


def test_a_damaged_household_file_is_never_replaced(home: Path, lines: list[str]) -> None:
    (home / "household.json").write_text("{broken")
    sitting = sit(home)
    walked = lines_through(shutil.copytree(home, home.parent / "copy"), "yearly", TODAY, SHEET)
    sitting.conclude(talk(sitting.begin("yearly"), walked))
    assert (home / "household.json").read_text() == "{broken"


def test_an_invented_household_is_copied_and_stays_as_it_is(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    original = shutil.copytree(demo_household(), tmp_path / "demo")
    before = {path: path.read_bytes() for path in original.rglob("*") if path.is_file()}
    sitting = sit(original)
    assert sitting.demonstration
    assert sitting.folder.is_relative_to(tmp_path / "data")
    talk(sitting.begin("yearly"), ["2"])
    sitting.close()
    assert {path: path.read_bytes() for path in original.rglob("*") if path.is_file()} == before
    again = sit(original)
    assert again.unfinished() is not None  # the same copy is found again


def test_a_new_household_is_made_with_the_first_conversation_only(tmp_path: Path) -> None:
    folder = tmp_path / "new" / "home"
    with pytest.raises(FolderProblem):
        sit(folder)
    sitting = sit(folder, begin=True)
    assert sitting.home().verdict_line == ""
    assert not folder.exists()
    walked = lines_through(tmp_path / "walk", "learn", TODAY, {})
    conversation = talk(sitting.begin("learn"), walked)
    assert conversation.ending is not None
    sitting.conclude(conversation)
    assert sitting.trouble == ""
    assert (folder / "household.json").exists()
    assert sit(folder).household == sitting.household


@pytest.fixture(autouse=True)
def _nothing_outside(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))


def test_a_household_left_before_its_first_record_is_opened_again(tmp_path: Path) -> None:
    folder = tmp_path / "new"
    sitting = sit(folder, begin=True)
    talk(sitting.begin("yearly"), ["sheet"])
    sitting.close()
    assert not (folder / "household.json").exists()
    again = sit(folder)
    left = again.unfinished()
    assert left is not None
    assert [answer.question for answer in left.answers] == ["way_in"]
    assert again.problems == ()
    assert examine(folder, TODAY).open_checks == 1
    prompt = again.resume().prompt
    assert prompt is not None
    assert prompt.question == "wrong_now"
    assert again.trouble == ""


def test_a_folder_with_nothing_told_in_it_is_still_no_record(tmp_path: Path) -> None:
    (tmp_path / "open").mkdir()
    (tmp_path / "checks").mkdir()
    assert not holds_record(tmp_path)
    with pytest.raises(FolderProblem):
        sit(tmp_path)


def test_two_copies_of_an_invented_household_are_two_households(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    one, other = (Path(shutil.copytree(demo_household(), tmp_path / name)) for name in ("one", "other"))
    sitting = sit(one)
    talk(sitting.begin("yearly"), ["sheet"])
    sitting.close()
    assert sit(other).unfinished() is None
    assert sit(other).folder != sit(one).folder
    assert sit(one).unfinished() is not None
    assert sit(one.parent / "other" / ".." / "one").folder == sit(one).folder
