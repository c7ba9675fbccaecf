"""Numbers as people type and spell them: tokens of a line, and the number that starts at one of them.

Everything is exact (fractions) and bounded: a line has at most 160 characters, a number at most nine digits.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

LONGEST = 160

_ONES = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
]  # fmt: skip
_TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]
#: no "once": in English it says how often
_SPANISH = [
    "cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "_", "doce", "trece",
    "catorce", "quince", "dieciseis", "diecisiete", "dieciocho", "diecinueve", "veinte", "veintiuno", "veintidos",
    "veintitres", "veinticuatro", "veinticinco", "veintiseis", "veintisiete", "veintiocho", "veintinueve",
]  # fmt: skip
WHOLE: dict[str, int] = {word: value for value, word in enumerate(_ONES)}
WHOLE |= {word: value for value, word in enumerate(_SPANISH) if word != "_"}
WHOLE |= {"fourty": 40, "ninty": 90, "fiften": 15, "twelv": 12, "eigth": 8, "forteen": 14}
TENS: dict[str, int] = {word: 10 * value for value, word in enumerate(_TENS, 2)} | {"fourty": 40, "ninty": 90}
TENS |= {"treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70, "ochenta": 80, "noventa": 90}
PARTS: dict[str, int] = {
    "half": 2, "halves": 2, "halfs": 2, "third": 3, "thirds": 3, "quarter": 4, "quarters": 4, "qtr": 4, "fourth": 4,
    "fourths": 4, "eighth": 8, "eighths": 8, "sixteenth": 16, "sixteenths": 16, "medio": 2, "media": 2, "cuarto": 4,
    "cuartos": 4, "tercio": 3, "tercios": 3,
}  # fmt: skip
_BOTTOMS = frozenset({2, 3, 4, 8, 10, 16, 32, 64})
ARTICLES = frozenset({"a", "an", "un", "una"})
AND = frozenset({"and", "&", "y", "n"})

_QUOTES = str.maketrans(
    {"’": "'", "‘": "'", "′": "'", "´": "'", "`": "'", "ʹ": "'", "”": '"', "“": '"', "″": '"', "„": '"', "–": "-",
     "—": "-", "−": "-", "‒": "-", "‐": "-", "‑": "-", "⁄": "/", "∕": "/", "\n": " ", "\t": " "}
)  # fmt: skip
_TOKEN = re.compile(r"(?P<number>\d+(?:[.,]\d+)*|\.\d+)|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)?)|(?P<sign>\+/-|\+-|\*|\S)")


@dataclass(frozen=True, slots=True)
class Token:
    """A number in digits, a word, or one sign. `glued`: nothing stands between it and the token before."""

    kind: Literal["number", "word", "sign"]
    text: str
    glued: bool


@dataclass(frozen=True, slots=True)
class Number:
    """An exact number. `other`: what it may also mean (`1,250`); `loose`: "a couple"; `comma`: a decimal comma was
    used.
    """

    value: Fraction
    other: Fraction | None = None
    loose: bool = False
    comma: bool = False


def plain(text: str, longest: int = LONGEST) -> str | None:
    """The line in lower case without accents, curly quotes, fraction signs or doubled spaces; None when too long."""
    if len(text) > 4 * longest:
        return None
    spread = []
    for character in text.translate(_QUOTES):
        if unicodedata.decomposition(character).startswith("<fraction>"):
            character = " " + unicodedata.normalize("NFKC", character)
        spread.append(character)
    flat = unicodedata.normalize("NFKD", "".join(spread)).lower().translate(_QUOTES)
    flat = "".join(character for character in flat if not unicodedata.combining(character)).replace("''", '"')
    flat = re.sub(r"([a-z])\1{2,}", r"\1\1", " ".join(flat.split()))
    flat = re.sub(r"\bn ?/ ?a\b", "na", flat)  # the `a` is no "one", also before a unit
    return flat if len(flat) <= longest else None


def tokens(line: str) -> list[Token]:
    """The tokens of a line that `plain` gave."""
    found: list[Token] = []
    end = -1
    for match in _TOKEN.finditer(line):
        kind = match.lastgroup
        assert kind in ("number", "word", "sign")
        found.append(Token(kind, match.group(), match.start() == end))  # type: ignore[arg-type]
        end = match.end()
    return found


def digits(text: str) -> Number | None:
    """A number in digits, with point or comma; None when it is none or has more than nine digits."""
    if sum(character.isdigit() for character in text) > 9:
        return None
    if re.fullmatch(r"\d+|\d*\.\d+", text):
        return Number(Fraction(text))
    if re.fullmatch(r"[1-9]\d{0,2},\d{3}", text):
        return Number(Fraction(text.replace(",", "")), other=Fraction(text.replace(",", ".")))
    if re.fullmatch(r"[1-9]\d{0,2}(,\d{3})+(\.\d+)?", text):
        return Number(Fraction(text.replace(",", "")))
    if re.fullmatch(r"\d+,\d+", text):
        return Number(Fraction(text.replace(",", ".")), comma=True)
    if re.fullmatch(r"[1-9]\d{0,2}(\.\d{3})+,\d+", text):
        return Number(Fraction(text.replace(".", "").replace(",", ".")))
    return None


def text_at(line: list[Token], at: int) -> str:
    """The text of token `at`; nothing behind the last one."""
    return line[at].text if at < len(line) else ""


def _spelled(line: list[Token], at: int) -> tuple[int, int] | None:
    """A whole number in words, up to 999, and where it ends."""
    start, total = at, 0
    first = text_at(line, at)
    if text_at(line, at + 1) in ("hundred", "hundreds") and (first in ARTICLES or first in WHOLE):
        total, at = 100 * WHOLE.get(first, 1), at + 2
    elif first in ("hundred", "cien", "ciento"):
        total, at = 100, at + 1
    if (
        total
        and text_at(line, at) in ("and", "y")
        and (text_at(line, at + 1) in WHOLE or text_at(line, at + 1) in TENS)
    ):
        at += 1
    word = text_at(line, at)
    if word in TENS:
        total, at = total + TENS[word], at + 1
        joined = at + 1 if text_at(line, at) in ("-", "y") else at
        if 0 < WHOLE.get(text_at(line, joined), 0) < 10:
            total, at = total + WHOLE[text_at(line, joined)], joined + 1
    elif word in WHOLE:
        total, at = total + WHOLE[word], at + 1
    return (total, at) if at > start else None


def part_at(line: list[Token], at: int) -> tuple[Fraction, int] | None:
    """A fraction smaller than one: `3/4`, `half`, `a quarter`, `three eighths`, and where it ends."""
    if at + 2 < len(line) and line[at].kind == "number" and line[at + 1].text == "/" and line[at + 2].kind == "number":
        top, bottom = line[at].text, line[at + 2].text
        if (
            top.isdigit()
            and bottom.isdigit()
            and len(top) <= 2
            and len(bottom) <= 2
            and 0 < int(top) < int(bottom) in _BOTTOMS
        ):
            return Fraction(int(top), int(bottom)), at + 3
        return None
    count = 1
    first = text_at(line, at)
    if text_at(line, at + 1) == "-" and text_at(line, at + 2) in PARTS:
        line = [*line[: at + 1], *line[at + 2 :]]
        shift = 1
    else:
        shift = 0
    if first in ARTICLES:
        at += 1
    elif WHOLE.get(first):
        count, at = WHOLE[first], at + 1
    elif first.isdigit() and len(first) == 1 and first != "0":
        count, at = int(first), at + 1
    bottom_word = text_at(line, at)
    if bottom_word in PARTS and count < PARTS[bottom_word]:
        return Fraction(count, PARTS[bottom_word]), at + 1 + shift
    return None


def number_at(line: list[Token], at: int) -> tuple[Number, int] | None:
    """The number that starts at token `at`, and the place after it; None when none starts there."""
    if text_at(line, at) in ARTICLES and text_at(line, at + 1) in ("couple", "cople", "dozen", "par"):
        return number_at(line, at + 1)
    if text_at(line, at) == "half" and text_at(line, at + 1) in ARTICLES and text_at(line, at + 2) == "dozen":
        return Number(Fraction(6), loose=True), at + 3
    if text_at(line, at) in ("couple", "cople", "par"):
        return Number(Fraction(2), loose=True), at + 2 if text_at(line, at + 1) in ("of", "o", "de") else at + 1
    if text_at(line, at) in ARTICLES and text_at(line, at + 1) == "thousand":
        return Number(Fraction(1000)), at + 2
    if text_at(line, at) == "dozen":
        return Number(Fraction(12)), at + 1
    part = part_at(line, at)
    if part is not None:
        return Number(part[0]), part[1]
    number: Number | None
    if at < len(line) and line[at].kind == "number":
        number, end = digits(line[at].text), at + 1
        if number is None or text_at(line, end) == "/":
            return None
    else:
        spelled = _spelled(line, at)
        if spelled is None:
            return None
        number, end = Number(Fraction(spelled[0])), spelled[1]
        if text_at(line, end) in ("point", "punto") and WHOLE.get(text_at(line, end + 1), 99) < 10:
            number, end = Number(number.value + Fraction(WHOLE[text_at(line, end + 1)], 10)), end + 2
    if number.value.denominator == 1 and number.other is None:
        rest = _rest(line, end)
        if rest is not None:
            return Number(number.value + rest[0]), rest[1]
    return number, end


def thousands_at(line: list[Token], at: int) -> tuple[Number, int] | None:
    """Thousands set apart by a point, a space or an apostrophe, `1.000`, `1 000`, `1'000`, and where they end.

    Only what follows can tell them from a decimal, `1.250 m`, or from two numbers, `2 500 gallon tanks`.
    """
    first = text_at(line, at)
    if re.fullmatch(r"[1-9]\d{0,2}\.\d{3}", first):
        return Number(Fraction(first.replace(".", ""))), at + 1
    end = at + 2 if text_at(line, at + 1) == "'" and line[at + 1].glued else at + 1
    second = text_at(line, end)
    if re.fullmatch(r"[1-9]\d{0,2}", first) and re.fullmatch(r"\d{3}", second) and line[end].glued == (end == at + 2):
        return Number(Fraction(first + second)), end + 1
    return None


def _rest(line: list[Token], at: int) -> tuple[Fraction, int] | None:
    """The fraction that belongs to the whole number before it: `1 1/2`, `1-3/4`, `8 and a quarter`."""
    joint = text_at(line, at)
    if joint == "-" and line[at].glued and at + 1 < len(line) and line[at + 1].glued:
        part = part_at(line, at + 1) if line[at + 1].kind == "number" else None
        return part if part and text_at(line, at + 2) == "/" else None
    if joint in AND or joint == "+":
        return part_at(line, at + 1)
    if at < len(line) and line[at].kind == "number" and text_at(line, at + 1) == "/":
        return part_at(line, at)
    return None
