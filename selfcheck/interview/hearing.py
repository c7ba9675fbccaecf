"""One typed line: hazards first, then what it may be, in a fixed order."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview import closing, commands, missing, odd
from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.hazards import find
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.prompting import CHANGED, RIGHT, STILL
from selfcheck.interview.several import Several, elsewhere, several
from selfcheck.interview.showing import show_answer
from selfcheck.interview.understanding import (
    CHOICES,
    MEASURES,
    Reading,
    after_opening,
    command_of,
    exact,
    is_measured_unknown,
    is_one_of,
    is_question,
    loose,
    measure,
    normal,
)

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def hear(talk: Conversation, text: str) -> list[Message]:
    """What is said to a cleaned line."""
    hazard = find(text) if text else None
    if hazard is not None and not _picked(talk, text):
        if hazard.sure:
            return _with_option(talk, hazard.id, text)
        return closing.hazard_perhaps(talk, hazard, text)
    if talk.pending is not None:
        return _to_pending(talk, talk.pending, text)
    return ordinary(talk, text)


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
        return talk.accept(picked.answer)
    command = command_of(talk.script.interface, text)
    if command is not None and not (node.kind == "say" and is_one_of(talk.script.interface, "go_on", text)):
        return commands.do(talk, command)
    return _by_kind(talk, node, text)


def options_of(answer: Answer) -> tuple[str, ...]:
    """An answer as the keys under which something may be said after it."""
    return choices_of(answer)


def offer(talk: Conversation, node: Node, reading: Reading, text: str) -> list[Message]:
    """An answer is looked at for oddness and accepted; of several meanings the person picks one."""
    if reading.answer is not None:
        return odd.accept_or_question(talk, node, reading.answer)
    meanings = reading.meanings
    answers = {str(place): answer for place, (_, answer) in enumerate(meanings)}

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        return odd.accept_or_question(talk, node, answers[choice])

    choices = tuple((str(place), label) for place, (label, _) in enumerate(meanings))
    return talk.ask(Pending(talk.phrases.say("which_unit"), choices, choose))


def _picked(talk: Conversation, text: str) -> bool:
    """Whether a line is just the words of a choice on show: then the choice itself says what it raises."""
    return talk.prompt is not None and any(normal(text) == normal(choice.label) for choice in talk.prompt.choices)


def _with_option(talk: Conversation, hazard: str, text: str) -> list[Message]:
    """A hazard told in words; where the open question has an option that raises it, that is the answer too."""
    node = talk.node
    raising = [option for option, raised in node.hazard.items() if raised == hazard] if node else []
    if node is not None and talk.pending is None and node.kind in CHOICES and len(raising) == 1:
        value = raising[0] if node.kind == "choose" else (raising[0],)
        talk.record(Answer(node.id, "value", value, said=text))
    return closing.hazard_told(talk, hazard, text)


def _to_pending(talk: Conversation, pending: Pending, text: str) -> list[Message]:
    """A line while a small question stands in between."""
    plain = normal(text)
    listen = talk.script.interface.listen
    for number, (ident, label) in enumerate(pending.choices, 1):
        same_word = ident in ("yes", "no") and plain in listen.get(ident, ())
        if plain and (plain == normal(label) or plain == str(number) or same_word):
            return pending.choose(ident)
    command = command_of(talk.script.interface, text)
    if command in ("help", "repeat", "leave", "quit") or (command in commands.WAYS_OUT and not pending.firm):
        return commands.do(talk, command)
    if not text:
        return [Message("trouble", talk.phrases.say("empty")), *talk.question()]
    if pending.firm:
        talk.record(Answer(NOTE, "value", text, said=text))
        return [Message("trouble", talk.phrases.say("no_match_options")), *talk.question()]
    said = pending.other(text)
    if said is not None:
        return said
    if command is None and plain.isdecimal():
        return [Message("trouble", talk.phrases.say("no_match_options")), *talk.question()]
    talk.drop_pending()
    return ordinary(talk, text)


def _at_end(talk: Conversation, text: str) -> list[Message]:
    command = command_of(talk.script.interface, text)
    if command in ("back", "change", "trouble", "help"):
        return commands.do(talk, command)
    if text and (said := missing.side_question(talk, text)):
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
    if node.kind == "note":
        if is_question(interface, text) and (said := missing.side_question(talk, text)):
            return said
        return talk.accept(Answer(node.id, "value", text, said=text))
    if node.kind == "say" and (not text or is_one_of(interface, "go_on", text) or normal(text) == "1"):
        return talk.accept(Answer(node.id, "value", said=text))
    if node.kind == "confirm" and (said := _confirm(talk, node, text)) is not None:
        return said
    if (said := _correction(talk, text)) is not None:
        return said
    asks = is_question(interface, text)
    if asks and (said := missing.side_question(talk, text)):
        return said
    if (said := _several(talk, text)) is not None:
        return said
    reading = measure(node, text, talk.context) if node.kind in MEASURES else loose(talk.script, node, text)
    if not reading.nothing and not (asks and node.kind in CHOICES):
        return _fits(talk, node, reading, text) if reading.fits else offer(talk, node, reading, text)
    if node.kind in MEASURES and is_measured_unknown(node, text, talk.context):
        return commands.unknown(talk)
    named = after_opening(interface, "change", text)
    if named:
        return commands.change(talk, named)
    found = elsewhere(talk.script, talk.state, text)
    if found.answers and not talk.revising:
        return talk.ask(_read_back(talk, found, text))
    return missing.not_understood(talk, text, asks=asks)


def _confirm(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    prompt = talk.prompt
    plain = normal(text)
    if plain in talk.script.interface.listen.get("yes", ()):
        return talk.accept(Answer(node.id, "value", said=text))
    if plain in talk.script.interface.listen.get("no", ()):
        return commands.change(talk)
    for choice in prompt.choices if prompt else ():
        if plain in (str(choice.number), normal(choice.label)):
            if choice.id == RIGHT:
                return talk.accept(Answer(node.id, "value", said=text))
            return commands.start_change(talk, choice.id)
    return None


def _fits(talk: Conversation, node: Node, reading: Reading, text: str) -> list[Message]:
    """More than one option fits: the person picks one of them."""
    options = reading.fits

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        return talk.accept(Answer(node.id, "value", choice, said=text))

    choices = tuple((option, talk.words(talk.script.label_of(node.id, option))) for option in options)
    return talk.ask(Pending(talk.phrases.say("which"), choices, choose))


def _correction(talk: Conversation, text: str) -> list[Message] | None:
    """ "No, it was 18": a new value for the question before, when it is one for that and the line says so."""
    rest = after_opening(talk.script.interface, "correction", text)
    counting = [ident for ident in talk.state.answered if talk.script.nodes[ident].kind not in ("say", "confirm")]
    if not rest or not counting or talk.revising:
        return None
    last = talk.script.nodes[counting[-1]]
    if last.gate or last.opens or last.closes:
        return None
    reading = measure(last, rest, talk.context) if last.kind in MEASURES else exact(talk.script, last, rest)
    if reading.nothing or (last.kind in MEASURES and reading.answer is not None and reading.answer.value == 0):
        return None
    talk.revise(last.id)
    return offer(talk, last, reading, text)


def _several(talk: Conversation, text: str) -> list[Message] | None:
    """More than one answer in a line, or one to another question: read back for a yes."""
    found = several(talk.script, talk.state, text, talk.context)
    node = talk.node
    others = [answer for answer in found.answers if node is None or answer.question != node.id]
    if not others or talk.revising or (len(found.answers) < 2 and found.rest):
        return None
    return talk.ask(_read_back(talk, found, text))


def _read_back(talk: Conversation, found: Several, text: str) -> Pending:
    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            return talk.accept(*found.answers)
        return [Message("note", talk.phrases.say("several_no")), *talk.question()]

    lines = [talk.phrases.say("several")]
    for answer in found.answers:
        value = show_answer(talk.script, answer, talk.context.units)
        lines.append(talk.phrases.say("several_line", name=talk.script.name_of(answer.question), value=value))
    lead = [Message("echo", "\n".join(lines))]
    if found.rest:
        lead.append(Message("note", talk.phrases.say("several_rest", rest="; ".join(found.rest))))
        talk.record(Answer(NOTE, "value", text, said=text))
    choices = (("yes", talk.phrases.say("yes")), ("no", talk.phrases.say("no")))
    return Pending(talk.phrases.say("several_ask"), choices, choose, lead=tuple(lead))
