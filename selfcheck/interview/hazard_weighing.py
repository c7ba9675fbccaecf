"""A sentence that no rule knows is weighed: its concepts, and each two that stand near each other, speak for danger or
against it.

How much each counts is learned from lines whose meaning is known: `python -m tests.benchmarks.hazard_weights` writes
the tables anew from `tests/interview/hazard_lines.toml`. What is found so is only asked about; it makes nothing milder.
"""

from __future__ import annotations

from bisect import bisect_right
from functools import lru_cache
from itertools import islice

from selfcheck.interview.hazard_sentences import Sentence

#: concepts farther apart, fillers left out, are not taken together (our own choice)
_REACH = 5
#: a sentence with more concepts than this is weighed only so far
_MOST = 400
#: hazards less likely than the likeliest by this much are not named, nor more than so many (our own choice)
_CLOSE = 20
_KINDS = 3
#: stands for the second of two concepts where the first is taken alone, and for the first where nothing is told at all
ALONE = "="

Feature = tuple[str, str]


def features(sentence: Sentence) -> set[Feature]:
    """Each concept of a sentence with `ALONE`, and with each concept that stands within reach behind it."""
    places = sorted((start, end, concept) for concept, spans in sentence.found.items() for start, end in spans)[:_MOST]
    starts = [start for start, _, _ in places]
    found: set[Feature] = {(concept, ALONE) for _, _, concept in places}
    for at, (_, end, concept) in enumerate(places):
        for start, _, other in places[at + 1 : bisect_right(starts, end + 3 * _REACH)]:
            if start >= end and sentence.rank[start] - sentence.rank[end - 1] <= _REACH:
                found.add((concept, other))
    return found


def weight(sentence: Sentence) -> int:
    """How much a sentence speaks for danger, in tenths of the natural logarithm of the odds."""
    table = _for_danger()
    found = ((ALONE, ALONE), *features(sentence))
    return sum(table.get(concept, {}).get(other, 0) for concept, other in found)


def kinds(sentence: Sentence) -> list[str]:
    """The hazards that the concepts of a sentence speak for, the likeliest first; at most three."""
    table = _for_hazard()
    fits: dict[str, int] = {}
    for concept in (ALONE, *sentence.found):
        for hazard, points in table.get(concept, {}).items():
            fits[hazard] = fits.get(hazard, 0) + points
    best = max(fits.values())
    near = (hazard for hazard in sorted(fits, key=lambda hazard: -fits[hazard]) if fits[hazard] > best - _CLOSE)
    return list(islice(near, _KINDS))


def _read(table: str) -> dict[str, dict[str, int]]:
    read = {}
    for group in table.split(";"):
        concept, *listed = group.split()
        read[concept] = dict(zip(listed[::2], map(int, listed[1::2]), strict=True))
    return read


@lru_cache(maxsize=1)
def _for_danger() -> dict[str, dict[str, int]]:
    from selfcheck.interview.hazard_weights import FOR_DANGER

    return _read(FOR_DANGER)


@lru_cache(maxsize=1)
def _for_hazard() -> dict[str, dict[str, int]]:
    from selfcheck.interview.hazard_weights import FOR_HAZARD

    return _read(FOR_HAZARD)
