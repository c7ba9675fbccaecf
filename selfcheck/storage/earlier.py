"""The versions of the household's facts that came before the present one."""

from __future__ import annotations

import contextlib
import os
import re
from pathlib import Path

from selfcheck.domain.household import HOUSEHOLD_FORMAT, Household
from selfcheck.errors import RecordProblem
from selfcheck.storage.folder import parse
from selfcheck.storage.reading import read_bytes
from selfcheck.storage.writing import EARLIER

_NAME = re.compile(r"household-(\d{4}-\d{2}-\d{2})(?:-(\d+))?\.json")


def earlier_households(folder: Path) -> tuple[Household | None, ...]:
    """Each version before the present one, the oldest first; None for one that cannot be read."""
    named = []
    with contextlib.suppress(OSError):
        for name in os.listdir(folder / EARLIER):
            match = _NAME.fullmatch(name)
            if match:
                named.append((match[1], int(match[2] or 1), name))
    return tuple(_read(folder / EARLIER / name, f"{EARLIER}/{name}") for *_, name in sorted(named))


def _read(path: Path, name: str) -> Household | None:
    with contextlib.suppress(RecordProblem):
        if not path.is_symlink():
            return parse(read_bytes(str(path), name), name, Household, HOUSEHOLD_FORMAT)
    return None
