"""Lines that are no answer: questions asked back, and what cannot be understood."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from selfcheck.interview import hazards, odd
from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.guessing import meant
from selfcheck.interview.hazard_fitting import fitting
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node, Term
from selfcheck.interview.pending import Pending
from selfcheck.interview.prompting import caution_message
from selfcheck.interview.showing import inline
from selfcheck.interview.typed_line import after_opening, asks_in_passing, is_one_of, is_question, normal, words_in
from selfcheck.interview.understanding import CHOICES, MEASURES, unable

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation, Reply


def asks(talk: Conversation, text: str) -> bool:
    """Whether a line asks something back, "what if ..." among it, or asks for a thing by its name alone."""
    interface, plain = talk.script.interface, normal(text)
    if not any(sign.isalpha() for sign in plain) or any(
        plain in interface.listen.get(one, ()) for one in ("yes", "no")
    ):
        return False
    return is_question(interface, text) or plain in interface.listen.get("asked_by_name", ())


def side_question(talk: Conversation, text: str) -> list[Message] | None:
    """The answer to a question asked back and the open question again; None when the line is not taken for one.

    "What if" about a danger is met with its caution; a question about a danger to life has it ahead of the answer.
    """
    asked_for = after_opening(talk.script.interface, "what_is", text)
    term = find_term(talk, asked_for) if asked_for else None
    if term is not None:
        return [Message("help", term.means, source=term.source), *talk.question()]
    asked = asks(talk, text) or asks_in_passing(talk.script.interface, text)
    danger = talk.script.cautions.get(fitting(hazards.asked(text) or "", text)) if asked else None
    supposing = talk.script.interface.listen.get("supposing", ())
    if danger is not None and normal(text).startswith(supposing):
        return [caution_message(danger, talk.phrases, whole=True), *talk.question()]
    reply = talk.ask_back(text) if talk.ask_back is not None else None
    answer = [Message("help", reply.text, source=reply.source)] if reply is not None else []
    if reply is not None and not reply.sure:
        answer.insert(0, Message("note", talk.phrases.say("taken_as", asked=reply.question)))
    if danger is not None and (reply is None or danger.level == "danger"):
        answer.insert(0, caution_message(danger, talk.phrases, whole=reply is None))
    return [*answer, *talk.question()] if answer else None


def find_term(talk: Conversation, words: str) -> Term | None:
    """The glossary's entry for a word, under any of its spellings."""
    plain = normal(words).removesuffix(" mean").removesuffix(" for")
    for word, term in talk.script.glossary.items():
        spellings = {normal(spelling) for spelling in (word.replace("_", " "), *term.also)}
        if plain in spellings or plain.removesuffix("s") in spellings:
            return term
    return None


def not_understood(talk: Conversation, text: str) -> list[Message]:
    """A line that fits nothing: kept as a note, and the question put another way, more plainly each time."""
    asked = asks(talk, text)
    talk.record(Answer(NOTE, "value", text, said=text))
    kept = Message("note", talk.phrases.say("note_kept"))
    if not asked and asks_in_passing(talk.script.interface, text):
        asked = True
        if said := side_question(talk, text):
            return said
    if asked:
        perhaps = talk.ask_near(text) if talk.ask_near is not None else ()
        if perhaps:
            return [kept, *talk.ask(_one_of_these(talk, perhaps))]
        return [_not_in_guide(talk), kept, *talk.question()]
    if may_be_unknown(talk, text):
        return talk.ask(_not_known(talk))
    if talk.node is not None and talk.pending is None and (told := hazards.perhaps(text)):
        return talk.ask(_perhaps_danger(talk, tuple(dict.fromkeys(fitting(one.id, text) for one in told)), text))
    if talk.node is not None and talk.node.kind == "say":
        return [kept, *talk.question()]
    near = meant(talk.script, talk.node, text) if talk.node is not None and talk.pending is None else None
    if near is not None and talk.node is not None:
        return talk.ask(_did_you_mean(talk, talk.node, near, text))
    talk.misses += 1
    if talk.misses > 2 and talk.pending is None and talk.node is not None and talk.node.kind == "date":
        return talk.ask(_ways_out(talk, talk.node))
    return [*_in_other_words(talk), *([kept] if talk.misses == 2 else []), *talk.question()]


def may_be_unknown(talk: Conversation, text: str) -> bool:
    """Whether a line tells that it could not be done or seen, at a question that takes "I don't know"."""
    node = talk.node
    if node is None or talk.pending is not None or node.kind not in (*CHOICES, *MEASURES):
        return False
    return node.unknown_allowed and unable(set(words_in(normal(text))))


