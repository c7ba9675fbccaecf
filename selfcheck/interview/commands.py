"""What a person may ask of the conversation itself at any prompt, in words or by key."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview import closing, standing
from selfcheck.interview.answers import HAZARD, LEAVING, NOTE, Answer
from selfcheck.interview.messages import Message
from selfcheck.interview.naming import named_node
from selfcheck.interview.pending import Pending
from selfcheck.interview.showing import at_start, show_within

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation

COMMANDS = ("why", "how", "back", "change", "repeat", "unknown", "skip", "leave", "trouble", "help", "quit")
#: those that end a small question of the engine's own
WAYS_OUT = ("leave", "quit", "trouble", "back", "change", "unknown", "skip")
#: those that leave a small question as it is
ANYWHERE = ("why", "how", "help", "repeat", "leave", "quit")


def do(talk: Conversation, command: str) -> list[Message]:
    """Carry out one of `COMMANDS`; ValueError for another."""
    if command not in COMMANDS:
        raise ValueError(f"there is no command {command}")
    if talk.ending is not None and command not in ("back", "change", "trouble", "help"):
        return [Message("note", talk.phrases.say("at_end"))]
    if command in ("leave", "quit"):
        parting = talk.pending.parting if talk.pending else ()
        return [*parting, *closing.leave(talk)]
    if talk.pending is not None and any(ident == command for ident, _ in talk.pending.choices):
        return talk.pending.choose(command)
    if talk.pending is not None and talk.pending.firm and command not in ANYWHERE:
        return talk.question()
    return {
        "why": why,
        "how": how,
        "back": back,
        "change": change,
        "repeat": repeat,
        "unknown": unknown,
        "skip": skip,
        "trouble": trouble,
        "help": help_,
    }[command](talk)


def why(talk: Conversation) -> list[Message]:
    """Why the open question is asked."""
    node = talk.node
    text = talk.words(talk.script.words_of(node.id).why) if node else ""
    return [Message("help", text or talk.phrases.say("no_why")), *talk.question()]


def how(talk: Conversation) -> list[Message]:
    """How to do it, and what it looks like when all is well."""
    node = talk.node
    words = talk.script.words_of(node.id) if node else None
    messages: list[Message] = []
    if words is not None and words.how:
        messages.append(Message("help", talk.words(words.how)))
    if words is not None and words.healthy:
        messages.append(Message("help", talk.phrases.say("healthy", healthy=talk.words(words.healthy))))
    return [*(messages or [Message("help", talk.phrases.say("no_how"))]), *talk.question()]


def help_(talk: Conversation) -> list[Message]:
    """What can be typed."""
    return [Message("help", talk.phrases.say("help")), *talk.question()]


def repeat(talk: Conversation) -> list[Message]:
    """The open question with everything around it, once more."""
    return talk.question() if talk.pending else talk.present()


def back(talk: Conversation) -> list[Message]:
    """To the question before, whose answer no longer counts; out of a small question, a change, or leaving."""
    if talk.pending is not None or talk.revising:
        talk.drop_pending()
        talk.revise("")
        return [Message("note", talk.phrases.say("stay")), *talk.present()]
    if talk.state.leaving:
        talk.take_back(LEAVING)
        return [Message("note", talk.phrases.say("stay")), *talk.present()]
    last = _last(talk)
    if last is None:
        return [Message("note", talk.phrases.say("back_none")), *talk.question()]

    def taken_back() -> list[Message]:
        if last == HAZARD:
            return standing.taken_back(talk)
        talk.misses = 0
        talk.take_back(last)
        note = Message("note", talk.phrases.say("back_to", name=talk.script.name_of(last)))
        return [note, *talk.present()]

    return standing.unless_it_stands(talk, last, taken_back)


def change(talk: Conversation, named: str = "") -> list[Message]:
    """Ask an earlier question once more: the one that is named, else from a numbered list."""
    answered = [ident for ident in talk.state.answered if talk.script.nodes[ident].kind not in ("say", "confirm")]
    if not answered:
        return [Message("note", talk.phrases.say("change_none")), *talk.question()]
    talk.drop_pending()
    fits = named_node(talk.script, named, answered) if named else []
    if len(fits) == 1:
        return start_change(talk, fits[0])

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        return start_change(talk, choice) if choice != "_none" else [*talk.present()]

    def other(line: str) -> list[Message] | None:
        found = named_node(talk.script, line, answered)
        if len(found) != 1:
            return None
        talk.drop_pending()
        return start_change(talk, found[0])

    listed = tuple(
        (
            ident,
            talk.phrases.say("several_line", name=at_start(talk.script.name_of(ident)), value=_shown(talk, ident)),
        )
        for ident in (fits or answered)
    )
    choices = (*listed, ("_none", talk.phrases.say("change_stop")))
    return talk.ask(Pending(talk.phrases.say("change_which"), choices, choose, other))


def start_change(talk: Conversation, question: str) -> list[Message]:
    """Ask this question once more, unless a danger told there stands; until it is answered the old answer counts."""

    def asked_again() -> list[Message]:
        talk.revise(question)
        name = at_start(talk.script.name_of(question))
        note = talk.phrases.say("change_old", name=name, value=_shown(talk, question))
        return [Message("note", note), *talk.present()]

    return standing.unless_it_stands(talk, question, asked_again)


def unknown(talk: Conversation) -> list[Message]:
    """ "I don't know" as an answer, where that is one."""
    node = talk.node
    if node is None or talk.pending is not None:
        return _out_of_pending(talk)
    if node.kind in ("say", "confirm"):
        return how(talk)
    if not node.unknown_allowed:
        said = "cannot_be_unknown" if "safety" in node.tags else "pick_one"
        return [Message("note", talk.phrases.say(said)), *talk.question()]
    return talk.accept(Answer(node.id, "unknown", said=_last_said(talk)))


def skip(talk: Conversation) -> list[Message]:
    """Leave the open question out, unless it keeps people safe."""
    node = talk.node
    if node is None or talk.pending is not None:
        return _out_of_pending(talk)
    if node.kind == "say":
        return talk.accept(Answer(node.id, "value"))
    if node.gate or node.opens or node.closes or node.on_leaving or node.kind == "confirm" or not node.unknown_allowed:
        said = "pick_one" if node.kind == "confirm" or "safety" not in node.tags else "cannot_skip"
        return [Message("note", talk.phrases.say(said)), *talk.question()]
    return talk.accept(Answer(node.id, "skipped", said=_last_said(talk)))


def trouble(talk: Conversation) -> list[Message]:
    """Something is wrong: a list of what can be, and room for own words."""
    hazards = [caution for caution in talk.script.cautions.values() if caution.told]
    choices = (*((one.id, one.told) for one in hazards), ("_none", talk.phrases.say("trouble_none")))

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice != "_none":
            return closing.hazard_told(talk, choice, _last_said(talk))
        return [Message("note", talk.phrases.say("trouble_over")), *talk.present()]

    def other(line: str) -> list[Message] | None:
        talk.record(Answer(NOTE, "value", line, said=line))
        return [Message("note", talk.phrases.say("note_kept")), *talk.question()]

    return talk.ask(Pending(talk.phrases.say("trouble_ask"), choices, choose, other, in_need=True))


def _last(talk: Conversation) -> str | None:
    """What to take back: the last thing answered that counts, words that were only shown left out."""
    state = talk.state
    counting = [ident for ident in state.answered if talk.script.nodes[ident].kind != "say"]
    last = max(counting, key=lambda ident: state.at.get(ident, 0), default=None)
    if state.told and (last is None or _told_after(talk, last)):
        return HAZARD
    if last is None:
        return None
    in_order = max(counting, key=lambda ident: talk.script.order[ident])
    return last if state.ended else in_order


def _told_after(talk: Conversation, last: str) -> bool:
    told = [place for place, answer in enumerate(talk.answers, 1) if answer.question == HAZARD]
    return bool(told) and told[-1] > talk.state.at.get(last, 0)


def _out_of_pending(talk: Conversation) -> list[Message]:
    if talk.pending is None:
        return [Message("note", talk.phrases.say("at_end"))]
    talk.drop_pending()
    return talk.present()


def _shown(talk: Conversation, ident: str) -> str:
    return talk.words(show_within(talk.script, talk.state.answered[ident], talk.context.units))


def _last_said(talk: Conversation) -> str:
    """The line that led to a command; "" when it was given by key."""
    last = talk.messages[-1] if talk.messages else None
    return last.text if last is not None and last.kind == "said" else ""
