"""The lines of a journal: the first one, and one an answer."""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import Answer, Value
from selfcheck.storage.reading import MEND

FORMAT = "selfcheck-open"
VERSION = 1
#: what reading a damaged line may raise
UNREADABLE = (ValueError, KeyError, TypeError, RecursionError)


@dataclass(frozen=True)
class Header:
    """The first line. `sitting` is unlike any other: by it a check that was already written is known again."""

    flow: str
    sitting: str
    started: str  # ISO time
    content: str = ""  # version of the content the questions came from
    about: dict[str, Any] = field(default_factory=dict)  # what else is needed to go on: what it corrects


def head_line(header: Header) -> bytes:
    """The first line of a journal."""
    whole = {"format": FORMAT, "version": VERSION, **header.__dict__}
    return json.dumps(whole, ensure_ascii=True).encode() + b"\n"


def read_header(line: bytes, name: str, path: Path, answered: bool, problems: list[RecordProblem]) -> Header:
    """The first line. When it is damaged but answers follow, the name of the file says which conversation it was."""
    try:
        raw = json.loads(line)
        if raw["format"] != FORMAT:
            raise ValueError(raw["format"])
        version = int(raw["version"])
        parts = {key: str(raw[key]) for key in ("flow", "sitting", "started")}
        content, about = str(raw.get("content") or ""), dict(raw.get("about") or {})
    except UNREADABLE as error:
        damaged = RecordProblem(name, "its first line is not that of an open check.", MEND)
        if not answered:
            raise damaged from error
        problems.append(damaged)
        return Header(path.name.partition("-")[0], path.stem, "")
    if version > VERSION:
        raise RecordProblem(name, "it was written by a newer selfcheck.", "Go on with a newer selfcheck.")
    return Header(**parts, content=content, about=about)


def answer_line(answer: Answer) -> bytes:
    """One answer as one line, in ASCII alone, so that no odd sign in what was typed can break it."""
    value: Any = answer.value
    if isinstance(value, date):
        value = {"day": value.isoformat()}
    elif isinstance(value, tuple):
        value = list(value)
    whole = {
        "question": answer.question,
        "state": answer.state,
        "value": value,
        "said": answer.said,
        "error": answer.error,
        "at": answer.at,
        "observed": answer.observed,
    }
    return json.dumps(whole, ensure_ascii=True, allow_nan=False).encode() + b"\n"


def read_answer(line: bytes) -> Answer:
    """The answer on one line. Raises one of `UNREADABLE` when the line is damaged."""
    raw = json.loads(line)
    value = raw["value"]
    read: Value
    if isinstance(value, dict):
        read = date.fromisoformat(value["day"])
    elif isinstance(value, list):
        read = tuple(str(one) for one in value)
    elif value is None or (isinstance(value, str | int | float) and not isinstance(value, bool)):
        read = value
    else:
        raise ValueError(value)
    state = raw["state"]
    error = raw.get("error")
    if state not in ("value", "unknown", "skipped") or not isinstance(raw["question"], str):
        raise ValueError(state)
    if error is not None and not isinstance(error, int | float):
        raise ValueError(error)
    said, at, observed = (str(raw.get(key) or "") for key in ("said", "at", "observed"))
    return Answer(raw["question"], state, read, said, error, at, observed)


def readable(line: bytes) -> bool:
    """Whether a line holds a whole answer."""
    try:
        read_answer(line)
    except UNREADABLE:
        return False
    return True
