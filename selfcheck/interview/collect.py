"""Answers → records: each answer that counts is written at its path.

A path is names joined by dots, below "check", "household" or "pump_out". A number is a place in a list, `-1` its last
item, and `+` a new item of this conversation, begun as a copy of the last. A length below a name "readings", or at a
path that ends in `+`, is added to a list of readings. What is not known is "unknown" below a name "seen" and null
elsewhere; what was skipped or not asked is not written. A gate that nobody can vouch for is one that was not confirmed.
"""

from __future__ import annotations

import copy
from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date
from typing import Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Answered, Context, choices_of
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script

TODAY = "today"
_MISSING = object()


def collect(script: Script, context: Context, answered: Answered) -> dict[str, Any]:
    """The records that the answers make: "check", "household" and "pump_out", each only where something is written.

    "household" is the whole household on record with the changes in it.
    """
    draft = _Draft(context)
    for ident, answer in answered.items():
        node = script.nodes.get(ident)
        if node is not None:
            _write(draft, node, answer)
    gate = script.flow.gate_writes
    nodes = [(script.nodes[ident], answer) for ident, answer in answered.items() if ident in script.nodes]
    if gate and any(node.writes == gate and answer.state != "value" for node, answer in nodes):
        draft.put(gate, "not_confirmed")
    elif gate and any(node.gate for node, _ in nodes) and not draft.has(gate):
        draft.put(gate, "passed" if answered.gate == "passed" else "not_confirmed")
    if script.flow.hazards_write and answered.hazards:
        draft.put(script.flow.hazards_write, list(answered.hazards))
    for hazard in answered.hazards:
        caution = script.cautions.get(hazard)
        for path, value in (caution.writes if caution else {}).items():
            draft.put(path, value)
    return draft.records


def drafting(script: Script, context: Context, answered: Answered) -> Context:
    """The context in which `draft` makes the records of these answers."""

    def draft(household: Any = None) -> dict[str, Any]:
        return collect(script, context if household is None else replace(context, household=household), answered)

    return replace(context, draft=draft)


def observed(script: Script, answered: Answered, answers: Iterable[Answer], typed: date) -> list[Answer]:
    """The answers, each with the day it was seen, where a date tells that and it is not the day they were `typed`."""
    dated = [script.order[name] for name in answered if script.nodes[name].of_the_rest]
    day = next((answered.value(name) for name in answered if script.nodes[name].of_the_rest), None)
    if not isinstance(day, date) or day == typed:
        return list(answers)

    def seen(answer: Answer) -> str:
        behind = script.order.get(answer.question, -1) > dated[0] and script.nodes[answer.question].kind != "confirm"
        return day.isoformat() if behind else ""

    return [replace(answer, observed=seen(answer)) for answer in answers]


def on_record(context: Context, path: str) -> Any:
    """The value that the household's record holds at a path; None when it holds none. `+` looks at the last item."""
    top, _, rest = path.partition(".")
    here: Any = _plain(context.household) if top == "household" else None
    for name in rest.split(".") if rest else ():
        if isinstance(here, Mapping):
            here = here.get(name)
        elif isinstance(here, list):
            place = -1 if name == "+" else _place(name)
            here = here[place] if place is not None and -len(here) <= place < len(here) else None
        else:
            return None
    return here


def width_of(error: float) -> int:
    """How many days wide a date was told, by the error of a span with the date at its middle."""
    return round(error * 12**0.5)


def error_of(width_days: float) -> float | None:
    """The error of a date that was told as wide as this; None for one day."""
    return width_days / 12**0.5 if width_days else None


def _write(draft: _Draft, node: Node, answer: Answer) -> None:
    if answer.state == "skipped":
        return
    if answer.state == "unknown":
        if node.writes and not _adds_reading(node.writes):
            draft.put(node.writes, "unknown" if ".seen." in node.writes else None)
    elif node.writes:
        _write_value(draft, node, answer)
    chosen = choices_of(answer)
    for option, written in node.implies.items():
        without = option.removeprefix("not ")
        if option in chosen or (without != option and answer.state == "value" and without not in chosen):
            for path, value in written.items():
                draft.put_or_add(path, list(value) if isinstance(value, tuple) else value, answer)
    if answer.state == "value":
        for path, stamp in node.also_writes.items():
            draft.put(path, draft.context.today.isoformat() if stamp == TODAY else stamp)


