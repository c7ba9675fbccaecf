"""What a conversation hands to the face that shows it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

MessageKind = Literal["say", "ask", "said", "echo", "caution", "help", "note", "trouble"]


@dataclass(frozen=True, slots=True)
class Message:
    """One thing said.

    "say": what to do or know. "ask": the question. "said": the person's own words. "echo": what was understood.
    "caution": with its signal word as `title`. "help": an answer to a question asked back, with its `source`. "note":
    about the conversation itself. "trouble": a line that was not understood, and how to mend that.
    """

    kind: MessageKind
    text: str
    title: str = ""
    source: str = ""


@dataclass(frozen=True, slots=True)
class Choice:
    """One answer to pick: its number from 1, its id, and its words."""

    number: int
    id: str
    label: str


@dataclass(frozen=True, slots=True)
class Stage:
    """One part of the conversation in the stage line."""

    id: str
    title: str
    state: Literal["done", "now", "ahead"]


@dataclass(frozen=True, slots=True)
class Prompt:
    """What is being asked.

    `question`: node id. `kind`: the node's kind, or "choose" while a small question of the engine stands in between.
    `may_stand_open`: something dangerous may stand open. `unknown_allowed`: "I don't know" is an answer.
    """

    question: str
    kind: str
    text: str
    choices: tuple[Choice, ...] = ()
    hint: str = ""
    stage: str = ""
    stages: tuple[Stage, ...] = ()
    may_stand_open: bool = False
    unknown_allowed: bool = True
    can_go_back: bool = False


@dataclass(frozen=True, slots=True)
class Ending:
    """The conversation is over. `outcome`: id of the outcome reached. `left`: saved and gone, not finished."""

    outcome: str
    left: bool = False
