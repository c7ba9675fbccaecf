"""From a household's record to one verdict.

The most urgent thing found decides; nothing found can make another finding milder. Readings speak for the day they were
taken; from then on the forecast speaks for them, and says when to look again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from selfcheck.domain.better_reading import better_readings
from selfcheck.domain.check import Check, Reading, Readings, standing
from selfcheck.domain.circumstances import circumstances, lately_pumped
from selfcheck.domain.explain import act_by, sureness, would_change
from selfcheck.domain.findings import Facts, Finding, Verdict, rank, worst
from selfcheck.domain.flow import detention_days, flow, short_rest
from selfcheck.domain.forecast import forecast
from selfcheck.domain.gaps import disagreements, not_checked, open_answers, unread, wrong_dates
from selfcheck.domain.history import counted, days_after, years_between
from selfcheck.domain.household import Household, Tank, can_be
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import RuleSet
from selfcheck.domain.over_time import FRESH_DAYS, look_again, over_time, rule_row, starting
from selfcheck.domain.pump_visit import Spoken, asked_of, spoken
from selfcheck.domain.pump_visit import findings as pump_out_findings
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.domain.signs import FIELDS, MAY_BE_LEFT_OUT, Observed
from selfcheck.domain.signs import findings as sign_findings
from selfcheck.domain.unjudged import record_unread, without_figure
from selfcheck.domain.verdict import DEFAULT_RULES, NEXT_STEP_DAYS, Case, Judgement
from selfcheck.domain.weighing import IMPOSSIBLE, SCUM_KINDS, Scene, Weighed, deciding, weigh

__all__ = ["Case", "Judgement", "judge"]

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


def _judge(case: Case) -> Judgement:
    tanks = list(case.household.tanks) or [case.household.tank()]
    on_record = {tank.id for tank in tanks}
    strange = dict.fromkeys(one.tank for one in case.checks if one.tank not in on_record)
    tanks += [Tank(id=ident) for ident in strange]
    judged = [_judge_tank(case, tank, tank.id in strange) for tank in tanks]
    first = max(judged, key=lambda one: rank(one.verdict))
    return first._replace(others=tuple(one for one in judged if one is not first))


def _judge_tank(case: Case, tank: Tank, strange: bool) -> Judgement:
    household, today = case.household, case.today
    rules, known = _rules(case)
    mine = [one for one in case.checks if one.tank == tank.id]
    checks = [one for one in standing(mine) if can_be(one.on) and one.on <= today]
    emptied = counted(case.pump_outs, tank.id, today)
    last = emptied[-1].on if emptied else None
    record = spoken(checks, emptied)
    check, earlier = record.check, record.earlier
    pumped_since = check is not None and last is not None and (not record.whole or _pumped_after(check, last))
    body = vessel(tank, household.bedrooms, _full_depth(check))
    ahead = forecast(household, tank, body, checks, case.pump_outs, today)
    limits = rules.limits
    found = record_unread(case.unread, check, today) + without_figure(rules, body, last)
    of_tank = [one for one in case.pump_outs if one.tank == tank.id]
    found += wrong_dates(standing(mine), of_tank, household.occupancy, today)
    if strange:
        found.append(Finding("tank_not_on_record", "cannot_tell", facts={"tank": tank.id}, uses=("check.tank",)))
    scene: Scene | None = None
    readings: Readings | None = None
    weighed: Weighed | None = None
    second: Weighed | None = None
    better: tuple[str, ...] = ()
    detention: float | None = None
    rests = False
    found += pump_out_findings(emptied, checks)
    if check is None or not record.whole:
        found.append(Finding("never_checked", "cannot_tell", uses=("record.checks",), kind="not_seen"))
    if check is not None:
        years = years_between(last, today) if last else None
        filling = check.seen.level == "below_outlet" and lately_pumped(body, check, emptied, ahead)
        scene = Scene(tank, body, rules, check.seen.level, years, filling)
        readings = _with_no_crust(check)
        if not pumped_since:
            weighed = weigh(scene, readings)
            found += weighed.findings
            found += unread(weighed.missing, limits, ahead, today)
            if readings is not check.seen.readings:  # a crust nobody saw stands in for a reading, and hides no estimate
                found += [one for one in unread(("scum",), limits, ahead, today) if one.verdict == "call_soon"]
            better = better_readings(scene, readings, household.bedrooms) if not IMPOSSIBLE & {*weighed.odd} else ()
            found += disagreements(check, earlier, last)
            detention = _detention(weighed.layers, body, household, today)
            if check.seen.second_compartment is not None:
                second = weigh(scene, _filled(check.seen.second_compartment, readings))
                found += [_of_second(one) for one in second.findings]
        found_layers = weighed.layers if weighed else None
        facts = circumstances(tank, body, check, emptied, ahead, deciding(readings), found_layers)
        gaps = open_answers(check, earlier, case.signs, facts, tank.filter)
        rests = gaps.rests_on_record
        on_the_day = not record.whole or check.on in {one.on for one in emptied}
        found += asked_of(check, gaps.findings) if on_the_day else gaps.findings
        found += _signs(case, record, gaps.seen, facts, pumped_since)
        found += _nothing_amiss(check, found)
        short = short_rest(detention) if detention is not None else None
        found += [short] if short is not None else []
    view = starting(ahead, weighed, check)
    standings = weighed.standings if weighed else ()
    look, reason = look_again(view, limits, check, last, today)
    chance = view.chance_over(limits, today)
    found += over_time(chance, check, emptied, pumped_since, look, today)
    rests = rests or any(one.id in ("rests_on_record", "pumped_since") for one in found)
    findings = tuple(sorted(_once(found), key=lambda one: -rank(one.verdict)))
    verdict: Verdict = worst([one.verdict for one in findings])
    if any(rank(one.verdict) >= rank("call_soon") and "rules" not in one.facts for one in findings):
        better = ()  # somebody is called whatever the layers are
    next_step = days_after(today, NEXT_STEP_DAYS)
    if verdict == "cannot_tell" and look > next_step:
        look, reason = next_step, "next_step"
    fresh = check is not None and (today - check.on).days <= FRESH_DAYS
    judgement = Judgement(
        verdict=verdict,
        today=today,
        act_by=None,
        sure="cannot_tell",
        because=(),
        findings=findings,
        household=household,
        tank=tank,
        vessel=body,
        check=check,
        rules=rules,
        layers=weighed.layers if weighed else None,
        second_layers=second.layers if second else None,
        standings=standings,
        by_rule_set=tuple(rule_row(one, view, weighed, fresh, body, last, today) for one in case.rule_sets.values()),
        forecast=view,
        due=view.due(limits),
        look_again=look,
        look_reason=reason,
        detention_days=detention,
        missing=not_checked(check, tank, rules),
        questionable=_questionable(findings, known),
        kind=next((one.kind for one in findings if one.verdict == "cannot_tell" and one.kind), None)
        if verdict == "cannot_tell"
        else None,
        rests_on_record=rests,
        pumped_since=pumped_since,
        better=better,
        scene=scene,
        readings=readings,
    )
    sure, because = sureness(judgement)
    judgement = judgement._replace(sure=sure, because=because, act_by=act_by(judgement))
    return judgement._replace(would_change=would_change(judgement))


def _rules(case: Case) -> tuple[RuleSet, bool]:
    """The rule set that decides, and whether it is the one asked for."""
    wanted = case.rules or case.household.rules
    if wanted in case.rule_sets:
        return case.rule_sets[wanted], True
    return case.rule_sets[DEFAULT_RULES], False


def _pumped_after(check: Check, last: date) -> bool:
    """Whether the pump-out came after the check. On the same day it did, unless the tank was found partly empty."""
    return last > check.on or (last == check.on and check.seen.level != "below_outlet")


def _full_depth(check: Check | None) -> float | None:
    """The wet line of a tank seen to stand at its outlet: what full means, where no fact says so."""
    if check is None or check.seen.level != "at_outlet" or not check.seen.readings.liquid_depth:
        return None
    return min(one.m for one in check.seen.readings.liquid_depth)


def _with_no_crust(check: Check) -> Readings:
    """The readings; where nobody measured a crust because there was none to see, its thickness is nothing."""
    readings = check.seen.readings
    if check.seen.surface == "no_crust" and not (readings.scum_total or readings.scum_above or readings.scum_below):
        return readings.model_copy(update={"scum_total": [Reading(m=0.0, said="")]})
    return readings


def _filled(second: Readings, first: Readings) -> Readings:
    """The second compartment's readings; the water line is the same in both."""
    return second if second.liquid_depth else second.model_copy(update={"liquid_depth": first.liquid_depth})


