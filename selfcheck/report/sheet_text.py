"""The paper sheet as plain text: one page of any printer, or set to a screen, in the order in which it is used."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterable, Iterator, Sequence

from selfcheck.report.sheet import Box, Item, Mark, Sheet

WIDTH = 80  # a printer's usual line of ten signs an inch
SCREEN = 56  # what the narrowest screen has room for
#: Lines on Letter and on A4 paper, six to the inch, within the half inch that printers leave free above and below.
PAGE = {"in": 60, "cm": 64}
_LINE = "_____"
_POLE_WIDE = 36  # of the marks: those of the stick have more to say
#: Figures to be read from a step away, three lines high: strokes as on a counter.
LARGE = {
    "0": (" _ ", "| |", "|_|"), "1": ("   ", "  |", "  |"), "2": (" _ ", " _|", "|_ "), "3": (" _ ", " _|", " _|"),
    "4": ("   ", "|_|", "  |"), "5": (" _ ", "|_ ", " _|"), "6": (" _ ", "|_ ", "|_|"), "7": (" _ ", "  |", "  |"),
    "8": (" _ ", "|_|", "|_|"), "9": (" _ ", "|_|", " _|"), "–": ("   ", " _ ", "   "),
}  # fmt: skip


def sheet_text(sheet: Sheet) -> list[str]:
    """The sheet for a printer, in lines of at most 80 signs, what is to be done before opening first.

    The marks stand in large figures, but where that would not leave it on one page. There they are told shorter, and
    where that is too long still, without those by crust.
    """
    page = _Page(sheet, WIDTH)
    settings = ((_large_marks(sheet), page.by_crust()), (page.small_marks(), page.by_crust()), (page.small_marks(), ()))
    made = [page.lines(marks, by_crust) for marks, by_crust in settings]
    return next((lines for lines in made if len(lines) <= PAGE[sheet.unit]), made[-1])


def sheet_to_read(sheet: Sheet) -> list[str]:
    """The same for a screen, in lines of at most 56 signs, the marks in words."""
    page = _Page(sheet, SCREEN)
    return page.lines(page.small_marks(), page.by_crust())


class _Page:
    """The sheet set to so many signs in a line."""

    def __init__(self, sheet: Sheet, width: int) -> None:
        self.sheet, self.width = sheet, width

    def lines(self, marks: Sequence[str], by_crust: Sequence[str]) -> list[str]:
        """All that stands on it. `marks`, `by_crust`: as lines."""
        sheet, wrapped, part = self.sheet, self.wrapped, self.part
        danger = f"{sheet.danger[0]}. {sheet.danger[1]}: {sheet.danger[2]} {' · '.join(sheet.contacts)}"
        look_title, circle, signs = sheet.look
        crust_title, crust_do, one_way, crust_boxes = sheet.crust
        close_title, close_do, closed, after = sheet.close
        return [
            *self.row([sheet.title, f"{sheet.day} {'_' * 8}", f"{sheet.who} {'_' * 11}"]),
            *wrapped(sheet.shut, "*** "),
            *wrapped(danger, "    ", first=""),
            *part(1, sheet.before_title, f"{sheet.lid[0]}: {sheet.lid[1]}."),
            *wrapped(f"{sheet.people} {' / '.join(_now(sheet.early_signs))}", "  ", first=""),
            *wrapped(f"{sheet.bring[0]}: {sheet.bring[1]}", "  ", first=""),
            *marks,
            *part(2, sheet.gate_title, sheet.gate_say),
            *(line for one in sheet.gate for line in wrapped(one, "    ", first="[ ] ")),
            *wrapped(sheet.gate_stop, "*** "),
            *part(3, sheet.open_title, sheet.lid_off),
            *part(4, look_title, circle),
            *(line for one in _in_lines(signs) for line in wrapped(one, "  ", first="")),
            *part(5, crust_title, f"{crust_do} {one_way}"),
            *self.boxes(crust_boxes),
            *part(6, sheet.pole_title, sheet.pole_do),
            *self.boxes(sheet.boxes),
            *by_crust,
            *part(7, close_title, f"{close_do} {after}"),
            *self.row([*(f"[ ] {one}" for one in closed), f"{sheet.notes}: {'_' * 15}"]),
            *wrapped(f"{sheet.made} {sheet.always}", ""),
        ]

    def part(self, number: int, title: str, text: str) -> list[str]:
        return self.wrapped(f"{title}{'' if title[-1:] in '.:' else '.'} {text}", "  ", first=f"={number}= ")

    def small_marks(self) -> list[str]:
        """The marks of pole and stick in one line each, as far as it is wide."""
        return [
            line
            for name, marks in _of_both(self.sheet)
            for line in self.wrapped(f"{name}: {', '.join(map(_about, marks))}.", "    ", first="  ")
        ]

    def by_crust(self) -> list[str]:
        """The mark on the pole for each height of crust."""
        lead, _, rows = self.sheet.by_crust
        unit = f" {self.sheet.unit}"
        said = ", ".join(f"{crust.removesuffix(unit)}→{mark.removesuffix(unit)}" for crust, mark in rows)
        return self.wrapped(f"{lead} {said} ({self.sheet.unit})", "  ", first="") if rows else []

    def boxes(self, boxes: Iterable[Box]) -> list[str]:
        """Readings to write down, two beside each other where they fit."""
        said = [f"{_LINE} {self.sheet.unit} {box.name}{f' ({box.only})' if box.only else ''}" for box in boxes]
        return self.row(said, each=self.width // 2 - 2)

    def row(self, words: Sequence[str], each: int = 0) -> list[str]:
        """Things that each stay whole, as many in a line as fit; with `each`, two in columns as wide as that."""
        lines: list[str] = []
        between = "  "
        for one in words:
            before = lines[-1] if lines and not (each and between in lines[-1].strip()) else ""
            room = self.width - len(between) - len(one)
            joined = next((at for at in (before.ljust(each), before) if len(at) <= room), "")
            if before and joined:
                lines[-1] = f"{joined}{between}{one}"
            else:
                lines += self.wrapped(one, "    ", first="")
        return lines

    def wrapped(self, text: str, indent: str, first: str | None = None) -> list[str]:
        """A text as lines; `first` stands before the first of them, `indent` before the others."""
        one_line = re.sub(r"[ \t\n]+", " ", text).strip(" ")
        lead = indent if first is None else first
        return textwrap.wrap(
            one_line, self.width, initial_indent=lead, subsequent_indent=indent, break_on_hyphens=False
        )


def _told(item: Item) -> str:
    only = f" ({item.only})" if item.only else ""
    return f"{item.name}{only}: {' / '.join(item.choices)}"


def _in_lines(signs: Iterable[Item]) -> Iterator[str]:
    """Each sign begins a line of its own, but for those that are asked only where the one before looks wrong."""
    lines: list[str] = []
    for item in signs:
        if item.only and lines:
            lines[-1] += f" · {_told(item)}"
        else:
            lines.append(_told(item))
    yield from lines


def _now(signs: Iterable[Item]) -> Iterator[str]:
    """Signs of today; a thing with one answer is named, the rest speak for themselves."""
    for item in signs:
        yield from item.choices if len(item.choices) > 1 else [_told(item)]


def _of_both(sheet: Sheet) -> tuple[tuple[str, tuple[Mark, ...]], ...]:
    return (sheet.pole, sheet.stick)


def _about(mark: Mark) -> str:
    return f"{mark.figure} {mark.name}: {mark.about}" if mark.about else f"{mark.figure} {mark.name}"


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
    return [f" {line}".ljust(wide) for line in (*rows, *textwrap.wrap(_about(mark), wide - 2))]
