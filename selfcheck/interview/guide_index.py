"""Which topic of a guide a line is about.

Three views are added up. How much likelier its words, and each two words in a row, are in a topic than in the guide as
a whole; how like the line is to the closest way of asking and to the closest few; and what the answer tells.
The small words count too: "do they" and "do I" ask different things. How much each view tells was fitted with listed
ways of asking held out.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass

from selfcheck.interview.guide_lines import Lines, Terms, pairs

_SHAPE = 0.65  # weight of a word that only tells the kind of question, against one that carries a subject
_SMOOTH_SUBJECT = 0.2  # ways of asking that every topic is lent, spread over all words as the guide uses them
_SMOOTH_PAIR = 0.5  # the same for two words in a row
_SMOOTH_SMALL = 1.5  # the same for words that carry nothing of their own
_LENGTH = 0.6  # how strongly a long line is held back
_PAIR = 0.47  # how much two words in a row tell, against a word that carries a subject
_PAIR_ABSENT = 0.3  # how much it tells that a pair is absent from a topic, against that it is there
_SMALL = 0.9  # how much a word tells that carries nothing of its own
_LIKEST = 4.7  # how much likeness to the closest way of asking tells
_FEW = 7.5  # the same for the mean of the closest few
_FEWEST = 5
_TOLD = 1.9  # how much the words of the answer tell
_UNKNOWN_COMMON = 0.3  # weight of an unknown word of plain English, against one of another world


@dataclass(frozen=True, slots=True)
class Match:
    """How well a topic (by its place) fits a line: `score` ranks; `likeness` (0 to 1) tells how surely."""

    topic: int
    score: float
    likeness: float


@dataclass(frozen=True, slots=True)
class Heard:
    """A line as the index takes it.

    `line`: its terms; `subjects`: the known words that carry something, with weights; `unknown`: words that no topic
    knows, with how much they speak against.
    """

    line: Terms
    subjects: dict[str, float]
    unknown: dict[str, float]


class Index:
    """Topics by the words of their ways of asking and of their answers."""

    def __init__(self, lines: Lines, told: Sequence[Iterable[str]], ignored: Set[str], shape: Set[str]) -> None:
        """`told`: the terms of each answer; `ignored`: words that carry nothing; `shape`: the kind of question."""
        self._lines, self._ignored, self._shape = lines, ignored, shape
        groups = max(2, len(lines.sizes))
        self._strange = math.log(1 + groups / 1.5)
        owner = lines.owner.__getitem__
        self._rare = {
            word: 0.0 if word in ignored else math.log(1 + groups / (0.5 + len(set(map(owner, lines.holding(word))))))
            for word in lines.words()
        }
        self._telling: dict[str, set[int]] = {}
        for topic, terms in enumerate(told):
            for term in terms:
                if term not in ignored and term not in shape:
                    self._telling.setdefault(term, set()).add(topic)
        for term in self._telling:
            self._rare.setdefault(term, self._strange)
        part = {word: rare * self._weight(word) for word, rare in self._rare.items()}
        self._lengths = [math.hypot(*map(part.__getitem__, set(line))) or 1.0 for line in lines.lines]
        self._part = part

    def _weight(self, word: str) -> float:
        return _SHAPE if word in self._shape else 1.0

    def hear(self, terms: Sequence[tuple[str, float]], common: Set[str]) -> Heard:
        """Splits a line's terms into known and unknown ones; `common`: plain words that weigh less when unknown."""
        subjects: dict[str, float] = {}
        unknown: dict[str, float] = {}
        for term, sure in terms:
            if term in self._ignored:
                continue
            if term in self._rare:
                subjects[term] = max(subjects.get(term, 0.0), (sure or 1.0) * self._weight(term))
            else:
                unknown[term] = _UNKNOWN_COMMON if term in common else 1.0
        return Heard([term for term, _ in terms], subjects, unknown)

    def rank(self, heard: Heard) -> list[Match]:
        """The topics that fit at all, best first; none when no word is known."""
        if not heard.subjects:
            return []
        subjects = self._gains(heard.subjects, _SMOOTH_SUBJECT, 1.0)
        both = self._gains(dict.fromkeys(pairs(heard.line), 1.0), _SMOOTH_PAIR, _PAIR_ABSENT)
        small = self._gains(dict.fromkeys(self._ignored & set(heard.line), 1.0), _SMOOTH_SMALL, 1.0)
        shrink = max(1.0, sum(heard.subjects.values())) ** -_LENGTH
        parts = self._parts(heard)
        scored = []
        for topic, likest in self._likest(parts).items():
            score = (
                shrink * (subjects[topic] + _PAIR * both[topic] + _SMALL * small[topic])
                + _LIKEST * likest[0]
                + _FEW * sum(likest[:_FEWEST]) / _FEWEST
                + _TOLD * sum(part for term, part in parts.items() if topic in self._telling.get(term, ()))
            )
            scored.append((score, -topic, likest[0]))
        return [Match(-minus, score, likeness) for score, minus, likeness in sorted(scored, reverse=True)]

    def _gains(self, found: Mapping[str, float], smooth: float, absent: float) -> list[float]:
        """For each topic how much likelier the known ones of some words or pairs are in it than in the guide."""
        gains = [0.0] * len(self._lines.sizes)
        total, ways = 0.0, len(self._lines.lines)
        for one, weight in found.items():
            counts = self._lines.counts(one)
            if not counts:
                continue
            total += weight
            share = ways / (len(self._lines.holding(one)) * smooth)
            for topic, count in counts.items():
                gains[topic] += weight * math.log1p(count * share)
        for topic, size in enumerate(self._lines.sizes):
            gains[topic] += absent * total * math.log(smooth / (size + smooth))
        return gains

    def _parts(self, heard: Heard) -> dict[str, float]:
        """How large a part of the line each known word is, as a vector of length 1 at most."""
        weights = {term: weight * self._rare[term] for term, weight in heard.subjects.items()}
        strange = [weight * self._strange for weight in heard.unknown.values()]
        norm = math.hypot(*weights.values(), *strange) or 1.0
        return {term: weight / norm for term, weight in weights.items()}

    def _likest(self, parts: Mapping[str, float]) -> dict[int, list[float]]:
        """Topic → likeness of its ways of asking that share a word with the line, likest first."""
        shared: dict[int, float] = {}
        for term, part in parts.items():
            own = part * self._part[term]
            for place in self._lines.holding(term):
                shared[place] = shared.get(place, 0.0) + own
        found: dict[int, list[float]] = {}
        for place, likeness in shared.items():
            found.setdefault(self._lines.owner[place], []).append(likeness / self._lengths[place])
        return {topic: sorted(likest, reverse=True) for topic, likest in found.items()}
