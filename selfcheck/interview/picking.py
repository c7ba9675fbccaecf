"""What a line was read as: accepted where it is one thing, else the person picks which is meant."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview import odd
from selfcheck.interview.answers import Answer
from selfcheck.interview.measuring import measure, names_unit
from selfcheck.interview.messages import Message
from selfcheck.interview.nodes import Node
from selfcheck.interview.pending import Pending
from selfcheck.interview.showing import at_start
from selfcheck.interview.understanding import Reading

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation


def offer(talk: Conversation, node: Node, reading: Reading, text: str) -> list[Message]:
    """An answer is looked at for oddness and accepted; of several meanings or options the person picks one."""
    if reading.answer is not None:
        return odd.accept_or_question(talk, node, reading.answer)
    if reading.fits:
        return _fits(talk, node, reading.fits, text)
    meanings = reading.meanings
    answers = {str(place): answer for place, (_, answer) in enumerate(meanings)}

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        return odd.accept_or_question(talk, node, answers[choice])

    def other(line: str) -> list[Message] | None:
        """The unit alone, "cm", or the whole anew with its unit, "3 cm"."""
        if node.kind not in ("length", "volume") or not names_unit(line):
            return None
        anew = any(sign.isdecimal() for sign in line)
        read = measure(node, line if anew else f"{text} {line}", talk.context).answer
        if read is None:
            return None
        talk.drop_pending()
        return odd.accept_or_question(talk, node, read)

    choices = tuple((str(place), at_start(label)) for place, (label, _) in enumerate(meanings))
    return talk.ask(Pending(talk.phrases.say("which_unit"), choices, choose, other))


def _fits(talk: Conversation, node: Node, options: tuple[str, ...], text: str) -> list[Message]:
    """More than one option fits: the person picks one of them."""

    def choose(choice: str) -> list[Message]:
        talk.drop_pending()
        return odd.accept_or_question(talk, node, Answer(node.id, "value", choice, said=text))

    choices = tuple((option, talk.words(talk.script.label_of(node.id, option))) for option in options)
    return talk.ask(Pending(talk.phrases.say("which"), choices, choose))
