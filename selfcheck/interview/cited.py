"""A correction that cites the number it takes back: "the 4 was wrong, it was 14", "14, not 4"."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import NamedTuple

from selfcheck.interview.answers import Answer
from selfcheck.interview.script import Interface
from selfcheck.interview.typed_line import after_opening, any_of, normal

_NUMBER = re.compile(r"\d+(?:[.,]\d+)?(?:\s+\d+/\d+|\s*[¼½¾⅛⅜⅝⅞])?")


class Cited(NamedTuple):
    """`among`: the questions that were answered with the number taken back; `new`: the words of the new value."""

    among: list[str]
    new: str


def cited(interface: Interface, given: Mapping[str, Answer], able: Iterable[str], text: str) -> Cited | None:
    """The number taken back and the new one, of a line with just these two; None when it tells of no such thing.

    `given`: the answers, and `able`: those that may be mended.
    """
    plain = normal(text)
    numbers = list(_NUMBER.finditer(plain))
    if len(numbers) != 2:
        return None
    first, second = numbers
    denied = [one for one in numbers if _ends_with(plain[: one.start()], interface.listen.get("not_that", ()))]
    old, new = (second, first) if denied == [second] else (first, second)
    marks = (*interface.listen.get("really", ()), *interface.listen.get("takes_back", ()))
    if not denied and not after_opening(interface, "change", text) and not _holds(plain, marks):
        return None
    among = [ident for ident in able if _numbers_in(given[ident].said) == [_same(old[0])]]
    return Cited(among, _words_of_the_new(interface, plain, old, new)) if among else None


def _words_of_the_new(interface: Interface, plain: str, old: re.Match[str], new: re.Match[str]) -> str:
    words = plain[new.start() : old.start() if old.start() > new.start() else len(plain)]
    ends = any_of(interface.listen.get("not_that", ()))
    return re.split(rf"[,;]|\b{ends}\b", words)[0].strip()


def _ends_with(before: str, words: Iterable[str]) -> bool:
    bare = re.sub(r"\W*(?:\bthe)?\W*$", "", before)
    return any(re.search(rf"(?:^|\W){re.escape(word)}$", bare) for word in words)


def _holds(plain: str, words: Iterable[str]) -> bool:
    return any(re.search(rf"(?:^|\W){re.escape(word)}(?:$|\W)", plain) for word in words)


def _numbers_in(said: str) -> list[str]:
    return [_same(one) for one in _NUMBER.findall(normal(said))]


def _same(number: str) -> str:
    """One form of a number for comparing: single spaces, a point."""
    return " ".join(number.replace(",", ".").split())
