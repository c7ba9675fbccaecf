"""What a conversation collected → records that can be written.

A value that a record cannot hold is left out of it and named; what was typed stays in the `answers` all the same.
"""

from __future__ import annotations

import copy
from collections.abc import Collection, Sequence
from datetime import date, datetime
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.interview.answers import Answer

Model = TypeVar("Model", bound=BaseModel)
Raw = dict[str, Any]


def make_check(
    draft: Raw, answers: Sequence[Answer], day: date, recorded_at: datetime, sitting: str, replaces: str | None = None
) -> tuple[Check, list[str]]:
    """The check that a draft makes, and the paths of what it could not hold. Its id is given when it is written.

    `sitting` is kept in it, so that a check that was written just before a crash is not written a second time.
    """
    whole = {
        "on": day,
        "replaces": replaces,
        **draft,
        "id": "",
        "recorded_at": recorded_at,
        "answers": [kept(answer) for answer in answers],
        "sitting": sitting,
    }
    return _fitted(Check, whole, {"id": "", "on": day})


def make_pump_out(draft: Raw) -> tuple[PumpOut | None, list[str]]:
    """The pump-out that a draft makes; None when its day is not known."""
    if not draft.get("on"):
        return None, []
    return _fitted(PumpOut, draft, {"on": draft["on"]})


def make_household(draft: Raw, before: Household, on_disk: Household, day: date) -> tuple[Household, list[str]]:
    """The household with the changes of a draft, laid over what stands on disk now.

    `before`: the household that the conversation began with; only what differs from it counts as a change.
    """
    began = before.model_dump(mode="json", by_alias=True)
    now = on_disk.model_dump(mode="json", by_alias=True)
    changes = {key: value for key, value in copy.deepcopy(draft).items() if value != began.get(key)}
    if "occupancy" in changes:
        changes["occupancy"] = _whole_occupancy(changes["occupancy"], day)
    return _fitted(Household, {**now, **changes}, now)


def kept(answer: Answer) -> Raw:
    """One answer as it stands in a check: what was asked, what was said, and what it was taken to mean."""
    value: Any = answer.value
    if isinstance(value, date):
        value = value.isoformat()
    elif isinstance(value, tuple):
        value = list(value)
    found: Raw = {
        "question": answer.question,
        "said": answer.said,
        "at": answer.at,
        "state": answer.state,
        "value": value,
    }
    if answer.error is not None:
        found["error"] = answer.error
    if answer.observed:
        found["observed"] = answer.observed
    return found


def answers_of(check: Check, dates: Collection[str]) -> list[Answer]:
    """The answers that a check was made of; those without their meaning, from another program, are left out.

    `dates`: ids of the questions whose answers are days.
    """
    found: list[Answer] = []
    for one in check.model_dump(mode="json")["answers"]:
        state, value = one.get("state"), one.get("value")
        if state not in ("value", "unknown", "skipped") or not isinstance(one.get("question"), str):
            continue
        if isinstance(value, list):
            value = tuple(str(part) for part in value)
        elif one["question"] in dates and isinstance(value, str):
            value = date.fromisoformat(value)
        said, at, observed = (str(one.get(key) or "") for key in ("said", "at", "observed"))
        found.append(Answer(one["question"], state, value, said, one.get("error"), at, observed))
    return found


def _whole_occupancy(rows: Any, day: date) -> list[Raw]:
    """Each stretch of living there whole: what was not said of one is taken from the one before."""
    whole: list[Raw] = []
    for row in rows if isinstance(rows, list) else []:
        if not isinstance(row, dict):
            continue
        said = {key: value for key, value in row.items() if value is not None}
        filled = {**(whole[-1] if whole else {}), "from": day.isoformat(), **said}
        if filled.get("people") is not None:
            whole.append(filled)
    return sorted(whole, key=lambda row: str(row["from"]))


def _fitted(model: type[Model], raw: Raw, least: Raw) -> tuple[Model, list[str]]:
    """The record without the values that do not fit it, and their paths; `least` when nothing else will do."""
    left_out: list[str] = []
    whole = copy.deepcopy(raw)
    for _ in range(20):
        try:
            return model.model_validate(whole), left_out
        except ValidationError as error:
            for fault in error.errors(include_url=False, include_input=False, include_context=False):
                left_out.append(".".join(map(str, fault["loc"])))
                _take_out(whole, fault["loc"])
    return model.model_validate(least), left_out


def _take_out(whole: Any, path: tuple[int | str, ...]) -> None:
    """Remove what lies at a path, or the nearest thing above it that is there."""
    here: Any = whole
    holder: Any = None
    last: int | str = ""
    for step in path:
        known: Any = here if isinstance(here, dict) else range(len(here)) if isinstance(here, list) else ()
        if step in known:
            holder, last, here = here, step, here[step]
    if holder is not None:
        del holder[last]
