"""Answers given in passing: several in a line, or one to another question. They are read back for a yes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.by_option import adds_on
from selfcheck.interview.measuring import measure
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import named_alone
from selfcheck.interview.nodes import Node
from selfcheck.interview.odd import oddities
from selfcheck.interview.pending import Pending
from selfcheck.interview.recorded import known
from selfcheck.interview.replay import follow
from selfcheck.interview.routing import true_of
from selfcheck.interview.several import Several, elsewhere, several, united
from selfcheck.interview.showing import at_start, inline, show_within
from selfcheck.interview.typed_line import after_opening, normal
from selfcheck.interview.understanding import CHOICES, MEASURES, exact, loose

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


#: so many lines that are neither yes nor no turn an offer down; our choice
PATIENT = 3
#: the phrases of a read-back: before it, the question, and what is said to a no
_SEVERAL = ("several", "several_ask", "several_no")
_OWN = ("understood_part", "elsewhere_ask", "several_no")
_ELSEWHERE = ("elsewhere", "elsewhere_ask", "elsewhere_no")


def in_passing(talk: Conversation, text: str) -> list[Message] | None:
    """More than one answer in a line, or one to another question: read back. None when the line is neither."""
    if talk.revising:
        return None
    found = several(talk.script, talk.state, text, talk.context)
    node = talk.node
    others = [answer for answer in found.answers if node is None or answer.question != node.id]
    if node is not None and node.gate and not found.later:
        return None
    more_than_one = len(found.answers) + len(found.on_record) > 1
    if (others or (found.answers and found.on_record)) and (more_than_one or not (found.rest or found.later)):
        return offer_back(talk, found, text)
    if found.on_record and not found.answers:
        return [*_beside_what_is_offered(talk, found, text), *talk.question()]
    if not found.answers and found.later:
        talk.record(Answer(NOTE, "value", text, said=text))
        return [Message("note", talk.phrases.say("told_too_early")), *talk.question()]
    return None


def ask_for_a_fact(talk: Conversation, text: str) -> list[Message] | None:
    """A fact that is named without what is so of it: asked in full, with what the record says. None for other lines."""
    node, named = talk.node, named_alone(talk.script, text)
    if named is None or talk.revising or node is None or node.gate or node is named:
        return None
    if not true_of(named.told_when, talk.state.answered, talk.context):
        return None
    old = _before(talk, named)
    talk.revise(named.id)
    if old is None:
        return talk.question()
    name, value = at_start(talk.script.name_of(named.id)), show_within(talk.script, old, talk.context.units)
    return [Message("note", talk.phrases.say("record_says", name=name, value=value)), *talk.question()]


def in_part(talk: Conversation, text: str) -> list[Message] | None:
    """A line of which one part surely answers the open question, and the rest is too early or not clear: read back."""
    found = several(talk.script, talk.state, text, talk.context)
    if talk.revising or not found.answers or not (found.rest or found.later):
        return None
    return talk.ask(read_back(talk, found, text))


def offer_back(talk: Conversation, found: Several, text: str) -> list[Message]:
    """What was understood, read back for a yes; nothing is offered that was said before, just so."""
    given = {**talk.state.answered.aside, **talk.state.answered}
    before = [given.get(answer.question) for answer in found.answers]
    if all(
        old is not None and (old.state, old.value) == (new.state, new.value)
        for old, new in zip(before, found.answers, strict=True)
    ):
        return [Message("note", talk.phrases.say("known_already")), *talk.question()]
    return talk.ask(read_back(talk, found, text))


def read_back(talk: Conversation, found: Several, text: str) -> Pending:
    """What was understood, with what it takes the place of, and "is that right?"."""

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            return talk.accept(*found.answers)
        return [Message("note", talk.phrases.say(left)), *talk.question()]

    node = talk.node
    own = node is not None and all(answer.question == node.id for answer in found.answers)
    lead_in, ask, left = _OWN if own else _SEVERAL if len(found.answers) > 1 else _ELSEWHERE
    lines = [talk.phrases.say(lead_in), *(_line(talk, answer) for answer in found.answers)]
    lead = [Message("echo", "\n".join(lines)), *_beside_what_is_offered(talk, found, text)]
    if any(adds_on(talk.script.nodes[one.question]) for one in found.answers):
        lead.append(Message("note", talk.phrases.say("more_signs")))
    lead += [Message("say", doubt) for doubt in _doubts(talk, found)]
    choices = (("yes", talk.phrases.say("yes")), ("no", talk.phrases.say("no")))
    return Pending(talk.phrases.say(ask), choices, choose, lead=tuple(lead), offered=found.answers)


def _beside_what_is_offered(talk: Conversation, found: Several, text: str) -> list[Message]:
    """What of a line is on record already, what was not understood, and what was told too early; the line is kept."""
    said: list[Message] = []
    if found.on_record:
        told = "; ".join(
            talk.phrases.say(
                "several_line",
                name=inline(talk.script.name_of(one.question)),
                value=inline(show_within(talk.script, one, talk.context.units)),
            )
            for one in found.on_record
        )
        said.append(Message("note", talk.phrases.say("on_record", told=told)))
    if found.rest:
        said.append(Message("note", talk.phrases.say("several_rest", rest="; ".join(found.rest))))
    if found.later:
        said.append(Message("note", talk.phrases.say("told_too_early")))
    if found.rest or found.later:
        talk.record(Answer(NOTE, "value", text, said=text))
    return said


def beside_offer(talk: Conversation, pending: Pending, text: str) -> list[Message] | None:
    """A line while answers are read back: more answers join them, a correction mends them, anything else waits.

    None when it turns the offer down and says something else.
    """
    rest = after_opening(talk.script.interface, "correction", text)
    more = _more(talk, pending.offered, rest or text)
    if more:
        talk.drop_pending()
        joined = {answer.question: answer for answer in pending.offered}
        for answer in more:
            old = None if rest else joined.get(answer.question)
            joined[answer.question] = united(talk.script, old, answer) if old is not None else answer
        return talk.ask(read_back(talk, Several(tuple(joined.values())), text))
    return None if rest else offer_first(talk)


def offer_first(talk: Conversation) -> list[Message]:
    """A line that is neither yes nor no to what is read back: asked again, and after some it is taken for a no."""
    talk.misses += 1
    if talk.misses < PATIENT:
        return [Message("trouble", talk.phrases.say("offer_first")), *talk.question()]
    talk.misses = 0
    talk.drop_pending()
    return [Message("note", talk.phrases.say("elsewhere_no")), *talk.question()]


def _more(talk: Conversation, offered: tuple[Answer, ...], text: str) -> tuple[Answer, ...]:
    """The answers in a line that comes on top of those on offer: all of it understood, or nothing."""
    listen = talk.script.interface.listen
    if normal(text).isdecimal() or any(normal(text) in listen.get(name, ()) for name in ("none", "go_on", "all")):
        return ()
    found = several(talk.script, talk.state, text, talk.context)
    if not found.answers and not found.later:
        found = elsewhere(talk.script, talk.state, text, talk.context)
    if found.answers and not (found.rest or found.later):
        return found.answers
    asked = talk.node
    own = asked is not None and any(one.question == asked.id for one in offered)
    if asked is not None and not asked.gate and own == (asked.kind == "choose_several"):
        known = exact(talk.script, asked, text).answer or loose(talk.script, asked, text).answer
        if known is not None:
            return (known,)
    state = talk.state
    for answer in offered:
        state = follow(talk.script, talk.context, state, answer)
    node = state.node
    if node is None or node.kind not in MEASURES:
        return ()
    reading = measure(node, text, talk.context)
    return (reading.answer,) if reading.answer is not None else ()


def _doubts(talk: Conversation, found: Several) -> list[str]:
    """What is odd about the answers, each looked at as if the others had been given before it."""
    doubts: list[str] = []
    for answer in found.answers:
        others = [one for one in found.answers if one is not answer]
        node = talk.script.nodes[answer.question]
        doubts += oddities(talk, node, answer, others)
    return list(dict.fromkeys(doubts))


def _before(talk: Conversation, node: Node) -> Answer | None:
    """What counts before a new answer: the one given, else the one on record."""
    told = talk.state.answered
    on_record = known(node, told, talk.context)
    return told.get(node.id) or told.aside.get(node.id) or (on_record[-1] if on_record else None)


def _line(talk: Conversation, answer: Answer) -> str:
    name = at_start(talk.script.name_of(answer.question))
    value = show_within(talk.script, answer, talk.context.units)
    node = talk.script.nodes[answer.question]
    old = _before(talk, node)
    if old is None:
        return talk.phrases.say("several_line", name=name, value=value)
    was = show_within(talk.script, old, talk.context.units)
    chosen = node.kind in CHOICES
    return talk.phrases.say("several_change_choice" if chosen else "several_change", name=name, value=value, old=was)
