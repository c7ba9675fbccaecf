"""Whether a line is about what a guide tells of, or about other things.

The words of the line, and each two in a row, are weighed by how much likelier they are in the guide's own lines than in
its lines about other things. That and how well the line fits the topics on either side is summed up.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Sequence, Set
from itertools import chain, pairwise

from selfcheck.interview.guide_index import Heard, Match

_LOOKED_AT = 10  # topics that count on either side
_STRANGE = -1.0  # log-odds of a word that stands in no line
_EVERYDAY = 3  # a word of other worlds counts as so many lines about them
_LEAST = -4.0  # a score under which a match says nothing
_MOST = 12.0  # lead of one side from which more says nothing
#: how much each kind of evidence tells, in the order of `Scope._evidence`, fitted on the tuned half of the tests'
#: questions and on the guide's own lines, each held out in turn
_TELLS = (0.14, 0.04, -0.98, -1.21, 0.19, 0.68, -0.44, -0.55, 2.14, -0.22, -0.05, -0.28, -2.35, 0.14, 0.25, 0.53, 0.62)

Ways = Sequence[Sequence[str]]


class Scope:
    """Words and pairs of words with their log-odds: above 0 they speak for the guide."""

    def __init__(self, here: Ways, there: Ways, everyday: Set[str], common: Set[str], shape: Set[str]) -> None:
        """`here`, `there`: the guide's own lines and those about other things, as terms."""
        self._everyday, self._common, self._shape = everyday, common, shape
        foreign = dict.fromkeys(everyday, _EVERYDAY)
        self._words = _log_odds(map(set, here), map(set, there), foreign, len(here), len(there))
        self._pairs = _log_odds(map(_pairs, here), map(_pairs, there), {}, len(here), len(there))

    def sureness(self, line: Sequence[str], heard: Heard, inside: Sequence[Match], outside: Sequence[Match]) -> float:
        """How surely a line is of the guide. `inside`, `outside`: the topics that fit, best first; one is inside."""
        evidence = self._evidence(line, heard, inside, outside)
        return sum(tells * amount for tells, amount in zip(_TELLS, evidence, strict=True))

    def _evidence(
        self, line: Sequence[str], heard: Heard, inside: Sequence[Match], outside: Sequence[Match]
    ) -> tuple[float, ...]:
        best = inside[0]
        subjects = [term for term in heard.subjects() if term not in self._shape]
        odds = [self._words.get(term, _STRANGE) for term in subjects]
        foreign = [term for term in heard.unknown if term in self._everyday]
        plain = [term for term in heard.unknown if term in self._common and term not in self._everyday]
        return (
            best.score,
            max(outside[0].score, _LEAST) if outside else _LEAST,
            best.likeness,
            max((match.likeness for match in outside[:_LOOKED_AT]), default=0.0),
            min(_together(inside) - _together(outside), _MOST),
            _mean(odds),
            max(odds, default=0.0),
            min(odds, default=0.0),
            best.cover,
            len(foreign),
            len(heard.unknown) - len(foreign) - len(plain),
            len(plain),
            len(subjects) <= 1 and len(heard.unknown) > 0,
            min(best.score - inside[1].score, 4.0) if len(inside) > 1 else 4.0,
            _mean([self._words[term] for term in heard.subjects() if term in self._shape and term in self._words]),
            _mean([self._words[term] for term in set(line) if term in self._words]),
            _mean([self._pairs[pair] for pair in _pairs(line) if pair in self._pairs]),
        )


def _log_odds(
    here: Iterable[Set[str]], there: Iterable[Set[str]], foreign: dict[str, int], count_here: int, count_there: int
) -> dict[str, float]:
    inside, outside = Counter(chain.from_iterable(here)), Counter(chain.from_iterable(there))
    outside.update(foreign)
    known = inside.keys() | outside.keys()
    shift = math.log((count_there or 1) / (count_here or 1))
    return {one: math.log((inside[one] + 0.5) / (outside[one] + 0.5)) + shift for one in known}


def _pairs(line: Sequence[str]) -> set[str]:
    """Each two words in a row, the edges of the line counted as words."""
    return {f"{one} {next_one}" for one, next_one in pairwise(("", *line, ""))}


def _mean(odds: Sequence[float]) -> float:
    """A sum that grows with the root of how many there are: words of one line do not speak for themselves alone."""
    return sum(odds) / math.sqrt(len(odds) or 1)


def _together(matches: Sequence[Match]) -> float:
    """How well the best few fit, taken together, on the scale of one score."""
    return math.log(math.exp(_LEAST) + sum(math.exp(match.score) for match in matches[:_LOOKED_AT]))
