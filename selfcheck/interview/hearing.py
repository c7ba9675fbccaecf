"""One typed line: hazards first, then a small question that stands in between, then the open question."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview import closing, commands, missing, standing
from selfcheck.interview.answering import ordinary
from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.context import choices_of
from selfcheck.interview.hazard_fitting import THING_LOST, fitting, lost
from selfcheck.interview.hazards import Hazard, find
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.passing import beside_offer, offer_first
from selfcheck.interview.pending import Pending
from selfcheck.interview.prompting import caution_message
from selfcheck.interview.showing import inline
from selfcheck.interview.typed_line import asks_in_passing, command_of, is_one_of, normal, words_in
from selfcheck.interview.understanding import CHOICES, exact, loose

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


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
            return _with_option(talk, hazard.id, text)
        return _perhaps(talk, hazard, text)
    if is_one_of(talk.script.interface, "what_now", text) and (said := _what_now(talk)):
        return said
    if _calls_for_help(talk, text):
        return [*_whom_to_call(talk), Message("help", talk.phrases.say("help")), *talk.question()]
    if talk.pending is not None:
        return _to_pending(talk, talk.pending, text)
    return standing.misheard(talk, text) or ordinary(talk, text)


def _what_now(talk: Conversation) -> list[Message]:
    """What to do, asked by somebody in need: what the danger asks for, the step at hand, or to tell what is wrong.

    Nothing where nobody is known to be in need.
    """
    if talk.state.answered.hazards:
        return [closing.caution_of(talk, talk.state.answered.hazards[-1]), *talk.question()]
    in_need = talk.script.flow.in_need or (talk.pending is not None and talk.pending.in_need)
    if not in_need or talk.prompt is None:
        return []
    if talk.prompt.kind == "say":
        return talk.question()
    return [*_whom_to_call(talk), *talk.question()]


def _calls_for_help(talk: Conversation, text: str) -> bool:
    return is_one_of(talk.script.interface, "calls_for_help", text)


def _whom_to_call(talk: Conversation) -> list[Message]:
    return [Message("help", talk.phrases.say("what_now_tell"))]


def _mind_the_lost(talk: Conversation, text: str) -> list[Message] | None:
    """The caution for who may want to reach for a thing; the line is kept, and the open question asked again."""
    caution = talk.script.cautions.get(THING_LOST) if text and lost(text) else None
    if caution is None:
        return None
    node = talk.node
    said = [caution_message(caution, talk.phrases, whole=True)]
    if node is not None and node.kind == "note" and talk.pending is None:
        return [*said, *ordinary(talk, text)]
    talk.record(Answer(NOTE, "value", text, said=text))
    return [*said, *talk.question()]


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


def _with_option(talk: Conversation, hazard: str, text: str) -> list[Message]:
    """A hazard told in words; where the open question has an option that raises it, that is the answer too."""
    node = talk.node
    raising = [option for option, raised in node.hazard.items() if raised == hazard] if node else []
    if node is not None and talk.pending is None and node.kind in CHOICES and len(raising) == 1:
        value = raising[0] if node.kind == "choose" else (raising[0],)
        talk.record(Answer(node.id, "value", value, said=text))
    return closing.hazard_told(talk, hazard, text)


def _perhaps(talk: Conversation, hazard: Hazard, line: str) -> list[Message]:
    """A line that may tell of a hazard: asked before it is acted on, and taken as any other when it does not."""
    caution = talk.script.cautions.get(hazard.id)
    told = (caution.told or caution.hazard) if caution else line
    talk.record(Answer(NOTE, "value", line, said=line))
    before = talk.pending

    def choose(choice: str) -> list[Message]:
        if choice == "yes":
            return closing.hazard_told(talk, hazard.id, line)
        talk.drop_pending()
        if hazard.also:
            return _with_option(talk, hazard.also, line)
        note = Message("note", talk.phrases.say("hazard_not"))
        if before is None:
            return [note, *ordinary(talk, line)]
        talk.ask(before)
        return [note, *_to_pending(talk, before, line)]

    choices = (("yes", talk.phrases.say("hazard_yes")), ("no", talk.phrases.say("hazard_no")))
    asked = talk.phrases.say("hazard_check", told=inline(told))
    parting = (closing.caution_of(talk, hazard.id),)
    lead = tuple(_whom_to_call(talk)) if _calls_for_help(talk, line) else ()
    return talk.ask(Pending(asked, choices, choose, lead=lead, firm=True, parting=parting, in_need=True))


def _to_pending(talk: Conversation, pending: Pending, text: str) -> list[Message]:
    """A line while a small question stands in between."""
    picked = _choice(talk, pending, text)
    if picked is not None:
        return pending.choose(picked)
    command = command_of(talk.script.interface, text)
    if pending.offered and command in ("unknown", "skip"):
        return offer_first(talk)
    if command in commands.ANYWHERE or (command in commands.WAYS_OUT and not pending.firm):
        return commands.do(talk, command)
    if not text:
        return [Message("trouble", talk.phrases.say("empty")), *talk.question()]
    if missing.asks(talk, text) and (said := missing.side_question(talk, text)):
        return said
    if is_one_of(talk.script.interface, "yes", text) and len(pending.choices) > 2:
        return [Message("trouble", talk.phrases.say("yes_to_which")), *talk.question()]
    if pending.firm:
        if asks_in_passing(talk.script.interface, text) and (said := missing.side_question(talk, text)):
            return said
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
