"""The one place where text from a person or a file is made harmless."""

from __future__ import annotations

import unicodedata
from functools import lru_cache

#: stands where a character was that must not reach a terminal or a file
REPLACEMENT = "\ufffd"
_KEPT = frozenset("\n\t")
#: controls, format characters (bidi, zero-width, tags), surrogates, line and paragraph separators
_REFUSED = frozenset({"Cc", "Cf", "Cs", "Zl", "Zp"})
#: letters that show as nothing, variation selectors, and the combining joiner
_UNSEEN = frozenset("\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0") | {chr(code) for code in range(0xFE00, 0xFE10)}


def words(listed: str) -> frozenset[str]:
    """The words of a list written out as one text."""
    return frozenset(listed.split())


def clean(text: str, cap: int = 2000) -> str:
    """Text that can be stored, compared and shown without doing anything.

    At most `cap` characters, composed (NFC), line ends as a line feed. Every control but line feed and tab, C1, bidi
    mark, zero-width or tag character, line separator, surrogate and non-character becomes U+FFFD. Cleaning twice
    changes nothing more.
    """
    short = text[:cap].replace("\r\n", "\n").replace("\r", "\n")
    safe = "".join(map(_safe, short))
    return unicodedata.normalize("NFC", safe)[:cap]


@lru_cache(maxsize=4096)
def _safe(character: str) -> str:
    if character in _KEPT:
        return character
    code = ord(character)
    if unicodedata.category(character) in _REFUSED or character in _UNSEEN:
        return REPLACEMENT
    if 0xE0000 <= code <= 0xE0FFF or code & 0xFFFE == 0xFFFE or 0xFDD0 <= code <= 0xFDEF:
        return REPLACEMENT
    return character
