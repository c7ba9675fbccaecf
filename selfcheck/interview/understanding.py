"""From a typed line to an answer: which options of a question it means. Nothing here speaks, keeps, or goes on."""

from __future__ import annotations

import re
from dataclasses import dataclass

from selfcheck.interview.answers import Answer, Value
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.interview.typed_line import normal, parts_of, words_in

_NUMBERS = re.compile(r"\d{1,2}(?:(?:\s*,\s*|\s+|\s*and\s*)\d{1,2})*")
#: words that turn up beside any other, and those that ask
_PARTICLES = frozenset({"on", "off", "out", "up", "down", "where", "when", "what", "who", "how", "why", "which"})
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


def _exact_option(script: Script, node: Node, plain: str) -> str | None:
    if plain.isdecimal() and len(plain) < 4:
        return node.options[int(plain) - 1] if 1 <= int(plain) <= len(node.options) else None
    for option in node.options:
        if plain and plain in wordings(script, node, option):
            return option
    keeps_safe = node.gate or "safety" in node.tags  # there, a "sure" or an "ok" says nothing of what was seen
    for answer in ("yes", "no"):
        meant = [
            one for one in node.options if answer == one or (answer in wordings(script, node, one) and not keeps_safe)
        ]
        if len(meant) == 1 and plain in script.interface.listen.get(answer, ()):
            return meant[0]
    return None


def _exact_several(script: Script, node: Node, text: str) -> Reading:
    plain = normal(text)
    whole = _exact_option(script, node, plain)
    if whole:
        return Reading(_answer(node, (whole,), text))
    if plain in script.interface.listen.get("none", ()):
        return Reading(_answer(node, (), text))
    two = len(node.options) == 2 and plain in script.interface.listen.get("both", ())
    if two or plain in script.interface.listen.get("all", ()):
        return Reading(_answer(node, node.options, text))
    parts = re.split(r"[\s,]+(?:and\s+)?", plain) if _NUMBERS.fullmatch(plain) else parts_of(script.interface, plain)
    chosen = [_exact_option(script, node, normal(part)) for part in parts if normal(part)]
    if not chosen or None in chosen:
        return NOTHING
    return Reading(_answer(node, tuple(option for option in node.options if option in chosen), text))


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
    well = typed & set(listen.get("well", ())) if node.kind == "choose_several" else set()
    good = node.kind == "choose" and "safety" in node.tags and option not in node.hazard
    doubtful = good and bool(typed & set(listen.get("doubts", ())))
    but = typed & set(listen.get("but", ())) if good else set()
    for place, wording in enumerate(wordings(script, node, option)):
        known = set(words_in(wording))
        if bool(typed & negations) != bool(known & negations) or unable(typed) != unable(known):
            continue
        if doubtful or (but - known and not telling - but <= known):
            continue  # "it is shut, but one screw is gone" is not just "it is shut"
        if not well <= known:
            continue  # "the first is fine" does not name it among what is wrong
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


def _answer(node: Node, value: Value, text: str) -> Answer:
    return Answer(node.id, "value", value, said=text)