def _of_second(finding: Finding) -> Finding:
    uses = tuple(path.replace("seen.readings", "seen.second_compartment") for path in finding.uses)
    return finding._replace(facts={**finding.facts, "compartment": 2.0}, uses=uses)


def _signs(case: Case, record: Spoken, seen: Observed, facts: frozenset[str], pumped_since: bool) -> list[Finding]:
    """What the signs say. After a pump-out those that do not last may be gone: whether they are has to be looked at.

    What was seen while the tank stood empty was seen after it was pumped.
    """
    check = record.check
    assert check is not None
    of_notes = {f"seen.{name}" for name in record.fields}
    lasting = {sign.id for sign in case.signs if sign.lasts}
    thin = {sign.id for sign in case.signs if {"no_layers", "no_sludge"} & {*sign.given}}
    found = []
    for one in sign_findings(seen, case.signs, facts):
        told = one._replace(facts={**one.facts, "on": check.on})
        if of_notes & {*one.uses}:
            pumped: Facts = {"at_pump_out": record.pumped_on, "wide_days": record.pumped_within}
            found.append(one._replace(facts={**one.facts, "on": record.pumped_on, **pumped}))
            continue
        if one.id in thin:  # it turns on the layers being next to nothing, and so on their readings
            told = told._replace(uses=(*one.uses, *_layers_read(check.seen.readings)))
        if pumped_since and one.id not in lasting and rank(one.verdict) > rank("cannot_tell"):
            told = told._replace(id="seen_before_pump_out", verdict="cannot_tell", kind="not_seen")
            told = told._replace(facts={**told.facts, "sign": one.id})
        found.append(told)
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


def _detention(found: Layers, body: Vessel, household: Household, today: date) -> float | None:
    """Days that water rests in the clear zone while everybody is at home; None where it cannot be told."""
    if found.liquid_depth is None or found.sludge is None or found.scum_below is None:
        return None
    clear = body.volume_below(found.liquid_depth.value - found.scum_below.value) - body.volume_below(found.sludge.value)
    there = [one for one in household.occupancy if can_be(one.from_) and one.from_ <= today]
    people = max(there, key=lambda one: one.from_).people if there else float(household.bedrooms or 0)
    litres = flow(people, household.meter, today).litres_per_day
    return detention_days(max(clear, 0.0), litres) if litres > 0 else None


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
