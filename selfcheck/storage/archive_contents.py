"""What lies in an archive of a record, looked at whole: where each name leads, how large it is and becomes."""

from __future__ import annotations

import io
import re
import stat
import struct
import zipfile
import zlib
from pathlib import Path

from selfcheck.errors import UsageProblem
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, MOST_FILES, OPEN, PUMP_OUTS
from selfcheck.storage.reading import MOST_BYTES
from selfcheck.storage.writing import EARLIER

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
_BAD = "Nothing was written. Ask for the archive once more, or unpack a copy by hand and look at it."


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
            ours = [entry for entry in entries if is_part(names[entry.filename])]
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


def is_part(name: str) -> bool:
    """Whether a name is one that a file of a record may have."""
    parts = name.split("/")
    if parts == [HOUSEHOLD]:
        return True
    if len(parts) != 2 or parts[0] not in PARTS or not _NAME.fullmatch(parts[1]):
        return False
    return parts[1].endswith(".json") or (parts[0] == OPEN and ".json" in parts[1])
