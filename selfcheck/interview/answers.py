"""Answers, kept by question id: what a person said, and what it was taken to mean.

Four things are never mixed up: a value, zero, "don't know", and not asked. A value is in `value`; zero is the value 0;
"don't know" has `state="unknown"`; not asked is the absence of an answer.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

Value = str | float | tuple[str, ...] | date | None
State = Literal["value", "unknown", "skipped"]

#: ids of answers that the engine itself writes; no node may use an id that starts with this.
ENGINE = "_"
LEAVING = "_leaving"  # the person wants to leave while something may stand open
HAZARD = "_hazard"  # a hazard was told; the value is its id
TAKEN_BACK = "_taken_back"  # the value is the id of a question whose answer no longer counts
BREAK = "_break"  # the conversation was taken up again: what was seen before may no longer hold
NOTE = "_note"  # words that fitted no question, kept as they were typed


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer.

    `question`: node id. `value`: option id, ids of several options, metres, cubic metres, number, date or words by the
    node's kind; None unless `state` is "value". `said`: what was typed. `error`: one standard deviation in the value's
    unit, where the words carried one ("about", a range). `at`: ISO time when it was given; `observed`: ISO day when it
    was seen, where that differs (readings typed from paper); set when the record is made, since the day may be mended.
    """

    question: str
    state: State
    value: Value = None
    said: str = ""
    error: float | None = None
    at: str = ""
    observed: str = ""
