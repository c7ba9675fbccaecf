"""Where a concept of danger begins in a list of words, and the forms of its words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from selfcheck.interview.hazard_lexicon import CONCEPTS


def forms(entry: str) -> tuple[str, ...]:
    """An entry with each form of its word marked `~`: "slip~_in" is slip in, slips in, slipped in, slipping in.

    Forms that nobody would spell so do no harm.
    """
    head, mark, rest = entry.partition("~")
    if not mark:
        return (entry,)
    before, _, verb = head.rpartition("_")
    stems = {verb.removesuffix("e"), f"{verb}{verb[-1]}" if verb[-1] in "bdgklmnprtz" else verb}
    made = {verb, f"{verb}s", f"{verb}es", f"{verb}d" if verb[-1] == "e" else f"{verb}ed"}
    made |= {f"{stem}{ending}" for stem in stems for ending in ("ing", "ed")}
    if verb.endswith("y"):
        made |= {f"{verb[:-1]}ies", f"{verb[:-1]}ied"}
    start = f"{before}_" if before else ""
    return tuple(f"{start}{form}{rest}" for form in sorted(made))


class Lexicon:
    """Words and phrases with the concepts they stand for."""

    def __init__(self, concepts: Mapping[str, str]) -> None:
        self._single: dict[str, list[str]] = {}
        self._stems: dict[str, list[str]] = {}
        self._phrases: dict[tuple[str, str], list[tuple[tuple[str, ...], str]]] = {}
        spelled: set[str] = set()
        for concept, listed in concepts.items():
            for entry in (form for marked in listed.split() for form in forms(marked)):
                phrase = tuple(entry.split("_"))
                spelled.update(phrase)
                if len(phrase) > 1:
                    self._phrases.setdefault((phrase[0], phrase[1]), []).append((phrase[2:], concept))
                elif entry.endswith("*"):
                    self._stems.setdefault(entry[:-1], []).append(concept)
                else:
                    self._single.setdefault(entry, []).append(concept)
        #: every word of the lexicon that is written out
        self.words = frozenset(word for word in spelled if not word.endswith("*"))

    def of(self, word: str) -> tuple[str, ...]:
        """The concepts of a single word."""
        stems = (concept for end in range(3, len(word) + 1) for concept in self._stems.get(word[:end], ()))
        return (*self._single.get(word, ()), *stems)

    def at(self, words: list[str], place: int) -> Iterator[tuple[str, int]]:
        """The concepts that start at a place, each with the number of its words."""
        for concept in self.of(words[place]):
            yield concept, 1
        if place + 1 < len(words):
            for rest, concept in self._phrases.get((words[place], words[place + 1]), ()):
                if tuple(words[place + 2 : place + 2 + len(rest)]) == rest:
                    yield concept, 2 + len(rest)


LEXICON = Lexicon(CONCEPTS)
