"""The check in progress: one line of JSON an answer, on the disk before the next question is shown.

The first line says which conversation it is and when it began. A line that was cut short by a crash is set aside in a
file of its own and the rest is used; nothing that a person typed is ever deleted by reading it.
"""

from __future__ import annotations

import contextlib
import os
import secrets
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import BREAK, HAZARD, LEAVING, NOTE, TAKEN_BACK, Answer
from selfcheck.storage.journal_lines import (
    UNREADABLE,
    Header,
    answer_line,
    head_line,
    read_answer,
    read_header,
    readable,
)
from selfcheck.storage.layout import OPEN
from selfcheck.storage.reading import read_bytes
from selfcheck.storage.writing import make_folder, sync_folder, write_all

ENDING = ".jsonl"


class Journal:
    """One open conversation on disk. Not for two programs at once: the lock of the folder is held by the writer."""

    def __init__(self, path: Path, header: Header, good_bytes: int) -> None:
        self.path = path
        self.header = header
        self.waiting: list[Answer] = []  # answers that could not be saved yet
        self.trouble = ""  # why not, in words; empty while all is on disk
        self._good = good_bytes
        self._lead = b""  # the line end that the last good line still lacks
        self._handle: int | None = None

    @classmethod
    def begin(cls, folder: Path, flow: str, started: str, content: str = "", **about: Any) -> Journal:
        """Begin a new one. The file is made with the first answer, so that a glance leaves nothing behind."""
        header = Header(flow, f"{started}-{secrets.token_hex(4)}", started, content, about)
        stamp = "".join(sign for sign in started if sign.isalnum())
        return cls(folder / OPEN / f"{flow}-{stamp}-{header.sitting[-8:]}{ENDING}", header, 0)

    def keep(self, answer: Answer) -> None:
        """Append one answer and force it to the disk.

        When that fails the answer waits in memory, `trouble` says why, and it is tried again with the next one: the
        conversation must be able to go on to "put the lid back" on a full disk too.
        """
        self.waiting.append(answer)
        self.flush()

    def lacks_line_end(self) -> None:
        """The last line on disk is whole but for its line end: give it one with the next answer."""
        self._lead = b"\n"

    def flush(self) -> bool:
        """Try again to save what waits. True: everything is on the disk."""
        try:
            while self.waiting:
                self._append(answer_line(self.waiting[0]))
                del self.waiting[0]
        except OSError as error:
            self.trouble = error.strerror or str(error)
            return False
        self.trouble = ""
        return True

    def close(self) -> None:
        """Let go of the file; it stays for next time."""
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None

    def remove(self) -> None:
        """Take the file away, once its answers stand in a finished record."""
        self.close()
        with contextlib.suppress(OSError):
            self.path.unlink()
            sync_folder(self.path.parent)

    def put_aside(self) -> None:
        """Keep the answers, but do not offer them again: the file gets another ending."""
        self.close()
        with contextlib.suppress(FileNotFoundError):
            os.replace(self.path, self.path.with_suffix(".left"))
            sync_folder(self.path.parent)

    def _append(self, line: bytes) -> None:
        if self._handle is None:
            self._open()
        assert self._handle is not None
        try:
            line = self._lead + line
            os.lseek(self._handle, self._good, os.SEEK_SET)
            write_all(self._handle, line)
            os.fsync(self._handle)
        except OSError:
            with contextlib.suppress(OSError):  # half a line is worse than none; if this fails, reading copes
                os.ftruncate(self._handle, self._good)
            raise
        self._good += len(line)
        self._lead = b""

    def _open(self) -> None:
        make_folder(self.path.parent.parent)
        make_folder(self.path.parent)
        flags = os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0)
        self._handle = os.open(self.path, flags, 0o600)
        try:
            self._mend_tail()
            if self._good == 0:
                self._append(head_line(self.header))
                sync_folder(self.path.parent)
        except OSError:
            self.close()
            raise

    def _mend_tail(self) -> None:
        """Set a cut-short last line aside in its own file, then cut it off here."""
        assert self._handle is not None
        size = os.fstat(self._handle).st_size
        if size <= self._good:
            return
        os.lseek(self._handle, self._good, os.SEEK_SET)
        torn = os.read(self._handle, size - self._good)
        aside = self.path.with_name(f"{self.path.stem}.torn-{secrets.token_hex(4)}")
        handle = os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        try:
            write_all(handle, torn)
            os.fsync(handle)
        finally:
            os.close(handle)
        sync_folder(self.path.parent)
        os.ftruncate(self._handle, self._good)


@dataclass(frozen=True)
class Opened:
    """A journal found on disk: what was answered, and what could not be read in it."""

    journal: Journal
    answers: tuple[Answer, ...]
    problems: tuple[RecordProblem, ...]

    @property
    def told_something(self) -> bool:
        """Whether there is something to go on from: an answer or a danger told that was not taken back."""
        standing: list[str] = []
        for answer in self.answers:
            if answer.question == TAKEN_BACK and answer.value == HAZARD and HAZARD in standing:
                standing.remove(HAZARD)  # of several dangers, the one told last
            elif answer.question == TAKEN_BACK:
                standing = [one for one in standing if one != answer.value]
            elif answer.question not in (BREAK, LEAVING, NOTE):
                standing.append(answer.question)
        return bool(standing)


def find(folder: Path) -> tuple[list[Opened], list[RecordProblem]]:
    """Every conversation left open in a household folder, newest first, and files there that cannot be used."""
    found: list[Opened] = []
    problems: list[RecordProblem] = []
    try:
        names = sorted(name for name in os.listdir(folder / OPEN) if name.endswith(ENDING) and name[0] != ".")
    except OSError:
        return [], []
    for name in names:
        try:
            found.append(load(folder / OPEN / name))
        except RecordProblem as problem:
            problems.append(problem)
    found.sort(key=lambda one: one.journal.header.started, reverse=True)
    return found, problems


def load(path: Path) -> Opened:
    """One journal. Raises RecordProblem when its first line is not there or is not ours; the file is not touched."""
    name = f"{OPEN}/{path.name}"
    if path.is_symlink():
        raise RecordProblem(name, "it is a link.", "Put the file itself there.")
    data = read_bytes(str(path), name)
    lines = data.split(b"\n")
    torn = lines.pop()
    if torn and lines and readable(torn):  # whole but for its line end
        lines.append(torn)
    if not lines:
        raise RecordProblem(name, "it breaks off in its first line, before any answer.", "It can be taken away.")
    answers: list[Answer] = []
    problems: list[RecordProblem] = []
    for number, line in enumerate(lines[1:], start=2):
        try:
            answers.append(read_answer(line))
        except UNREADABLE:
            what = f"line {number} cannot be read: that answer will be asked again."
            problems.append(RecordProblem(name, what, "The line was left as it is."))
    header = read_header(lines[0], name, path, bool(answers), problems)
    whole = len(data) - len(torn)
    if torn and lines[-1] is torn:
        journal = Journal(path, header, len(data))
        journal.lacks_line_end()
    else:
        journal = Journal(path, header, whole)
        if torn:
            what = "the last line broke off: that answer will be asked again."
            problems.append(RecordProblem(name, what, "What is left of it is kept."))
    return Opened(journal, tuple(answers), tuple(problems))
