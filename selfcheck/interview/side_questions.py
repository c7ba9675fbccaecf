"""Questions asked back in the middle of a conversation: the best topic of the guide, or an honest nothing.

The topic that fits best is given only when there is enough evidence that the line is about it: a clear lead before the
next topic and before lines about other things, and few words that no topic knows. After a word of danger only a topic
that keeps people from harm may answer. The guide itself is content; nothing here knows what it is about.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from selfcheck.interview.guide_index import Heard, Index, Match
from selfcheck.interview.guide_words import Vocabulary, words
from selfcheck.interview.nodes import STRICT

_LOOKED_AT = 10  # topics that count on either side when a line is held to be of the guide or not
_NEARLY_LISTED = 0.92  # likeness from which a line counts as one that a topic lists
_ALIKE = 0.7  # likeness from which a close second casts no doubt on the best
#: how much each kind of evidence in `Guide._evidence` tells, fitted on the tuned half of the tests' questions and on
#: the guide's own lines, each held out in turn
_TELLS = (0.33, 0.15, -0.64, -0.8, 0.37, 1.84, -0.67, -0.75, -1.61, -2.4, -0.59, -0.93, -1.98, 0.16, 1.02)
_ENOUGH = 2.7  # evidence from which a line is answered
_PERHAPS = 1.2  # evidence from which what it may have asked for is offered
#: log-odds of a word that stands in no line of the guide; a word of other worlds counts as so many lines about them
_STRANGE, _EVERYDAY = -1.0, 3
_LEAST = -6.0  # a score under which a match says nothing
_TOO_CLOSE = 1.3  # lead under which a topic is not given before one that keeps people from harm


@dataclass(frozen=True, slots=True)
class Topic:
    """One thing a person may ask: ways of asking it, the plainest first, and at most three sentences of answer.

    `source`: id of its source. `safety`: the answer keeps people from harm, so a line with a word of danger may get it.
    """

    id: str
    asked: tuple[str, ...]
    body: str
    source: str = ""
    safety: bool = False

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Listening:
    """How the guide listens.

    `same`: groups of words that mean the same, the first stands for all. `danger`: words and short phrases after which
    only a safety topic may answer. `ignore`: words that say nothing; `shape`: words that tell what kind of question it
    is; `everyday`: words of other worlds; `common`: plain words that are never taken for a slip (each a list in one
    text, parted by spaces). `elsewhere`: groups of lines about other things.
    """

    same: tuple[tuple[str, ...], ...] = ()
    danger: tuple[str, ...] = ()
    ignore: str = ""
    shape: str = ""
    everyday: str = ""
    common: str = ""
    elsewhere: tuple[tuple[str, ...], ...] = ()

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer: topic id, text, and the title of the publication behind it or how it is known.

    `asked`: the question it answers, in the guide's own words. `sure`: no other topic comes close to it.
    """

    topic: str
    text: str
    source: str
    score: float = 0.0
    asked: str = ""
    sure: bool = True


