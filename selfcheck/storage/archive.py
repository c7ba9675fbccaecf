"""A household folder as one file (zip), and back again.

What comes out of an archive is looked at whole before anything is written: where each name leads, how large it is and
becomes, and whether it may stand beside what is there.
"""

from __future__ import annotations

import contextlib
import io
import os
import re
import secrets
import shutil
import stat
import struct
import zipfile
import zlib
from pathlib import Path, PurePosixPath
from typing import NamedTuple

from selfcheck.errors import FolderProblem, RecordProblem, UsageProblem
from selfcheck.progress import tell
from selfcheck.storage.folder import CHECKS, HOUSEHOLD, MOST_FILES, OPEN, PUMP_OUTS, read
from selfcheck.storage.lock import alone
from selfcheck.storage.reading import MOST_BYTES, read_bytes
from selfcheck.storage.writing import EARLIER, make_folder, sync_folder, write_new

PARTS = (CHECKS, PUMP_OUTS, EARLIER, OPEN)
#: What one archive, and all that is in it, may measure at most. Our choice.
MOST_ARCHIVE = 20_000_000
MOST_UNPACKED = 200_000_000
#: What a file in a part of a record may be called on any system.
_NAME = re.compile(r"[^\s.<>:\"|?*\\/\x00-\x1f\x7f][^<>:\"|?*\\/\x00-\x1f\x7f]{0,127}(?<![ .])")
#: Whatever a damaged archive makes the library raise.
_DAMAGED = (
    zipfile.BadZipFile, zlib.error, struct.error, NotImplementedError, EOFError, ValueError, OverflowError,
    RuntimeError, IndexError, KeyError, OSError,
)  # fmt: skip
#: Every entry carries this time, so that the same record makes the same archive.
_TIME = (1980, 1, 1, 0, 0, 0)
_BAD = "Nothing was written. Ask for the archive once more, or unpack a copy by hand and look at it."


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
        if not _is_ours(name):
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


def _is_ours(name: str) -> bool:
    """Whether a name is one that a file of a record may have."""
    parts = name.split("/")
    if parts == [HOUSEHOLD]:
        return True
    if len(parts) != 2 or parts[0] not in PARTS or not _NAME.fullmatch(parts[1]):
        return False
    return parts[1].endswith(".json") or (parts[0] == OPEN and ".json" in parts[1])


def contents(file: Path) -> tuple[dict[str, bytes], tuple[str, ...]]:
    """The files of a record in an archive by their names, and what else is in it. Raises UsageProblem."""
    data = _archive_bytes(file)
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            entries = [entry for entry in archive.infolist() if not entry.is_dir()]
            if len(entries) > MOST_FILES:
                raise UsageProblem(f"{file} holds more than {MOST_FILES} files.", _BAD)
            for entry in entries:
                _look_at(entry, file)
            names = {entry.filename: name for entry, name in zip(entries, _without_top(entries), strict=True)}
            ours = [entry for entry in entries if _is_ours(names[entry.filename])]
            files = _read_out(archive, ours, names, file)
    except _DAMAGED as error:
        raise UsageProblem(f"{file} is no archive that can be read, or it is damaged.", _BAD) from error
    if not files:
        raise UsageProblem(f"There is no household record in {file}.", _BAD)
    others = tuple(name for name in names.values() if name not in files)
    return files, others


def _archive_bytes(file: Path) -> bytes:
    try:
        if not file.is_file():
            raise UsageProblem(f"There is no file {file}.", "Check the name.")
        if file.stat().st_size > MOST_ARCHIVE:
            raise UsageProblem(f"{file} is larger than {MOST_ARCHIVE // 1_000_000} MB.", _BAD)
        return file.read_bytes()
    except OSError as error:
        raise UsageProblem(
            f"{file} cannot be read ({error.strerror}).", "Check the name and who may read it."
        ) from error


def _look_at(entry: zipfile.ZipInfo, file: Path) -> None:
    """Refuse an entry whose name leads out, that is a link, is locked, or says itself that it is too large."""
    name = entry.filename
    parts = name.split("/")
    climbs = name.startswith("/") or "\\" in entry.orig_filename or ":" in name or "\0" in entry.orig_filename
    if climbs or any(part in ("", ".", "..") for part in parts):
        raise UsageProblem(f"{file} holds a name that leads out of its folder.", _BAD)
    kind = stat.S_IFMT(entry.external_attr >> 16)
    if entry.create_system == 3 and kind not in (0, stat.S_IFREG):
        raise UsageProblem(f"{file} holds a link or something else that is no file.", _BAD)
    if entry.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        raise UsageProblem(f"{file} is packed in a way that is not read here.", "Pack it as a plain zip file.")
    if entry.flag_bits & 0x1:
        raise UsageProblem(f"{file} is locked with a password.", "Unpack it by hand, and pack it without one.")


def _without_top(entries: list[zipfile.ZipInfo]) -> list[str]:
    """The names without the one folder that all of them lie in, where there is one."""
    names = [entry.filename for entry in entries]
    tops = {name.split("/")[0] for name in names if not name.startswith("__MACOSX/")}
    if len(tops) == 1 and tops.isdisjoint({HOUSEHOLD, *PARTS}):
        top = f"{tops.pop()}/"
        return [name.removeprefix(top) for name in names]
    return names


def _read_out(
    archive: zipfile.ZipFile, entries: list[zipfile.ZipInfo], names: dict[str, str], file: Path
) -> dict[str, bytes]:
    """What the entries hold. Each is read only so far that one too large is told from one that is not."""
    files: dict[str, bytes] = {}
    total = 0
    for entry in entries:
        name = names[entry.filename]
        with archive.open(entry) as opened:
            data = opened.read(MOST_BYTES + 1)
        total += len(data)
        if len(data) > MOST_BYTES or total > MOST_UNPACKED:
            raise UsageProblem(f"{file} unpacks to more than a record can hold.", _BAD)
        if name.casefold() in {one.casefold() for one in files}:
            raise UsageProblem(f"{file} holds two files of one name.", _BAD)
        files[name] = data
    return files


def _fresh(folder: Path, files: dict[str, bytes]) -> dict[str, bytes]:
    """The files that the folder lacks. Raises FolderProblem when one that it has differs."""
    fresh: dict[str, bytes] = {}
    there = {name for name, _ in _names(folder) if _is_ours(name)}
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
