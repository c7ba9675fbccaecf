"""How sure a verdict is and why, by when to act, and the smallest change that would lead to another one."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from selfcheck.domain.agreement import deciding
from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.circumstances import AS_GOOD_AS_NONE_M
from selfcheck.domain.findings import Finding, Sureness, Verdict, rank, worst
from selfcheck.domain.history import days_after
from selfcheck.domain.inside import with_water_line
from selfcheck.domain.layers import Layers
from selfcheck.domain.signs import FIELDS
from selfcheck.domain.unsafe import unsafe
from selfcheck.domain.verdict import CLOSE_DAYS, NEXT_STEP_DAYS, SOON_DAYS, Change, Judgement
from selfcheck.domain.weighing import KINDS, SCUM_KINDS, calls, weigh

#: surest first
SURENESS: tuple[Sureness, ...] = ("sure", "fairly_sure", "not_very_sure", "cannot_tell")
#: Chances at which a crossed limit is called sure, and fairly sure. Our choice.
SURE_FROM, FAIRLY_FROM = 0.975, 0.80
#: Chances of being over up to which an uncrossed limit is called sure, and fairly sure. Our choice.
SURE_UP_TO, FAIRLY_UP_TO = 0.01, 0.05
#: How finely the smallest change is looked for [m].
STEP_M = 0.001


def act_by(judgement: Judgement) -> date | None:
    """The day by which to act.

    Today for the urgent two; the nearest of the findings' own spans for a call that can wait; a fortnight for the next
    step of a "cannot tell"; None to carry on. The spans are our choice. They run from the day the thing was seen, so a
    day put off is not a day won, and the day may lie in the past; what the record only reckons runs from today.
    """
    match judgement.verdict:
        case "danger" | "call_now":
            return judgement.today
        case "call_soon":
            return min(days_after(_told_on(judgement, one), _days(one)) for one in judgement.deciding)
        case "cannot_tell":
            told = [_told_on(judgement, one) for one in judgement.deciding]
            return days_after(min(told, default=judgement.today), NEXT_STEP_DAYS)
    return None


def _told_on(judgement: Judgement, finding: Finding) -> date:
    """The day from which a finding is known: when it was seen; today where the record only reckons."""
    pumped = finding.facts.get("at_pump_out")
    if isinstance(pumped, date):
        return min(pumped, judgement.today)
    seen_at_check = any(path.startswith("seen.") for path in finding.uses)
    if judgement.check is None or not seen_at_check:
        return judgement.today
    return min(judgement.check.on, judgement.today)


def _days(finding: Finding) -> int:
    given = finding.facts.get("within_days")
    if isinstance(given, (int, float)):
        return int(given)
    return CLOSE_DAYS if finding.id.endswith("_close") else SOON_DAYS


def sureness(judgement: Judgement) -> tuple[Sureness, tuple[str, ...]]:
    """How sure, and ids of why. Speaks of the evidence alone and never softens what to do."""
    if judgement.verdict == "cannot_tell":
        return "cannot_tell", (judgement.kind or "not_seen",)
    if judgement.verdict == "carry_on":
        return _sure_to_carry_on(judgement)
    found = [_sure_of_call(one) for one in judgement.deciding]
    if not found:
        return "not_very_sure", ()
    level, because = min(found, key=lambda one: SURENESS.index(one[0]))
    if level == "sure" and _set_aside(judgement) and all(_of_sludge(one) for one in judgement.deciding):
        return "fairly_sure", (*because, "reading_set_aside")
    return level, because


def _set_aside(judgement: Judgement) -> bool:
    """Whether a sludge reading had no say because it stood far off the others."""
    return any(one.id == "sludge_set_aside" for one in judgement.findings)


def _of_sludge(finding: Finding) -> bool:
    return any(path.endswith(".sludge") for path in finding.uses)


def _sure_of_call(finding: Finding) -> tuple[Sureness, tuple[str, ...]]:
    said = finding.facts.get("sure")
    for level in SURENESS:
        if said == level:
            return level, ("sign_seen" if level == "sure" else "sign_may_mean_other_things",)
    chance = finding.chance_over
    if finding.id == "by_estimate":
        return ("fairly_sure" if (chance or 0) >= FAIRLY_FROM else "not_very_sure"), ("estimate_only",)
    if chance is None:
        return "fairly_sure", ("over_either_way",)
    if chance >= SURE_FROM:
        return "sure", ("far_over",)
    if chance >= FAIRLY_FROM:
        return "fairly_sure", ("over",)
    return "not_very_sure", ("too_close" if finding.id.endswith("_close") else "just_over",)


def _sure_to_carry_on(judgement: Judgement) -> tuple[Sureness, tuple[str, ...]]:
    chances = [one.chance_over for one in judgement.findings if one.chance_over is not None]
    chance = max(chances, default=0.0)
    level = 0 if chance < SURE_UP_TO else 1 if chance < FAIRLY_UP_TO else 2
    because = [("far_under", "under", "just_under")[level]]
    ids = {one.id for one in judgement.findings}
    layers = judgement.layers
    if "third_reading_wanted" in ids:
        level, because = level + 1, [*because, "readings_apart"]
    elif layers is not None and layers.agreement == "one" and not judgement.pumped_since:
        level, because = level + 1, [*because, "one_reading"]
    elif layers is not None and layers.agreement in ("agree", "median") and not judgement.pumped_since:
        because.append("readings_agree")
    if layers is not None and layers.outlet_assumed and not judgement.pumped_since:
        level, because = level + 1, [*because, "outlet_assumed"]
    if judgement.rests_on_record:
        level, because = level + 1, [*because, "on_record"]
    if "forecast_under" in ids:
        because.append("forecast")
    return SURENESS[min(level, 2)], tuple(because)


def would_change(judgement: Judgement) -> Change | None:
    """The smallest change that leads to another verdict; None when no single one does."""
    without = worst([one.verdict for one in judgement.findings if one.verdict != judgement.verdict])
    deciding_ones = judgement.deciding
    if [one.id for one in deciding_ones] == ["by_estimate"]:
        return Change("answer", "carry_on", "by_estimate")
    by_readings = [one for one in deciding_ones if _is_limit(one)]
    if judgement.verdict == "danger":
        return None
    if judgement.verdict == "carry_on":
        return _layer_change(judgement, up=True)
    if judgement.verdict == "cannot_tell":
        if len(deciding_ones) > 1:
            return None
        first = deciding_ones[0]
        return Change("answer", without, str(first.facts.get("field") or first.id))
    if by_readings and len(by_readings) == len(deciding_ones):
        return _layer_change(judgement, up=False)
    if len(deciding_ones) != 1:
        return None
    left = next((one.id for one in judgement.findings if one.verdict == without), "")
    return Change("mended", without, deciding_ones[0].id, left="" if without == "carry_on" else left)


def _is_limit(finding: Finding) -> bool:
    return "rules" in finding.facts


def _layer_change(judgement: Judgement, up: bool) -> Change | None:
    """The smallest change of one layer that turns the readings' call around, in whichever compartment it lies.

    Two compartments that both call for somebody are not turned by any one layer.
    """
    first, second = judgement.readings, None
    if first is None or judgement.layers is None or not judgement.standings:
        return None
    if judgement.check is not None and judgement.second_layers is not None:
        second = judgement.check.seen.second_compartment
    changes = []
    calling = {one.facts.get("compartment", 1.0) for one in judgement.deciding if _is_limit(one)}
    if up or calling == {1.0}:
        changes.append(_first_layer_change(judgement, first, judgement.layers, up))
    if second is not None and judgement.second_layers is not None and (up or calling == {2.0}):
        found = _first_layer_change(judgement, with_water_line(second, first), judgement.second_layers, up)
        changes.append(found._replace(compartment=2) if found is not None else None)
    return min((one for one in changes if one is not None), key=_how_much, default=None)


def _how_much(change: Change) -> float:
    return abs((change.then_m or 0.0) - (change.now_m or 0.0))


def _first_layer_change(judgement: Judgement, given: Readings, found: Layers, up: bool) -> Change | None:
    """How much thicker or thinner one layer, the other as it is, turns the readings' call around: sludge, else scum.

    No layer is made thicker than today's water is deep: in a tank that is still filling no stick would read that.
    """
    scene = judgement.scene
    if scene is None:
        return None
    readings = deciding(given)
    of_readings = {one.id for one in weigh(scene, given).findings}
    depth = found.liquid_depth
    most = min(judgement.vessel.liquid_depth_m, depth.value) if depth is not None else judgement.vessel.liquid_depth_m

    def over(changed: Readings) -> bool:
        return calls(scene.stand(changed)) or bool(unsafe(scene.judged(changed), changed))

    def after(changed: Readings) -> Verdict:
        """The verdict with these readings: what they say, and what else there is that calls for nobody."""
        mild = [
            one for one in judgement.findings if rank(one.verdict) < rank("call_soon") and one.id not in of_readings
        ]
        return worst([one.verdict for one in (*mild, *weigh(scene, changed).findings)])

    sludge, scum = found.sludge, found.scum
    if readings.sludge and sludge is not None:
        now = readings.sludge[0].m
        then = _turn(lambda m: over(_with_sludge(readings, m)), now, most, up)
        if then is not None:
            return Change("sludge", after(_with_sludge(readings, then)), now_m=now, then_m=then)
    if scum is not None:
        now = scum.value
        then = _turn(lambda m: over(_with_scum(readings, m)), now, most, up)
        if then is not None:
            return Change("scum", after(_with_scum(given, then)), now_m=now, then_m=then)
    return None


def _turn(over: Callable[[float], bool], now: float, most: float, up: bool) -> float | None:
    """The thickness nearest to `now` at which `over` turns around, a millimetre beyond at most; None if it does not.

    Next to nothing is no answer: layers that thin would be a finding of their own.
    """
    far = most if up else AS_GOOD_AS_NONE_M + STEP_M
    if not up and now <= far:
        return None
    if over(far) is not up:
        return None
    near = now
    while abs(far - near) > STEP_M:
        middle = (near + far) / 2
        if over(middle) is up:
            far = middle
        else:
            near = middle
    return far


def _with_sludge(readings: Readings, metres: float) -> Readings:
    return readings.model_copy(update={"sludge": [Reading(m=metres)] * len(readings.sludge)})


def _with_scum(readings: Readings, metres: float) -> Readings:
    others: dict[str, list[Reading]] = {kind: [] for kind in SCUM_KINDS}
    return readings.model_copy(update={**others, "scum_total": [Reading(m=metres)]})


def not_used(judgement: Judgement) -> tuple[str, ...]:
    """Paths of the answers of the last check that the verdict does not rest on: given, and without a say this time."""
    if judgement.check is None:
        return ()
    cited = {path for one in judgement.deciding for path in one.uses}
    seen = judgement.check.seen
    given = [f"seen.readings.{kind}" for kind in KINDS if getattr(seen.readings, kind)]
    given += [f"seen.{name}" for name in FIELDS if getattr(seen, name) not in (None, "unknown")]
    return tuple(path for path in given if path not in cited)
