"""Every error a person may see: what happened, and what to do about it."""

from __future__ import annotations


class SelfcheckError(Exception):
    """Something that a person can mend.

    `what` says in plain words what happened; `mend` says what to do. Both are shown, never a traceback.
    """

    exit_code = 2

    def __init__(self, what: str, mend: str) -> None:
        super().__init__(f"{what} {mend}")
        self.what = what
        self.mend = mend


class UsageProblem(SelfcheckError):
    """The command line was used in a way the program does not know."""


class FolderProblem(SelfcheckError):
    """A household folder cannot be used: missing, not a folder, not readable, in use by another program."""


class RecordProblem(SelfcheckError):
    """One file of the record cannot be used: damaged, from a newer program, of another kind.

    `used`: it is only odd, and was used all the same. `shared`: ids of checks of which nobody knows which one holds.
    """

    def __init__(self, file: str, what: str, mend: str, *, used: bool = False, shared: tuple[str, ...] = ()) -> None:
        super().__init__(f"{file}: {what}", mend)
        self.file = file
        self.used = used
        self.shared = shared


class ContentProblem(SelfcheckError):
    """A content file is wrong. Names the file, the id of the thing in it, and the key."""

    def __init__(
        self, file: str, ident: str, key: str, what: str, mend: str = "Mend that line and start again."
    ) -> None:
        where = " · ".join(part for part in (file, ident, key) if part)
        super().__init__(f"{where}: {what}", mend)
        self.file = file
        self.ident = ident
        self.key = key