def _not_known(talk: Conversation) -> Pending:
    def choose(choice: str) -> list[Message]:
        from selfcheck.interview import commands

        talk.drop_pending()
        return commands.unknown(talk) if choice == "yes" else [*_in_other_words(talk), *talk.question()]

    talk.misses += 1
    choices = (("yes", talk.phrases.say("yes")), ("no", talk.phrases.say("no")))
    return Pending(talk.phrases.say("unknown_ask"), choices, choose)


def _perhaps_danger(talk: Conversation, dangers: Sequence[str], text: str) -> Pending:
    """The dangers that a line may tell of, to pick from. Anything else typed is heard as if nothing had been asked."""
    cautions = {danger: talk.script.cautions[danger] for danger in dangers if danger in talk.script.cautions}

    def choose(choice: str) -> list[Message]:
        from selfcheck.interview import closing

        talk.drop_pending()
        if choice:
            return closing.hazard_told(talk, choice, text)
        return [Message("note", talk.phrases.say("hazard_not")), *talk.question()]

    def other(line: str) -> list[Message] | None:
        interface = talk.script.interface
        if is_one_of(interface, "no", line) or is_one_of(interface, "none", line):
            return choose("")
        if is_one_of(interface, "yes", line) and len(cautions) == 1:
            return choose(next(iter(cautions)))
        return None

    choices = tuple((danger, inline(caution.told or caution.hazard)) for danger, caution in cautions.items())
    listed = (*choices, ("", talk.phrases.say("near_none")))
    return Pending(talk.phrases.say("danger_ask"), listed, choose, other, in_need=True)


def _not_in_guide(talk: Conversation) -> Message:
    return Message("help", talk.phrases.say("not_in_guide"))


def _one_of_these(talk: Conversation, perhaps: Sequence[Reply]) -> Pending:
    """The questions that may have been meant, to pick from. A yes or a no is never taken for the open question's."""

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        picked = next((reply for reply in perhaps if reply.asked == choice), None)
        said = Message("help", picked.text, source=picked.source) if picked is not None else _not_in_guide(talk)
        return [said, *talk.question()]

    def other(line: str) -> list[Message] | None:
        interface = talk.script.interface
        if is_one_of(interface, "no", line) or is_one_of(interface, "none", line):
            return choose("")
        if is_one_of(interface, "yes", line):
            return [Message("trouble", talk.phrases.say("no_match_options")), *talk.question()]
        return None

    choices = tuple((reply.asked, reply.question) for reply in perhaps)
    return Pending(talk.phrases.say("near_ask"), (*choices, ("", talk.phrases.say("near_none"))), choose, other)


def _ways_out(talk: Conversation, node: Node) -> Pending:
    """After several misses at a date: a few answers to pick from. A date still is one."""
    today = talk.context.today

    def choose(choice: str) -> list[Message]:
        from selfcheck.interview import closing, commands

        talk.drop_pending()
        if choice == "today":
            return odd.accept_or_question(talk, node, Answer(node.id, "value", today, said=today.isoformat()))
        return commands.unknown(talk) if choice == "unknown" else closing.leave(talk)

    say = talk.phrases.say
    unknown = (("unknown", say("date_unknown")),) if node.unknown_allowed else ()
    choices = (("today", say("date_today")), *unknown, ("leave", say("date_leave")))
    asked = talk.words(talk.script.words_of(node.id).ask)
    return Pending(" ".join((say("date_ask"), asked)), choices, choose)


def _did_you_mean(talk: Conversation, node: Node, option: str, text: str) -> Pending:
    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        if choice == "yes":
            value = option if node.kind == "choose" else (option,)
            return odd.accept_or_question(talk, node, Answer(node.id, "value", value, said=text))
        return [*_in_other_words(talk), *talk.question()]

    talk.misses += 1
    choices = (("yes", talk.phrases.say("yes")), ("no", talk.phrases.say("no")))
    label = inline(talk.words(talk.script.label_of(node.id, option)))
    return Pending(talk.phrases.say("did_you_mean", label=label), choices, choose)


def _in_other_words(talk: Conversation) -> list[Message]:
    node = talk.node
    words = talk.script.words_of(node.id) if node else None
    if node is None or words is None:
        return []
    say = talk.phrases.say
    example = [Message("trouble", say("no_match_example", example=words.example))] if words.example else []
    if talk.misses == 1:
        hint = [Message("trouble", f"{talk.prompt.hint}.")] if talk.prompt and not example else example
        again = [Message("trouble", talk.words(words.again))] if words.again else hint
        return [Message("trouble", say("no_match_again")), *again]
    if talk.misses == 2 and (talk.prompt is None or talk.prompt.choices):
        return [Message("trouble", say("no_match_options")), *example]
    if talk.misses == 2:
        return [Message("trouble", say("no_match_again")), *example]
    if node.kind in MEASURES or not (talk.prompt and talk.prompt.choices):
        return [Message("trouble", say("no_match_free"))]
    return [Message("trouble", say("no_match_list" if talk.prompt.unknown_allowed else "no_match_one"))]
