"""Which rule sets were made for the place where a household lives."""

from __future__ import annotations

import re
from collections.abc import Iterable

from selfcheck.domain.limits import RuleSet

#: A part of a jurisdiction in brackets says what kind of text it is, not where it holds.
_KIND = re.compile(r"\([^)]*\)")


def fitting(rule_sets: Iterable[RuleSet], region: str) -> tuple[RuleSet, ...]:
    """The rule sets whose place is named in `region`, the narrowest place first; empty when there is none.

    A place is a rule set's `places`, else its jurisdiction; what comes first there is the narrowest. Whole words count,
    whatever the case; a word of two capital letters, such as a postal abbreviation, counts only as it is written, or
    alone. This finds candidates by their names and says nothing of which one binds: that the local authority knows.
    """
    found: list[tuple[int, str, RuleSet]] = []
    for one in rule_sets:
        parts = [part.strip() for part in _KIND.sub("", one.jurisdiction).split(",") if part.strip()]
        named = [(0, place) for place in one.places] + list(enumerate(parts))
        levels = [level for level, place in named if place and _names(region, place)]
        if levels:
            width = len(parts) - min(levels)  # how many wider places lie around it
            found.append((-width, one.id, one))
    return tuple(one for _, _, one in sorted(found, key=lambda row: row[:2]))


def _names(region: str, place: str) -> bool:
    if len(place) == 2 and place.isupper():
        return (
            region.strip().casefold() == place.casefold() or re.search(rf"\b{re.escape(place)}\b", region) is not None
        )
    return re.search(rf"\b{re.escape(place)}\b", region, re.IGNORECASE) is not None
