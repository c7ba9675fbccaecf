"""Questions asked back in the middle of a conversation: the best topic of the guide, or an honest nothing.

A line is compared with every way of asking that the topics list. Rare words count more than common ones. A topic is
given only when it explains most of what was typed and stands clearly before the next one; a word that no topic knows
speaks against all of them. The guide itself is content; nothing here knows what it is about.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from selfcheck.interview.guide_words import Vocabulary

#: shares of a line's weight, tuned on the ways of asking that the guide lists, each left out in turn
_ENOUGH_COVER = 0.62
_ENOUGH_LIKENESS = 0.40
_CLEAR_COVER = 0.40
_CLEAR_LIKENESS = 0.62
_TEXT_WEIGHT = 0.55  # a word that stands only in the answer, against one in a way of asking


@dataclass(frozen=True, slots=True)
class Topic:
    """One thing a person may ask: ways of asking it, and at most three sentences of answer. `source`: id of its source."""

    id: str
    asked: tuple[str, ...]
    body: str
    source: str = ""
    safety: bool = False

    __pydantic_config__ = {"extra": "forbid", "str_strip_whitespace": True}


@dataclass(frozen=True, slots=True)
class Listening:
    """How the guide listens: groups of words that mean the same, words that say nothing, everyday words of other worlds."""

    same: tuple[tuple[str, ...], ...] = ()
    ignore: tuple[str, ...] = ()
    everyday: tuple[str, ...] = ()

    __pydantic_config__ = {"extra": "forbid"}


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer: topic id, text, and the title of the publication behind it or how it is known."""

    topic: str
    text: str
    source: str
    score: float = 0.0


class Guide:
    """All topics, ready to be asked. `titles`: source id → what is shown for it."""

    def __init__(self, topics: Sequence[Topic], listening: Listening, titles: dict[str, str] | None = None) -> None:
        self._titles = titles or {}
        self._topics = {topic.id: topic for topic in topics}
        self._vocabulary = Vocabulary(listening.same, listening.everyday)
        self._ignore = {term for word in listening.ignore for term in self._vocabulary.terms(word)}
        self._asked: list[tuple[str, dict[str, float]]] = []  # topic id, terms of one way of asking
        self._terms: dict[str, dict[str, float]] = {}  # topic id → its terms and how much each belongs to it
        spread: Counter[str] = Counter()
        for topic in topics:
            own: dict[str, float] = dict.fromkeys(self._told(topic.body), _TEXT_WEIGHT)
            for line in topic.asked:
                terms = dict.fromkeys(self._told(line), 1.0)
                own.update(terms)
                self._asked.append((topic.id, terms))
            self._terms[topic.id] = own
            spread.update({term for term, weight in own.items() if weight == 1.0})
            self._vocabulary.learn(own)
        count = max(len(topics), 2)
        self._weight = {term: math.log(1 + count / (1 + spread[term])) for own in self._terms.values() for term in own}
        self._foreign = math.log(1 + count / 2)
        self._norms = [math.sqrt(sum(self._weight[term] ** 2 for term in terms)) for _, terms in self._asked]
        self._places: dict[str, list[int]] = {}
        for place, (_, terms) in enumerate(self._asked):
            for term in terms:
                self._places.setdefault(term, []).append(place)

    def topics(self) -> tuple[Topic, ...]:
        """All topics in the order given."""
        return tuple(self._topics.values())

    def answer(self, text: str) -> Reply | None:
        """The reply to a typed question; None when it is not in the guide."""
        for reply, cover, likeness in self._ranked(text)[:1]:
            plainly = cover >= _ENOUGH_COVER and likeness >= _ENOUGH_LIKENESS
            closely = cover >= _CLEAR_COVER and likeness >= _CLEAR_LIKENESS
            if plainly or closely:
                return reply
        return None

    def nearest(self, text: str, most: int = 3) -> list[Reply]:
        """The topics that come closest, best first, whether close enough or not."""
        return [reply for reply, _, _ in self._ranked(text)[:most]]

    def _told(self, text: str) -> list[str]:
        return [term for term in self._vocabulary.terms(text) if term not in self._ignore]

    def _ranked(self, text: str) -> list[tuple[Reply, float, float]]:
        heard = {term: sure for term, sure in self._vocabulary.heard(text) if term not in self._ignore}
        if not heard:
            return []
        whole = {term: self._weight.get(term, self._foreign) for term in heard}
        length = math.sqrt(sum(weight**2 for weight in whole.values()))
        total = sum(whole.values())
        likeness: dict[str, float] = {}
        for place in {place for term, sure in heard.items() if sure for place in self._places.get(term, ())}:
            topic, terms = self._asked[place]
            shared = sum(sure * whole[term] ** 2 for term, sure in heard.items() if term in terms)
            likeness[topic] = max(likeness.get(topic, 0.0), shared / (length * self._norms[place]))
        ranked = []
        for topic, like in likeness.items():
            own = self._terms[topic]
            cover = sum(sure * own.get(term, 0.0) * whole[term] for term, sure in heard.items()) / total
            score = like + 0.5 * cover
            found = self._topics[topic]
            reply = Reply(topic, found.body, self._titles.get(found.source, found.source), score)
            ranked.append((reply, cover, like))
        return sorted(ranked, key=lambda row: (-row[0].score, row[0].topic))


@lru_cache(maxsize=1)
def _default() -> Guide:
    # the one import against the stream: this door takes text only, so it asks for the guide on disk when first called
    from selfcheck.loading.guide import default_guide

    return default_guide()


def answer(text: str) -> Reply | None:
    """The reply of the guide that comes with the program; None when the question is not in it."""
    return _default().answer(text)
