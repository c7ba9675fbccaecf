"""A value on record as an answer to the question that writes it."""

from __future__ import annotations

from datetime import date
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.nodes import Node


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
