"""What keeps a sitting's answers: the lock of its folder, the journal, and what could not be saved."""

from __future__ import annotations

import os
from collections.abc import Callable, Collection
from pathlib import Path
from typing import Any

from selfcheck.errors import FolderProblem, RecordProblem
from selfcheck.interview.answers import Answer
from selfcheck.storage import journal as journals
from selfcheck.storage.journal import Journal, Opened
from selfcheck.storage.lock import Lock
from selfcheck.storage.writing import make_folder


class Keeper:
    """Keeps what is said in one folder, and remembers in words what it could not keep."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.journal: Journal | None = None
        self._lock = Lock(folder)
        self._unsaved: list[str] = []

    @property
    def writes(self) -> bool:
        """Whether this program is the one writer of the folder."""
        return self._lock.held

    @property
    def trouble(self) -> str:
        """What is not saved and why, in words; empty while all is well."""
        said = list(self._unsaved)
        if self.journal is not None and self.journal.trouble:
            waiting = len(self.journal.waiting)
            some = "The last answer is" if waiting == 1 else f"The last {waiting} answers are"
            said.append(f"{some} not saved ({self.journal.trouble}). It is tried again with the next answer.")
        return " ".join(said)

    def read_only(self) -> str:
        """Why nothing can be saved here, in words; empty when it can. Becomes the one writer; makes no folder."""
        if self.folder.is_dir():
            self._lock.take()
            return self._lock.reason
        above = next(parent for parent in self.folder.absolute().parents if parent.exists())
        return "" if above.is_dir() and os.access(above, os.W_OK) else "The folder cannot be made there."

    def come_to_the_table(self) -> bool:
        """Make the folder and become its one writer; `trouble` says so when that cannot be."""
        self.leave_journal()
        self._unsaved = []
        reason = ""
        try:
            make_folder(self.folder)
        except OSError as error:
            reason = f"The folder cannot be made ({error.strerror})."
        reason = reason or self.read_only()
        if reason:
            self._unsaved = [f"Nothing is saved in this folder. {reason}"]
        return not reason

    def opened(self, written: Collection[str]) -> tuple[Opened | None, list[RecordProblem]]:
        """The newest conversation left open whose record is not `written` yet, and the journals that are damaged."""
        found, problems = journals.find(self.folder)
        left = (one for one in found if one.told_something and one.journal.header.sitting not in written)
        return next(left, None), problems

    def take_away(self, written: Collection[str]) -> None:
        """Remove journals whose record was written just before a crash; only as the writer of the folder."""
        if self.writes:
            for opened in journals.find(self.folder)[0]:
                if opened.journal.header.sitting in written:
                    opened.journal.remove()

    def begin(self, flow: str, started: str, content: str, **about: Any) -> None:
        """Begin a journal. Its file is made with the first answer."""
        self.journal = Journal.begin(self.folder, flow, started, content, **about)

    def keep(self, answer: Answer) -> None:
        """Put one answer on the disk. What cannot be saved waits, and `trouble` says so."""
        if self.writes and self.journal is not None:
            self.journal.keep(answer)

    def save(self, write: Callable[[], object]) -> bool:
        """Write a finished file. False: it could not be, and `trouble` says so."""
        if not self.writes:
            return False
        try:
            write()
        except FolderProblem as problem:
            self.cannot(f"{problem.what} Your answers are kept. {problem.mend}")
            return False
        return True

    def cannot(self, what: str) -> None:
        """Remember something that could not be kept."""
        self._unsaved.append(what)

    def forget_trouble(self) -> None:
        """Begin afresh with what could not be kept, before it is all tried again."""
        self._unsaved = []

    def leave_journal(self) -> None:
        """Let go of the journal; its file stays."""
        if self.journal is not None:
            self.journal.close()
            self.journal = None

    def close(self) -> None:
        """Let go of the folder. Nothing needs to be saved here: every answer already is."""
        self.leave_journal()
        self._lock.release()
