"""A conversation about bread, to show that the engine knows nothing of what it talks about."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.dialogue import Conversation, Message
from selfcheck.interview.predicates import predicate
from selfcheck.interview.script import Script
from selfcheck.loading import Place, script
from selfcheck.loading.place import packaged

TOY = Path(__file__).parent / "toy"
TODAY = date(2026, 5, 18)
CONTEXT = Context(TODAY)
#: answers that lead to the question of the name, in the order of the flow
TO_OVEN = ["white", "4 in", "3", "2025", "none", "1", "1"]
TO_SHUT = [*TO_OVEN, "opened", "no smoke at all"]
TO_END = [*TO_SHUT, "shut and latched", "nothing more", ""]


@predicate("flat_rye", reads=("flour", "rise"))
def flat_rye(answered: Answered, context: Context) -> bool:
    """Rye that rose by less than two inches."""
    rise = answered.number("rise")
    return answered.chosen("flour", "rye") and rise is not None and rise < 0.05


@cache
def bread() -> Script:
    return script(Place((TOY, packaged())), "bread")


@dataclass(frozen=True)
class Told:
    """What a side question is answered with."""

    text: str
    source: str = "the baker"
    asked: str = ""
    sure: bool = True

    @property
    def question(self) -> str:
        return f"{self.asked[:1].upper()}{self.asked[1:].rstrip('?')}?"


def talk(
    lines: Iterable[str] = (),
    context: Context = CONTEXT,
    answers: Iterable[Answer] = (),
    keep: Callable[[Answer], None] = lambda answer: None,
    ask_back: Callable[[str], Any] | None = None,
    ask_near: Callable[[str], Any] | None = None,
) -> Conversation:
    """A conversation that has heard `lines`."""
    conversation = Conversation(bread(), context, answers, keep, lambda: "2026-05-18T10:00:00Z", ask_back, ask_near)
    conversation.start()
    for line in lines:
        conversation.hear(line)
    return conversation


def words(messages: Iterable[Message], *kinds: str) -> str:
    """The texts of messages of some kinds, one a line; of all kinds when none is named."""
    return "\n".join(message.text for message in messages if not kinds or message.kind in kinds)


def at(conversation: Conversation) -> str:
    """The id of the open question; "" at the end."""
    return conversation.prompt.question if conversation.prompt else ""
