"""Which topic of a guide a line is about: all ways of asking a topic at once, and the single way that comes closest.

Two views are added up. One asks how much likelier each word is in a topic than in the guide as a whole; the other how
like the line is to one listed way of asking. Two words in a row count as a word of their own, so "how big" is told from
"how heavy". The weights were found by trial on the tuned half of the question lists in the tests.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

_PAIR = 0.2  # weight of two words in a row, against a word that carries a subject
_SHAPE = 0.65  # weight of a word that only tells the kind of question
_TOLD = 0.2  # a word in the answer counts as this many ways of asking
_SMOOTH = 0.2  # ways of asking that every topic is lent, spread over all words as the guide uses them
_LIKENESS = 4.0  # one whole point of likeness against one point of log-likelihood
_SECOND = 3.0  # the same for the second likest way of asking
_LENGTH = 0.6  # how strongly a long line is held back
_UNKNOWN_COMMON = 0.3  # weight of an unknown word of plain English, against one of another world


@dataclass(frozen=True, slots=True)
class Match:
    """How well a topic (by its place) fits a line: `score` ranks; `likeness` and `cover` (0 to 1) tell how surely."""

    topic: int
    score: float
    likeness: float
    cover: float


@dataclass(frozen=True, slots=True)
class Heard:
    """A line as the index takes it: known features with weights, and unknown words with how much they speak against."""

    known: dict[str, float]
    unknown: dict[str, float]

    def subjects(self) -> list[str]:
        """The single known words."""
        return [feature for feature in self.known if " " not in feature]


class Index:
    """Topics by the words of their ways of asking and of their answers."""

    def __init__(
        self,
        asked: Sequence[Sequence[Sequence[str]]],
        told: Sequence[Iterable[str]],
        ignored: Iterable[str],
        shape: Iterable[str],
    ) -> None:
        """`asked`: for each topic its ways of asking as terms; `told`: the terms of each answer."""
        self._ignored, self._shape = frozenset(ignored), frozenset(shape)
        counts: dict[str, dict[int, float]] = {}
        lines: list[dict[str, float]] = []
        self._owner: list[int] = []
        for topic, ways in enumerate(asked):
            for way in ways:
                features = self._features((term, 1.0) for term in way)
                lines.append(features)
                self._owner.append(topic)
                for feature in features:
                    row = counts.setdefault(feature, {})
                    row[topic] = row.get(topic, 0.0) + 1.0
        self._rare = {feature: math.log(1 + max(2, len(asked)) / (0.5 + len(row))) for feature, row in counts.items()}
        for topic, terms in enumerate(told):
            for term in set(terms) - self._ignored - self._shape:
                row = counts.setdefault(term, {})
                row[topic] = row.get(topic, 0.0) + _TOLD
        self._strange = math.log(1 + max(2, len(asked)) / 1.5)
        self._learn_topics(counts, [len(ways) for ways in asked])
        self._learn_lines(lines)

    def _learn_topics(self, counts: dict[str, dict[int, float]], sizes: list[int]) -> None:
        self._count = len(sizes)
        self._floor = [math.log(_SMOOTH / (size + _SMOOTH)) for size in sizes]
        self._gain: dict[str, dict[int, float]] = {}
        ways = max(1, sum(sizes))
        for feature, row in counts.items():
            share = ways / (sum(row.values()) * _SMOOTH)
            self._gain[feature] = {topic: math.log1p(count * share) for topic, count in row.items()}
            self._rare.setdefault(feature, self._strange)

    def _learn_lines(self, lines: list[dict[str, float]]) -> None:
        rare = self._rare
        held = self._lines = {feature: list[tuple[int, float]]() for feature in rare}
        for place, features in enumerate(lines):
            weights = [weight * rare[feature] for feature, weight in features.items()]
            norm = math.hypot(*weights) or 1.0
            for feature, weight in zip(features, weights, strict=True):
                held[feature].append((place, weight / norm))

    def _features(self, terms: Iterable[tuple[str, float]]) -> dict[str, float]:
        """Single words and two in a row, with their weights; words that carry nothing are left out first."""
        found: dict[str, float] = {}
        before = ""
        for term, sure in terms:
            if term in self._ignored:
                continue
            found[term] = max(found.get(term, 0.0), sure * (_SHAPE if term in self._shape else 1.0))
            if before:
                found[f"{before} {term}"] = sure * _PAIR
            before = term
        return found

    def hear(self, terms: Sequence[tuple[str, float]], common: Iterable[str]) -> Heard:
        """Splits a line's terms into known features and unknown words; `common`: plain words that weigh less."""
        features = self._features((term, sure or 1.0) for term, sure in terms)
        known = {feature: weight for feature, weight in features.items() if feature in self._gain}
        unknown = {
            feature: (_UNKNOWN_COMMON if feature in common else 1.0)
            for feature in features
            if feature not in known and " " not in feature
        }
        return Heard(known, unknown)

    def rank(self, heard: Heard, beside: Sequence[float]) -> list[Match]:
        """The topics that fit at all, best first; none when no word is known."""
        known = heard.known
        if not heard.subjects():
            return []
        likest, second = self._likest(heard)
        total = sum(known.values())
        gains = [0.0] * self._count
        for feature, weight in known.items():
            for topic, gain in self._gain[feature].items():
                gains[topic] += weight * gain
        shrink = max(1.0, total) ** -_LENGTH
        scored = []
        for topic, likeness in enumerate(likest):
            if likeness > 0:
                score = shrink * (gains[topic] + total * self._floor[topic])
                scored.append((score + _LIKENESS * likeness + _SECOND * second[topic] + beside[topic], -topic))
        return [
            Match(-minus, score, likest[-minus], self._cover(heard, -minus))
            for score, minus in sorted(scored, reverse=True)
        ]

    def _likest(self, heard: Heard) -> tuple[list[float], list[float]]:
        """For each topic the likeness of its likest way of asking, and of the next."""
        weights = {feature: weight * self._rare[feature] for feature, weight in heard.known.items()}
        strange = sum((weight * self._strange) ** 2 for weight in heard.unknown.values())
        norm = math.sqrt(sum(weight * weight for weight in weights.values()) + strange)
        shared: dict[int, float] = {}
        for feature, weight in weights.items():
            part = weight / norm
            for place, own in self._lines.get(feature, ()):
                shared[place] = shared.get(place, 0.0) + part * own
        first, second = [0.0] * self._count, [0.0] * self._count
        for place, likeness in shared.items():
            topic = self._owner[place]
            if likeness > first[topic]:
                first[topic], second[topic] = likeness, first[topic]
            elif likeness > second[topic]:
                second[topic] = likeness
        return first, second

    def _cover(self, heard: Heard, topic: int) -> float:
        """The share of a line's weight that a topic explains."""
        subjects = {term: heard.known[term] * self._rare[term] for term in heard.subjects()}
        whole = sum(subjects.values()) + sum(weight * self._strange for weight in heard.unknown.values())
        return sum(weight for term, weight in subjects.items() if topic in self._gain[term]) / whole
