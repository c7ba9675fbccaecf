"""The paper sheet as plain text: one page of any printer, in the order in which it is used."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterable, Iterator, Sequence

from selfcheck.report.sheet import Box, Item, Mark, Sheet

WIDTH = 80  # a printer's usual line of ten signs an inch
PAGE = {"in": 66, "cm": 70}  # lines on Letter and on A4 paper, six to the inch
_LINE = "_____"
_POLE_WIDE = 34  # of the marks: those of the stick have more to say
#: Figures to be read from a step away, three lines high: strokes as on a counter.
LARGE = {
    "0": (" _ ", "| |", "|_|"), "1": ("   ", "  |", "  |"), "2": (" _ ", " _|", "|_ "), "3": (" _ ", " _|", " _|"),
    "4": ("   ", "|_|", "  |"), "5": (" _ ", "|_ ", " _|"), "6": (" _ ", "|_ ", "|_|"), "7": (" _ ", "  |", "  |"),
    "8": (" _ ", "|_|", "|_|"), "9": (" _ ", "|_|", " _|"), "–": ("   ", " _ ", "   "),
}  # fmt: skip


def sheet_text(sheet: Sheet) -> list[str]:
    """The sheet in lines of at most 80 signs, what is to be done before opening first.

    The marks stand in large figures, but where that would not leave it on one page. There they are told shorter.
    """
    lines = _lines(sheet, _large_marks(sheet), _by_crust(sheet))
    return lines if len(lines) <= PAGE[sheet.unit] else _lines(sheet, _small_marks(sheet), ())


def _lines(sheet: Sheet, marks: Sequence[str], by_crust: Sequence[str]) -> list[str]:
    danger = f"{sheet.danger[0]}. {sheet.danger[1]}: {sheet.danger[2]} {' · '.join(sheet.contacts)}"
    look_title, circle, signs = sheet.look
    crust_title, crust_do, one_way, crust_boxes = sheet.crust
    close_title, close_do, closed, after = sheet.close
    return [
        *_row([sheet.title, f"{sheet.day} {'_' * 8}", f"{sheet.who} {'_' * 11}"], "  "),
        *_wrapped(sheet.shut, "*** "),
        *_wrapped(danger, "    ", first=""),
        *_part(1, sheet.before_title, f"{sheet.lid[0]}: {sheet.lid[1]}."),
        *_wrapped(f"{sheet.people} {' / '.join(_now(sheet.early_signs))}", "  ", first=""),
        *_wrapped(f"{sheet.bring[0]}: {sheet.bring[1]} {sheet.marks_title}:", "  ", first=""),
        *marks,
        *_part(2, sheet.gate_title, sheet.gate_say),
        *(line for one in sheet.gate for line in _wrapped(one, "    ", first="[ ] ")),
        f"*** {sheet.gate_stop}",
        *_part(3, sheet.open_title, sheet.lid_off),
        *_part(4, look_title, circle),
        *(line for item in signs for line in _wrapped(_told(item), "  ", first="")),
        *_part(5, crust_title, f"{crust_do} {one_way}"),
        *_boxes(crust_boxes, sheet.unit),
        *_part(6, sheet.pole_title, sheet.pole_do),
        *_boxes(sheet.boxes, sheet.unit),
        *by_crust,
        *_part(7, close_title, close_do),
        *(line for one in closed for line in _wrapped(one, "    ", first="[ ] ")),
        f"{after} {sheet.notes}: ".ljust(WIDTH, "_"),
        *_wrapped(f"{sheet.made} {sheet.always}", ""),
    ]


def _part(number: int, title: str, text: str) -> list[str]:
    return _wrapped(f"{title}{'' if title[-1:] in '.:' else '.'} {text}", "  ", first=f"={number}= ")


def _told(item: Item) -> str:
    only = f" ({item.only})" if item.only else ""
    return f"{item.name}{only}: {' / '.join(item.choices)}"


def _now(signs: Iterable[Item]) -> Iterator[str]:
    """Signs of today; a thing with one answer is named, the rest speak for themselves."""
    for item in signs:
        yield from item.choices if len(item.choices) > 1 else [_told(item)]


def _small_marks(sheet: Sheet) -> list[str]:
    said = [
        f"{name}: {', '.join(f'{mark.figure} {_about(mark)}' for mark in marks)}." for name, marks in _of_both(sheet)
    ]
    return _wrapped(" ".join(said), "  ")


def _of_both(sheet: Sheet) -> tuple[tuple[str, tuple[Mark, ...]], ...]:
    return (sheet.pole, sheet.stick)


def _about(mark: Mark) -> str:
    return f"{mark.name}: {mark.about}" if mark.about else mark.name


def _large_marks(sheet: Sheet) -> list[str]:
    """Those of the pole on the left, those of the stick on the right, each with its words below."""
    columns: list[list[str]] = []
    heads = ""
    for (name, marks), wide in zip(_of_both(sheet), (_POLE_WIDE, WIDTH - _POLE_WIDE), strict=True):
        heads += f"{name}:".ljust(wide)
        columns += [_mark(mark, wide // len(marks)) for mark in marks]
    high = max(map(len, columns))
    rows = [
        "".join(column[at] if at < len(column) else " " * len(column[0]) for column in columns) for at in range(high)
    ]
    return [line.rstrip() for line in (heads, *rows)]


def _mark(mark: Mark, wide: int) -> list[str]:
    """One mark as lines of the same width: its figure, then what it is."""
    figure, _, unit = mark.figure.partition(" ")
    rows = [
        " ".join(LARGE[sign][at] if sign in LARGE else (sign if at == 2 else " ") for sign in figure) for at in range(3)
    ]
    rows[2] += f" {unit}"
    said = textwrap.wrap(f"{mark.figure} {_about(mark)}", wide - 2)
    return [f" {line}".ljust(wide) for line in (*rows, *said)]


def _by_crust(sheet: Sheet) -> list[str]:
    lead, _, rows = sheet.by_crust
    unit = f" {sheet.unit}"
    said = ", ".join(f"{crust.removesuffix(unit)} → {mark.removesuffix(unit)}" for crust, mark in rows)
    return _wrapped(f"{lead} {said} ({sheet.unit})", "  ", first="") if rows else []


def _boxes(boxes: Iterable[Box], unit: str) -> list[str]:
    """Readings to write down, two beside each other where they fit."""
    said = [f"{_LINE} {unit} {box.name}{f' ({box.only})' if box.only else ''}" for box in boxes]
    return _row(said, "  ", each=WIDTH // 2 - 2)


def _row(words: Sequence[str], between: str, each: int = 0) -> list[str]:
    """Things that each stay whole, as many in a line as fit; with `each`, two in columns as wide as that."""
    lines: list[str] = []
    for one in words:
        before = lines[-1] if lines and not (each and between in lines[-1].strip()) else ""
        joined = next((at for at in (before.ljust(each), before) if len(at) + len(between) + len(one) <= WIDTH), "")
        if before and joined:
            lines[-1] = f"{joined}{between}{one}"
        else:
            lines += _wrapped(one, "    ", first="")
    return lines


def _wrapped(text: str, indent: str, first: str | None = None) -> list[str]:
    lead = indent if first is None else first
    one_line = re.sub(r"[ \t\n]+", " ", text).strip(" ")
    return textwrap.wrap(one_line, WIDTH, initial_indent=lead, subsequent_indent=indent, break_on_hyphens=False)