class Guide:
    """All topics, ready to be asked. `titles`: source id → what is shown for it."""

    def __init__(self, topics: Sequence[Topic], listening: Listening, titles: dict[str, str] | None = None) -> None:
        self._titles = titles or {}
        self._topics = tuple(topics)
        everyday, common = listening.everyday.split(), listening.common.split()
        known = self._vocabulary = Vocabulary(listening.same, {*everyday, *common})
        self._everyday, self._common = known.terms(everyday), known.terms(common)
        ignored = known.terms(listening.ignore.split())
        self._shape = known.terms(listening.shape.split()) - ignored
        self._danger = [" ".join(map(known.term, words(phrase))) for phrase in listening.danger]
        asked = [[known.learn(line) for line in topic.asked] for topic in topics]
        here = Counter(term for ways in asked for way in ways for term in set(way))
        others = [[known.learn(line) for line in group] for group in listening.elsewhere]
        there = Counter(term for ways in others for way in ways for term in set(way))
        there.update(dict.fromkeys(self._everyday, _EVERYDAY))
        known_here, known_there = sum(map(len, asked)) or 1, sum(map(len, others)) or 1
        self._odds = {
            term: math.log((here[term] + 0.5) / known_here) - math.log((there[term] + 0.5) / known_there)
            for term in here.keys() | there.keys()
        }
        asked += others
        self._index = Index(asked, [known.learn(topic.body) for topic in topics], ignored, self._shape)

    def topics(self) -> tuple[Topic, ...]:
        """All topics in the order given."""
        return self._topics

    def answer(self, text: str) -> Reply | None:
        """The reply to a typed question; None when it is not in the guide."""
        inside, sureness = self._weighed(text)
        if sureness < _ENOUGH or self._harm_is_near(inside):
            return None
        lead = inside[0].score - inside[1].score if len(inside) > 1 else math.inf
        return self._reply(inside[0], sure=lead >= _TOO_CLOSE or inside[0].likeness >= _ALIKE)

    def perhaps(self, text: str, most: int = 3) -> list[Reply]:
        """What a line without a sure answer may have asked for, best first; none when it is hardly of the guide."""
        inside, sureness = self._weighed(text)
        return [self._reply(match) for match in inside[:most]] if sureness >= _PERHAPS else []

    def _weighed(self, text: str) -> tuple[list[Match], float]:
        """The topics that fit, best first, and how surely the line is of the guide."""
        heard, matches = self._matches(text)
        inside = [match for match in matches if not self._elsewhere(match)]
        outside = [match for match in matches if self._elsewhere(match)]
        if not inside:
            return [], -math.inf
        evidence = self._evidence(heard, inside, outside)
        return inside, sum(tells * amount for tells, amount in zip(_TELLS, evidence, strict=True))

    def nearest(self, text: str, most: int = 3) -> list[Reply]:
        """The topics that come closest, best first, whether close enough or not."""
        _, matches = self._matches(text)
        return [self._reply(match) for match in matches if not self._elsewhere(match)][:most]

    def _matches(self, text: str) -> tuple[Heard, list[Match]]:
        """The line as heard, and what fits it best; after a word of danger only what may answer to danger."""
        terms = self._vocabulary.heard(text)
        heard = self._index.hear(terms, self._common)
        matches = self._index.rank(heard)
        line = f" {' '.join(term for term, _ in terms)} "
        if any(f" {phrase} " in line for phrase in self._danger):
            matches = [match for match in matches if self._may_answer_danger(match)]
        return heard, matches

    def _elsewhere(self, match: Match) -> bool:
        return match.topic >= len(self._topics)

    def _harm_is_near(self, matches: Sequence[Match]) -> bool:
        """Whether the best topic is not about safety, but one of the next two is and can hardly be told from it."""
        best, *others = matches
        if best.likeness >= _NEARLY_LISTED or self._topics[best.topic].safety:
            return False
        return any(self._topics[m.topic].safety and best.score - m.score < _TOO_CLOSE for m in others[:2])

    def _may_answer_danger(self, match: Match) -> bool:
        listed = match.likeness >= _NEARLY_LISTED
        return listed or self._elsewhere(match) or self._topics[match.topic].safety

    def _evidence(self, heard: Heard, inside: Sequence[Match], outside: Sequence[Match]) -> tuple[float, ...]:
        """What speaks for and against a line being of the guide, in the order of `_TELLS`."""
        best = inside[0]
        subjects = [term for term in heard.subjects() if term not in self._shape]
        shapes = [self._odds[term] for term in heard.subjects() if term in self._shape and term in self._odds]
        odds = [self._odds.get(term, _STRANGE) for term in subjects]
        foreign = [term for term in heard.unknown if term in self._everyday]
        plain = [term for term in heard.unknown if term in self._common and term not in self._everyday]
        return (
            best.score,
            max(outside[0].score, _LEAST) if outside else _LEAST,
            best.likeness,
            max((match.likeness for match in outside[:_LOOKED_AT]), default=0.0),
            min(_together(inside) - _together(outside), 8.0),
            sum(odds) / math.sqrt(len(odds) or 1),
            max(odds, default=0.0),
            min(odds, default=0.0),
            best.cover,
            len(foreign),
            len(heard.unknown) - len(foreign) - len(plain),
            len(plain),
            len(subjects) <= 1 and len(heard.unknown) > 0,
            min(best.score - inside[1].score, 4.0) if len(inside) > 1 else 4.0,
            sum(shapes) / math.sqrt(len(shapes) or 1),
        )

    def _reply(self, match: Match, *, sure: bool = False) -> Reply:
        topic = self._topics[match.topic]
        source = self._titles.get(topic.source, topic.source)
        return Reply(topic.id, topic.body, source, match.score, next(iter(topic.asked), ""), sure)


def _together(matches: Sequence[Match]) -> float:
    """How well the best few fit, taken together, on the scale of one score."""
    return math.log(math.exp(_LEAST) + sum(math.exp(match.score) for match in matches[:_LOOKED_AT]))


@lru_cache(maxsize=1)
def _default() -> Guide:
    # the one import against the stream: this door takes text only, so it asks for the guide on disk when first called
    from selfcheck.loading.guide import default_guide

    return default_guide()


def answer(text: str) -> Reply | None:
    """The reply of the guide that comes with the program; None when the question is not in it."""
    return _default().answer(text)
