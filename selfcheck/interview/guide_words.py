"""Words as a guide compares them: folded, shorn of endings, joined with their synonyms, mended when misspelt."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence

_WORD = re.compile(r"[a-z0-9]+")
_LONGEST_LINE = 400


def words(text: str) -> list[str]:
    """Plain lower-case words of a line, accents and apostrophes dropped; at most the first 400 characters count."""
    flat = unicodedata.normalize("NFKD", text[:_LONGEST_LINE].casefold())
    flat = "".join(ch for ch in flat if not unicodedata.combining(ch)).replace("'", "").replace("’", "")
    return _WORD.findall(flat)


def stem(word: str) -> str:
    """The word without its commonest English endings; short words stay whole."""
    for ending, shortest, instead in (
        ("ies", 5, "y"), ("sses", 6, "ss"), ("ing", 6, ""), ("edly", 7, ""), ("ed", 5, ""), ("ly", 6, ""), ("es", 6, ""), ("s", 4, ""),
    ):  # fmt: skip
        if word.endswith(ending) and len(word) >= shortest and not word.endswith(("ss", "us", "is")):
            word = word[: len(word) - len(ending)] + instead
            break
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "lesz":
        word = word[:-1]
    return word[:-1] if len(word) > 4 and word.endswith("e") else word


def near(a: str, b: str) -> bool:
    """One slip apart: a letter more, less, other, or two neighbours swapped."""
    if a == b:
        return True
    if abs(len(a) - len(b)) > 1:
        return False
    start = 0
    while start < min(len(a), len(b)) and a[start] == b[start]:
        start += 1
    rest_a, rest_b = a[start:], b[start:]
    return (
        rest_a[1:] == rest_b[1:]
        or rest_a[1:] == rest_b
        or rest_a == rest_b[1:]
        or (rest_a[:2] == rest_b[:2][::-1] and rest_a[2:] == rest_b[2:])
    )


class Vocabulary:
    """The words a guide knows, with their synonyms, and everyday words that are never taken for a slip."""

    def __init__(self, same: Sequence[Sequence[str]], everyday: Iterable[str]) -> None:
        self._head = {stem(word): stem(group[0]) for group in same for word in group}
        self._everyday = {stem(word) for word in everyday}
        self._known: set[str] = set()
        self._by_length: dict[int, list[str]] = {}

    def learn(self, terms: Iterable[str]) -> None:
        """Makes these terms known."""
        for term in terms:
            if term not in self._known:
                self._known.add(term)
                self._by_length.setdefault(len(term), []).append(term)

    def terms(self, text: str) -> list[str]:
        """Stems of a text with synonyms under one head; nothing is mended."""
        return [self._head.get(term, term) for term in map(stem, words(text))]

    def heard(self, text: str) -> list[tuple[str, float]]:
        """Terms of a typed line, each with how surely it was meant: 1 as typed, less when mended, 0 when unknown."""
        return [self._mend(term) for term in self.terms(text)]

    def _mend(self, term: str) -> tuple[str, float]:
        if term in self._known:
            return term, 1.0
        if term in self._everyday or len(term) < 4 or term.isdigit():
            return term, 0.0
        candidates = [
            known
            for length in (len(term), len(term) + 1, len(term) - 1)
            for known in self._by_length.get(length, ())
            if len(known) > 3 and near(term, known)
        ]
        candidates += [head for alias, head in self._head.items() if len(alias) > 3 and near(term, alias)]
        if not candidates:
            return term, 0.0
        first = [known for known in candidates if known[0] == term[0]]
        return (first or candidates)[0], 0.85
