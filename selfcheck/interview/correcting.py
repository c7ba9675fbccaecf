"""Corrections in words: "no, it was 18", "I meant cm", "I swapped the two"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview.answers import Answer
from selfcheck.interview.by_place import by_place
from selfcheck.interview.cited import cited
from selfcheck.interview.measuring import measure
from selfcheck.interview.mended import in_the_unit_of, number_in
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import named_answer, named_node
from selfcheck.interview.nodes import Node
from selfcheck.interview.passing import read_back
from selfcheck.interview.pending import Pending
from selfcheck.interview.picking import offer
from selfcheck.interview.several import Several
from selfcheck.interview.showing import at_start
from selfcheck.interview.standing import raised
from selfcheck.interview.typed_line import after_opening, any_of, normal
from selfcheck.interview.understanding import CHOICES, MEASURES, Reading, exact, loose

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

_NOT_BUT = re.compile(r"^not\s+\w+\W+(?:but\s+)?")


def correction(talk: Conversation, text: str) -> list[Message] | None:
    """What is said to a line that mends an earlier answer; None when it is not one."""
    if talk.revising:
        return None
    counting = _counting(talk)
    if not counting or (talk.node is not None and talk.node.gate):
        return None
    return (
        _swapped(talk, text, counting)
        or by_place(talk, text, counting)
        or _by_its_old_value(talk, text, counting)
        or _other_unit(talk, text, counting)
        or _new_value(talk, text, counting)
    )


def _counting(talk: Conversation) -> list[str]:
    """The questions whose answers may be mended so, the last answered one last. Safety items are never among them."""
    free = [ident for ident in _in_time(talk) if not raised(talk.script, talk.state, ident)]
    return [ident for ident in free if not _keeps_safe(talk.script.nodes[ident])]


def _in_time(talk: Conversation) -> list[str]:
    nodes, at = talk.script.nodes, talk.state.at
    told = [ident for ident in talk.state.answered if nodes[ident].kind not in ("say", "confirm")]
    return sorted(told, key=lambda ident: at.get(ident, 0))


def _after_a_safety_item(talk: Conversation) -> bool:
    """Whether the last answer keeps people safe, so that a correction without a name would be one of that."""
    return _keeps_safe(talk.script.nodes[_in_time(talk)[-1]])


def _keeps_safe(node: Node) -> bool:
    return node.gate or node.opens or bool(node.closes)


def _new_value(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """A new value for a question that is named, else for the one before, when the line says that it corrects."""
    interface = talk.script.interface
    rest = after_opening(interface, "correction", text)
    told = rest or after_opening(interface, "change", text) or after_opening(interface, "make", text)
    for part in _tails(talk, told) if told else ():
        named = named_answer(talk.script, part, talk.context, reversed(counting))
        if named is not None:
            talk.revise(named.question)
            return offer(talk, talk.script.nodes[named.question], Reading(replace(named, said=text)), text)
        if not rest or _after_a_safety_item(talk):
            continue
        last = talk.script.nodes[counting[-1]]
        if last.kind in CHOICES and _only_denies(talk, text):
            return None
        reading = _read(talk, last, part)
        reading = in_the_unit_of(talk.state.given[last.id], reading, part)
        if (here := _of_the_open_one(talk, last, reading, part)) is not None:
            return offer(talk, here[0], here[1], text)
        nothing_but_no = reading.answer is not None and last.kind in MEASURES and reading.answer.value == 0
        if not reading.nothing and not nothing_but_no:
            talk.revise(last.id)
            return offer(talk, last, reading, text)
    return None


def _by_its_old_value(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """A new value for the answer whose number the line takes back: read back for a yes; of several one is picked."""
    given = talk.state.given
    able = [ident for ident in counting if talk.script.nodes[ident].kind in MEASURES and given[ident].state == "value"]
    found = cited(talk.script.interface, given, able, text)
    if found is None or (found.among[-1] == counting[-1] and after_opening(talk.script.interface, "correction", text)):
        return None
    readings: dict[str, Answer] = {}
    for ident in found.among:
        node = talk.script.nodes[ident]
        answer = in_the_unit_of(given[ident], measure(node, found.new, talk.context), found.new).answer
        if answer is not None:
            readings[ident] = replace(answer, question=ident, said=text)
    named = [ident for ident in readings if named_answer(talk.script, text, talk.context, [ident])]
    among = named if len(named) == 1 else list(readings)
    if len(among) == 1:
        return talk.ask(read_back(talk, Several((readings[among[0]],)), text))
    return _which_of_them(talk, {ident: readings[ident] for ident in among}) if among else None


def _which_of_them(talk: Conversation, readings: dict[str, Answer]) -> list[Message]:
    """Several answers had the number that is taken back: the person picks the one that is mended."""

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice not in readings:
            return talk.present()
        talk.revise(choice)
        return offer(talk, talk.script.nodes[choice], Reading(readings[choice]), readings[choice].said)

    choices = [(ident, at_start(talk.script.name_of(ident))) for ident in reversed(readings)]
    return talk.ask(
        Pending(talk.phrases.say("change_which"), (*choices, ("_none", talk.phrases.say("change_stop"))), choose)
    )


def _only_denies(talk: Conversation, text: str) -> bool:
    """Whether a "no" belongs to the word behind it, as in "no oven": that takes nothing back."""
    plain = normal(text)
    openings = [one for one in talk.script.interface.openings.get("correction", ()) if " " in one]
    markers = talk.script.interface.listen.get("really", ())
    return (
        plain.startswith("no ") and not plain.startswith(tuple(openings)) and not any(one in plain for one in markers)
    )


def _of_the_open_one(talk: Conversation, last: Node, reading: Reading, part: str) -> tuple[Node, Reading] | None:
    """The open question and a value that is usual there but not for the one before: "no, it was 18" said of itself."""
    node = talk.node
    if node is None or node.kind not in MEASURES or (reading.answer is not None and _usual(last, reading.answer)):
        return None
    answer = measure(node, part, talk.context).answer or reading.answer
    if answer is None or node.kind != last.kind or not _usual(node, answer):
        return None
    return node, Reading(replace(answer, question=node.id))


def _read(talk: Conversation, node: Node, part: str) -> Reading:
    if node.kind in MEASURES:
        return measure(node, part, talk.context)
    known = exact(talk.script, node, part)
    return loose(talk.script, node, part) if known.nothing else known


def _tails(talk: Conversation, rest: str) -> Iterator[str]:
    """What may be the new value: behind the last "it was", else all of it; without a "not ..." at its end."""
    markers = any_of(talk.script.interface.listen.get("really", ()))
    tail = re.split(rf"\b{markers}\b", rest)[-1].strip(" ,.:;")
    for part in dict.fromkeys((tail, rest)):
        shorter = re.split(r",?\s+not\s+", _NOT_BUT.sub("", part))[0].strip(" ,.:;")
        yield from dict.fromkeys(one for one in (shorter, part) if one)


def _other_unit(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """ "I meant cm": the number of the last measured answer in another unit."""
    measured = [ident for ident in counting if talk.script.nodes[ident].kind in ("length", "volume")]
    unit = after_opening(talk.script.interface, "correction", text) or normal(text)
    unit = re.split(r",?\s+not\s+", _NOT_BUT.sub("", unit))[0]
    fillers = talk.script.interface.listen.get("fillers", ())
    telling = [word for word in unit.split() if word not in fillers] or unit.split()[-1:]
    here = talk.node
    if here is not None and here.kind in MEASURES and measure(here, text, talk.context).answer is not None:
        return None  # "a foot" is a length of its own
    if not measured or _after_a_safety_item(talk) or not telling or re.search(r"\d", unit) or len(telling) > 2:
        return None
    node, old = talk.script.nodes[measured[-1]], talk.state.given[measured[-1]]
    number = number_in(old.said)
    if number is None:
        return None
    for words in (" ".join(telling), telling[-1]):
        answer = measure(node, f"{number:g} {words}", talk.context).answer
        if answer is not None and answer.value != old.value:
            talk.revise(node.id)
            return offer(talk, node, Reading(replace(answer, said=f"{number:g} {words}")), text)
    return None


def _swapped(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """Two answers of one kind that stand in each other's place: read back for a yes."""
    if not tells_of_a_swap(talk, text):
        return None
    plain = normal(text)
    nodes, given = talk.script.nodes, talk.state.given
    able = [ident for ident in counting if nodes[ident].kind in MEASURES and given[ident].state == "value"]
    named = [ident for ident in able if set(named_node(talk.script, plain, [ident]))]
    among = named if len(named) > 1 else able
    pairs = ((one, other) for place, one in enumerate(reversed(among)) for other in list(reversed(among))[place + 1 :])
    pair = next((pair for pair in pairs if _may_be_swapped(talk, *pair)), None)
    if pair is None:
        return None
    one, other = (given[ident] for ident in pair)
    found = Several((replace(other, question=one.question, at=""), replace(one, question=other.question, at="")))
    return talk.ask(read_back(talk, found, text))


def tells_of_a_swap(talk: Conversation, text: str) -> bool:
    """Whether a line says that two values stand in each other's place."""
    plain = normal(text)
    return any(phrase in plain for phrase in talk.script.interface.listen.get("swapped", ()))


def _may_be_swapped(talk: Conversation, one: str, other: str) -> bool:
    """Whether two answers are of one kind, about different things, and each is usual in the other's place."""
    first, second = talk.script.nodes[one], talk.script.nodes[other]
    if first.kind != second.kind or first.writes == second.writes:
        return False
    given = talk.state.given
    return _usual(first, given[other]) and _usual(second, given[one])


def _usual(node: Node, answer: Answer) -> bool:
    value = answer.value
    if not isinstance(value, (int, float)):
        return True
    too_small = node.usual_least is not None and value < node.usual_least
    return not too_small and (node.usual_most is None or value <= node.usual_most)
