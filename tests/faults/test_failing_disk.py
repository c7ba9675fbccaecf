"""A disk that is full, forbidden or broken: said in words, nothing half written, nothing before it lost."""

from __future__ import annotations

import errno
import os
import subprocess
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest

from selfcheck.domain.check import Check
from selfcheck.domain.household import Household
from selfcheck.errors import FolderProblem
from selfcheck.interview.answers import Answer
from selfcheck.storage import journal, writing
from selfcheck.storage.folder import read

DAY = date(2026, 5, 18)
FAULTS = [errno.ENOSPC, errno.EIO, errno.EACCES, errno.EROFS, errno.EDQUOT]


class Breaking:
    """Stands in for a function of `os`: works `good` times, then fails with `number`; a write does half of it first."""

    def __init__(self, real: Callable[..., int], number: int, good: int = 0) -> None:
        self.real, self.number, self.good = real, number, good
        self.broken = True

    def __call__(self, *arguments: object) -> int:
        if self.broken and self.good <= 0:
            if len(arguments) == 2 and isinstance(arguments[1], bytes | memoryview) and len(arguments[1]) > 1:
                self.real(arguments[0], bytes(arguments[1])[: len(arguments[1]) // 2])
            raise OSError(self.number, os.strerror(self.number))
        self.good -= 1
        return self.real(*arguments)


@pytest.mark.parametrize("number", FAULTS, ids=errno.errorcode.get)
@pytest.mark.parametrize("call", ["write", "fsync", "open"])
def test_a_finished_file_is_whole_or_not_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, number: int
) -> None:
    writing.write_check(tmp_path, Check(id="", on=DAY, tank="before"))
    writing.write_household(tmp_path, Household(name="before"), DAY)
    monkeypatch.setattr(writing.os, call, Breaking(getattr(os, call), number))
    for save in (
        lambda: writing.write_check(tmp_path, Check(id="", on=DAY, tank="after")),
        lambda: writing.write_household(tmp_path, Household(name="after"), DAY),
    ):
        with pytest.raises(FolderProblem) as caught:
            save()
        assert os.strerror(number) in caught.value.what
        assert caught.value.mend
    monkeypatch.undo()
    found = read(tmp_path)
    assert (found.household.name, [check.tank for check in found.checks], found.problems) == ("before", ["before"], ())
    assert [path for path in tmp_path.rglob("*") if path.suffix == ".part"] == []


@pytest.mark.parametrize("number", FAULTS, ids=errno.errorcode.get)
@pytest.mark.parametrize("call", ["write", "fsync"])
def test_an_answer_that_cannot_be_saved_is_said_and_saved_when_there_is_room(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, number: int
) -> None:
    book = journal.Journal.begin(tmp_path, "yearly", "2026-05-18T17:40:03Z")
    answers = [Answer(f"q{n}", "value", "word " * 20) for n in range(4)]
    book.keep(answers[0])
    breaking = Breaking(getattr(os, call), number)
    monkeypatch.setattr(journal.os, call, breaking)
    for answer in answers[1:3]:
        book.keep(answer)
        assert os.strerror(number) in book.trouble
    assert journal.load(book.path).answers == tuple(answers[:1])
    assert journal.load(book.path).problems == ()
    breaking.broken = False
    book.keep(answers[3])
    assert (book.trouble, book.waiting) == ("", [])
    assert journal.load(book.path).answers == tuple(answers)


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 64 KB, where the system lets us have one."""
    place = tmp_path / "disk"
    place.mkdir()
    made = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(place)], capture_output=True, check=False
    )
    if made.returncode:
        pytest.skip("no right to mount a small disk here")
    yield place
    subprocess.run(["umount", str(place)], check=False)


def test_a_full_disk(small_disk: Path) -> None:
    home = small_disk / "home"
    writing.write_check(home, Check(id="", on=DAY, tank="before"))
    book = journal.Journal.begin(home, "yearly", "2026-05-18T17:40:03Z")
    kept = []
    for number in range(2000):
        book.keep(Answer(f"q{number}", "value", "word " * 40))
        if book.trouble:
            break
        kept.append(f"q{number}")
    assert os.strerror(errno.ENOSPC) in book.trouble
    with pytest.raises(FolderProblem, match=os.strerror(errno.ENOSPC)):
        writing.write_check(home, Check(id="", on=DAY, tank="after"))
    assert [check.tank for check in read(home).checks] == ["before"]
    assert [answer.question for answer in journal.load(book.path).answers] == kept
    (small_disk / "home/checks/2026-05-18.json").unlink()
    assert book.flush()
    assert len(journal.load(book.path).answers) == len(kept) + 1
    book.close()
