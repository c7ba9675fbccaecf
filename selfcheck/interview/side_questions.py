"""Questions asked back in the middle of a conversation: the best topic of the guide, or an honest nothing.

The topic that fits best is given only when there is enough evidence that the line is about it: a clear lead before the
next topic and before lines about other things, and few words that no topic knows. After a word of danger only a topic
that keeps people from harm may answer, or one that lists the very words. The guide itself is content; nothing here
knows what it is about.
"""

from __future__ import annotations

import gc
import math
from collections.abc import Iterator, Sequence, Set
from contextlib import contextmanager
from dataclasses import dataclass
from functools import lru_cache

from selfcheck.interview.guide_index import Heard, Index, Match
from selfcheck.interview.guide_lines import Lines, Terms
from selfcheck.interview.guide_scope import Scope
from selfcheck.interview.guide_words import Vocabulary
from selfcheck.interview.nodes import STRICT
from selfcheck.interview.showing import at_start

_NEARLY_LISTED = 0.92  # likeness from which a line counts as one that a topic lists
_LISTED = 0.98  # the same after a word of danger: its words must be those that the topic lists
_AKIN = 0.5  # the same after a word of danger that is mostly harmless, for a topic that lists that word
_FAR_AHEAD = 3.0  # lead that such a topic must have before each one that keeps people from harm
_ALIKE = 0.7  # likeness from which a close second casts no doubt on the best
_ENOUGH = 3.3  # evidence from which a line is answered
_PERHAPS = 1.4  # evidence from which what it may have asked for is offered
_TOO_CLOSE = 1.0  # lead under which a topic is not given before one that keeps people from harm
_CLOSE = 2.2  # lead under which one that keeps people from harm is given where it is as like the line as the best
_CLEAR = 2.0  # lead from which a topic is surely the one that was asked for


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

    `same`: groups of words, or phrases, that mean the same; the first stands for all. `danger`: words and short phrases
    after which only a safety topic may answer. `mild`: those of them that are mostly harmless ("kid"): a topic that
    lists them too may answer when it is far ahead. `ignore`: words that say nothing; `shape`: words that tell what kind
    of question it is; `everyday`: words of other worlds; `common`: plain words that are never taken for a slip (each a
    list in one text, parted by spaces). `elsewhere`: groups of ways of asking about other things, one on each line.
    """

    same: tuple[tuple[str, ...], ...] = ()
    danger: tuple[str, ...] = ()
    mild: tuple[str, ...] = ()
    ignore: str = ""
    shape: str = ""
    everyday: str = ""
    common: str = ""
    elsewhere: tuple[str, ...] = ()

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

    @property
    def question(self) -> str:
        """The question it answers, as it is shown to a person."""
        return at_start(f"{self.asked.rstrip('?')}?")


def lines_in(text: str) -> tuple[str, ...]:
    """The lines of a text that lists one thing on each, without empty ones."""
    return tuple(filter(None, map(str.strip, text.splitlines())))


@contextmanager
def _nothing_dropped() -> Iterator[None]:
    """No look for dropped things meanwhile: a guide is many small things that all stay, and the look takes long."""
    watched = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if watched:
            gc.enable()


def _holds(line: Terms, phrase: str) -> bool:
    return f" {phrase} " in f" {' '.join(line)} "


def _all_in(line: Terms, phrases: Set[str]) -> bool:
    return all(_holds(line, phrase) for phrase in phrases)


class Guide:
    """All topics, ready to be asked. `titles`: source id → what is shown for it."""

    @_nothing_dropped()
    def __init__(self, topics: Sequence[Topic], listening: Listening, titles: dict[str, str] | None = None) -> None:
        self._titles = titles or {}
        self._topics = tuple(topics)
        everyday, common = listening.everyday.split(), listening.common.split()
        known = self._vocabulary = Vocabulary(listening.same, common, everyday)
        self._common = known.terms(common)
        ignored = known.terms(listening.ignore.split())
        shape = known.terms(listening.shape.split()) - ignored
        self._danger, self._mild = (
            {" ".join(map(known.term, known.words(phrase))) for phrase in phrases}
            for phrases in (listening.danger, listening.mild)
        )
        asked = [known.learn(topic.asked) for topic in topics]
        others = [known.learn(lines_in(group)) for group in listening.elsewhere]
        told = known.learn([topic.body for topic in topics])
        lines = self._lines = Lines([*asked, *others])
        self._index = Index(lines, told, ignored, shape)
        self._scope = Scope(lines, sum(map(len, asked)), known.terms(everyday), self._common, shape)

    def topics(self) -> tuple[Topic, ...]:
        """All topics in the order given."""
        return self._topics

    def answer(self, text: str) -> Reply | None:
        """The reply to a typed question; None when it is not in the guide."""
        inside, sureness = self._weighed(text)
        if sureness < _ENOUGH:
            return None
        best, harm = inside[0], self._harm_near(inside)
        if harm is not None and harm.likeness >= best.likeness:
            return self._reply(harm)
        if harm is not None and best.score - harm.score < _TOO_CLOSE:
            return None
        lead = best.score - inside[1].score if len(inside) > 1 else math.inf
        return self._reply(best, sure=lead >= _CLEAR or best.likeness >= _ALIKE)

    def perhaps(self, text: str, most: int = 3) -> list[Reply]:
        """What a line without a sure answer may have asked for, best first; none when it is hardly of the guide."""
        inside, sureness = self._weighed(text)
        return [self._reply(match) for match in inside[:most]] if sureness >= _PERHAPS else []

    def _weighed(self, text: str) -> tuple[list[Match], float]:
        """The topics that fit, best first, and how surely the line is of the guide."""
        heard, matches = self._matches(text)
        inside = [match for match in matches if not self._elsewhere(match)]
        outside = [match for match in matches if self._elsewhere(match)]
        return inside, self._scope.sureness(heard, inside, outside) if inside else -math.inf

    def nearest(self, text: str, most: int = 3) -> list[Reply]:
        """The topics that come closest, best first, whether close enough or not."""
        _, matches = self._matches(text)
        return [self._reply(match) for match in matches if not self._elsewhere(match)][:most]

    def _matches(self, text: str) -> tuple[Heard, list[Match]]:
        """The line as heard, and what fits it best; after danger only what may answer to it."""
        heard = self._index.hear(self._vocabulary.heard(text, self._lines.together), self._common)
        matches = self._index.rank(heard)
        told = {phrase for phrase in self._danger if _holds(heard.line, phrase)}
        if told:
            best = matches[0] if matches and self._answers_danger(heard, told, matches) else None
            matches = [match for match in matches if match is best or self._keeps_from_harm(match)]
        return heard, matches

    def _elsewhere(self, match: Match) -> bool:
        return match.topic >= len(self._topics)

    def _harm_near(self, matches: Sequence[Match]) -> Match | None:
        """The one of the next two topics that is about safety and comes close to the best, which is not."""
        best, *others = matches
        if best.likeness >= _NEARLY_LISTED or self._topics[best.topic].safety:
            return None
        close = (match for match in others[:2] if best.score - match.score < _CLOSE)
        return next((match for match in close if self._topics[match.topic].safety), None)

    def _keeps_from_harm(self, match: Match) -> bool:
        return self._elsewhere(match) or self._topics[match.topic].safety

    def _answers_danger(self, heard: Heard, told: Set[str], matches: Sequence[Match]) -> bool:
        """Whether the best topic answers to words of danger though it is about other things.

        It lists the very line; or all those words are mostly harmless, it lists each of them, and it is far ahead.
        """
        best, *others = matches
        if self._elsewhere(best):
            return False
        lines = self._lines.of(best.topic)
        if best.likeness >= _LISTED and any(
            heard.subjects.keys() <= set(line) and _all_in(line, told) for line in lines
        ):
            return True
        harm = max((match.score for match in others if self._keeps_from_harm(match)), default=-math.inf)
        return (
            told <= self._mild
            and best.likeness >= _AKIN
            and best.score - harm >= _FAR_AHEAD
            and all(any(_holds(line, phrase) for line in lines) for phrase in told)
        )

    def _reply(self, match: Match, *, sure: bool = False) -> Reply:
        topic = self._topics[match.topic]
        source = self._titles.get(topic.source, topic.source)
        return Reply(topic.id, topic.body, source, match.score, next(iter(topic.asked), ""), sure)


@lru_cache(maxsize=1)
def _default() -> Guide:
    # against the stream: this door takes text only, so it asks for the guide on disk when first called
    from selfcheck.loading.guide import default_guide

    return default_guide()


def answer(text: str) -> Reply | None:
    """The reply of the guide that comes with the program; None when the question is not in it."""
    return _default().answer(text)
