"""JSON Schemas of everything that the program reads or writes, printed from its own models."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import TypeAdapter
from typing_extensions import TypedDict  # the standard one is taken from Python 3.12 on only

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.findings import Sureness, Verdict
from selfcheck.domain.household import Household
from selfcheck.errors import UsageProblem

Number = float | None
Day = str | None


class Due(TypedDict):
    """ISO days; null where it lies beyond the horizon of the forecast."""

    p10: Day
    p50: Day
    p90: Day


class LayersShown(TypedDict):
    """The layers in metres, shares and days; null where they could not be told."""

    liquid_depth_m: Number
    sludge_m: Number
    scum_m: Number
    scum_below_m: Number
    clear_zone_m: Number
    solids_by_depth: Number
    solids_by_volume: Number
    sludge_to_outlet_m: Number
    scum_to_outlet_m: Number
    detention_days: Number


class FindingShown(TypedDict):
    """One thing that speaks for the verdict."""

    id: str
    verdict: Verdict
    text: str
    source: str
    chance_over: Number


class RuleRow(TypedDict):
    """One published rule set: whether it is over, and when it will be."""

    id: str
    title: str
    chance_over: Number
    over: bool | None
    due: Due


class ForecastShown(TypedDict):
    """The household's own rate, and when the rule set that counts is reached."""

    litres_per_person_year: Number
    due: Due
    check_again_by: Day


class JudgementShown(TypedDict):
    """What `selfcheck judge FOLDER --json` prints."""

    verdict: Verdict
    call_professional: bool
    act_by: Day
    sure: Sureness
    because: str
    check: str | None
    rules: str
    layers: LayersShown
    findings: list[FindingShown]
    by_rule_set: list[RuleRow]
    forecast: ForecastShown
    missing: list[str]
    questionable: list[str]


class OpenLine(TypedDict):
    """One answer in a file of `open/`. A date is written as {"day": "2026-05-18"}."""

    question: str
    state: Literal["value", "unknown", "skipped"]
    value: str | float | list[str] | dict[Literal["day"], str] | None
    said: str
    error: Number
    at: str
    observed: str


class OpenHeader(TypedDict):
    """The first line of a file of `open/`."""

    format: Literal["selfcheck-open"]
    version: Literal[1]
    flow: str
    sitting: str
    started: str
    content: str
    about: dict[str, Any]


MODELS: dict[str, type[Any]] = {
    "household": Household,
    "check": Check,
    "pump-out": PumpOut,
    "judgement": JudgementShown,
    "open": OpenHeader,
    "open-answer": OpenLine,
}


def schema(name: str) -> dict[str, Any]:
    """The JSON Schema of one kind of record. Raises UsageProblem for a name that is none."""
    if name not in MODELS:
        known = ", ".join(MODELS)
        raise UsageProblem(f'There is no schema "{name}".', f"Name one of these: {known}.")
    found = TypeAdapter(MODELS[name]).json_schema(by_alias=True)
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **found}


def all_schemas() -> dict[str, Any]:
    """Every schema by name."""
    return {name: schema(name) for name in MODELS}
