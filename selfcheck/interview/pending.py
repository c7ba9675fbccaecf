"""A small question of the engine's own that stands in between, such as "which do you mean?"."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from selfcheck.interview.answers import Answer
from selfcheck.interview.messages import Message


@dataclass(frozen=True)
class Pending:
    """`text` with `choices` (id, label); `choose` acts on the id picked.

    `other` is given a line that is none of the choices, and says None when it can do nothing with it: then the line is
    taken as any other, and the small question is over. `lead`: said before it. `firm`: it is asked until it is
    answered, whatever else is typed; on leaving all the same, `parting` is said. `offered`: answers that are read back;
    they stay on offer until a yes or a no. `in_need`: it asks what is wrong, and no danger was told yet.
    """

    text: str
    choices: tuple[tuple[str, str], ...]
    choose: Callable[[str], list[Message]]
    other: Callable[[str], list[Message] | None] = lambda line: None
    lead: tuple[Message, ...] = ()
    firm: bool = False
    offered: tuple[Answer, ...] = ()
    parting: tuple[Message, ...] = ()
    in_need: bool = False
