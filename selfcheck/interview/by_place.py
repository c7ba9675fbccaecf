"""A correction that names a reading by its place: "the first one was 14", "the second rise should be 9"."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview import commands
from selfcheck.interview.answers import Answer
from selfcheck.interview.measuring import measure
from selfcheck.interview.mended import in_the_unit_of
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import measured
from selfcheck.interview.nodes import Node
from selfcheck.interview.passing import read_back
from selfcheck.interview.several import Several
from selfcheck.interview.typed_line import any_of, normal, words_in
from selfcheck.interview.understanding import MEASURES

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

#: lists of words in `listen`, in the order of the places they stand for
PLACES = ("first", "second", "third")


def by_place(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """A new value for one of the answers written at the same place of the record, read back for a yes.

    `counting`: the questions whose answers may be mended, the last answered one last.
    """
    plain = normal(text)
    words = words_in(plain)
    listen = talk.script.interface.listen
    place = next((place for place, name in enumerate(PLACES) if set(words[:4]) & set(listen.get(name, ()))), None)
    if place is None or len(words) < 3:
        return None
    group = _group(talk, words, counting)
    if place >= len(group) or (group[place].id not in counting and group[place] is not talk.node):
        return None
    node = group[place]
    if node.id in counting and plain.endswith(listen.get("wrong", ())):
        return commands.start_change(talk, node.id)
    answer = _value(talk, node, [*listen.get("a_reading", ()), *_names(talk, group)], plain)
    return talk.ask(read_back(talk, Several((replace(answer, said=text),)), text)) if answer is not None else None


def _group(talk: Conversation, words: list[str], counting: list[str]) -> list[Node]:
    """The questions of one reading, in order: those whose name stands in the line, else those answered last."""
    nodes = talk.script.nodes
    here = [talk.node] if talk.node is not None else []
    near = [node for node in (*here, *(nodes[one] for one in reversed(counting))) if node.kind in MEASURES]
    groups = [[one for one in nodes.values() if one.writes == node.writes] for node in near if node.writes]
    groups = [group for group in groups if len(group) > 1]
    named = [group for group in groups if any(set(words_in(normal(one))) <= set(words) for one in _names(talk, group))]
    if not named and not set(words) & set(talk.script.interface.listen.get("a_reading", ())):
        return []
    return next(iter(named or groups), [])


def _names(talk: Conversation, group: list[Node]) -> list[str]:
    return [name for node in group for name in talk.script.words_of(node.id).names]


def _value(talk: Conversation, node: Node, names: list[str], plain: str) -> Answer | None:
    """The amount behind the words that name the reading; a bare number is in the unit of the one it replaces."""
    listen = talk.script.interface.listen
    told = re.split(rf"[,;]?\s+{any_of(listen.get('not_that', ()))}\s", plain)[0]
    _, *behind = re.split(rf"\b{any_of(listen.get('value_behind', ()))}\b", told, maxsplit=1)
    if not behind:  # "the first rise 14 in"
        _, *behind = re.split(rf"\b{any_of(names)}\b", told)
    value = behind[-1].strip(" :=,") if behind else ""
    old, reading = talk.state.given.get(node.id), measure(node, value, talk.context)
    if reading.answer is not None or old is None:
        return reading.answer
    return in_the_unit_of(old, reading, value).answer or measured(node, value, talk.context)
