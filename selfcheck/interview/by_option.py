"""Answers by the words of an option of another question, and what is told before its time."""

from __future__ import annotations

from collections.abc import Callable

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Context
from selfcheck.interview.naming import answerable
from selfcheck.interview.nodes import Node
from selfcheck.interview.routing import section_holds
from selfcheck.interview.script import Script
from selfcheck.interview.standing import raised
from selfcheck.interview.state import State
from selfcheck.interview.typed_line import normal, words_in
from selfcheck.interview.understanding import CHOICES, Reading, exact, loose, whole


def told_too_early(script: Script, state: State, context: Context, ident: str) -> bool:
    """Whether a question stands behind an opening that is still to come: nobody can have seen that yet.

    With nothing answered so far it may have been seen before, as on a sheet that is typed in.
    """
    first = script.first_opening
    if first is None or state.opened or script.order[ident] <= script.order[first.id]:
        return False
    return bool(state.answered) and not section_holds(script, context, state, script.nodes[ident])


def _about_safety(node: Node, *, sure: bool) -> bool:
    """Whether a question leads on to opening something, so that no line of another question answers it.

    Signs that may be told at any time do not: each one told only makes things worse.
    """
    return "safety" in node.tags and not ((sure or node.told_when) and {"verdict", "record"} & {*node.tags})


def of_another_way(script: Script, state: State, text: str) -> Answer | None:
    """The words of another option of the only question answered that has it: the person goes another way."""
    if len(words_in(normal(text))) < 2 or (state.node is not None and state.node.closes):
        return None  # a word by itself may have been said of anything
    found: list[Answer] = []
    for ident, old in state.answered.items():
        node = script.nodes[ident]
        if node.kind != "choose" or not answerable(node) or raised(script, state, ident):
            continue
        answer = exact(script, node, text).answer
        if answer is not None and answer.value != old.value:
            found.append(answer)
    return found[0] if len(found) == 1 else None


def adds_on(node: Node) -> bool:
    """Whether what is told in passing is added to what was told before: signs that may be told at any time."""
    return node.kind == "choose_several" and bool(node.told_when)


def of_a_sign(script: Script, state: State, text: str, context: Context) -> Answer | None:
    """A line that holds some words of a sign that may be told at any time."""
    answer = of_an_option(script, state, text, context, loose)
    return answer if answer is not None and adds_on(script.nodes[answer.question]) else None


def of_an_option(
    script: Script, state: State, part: str, context: Context, read: Callable[[Script, Node, str], Reading] = exact
) -> Answer | None:
    """The part as the words of an option that only one question has: not answered yet, or of signs that may be more.

    Of several, one that may be told at any time counts.
    """
    plain = normal(part)
    listen = script.interface.listen
    if plain.isdecimal() or any(
        plain in listen.get(name, ()) for name in ("none", "all", "yes", "no", "go_on", "same")
    ):
        return None
    now = script.order[state.node.id] if state.node is not None else -1
    lone = len(words_in(plain)) < 2  # a word by itself may have been said of anything
    found: list[Answer] = []
    for node in script.nodes.values():
        gone_by = script.order[node.id] < now and (lone or not node.told_when)
        if gone_by or _about_safety(node, sure=read is exact) or not _takes_more(script, state, context, node):
            continue
        answer = read(script, node, part).answer
        if answer is None or not answer.value or (read is loose and adds_on(node) and not whole(script, node, answer)):
            continue
        found.append(answer)
    at_any_time = [one for one in found if script.nodes[one.question].told_when]
    found = at_any_time or found
    return found[0] if len(found) == 1 else None


def _takes_more(script: Script, state: State, context: Context, node: Node) -> bool:
    """Whether options of a question may be told in passing: none were told so far, or more signs may be."""
    free = node.kind in CHOICES and answerable(node) and (node.id not in state.given or adds_on(node))
    return free and section_holds(script, context, state, node)
