"""A judgement as one JSON object, for programs."""

from __future__ import annotations

from datetime import date
from typing import Any

from selfcheck.domain.explain import not_used
from selfcheck.domain.findings import Dates, Finding
from selfcheck.domain.limits import Standing
from selfcheck.domain.uncertain import Measure
from selfcheck.domain.verdict import Change, Judgement, RuleRow
from selfcheck.report.finding_text import VerdictWords, limit_kind, means_of, text_of
from selfcheck.report.verdict_text import because_line, headline, what_to_do, would_change


def judgement_json(judgement: Judgement, words: VerdictWords) -> dict[str, Any]:
    """The object that `judge --json` prints: metres, ISO dates, chances from 0 to 1; null where it is not known."""
    units = judgement.household.units
    titles = {row.rule_set.id: row.rule_set.title for row in judgement.by_rule_set}
    ahead = judgement.forecast
    return {
        "verdict": judgement.verdict,
        "call_professional": judgement.call_professional,
        "act_by": _day(judgement.act_by),
        "sure": judgement.sure,
        "because": because_line(judgement, words),
        "headline": headline(judgement, words, units),
        "do": what_to_do(judgement, words, units),
        "check": judgement.check.id if judgement.check else None,
        "tank": judgement.tank.id,
        "rules": judgement.rules.id,
        "layers": _layers(judgement),
        "findings": [_finding(one, words, titles, judgement) for one in judgement.findings],
        "by_rule_set": [_row(row) for row in judgement.by_rule_set],
        "forecast": {
            "litres_per_person_year": round(ahead.litres_per_person_year, 1),
            "due": _due(judgement.due),
            "check_again_by": _day(judgement.look_again),
        },
        "missing": list(judgement.missing),
        "questionable": list(judgement.questionable),
        "would_change": list(would_change(judgement, words, units)),
        "change": _change(judgement.would_change),
        "better_readings": list(judgement.better),
        "not_used": list(not_used(judgement)),
        "other_tanks": {one.tank.id: one.verdict for one in judgement.others},
    }


def _finding(finding: Finding, words: VerdictWords, titles: dict[str, str], judgement: Judgement) -> dict[str, Any]:
    text = " ".join([text_of(finding, words, judgement.household.units, titles), *means_of(finding, words)])
    return {
        "id": finding.id,
        "verdict": finding.verdict,
        "text": text,
        "source": finding.source,
        "chance_over": _rounded(finding.chance_over),
        "uses": list(finding.uses),
        "line": _line(finding),
    }


def _line(finding: Finding) -> dict[str, Any] | None:
    """The limit that a finding is about, in SI: what it allows, what was found, and what is left, with its error."""
    about = limit_kind(finding)
    if about is None:
        return None
    facts = finding.facts
    figures = {name: _figure(facts.get(name)) for name in ("limit", "now", "margin", "error")}
    causes = str(facts.get("error_from") or "")
    return {"kind": about[0], **figures, "call": about[1], "error_from": causes.split(", ") if causes else []}


def _layers(judgement: Judgement) -> dict[str, Any]:
    found = judgement.layers
    names = {
        "liquid_depth_m": "liquid_depth",
        "sludge_m": "sludge",
        "scum_m": "scum",
        "scum_below_m": "scum_below",
        "clear_zone_m": "clear_zone",
        "solids_by_depth": "solids_by_depth",
        "solids_by_volume": "solids_by_volume",
        "sludge_to_outlet_m": "sludge_to_outlet",
        "scum_to_outlet_m": "scum_to_outlet",
    }
    shown: dict[str, Any] = {key: _value(getattr(found, name) if found else None) for key, name in names.items()}
    days = judgement.detention_days
    shown["detention_days"] = None if days is None else round(days, 2)
    return shown


def _row(row: RuleRow) -> dict[str, Any]:
    return {
        "id": row.rule_set.id,
        "title": row.rule_set.title,
        "chance_over": _rounded(row.chance_over),
        "over": None if row.chance_over is None else row.over,
        "call": row.call,
        "by": row.by,
        "due": _due(row.due),
        "limits": [_standing(one) for one in row.standings],
    }


def _standing(one: Standing) -> dict[str, Any]:
    return {
        "kind": one.limit.kind,
        "limit": _figure(one.least),
        "now": _value(one.now),
        "margin": _figure(one.margin),
        "error": _figure(one.error),
        "chance_over": _rounded(one.chance_over),
        "call": one.call,
    }


def _change(change: Change | None) -> dict[str, Any] | None:
    if change is None:
        return None
    return {
        "what": change.what,
        "name": change.name,
        "verdict": change.verdict,
        "now_m": _figure(change.now_m),
        "then_m": _figure(change.then_m),
        "compartment": change.compartment,
    }


def _due(dates: Dates) -> dict[str, Any]:
    return {"p10": _day(dates.p10), "p50": _day(dates.p50), "p90": _day(dates.p90)}


def _day(day: date | None) -> str | None:
    return day.isoformat() if day else None


def _value(measure: Measure | None) -> float | None:
    return None if measure is None else round(measure.value, 4)


def _figure(value: object) -> float | None:
    return round(float(value), 4) if isinstance(value, (int, float)) else None


def _rounded(chance: float | None) -> float | None:
    return None if chance is None else round(chance, 4)
