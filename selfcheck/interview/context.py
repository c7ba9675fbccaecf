"""What predicates and fills may look at: the record, the day, and the answers that count so far."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any, Literal

from selfcheck.interview.answers import Answer, Value


def _no_draft() -> Callable[..., dict[str, Any]]:
    return lambda household=None: {}


@dataclass(frozen=True, slots=True)
class Context:
    """What is known beside the conversation. `today` stands for the clock.

    `rules`: id of the rule set that decides, when it is not the household's own.
    `signs`: the signs that a check is judged by, read when it is called.
    `draft`: the records that the answers so far make, worked out when it is called, over the household on record or
    the one it is given; the engine supplies it.
    """

    today: date
    household: Any = None
    checks: Sequence[Any] = ()
    pump_outs: Sequence[Any] = ()
    rule_sets: Mapping[str, Any] = field(default_factory=dict)
    units: Literal["us", "metric"] = "us"
    signs: Callable[[], Sequence[Any]] = tuple
    draft: Callable[..., dict[str, Any]] = field(default_factory=_no_draft)
    rules: str | None = None


class Answered(dict[str, Answer]):
    """The answers that count at one point of the conversation, by question id, and where the conversation stands.

    `gate`: "none" (no gate item answered yet), "passed" (all answered so far let the person go on) or "failed".
    `open`: something dangerous may stand open. `before`: answers that a break made void, gate items and openings;
    `resumed`: there was such a break. `aside`: facts told where they are not asked for, wherever their place is.
    `hazards`: ids told or chosen, oldest first; `danger`: one of them is at the level of danger.
    """

    def __init__(self) -> None:
        super().__init__()
        self.gate: Literal["none", "passed", "failed"] = "none"
        self.open = False
        self.leaving = False
        self.danger = False
        self.hazards: tuple[str, ...] = ()
        self.before: Mapping[str, Answer] = {}
        self.resumed = False
        self.aside: Mapping[str, Answer] = {}

    def value(self, question: str) -> Value:
        """The value of an answer; None when it was not asked, skipped or not known."""
        answer = self.get(question)
        return answer.value if answer is not None and answer.state == "value" else None

    def number(self, question: str) -> float | None:
        """The value as a number; None when there is none."""
        value = self.value(question)
        return float(value) if isinstance(value, (int, float)) else None

    def chosen(self, question: str, *options: str) -> bool:
        """Whether the answer is, or holds, one of `options`; "unknown" and "skipped" count as options."""
        answer = self.get(question)
        return answer is not None and any(option in options for option in choices_of(answer))

    def was_chosen(self, question: str, *options: str) -> bool:
        """As `chosen`, also by an answer that a break made void."""
        old = self.before.get(question)
        return self.chosen(question, *options) or (old is not None and any(one in options for one in choices_of(old)))


def choices_of(answer: Answer) -> tuple[str, ...]:
    """An answer as option ids: what a condition compares with. An empty choice of several is "none"."""
    if answer.state != "value":
        return (answer.state,)
    if isinstance(answer.value, tuple):
        return answer.value or ("none",)
    if isinstance(answer.value, bool) or answer.value is None:
        return ()
    if isinstance(answer.value, (int, float)):
        return (f"{answer.value:g}",)
    return (str(answer.value),)
