"""From a typed line to an answer: nothing here speaks, keeps, or goes on."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from functools import lru_cache

from selfcheck.domain.quantities import (
    MARK_ERROR,
    read_count,
    read_date,
    read_length,
    read_number,
    read_volume,
    show_date,
)
from selfcheck.interview.answers import Answer, Value
from selfcheck.interview.context import Context
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Interface, Script

_EDGES = ' \t\n.,;:!?"“”«»()[]*'
_WORD = re.compile(r"[^\W_]+(?:['-][^\W_]+)*")
_NUMBERS = re.compile(r"\d{1,2}(?:(?:\s*,\s*|\s+|\s*and\s*)\d{1,2})*")
#: "May 3" and the year behind it
_DAY, _YEAR = (
    re.compile(r"[a-z]\.?\s+(?:the\s+)?\d{1,2}(?:st|nd|rd|th)?$", re.IGNORECASE),
    re.compile(r"(?:19|20)\d\d\b"),
)
#: "1,250", and the "2,5" of those who count in parts with a comma
_ONE_NUMBER = re.compile(r"\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+,5")
_TWO_NUMBERS = re.compile(r"\d+(?:\.\d+)?(?:\s*[,;&]\s*|\s+(?:and\s+|or\s+)?)\d+(?:\.\d+)?")
_GROUPS = re.compile(r"\band\b(?! (?:a|one) (?:half|quarter)| half)|\bplus\b|&|,\s")
#: words that turn up beside any other
_PARTICLES = frozenset({"on", "off", "out", "up", "down"})
_UNABLE = frozenset({"can't", "cannot", "cant", "couldn't", "couldnt", "unable"})
CHOICES = ("choose", "choose_several")
MEASURES = ("length", "volume", "number", "date")


@dataclass(frozen=True, slots=True)
class Reading:
    """What a line may mean as an answer to one question.

    Exactly one of: `answer`; `meanings` (with labels), to ask which; `fits`, options that fit alike; or nothing.
    """

    answer: Answer | None = None
    meanings: tuple[tuple[str, Answer], ...] = ()
    fits: tuple[str, ...] = ()

    @property
    def nothing(self) -> bool:
        """Whether the line means nothing to the question."""
        return self.answer is None and not self.meanings and not self.fits


NOTHING = Reading()


@lru_cache(maxsize=4096)
def normal(text: str) -> str:
    """A line for comparing: lower case, plain apostrophes, single spaces, no marks at its ends."""
    plain = text.casefold().replace("’", "'").replace("‘", "'").replace("`", "'")
    return " ".join(plain.strip(_EDGES).split()) or ("?" if "?" in text else "")


def words_in(text: str) -> list[str]:
    """The words of a normal text, in order."""
    return _WORD.findall(text)


def exact(script: Script, node: Node, text: str) -> Reading:
    """A line that is just one option's number, words or other words; for several, just a list of those.

    At a number: words that stand for a figure there, such as "all year".
    """
    if node.kind == "number":
        plain = normal(text)
        figure = next((one for one, words in script.words_of(node.id).also.items() if plain in words), None)
        return Reading(_answer(node, float(figure), text)) if figure is not None else NOTHING
    if node.kind == "choose":
        option = _exact_option(script, node, normal(text))
        return Reading(_answer(node, option, text)) if option else NOTHING
    return _exact_several(script, node, text) if node.kind == "choose_several" else NOTHING


def loose(script: Script, node: Node, text: str) -> Reading:
    """A line with part of one option's words, or an option's words with others around them, when only one fits."""
    if node.kind not in CHOICES:
        return NOTHING
    plain = normal(text)
    fits = [option for option in node.options if _fits(script, node, option, plain)]
    if node.kind == "choose_several" and fits:
        return Reading(_answer(node, tuple(fits), text)) if _all_parts_fit(script, node, plain) else NOTHING
    if len(fits) == 1:
        return Reading(_answer(node, fits[0], text))
    return Reading(fits=tuple(fits))


def measure(node: Node, text: str, context: Context) -> Reading:
    """A line as a length, volume, number or date."""
    if node.kind == "length":
        length = read_length(text, context.units, node.least, node.most)
        if length.status == "value" and length.metres is not None:
            return Reading(_answer(node, length.metres, text, _told_error(length.error_m)))
        errors = length.errors_m or (None,) * len(length.meanings)
        pairs = zip(length.meanings, errors, strict=True)
        return Reading(
            meanings=tuple((label, _answer(node, metres, text, _told_error(error))) for (label, metres), error in pairs)
        )
    if node.kind == "volume":
        volume = read_volume(text, context.units, node.least, node.most)
        if (others := _without_unit(node, text, context, volume.cubic_metres)) is not None:
            return Reading(meanings=others)
        if volume.status == "value" and volume.cubic_metres is not None:
            return Reading(_answer(node, volume.cubic_metres, text, volume.error_m3))
        return Reading(meanings=tuple((label, _answer(node, value, text)) for label, value in volume.meanings))
    if node.kind == "date":
        return _date(node, text, context)
    return _number(node, text) if node.kind == "number" else NOTHING


def is_measured_unknown(node: Node, text: str, context: Context) -> bool:
    """Whether a line says, in the words of its own kind, that the person does not know."""
    if node.kind == "length":
        return read_length(text, context.units).status == "none"
    if node.kind == "volume":
        return read_volume(text, context.units).status == "none"
    if node.kind == "date":
        return read_date(text, context.today).status == "none"
    return node.kind == "number" and read_number(text).status == "none"


def is_one_of(interface: Interface, name: str, text: str) -> bool:
    """Whether the line is one of the `listen` words of that name."""
    return normal(text) in interface.listen.get(name, ())


def command_of(interface: Interface, text: str) -> str | None:
    """The command that a line is, when it is one and nothing else."""
    plain = normal(text)
    return next((name for name, lines in interface.commands.items() if plain in lines), None)


def after_opening(interface: Interface, name: str, text: str) -> str:
    """What follows when a line begins with one of the openings of that name; "" otherwise. The longest counts."""
    plain = normal(text)
    for opening in sorted(interface.openings.get(name, ()), key=len, reverse=True):
        if plain.startswith(opening) and len(plain) > len(opening) and not plain[len(opening)].isalnum():
            return plain[len(opening) :].strip(_EDGES)
    return ""


def is_question(interface: Interface, text: str) -> bool:
    """Whether a line asks something back."""
    if text.rstrip().endswith("?"):
        return True
    plain = normal(text)
    return any(plain.startswith(word + " ") for word in interface.listen.get("questions", ()))


def _exact_option(script: Script, node: Node, plain: str) -> str | None:
    if plain.isdecimal() and len(plain) < 4:
        return node.options[int(plain) - 1] if 1 <= int(plain) <= len(node.options) else None
    for option in node.options:
        if plain and plain in wordings(script, node, option):
            return option
    for answer in ("yes", "no"):
        if answer in node.options and plain in script.interface.listen.get(answer, ()):
            return answer
    return None


def _exact_several(script: Script, node: Node, text: str) -> Reading:
    plain = normal(text)
    whole = _exact_option(script, node, plain)
    if whole:
        return Reading(_answer(node, (whole,), text))
    if plain in script.interface.listen.get("none", ()):
        return Reading(_answer(node, (), text))
    if plain in script.interface.listen.get("all", ()):
        return Reading(_answer(node, node.options, text))
    parts = re.split(r"[\s,]+(?:and\s+)?", plain) if _NUMBERS.fullmatch(plain) else parts_of(script.interface, plain)
    chosen = [_exact_option(script, node, normal(part)) for part in parts if normal(part)]
    if not chosen or None in chosen:
        return NOTHING
    return Reading(_answer(node, tuple(option for option in node.options if option in chosen), text))


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


def wordings(script: Script, node: Node, option: str) -> list[str]:
    """All the words that stand for an option, its label first, each as `normal` gives it."""
    words = script.words_of(node.id)
    return [normal(words.options.get(option, option)), *(normal(other) for other in words.also.get(option, ()))]


def _fits(script: Script, node: Node, option: str, plain: str) -> bool:
    """Part of an option's words, not all of them common ones; or an option's words with others around them.

    A safety item is passed only by an option's words with none but small words around them.

    A "not" on one side only never fits, so that "not cracked" is not taken for "cracked".
    """
    listen = script.interface.listen
    negations, fillers = set(listen.get("negations", ())), set(listen.get("fillers", ()))
    typed = set(words_in(plain))
    telling = typed - fillers - negations
    common = script.common_words
    if not telling or any(word.isdecimal() for word in telling):
        return False
    for place, wording in enumerate(wordings(script, node, option)):
        known = set(words_in(wording))
        if bool(typed & negations) != bool(known & negations) or unable(typed) != unable(known):
            continue
        if place == 0 and telling <= known and telling - common and not (node.gate and len(telling) < 2):
            return True
        core = known - fillers - negations
        if core and core <= telling and (core == telling or not _by_itself(core, node, option)):
            return True
    return False


def covered(script: Script, answer: Answer) -> float:
    """How much of a line's telling words an answer's own wording holds, from 0 to 1; 1 for a measure."""
    node = script.nodes[answer.question]
    typed = set(words_in(normal(answer.said))) - set(script.interface.listen.get("fillers", ()))
    if node.kind not in CHOICES or not typed:
        return 1.0
    chosen = answer.value if isinstance(answer.value, tuple) else (str(answer.value),)
    known = [set(words_in(one)) for option in chosen for one in wordings(script, node, option)]
    return max((len(typed & one) / len(typed) for one in known), default=0.0)


def _by_itself(core: set[str], node: Node, option: str) -> bool:
    """Whether these words of an option mean it only with nothing else around: a pass, or a lone word such as "off"."""
    if node.gate and option in node.passes:
        return True
    return option not in node.hazard and core <= _PARTICLES


def unable(words: set[str]) -> bool:
    """Whether a line tells that something could not be done or seen, which is neither a yes nor a no."""
    return bool(words & _UNABLE) or ("not" in words and bool(words & {"can", "could", "able"}))


def _all_parts_fit(script: Script, node: Node, plain: str) -> bool:
    """Whether each part of a list fits some option, so that none of what was told is passed over in silence."""
    parts = parts_of(script.interface, plain)
    return len(parts) < 2 or all(
        any(_fits(script, node, option, normal(part)) for option in node.options) for part in parts
    )


def whole(script: Script, node: Node, answer: Answer) -> bool:
    """Whether the words of an answer hold all the telling words of each option it stands for, not just common ones."""
    listen, plain = script.interface.listen, normal(answer.said)
    small = {*listen.get("negations", ()), *listen.get("fillers", ())}
    typed = set(words_in(plain))

    def spoken(option: str) -> list[str]:
        return wordings(script, node, option)

    chosen = answer.value if isinstance(answer.value, tuple) else (str(answer.value),)
    return all(
        any((core := {*words_in(one)} - small) - script.common_words and core <= typed for one in spoken(option))
        for option in chosen
    )


def _told_error(error: float | None) -> float | None:
    """The error of a length where its words carry one, more than that of reading any mark."""
    return error if error is not None and error > 1.01 * MARK_ERROR else None


def _without_unit(
    node: Node, text: str, context: Context, taken: float | None
) -> tuple[tuple[str, Answer], ...] | None:
    """What a bare number may hold, where it was not taken in the unit of the household; None where nothing is open."""
    if taken is None or not taken or any(sign.isalpha() for sign in text):
        return None
    bare = normal(text)
    found = {unit: read_volume(f"{bare} {unit}", context.units).cubic_metres for unit in ("gallons", "liters", "m³")}
    own = found["gallons" if context.units == "us" else "liters"]
    if own is None or abs(own - taken) < 0.01 * taken:
        return None
    return tuple((f"{bare} {unit}", _answer(node, value, f"{bare} {unit}")) for unit, value in found.items() if value)


def two_numbers(node: Node, text: str) -> bool:
    """Whether a line is just two numbers with nothing to tell which is meant: "8 9"; a fraction is one number."""
    plain = normal(text)
    if node.kind not in ("length", "volume", "number") or (node.kind == "number" and " or " in plain):
        return False  # a count between two is one
    return _TWO_NUMBERS.fullmatch(plain) is not None and _ONE_NUMBER.fullmatch(plain) is None


def _date(node: Node, text: str, context: Context) -> Reading:
    reading = read_date(text, context.today)
    if reading.status == "value" and reading.day is not None:
        span = (reading.latest - reading.earliest).days if reading.earliest and reading.latest else 0
        return Reading(_answer(node, reading.day, text, span / 12**0.5 if span else None))
    return Reading(
        meanings=tuple((show_date(day, context.units), _answer(node, day, text)) for _, day in reading.meanings)
    )


def _number(node: Node, text: str) -> Reading:
    number, count = read_number(text), read_count(text)
    if count.status == "ask" and _GROUPS.search(normal(text)):
        return NOTHING  # more than one group was told of: "my husband, me and 2 kids"
    if number.status == "value" and number.value is not None:
        return Reading(_answer(node, number.value, text, number.error or None))
    if count.status == "value" and count.value is not None:
        return Reading(_answer(node, float(count.value), text))
    return NOTHING


def _answer(node: Node, value: Value | date, text: str, error: float | None = None) -> Answer:
    return Answer(node.id, "value", value, said=text, error=error)
