"""Words as a guide compares them: folded, shorn of endings, joined with their synonyms, mended when misspelt."""

from __future__ import annotations

import math
import re
import unicodedata
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from itertools import chain, zip_longest

Together = Callable[[str, str], int]

_WORD = re.compile(r"[a-z0-9]+")
_LONGEST_LINE = 400
_ENDINGS = (  # ending, how long the word must be, what stands in its place
    ("ies", 5, "y"), ("sses", 6, "ss"), ("ing", 6, ""), ("edly", 7, ""), ("ed", 5, ""), ("ly", 6, ""), ("es", 6, ""),
    ("s", 4, ""),
)  # fmt: skip
_MENDED = 0.85  # how surely a word that was one slip away is the one that was meant
_TWICE_MENDED = 0.7  # the same for two slips
_NUMBER = "#"  # the term of every number of one or two figures: which one it is says nothing of the subject
_SEEN_WITH = 6.0  # how much likelier a word is meant beside a word that the guide has it beside
_FIRST_RIGHT = 8.0  # how much likelier a word is meant that begins with the letter typed
_OFTENER = 1.5  # how much oftener a word must be used, to be meant where another known one was typed
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


def _never(_first: str, _second: str) -> int:
    return 0


class Vocabulary:
    """The words a guide knows, with their synonyms, and plain words that are never taken for a slip of the pen."""

    def __init__(self, same: Sequence[Sequence[str]], plain: Iterable[str], everyday: Iterable[str]) -> None:
        """`same`: groups of words that mean the same; `plain`: plain words; `everyday`: those of other worlds."""
        self._head = {stem(word): stem(group[0]) for group in same for word in group if " " not in word}
        self._phrases: dict[str, list[tuple[list[str], str]]] = {}  # first word → longer ones first
        for phrase, head in sorted(((word, group[0]) for group in same for word in group if " " in word), reverse=True):
            self._phrases.setdefault(phrase.split()[0], []).append((phrase.split(), head))
        self._everyday = set(everyday)
        self._plain = self._everyday.union(plain)
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

    def words(self, text: str) -> list[str]:
        """Plain words of a line; a phrase that means the same as one word is that word."""
        typed = words(text)
        if self._phrases.keys().isdisjoint(typed):
            return typed
        found: list[str] = []
        place = 0
        while place < len(typed):
            told = self._phrases.get(typed[place], ())
            length, word = next(
                ((len(phrase), head) for phrase, head in told if typed[place : place + len(phrase)] == phrase),
                (1, typed[place]),
            )
            found.append(word)
            place += length
        return found

    def learn(self, texts: Sequence[str]) -> list[list[str]]:
        """The terms of each text of the guide; from now on its words are known."""
        found = list(map(self.words, texts))
        self._seen.update(chain.from_iterable(found))
        self._known.update(map(self.term, set(chain.from_iterable(found))))
        return [list(map(self._terms.__getitem__, line)) for line in found]

    def heard(self, text: str, together: Together = _never) -> list[tuple[str, float]]:
        """Terms of a typed line, each with how surely it was meant: 1 as typed, less when mended, 0 when unknown.

        `together`: how often two terms stand in a row in the guide, an empty one for the edge of a line. It tells which
        word was meant by a slip.
        """
        typed = self.words(text)
        found: list[tuple[str, float]] = []
        for word, after in zip_longest(typed, typed[1:], fillvalue=""):
            found.extend(self._hear(word, found[-1][0] if found else "", self.term(after), together))
        return found

    def _hear(self, word: str, before: str, after: str, together: Together) -> list[tuple[str, float]]:
        """The term of a word between two others; two where the space between them was left out."""

        def fits(known: str) -> float:
            """How well a known word stands there: each neighbour that it is seen with makes it likelier."""
            term = self.term(known)
            return _SEEN_WITH ** ((together(before, term) > 0) + (together(term, after) > 0))

        term = self.term(word)
        if term in self._known:
            other = self._rather(word, before, after, together)
            return [(self.term(other), _TWICE_MENDED) if other else (term, 1.0)]
        if len(word) < 3 or word in self._plain or term in self._plain_terms or word.isdigit():
            return [(term, 0.0)]
        meant = self._meant(word, fits)
        if meant is None and len(word) >= _LONG:
            for place in range(3, len(word) - 2):
                if word[:place] in self._seen and word[place:] in self._seen:
                    return [(self.term(word[:place]), _MENDED), (self.term(word[place:]), _MENDED)]
            meant = self._twice_slipped(word)
            return [(self.term(meant), _TWICE_MENDED) if meant else (term, 0.0)]
        return [(self.term(meant), _MENDED) if meant else (term, 0.0)]

    def _meant(self, word: str, fits: Callable[[str], float]) -> str | None:
        """The known word that this one was most likely meant to be; empty when that is a plain one, None if none is."""
        candidates = self._one_slip_away(word)
        if not candidates:
            return None

        def likely(known: str) -> float:
            return (_FIRST_RIGHT if known[0] == word[0] else 1.0) * _likely(known, word, self._seen) * fits(known)

        best = max(sorted(candidates), key=likely)
        return best if best in self._seen else ""

    def _rather(self, word: str, before: str, after: str, together: Together) -> str:
        """The word that a known one must be a slip of, as "son" in "how son do I"; else empty.

        The known one is seen with neither neighbour, and the other, one slip away and far oftener used, with both.
        """
        term = self.term(word)
        if len(word) < 3 or word in self._everyday or together(before, term) or together(term, after):
            return ""
        fit = [
            known
            for known in self._one_slip_away(word) & self._seen.keys()
            if self._seen[known] >= _OFTENER * self._seen[word]
            and together(before, self.term(known))
            and together(self.term(known), after)
        ]
        return max(sorted(fit), key=lambda known: _likely(known, word, self._seen), default="")

    def _one_slip_away(self, word: str) -> set[str]:
        if self._near is None:
            self._near = {}
            for known in {*self._seen, *self._plain}:
                if len(known) > 3:
                    for short in _shortened(known):
                        self._near.setdefault(short, []).append(known)
                elif len(known) == 3:  # of so short a word only two neighbours swapped
                    for swapped in (known[1] + known[0] + known[2], known[0] + known[2] + known[1]):
                        self._near.setdefault(swapped, []).append(known)
        return {known for short in _shortened(word) for known in self._near.get(short, ()) if near(word, known)}

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
