"""From a household's record to one verdict.

The most urgent thing found decides; nothing found can make another finding milder. Readings speak for the day they were
taken; from then on the forecast speaks for them, and says when to look again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from selfcheck.domain.check import Check, PumpOut, Reading, Readings, standing
from selfcheck.domain.conversions import INCH
from selfcheck.domain.explain import act_by, sureness, would_change
from selfcheck.domain.findings import Facts, Finding, Verdict, rank, worst
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.gaps import by_estimate, disagreements, open_answers, unread, wrong_dates
from selfcheck.domain.history import counted, years_between
from selfcheck.domain.household import Household, Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import OVER_FROM, Limit, RuleSet, Standing, call_of, stand
from selfcheck.domain.outlook import Outlook
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.domain.signs import FIELDS, MAY_BE_LEFT_OUT, Observed
from selfcheck.domain.signs import findings as sign_findings
from selfcheck.domain.verdict import DEFAULT_RULES, NEXT_STEP_DAYS, Case, Judgement, RuleRow
from selfcheck.domain.weighing import Scene, Weighed, deciding, greatest, weigh

__all__ = ["Case", "Judgement", "judge"]

#: Readings speak for themselves this long before the forecast is asked as well. Our choice.
FRESH_DAYS = 30
#: Layers thinner than this are as good as none. Our choice: what a cloth can show.
AS_GOOD_AS_NONE_M = 0.5 * INCH
#: Litres a person lets down the drains each day; the published means lie between 220 and 262. Our choice: the low one,
#: for a refilling tank that is given the benefit of the doubt.
REFILL_L_PER_PERSON_DAY = 222.0
#: A tank may still be filling for twice the time reckoned, within these bounds in days. Our choice.
FILLING_LEAST, FILLING_MOST = 14, 90


def judge(case: Case) -> Judgement:
    """The verdict on a household's record as of `case.today`: the most urgent of its tanks'.

    Raises nothing for odd records: what does not fit is questioned in the judgement itself.
    """
    tanks = list(case.household.tanks) or [case.household.tank()]
    on_record = {tank.id for tank in tanks}
    strange = dict.fromkeys(one.tank for one in case.checks if one.tank not in on_record)
    tanks += [Tank(id=ident) for ident in strange]
    judged = [_judge_tank(case, tank, tank.id in strange) for tank in tanks]
    first = max(judged, key=lambda one: rank(one.verdict))
    return replace(first, others=tuple(one for one in judged if one is not first))


def _judge_tank(case: Case, tank: Tank, strange: bool) -> Judgement:
    household, today = case.household, case.today
    rules, known = _rules(case)
    mine = [one for one in case.checks if one.tank == tank.id]
    checks = [one for one in standing(mine) if one.on <= today]
    check = checks[-1] if checks else None
    emptied = counted(case.pump_outs, tank.id, today)
    last = emptied[-1].on if emptied else None
    pumped_since = check is not None and last is not None and last > check.on
    body = vessel(tank, household.bedrooms, _full_depth(check))
    ahead = forecast(household, tank, body, checks, case.pump_outs, today)
    limits = rules.limits
    found = wrong_dates(standing(mine), [one for one in case.pump_outs if one.tank == tank.id], today)
    if strange:
        found.append(Finding("tank_not_on_record", "cannot_tell", facts={"tank": tank.id}, uses=("check.tank",)))
    weighed: Weighed | None = None
    second: Weighed | None = None
    rests = False
    if check is None:
        found.append(Finding("never_checked", "cannot_tell", uses=("record.checks",), kind="not_seen"))
    else:
        scene = Scene(tank, body, rules, _level(check), years_between(last, today) if last else None)
        earlier = checks[:-1]
        readings = _with_no_crust(check)
        if not pumped_since:
            weighed = weigh(scene, readings)
            found += weighed.findings
            found += unread(weighed.missing, limits, ahead, today)
            found += disagreements(check, earlier, last)
            if check.seen.second_compartment is not None:
                second = weigh(scene, _filled(check.seen.second_compartment, readings))
                found += [_of_second(one) for one in second.findings]
        facts = circumstances(household, tank, body, check, emptied, ahead, deciding(readings), weighed)
        gaps = open_answers(check, earlier, case.signs, facts, tank.filter)
        rests = gaps.rests_on_record
        found += gaps.findings
        found += _signs(case, check, gaps.seen, facts, pumped_since)
        found += _nothing_amiss(check, found)
    view = _outlook(ahead, weighed, check)
    standings = weighed.standings if weighed else ()
    look, reason = _look_again(view, limits, standings, check, last, today)
    chance = view.chance_over(limits, standings, today)
    found += _over_time(chance, check, last, look, today)
    rests = rests or any(one.id in ("rests_on_record", "pumped_since") for one in found)
    findings = tuple(sorted(_once(found), key=lambda one: -rank(one.verdict)))
    verdict: Verdict = worst([one.verdict for one in findings])
    next_step = today + timedelta(days=NEXT_STEP_DAYS)
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
        by_rule_set=tuple(_row(one, view, weighed, fresh, body, last, today) for one in case.rule_sets.values()),
        forecast=ahead,
        due=view.due(limits, standings),
        look_again=look,
        look_reason=reason,
        detention_days=_detention(weighed.layers, body, ahead) if weighed else None,
        missing=_not_checked(check, tank, rules),
        questionable=_questionable(findings, known),
        kind=next((one.kind for one in findings if one.verdict == "cannot_tell" and one.kind), None)
        if verdict == "cannot_tell"
        else None,
        rests_on_record=rests,
        pumped_since=pumped_since,
    )
    sure, because = sureness(judgement)
    judgement = replace(judgement, sure=sure, because=because, act_by=act_by(judgement))
    return replace(judgement, would_change=would_change(judgement))


def _rules(case: Case) -> tuple[RuleSet, bool]:
    """The rule set that decides, and whether it is the one asked for."""
    wanted = case.rules or case.household.rules
    if wanted in case.rule_sets:
        return case.rule_sets[wanted], True
    return case.rule_sets[DEFAULT_RULES], False


def _level(check: Check) -> str | None:
    return check.seen.level


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
    return replace(finding, facts={**finding.facts, "compartment": 2.0}, uses=uses)


def circumstances(
    household: Household,
    tank: Tank,
    body: Vessel,
    check: Check,
    emptied: Sequence[PumpOut],
    ahead: Forecast,
    readings: Readings,
    weighed: Weighed | None,
) -> frozenset[str]:
    """The facts of the record that signs may be given with (see `signs.Given`), as of the day of the check."""
    facts = {"acid_spares" if tank.material in ("plastic", "fibreglass") else "acid_attacks"}
    before = [one.on for one in emptied if one.on <= check.on]
    people = ahead.people.people[-1]
    filling = body.full_m3 * 1000 / (max(people, 0.1) * REFILL_L_PER_PERSON_DAY)
    spell = min(max(FILLING_LEAST, 2 * filling), FILLING_MOST)
    lately = bool(before) and (check.on - before[-1]).days <= spell
    facts.add("lately_pumped" if lately else "not_lately_pumped")
    years = years_between(before[-1], check.on) if before else years_between(ahead.people.start, check.on)
    lived_in = people > 0 and years * min(people, 1.0) >= 0.5
    if lived_in:
        facts.add("used_half_a_year")
    if weighed is not None and readings.sludge and readings.sludge[0].m <= AS_GOOD_AS_NONE_M:
        scum = weighed.layers.scum
        facts.add("no_layers" if scum is not None and scum.value <= AS_GOOD_AS_NONE_M else "no_sludge")
    return frozenset(facts)


def _signs(case: Case, check: Check, seen: Observed, facts: frozenset[str], pumped_since: bool) -> list[Finding]:
    """What the signs say. After a pump-out those that do not last may be gone: whether they are has to be looked at."""
    lasting = {sign.id for sign in case.signs if sign.lasts}
    found = []
    for one in sign_findings(seen, case.signs, facts):
        told = replace(one, facts={**one.facts, "on": check.on})
        if pumped_since and one.id not in lasting and rank(one.verdict) > rank("cannot_tell"):
            told = replace(told, id="seen_before_pump_out", verdict="cannot_tell", kind="not_seen")
            told = replace(told, facts={**told.facts, "sign": one.id})
        found.append(told)
    return found


def _nothing_amiss(check: Check, found: Sequence[Finding]) -> list[Finding]:
    """Healthy answers, cited where they carry the verdict: without any one of them nobody could say "carry on"."""
    if any(one.verdict != "carry_on" for one in found):
        return []
    cited = {path for one in found for path in one.uses}
    must = [f"seen.{name}" for name in FIELDS if name not in MAY_BE_LEFT_OUT]
    uses = tuple(path for path in must if path not in cited and getattr(check.seen, path[5:]) not in (None, "unknown"))
    return [Finding("nothing_amiss", "carry_on", facts={"on": check.on}, uses=uses)] if uses else []


def _outlook(ahead: Forecast, weighed: Weighed | None, check: Check | None) -> Outlook:
    """From the last readings where they are whole and undisputed, else from the forecast."""
    if weighed is None or check is None or weighed.missing or weighed.disputed:
        return Outlook(ahead)
    return Outlook(ahead, weighed.layers, check.on)


def _look_again(
    view: Outlook,
    limits: Sequence[Limit],
    standings: Sequence[Standing],
    check: Check | None,
    last: date | None,
    today: date,
) -> tuple[date, str]:
    """The day to measure again. Fresh readings or a fresh pump-out speak for at least `FRESH_DAYS`."""
    look, reason = view.look_again(limits, standings)
    known = [one for one in (check.on if check else None, last) if one is not None]
    if known and (today - max(known)).days <= FRESH_DAYS:
        look = max(look, max(known) + timedelta(days=FRESH_DAYS))
    return look, reason


def _over_time(chance: float, check: Check | None, last: date | None, look: date, today: date) -> list[Finding]:
    """What the days gone by since the last look or pump-out make of it. `chance`: of being over today."""
    known = [one for one in (check.on if check else None, last) if one is not None]
    if check is not None and known and (today - max(known)).days <= FRESH_DAYS:
        if last is not None and last > check.on:
            since: Facts = {"on": last, "chance": chance}
            return [Finding("pumped_since", "carry_on", facts=since, uses=("record.pump_outs",), chance_over=chance)]
        return []
    if chance >= OVER_FROM:
        return [by_estimate(chance)]
    if check is None:
        return []
    facts: Facts = {"on": max(known), "chance": chance}
    if today >= look:
        return [Finding("time_to_look", "cannot_tell", facts=facts, uses=("record.forecast",), kind="not_seen")]
    ident = "pumped_since" if last is not None and last > check.on else "forecast_under"
    return [Finding(ident, "carry_on", facts=facts, uses=("record.forecast",), chance_over=chance)]


def _row(
    rules: RuleSet, view: Outlook, weighed: Weighed | None, fresh: bool, body: Vessel, last: date | None, today: date
) -> RuleRow:
    """One rule set: by the readings where they are fresh and tell of all layers, else by what lies ahead of them."""
    years = years_between(last, today) if last else None
    if weighed is not None and weighed.disputed:
        return RuleRow(rules, None, "cannot_tell", view.due(rules.limits, ()), (), "readings")
    standings = stand(rules, weighed.layers, body, years) if weighed is not None else ()
    due = view.due(rules.limits, standings)
    now = greatest(standings)
    if weighed is not None and fresh and not weighed.missing and now is not None:
        return RuleRow(rules, now, call_of(now), due, standings, "readings")
    chance = view.chance_over(rules.limits, standings, today)
    return RuleRow(rules, chance, call_of(chance), due, standings, "forecast")


def _detention(found: Layers, body: Vessel, ahead: Forecast) -> float | None:
    """Days that water stays in the clear zone."""
    if found.liquid_depth is None or found.sludge is None or found.scum_below is None:
        return None
    clear = body.volume_below(found.liquid_depth.value - found.scum_below.value) - body.volume_below(found.sludge.value)
    people = ahead.people.people[-1]
    return max(clear, 0.0) * 1000 / (people * REFILL_L_PER_PERSON_DAY) if people > 0 else None


def _not_checked(check: Check | None, tank: Tank, rules: RuleSet) -> tuple[str, ...]:
    """Ids of what was not looked at, whether or not it matters."""
    if check is None:
        return ("everything",)
    missing = [name for name in FIELDS if getattr(check.seen, name) in (None, "unknown")]
    readings = check.seen.readings
    if not readings.sludge:
        missing.append("sludge")
    if not (readings.scum_total or readings.scum_above or readings.scum_below) and check.seen.surface != "no_crust":
        missing.append("scum")
    if not readings.liquid_depth:
        missing.append("liquid_depth")
    if tank.outlet_bottom_below_surface_m is None and not readings.outlet_bottom_below_surface:
        missing.append("outlet_height")
    asks_top = any(one.kind == "scum_top_to_outlet_top" for one in rules.limits)
    if asks_top and tank.outlet_top_above_surface_m is None:
        missing.append("outlet_top")
    if (tank.compartments or 1) > 1 and check.seen.second_compartment is None:
        missing.append("second_compartment")
    return tuple(missing)


def _questionable(findings: Sequence[Finding], rules_known: bool) -> tuple[str, ...]:
    """Ids of what does not fit together."""
    doubtful = ("check_in_future", "pump_out_in_future", "sludge_shrank", "read_but_not_opened", "tank_not_on_record")
    named = [one.id for one in findings if one.kind == "readings_clash" or one.id in doubtful]
    return tuple(dict.fromkeys([*([] if rules_known else ["rules_not_known"]), *named]))


def _once(findings: Sequence[Finding]) -> list[Finding]:
    """Each finding once, in order."""
    kept: dict[tuple[object, ...], Finding] = {}
    for one in findings:
        kept.setdefault((one.id, one.facts.get("field"), one.facts.get("compartment"), one.facts.get("sign")), one)
    return list(kept.values())
