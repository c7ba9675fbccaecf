"""A line that is meant for the open question: what it may be, in a fixed order."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview import commands, correcting, missing, odd
from selfcheck.interview.answers import Answer
from selfcheck.interview.measuring import measure, says_unknown, two_numbers
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import named_node
from selfcheck.interview.nodes import Node
from selfcheck.interview.passing import ask_for_a_fact, in_part, in_passing, offer_back
from selfcheck.interview.picking import offer
from selfcheck.interview.prompting import CHANGED, RIGHT, STILL, introduce
from selfcheck.interview.replay import follow
from selfcheck.interview.several import elsewhere
from selfcheck.interview.typed_line import after_opening, command_of, is_one_of, is_question, normal, without_small_talk
from selfcheck.interview.understanding import CHOICES, MEASURES, exact, loose

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def ordinary(talk: Conversation, text: str) -> list[Message]:
    """A line that tells of no hazard and belongs to no small question."""
    node = talk.node
    if node is None:
        return _at_end(talk, text)
    if not text and node.kind != "say":
        return [Message("trouble", talk.phrases.say("empty")), *talk.question()]
    if talk.recorded is not None and (said := _still_true(talk, node, text)) is not None:
        return said
    picked = exact(talk.script, node, text)
    if picked.answer is not None:
        return odd.accept_or_question(talk, node, picked.answer)
    if node.kind == "confirm" and is_one_of(talk.script.interface, "yes", text):
        return talk.accept(Answer(node.id, "value", said=text))
    if node.kind == "confirm" and is_one_of(talk.script.interface, "no", text):
        return commands.change(talk)
    command = command_of(talk.script.interface, text)
    if command is not None and not (node.kind == "say" and is_one_of(talk.script.interface, "go_on", text)):
        return commands.do(talk, command)
    return _by_kind(talk, node, text)


def _at_end(talk: Conversation, text: str) -> list[Message]:
    command = command_of(talk.script.interface, text)
    if command in ("back", "change", "trouble", "help"):
        return commands.do(talk, command)
    if missing.asks(talk, text) and (said := missing.side_question(talk, text)):
        return said
    return [Message("note", talk.phrases.say("at_end"))]


def _still_true(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    """An answer to "still true?"; a new value counts as well."""
    recorded = talk.recorded
    plain = normal(text)
    for number, choice in enumerate((STILL, CHANGED), 1):
        label = talk.phrases.say("still_yes" if choice == STILL else "still_no")
        words = talk.script.interface.listen.get("yes" if choice == STILL else "no", ())
        if plain not in (normal(label), str(number), *words):
            continue
        if choice == STILL and recorded is not None:
            return talk.accept(Answer(node.id, "value", recorded.value, said=text))
        talk.afresh(node.id)
        return talk.present()
    return None


def _by_kind(talk: Conversation, node: Node, text: str) -> list[Message]:
    interface = talk.script.interface
    asks = missing.asks(talk, text) and not _is_a_guess(talk, node, text)
    if node.kind in CHOICES and any(is_one_of(interface, name, text) for name in ("yes", "both")):
        return [Message("trouble", talk.phrases.say("yes_to_which")), *talk.question()]
    if node.kind == "note":
        if asks and (said := missing.side_question(talk, text)):
            return said
        return odd.accept_or_question(talk, node, Answer(node.id, "value", text, said=text))
    if node.kind == "say" and (not text or is_one_of(interface, "go_on", text) or normal(text) == "1"):
        return talk.accept(Answer(node.id, "value", said=text))
    if node.kind == "confirm" and (said := _confirm(talk, node, text)) is not None:
        return said
    if (said := correcting.correction(talk, text)) is not None:
        return said
    if node.kind == "say" and not asks and (said := _step_done(talk, node, text)) is not None:
        return said
    if asks and (said := missing.side_question(talk, text)):
        return said
    if (said := in_passing(talk, text)) is not None:
        return said
    if two_numbers(node, text):
        return [Message("trouble", talk.phrases.say("one_number")), *talk.question()]
    reading = measure(node, text, talk.context) if node.kind in MEASURES else loose(talk.script, node, text)
    if not reading.nothing and not (asks and node.kind in CHOICES):
        return offer(talk, node, reading, text)
    if says_unknown(node, text, talk.context):
        return commands.unknown(talk)
    if node.kind in MEASURES and is_one_of(interface, "same", text) and (again := _same_again(talk, node, text)):
        return again
    named = after_opening(interface, "change", text) or _said_to_be_wrong(talk, text)
    if named:
        return commands.change(talk, named)
    if not asks and (said := ask_for_a_fact(talk, text)) is not None:
        return said
    found = elsewhere(talk.script, talk.state, text, talk.context)
    if found.answers and not talk.revising:
        return offer_back(talk, found, text)
    if not asks and (said := in_part(talk, text)) is not None:
        return said
    shorter = without_small_talk(interface, text)
    if shorter and not (node.kind == "choose" and "safety" in node.tags):  # there, "I think" is said for a reason
        return ordinary(talk, shorter)
    return missing.not_understood(talk, text)


def _is_a_guess(talk: Conversation, node: Node, text: str) -> bool:
    """Whether a line is an amount with a question mark behind it: "10 in?"."""
    if node.kind not in MEASURES or is_question(talk.script.interface, text.rstrip(" ?")):
        return False
    return any(sign.isdecimal() for sign in text) and measure(node, text, talk.context).answer is not None


def _same_again(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    """ "The same": the value of the last answer that is written at the same place."""
    nodes = talk.script.nodes
    alike = [one for name, one in talk.state.answered.items() if node.writes and nodes[name].writes == node.writes]
    if not alike or alike[-1].state != "value":
        return None
    return odd.accept_or_question(talk, node, replace(alike[-1], question=node.id, said=text, at=""))


def _said_to_be_wrong(talk: Conversation, text: str) -> str:
    """What a line says is wrong: "the rise is wrong". "" when it names no answer that was given."""
    plain = normal(text)
    for ending in talk.script.interface.listen.get("wrong", ()):
        named = plain.removesuffix(ending).strip()
        if named != plain and named_node(talk.script, named, list(talk.state.answered)):
            return named
    return ""


def _step_done(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    """A line at a step of words only that answers the question right behind it: the step is done, and answered."""
    interface = talk.script.interface
    done = Answer(node.id, "value")
    after = follow(talk.script, talk.context, talk.state, done)
    behind = after.node
    if talk.revising or behind is None or behind.kind not in (*CHOICES, *MEASURES):
        return None
    if any(is_one_of(interface, words, text) for words in ("yes", "no", "none")):
        return None  # not said of a question that nobody has seen
    if behind.kind in MEASURES:
        reading = measure(behind, text, talk.context)
    elif normal(text).isdecimal():
        return None
    else:
        reading = exact(talk.script, behind, text)
        if reading.nothing and not behind.gate:
            reading = loose(talk.script, behind, text)
    if reading.nothing:
        return None
    talk.record(done)
    lead = introduce(talk.script, talk.state, talk.context, talk.phrases, talk.script.section_of[behind.id].id)
    asked = Message("say", talk.words(talk.script.words_of(behind.id).ask))
    return [*lead, asked, *(offer(talk, behind, reading, text))]


def _confirm(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    prompt = talk.prompt
    plain = normal(text)
    for choice in prompt.choices if prompt else ():
        if plain in (str(choice.number), normal(choice.label)):
            if choice.id == RIGHT:
                return talk.accept(Answer(node.id, "value", said=text))
            return commands.start_change(talk, choice.id)
    return None
