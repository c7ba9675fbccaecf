"""Content files → models, with one error that names file, id and key. Each part is imported when it is asked for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.loading.place import Place, content_place

if TYPE_CHECKING:
    from selfcheck.loading.content import rules, signs, sources
    from selfcheck.loading.conversations import (
        cautions,
        flow_ids,
        glossary,
        interface,
        outcomes,
        script,
        section_words,
        texts,
    )

__all__ = [
    "Place",
    "cautions",
    "check_all",
    "content_place",
    "flow_ids",
    "glossary",
    "interface",
    "outcomes",
    "rules",
    "script",
    "section_words",
    "signs",
    "sources",
    "texts",
]

_CONTENT = {"rules", "signs", "sources"}


def __getattr__(name: str) -> object:
    """The first frame and the commands that ask nothing do without what they do not need."""
    if name not in __all__:
        raise AttributeError(name)
    if name in _CONTENT:
        from selfcheck.loading import content

        return getattr(content, name)
    from selfcheck.loading import conversations

    return getattr(conversations, name)


def check_all(place: Place) -> None:
    """Load everything there is and check that it fits together. Raises ContentProblem."""
    from selfcheck.loading.all_checks import check_all as check

    check(place)
