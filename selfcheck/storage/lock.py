"""One writer a folder. The lock goes with the program that holds it, also when that program is killed."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from selfcheck.errors import FolderProblem

LOCK = ".lock"


class Lock:
    """The lock of one folder. `held` says whether this program may write there."""

    def __init__(self, folder: Path) -> None:
        self.path = folder / LOCK
        self.held = False
        self.reason = ""
        self._handle: int | None = None

    def take(self) -> bool:
        """Try to take the lock, without waiting. When it is not held afterwards, `reason` says why in words."""
        if self.held:
            return True
        try:
            handle = os.open(self.path, os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0), 0o600)
        except OSError as error:
            self.reason = f"The folder does not allow writing ({error.strerror})."
            return False
        if not _try_lock(handle):
            os.close(handle)
            self.reason = "Another selfcheck has this folder open."
            return False
        self._handle, self.held, self.reason = handle, True, ""
        return True

    def release(self) -> None:
        """Give the lock back. The file stays: taking it away could pull it from under another program."""
        if self._handle is not None:
            os.close(self._handle)
        self._handle, self.held = None, False


@contextmanager
def alone(folder: Path) -> Iterator[None]:
    """As the one writer of the folder. Raises FolderProblem when that cannot be."""
    lock = Lock(folder)
    if not lock.take():
        raise FolderProblem(lock.reason, "Close the other one, or allow writing, and try again.")
    try:
        yield
    finally:
        lock.release()


if sys.platform == "win32":
    import msvcrt

    def _try_lock(handle: int) -> bool:
        try:
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True

else:
    import fcntl

    def _try_lock(handle: int) -> bool:
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        except OSError:  # a file system that knows no locks: finished files are safe there all the same
            return True
        return True
