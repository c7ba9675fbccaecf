"""What lies where in a household's folder, and whether it is one. Opens no file of the record.

The program asks this before its first question, so it does without the models of the record.
"""

from __future__ import annotations

import os
import re
from pathlib import Path

from selfcheck.errors import FolderProblem

HOUSEHOLD = "household.json"
CHECKS = "checks"
PUMP_OUTS = "pump_outs"
OPEN = "open"
#: What may name a record: it must be safe as the name of a file on any system.
IDENT = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,63}")
#: More files than this in one folder are not read; a check a day for 270 years stays below. Our choice.
MOST_FILES = 100_000


def holds_record(folder: Path) -> bool:
    """Whether there is anything of a record in `folder`. Raises FolderProblem when that cannot be seen."""
    if not folder.exists():
        return False
    return HOUSEHOLD in listing(folder) or any(holds(folder / part) for part in (CHECKS, PUMP_OUTS, OPEN))


def holds(inside: Path) -> bool:
    """Whether there is any file that can be seen; one that may not be looked into may hold some."""
    try:
        return any(not name.startswith(".") for name in os.listdir(inside))
    except PermissionError:
        return True
    except OSError:
        return False


def listing(folder: Path) -> set[str]:
    """The names of what lies in `folder`. Raises FolderProblem with the reason when it cannot be seen."""
    try:
        return set(os.listdir(folder))
    except FileNotFoundError as error:
        raise FolderProblem(f"There is no folder {folder}.", "Check the name, or make the folder first.") from error
    except NotADirectoryError as error:
        raise FolderProblem(f"{folder} is a file, not a folder.", "Name the folder that it lies in.") from error
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) else "its name holds a zero byte"
        raise FolderProblem(f"{folder} cannot be read ({reason}).", "Check the name and who may read it.") from error
