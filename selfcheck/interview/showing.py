"""Answers in words."""

from __future__ import annotations

from datetime import date
from typing import Literal

from selfcheck.domain.quantities import show_date, show_length, show_length_error, show_volume
from selfcheck.interview.answers import Answer, Value
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script

Units = Literal["us", "metric"]


def show_value(script: Script, node: Node, value: Value, units: Units) -> str:
    """A value as people say it: in both units, by its label, or as it was typed."""
    if isinstance(value, tuple):
        if not value:
            return _phrase(script, "echo_none").rstrip(".")
        return "; ".join(script.label_of(node.id, option) for option in value)
    if isinstance(value, date):
        return show_date(value, units)
    if isinstance(value, (int, float)):
        if node.kind == "length":
            return show_length(float(value), units)
        return show_volume(float(value), units) if node.kind == "volume" else f"{value:g}"
    return script.label_of(node.id, value) if value is not None else ""


def show_answer(script: Script, answer: Answer, units: Units) -> str:
    """An answer as people say it; "not known" and the like in the engine's words."""
    node = script.nodes.get(answer.question)
    if answer.state == "unknown":
        return _phrase(script, "not_known")
    if answer.state == "skipped" or node is None:
        return _phrase(script, "not_asked")
    return show_value(script, node, answer.value, units)


def show_error(answer: Answer, node: Node, units: Units) -> str:
    """The error that an answer's own words carry, for lengths; "" where there is none to speak of."""
    if node.kind != "length" or answer.error is None or not isinstance(answer.value, (int, float)):
        return ""
    return show_length_error(float(answer.value), answer.error, units).partition("± ")[2]


def _phrase(script: Script, name: str) -> str:
    return script.interface.phrases[name][0]
