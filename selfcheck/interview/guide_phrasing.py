"""How like a line is to the phrasing of topics: to all of a topic's ways of asking at once, and to its few likest.

Here the small words count too: "do they" and "do I" ask different things. Two words in a row count as a word too.
The weights were found by trial, each way of asking held out in turn.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from itertools import chain, pairwise

_WHOLE = 10.0  # one whole point of likeness to a topic's middle, against one point of the index's score
_FEW = 10.0  # the same for the mean of the likest few ways of asking
_FEWEST = 5
_COMMON = 400  # lines from which a word is left out where single ways of asking are held against a line: to be quick


class Phrasing:
    """Topics by how their ways of asking are put."""

    def __init__(self, asked: Sequence[Sequence[Sequence[str]]]) -> None:
        """`asked`: for each topic its ways of asking as terms."""
        lines = [(topic, _runs(way)) for topic, ways in enumerate(asked) for way in ways]
        seen = Counter(chain.from_iterable(runs for _, runs in lines))
        most = 1 + math.log(1 + len(lines))
        by_count = {count: most - math.log(1 + count) for count in set(seen.values())}
        self._rare = {run: by_count[count] for run, count in seen.items()}
        self._count = len(asked)
        self._owner = [topic for topic, _ in lines]
        self._lines: dict[str, list[tuple[int, float]]] = {run: [] for run, count in seen.items() if count <= _COMMON}
        middles: list[dict[str, float]] = [{} for _ in asked]
        for place, (topic, runs) in enumerate(lines):
            rares = [self._rare[run] for run in runs]
            norm = math.hypot(*rares) or 1.0
            middle = middles[topic]
            for run, rare in zip(runs, rares, strict=True):
                weight = rare / norm
                held = self._lines.get(run)
                if held is not None:
                    held.append((place, weight))
                middle[run] = middle.get(run, 0.0) + weight
        self._middles: dict[str, list[tuple[int, float]]] = {run: [] for run in seen}
        for topic, middle in enumerate(middles):
            norm = math.hypot(*middle.values()) or 1.0
            for run, weight in middle.items():
                self._middles[run].append((topic, weight / norm))

    def scores(self, line: Sequence[str]) -> list[float]:
        """For each topic how well its phrasing fits a line of terms, on the scale of the index's score."""
        weights = {run: self._rare[run] for run in _runs(line) if run in self._rare}
        norm = math.hypot(*weights.values()) or 1.0
        whole = [0.0] * self._count
        shared: dict[int, float] = {}
        for run, rare in weights.items():
            weight = rare / norm
            for topic, own in self._middles[run]:
                whole[topic] += weight * own
            for place, own in self._lines.get(run, ()):
                shared[place] = shared.get(place, 0.0) + weight * own
        few: list[list[float]] = [[] for _ in whole]
        for place, likeness in shared.items():
            few[self._owner[place]].append(likeness)
        return [
            _WHOLE * middle + _FEW * sum(sorted(likest, reverse=True)[:_FEWEST]) / _FEWEST
            for middle, likest in zip(whole, few, strict=True)
        ]


def _runs(line: Sequence[str]) -> list[str]:
    """Single words and each two in a row, each once."""
    return list(dict.fromkeys(chain(line, map(" ".join, pairwise(line)))))
