"""Answers in words."""

from __future__ import annotations

from datetime import date, timedelta
from math import ceil, floor, inf
from typing import Literal

from selfcheck.domain.conversions import FOOT, GALLON, INCH
from selfcheck.domain.quantities import show_date, show_length, show_length_error, show_volume
from selfcheck.interview.answers import Answer, Value
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script

Units = Literal["us", "metric"]
#: kind and units → (up to this much, in steps of this), in metres and cubic metres
_ROUND: dict[tuple[str, Units], tuple[tuple[float, float], ...]] = {
    ("length", "us"): ((24 * INCH, INCH), (6 * FOOT, 6 * INCH), (inf, FOOT)),
    ("length", "metric"): ((0.3, 0.01), (2.0, 0.05), (inf, 0.5)),
    ("volume", "us"): ((1000 * GALLON, 50 * GALLON), (inf, 100 * GALLON)),
    ("volume", "metric"): ((2.0, 0.1), (inf, 0.5)),
}


def show_value(script: Script, node: Node, value: Value, units: Units, error: float | None = None) -> str:
    """A value as people say it: in both units, by its label, or as it was typed. `error`: of a date, in days."""
    if isinstance(value, tuple):
        if not value:
            return _phrase(script, "echo_none").rstrip(".")
        labels = [script.label_of(node.id, option) for option in value]
        return "; ".join([labels[0], *map(inline, labels[1:])])
    if isinstance(value, date):
        return show_day(value, error, units)
    if isinstance(value, (int, float)):
        if node.kind == "length":
            return show_length(float(value), units)
        if node.kind == "volume":
            return show_volume(float(value), units)
        return f"{value:g}" if abs(value) < 100_000 else f"{value:,.10g}"
    return script.label_of(node.id, value) if value is not None else ""


def show_answer(script: Script, answer: Answer, units: Units) -> str:
    """An answer as people say it; "not known" and the like in the engine's words."""
    node = script.nodes.get(answer.question)
    if answer.state == "unknown":
        return _phrase(script, "not_known")
    if answer.state == "skipped" or node is None:
        return _phrase(script, "not_asked")
    return show_value(script, node, answer.value, units, answer.error)


def inline(label: str) -> str:
    """A label in the middle of a sentence: no capital where only the place gave it one, and no mark at its end.

    A title with what it is of behind a middle dot keeps its capital.
    """
    bare = label.rstrip(" .?")
    first = bare.split(maxsplit=1)[0] if bare else ""
    keeps = (
        first in ("I", "I'm", "I've")
        or " · " in bare
        or any(letter.isupper() or letter.isdigit() for letter in first[1:])
    )
    return bare if keeps or (len(first) < 2 and first != "A") else bare[:1].lower() + bare[1:]


def show_within(script: Script, answer: Answer, units: Units) -> str:
    """An answer in the middle of a sentence."""
    node = script.nodes.get(answer.question)
    shown = show_answer(script, answer, units)
    labelled = answer.state != "value" or (node is not None and node.kind in ("choose", "choose_several"))
    return inline(shown) if labelled else shown.rstrip(" .")


def at_start(text: str) -> str:
    """Words at the start of a sentence or a line."""
    return text[:1].upper() + text[1:]


def show_bound(node: Node, bound: float, units: Units, *, up: bool) -> str:
    """The end of a range in one unit and round figures. `up`: rounded up, else down, so that it is never too wide."""
    if node.kind not in ("length", "volume"):
        return f"{bound:g}"
    steps = _ROUND[node.kind, units]
    step = next((step for most, step in steps if bound <= most), steps[-1][1])
    whole = (ceil if up else floor)(round(bound / step, 6)) * step
    shown = show_length(whole, units) if node.kind == "length" else show_volume(whole, units)
    return shown.partition(" (")[0]


def show_error(answer: Answer, node: Node, units: Units) -> str:
    """The error that an answer's own words carry, for lengths; "" where there is none to speak of."""
    if node.kind != "length" or answer.error is None or not isinstance(answer.value, (int, float)):
        return ""
    return show_length_error(float(answer.value), answer.error, units).partition("± ")[2]


def show_day(day: date, error: float | None, units: Units) -> str:
    """A date as wide as it was told: the error is that of a span with the day at its middle."""
    if error is None:
        return show_date(day, units)
    span = round(error * 12**0.5)
    first = day - timedelta(days=span // 2)
    return show_date(day, units, first, first + timedelta(days=span))


def _phrase(script: Script, name: str) -> str:
    return script.interface.phrases[name][0]
