"""A file or folder as a person types, pastes or drags its name; and what lies in it."""

from __future__ import annotations

import os
from collections.abc import Collection
from pathlib import Path

from selfcheck.errors import UsageProblem

_MEND = "Check the name and who may read it."


def named(line: str) -> Path:
    """What a typed line names; quotes, blanks with a backslash and `~` are understood. Raises UsageProblem."""
    name = line.strip().removeprefix("file://").strip("'\"")
    for spelled in dict.fromkeys((name, name.replace("\\ ", " "))):
        path = Path(os.path.expanduser(spelled))
        try:
            if path.exists():
                return path
        except (OSError, ValueError) as error:
            raise UsageProblem(f"{name[:200]} cannot be used as the name of a file.", _MEND) from error
    raise UsageProblem(f"There is no file or folder {name}.", "Check the name, or name the folder that it lies in.")


def is_archive(file: Path) -> bool:
    """Whether a file looks like an archive. Raises UsageProblem when it cannot be read."""
    try:
        with file.open("rb") as opened:
            return opened.read(4) == b"PK\3\4"
    except OSError as error:
        raise UsageProblem(f"{file} cannot be read ({error.strerror}).", _MEND) from error


def files_in(folder: Path, endings: Collection[str]) -> list[Path]:
    """The files in a folder with one of these endings, by name. Raises UsageProblem when it cannot be looked into."""
    try:
        return sorted(one for one in folder.iterdir() if one.suffix.lower() in endings and one.is_file())
    except OSError as error:
        raise UsageProblem(f"{folder} cannot be looked into ({error.strerror}).", _MEND) from error
