"""One file of a record → bytes of JSON that can be trusted to be JSON, or the reason why not.

The bytes come from people, editors and broken disks: size, kind of file, encoding, numbers that are none, keys given
twice and endless nesting are all looked at here.
"""

from __future__ import annotations

import json
import os
import stat
from typing import Any

from pydantic_core import from_json, to_json

from selfcheck.errors import RecordProblem

#: A file of the record is a few kilobytes; one beyond this is not one. Our choice.
MOST_BYTES = 2_000_000
MEND = "Mend it in a text editor, or put a copy from a backup in its place. The file was left as it is."


def read_bytes(path: str, name: str) -> bytes:
    """The bytes of a plain file; `name` is what it is called in messages.

    Raises RecordProblem for anything but a plain file of a sane size that may be read.
    """
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    except OSError as error:
        raise RecordProblem(name, f"it cannot be opened ({error.strerror}).", MEND) from error
    try:
        state = os.fstat(handle)
        if not stat.S_ISREG(state.st_mode):
            raise RecordProblem(name, "it is not a plain file.", "Take it out of the folder.")
        if state.st_size > MOST_BYTES:
            raise RecordProblem(name, f"it is larger than {MOST_BYTES // 1_000_000} MB.", "Take it out of the folder.")
        data = os.read(handle, state.st_size + 1)
        while len(data) < state.st_size:  # a read may be cut short by the system
            more = os.read(handle, state.st_size - len(data))
            if not more:
                break
            data += more
        return data
    except OSError as error:
        raise RecordProblem(name, f"it cannot be read ({error.strerror}).", MEND) from error
    finally:
        os.close(handle)


def as_utf8(data: bytes, name: str) -> bytes:
    """The same text in UTF-8 without a byte order mark. Raises RecordProblem when it is no text."""
    if not data.strip(b"\0 \t\r\n"):
        raise RecordProblem(name, "it is empty. The computer may have stopped while it was copied.", MEND)
    try:
        if data.startswith((b"\xff\xfe", b"\xfe\xff")):
            return data.decode("utf-16").encode()
        if data.startswith(b"\xef\xbb\xbf"):
            data = data[3:]
        data.decode()
    except UnicodeError as error:
        raise RecordProblem(name, "it is not text in UTF-8.", "Save it again as UTF-8 in a text editor.") from error
    if b"\0" in data:
        raise RecordProblem(name, f"it holds a zero byte at byte {data.index(0) + 1}.", MEND)
    return data


def sound(data: bytes) -> bool:
    """Whether this is JSON with no key given twice and no number that is none. Quick, for files that are well.

    A key given twice loses one of its colons when the text is taken in and written out again.
    """
    try:
        again = to_json(from_json(data, allow_inf_nan=False, cache_strings="keys"))
    except ValueError:
        return False
    return again.count(b":") == data.count(b":")


def thorough(data: bytes, name: str) -> dict[str, Any]:
    """The JSON object in the bytes, read slowly and strictly. Raises RecordProblem with the place of the fault."""

    def pairs(items: list[tuple[str, Any]]) -> dict[str, Any]:
        found = dict(items)
        if len(found) != len(items):
            keys = [key for key, _ in items]
            twice = next(key for key in keys if keys.count(key) > 1)
            raise RecordProblem(name, f'"{_short(twice)}" is given twice in one place.', "Take out the wrong one.")
        return found

    def no_number(word: str) -> float:
        raise RecordProblem(name, f"{word} stands where a number should be.", "Put the number there, or null.")

    try:
        found = json.loads(data, object_pairs_hook=pairs, parse_constant=no_number)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise RecordProblem(name, f"it breaks off or is not JSON at {where}.", MEND) from error
    except (RecursionError, ValueError) as error:
        raise RecordProblem(name, "it is nested too deep or holds a number too long to read.", MEND) from error
    if not isinstance(found, dict):
        raise RecordProblem(name, "it holds no record: the first sign should be {.", MEND)
    return found


def _short(text: str) -> str:
    return "".join(sign if sign.isprintable() else "?" for sign in text[:40])
