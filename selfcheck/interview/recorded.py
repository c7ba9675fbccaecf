"""A value on record as an answer to the question that writes it.

Where it does not stand at the path that the question writes, a function below `@recorded("question id")` gives it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, timedelta
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.collect import on_record, width_of
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.nodes import Node

#: the answers that the record holds to a question, the one that counts last
Recorded = Callable[[Answered, Context], Sequence[Answer]]
RECORDED: dict[str, Recorded] = {}
#: amounts that differ by less are the same: a share of the larger. Our choice.
SAME = 0.02


def recorded(question: str) -> Callable[[Recorded], Recorded]:
    """Registers what the record holds to a question; ValueError when that is said already."""

    def register(answers: Recorded) -> Recorded:
        if question in RECORDED:
            raise ValueError(f"there are two records of {question}")
        RECORDED[question] = answers
        return answers

    return register


def known(node: Node, answered: Answered, context: Context) -> Sequence[Answer]:
    """What the record holds of a fact that may be told at any time, the one that counts last; nothing for others."""
    if not node.told_when:
        return ()
    if node.id in RECORDED:
        return RECORDED[node.id](answered, context)
    answer = recorded_answer(node, on_record(context, node.writes))
    return (answer,) if answer is not None else ()


def same_as(told: Answer, old: Answer) -> bool:
    """Whether an answer tells what the record says: a day within the two spans, an amount as good as equal."""
    one, other = told.value, old.value
    if told.state != "value":
        return False
    if isinstance(one, date) and isinstance(other, date):
        return abs(one - other) <= timedelta(days=(width_of(told.error or 0) + width_of(old.error or 0)) / 2 + 1)
    if isinstance(one, (int, float)) and isinstance(other, (int, float)):
        return abs(one - other) <= SAME * max(abs(one), abs(other))
    return one == other


def recorded_answer(node: Node, value: Any) -> Answer | None:
    """The answer that would have written `value`; None when there is no value, or none that fits the question."""
    if value is None or value == "" or value == "unknown":
        return None
    if node.kind in ("length", "volume", "number"):
        return Answer(node.id, "value", float(value)) if _is_number(value) else None
    if node.kind == "date":
        return _day(node, value)
    if node.kind == "note":
        return Answer(node.id, "value", value) if isinstance(value, str) else None
    if node.kind == "choose":
        option = _option(node, value)
        return Answer(node.id, "value", option) if option else None
    if node.kind == "choose_several" and isinstance(value, list):
        options = [_option(node, item) for item in value]
        return Answer(node.id, "value", tuple(one for one in options if one)) if all(options) else None
    return None


def _is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def _day(node: Node, value: Any) -> Answer | None:
    try:
        return Answer(node.id, "value", value if isinstance(value, date) else date.fromisoformat(str(value)))
    except ValueError:
        return None


def _option(node: Node, value: Any) -> str | None:
    for option in node.options:
        written = node.values.get(option, option)
        if isinstance(written, bool) is isinstance(value, bool) and written == value:
            return option
    return None
