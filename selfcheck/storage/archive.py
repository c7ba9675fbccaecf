"""A household folder as one file (zip), and back again.

What comes out of an archive is looked at whole before anything is written: where each name leads, how large it is and
becomes, and whether it may stand beside what is there.
"""

from __future__ import annotations

import contextlib
import io
import os
import secrets
import shutil
import stat
import zipfile
from pathlib import Path, PurePosixPath
from typing import NamedTuple

from selfcheck.errors import FolderProblem, RecordProblem
from selfcheck.progress import tell
from selfcheck.storage.archive_contents import PARTS, contents, is_part
from selfcheck.storage.folder import read
from selfcheck.storage.layout import HOUSEHOLD
from selfcheck.storage.lock import alone
from selfcheck.storage.reading import read_bytes
from selfcheck.storage.writing import make_folder, sync_folder, write_new

#: Every entry carries this time, so that the same record makes the same archive.
_TIME = (1980, 1, 1, 0, 0, 0)


class Packed(NamedTuple):
    """An archive, how many files are in it, and what in the folder was left out."""

    data: bytes
    files: int
    left_out: tuple[str, ...]


class Unpacked(NamedTuple):
    """What came out: how many files were written, how many were there already, and what was no part of a record."""

    written: int
    there: int
    left_out: tuple[str, ...]


def pack(folder: Path) -> Packed:
    """The record in `folder` as one archive, the same bytes for the same record. Raises FolderProblem.

    Damaged files of the record go in as they are; links and files that are no part of it are left out and named.
    """
    read(folder)  # says in words when this is no household
    files: dict[str, bytes] = {}
    left_out: list[str] = []
    names = _names(folder)
    for number, (name, path) in enumerate(names):
        tell(number, len(names))
        if not is_part(name):
            left_out.append(name)
            continue
        try:
            if path.is_symlink():
                raise RecordProblem(name, "it is a link.", "Put the file itself there.")
            files[name] = read_bytes(str(path), name)
        except RecordProblem as problem:
            left_out.append(f"{problem.what} {problem.mend}")
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in sorted(files.items()):
            entry = zipfile.ZipInfo(name, _TIME)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.create_system = 3
            entry.external_attr = (stat.S_IFREG | 0o600) << 16
            archive.writestr(entry, data)
    return Packed(whole.getvalue(), len(files), tuple(left_out))


def unpack(file: Path, folder: Path, *, alone_there: bool = False) -> Unpacked:
    """Bring the record in an archive to `folder`: a new one, an empty one, or one of the same household.

    A file that is there already is never written over: where one differs, it is another household or another state of
    it, and nothing is written at all. `alone_there`: this program is the one writer of the folder already. Raises
    UsageProblem for an archive that cannot be used, FolderProblem for a folder that cannot.
    """
    files, left_out = contents(file)
    if folder.exists() and not folder.is_dir():
        raise FolderProblem(f"{folder} is a file, not a folder.", "Name a folder.")
    if not folder.exists():
        _as_new_folder(folder, files)
        return Unpacked(len(files), 0, left_out)
    fresh = _fresh(folder, files)
    with contextlib.nullcontext() if alone_there else alone(folder):
        _into(folder, fresh)
    return Unpacked(len(fresh), len(files) - len(fresh), left_out)


def _names(folder: Path) -> list[tuple[str, Path]]:
    """Every file at the top and in the parts of a record, with the name it has in the archive."""
    found: list[tuple[str, Path]] = []
    try:
        for part in (".", *PARTS):
            inside = folder / part
            if inside.is_symlink() or not inside.is_dir():
                continue
            for path in sorted(inside.iterdir()):
                if path.is_dir() and not path.is_symlink():
                    continue
                if not path.name.startswith("."):
                    found.append(((PurePosixPath(part) / path.name).as_posix(), path))
    except OSError as error:
        raise FolderProblem(f"{folder} cannot be read ({error.strerror}).", "Check who may read it.") from error
    return found


def _fresh(folder: Path, files: dict[str, bytes]) -> dict[str, bytes]:
    """The files that the folder lacks. Raises FolderProblem when one that it has differs."""
    fresh: dict[str, bytes] = {}
    there = {name for name, _ in _names(folder) if is_part(name)}
    if there - set(files) and not (HOUSEHOLD in there and HOUSEHOLD in files):
        what = f"{folder} holds a record already, and nothing tells that it is of the same household."
        raise FolderProblem(what, "Nothing was written. Name a new folder.")
    for name, data in files.items():
        target = folder / name
        if not os.path.lexists(target):
            fresh[name] = data
            continue
        try:
            same = not target.is_symlink() and target.read_bytes() == data
        except OSError as error:
            raise FolderProblem(f"{target} cannot be read ({error.strerror}).", "Nothing was written.") from error
        if not same:
            what = f"{folder} holds another household, or another state of this one ({name} differs)."
            raise FolderProblem(what, "Nothing was written. Name a new folder.")
    return fresh


def _as_new_folder(folder: Path, files: dict[str, bytes]) -> None:
    """A folder that was not there before, in one step: laid out under a passing name first."""
    passing = folder.parent / f".{secrets.token_hex(6)}"
    try:
        make_folder(folder.parent)
        passing.mkdir(mode=0o700)
        _write(passing, files)
        os.rename(passing, folder)
        sync_folder(folder.parent)
    except OSError as error:
        shutil.rmtree(passing, ignore_errors=True)
        raise _not_written(folder, error) from error


def _into(folder: Path, files: dict[str, bytes]) -> None:
    """More files for a folder that is there. When one cannot be written, those written just now go again."""
    written: list[Path] = []
    made = [folder / part for part in PARTS if not (folder / part).exists()]
    try:
        _write(folder, files, written)
    except OSError as error:
        with contextlib.suppress(OSError):
            for path in written:
                path.unlink()
        for part in made:
            with contextlib.suppress(OSError):
                part.rmdir()
        raise _not_written(folder, error) from error


def _write(folder: Path, files: dict[str, bytes], written: list[Path] | None = None) -> None:
    # what makes it a household, last
    for number, (name, data) in enumerate(sorted(files.items(), key=lambda one: one[0] == HOUSEHOLD)):
        tell(number, len(files))
        target = folder / name
        if target.parent.is_symlink():
            raise OSError(f"{target.parent.name} is a link")
        make_folder(target.parent)
        if not write_new(target, data):
            raise OSError(f"{name} came to be there meanwhile")
        if written is not None:
            written.append(target)


def _not_written(folder: Path, error: OSError) -> FolderProblem:
    what = f"The record could not be written to {folder} ({error.strerror or error}). Nothing was left half written."
    return FolderProblem(what, "Make room or allow writing there, and try again.")
