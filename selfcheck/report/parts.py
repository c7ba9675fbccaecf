"""A page one only reads: a headline and parts, the same in every face."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, NamedTuple

from selfcheck.content_words import filled
from selfcheck.domain.sources import Source
from selfcheck.errors import ContentProblem


class Part(NamedTuple):
    """A heading and what stands below it, one thing a line."""

    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PartedPage:
    """Plain text. `lead` stands right below the headline; `always` at the foot. `verdict`: the one it carries, if any.

    Parts without lines are left out. `drawn`: a picture as lines that keep their spaces; the parts say the same.
    """

    headline: str
    parts: tuple[Part, ...]
    lead: tuple[str, ...] = ()
    always: tuple[str, ...] = ()
    verdict: str = ""
    drawn: tuple[str, ...] = ()


class PageWords:
    """The words of one kind of page, from the tables of its file."""

    def __init__(self, file: str, tables: Mapping[str, Any]) -> None:
        self._file = file
        self._tables = tables

    def __call__(self, table: str, name: str, /, **values: str) -> str:
        """One phrase with its places filled in. ContentProblem when the file does not have it."""
        text = self._tables.get(table, {}).get(name)
        if not isinstance(text, str):
            raise ContentProblem(self._file, table, name, "these words are missing.", "Add that line and start again.")
        return filled(text, values)

    def source_line(self, source: Source) -> str:
        """A publication in one line, with how it was seen."""
        return self("title", "source", source=self.named(source))

    def named(self, source: Source) -> str:
        """A publication by its title, with how it was seen."""
        how = "" if source.seen == "none" else f" ({self('source_seen', source.seen)})"
        return f"{source.title}{how}"

    def of(self, table: str) -> Mapping[str, Any]:
        """A whole table; empty when there is none."""
        found = self._tables.get(table, {})
        return found if isinstance(found, Mapping) else {}


def part(title: str, lines: Sequence[str]) -> tuple[Part, ...]:
    """One part, or none when there is nothing to say in it."""
    kept = tuple(dict.fromkeys(line for line in lines if line))
    return (Part(title, kept),) if kept else ()
