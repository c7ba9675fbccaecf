"""A sentence of a typed line as words in which concepts have been found, and the rules that combine them."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cached_property

from selfcheck.interview.hazard_concepts import LEXICON
from selfcheck.interview.hazard_lexicon import FILLERS
from selfcheck.text import words

Span = tuple[int, int]
LIVING = frozenset(("child", "pet", "adult", "self"))
_NOUNS = ("child", "pet", "adult", "self", "lid", "ground", "thing", "filth", "fixture", "it", "water")
_PREPOSITIONS = words("of in from at on near by with to over around into under above through about beside")
_NO_NAMES = words("what who which that where there all none nothing everything anything and or but")
#: "a couple of kids", "part of the lid": the noun after "of" is the one that is told of
_PARTS = words("couple pair bunch group one some lot part half all both most two three few piece corner side")
_JOINTS = frozenset(("and", "then", "y"))
_DETERMINERS = words("the my our his her their your a an this that")
#: sentences of a line that are read one by one; the rest is read as one (our own choice)
_ONE_BY_ONE = 16


class Sentence:
    """The words of a sentence, where its concepts stand, and how far they are apart without counting fillers.

    `later`: what follows it in its line.
    """

    def __init__(self, text: str, later: str = "") -> None:
        self.text = text
        self.later = later
        self.words = text.split()
        self.rank: list[int] = []
        core: list[int] = []
        for index, word in enumerate(self.words):
            self.rank.append(len(core))
            if word not in FILLERS:
                core.append(index)
        self.found: dict[str, list[Span]] = {}
        self._seen: set[tuple[str, Span]] = set()
        self._begins: dict[int, int] = {}  # where a noun of several words begins, by its last place
        kept = [self.words[index] for index in core]
        for place in range(len(kept)):
            for concept, length in LEXICON.at(kept, place):
                self._add(concept, (core[place], core[place + length - 1] + 1))
        for place, word in enumerate(self.words):
            if word in FILLERS or any(other in FILLERS for other in self.words[place + 1 : place + 4]):
                for concept, length in LEXICON.at(self.words, place):
                    self._add(concept, (place, place + length))
        self.bars = [index for index, word in enumerate(self.words) if word in ("|", "||", "??")]
        self.rank.append(len(core))
        self._find_filth()
        self._find_in_place()

    def _add(self, concept: str, span: Span) -> None:
        if (concept, span) not in self._seen:
            self._seen.add((concept, span))
            self.found.setdefault(concept, []).append(span)

    def _find_filth(self) -> None:
        """Water, or what flows like it, that is called foul: "grey stinking water"."""
        foul = {end: start for start, end in reversed(self.found.get("foul", ()))}
        for start, end in self.found.get("liquid", ()):
            begins = start
            while begins in foul:
                begins = foul[begins]
            if begins < start:
                self._add("filth", (begins, end))

    def _find_in_place(self) -> None:
        """Somebody who *is* in or down somewhere: `in_place`, and `in_deep` when it is "in there" or "down there"."""
        be = {place for start, end in self.found.get("be", ()) for place in range(start, end)}
        living = {end: concept for concept in LIVING for _, end in self.found.get(concept, ())}
        for name, concept in (("in_place", "inside"), ("in_deep", "deep"), ("in_place", "from_inside")):
            for start, end in self.found.get(concept, []):
                place = start
                while place > 0 and place not in living and (place - 1 in be or self.words[place - 1] in FILLERS):
                    place -= 1
                told = place < start and self.words[place] in ("is", "s", "has")
                if place > 0 and place not in living and place < start and self._may_be_name(place - 1):
                    place -= 1  # the name in "uncle Ray is in", "our dog Max is in"
                    if told and (
                        place == 0 or self.words[place - 1] in ("|", "and") or self.words[place - 1] in _DETERMINERS
                    ):
                        living.setdefault(place, "adult")
                who = living.get(place, "")
                if who:
                    self._add(f"{name}_self" if who == "self" else name, (start, end))

    def _may_be_name(self, place: int) -> bool:
        word = self.words[place]
        return word not in LEXICON.words and word not in _NO_NAMES and word.isalpha()

    @cached_property
    def nouns(self) -> dict[int, str]:
        """What stands at each place that holds a noun: `living`, `lid`, `ground`, `thing`, `filth`, … or `it`."""
        nouns: dict[int, str] = {}
        for concept in reversed(_NOUNS):
            for start, end in self.found.get(concept, ()):
                nouns[end - 1] = "living" if concept in LIVING else concept
                self._begins[end - 1] = min(start, self._begins.get(end - 1, start))
        return nouns

    def clause_of(self, place: int) -> Span:
        """First and last place of the clause around a place."""
        at = bisect_left(self.bars, place)
        start = self.bars[at - 1] + 1 if at else 0
        return start, self.bars[at] if at < len(self.bars) else len(self.words)

    def governed(self, place: int) -> bool:
        """Whether a preposition governs the noun at this place."""
        before = self._begins.get(place, place) - 1
        while before >= 0 and (self.words[before] in _DETERMINERS or self.words[before] in FILLERS):
            before -= 1
        if before > 0 and self.words[before] == "of" and self.words[before - 1] in _PARTS:
            return False
        return before >= 0 and self.words[before] in _PREPOSITIONS

    def subject(self, head: int) -> str:
        """What the words at `head` are told of: the kind of the noun before it; `unknown` for a noun that stands in no
        list, as in "the landlord fell in"; `name` for a lone
        word; `none` when there is no noun.
        """
        start, _ = self.clause_of(head)
        places = [place for place in self.nouns if start <= place < head]
        free = sorted(place for place in places if not self.governed(place))
        if not free:
            named = any(
                word in _DETERMINERS
                and self.words[place + 1] not in LEXICON.words
                and self.words[place + 1] not in FILLERS
                for place, word in enumerate(self.words[start : max(start, head - 1)], start)
            )
            if named:
                return "unknown"
            if places:
                return self.nouns[max(places)]
            core = [word for word in self.words[start:head] if word not in FILLERS]
            return "name" if len(core) == 1 and self._may_be_name(start) and start == head - 1 else "none"
        places = free
        if head > 0 and self.words[head - 1] in _JOINTS:
            joints = [place for place in range(start, head - 2) if self.words[place] in _JOINTS]
            since = [place for place in places if not joints or place > joints[-1]]
            return self.nouns[(since or places)[0]]
        return self.nouns[places[-1]]

    def near(self, head: Span, concepts: tuple[str, ...], way: str, most: int) -> Iterator[Span]:
        """Where one of the concepts stands near the head, in the same clause."""
        low, high = self.clause_of(head[0])
        if way == "=":
            low, high, most = 0, len(self.words), len(self.words)
        for concept in concepts:
            if concept == "end" and self.rank[high] - self.rank[head[1] - 1] <= most:
                yield high, high
            if concept == "start" and self.rank[head[0]] - self.rank[low] < most:
                yield low, low
            for start, end in self.found.get(concept, ()):
                if start < low or end > high:
                    continue
                after = start >= head[1] and self.rank[start] - self.rank[head[1] - 1] <= most
                before = end <= head[0] and self.rank[head[0]] - self.rank[end - 1] <= most
                if (after and way != "<") or (before and way != ">"):
                    yield start, end


def sentences_in(line: str) -> list[Sentence]:
    """The sentences of a line that is as `hazard_words.normal` gives it."""
    found: list[Sentence] = []
    later = line
    for part in line.split("||", _ONE_BY_ONE):
        later = later[len(part) :]
        if part.strip():
            found.append(Sentence(part, later))
        later = later.removeprefix("||")
    return found


@dataclass(frozen=True, slots=True)
class _Slot:
    way: str
    most: int
    concepts: tuple[str, ...]
    refused: bool


@dataclass(frozen=True, slots=True)
class Match:
    """Where a rule has matched: the head, and the end of the last concept after it."""

    head: Span
    slots: tuple[Span, ...]


@dataclass(frozen=True, slots=True)
class Rule:
    """One way in which concepts make a danger.

    `concepts`: the head first, as `fall`, then others as `>3:tank` (within three words after it), `<3:` (before it),
    `~3:` (either) or `=0:` (anywhere in the sentence); `start` and `end` are those of the clause. `/` parts
    alternatives, a `!` before a slot refuses it. `who`: kinds of subject that are taken; any when empty.
    `bare`: told without a verb, so that a question may hold it. `sure`: need not be confirmed first. `asked`: only a
    question or a "what if" is about it.
    """

    hazard: str
    concepts: str
    who: str = ""
    sure: bool = True
    bare: bool = False
    asked: bool = False
    heads: tuple[str, ...] = field(init=False)
    slots: tuple[_Slot, ...] = field(init=False)
    kinds: frozenset[str] = field(init=False)

    def __post_init__(self) -> None:
        head, *rest = self.concepts.split()
        slots = []
        for part in rest:
            refused = part.startswith("!")
            place, names = part.lstrip("!").split(":")
            slots.append(_Slot(place[0], int(place[1:]), tuple(names.split("/")), refused))
        object.__setattr__(self, "heads", tuple(head.split("/")))
        object.__setattr__(self, "slots", tuple(slots))
        object.__setattr__(self, "kinds", frozenset(self.who.split()))

    def matches(self, sentence: Sentence) -> Iterator[Match]:
        """Where the rule matches in a sentence."""
        for concept in self.heads:
            for head in sentence.found.get(concept, ()):
                spans: list[Span] = []
                for slot in self.slots:
                    found = next(sentence.near(head, slot.concepts, slot.way, slot.most), None)
                    if (found is None) is not slot.refused:
                        break
                    if found is not None:
                        spans.append(found)
                else:
                    if not self.kinds or sentence.subject(head[0]) in self.kinds:
                        yield Match(head, tuple(spans))
