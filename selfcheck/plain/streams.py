"""The three streams of the program: what they cannot show, and what they can no longer take."""

from __future__ import annotations

import contextlib
import errno
import io
import os
import sys

#: why a disk, a quota, or a terminal or a reader that has gone takes no more; files of a record tell of that where they
#: are written
_STOPPED = {getattr(errno, name, errno.ENOSPC) for name in ("ENOSPC", "EDQUOT", "EFBIG", "EIO", "EPIPE", "EBADF")}


class _Closed(io.StringIO):
    """A standard output that was closed before the program began: it takes nothing, and says so."""

    def write(self, text: str) -> int:
        raise OSError(errno.EBADF, os.strerror(errno.EBADF))


def make_forgiving() -> None:
    """A sign that the terminal cannot show becomes a question mark, never an error; a closed input is an empty one."""
    sys.stdin = sys.stdin or io.StringIO()
    sys.stdout = sys.stdout or _Closed()
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            with contextlib.suppress(ValueError, OSError):
                reconfigure(errors="replace")


def refused(error: Exception) -> str:
    """What to say where the system, and not the program, is why it stops; else empty."""
    if not isinstance(error, OSError):
        return ""
    if error.errno == errno.ENAMETOOLONG:
        return "A name that was given is too long for this system.\nName another file or folder."
    if error.errno in _STOPPED:
        return f"The text could not be written out ({error.strerror or error}). What was saved before is safe."
    return ""


def give_up_full() -> None:
    """What a stream still holds and cannot get rid of is dropped, so that nothing complains about it at the end."""
    for stream in (sys.stdout, sys.stderr):
        try:
            stream.flush()
        except (OSError, ValueError):
            with contextlib.suppress(OSError, ValueError):
                os.dup2(os.open(os.devnull, os.O_WRONLY), stream.fileno())
