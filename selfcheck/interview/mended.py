"""A bare number that takes the place of an answer: it is in the unit of that answer."""

from __future__ import annotations

import re

from selfcheck.interview.answers import Answer
from selfcheck.interview.understanding import Reading

_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def in_the_unit_of(old: Answer, reading: Reading, part: str) -> Reading:
    """Of two meanings of a bare number, the one in the unit of the value that it takes the place of."""
    unit, number = _unit_of(old), number_in(part)
    if unit is None or number is None:
        return reading
    for _, answer in reading.meanings:
        if isinstance(answer.value, (int, float)) and abs(answer.value - unit * number) <= 0.001 * abs(answer.value):
            return Reading(answer)
    return reading


def _unit_of(answer: Answer) -> float | None:
    """How much one of the answer's units is, where it was said as one number."""
    number = number_in(answer.said)
    if not number or not isinstance(answer.value, (int, float)):
        return None
    return answer.value / number


def number_in(text: str) -> float | None:
    found = _NUMBER.findall(text)
    return float(found[0].replace(",", ".")) if len(found) == 1 else None
