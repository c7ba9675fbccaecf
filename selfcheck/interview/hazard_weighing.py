"""A whole line is weighed: each of its concepts and words, and each two that stand near each other, speak for danger or
against it. It finds what no rule knows, and stays what a rule takes for danger by mistake.

How much each counts is learned from lines whose meaning is known: `python -m tests.benchmarks.hazard_weights` writes
`selfcheck/loading/hazard_weights.tsv` anew from `tests/interview/hazard_lines.toml`. The method is a logistic
regression on the terms of a line, the rarer the heavier (tf-idf), as textbooks of information retrieval give it.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from math import sqrt

from selfcheck.interview.hazard_sentences import Sentence

#: what the terms of a line are; each group counts alike, however many terms it has
GROUPS = ("concepts", "words")
#: concepts farther apart, fillers left out, are not taken together (our own choice)
_REACH = 5
#: a sentence with more concepts than this is weighed only so far
_MOST = 400
#: hazards less likely than the likeliest by this much, in natural logarithms, are not named, nor more than so many
_CLOSE = 2.0
_KINDS = 3

Terms = dict[str, set[str]]


def terms(sentences: Iterable[Sentence]) -> Terms:
    """The terms of a line by group: `a` and `a+b` for concepts, `a` and `a b` for words, `^` and `$` for its ends."""
    concepts: set[str] = set()
    words = ["^"]
    for sentence in sentences:
        places = sorted((start, end, concept) for concept, spans in sentence.found.items() for start, end in spans)
        starts = [start for start, _, _ in places[:_MOST]]
        concepts.update(sentence.found)
        for at, (_, end, concept) in enumerate(places[:_MOST]):
            for start, _, other in places[at + 1 : bisect_right(starts, end + 3 * _REACH)]:
                if start >= end and sentence.rank[start] - sentence.rank[end - 1] <= _REACH:
                    concepts.add(f"{concept}+{other}")
        words += [*sentence.words, "||"]
    words[-1] = "$"
    pairs = (f"{word} {other}" for word, other in pairwise(words))
    return {"concepts": concepts, "words": {*words, *pairs}}


@dataclass(frozen=True, slots=True)
class Weighed:
    """A line and what its terms say, in natural logarithms of odds.

    `danger`: that it tells of any. `life`: that it is one to life, if any.
    """

    found: Terms
    danger: float
    life: float

    def likely(self, among: Iterable[str]) -> list[str]:
        """Those of the hazards that the line speaks for, the likeliest first; at most three."""
        tables = _tables()
        fits = {hazard: tables.hazards[hazard] for hazard in among}
        for group in GROUPS:
            for term in self.found[group]:
                for hazard, points in tables.kinds.get(f"{group} {term}", {}).items():
                    if hazard in fits:
                        fits[hazard] += points
        best = max(fits.values())
        close = [hazard for hazard in fits if fits[hazard] > best - _CLOSE]
        return sorted(close, key=lambda hazard: -fits[hazard])[:_KINDS]


def weigh(sentences: Iterable[Sentence]) -> Weighed:
    """How much sentences, taken together, speak for danger."""
    found = terms(sentences)
    tables = _tables()
    danger, life = tables.bases
    for group, counts in tables.terms.items():
        known = [counts[term] for term in found[group] if term in counts]
        length = sqrt(sum(rarity * rarity for rarity, _, _ in known)) or 1
        danger += sum(rarity * points for rarity, points, _ in known) / length
        life += sum(rarity * points for rarity, _, points in known) / length
    return Weighed(found, danger, life)


@dataclass(frozen=True, slots=True)
class _Tables:
    """`bases`: of danger and of one to life. `terms`: by group, term → how rare it is, and what it says of both.

    `hazards`: how common each is. `kinds`: group and term → hazard → what it says.
    """

    bases: tuple[float, float]
    terms: dict[str, dict[str, tuple[float, float, float]]]
    hazards: dict[str, float]
    kinds: dict[str, dict[str, float]]


@cache
def _tables() -> _Tables:
    # against the stream: the door to hazards takes text only, so the tables on disk are asked for when first needed
    from selfcheck.loading.hazard_weights import hazard_weights

    bases = (0.0, 0.0)
    found: dict[str, dict[str, tuple[float, float, float]]] = {group: {} for group in GROUPS}
    hazards: dict[str, float] = {}
    by_kind: dict[str, dict[str, float]] = {}
    for line in hazard_weights().splitlines():
        what, term, *figures = line.split("\t")
        if what in found:
            rarity, danger, life = map(int, figures)
            found[what][term] = rarity / 100, danger / 100, life / 100
        elif what == "bases":
            bases = int(term) / 100, int(figures[0]) / 100
        elif what == "hazard":
            hazards[term] = int(figures[0]) / 100
        else:
            by_kind[term] = {hazard: int(points) / 100 for hazard, points in (one.split("=") for one in figures)}
    return _Tables(bases, found, hazards, by_kind)
