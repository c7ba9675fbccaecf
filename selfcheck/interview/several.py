"""One line that answers several questions: "first rise 2 hours, sticky, baked 2019"."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Context
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.interview.state import State
from selfcheck.interview.understanding import CHOICES, MEASURES, exact, loose, measure, normal, parts_of, words_in


@dataclass(frozen=True, slots=True)
class Several:
    """`answers`: what was understood, one a question. `rest`: the parts that were not."""

    answers: tuple[Answer, ...]
    rest: tuple[str, ...]


def several(script: Script, state: State, text: str, context: Context) -> Several:
    """The answers in a line with more than one part. Safety items are never answered in passing."""
    answers: dict[str, Answer] = {}
    rest: list[str] = []
    parts = parts_of(script.interface, text)
    if len(parts) == 1:
        named = _named(script, parts[0], context)
        return Several((named,) if named else (), ())
    for part in parts:
        answer = _named(script, part, context) or _current(script, state, part, context, answers)
        answer = answer or _by_option(script, state, part)
        if answer is None or answer.question in answers:
            rest.append(part)
        else:
            answers[answer.question] = answer
    return Several(tuple(answers.values()), tuple(rest))


def elsewhere(script: Script, state: State, text: str) -> Several:
    """The answer of a line that is just the words of an option of another question."""
    answer = _by_option(script, state, text)
    return Several((answer,) if answer else (), ())


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


def _names(script: Script, ident: str) -> list[str]:
    words = script.words_of(ident)
    return [normal(name) for name in (words.short, *words.names) if name]


def _free(node: Node) -> bool:
    return not (node.gate or node.opens or node.closes or node.on_leaving)


def _named(script: Script, part: str, context: Context) -> Answer | None:
    """A part that begins with a question's name and goes on with an answer to it."""
    plain = normal(part)
    best: tuple[int, Answer] | None = None
    for ident, node in script.nodes.items():
        if not _free(node) or node.kind not in (*MEASURES, *CHOICES):
            continue
        for name in _names(script, ident):
            if not plain.startswith(name + " ") or (best is not None and best[0] >= len(name)):
                continue
            value = part.strip()[len(name) :].lstrip(" :=,")
            reading = measure(node, value, context) if node.kind in MEASURES else exact(script, node, value)
            if reading.answer is not None:
                best = (len(name), Answer(ident, "value", reading.answer.value, part.strip(), reading.answer.error))
    return best[1] if best else None


def _current(script: Script, state: State, part: str, context: Context, answers: dict[str, Answer]) -> Answer | None:
    """The part as an answer to the open question."""
    node = state.node
    if node is None or not _free(node) or node.id in answers:
        return None
    if node.kind in MEASURES:
        return measure(node, part, context).answer
    return exact(script, node, part).answer or loose(script, node, part).answer


def _by_option(script: Script, state: State, part: str) -> Answer | None:
    """The part as the words of an option that only one of the questions not answered yet has."""
    found: list[Answer] = []
    for ident, node in script.nodes.items():
        if ident in state.given or not _free(node) or node.kind not in CHOICES or normal(part).isdecimal():
            continue
        reading = exact(script, node, part)
        if reading.answer is not None and reading.answer.value:
            found.append(reading.answer)
    return found[0] if len(found) == 1 else None
