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
from selfcheck.interview.typed_line import normal, words_in
from selfcheck.interview.understanding import MEASURES

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

#: lists of words in `listen`, in the order of the places they stand for
PLACES = ("first", "second", "third")


def by_place(talk: Conversation, text: str, counting: list[str]) -> list[Message] | None:
    """A new value for one of the answers written at the same place of the record, read back for a yes.

    `counting`: the questions whose answers may be mended, the last answered one last.
    """
    words = words_in(normal(text))
    listen = talk.script.interface.listen
    place = next((place for place, name in enumerate(PLACES) if set(words[:4]) & set(listen.get(name, ()))), None)
    if place is None or len(words) < 3:
        return None
    group = _group(talk, words, counting)
    if place >= len(group) or (group[place].id not in counting and group[place] is not talk.node):
        return None
    node, wrong = group[place], talk.script.interface.listen.get("wrong", ())
    if node.id in counting and normal(text).endswith(wrong):
        return commands.start_change(talk, node.id)
    answer = _value(talk, node, [*listen.get("a_reading", ()), *_names(talk, group)], text)
    return talk.ask(read_back(talk, Several((answer,)), text)) if answer is not None else None


def _group(talk: Conversation, words: list[str], counting: list[str]) -> list[Node]:
    """The questions of one reading, in order: those whose name stands in the line, else those answered last."""
    nodes = talk.script.nodes
    measured = [nodes[one] for one in reversed(counting) if nodes[one].kind in MEASURES and nodes[one].writes]
    if talk.node is not None and talk.node.kind in MEASURES and talk.node.writes:
        measured.insert(0, talk.node)
    groups = [[one for one in nodes.values() if one.writes == node.writes] for node in measured]
    groups = [group for group in groups if len(group) > 1]
    named = [group for group in groups if any(set(words_in(normal(one))) <= set(words) for one in _names(talk, group))]
    listen = talk.script.interface.listen
    if not named and not set(words) & set(listen.get("a_reading", ())):
        return []
    return next(iter(named or groups), [])


def _names(talk: Conversation, group: list[Node]) -> list[str]:
    return [name for node in group for name in talk.script.words_of(node.id).names]


def _value(talk: Conversation, node: Node, names: list[str], text: str) -> Answer | None:
    """The amount behind the words that name the reading; a bare number is in the unit of the one it replaces."""
    listen = talk.script.interface.listen
    ends = "|".join(map(re.escape, listen.get("not_that", ())))
    told = re.split(rf"[,;]?\s+(?:{ends})\s", normal(text))[0] if ends else normal(text)
    marks = "|".join(map(re.escape, sorted(listen.get("value_behind", ()), key=len, reverse=True)))
    parts = re.split(rf"\b(?:{marks})\b", told, maxsplit=1) if marks else [told]
    value = parts[-1].strip(" :=,") if len(parts) > 1 else _behind_the_name(names, told)
    old, answer = talk.state.given.get(node.id), measure(node, value, talk.context).answer
    if answer is None and old is not None:
        answer = in_the_unit_of(old, measure(node, value, talk.context), value).answer
        answer = answer or measured(node, value, talk.context)
    return replace(answer, said=text) if answer is not None else None


def _behind_the_name(names: list[str], told: str) -> str:
    """What follows the last name of the reading, "the first rise 14 in"; "" where none stands in the line."""
    words = "|".join(map(re.escape, sorted(names, key=len, reverse=True)))
    parts = re.split(rf"\b(?:{words})\b", told) if words else []
    return parts[-1].strip(" :=,") if len(parts) > 1 else ""
