"""Words from content files that know where they stand, so that a fault in them is told with its place."""

from __future__ import annotations

from collections.abc import Mapping
from string import Formatter
from typing import Any

from selfcheck.errors import ContentProblem

_MEND = "Mend that line and start again."


class Phrase(str):
    """A text with `{name}` places, and the file, table and key that it was read from."""

    file: str
    ident: str
    key: str

    def __new__(cls, text: str, file: str = "", ident: str = "", key: str = "") -> Phrase:
        made = super().__new__(cls, text)
        made.file, made.ident, made.key = file, ident, key
        return made

    def __str__(self) -> str:
        return self  # stays a phrase, so that its place is not lost on the way

    def format(self, *args: object, **values: object) -> str:
        """The text with its places filled. Raises ContentProblem for a place that nothing fills."""
        return filled(self, values)

    def format_map(self, values: Mapping[str, object]) -> str:  # type: ignore[override]
        """The same for values that are held together."""
        return filled(self, values)


class WordTable(dict[str, Any]):
    """A table of a content file. Words that are missing are a fault of that file."""

    def __init__(self, rows: Mapping[str, Any], file: str, ident: str) -> None:
        super().__init__(rows)
        self.file, self.ident = file, ident

    def __missing__(self, key: str) -> Any:
        mend = "Add that line and start again."
        raise ContentProblem(self.file, self.ident, key, "these words are missing.", mend)


def filled(text: str, values: Mapping[str, object]) -> str:
    """A text with its `{name}` places filled. Raises ContentProblem for a place that nothing fills, or a lone brace."""
    if "{" not in text and "}" not in text:
        return text
    pieces = []
    try:
        for before, name, form, conversion in Formatter().parse(text):
            pieces.append(before)
            if name is None:
                continue
            if name not in values or form or conversion:
                raise _fault(text, f"no such place {{{name}}}.")
            pieces.append(str(values[name]))
    except ValueError:
        raise _fault(text, "a { or } stands alone in it.") from None
    return "".join(pieces)


def placed(tables: Mapping[str, Any], file: str) -> WordTable:
    """The tables of a content file, whose words know where they stand. `file`: how errors name it."""
    rows = {name: _placed(value, file, name, "") for name, value in tables.items()}
    return WordTable(rows, file, "")


def _placed(value: Any, file: str, ident: str, key: str) -> Any:
    if isinstance(value, str):
        return Phrase(value, file, ident, key) if "{" in value or "}" in value else value
    if isinstance(value, list):
        return [_placed(one, file, ident, key) for one in value]
    if isinstance(value, Mapping):
        below = f"{key}." if key else ""
        rows = {name: _placed(one, file, ident, f"{below}{name}") for name, one in value.items()}
        return WordTable(rows, file, f"{ident} · {key}" if key else ident)
    return value


def _fault(text: str, what: str) -> ContentProblem:
    if isinstance(text, Phrase):
        return ContentProblem(text.file, text.ident, text.key, what, _MEND)
    return ContentProblem("words", text[:40], "", what, _MEND)
