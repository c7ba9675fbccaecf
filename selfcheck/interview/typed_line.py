"""A typed line by itself: how it is compared, its words and parts, and whether it commands or asks."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from selfcheck.interview.script import Interface

_EDGES = ' \t\n.,;:!?"“”«»()[]*'
_WORD = re.compile(r"[^\W_]+(?:['-][^\W_]+)*")
#: "May 3" and the year behind it
_DAY = re.compile(r"[a-z]\.?\s+(?:the\s+)?\d{1,2}(?:st|nd|rd|th)?$", re.IGNORECASE)
_YEAR = re.compile(r"(?:19|20)\d\d\b")


#: a line of more words is about something else too (our own choice)
_SHORT = 8


@lru_cache(maxsize=4096)
def normal(text: str) -> str:
    """A line for comparing: lower case, plain apostrophes, single spaces, no marks at its ends."""
    plain = text.casefold().replace("’", "'").replace("‘", "'").replace("`", "'")
    return " ".join(plain.strip(_EDGES).split()) or ("?" if "?" in text else "")


def words_in(text: str) -> list[str]:
    """The words of a normal text, in order."""
    return _WORD.findall(text)


def parts_of(interface: Interface, text: str) -> list[str]:
    """The parts of a line that may be answers of their own; "a foot and a half" and "May 3, 2021" stay whole."""
    rejoin = interface.listen.get("rejoin", ())
    pieces = _between(interface.listen.get("joins", (",", ";"))).split(text)
    parts: list[str] = []
    for place in range(0, len(pieces), 2):
        piece = pieces[place]
        of_a_date = parts and _YEAR.match(piece) and _DAY.search(parts[-1])
        if of_a_date or (parts and normal(piece).startswith(tuple(rejoin))):
            parts[-1] += pieces[place - 1] + piece
        elif piece.strip():
            parts.append(piece.strip())
    return parts


@lru_cache(maxsize=8)
def _between(joins: tuple[str, ...]) -> re.Pattern[str]:
    """Words stand between spaces; marks are followed by one, so that "1,25" and "1.5" stay whole."""
    forms = [rf"\s+{re.escape(join)}\s+" if join.isalnum() else rf"\s*{re.escape(join)}\s+" for join in joins]
    return re.compile("(" + "|".join([*forms, r"\n+"]) + ")", re.IGNORECASE)


def is_one_of(interface: Interface, name: str, text: str) -> bool:
    """Whether the line is one of the `listen` words of that name."""
    return normal(text) in interface.listen.get(name, ())


def command_of(interface: Interface, text: str) -> str | None:
    """The command that a line is, when it is one and nothing else; "leave" for a short line that says one has to go."""
    plain = normal(text)
    exact = next((name for name, lines in interface.commands.items() if plain in lines), None)
    return exact or ("leave" if _says_goodbye(interface, plain) and not is_question(interface, text) else None)


def _says_goodbye(interface: Interface, plain: str) -> bool:
    short = len(words_in(plain)) <= _SHORT
    return short and any(f" {words} " in f" {plain} " for words in interface.listen.get("leaving_within", ()))


def after_opening(interface: Interface, name: str, text: str) -> str:
    """What follows when a line begins with one of the openings of that name; "" otherwise. The longest counts."""
    plain = normal(text)
    for opening in sorted(interface.openings.get(name, ()), key=len, reverse=True):
        if plain.startswith(opening) and len(plain) > len(opening) and not plain[len(opening)].isalnum():
            return plain[len(opening) :].strip(_EDGES)
    return ""


def without_small_talk(interface: Interface, text: str) -> str:
    """A line without what stands before or behind what is told, "well, 1 please"; "" where there is none of that."""
    before, behind = (any_of(interface.listen.get(name, ())) for name in ("before_it", "behind_it"))
    plain = normal(text)
    shorter = re.sub(rf"^(?:{before}[\s,.]+)+|(?:[\s,.]+{behind})+$", "", plain)
    return shorter if shorter != plain else ""


def any_of(words: Iterable[str]) -> str:
    """A pattern for any of these words, the longest first; one that nothing matches where there are none."""
    return f"(?:{'|'.join(map(re.escape, sorted(words, key=len, reverse=True))) or '(?!)'})"


def is_question(interface: Interface, text: str) -> bool:
    """Whether a line asks something back."""
    if text.rstrip().endswith("?"):
        return True
    plain = normal(text)
    return any(plain.startswith(word + " ") for word in interface.listen.get("questions", ()))


def asks_in_passing(interface: Interface, text: str) -> bool:
    """Whether a line may ask: behind its beginning, as "the water is low, is that bad", or with no more than "is".

    Such a line may be an answer first: ask this only of one that answers nothing.
    """
    plain = f" {normal(text)} "
    if plain.startswith(tuple(f" {word} " for word in interface.listen.get("questions_faint", ()))):
        return True
    return any(f" {words} " in plain for words in interface.listen.get("questions_within", ()))
