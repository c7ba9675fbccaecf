"""One typed line: hazards first, then what it may be, in a fixed order."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview import closing, commands, correcting, missing, odd, standing
from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.hazard_fitting import fitting, lost
from selfcheck.interview.hazards import Hazard, find
from selfcheck.interview.measuring import is_measured_unknown, measure, two_numbers
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import named_node
from selfcheck.interview.nodes import Node
from selfcheck.interview.passing import beside_offer, in_part, in_passing, read_back
from selfcheck.interview.pending import Pending
from selfcheck.interview.prompting import CHANGED, RIGHT, STILL, caution_message, introduce
from selfcheck.interview.replay import follow
from selfcheck.interview.several import elsewhere
from selfcheck.interview.showing import at_start
from selfcheck.interview.typed_line import after_opening, command_of, is_one_of, normal, words_in
from selfcheck.interview.understanding import CHOICES, MEASURES, Reading, exact, loose

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

#: as a command is typed; in capitals, or with "me" or a "!", it may be a cry for help
_HELP = ("help", "Help")
#: the caution for a thing that fell in
LOST = "thing_lost"


def hear(talk: Conversation, text: str) -> list[Message]:
    """What is said to a cleaned line."""
    hazard = find(text) if text else None
    if hazard is not None:
        hazard = replace(hazard, id=fitting(hazard.id, text))
    node = talk.node
    if hazard is not None and node is not None and talk.pending is None and hazard.id in node.told_as:
        return talk.accept(_told_as(talk, node, node.told_as[hazard.id], text))
    no_danger = hazard is None or (not hazard.sure and hazard.verdict != "danger")
    if no_danger and (warned := _mind_the_lost(talk, text)) is not None:
        return warned
    if hazard is not None and not _says_its_own(talk, hazard, text):
        if hazard.sure:
            return with_option(talk, hazard.id, text)
        return closing.hazard_perhaps(talk, hazard, text)
    if talk.pending is not None:
        return to_pending(talk, talk.pending, text)
    return standing.misheard(talk, text) or ordinary(talk, text)


def _mind_the_lost(talk: Conversation, text: str) -> list[Message] | None:
    """The caution for who may want to reach for a thing; the line is kept, and the open question asked again."""
    caution = talk.script.cautions.get(LOST) if text and lost(text) else None
    if caution is None:
        return None
    node = talk.node
    said = [caution_message(caution, talk.phrases, whole=True)]
    if node is not None and node.kind == "note" and talk.pending is None:
        return [*said, *ordinary(talk, text)]
    talk.record(Answer(NOTE, "value", text, said=text))
    return [*said, *talk.question()]


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

    def other(line: str) -> list[Message] | None:
        """The unit alone: "cm"."""
        read = measure(node, f"{text} {line}", talk.context).answer if node.kind in ("length", "volume") else None
        if read is None or any(sign.isdecimal() for sign in line):
            return None
        talk.drop_pending()
        return odd.accept_or_question(talk, node, read)

    choices = tuple((str(place), at_start(label)) for place, (label, _) in enumerate(meanings))
    return talk.ask(Pending(talk.phrases.say("which_unit"), choices, choose, other))


def _told_as(talk: Conversation, node: Node, option: str, text: str) -> Answer:
    """The answer that words of danger are here, with what else the line names where several may be."""
    if node.kind != "choose_several":
        return Answer(node.id, "value", option, said=text)
    heard = loose(talk.script, node, text).answer
    beside = [one for one in choices_of(heard) if one != option] if heard is not None else []
    return Answer(node.id, "value", (option, *beside), said=text)


def _says_its_own(talk: Conversation, hazard: Hazard, text: str) -> bool:
    """Whether a line is just a choice on show, or the option that raises this hazard: then the choice says it all.

    A line that only may tell of a hazard is first of all a command, or an answer that the open question knows.
    """
    if talk.prompt is not None and any(normal(text) == normal(choice.label) for choice in talk.prompt.choices):
        return True
    if not hazard.sure and command_of(talk.script.interface, text) is not None:
        return True
    node = talk.node
    if node is None or talk.pending is not None or node.kind not in CHOICES:
        return False
    known = exact(talk.script, node, text)
    if not hazard.sure and not known.nothing:
        return True
    answer = known.answer or loose(talk.script, node, text).answer
    return answer is not None and any(node.hazard.get(option) == hazard.id for option in choices_of(answer))


def with_option(talk: Conversation, hazard: str, text: str) -> list[Message]:
    """A hazard told in words; where the open question has an option that raises it, that is the answer too."""
    node = talk.node
    raising = [option for option, raised in node.hazard.items() if raised == hazard] if node else []
    if node is not None and talk.pending is None and node.kind in CHOICES and len(raising) == 1:
        value = raising[0] if node.kind == "choose" else (raising[0],)
        talk.record(Answer(node.id, "value", value, said=text))
    return closing.hazard_told(talk, hazard, text)


def to_pending(talk: Conversation, pending: Pending, text: str) -> list[Message]:
    """A line while a small question stands in between."""
    picked = _choice(talk, pending, text)
    if picked is not None:
        return pending.choose(picked)
    command = command_of(talk.script.interface, text)
    if pending.offered and command in ("unknown", "skip"):
        return [Message("trouble", talk.phrases.say("offer_first")), *talk.question()]
    if command in commands.ANYWHERE or (command in commands.WAYS_OUT and not pending.firm):
        return commands.do(talk, command)
    if not text:
        return [Message("trouble", talk.phrases.say("empty")), *talk.question()]
    if missing.asks(talk, text) and (said := missing.side_question(talk, text)):
        return said
    if pending.firm:
        talk.record(Answer(NOTE, "value", text, said=text))
        return [Message("trouble", talk.phrases.say("no_match_options")), *talk.question()]
    said = pending.other(text)
    if said is not None:
        return said
    if pending.offered and command is None and (said := beside_offer(talk, pending, text)) is not None:
        return said
    if command is None and normal(text).isdecimal():
        return [Message("trouble", talk.phrases.say("no_match_options")), *talk.question()]
    talk.drop_pending()
    dropped = [Message("note", talk.phrases.say("elsewhere_no"))] if pending.offered else []
    return [*dropped, *ordinary(talk, text)]


def _choice(talk: Conversation, pending: Pending, text: str) -> str | None:
    """The choice of a small question that a line picks: by number, by its words, or by words that only one has."""
    plain = normal(text)
    listen = talk.script.interface.listen
    if not plain:
        return None
    for number, (ident, label) in enumerate(pending.choices, 1):
        same_word = ident in ("yes", "no") and plain in listen.get(ident, ())
        if plain == normal(label) or plain == str(number) or same_word:
            return ident
    typed = set(words_in(plain)) - set(listen.get("fillers", ()))
    if pending.firm or not typed or plain.isdecimal() or command_of(talk.script.interface, text):
        return None
    fits = [ident for ident, label in pending.choices if typed <= set(words_in(normal(label)))]
    return fits[0] if len(fits) == 1 and fits[0] not in ("yes", "no") else None


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
    asks = missing.asks(talk, text)
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
        return _fits(talk, node, reading, text) if reading.fits else offer(talk, node, reading, text)
    if node.kind in MEASURES and is_measured_unknown(node, text, talk.context):
        return commands.unknown(talk)
    if node.kind in MEASURES and is_one_of(interface, "same", text) and (again := _same_again(talk, node, text)):
        return again
    named = after_opening(interface, "change", text) or _said_to_be_wrong(talk, text)
    if named:
        return commands.change(talk, named)
    found = elsewhere(talk.script, talk.state, text, talk.context)
    if found.answers and not talk.revising:
        return talk.ask(read_back(talk, found, text))
    if not asks and (said := in_part(talk, text)) is not None:
        return said
    return missing.not_understood(talk, text)


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
    return [*lead, asked, *(_fits(talk, behind, reading, text) if reading.fits else offer(talk, behind, reading, text))]


def _confirm(talk: Conversation, node: Node, text: str) -> list[Message] | None:
    prompt = talk.prompt
    plain = normal(text)
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
        return odd.accept_or_question(talk, node, Answer(node.id, "value", choice, said=text))

    choices = tuple((option, talk.words(talk.script.label_of(node.id, option))) for option in options)
    return talk.ask(Pending(talk.phrases.say("which"), choices, choose))
