"""Content files → models, with one error that names file, id and key. Nothing heavy is imported before it is used."""

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
from selfcheck.loading.place import Place, content_place

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


def check_all(place: Place) -> None:
    """Load everything there is and check that it fits together. Raises ContentProblem."""
    from selfcheck.loading.cross_checks import check_all as check

    check(place)
