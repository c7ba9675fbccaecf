"""Ways of asking, by the words and by each two words in a row that stand in them: the one place that counts them."""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from itertools import chain, pairwise

Terms = Sequence[str]

_START, _END = "^", "$"  # the edges of a line, as words: no typed word is one of them


def pairs(line: Terms) -> list[str]:
    """Each two words in a row, the edges of the line counted as words."""
    return list(map(" ".join, pairwise((_START, *line, _END))))


class Lines:
    """All listed lines, each of one group (a topic, or other things), looked up by word or pair.

    `groups`: for each group its lines as terms. Where a pair stands, and how often each group has a word or a pair, is
    found out when it is first asked for: a guide has far more of them than are ever typed.
    """

    def __init__(self, groups: Sequence[Sequence[Terms]]) -> None:
        self.lines: list[Terms] = list(chain.from_iterable(groups))
        self.sizes = [len(group) for group in groups]
        self.owner = [place for place, group in enumerate(groups) for _ in group]
        self._texts = [f" {_START} {' '.join(line)} {_END} " for line in self.lines]
        self._words: dict[str, list[int]] = {}
        holding = self._words.setdefault
        for place, line in enumerate(self.lines):
            for word in set(line):
                holding(word, []).append(place)
        for edge in (_START, _END):
            self._words[edge] = list(range(len(self.lines)))
        self._pairs: dict[str, list[int]] = {}
        self._counts: dict[str, Mapping[int, int]] = {}

    def words(self) -> Iterable[str]:
        """The single words."""
        return self._words

    def of(self, group: int) -> Sequence[Terms]:
        """The lines of one group."""
        first = sum(self.sizes[:group])
        return self.lines[first : first + self.sizes[group]]

    def holding(self, one: str) -> Sequence[int]:
        """The places of the lines that hold a word or a pair, in order."""
        first, _, second = one.partition(" ")
        if not second:
            return self._words.get(one, ())
        found = self._pairs.get(one)
        if found is None:
            fewer = min(self._words.get(first, []), self._words.get(second, []), key=len)
            row = f" {one} "
            found = self._pairs[one] = [place for place in fewer if row in self._texts[place]]
        return found

    def together(self, first: str, second: str) -> int:
        """In how many lines two words stand in a row; an empty one is the edge of a line."""
        return len(self.holding(f"{first or _START} {second or _END}"))

    def counts(self, one: str) -> Mapping[int, int]:
        """Group → in how many of its lines a word or a pair stands."""
        found = self._counts.get(one)
        if found is None:
            found = self._counts[one] = Counter(map(self.owner.__getitem__, self.holding(one)))
        return found

    def split(self, one: str, border: int) -> tuple[int, int]:
        """In how many lines a word or a pair stands, before the line at `border` and from there on."""
        held = self.holding(one)
        before = bisect_left(held, border)
        return before, len(held) - before
