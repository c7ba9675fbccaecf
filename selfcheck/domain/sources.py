"""Where published figures come from, as data."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.domain.strict import STRICT, Seen


@dataclass(frozen=True, slots=True)
class Source:
    """One publication. `href` and `place_in_text` are empty, and `year` is absent, where they are not known."""

    id: str
    title: str
    seen: Seen
    publisher: str = ""
    year: int | None = None
    href: str = ""
    place_in_text: str = ""
    note: str = ""

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class SourceList:
    """The file `content/sources.toml`: one `[[sources]]` table for each publication."""

    sources: tuple[Source, ...]

    __pydantic_config__ = STRICT
