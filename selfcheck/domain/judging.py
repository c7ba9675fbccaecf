"""From a household's record to one verdict.

The most urgent thing found decides; nothing found can make another finding milder. Readings speak for the day they were
taken; from then on the forecast speaks for them, and says when to look again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import NamedTuple

from selfcheck.domain.agreement import deciding
from selfcheck.domain.check import Check, Readings
from selfcheck.domain.circumstances import circumstances
from selfcheck.domain.explain import act_by, sureness, would_change
from selfcheck.domain.findings import CannotTell, Facts, Finding, Verdict, rank, worst
from selfcheck.domain.flow import short_rest
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.gaps import not_checked, open_answers
from selfcheck.domain.history import days_after
from selfcheck.domain.household import Tank
from selfcheck.domain.inside import Inside, look_inside
from selfcheck.domain.over_time import FRESH_DAYS, look_again, over_time, rule_row, starting
from selfcheck.domain.pump_visit import asked_of
from selfcheck.domain.pump_visit import findings as pump_out_findings
from selfcheck.domain.signs import FIELDS, MAY_BE_LEFT_OUT, Observed
from selfcheck.domain.signs import findings as sign_findings
from selfcheck.domain.told import Told, tell
from selfcheck.domain.unjudged import record_unread, without_figure
from selfcheck.domain.verdict import NEXT_STEP_DAYS, Case, Judgement, RuleRow
from selfcheck.domain.weighing import SCUM_KINDS

__all__ = ["Case", "Judgement", "called_anyway", "judge", "worth_reading"]

#: Checks with a shared id that are each left out once; a record has next to none. Our choice.
MOST_SHARED = 8


def judge(case: Case) -> Judgement:
    """The verdict on a household's record as of `case.today`: the most urgent of its tanks'.

    Raises nothing for odd records: what does not fit is questioned in the judgement itself. Where checks share an id,
    the record is judged without each of them too, and the most urgent of those judgements holds.
    """
    whole = _judge(case)
    fewer = [[one for one in case.checks if one.id != ident] for ident in case.shared[:MOST_SHARED]]
    without = [_judge(replace(case, checks=checks)) for checks in fewer]
    return max((whole, *without), key=lambda one: rank(one.verdict))


def worth_reading(case: Case, tank: Tank) -> tuple[str, ...]:
    """Ids of the better readings of one tank that could still turn the verdict, as `Judgement.better` names them."""
    told = tell(case, tank)
    inside = look_inside(told)
    return _better(inside, _found(told, inside).findings) if inside.better else ()


def called_anyway(case: Case, tank: Tank) -> bool:
    """Whether what was seen, smelled or told of one tank calls somebody, whatever its layers are."""
    told = tell(case, tank)
    answered = _answers(told, told.check, look_inside(told))[0] if told.check is not None else []
    return _called([*pump_out_findings(told.emptied, told.checks), *answered])


def _judge(case: Case) -> Judgement:
    tanks = list(case.household.tanks) or [case.household.tank()]
    on_record = {tank.id for tank in tanks}
    strange = dict.fromkeys(one.tank for one in case.checks if one.tank not in on_record)
    tanks += [Tank(id=ident) for ident in strange]
    judged = [_judge_tank(case, tank, tank.id in strange) for tank in tanks]
    first = max(judged, key=lambda one: rank(one.verdict))
    return first._replace(others=tuple(one for one in judged if one is not first))


def _judge_tank(case: Case, tank: Tank, strange: bool) -> Judgement:
    told = tell(case, tank)
    inside = look_inside(told)
    check, rules, today = told.check, told.rules, case.today
    found = _found(told, inside, strange)
    findings, view, look, reason = found.findings, found.view, found.look, found.reason
    verdict: Verdict = worst([one.verdict for one in findings])
    next_step = days_after(today, NEXT_STEP_DAYS)
    if verdict == "cannot_tell" and look > next_step:
        look, reason = next_step, "next_step"
    judgement = Judgement(
        verdict=verdict,
        today=today,
        act_by=None,
        sure="cannot_tell",
        because=(),
        findings=findings,
        household=case.household,
        tank=tank,
        vessel=told.body,
        check=check,
        rules=rules,
        layers=inside.layers,
        second_layers=inside.second,
        standings=inside.weighed.standings if inside.weighed else (),
        by_rule_set=_by_rule_set(told, inside, view),
        forecast=view,
        due=view.due(rules.limits),
        look_again=look,
        look_reason=reason,
        detention_days=inside.detention,
        missing=not_checked(check, tank, rules),
        questionable=_questionable(findings, told.rules_known),
        kind=_kind(findings) if verdict == "cannot_tell" else None,
        rests_on_record=found.rests or any(one.id in ("rests_on_record", "pumped_since") for one in findings),
        pumped_since=told.pumped_since,
        better=_better(inside, findings),
        scene=inside.scene,
        readings=inside.readings,
    )
    sure, because = sureness(judgement)
    judgement = judgement._replace(sure=sure, because=because, act_by=act_by(judgement))
    return judgement._replace(would_change=would_change(judgement))


class _Found(NamedTuple):
    """The findings on one tank, most urgent first. `rests`: an answer rests on an earlier check."""

    findings: tuple[Finding, ...]
    rests: bool
    view: Forecast
    look: date  # the day to look again
    reason: str


def _found(told: Told, inside: Inside, strange: bool = False) -> _Found:
    """All that is found on one tank; `strange`: it is not on record."""
    check, rules, today = told.check, told.rules, told.case.today
    found = record_unread(told.case.unread, check, today) + without_figure(rules, told.body, told.last)
    found += told.wrong_dates
    if strange:
        found.append(Finding("tank_not_on_record", "cannot_tell", facts={"tank": told.tank.id}, uses=("check.tank",)))
    found += pump_out_findings(told.emptied, told.checks)
    if check is None or not told.record.whole:
        found.append(Finding("never_checked", "cannot_tell", uses=("record.checks",), kind="not_seen"))
    found += inside.findings
    rests = False
    if check is not None:
        answered, rests = _answers(told, check, inside)
        found += answered
        found += _nothing_amiss(check, found)
        short = short_rest(inside.detention) if inside.detention is not None else None
        found += [short] if short is not None else []
    view = starting(told.ahead, inside.weighed, check)
    look, reason = look_again(view, rules.limits, check, told.last, today)
    found += over_time(view.chance_over(rules.limits, today), check, told.emptied, told.pumped_since, look, today)
    return _Found(tuple(sorted(_once(found), key=lambda one: -rank(one.verdict))), rests, view, look, reason)


def _answers(told: Told, check: Check, inside: Inside) -> tuple[list[Finding], bool]:
    """What was seen and answered, and whether an answer that is missing rests on an earlier check."""
    readings = deciding(inside.readings) if inside.readings else check.seen.readings
    facts = circumstances(told.tank, told.body, check, told.emptied, told.ahead, readings, inside.layers)
    gaps = open_answers(check, told.record.earlier, told.case.signs, facts, told.tank.filter)
    on_the_day = not told.record.whole or check.on in {one.on for one in told.emptied}
    found = asked_of(check, gaps.findings) if on_the_day else list(gaps.findings)
    return found + _signs(told, check, gaps.seen, facts), gaps.rests_on_record


def _by_rule_set(told: Told, inside: Inside, view: Forecast) -> tuple[RuleRow, ...]:
    check, today = told.check, told.case.today
    fresh = check is not None and (today - check.on).days <= FRESH_DAYS
    sets = told.case.rule_sets.values()
    return tuple(rule_row(one, view, inside.weighed, fresh, told.body, told.last, today) for one in sets)


def _better(inside: Inside, findings: Sequence[Finding]) -> tuple[str, ...]:
    """The better readings that could turn the verdict; none where somebody is called whatever the layers are."""
    return () if _called(findings) else inside.better


def _called(findings: Sequence[Finding]) -> bool:
    return any(rank(one.verdict) >= rank("call_soon") and "rules" not in one.facts for one in findings)


def _kind(findings: Sequence[Finding]) -> CannotTell | None:
    return next((one.kind for one in findings if one.verdict == "cannot_tell" and one.kind), None)


def _signs(told: Told, check: Check, seen: Observed, facts: frozenset[str]) -> list[Finding]:
    """What the signs say. After a pump-out those that do not last may be gone: whether they are has to be looked at.

    What was seen while the tank stood empty was seen after it was pumped.
    """
    record, signs = told.record, told.case.signs
    of_notes = {f"seen.{name}" for name in record.fields}
    lasting = {sign.id for sign in signs if sign.lasts}
    thin = {sign.id for sign in signs if {"no_layers", "no_sludge"} & {*sign.given}}
    found = []
    for one in sign_findings(seen, signs, facts):
        sign = one._replace(facts={**one.facts, "on": check.on})
        if of_notes & {*one.uses}:
            pumped: Facts = {"at_pump_out": record.pumped_on, "wide_days": record.pumped_within}
            found.append(one._replace(facts={**one.facts, "on": record.pumped_on, **pumped}))
            continue
        if one.id in thin:  # it turns on the layers being next to nothing, and so on their readings
            sign = sign._replace(uses=(*one.uses, *_layers_read(check.seen.readings)))
        if told.pumped_since and one.id not in lasting and rank(one.verdict) > rank("cannot_tell"):
            sign = sign._replace(id="seen_before_pump_out", verdict="cannot_tell", kind="not_seen")
            sign = sign._replace(facts={**sign.facts, "sign": one.id})
        found.append(sign)
    return found


def _layers_read(readings: Readings) -> tuple[str, ...]:
    """The readings that say how thick the layers are: the sludge, and the crust where one reading alone tells it."""
    crust = [kind for kind in SCUM_KINDS if getattr(readings, kind)]
    return ("seen.readings.sludge", *(f"seen.readings.{kind}" for kind in crust if len(crust) == 1))


def _nothing_amiss(check: Check, found: Sequence[Finding]) -> list[Finding]:
    """Healthy answers, cited where they carry the verdict: without any one of them nobody could say "carry on"."""
    if any(one.verdict != "carry_on" for one in found):
        return []
    cited = {path for one in found for path in one.uses}
    must = [f"seen.{name}" for name in FIELDS if name not in MAY_BE_LEFT_OUT]
    uses = tuple(path for path in must if path not in cited and getattr(check.seen, path[5:]) not in (None, "unknown"))
    return [Finding("nothing_amiss", "carry_on", facts={"on": check.on}, uses=uses)] if uses else []


def _questionable(findings: Sequence[Finding], rules_known: bool) -> tuple[str, ...]:
    """Ids of what does not fit together."""
    doubtful = [
        one.id for one in findings if one.kind in ("readings_clash", "unread") or one.id == "tank_not_on_record"
    ]
    return tuple(dict.fromkeys([*([] if rules_known else ["rules_not_known"]), *doubtful]))


def _once(findings: Sequence[Finding]) -> list[Finding]:
    """Each finding once, in order."""
    kept: dict[tuple[object, ...], Finding] = {}
    for one in findings:
        kept.setdefault((one.id, one.facts.get("field"), one.facts.get("compartment"), one.facts.get("sign")), one)
    return list(kept.values())
