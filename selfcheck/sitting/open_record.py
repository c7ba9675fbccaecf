"""The record of one household in its folder: opened, read anew, and changed as its one writer."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Self, TypeVar

from selfcheck.errors import FolderProblem
from selfcheck.sitting.keeping import Keeper
from selfcheck.sitting.kept_record import KeptRecord
from selfcheck.storage import folder as folders
from selfcheck.storage.folder import NOTHING
from selfcheck.storage.layout import HOUSEHOLD, holds_record
from selfcheck.storage.locations import default_household
from selfcheck.storage.removing import ours
from selfcheck.storage.working_copy import working_copy

if TYPE_CHECKING:
    from selfcheck.loading.place import Place

Clock = Callable[[], datetime]
Changed = TypeVar("Changed")


class OpenRecord(KeptRecord):
    """A kept record with its folder. `began_with`: the household as the folder held it."""

    def __init__(self, folder: Path, place: Place, today: date, rules: str | None, clock: Clock) -> None:
        super().__init__(folder, place, today, rules)
        self.clock = clock
        self.began_with = self.household
        self._keeper = Keeper(folder)

    @classmethod
    def open(
        cls,
        folder: Path | None,
        place: Place,
        today: date,
        rules: str | None = None,
        *,
        begin: bool = False,
        fixed_day: bool = False,
        in_place: bool = False,
        clock: Clock | None = None,
    ) -> Self:
        """Open the household in `folder`; None: the user's own, which may not exist yet.

        `begin`: an empty or missing folder is the start of a new household; it is made with the first conversation.
        A household with `demonstration: true` is opened as a working copy, but not `in_place`. `fixed_day`: `today` was
        given, so that the times in the record lie on that day too; `clock` gives them otherwise. Raises FolderProblem
        when the folder cannot be used.
        """
        begin = begin or folder is None
        where = folder if folder is not None else default_household()
        opened = cls(where, place, today, rules, clock or (_clock_of(today) if fixed_day else _now))
        opened._read(begin)
        if opened.demonstration and not in_place:
            opened.folder = working_copy(where)
            opened._keeper = Keeper(opened.folder)
            opened._read(begin)
        return opened

    def close(self) -> None:
        """Let go of the folder. Nothing needs to be saved here: every answer already is."""
        self._keeper.close()

    @property
    def read_only(self) -> str:
        """Why nothing can be saved in this folder, in words; empty when it can. Tries to become its one writer."""
        return self._keeper.read_only()

    @property
    def trouble(self) -> str:
        """What is not saved and why, in words; empty while all is well. A face shows it whenever it is not empty."""
        return self._keeper.trouble

    def change_files(self, change: Callable[[Path], Changed]) -> Changed:
        """Change the files of the record as its one writer, and read it anew. Raises FolderProblem."""
        if not self._come_to_the_table():
            raise FolderProblem(self.trouble, "Close the other program, or allow writing there, and try again.")
        try:
            return change(self.folder)
        finally:
            self._begin_anew()

    def _begin_anew(self) -> None:
        self.hold(**NOTHING._asdict())
        self.began_with = self.household
        self._read(begin=True)

    def _read(self, begin: bool) -> None:
        """Take in what the folder holds now. `begin`: nothing there is the start of a new household, not a fault."""
        if begin and not holds_record(self.folder):
            return
        try:
            found = folders.read(self.folder)
        except FolderProblem:
            if begin and not ours(self.folder):  # what lies there is none of this program's
                return
            raise
        sound = found.household_read or not (self.folder / HOUSEHOLD).exists()
        self.hold(**found._replace(household_read=sound)._asdict())
        self.began_with = self.household

    def _written(self) -> set[str]:
        """The sittings that ended in a check on record."""
        return {str((check.model_extra or {}).get("sitting")) for check in self.checks}

    def _come_to_the_table(self) -> bool:
        """Become the one writer of the folder and see what others wrote meanwhile. False: nothing can be saved."""
        if not self._keeper.come_to_the_table():
            return False
        self._read(begin=True)
        self._keeper.take_away(self._written())
        return True

    def _time(self) -> str:
        return self.clock().isoformat(timespec="seconds").replace("+00:00", "Z")


def _now() -> datetime:
    return datetime.now(UTC)


def _clock_of(day: date) -> Clock:
    """The time of now, on a given day."""
    return lambda: datetime.combine(day, _now().time(), UTC)
