"""The few words of the first screen, read by the standard library alone so that it can be painted at once."""

from __future__ import annotations

from typing import Any

from selfcheck.content_words import placed
from selfcheck.errors import ContentProblem
from selfcheck.loading.place import Place


def home(place: Place, language: str = "en") -> dict[str, Any]:
    """The tables of `words/home.toml` as they stand; checked only so far that they are tables."""
    return words(place, "home", language)


def words(place: Place, name: str, language: str = "en") -> dict[str, Any]:
    """The tables of one words file as they stand; checked only so far that they are tables."""
    import tomllib

    relative = f"{language}/words/{name}.toml"
    try:
        tables = tomllib.loads(place.text(relative))
    except tomllib.TOMLDecodeError as error:
        raise ContentProblem(place.shown(relative), "", "", f"the file breaks off: {error}.") from None
    return placed({name: table for name, table in tables.items() if isinstance(table, dict)}, place.shown(relative))
