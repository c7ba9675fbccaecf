"""What a guided conversation is made of: flows, sections, nodes and their words, as plain data.

Nothing here knows what the conversation is about. Routes live in `Flow`, words in `NodeWords`; the two meet by id.
The dataclasses carry `__pydantic_config__` so that `loading` can check files against them strictly; this module itself
needs nothing but the standard library.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

STRICT = {"extra": "forbid", "str_strip_whitespace": True}

Kind = Literal[
    "say",  # words only; any key goes on
    "choose",  # one of the options
    "choose_several",  # any of the options, or none of them
    "length",  # metres
    "volume",  # cubic metres
    "number",  # a count or plain number
    "date",  # a day, or a wider span taken at its middle
    "note",  # free words
    "confirm",  # read-back of what was understood; yes or change
    "stop",  # the conversation ends here with an outcome
]
Tag = Literal["verdict", "next_step", "record", "safety"]


@dataclass(frozen=True, slots=True)
class Condition:
    """One condition of a `when` list; all of a list must hold.

    Exactly one form: `question` + `is_` (the answer's value, or any chosen one, is among these; `"unknown"` and
    `"skipped"` count as values), `predicate` (a named Python function is true), or `unless` (it is false).
    In TOML the key `is` stands for `is_`.
    """

    question: str = ""
    is_: tuple[str, ...] = ()
    predicate: str = ""
    unless: str = ""

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Node:
    """One step of a conversation. Its words stand in the words file of its section, under the same id."""

    id: str
    kind: Kind
    options: tuple[str, ...] = ()  # choose, choose_several: ids, in the order shown
    when: tuple[Condition, ...] = ()
    #: while these hold it may be told at any time, also where it is not asked for; what is told so counts
    told_when: tuple[Condition, ...] = ()
    writes: str = ""  # path in the records, e.g. "check.seen.smell", "check.seen.readings.sludge"
    #: option id → value written, where it differs from the id
    values: dict[str, str | bool | float | None] = field(default_factory=dict)
    #: also recorded when an option is chosen: option id → path → value; "not <option id>" holds for choose_several when
    #: the question was answered without that option, so that one look-over can settle several things that are in order
    implies: dict[str, dict[str, str | bool | float | tuple[str, ...] | None]] = field(default_factory=dict)
    width_writes: str = ""  # date: path of how many days wide it was told, where it was wider than a day
    of_the_rest: bool = False  # date: what is answered behind it was seen on that day
    tags: tuple[Tag, ...] = ()  # why it is asked: at least one for every node that asks
    gate: bool = False  # a safety item: must be answered with one of `passes` before anything that `opens`
    passes: tuple[str, ...] = ()  # gate: option ids that let the person go on
    opens: bool = False  # from this node on something dangerous may stand open; only after the gate has passed
    closes: tuple[str, ...] = ()  # option ids by which it is shut again
    on_leaving: bool = False  # still asked when the person leaves while something may stand open
    carries: bool = False  # the value on record is offered as "still true?" instead of asking afresh
    least: float | None = None  # length, volume, number: outside this it is impossible and never kept
    most: float | None = None
    usual_least: float | None = None  # outside this it is odd: read back and asked "is that right?"
    usual_most: float | None = None
    unknown_allowed: bool = True  # "I don't know" is an answer (never switched off for lengths, dates and numbers)
    outcome: str = ""  # stop: id of the outcome
    caution: str = ""  # id of a caution shown before the words
    hazard: dict[str, str] = field(default_factory=dict)  # option id → hazard id that choosing it raises
    #: hazard id → option: what one would do is asked, so that its words are that answer: nothing has happened
    told_as: dict[str, str] = field(default_factory=dict)
    #: path → value also recorded with any answer that has a value; "today" stands for the day of the conversation
    also_writes: dict[str, str | bool | float] = field(default_factory=dict)
    #: option id → predicate while which it is no answer: the question is asked again, and a safety item is not passed
    barred: dict[str, str] = field(default_factory=dict)
    odd_when: tuple[str, ...] = ()  # predicates that make an answer odd: read back and asked "is that right?"

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Section:
    """A stretch of the conversation with its own words file and its place in the stage line."""

    id: str
    nodes: tuple[Node, ...]
    when: tuple[Condition, ...] = ()  # holds for every node of it
    stage: str = ""  # id of the stage shown; empty: the stage before goes on
    at_opening: bool = False  # asked beside what stands open: no further once a hazard is told there

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Flow:
    """One conversation: sections in order, nodes in order."""

    id: str
    sections: tuple[Section, ...]
    records: tuple[str, ...] = ()  # what it ends in: "check", "pump_out", "household"
    gate_writes: str = ""  # path that is given "passed" or "not_confirmed" by how the gate items were answered
    hazards_write: str = ""  # path of the list of hazards that were told or chosen
    in_need: bool = False  # people come to it in need: "what do I do" asks what to do about that, and not how it goes

    __pydantic_config__ = STRICT

    def nodes(self) -> list[tuple[Section, Node]]:
        """Every node with its section, in order."""
        return [(section, node) for section in self.sections for node in section.nodes]


@dataclass(frozen=True, slots=True)
class NodeWords:
    """What is said at one node. Texts may hold `{name}` places that a named fill supplies."""

    ask: str = ""  # the question, or the whole text of a `say`
    before: str = ""  # up to three short sentences ahead of the question: what to do
    short: str = ""  # its name in the review and in "several answers in one line"
    why: str = ""  # why it is asked: a reason in the world
    how: str = ""  # how to do it, step by step
    healthy: str = ""  # what it looks like when all is well
    example: str = ""  # one thing a person might type
    again: str = ""  # the question in other words, for the first no-match
    options: dict[str, str] = field(default_factory=dict)  # option id → label
    #: option id → other words people use for it; number: the figure → words that stand for it, "12" → "all year"
    also: dict[str, tuple[str, ...]] = field(default_factory=dict)
    after: dict[str, str] = field(default_factory=dict)  # option id (or "unknown") → one sentence said after it
    odd: dict[str, str] = field(default_factory=dict)  # predicate of `odd_when` → what is odd about the answer
    barred: dict[str, str] = field(default_factory=dict)  # predicate of `barred` → why that is no answer
    names: tuple[str, ...] = ()  # other short names for it: "sludge", "the stain"

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class SectionWords:
    """One words file: `[section]` with a title, then one table a node."""

    title: str
    nodes: dict[str, NodeWords]
    opening: str = ""  # said once when the section is entered

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution: its signal word and what it says. `level` orders them: danger, stop, caution, note."""

    id: str
    level: Literal["danger", "stop", "caution", "note"]
    hazard: str  # what can hurt
    harm: str  # what it does
    avoid: str  # how to stay safe
    told: str = ""  # how a person would say that it has happened; lists it under "something is wrong"
    writes: dict[str, str | bool | float] = field(default_factory=dict)  # path → value recorded once it is told
    body: str = ""  # more about it, where one sentence each is not enough

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Outcome:
    """How a conversation ends: a title, what to do next, and a few sentences."""

    id: str
    title: str
    next_step: str
    body: str = ""

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Term:
    """A trade word of the glossary: what it means, other spellings, and where that is said."""

    means: str
    also: tuple[str, ...] = ()
    source: str = ""

    __pydantic_config__ = STRICT
