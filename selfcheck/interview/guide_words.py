"""Words as a guide compares them: folded, shorn of endings, joined with their synonyms, mended when misspelt."""

from __future__ import annotations

import math
import re
import unicodedata
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence

_WORD = re.compile(r"[a-z0-9]+")
_LONGEST_LINE = 400
_ENDINGS = (  # ending, how long the word must be, what stands in its place
    ("ies", 5, "y"), ("sses", 6, "ss"), ("ing", 6, ""), ("edly", 7, ""), ("ed", 5, ""), ("ly", 6, ""), ("es", 6, ""),
    ("s", 4, ""),
)  # fmt: skip
_MENDED = 0.85  # how surely a word that was one slip away is the one that was meant
_TWICE_MENDED = 0.7  # the same for two slips
_NUMBER = "#"  # the term of every number of one or two figures: which one it is says nothing of the subject
_LONG = 6  # letters from which two slips in a word, or a space left out, are looked for


def words(text: str) -> list[str]:
    """Plain lower-case words of a line, accents and apostrophes dropped; at most the first 400 characters count."""
    flat = text[:_LONGEST_LINE].casefold()
    if not flat.isascii():
        flat = "".join(ch for ch in unicodedata.normalize("NFKD", flat) if not unicodedata.combining(ch))
    return _WORD.findall(flat.replace("'", "").replace("’", ""))


def stem(word: str) -> str:
    """The word without its commonest English endings; short words stay whole."""
    for ending, shortest, instead in _ENDINGS:
        if word.endswith(ending) and len(word) >= shortest and not word.endswith(("ss", "us", "is")):
            word = word[: len(word) - len(ending)] + instead
            break
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "lesz":
        word = word[:-1]
    return word[:-1] if len(word) > 4 and word.endswith("e") else word


def _shortened(word: str) -> Iterator[str]:
    """The word itself, and the word with each one letter left out."""
    yield word
    for place in range(len(word)):
        yield word[:place] + word[place + 1 :]


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
    """The words a guide knows, with their synonyms, and plain words that are never taken for a slip of the pen."""

    def __init__(self, same: Sequence[Sequence[str]], plain: Iterable[str]) -> None:
        self._head = {stem(word): stem(group[0]) for group in same for word in group if " " not in word}
        self._plain = set(plain)
        self._plain_terms = {stem(word) for word in self._plain}
        self._terms: dict[str, str] = {}  # word as written → its term
        self._seen: Counter[str] = Counter()  # words of the guide, with how often they stand in it
        self._known: set[str] = set()
        self._near: dict[str, list[str]] | None = None  # shortened word → words; made at the first unknown word

    def term(self, word: str) -> str:
        """Stem of a word, under the head of its synonyms; small numbers are all one."""
        found = self._terms.get(word)
        if found is None:
            short = _NUMBER if word.isdigit() and len(word) < 3 else stem(word)
            found = self._terms[word] = self._head.get(short, short)
        return found

    def terms(self, group: Iterable[str]) -> set[str]:
        """The terms of single words."""
        return {self.term(word) for word in group}

    def learn(self, text: str) -> list[str]:
        """The terms of a text of the guide; from now on its words are known."""
        found = words(text)
        self._seen.update(found)
        terms = [self.term(word) for word in found]
        self._known.update(terms)
        return terms

    def heard(self, text: str) -> list[tuple[str, float]]:
        """Terms of a typed line, each with how surely it was meant: 1 as typed, less when mended, 0 when unknown."""
        return [term for word in words(text) for term in self._hear(word)]

    def _hear(self, word: str) -> list[tuple[str, float]]:
        """The term of a word; of two where the space between them was left out."""
        term = self.term(word)
        if term in self._known:
            return [(term, 1.0)]
        if len(word) < 3 or word in self._plain or term in self._plain_terms or word.isdigit():
            return [(term, 0.0)]
        meant = self._meant(word)
        if meant is None and len(word) >= _LONG:
            for place in range(3, len(word) - 2):
                if word[:place] in self._seen and word[place:] in self._seen:
                    return [(self.term(word[:place]), _MENDED), (self.term(word[place:]), _MENDED)]
            meant = self._twice_slipped(word)
            return [(self.term(meant), _TWICE_MENDED) if meant else (term, 0.0)]
        return [(self.term(meant), _MENDED) if meant else (term, 0.0)]

    def _meant(self, word: str) -> str | None:
        """The known word that this one was most likely meant to be; empty when that is a plain one, None if none is."""
        if self._near is None:
            self._near = {}
            for known in {*self._seen, *self._plain}:
                if len(known) > 3:
                    for short in _shortened(known):
                        self._near.setdefault(short, []).append(known)
                elif len(known) == 3:  # of so short a word only two neighbours swapped
                    for swapped in (known[1] + known[0] + known[2], known[0] + known[2] + known[1]):
                        self._near.setdefault(swapped, []).append(known)
        candidates = {known for short in _shortened(word) for known in self._near.get(short, ()) if near(word, known)}
        if not candidates:
            return None
        best = max(sorted(candidates), key=lambda known: (known[0] == word[0], _likely(known, word, self._seen)))
        return best if best in self._seen else ""

    def _twice_slipped(self, word: str) -> str:
        """The one word of the guide that a long word is two slips from, the first letter being right; else empty."""
        found = [
            known
            for known in self._seen
            if known[0] == word[0]
            and abs(len(known) - len(word)) <= 2
            and len(known) >= _LONG
            and any(near(one, two) for one in _shortened(word) for two in _shortened(known))
        ]
        terms = {self.term(known) for known in found}
        return max(sorted(found), key=lambda known: self._seen[known]) if len(terms) == 1 else ""


def _likely(known: str, word: str, seen: Mapping[str, int]) -> float:
    """How likely a slip this is: swapped and left-out letters are commoner than others; words often used likelier."""
    kind = 1.0 if sorted(known) == sorted(word) or len(known) > len(word) or _doubled(known, word) else 0.5
    return kind * math.sqrt(1 + seen.get(known, 0))


def _doubled(known: str, word: str) -> bool:
    return len(word) == len(known) + 1 and any(
        word[:place] + word[place + 1 :] == known for place in range(1, len(word)) if word[place] == word[place - 1]
    )
