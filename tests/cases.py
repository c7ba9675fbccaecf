"""One household with one pump-out and one check, all in order, and cases laid over it. Readings in inches."""

from __future__ import annotations

import copy
import tomllib
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.domain.judging import Case, Judgement, judge
from selfcheck.loading import content_place, rules, signs, sources
from selfcheck.loading.conversations import texts
from selfcheck.report.finding_text import VerdictWords

INCH = 0.0254
TODAY = date(2026, 5, 18)
FILE = Path(__file__).parent / "domain" / "verdict_cases.toml"

BASE: dict[str, Any] = {
    "household": {
        "name": "Case",
        "bedrooms": 3,
        "occupancy": [{"from": "2016-06-01", "people": 3, "months_per_year": 12, "disposal": "none"}],
        "tanks": [
            {
                "id": "main",
                "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27},
                "liquid_depth_m": 48 * INCH,
                "material": "concrete",
                "compartments": 1,
                "outlet_bottom_below_surface_m": 17 * INCH,
                "outlet_top_above_surface_m": 6 * INCH,
                "filter": False,
            }
        ],
    },
    "pump_out": {"tank": "main", "on": "2024-05-20", "sludge_left_m": 0.0},
    "check": {
        "id": "2026-05-18",
        "on": "2026-05-18",
        "recorded_at": "2026-05-18T17:40:03Z",
        "tank": "main",
        "gate": "passed",
        "lid_closed": True,
        "seen": {
            "readings": {
                "liquid_depth": [48],
                "sludge": [4, 4.5],
                "scum_total": [],
                "scum_above": [1],
                "scum_below": [],
                "outlet_bottom_below_surface": [],
            },
            "level": "at_outlet",
            "smell": "earthy",
            "surface": "brown",
            "inlet_tee": "in_place",
            "outlet_tee": "in_place",
            "wall": "sound",
            "lid": "sound",
            "under_lid": "clean",
            "inflow": "none",
            "filter": "not_fitted",
            "alarm": "not_fitted",
            "yard": [],
            "house": [],
            "people_hurt": "no",
        },
    },
}

#: Every answer of a check as a healthy tank gives it, and the faults that may stand in its place.
HEALTHY = {
    "level": "at_outlet", "smell": "earthy", "surface": "brown", "inlet_tee": "in_place", "outlet_tee": "in_place",
    "wall": "sound", "lid": "sound", "under_lid": "clean", "inflow": "none", "filter": "not_fitted",
    "alarm": "not_fitted", "roots": "none", "yard": [], "house": [], "people_hurt": "no",
}  # fmt: skip
WORSE = {
    "level": ["above_outlet", "below_outlet"], "smell": ["rotten_egg", "chemical"],
    "surface": ["pale_grey", "black", "no_crust"], "inlet_tee": ["loose", "damaged", "missing"],
    "outlet_tee": ["loose", "damaged", "missing"], "wall": ["damp_white", "pitted", "crumbling", "steel_showing"],
    "lid": ["rocking", "cracked", "missing"], "under_lid": ["scum_or_paper"], "inflow": ["steady"],
    "filter": ["clogged"], "alarm": ["sounding"], "roots": ["seen"],
    "yard": ["wet_after_rain", "lush_strip", "sunken_ground", "wet_smelly"],
    "house": ["slow_one_drain", "smell_indoors", "gurgling", "slow_all_drains", "sewage_backup"],
    "people_hurt": ["feeling_ill", "fell_in"],
}  # fmt: skip
#: Answers that may name several faults.
SEVERAL = ("yard", "house")


@cache
def rule_sets() -> dict[str, Any]:
    """Every rule set of the content."""
    return rules(content_place(None))


@cache
def all_signs() -> tuple[Any, ...]:
    """Every sign of the content."""
    return tuple(signs(content_place(None)))


@cache
def verdict_words() -> VerdictWords:
    """The words of the content."""
    place = content_place(None)
    tables = {name: texts(place, name) for name in ("findings", "signs", "verdicts")}
    return VerdictWords(**tables, sources=sources(place))


def written_cases() -> list[dict[str, Any]]:
    """The hand-made cases."""
    return tomllib.loads(FILE.read_text(encoding="utf-8"))["case"]


def build(case: dict[str, Any] | None = None, **seen: Any) -> Case:
    """A case: `set` (dotted keys), `seen` (fields and readings in inches), `all_unknown`, `no_check`, `no_pump_out`,
    `correct` (readings of a later correction), `today`. Keywords are laid over what was seen."""
    case = case or {}
    whole = copy.deepcopy(BASE)
    for key, value in case.get("set", {}).items():
        _lay(whole, key, value)
    told = {**case.get("seen", {}), **seen}
    answers = whole["check"]["seen"]
    for key, value in told.items():
        target = answers["readings"] if key in answers["readings"] else answers
        target[key] = None if value == "null" else value
    if case.get("all_unknown"):
        answers["readings"] = {name: [] for name in answers["readings"]}
        for key in answers:
            if key != "readings" and key not in told:
                answers[key] = "unknown"
    checks = [] if case.get("no_check") else [_check(whole["check"], {})]
    if case.get("correct"):
        later = {
            **whole["check"],
            "id": "2026-05-18-2",
            "replaces": "2026-05-18",
            "recorded_at": "2026-05-18T18:02:00Z",
        }
        checks.append(_check(later, case["correct"]))
    return Case(
        household=Household.model_validate(whole["household"]),
        checks=checks,
        pump_outs=[] if case.get("no_pump_out") else [PumpOut.model_validate(whole["pump_out"])],
        rule_sets=rule_sets(),
        signs=all_signs(),
        today=date.fromisoformat(case["today"]) if "today" in case else TODAY,
    )


def judged(case: dict[str, Any] | None = None, **seen: Any) -> Judgement:
    """The judgement on `build(...)`."""
    return judge(build(case, **seen))


def check_of(on: str, ident: str = "", **seen: Any) -> Check:
    """One more healthy check of another day, with other answers laid over."""
    whole = copy.deepcopy(BASE["check"])
    whole.update(id=ident or on, on=on, recorded_at=f"{on}T17:00:00Z")
    for key, value in seen.items():
        target = whole["seen"]["readings"] if key in whole["seen"]["readings"] else whole["seen"]
        target[key] = value
    return _check(whole, {})


def _check(data: dict[str, Any], readings: dict[str, list[float]]) -> Check:
    data = copy.deepcopy(data)
    inches = {**data["seen"]["readings"], **readings}
    data["seen"]["readings"] = {
        name: [{"m": round(value * INCH, 5), "said": f"{value:g} in"} for value in values]
        for name, values in inches.items()
    }
    return Check.model_validate(data)


def _lay(target: Any, key: str, value: Any) -> None:
    *path, last = key.split(".")
    for part in path:
        target = target[int(part)] if isinstance(target, list) else target[part]
    target[last] = None if value == "null" else value