def _write_value(draft: _Draft, node: Node, answer: Answer) -> None:
    value: Any = answer.value
    if node.kind in ("length", "volume", "number", "date", "note"):
        draft.put_or_add(node.writes, _as_data(value), answer)
        if node.width_writes and answer.error:
            draft.put(node.width_writes, width_of(answer.error))
    elif isinstance(value, tuple):
        draft.put(node.writes, [node.values.get(option, option) for option in value])
    elif isinstance(value, str):
        draft.put(node.writes, node.values.get(value, value))


def _as_data(value: Any) -> Any:
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value


class _Draft:
    """The records in the making."""

    def __init__(self, context: Context) -> None:
        self.context = context
        self.records: dict[str, Any] = {}
        self._added: dict[str, int] = {}  # path of a `+` → place of the item it made

    def put_or_add(self, path: str, value: Any, answer: Answer) -> None:
        """Writes a value; a number below "readings", or at the end of a list, becomes one more reading."""
        if not _adds_reading(path) or not isinstance(value, (int, float)) or isinstance(value, bool):
            self.put(path, value)
            return
        path = path.removesuffix(".+")
        reading: dict[str, Any] = {"m": float(value), "said": answer.said}
        if answer.error is not None:
            reading["error_m"] = answer.error
        known = self._find(path)
        self.put(path, [*(known if isinstance(known, list) else []), reading])

    def has(self, path: str) -> bool:
        return self._find(path) is not _MISSING

    def put(self, path: str, value: Any) -> None:
        """Writes a value at a path; below a last `+` it is added to the list there, once."""
        if path.endswith(".+"):
            path = path.removesuffix(".+")
            known = self._find(path)
            listed = known if isinstance(known, list) else []
            value = listed if value in listed else [*listed, value]
        names = path.split(".")
        here: Any = self.records
        if names[0] == "household" and "household" not in here:
            here["household"] = _plain(self.context.household) or {}
        for place, name in enumerate(names):
            last = place == len(names) - 1
            below: Any = value if last else ([] if _is_place(names[place + 1]) else {})
            here = self._enter(here, name, ".".join(names[: place + 1]), below, replace=last)

    def _enter(self, here: Any, name: str, path: str, below: Any, *, replace: bool) -> Any:
        if isinstance(here, list):
            at = self._list_place(here, name, path)
            if at >= len(here):
                here.append(copy.deepcopy(here[-1]) if name == "+" and here and not replace else below)
            elif replace or not isinstance(here[at], (dict, list)):
                here[at] = below
            return here[at]
        if replace or not isinstance(here.get(name), type(below)):
            here[name] = below
        return here[name]

    def _list_place(self, here: list[Any], name: str, path: str) -> int:
        if name == "+":
            return self._added.setdefault(path, len(here))
        place = _place(name)
        if place is None or place >= len(here):
            return len(here)
        return place if place >= 0 else max(len(here) + place, 0)

    def _find(self, path: str) -> Any:
        here: Any = self.records
        for name in path.split("."):
            if not isinstance(here, Mapping) or name not in here:
                return _MISSING
            here = here[name]
        return here


def _adds_reading(path: str) -> bool:
    return ".readings." in path or path.endswith(".+")


def _is_place(name: str) -> bool:
    return name == "+" or _place(name) is not None


def _place(name: str) -> int | None:
    return int(name) if name.removeprefix("-").isdecimal() and len(name) < 4 else None


def _plain(record: Any) -> Any:
    """A record as nested dicts and lists of its own."""
    if hasattr(record, "model_dump"):
        return record.model_dump(mode="json", by_alias=True)
    return copy.deepcopy(record) if isinstance(record, Mapping) else None
