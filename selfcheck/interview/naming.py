"""Questions that a line names, "the rise is wrong", and answers that stand beside a name, "rise 4 in"."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Context
from selfcheck.interview.measuring import measure
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.interview.typed_line import normal, words_in
from selfcheck.interview.understanding import CHOICES, MEASURES, exact, loose


def named_node(script: Script, text: str, among: list[str] | None = None) -> list[str]:
    """The questions that a few words name: exactly, else by containing all of them."""
    plain = normal(text)
    known = among if among is not None else list(script.nodes)
    names = {ident: _names(script, ident) for ident in known}
    same = [ident for ident in known if plain in names[ident]]
    if same or not plain:
        return same
    typed = set(words_in(plain)) - set(script.interface.listen.get("fillers", ()))
    return [
        ident
        for ident in known
        if typed and any(typed <= set(words_in(name)) or name in plain for name in names[ident] if name)
    ]


def named_alone(script: Script, text: str) -> Node | None:
    """The fact that a line says is there, with no more than small words around its name: "we have a crust"."""
    small = _small(script)
    plain = normal(text)
    for node in script.nodes.values():
        for name in _names(script, node.id) if node.told_when and node.kind in CHOICES else ():
            if name in plain and not set(words_in(plain.replace(name, " "))) - small:
                return node
    return None


def named_answer(script: Script, part: str, context: Context, among: Iterable[str]) -> Answer | None:
    """A part that names one of these questions, before or behind an answer to it; the longest name decides."""
    best: tuple[int, Answer] | None = None
    for ident in among:
        node = script.nodes[ident]
        for name in _names(script, ident):
            if best is not None and best[0] >= len(name):
                continue
            answer = _beside(script, node, name, part, context)
            if answer is not None:
                best = (len(name), answer)
    return best[1] if best else None


def by_names(script: Script, part: str) -> list[str]:
    """A part with names of several questions in it, cut before each name: "rise 4 in flour rye"."""
    low = part.casefold()
    named: dict[str, set[str]] = {}
    for ident in (ident for ident, node in script.nodes.items() if answerable(node)):
        for name in _names(script, ident):
            named.setdefault(name, set()).add(ident)
    places: list[tuple[int, int, str]] = []
    for name in sorted(named, key=len, reverse=True):
        for match in re.finditer(rf"\b{re.escape(name)}\b", low):
            if all(match.end() <= start or match.start() >= end for start, end, _ in places):
                places.append((*match.span(), name))
    places.sort()
    # two names of the same question belong to one answer: "we are 4 people"
    starts = [
        start for at, (start, _, name) in enumerate(places) if at == 0 or not named[name] & named[places[at - 1][2]]
    ]
    if len(starts) < 2 or low[: starts[0]].strip(" .,:;") not in ("", "the", "my", "our"):
        return [part]
    return [part[start:end].strip() for start, end in zip(starts, [*starts[1:], len(part)], strict=True)]


def _names(script: Script, ident: str) -> list[str]:
    words = script.words_of(ident)
    return [normal(name) for name in (words.short, *words.names) if name]


def answerable(node: Node) -> bool:
    """Whether a question may be answered in passing."""
    return not (node.gate or node.opens or node.closes or node.on_leaving) and node.kind in (*MEASURES, *CHOICES)


def _beside(script: Script, node: Node, name: str, part: str, context: Context) -> Answer | None:
    """The answer that stands behind a name, or before it; words such as "is" and "about" may stand between."""
    low = part.strip().casefold()
    if name not in low:
        return None
    behind = re.match(rf"((?:[\w']+ ){{0,6}}?){re.escape(name)}\b[\s:=,]*(.+)", low)
    before = re.match(rf"(.*?)\b(?:of )?(?:the )?{re.escape(name)}\W*$", low)
    told = ""
    if behind is not None and set(words_in(behind[1])) <= _small(script):
        told = behind[2]
    elif before is not None:
        told = before[1]
    for value in _without_fillers(script, told.strip(" :=,")):
        chosen = exact(script, node, value).answer or loose(script, node, value).answer
        answer = measured(node, value, context) if node.kind in MEASURES else chosen
        if answer is None and node.kind == "volume":  # the name stands behind the amount and its unit
            answer = measured(node, low, context)
        if answer is not None:
            return replace(answer, said=part.strip())
    return None


def _small(script: Script) -> set[str]:
    """Words that may stand around a name and tell nothing by themselves."""
    return {*script.interface.listen.get("fillers", ()), *script.interface.listen.get("around_names", ())}


def _without_fillers(script: Script, value: str) -> Iterator[str]:
    """The words as they are, and with fewer and fewer of the small words in front of them."""
    fillers = _small(script)
    whole = set(words_in(normal(value))) - fillers
    if whole and whole <= set(script.interface.listen.get("negations", ())):
        yield "no"  # "we don't have a ..."
    while value:
        yield value
        first, _, rest = value.partition(" ")
        value = rest if first in fillers else ""


def measured(node: Node, value: str, context: Context) -> Answer | None:
    """A length, volume, number or date. A bare number is in the household's unit, since the read-back shows it."""
    reading = measure(node, value, context)
    if reading.answer is None and reading.meanings and node.kind == "length":
        return reading.meanings[0][1]
    return reading.answer
