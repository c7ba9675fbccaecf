"""The one way in which text reaches the screen: made harmless, and never read as markup."""

from __future__ import annotations

from functools import lru_cache

from textual.content import Content

from selfcheck.text import clean

_HELD = "\u00a0%"
_CAP = 20_000  # longer than any message; a bound for text that comes from files


@lru_cache(maxsize=8192)
def shown(text: str) -> str:
    """One line of text as it may be painted: no control, bidi or invisible character, no line break."""
    if text.isascii() and text.isprintable():
        return text
    return clean(text, _CAP).replace("\n", " ").replace("\t", " ")


@lru_cache(maxsize=4096)
def wrapped(text: str, width: int) -> tuple[str, ...]:
    """Text in lines of at most `width` cells, broken at spaces where it can be, but never ahead of a percent sign."""
    lines: list[str] = []
    for paragraph in clean(text, _CAP).split("\n"):
        whole = shown(paragraph).replace(" %", _HELD)
        lines.extend(line.plain.replace(_HELD, " %").rstrip() for line in Content(whole).wrap(max(2, width)))
    return tuple(lines)
