"""Taking out again what was taken in from one table. Its files are moved to `earlier/`, so that nothing is lost."""

from __future__ import annotations

import contextlib
import json
import os
import secrets
from collections import Counter
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from selfcheck.domain.check import Check, PumpOut
from selfcheck.errors import FolderProblem
from selfcheck.progress import tell
from selfcheck.storage.layout import CHECKS, IDENT, PUMP_OUTS
from selfcheck.storage.writing import EARLIER, make_folder, sync_folder, write_new

TAKEN_IN = "taken_in"
OUT = "out"
Moves = list[tuple[Path, Path]]
_FILE_CAP = 60  # signs of the name of the table that are kept


@dataclass(frozen=True)
class Batch:
    """What came from one table: the mark that its records carry, when, from which file, and how many they are."""

    mark: str
    on: date
    file: str
    count: int


def new_mark(today: date, file: str) -> str:
    """A mark for what is taken in from a table: its day, its file, and what tells it from all others."""
    return f"{today.isoformat()} {file[:_FILE_CAP]} {secrets.token_hex(4)}"


def batches(checks: Sequence[Check], pump_outs: Sequence[PumpOut]) -> list[Batch]:
    """Everything on record that came from tables, the latest first."""
    counts = Counter(str((one.model_extra or {}).get(TAKEN_IN, "")) for one in (*checks, *pump_outs))
    found = []
    for mark in sorted(counts, reverse=True):
        with contextlib.suppress(ValueError):  # a mark by somebody else
            found.append(Batch(mark, date.fromisoformat(mark[:10]), mark[11:-9], counts[mark]))
    return found


def take_out(folder: Path, mark: str, mended: Collection[str] = ()) -> Moves:
    """Move every record with this mark to `earlier/`, and say what was moved where. All of them, or none.

    `mended`: what a later one replaces, as "checks/2024-05-18"; it stays. Raises FolderProblem.
    """
    with _told():
        found = [path for path in _marked(folder, mark) if f"{path.parent.name}/{path.stem}" not in mended]
        make_folder(folder / EARLIER)
        moves = [(path, _free(folder / EARLIER, f"{OUT}-{path.parent.name}-{path.stem}")) for path in found]
        _move(folder, moves)
    return moves


def put_back(folder: Path, moves: Moves) -> None:
    """Undo what `take_out` did, all of it or nothing; what lies under `earlier/` stays there. Raises FolderProblem."""
    made: list[Path] = []
    with _told():
        try:
            for number, (here, there) in enumerate(moves):
                tell(number, len(moves))
                if not write_new(here, there.read_bytes()):
                    raise FileExistsError(17, "there is a file of that name", str(here))
                made.append(here)
        except OSError:
            for path in made:
                with contextlib.suppress(OSError):
                    path.unlink()
            raise


def _move(folder: Path, moves: Moves) -> None:
    moved: Moves = []
    try:
        for number, (here, there) in enumerate(moves):
            tell(number, len(moves))
            os.rename(here, there)
            moved.append((here, there))
    except OSError:
        for here, there in moved:
            with contextlib.suppress(OSError):
                os.rename(there, here)
        raise
    for part in (CHECKS, PUMP_OUTS, EARLIER):
        sync_folder(folder / part)


@contextlib.contextmanager
def _told() -> Iterator[None]:
    try:
        yield
    except OSError as error:
        what = f"It could not be moved ({error.strerror or error}). All of it is where it was."
        raise FolderProblem(what, "Allow writing there, and try again.") from error


def taken_out(folder: Path) -> int:
    """How many records lie under `earlier/` because they were taken out, also those that were put back."""
    with contextlib.suppress(OSError):
        return sum(name.startswith(f"{OUT}-") for name in os.listdir(folder / EARLIER))
    return 0


def _marked(folder: Path, mark: str) -> Iterator[Path]:
    written = json.dumps(mark, ensure_ascii=False).encode()
    for part in (CHECKS, PUMP_OUTS):
        with contextlib.suppress(FileNotFoundError):
            for name in sorted(os.listdir(folder / part)):
                path = folder / part / name
                if name.endswith(".json") and not path.is_symlink() and written in path.read_bytes():
                    yield path


def _free(inside: Path, stem: str) -> Path:
    number = 1
    while True:
        name = stem if number == 1 else f"{stem}-{number}"
        assert IDENT.fullmatch(name)
        if not os.path.lexists(inside / f"{name}.json"):
            return inside / f"{name}.json"
        number += 1
