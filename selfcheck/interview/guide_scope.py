"""Whether a line is about what a guide tells of, or about other things.

The words of the line, and each two in a row, are weighed by how much likelier they are in the guide's own lines than in
its lines about other things. That and how well the line fits the topics on either side is summed up.
"""

from __future__ import annotations

import math
from collections.abc import Sequence, Set

from selfcheck.interview.guide_index import Heard, Match
from selfcheck.interview.guide_lines import Lines, pairs

_LOOKED_AT = 10  # topics that count on either side
_STRANGE = -1.0  # log-odds of a word that stands in no line
_EVERYDAY = 3  # a word of other worlds counts as so many lines about them
_LEAST = -4.0  # a score under which a match says nothing
_MOST = 12.0  # lead of one side from which more says nothing
_SHARED = 4  # subjects shared with the best topic, from which more say nothing
#: how much each kind of evidence tells, in the order of `Scope._evidence`, fitted on the tuned half of the tests'
#: questions, on some 600 further ones, and on the guide's own lines, each held out in turn
_TELLS = (0.22, -0.17, -0.55, 0.09, 0.15, -0.24, -0.68, -0.36, -0.41, -0.96, 0.24, 0.46, 0.76, 0.36, -0.25)


class Scope:
    """How much likelier words, and each two in a row, are in the guide than elsewhere: above 0 they speak for it."""

    def __init__(self, lines: Lines, border: int, everyday: Set[str], common: Set[str], shape: Set[str]) -> None:
        """`border`: the place of the first line about other things."""
        self._lines, self._border = lines, border
        self._everyday, self._common, self._shape = everyday, common, shape
        self._shift = math.log((len(lines.lines) - border or 1) / (border or 1))

    def sureness(self, heard: Heard, inside: Sequence[Match], outside: Sequence[Match]) -> float:
        """How surely a line is of the guide. `inside`, `outside`: the topics that fit, best first; one is inside."""
        evidence = self._evidence(heard, inside, outside)
        return sum(tells * amount for tells, amount in zip(_TELLS, evidence, strict=True))

    def _evidence(self, heard: Heard, inside: Sequence[Match], outside: Sequence[Match]) -> tuple[float, ...]:
        best = inside[0]
        words = {term: self._odds(term, _EVERYDAY * (term in self._everyday)) for term in heard.line}
        told = {term: odds for term, odds in words.items() if odds is not None}
        subjects = [term for term in heard.subjects if term not in self._shape]
        odds = [told.get(term, _STRANGE) for term in subjects]
        foreign = [term for term in heard.unknown if term in self._everyday]
        plain = [term for term in heard.unknown if term in self._common and term not in self._everyday]
        shared = sum(best.topic in self._lines.counts(term) for term in subjects)
        return (
            best.score,
            max(outside[0].score, _LEAST) if outside else _LEAST,
            max((match.likeness for match in outside[:_LOOKED_AT]), default=0.0),
            min(_together(inside) - _together(outside), _MOST),
            _mean(odds),
            max(odds, default=0.0),
            len(foreign),
            len(heard.unknown) - len(foreign) - len(plain),
            len(plain),
            len(subjects) <= 1 and len(heard.unknown) > 0,
            min(best.score - inside[1].score, 4.0) if len(inside) > 1 else 4.0,
            _mean(list(told.values())),
            _mean([row for pair in set(pairs(heard.line)) if (row := self._odds(pair)) is not None]),
            min(shared, _SHARED),
            shared <= 1 and len(subjects) + len(heard.unknown) >= 2,  # one word in common, and others besides
        )

    def _odds(self, one: str, more: int = 0) -> float | None:
        """Log-odds of a word or a pair; `more`: lines elsewhere that it counts as besides. None for an unknown one."""
        here, there = self._lines.split(one, self._border)
        if here + there + more == 0:
            return None
        return math.log((here + 0.5) / (there + more + 0.5)) + self._shift


def _mean(odds: Sequence[float]) -> float:
    """A sum that grows with the root of how many there are: words of one line do not speak for themselves alone."""
    return sum(odds) / math.sqrt(len(odds) or 1)


def _together(matches: Sequence[Match]) -> float:
    """How well the best few fit, taken together, on the scale of one score."""
    return math.log(math.exp(_LEAST) + sum(math.exp(match.score) for match in matches[:_LOOKED_AT]))
