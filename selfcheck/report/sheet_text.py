"""The paper sheet as plain text, for any printer."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterable

from selfcheck.report.sheet import Box, Item, Mark, Sheet

WIDTH = 78
_TICK = "[\u00a0]"  # never torn from what it stands before
_LINE = "________"


def sheet_text(sheet: Sheet) -> list[str]:
    """The sheet in lines of at most 78 signs, what is to be done before opening first."""
    lines = [
        *_wrapped(sheet.title, ""),
        f"{sheet.day} {_LINE}  {sheet.who} {'_' * 30}",
        *_wrapped(sheet.shut, "*** "),
        f"{sheet.danger[0]}: {sheet.danger[1]}",
        *_wrapped(sheet.danger[2], "  "),
    ]
    lines += [line for one in sheet.contacts for line in _wrapped(one, "  ")]
    lines += _head(1, sheet.before_title)
    lines += _wrapped(f"{sheet.lid[0]}: {sheet.lid[1]}.", "")
    lines += _wrapped(sheet.people, "")
    for item in sheet.early_signs:
        lines += _wrapped(f"{item.name}: {' / '.join(item.choices)}", "  ")
    lines += _wrapped(f"{sheet.bring[0]}: {sheet.bring[1]}", "")
    lines += [f"{sheet.marks_title}:", *_marks(*sheet.pole), *_marks(*sheet.stick)]
    lines += _head(2, sheet.gate_title)
    lines += _wrapped(sheet.gate_say, "")
    for item in sheet.gate:
        lines += _ticks(item)
    lines += [f"*** {sheet.gate_stop}"]
    lines += _head(3, sheet.open_title)
    lines += _wrapped(sheet.lid_off, "")
    lines += _head(4, f"{sheet.look[0]}. {sheet.look[1]}")
    for item in sheet.look[2]:
        only = f" ({item.only})" if item.only else ""
        lines += _wrapped(f"{item.name}{only}: {' / '.join(item.choices)}", "  ", first="")
    lines += _head(5, sheet.crust[0])
    lines += _wrapped(f"{sheet.crust[1]} {sheet.crust[2]}", "")
    lines += _boxes(sheet.crust[3], sheet.unit)
    lines += _head(6, sheet.pole_title)
    lines += _wrapped(sheet.pole_do, "")
    lines += _boxes(sheet.boxes, sheet.unit)
    lines += _by_crust(sheet)
    lines += _head(7, sheet.close[0])
    lines += _wrapped(sheet.close[1], "")
    lines += [line for one in sheet.close[2] for line in _wrapped(one, "    ", first=f"{_TICK} ")]
    lines += _wrapped(sheet.close[3], "")
    lines += [f"{sheet.notes}: {'_' * (WIDTH - len(sheet.notes) - 2)}"]
    lines += _wrapped(f"{sheet.made} {sheet.always}", "")
    return lines


def _head(number: int, title: str) -> list[str]:
    head = f"-- {number} {title} "
    return [head + "-" * (WIDTH - len(head))]


def _ticks(item: Item) -> list[str]:
    only = f" ({item.only})" if item.only else ""
    if not item.whole:
        ticks = "  ".join(f"{_TICK}\u00a0{choice}" for choice in item.choices)
        return _wrapped(f"{item.name}{only}: {ticks}", "    ", first="")
    lines = _wrapped(f"{item.ask}{only}", "")
    for choice in item.choices:
        lines += _wrapped(choice, "    ", first=f"  {_TICK} ")
    return lines


def _marks(name: str, marks: Iterable[Mark]) -> list[str]:
    lines = []
    for mark in marks:
        about = f": {mark.about}" if mark.about else ""
        lines += _wrapped(f"{mark.figure:>8}  {mark.name}{about}", " " * 12, first="  ")
    return [f"  {name}:", *lines]


def _by_crust(sheet: Sheet) -> list[str]:
    lead, _, rows = sheet.by_crust
    return _wrapped(f"{lead} {', '.join(f'{crust} → {mark}' for crust, mark in rows)}", "  ")


def _boxes(boxes: Iterable[Box], unit: str) -> list[str]:
    return [
        line
        for box in boxes
        for line in _wrapped(f"{box.name}{f' ({box.only})' if box.only else ''}", "", first=f"  {_LINE} {unit}  ")
    ]


def _wrapped(text: str, indent: str, first: str | None = None) -> list[str]:
    lead = indent if first is None else first
    one_line = re.sub(r"[ \t\n]+", " ", text).strip(" ")
    found = textwrap.wrap(one_line, WIDTH, initial_indent=lead, subsequent_indent=indent, break_on_hyphens=False)
    return [line.replace("\u00a0", " ") for line in found]
