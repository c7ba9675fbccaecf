"""Records of another version: older ones are brought up step by step, newer ones are refused politely.

To change a format: raise its version in the model, and add the step that leads there to `STEPS`.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from selfcheck.domain.check import CHECK_FORMAT, CHECK_VERSION, PUMP_OUT_FORMAT, PUMP_OUT_VERSION
from selfcheck.domain.household import HOUSEHOLD_FORMAT, HOUSEHOLD_VERSION
from selfcheck.errors import RecordProblem

Raw = dict[str, Any]
CURRENT = {
    HOUSEHOLD_FORMAT: HOUSEHOLD_VERSION,
    CHECK_FORMAT: CHECK_VERSION,
    PUMP_OUT_FORMAT: PUMP_OUT_VERSION,
}


def _number_it(raw: Raw) -> Raw:
    """Version 0: written by hand, with no version in it. Nothing else differs."""
    return {**raw, "version": 1}


#: (format, version) → the step to the next version. A step gets its own copy and may change it.
STEPS: dict[tuple[str, int], Callable[[Raw], Raw]] = {(name, 0): _number_it for name in CURRENT}


def migrate(raw: Raw, wanted: str, name: str) -> Raw:
    """The record in the present version of the format `wanted`.

    Raises RecordProblem for a record of another format, of a newer version, or of a version nobody knows.
    """
    form = raw.get("format", wanted)
    version = raw.get("version", 0)
    if form != wanted:
        raise RecordProblem(name, f'its "format" is not "{wanted}".', "Move it to the folder where it belongs.")
    if isinstance(version, bool) or not isinstance(version, int) or version < 0:
        raise RecordProblem(name, 'its "version" is not a whole number.', "Put the right number there.")
    if version > CURRENT[wanted]:
        what = f"it was written by a newer selfcheck (version {version}, this one reads up to {CURRENT[wanted]})."
        raise RecordProblem(name, what, "Use a newer selfcheck. The file was left as it is.")
    now = {**raw, "format": wanted}
    while version < CURRENT[wanted]:
        now = STEPS[wanted, version](now)
        version += 1
    return now
