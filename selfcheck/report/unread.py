"""The line above whatever is made from a record of which a part could not be read."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from selfcheck.errors import RecordProblem
from selfcheck.text import clean

#: More files than this are only counted; `examine` names them all. Our choice.
MOST_NAMED = 4


def unread_line(problems: Sequence[RecordProblem], words: Mapping[str, Any]) -> str:
    """Names the files that had no say; empty when there are none. `words`: the tables of `unread`."""
    files = list(dict.fromkeys(clean(one.file, 80) for one in problems if not one.used))
    if not files:
        return ""
    said = words["unread"]
    named, more = ", ".join(files[:MOST_NAMED]), len(files) - MOST_NAMED
    return str(said["line"].format(files=said["more"].format(files=named, count=more) if more > 0 else named))
