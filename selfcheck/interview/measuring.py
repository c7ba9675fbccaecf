"""A typed line as a length, a volume, a number or a date."""

from __future__ import annotations

import re
from datetime import date

from selfcheck.domain.hedges import says_unknown as not_known
from selfcheck.domain.quantities import (
    MARK_ERROR,
    read_count,
    read_date,
    read_length,
    read_number,
    read_volume,
    show_date,
)
from selfcheck.interview.answers import Answer, Value
from selfcheck.interview.context import Context
from selfcheck.interview.nodes import Node
from selfcheck.interview.typed_line import normal, words_in
from selfcheck.interview.understanding import CHOICES, NOTHING, Reading, unable

#: "1,250", and the "2,5" of those who count in parts with a comma
_ONE_NUMBER = re.compile(r"\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+,5")
_TWO_NUMBERS = re.compile(r"\d+(?:\.\d+)?(?:\s*[,;&]\s*|\s+(?:and\s+|or\s+)?)\d+(?:\.\d+)?")
_GROUPS = re.compile(r"\band\b(?! (?:a|one) (?:half|quarter)| half)|\bplus\b|&|,\s")


def measure(node: Node, text: str, context: Context) -> Reading:
    """A line as a length, volume, number or date."""
    if node.kind == "length":
        length = read_length(text, context.units, node.least, node.most)
        if length.status == "value" and length.metres is not None:
            return Reading(_answer(node, length.metres, text, _told_error(length.error_m)))
        errors = length.errors_m or (None,) * len(length.meanings)
        pairs = zip(length.meanings, errors, strict=True)
        return Reading(
            meanings=tuple((label, _answer(node, metres, text, _told_error(error))) for (label, metres), error in pairs)
        )
    if node.kind == "volume":
        volume = read_volume(text, context.units, node.least, node.most)
        if (others := _without_unit(node, text, context, volume.cubic_metres)) is not None:
            return Reading(meanings=others)
        if volume.status == "value" and volume.cubic_metres is not None:
            return Reading(_answer(node, volume.cubic_metres, text, volume.error_m3))
        return Reading(meanings=tuple((label, _answer(node, value, text)) for label, value in volume.meanings))
    if node.kind == "date":
        return _date(node, text, context)
    return _number(node, text) if node.kind == "number" else NOTHING


def says_unknown(node: Node, text: str, context: Context) -> bool:
    """Whether a line says, in the words of its own kind, that the person does not know.

    What could not be seen or done may be an answer to a choice, so that it is not among them there.
    """
    if node.kind in CHOICES:
        plain = normal(text)
        return not unable(set(words_in(plain))) and not_known(plain)
    if node.kind == "length":
        return read_length(text, context.units).status == "none"
    if node.kind == "volume":
        return read_volume(text, context.units).status == "none"
    if node.kind == "date":
        return read_date(text, context.today).status == "none"
    return node.kind == "number" and read_number(text).status == "none"


def names_unit(line: str, dimension: str = "") -> bool:
    """Whether a word of the line names a unit, of this dimension where one is given."""
    from selfcheck.domain.units import unit_of

    units = [unit_of(word) for word in re.findall(r"[^\W\d_]+|['\"]", line.casefold())]
    return any(one is not None and one.dimension == (dimension or one.dimension) for one in units)


def two_numbers(node: Node, text: str) -> bool:
    """Whether a line is just two numbers with nothing to tell which is meant: "8 9"; a fraction is one number."""
    plain = normal(text)
    if node.kind not in ("length", "volume", "number") or (node.kind == "number" and " or " in plain):
        return False  # a count between two is one
    return _TWO_NUMBERS.fullmatch(plain) is not None and _ONE_NUMBER.fullmatch(plain) is None


def _date(node: Node, text: str, context: Context) -> Reading:
    reading = read_date(text, context.today)
    if reading.status == "value" and reading.day is not None:
        span = (reading.latest - reading.earliest).days if reading.earliest and reading.latest else 0
        return Reading(_answer(node, reading.day, text, span / 12**0.5 if span else None))
    return Reading(
        meanings=tuple((show_date(day, context.units), _answer(node, day, text)) for _, day in reading.meanings)
    )


def _number(node: Node, text: str) -> Reading:
    number, count = read_number(text), read_count(text)
    if count.status == "ask" and _GROUPS.search(normal(text)):
        return NOTHING  # more than one group was told of: "my husband, me and 2 kids"
    if number.status == "value" and number.value is not None:
        return Reading(_answer(node, number.value, text, number.error or None))
    if count.status == "value" and count.value is not None:
        return Reading(_answer(node, float(count.value), text))
    return NOTHING


def _without_unit(
    node: Node, text: str, context: Context, taken: float | None
) -> tuple[tuple[str, Answer], ...] | None:
    """What a bare number may hold, where it was not taken in the unit of the household; None where nothing is open."""
    if taken is None or not taken or any(sign.isalpha() for sign in text):
        return None
    bare = normal(text)
    found = {unit: read_volume(f"{bare} {unit}", context.units).cubic_metres for unit in ("gallons", "liters", "m³")}
    own = found["gallons" if context.units == "us" else "liters"]
    if own is None or abs(own - taken) < 0.01 * taken:
        return None
    return tuple((f"{bare} {unit}", _answer(node, value, f"{bare} {unit}")) for unit, value in found.items() if value)


def _told_error(error: float | None) -> float | None:
    """The error of a length where its words carry one, more than that of reading any mark."""
    return error if error is not None and error > 1.01 * MARK_ERROR else None


def _answer(node: Node, value: Value | date, text: str, error: float | None = None) -> Answer:
    return Answer(node.id, "value", value, said=text, error=error)
