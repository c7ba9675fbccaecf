"""What a check leaves open: answers nobody could give, readings not taken, and things that do not fit together.

A "don't know" never reads as good news. It keeps `carry_on` away whenever some possible answer would end in a call,
unless the record speaks for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from selfcheck.domain.agreement import deciding
from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.conversions import INCH
from selfcheck.domain.findings import Facts, Finding, Verdict, rank, worst
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.household import Occupancy, Tank, can_be
from selfcheck.domain.limits import CLOSE_FROM, OVER_FROM, Limit, RuleSet
from selfcheck.domain.signs import FIELDS, MAY_BE_LEFT_OUT, Observed, Sign, observed, worst_possible

#: Parts of a tank that change slowly: seen in place not long ago, the chance that they failed since is small.
SLOW = frozenset({"inlet_tee", "outlet_tee", "wall", "roots"})
#: How long such an earlier look speaks for them. Our choice: three years.
SPEAKS_DAYS = 3 * 365
#: Sludge cannot shrink by itself; less by more than this is a reading to question. Our choice, three standard errors.
SHRANK_M = 3 * INCH


class Gaps(NamedTuple):
    """Findings about what is open, the answers as completed from the record, and whether anything rests on it."""

    seen: Observed
    findings: tuple[Finding, ...]
    rests_on_record: bool = False


def open_answers(
    check: Check, earlier: Sequence[Check], signs: Sequence[Sign], facts: frozenset[str], filter_fitted: bool | None
) -> Gaps:
    """Answers of `check` that are unknown or were never asked, and what earlier checks say in their place.

    A fault seen before stays until a later check sees it mended. A slow part seen healthy within `SPEAKS_DAYS` is taken
    to be so still. Every other open answer is a finding `not_seen` when some possible value would end in a call.
    """
    seen = observed(check.seen, check.lid_closed, check.hazards)
    findings: list[Finding] = []
    rests = False
    for name in FIELDS:
        known = seen.of(name)
        if known and "unknown" not in known:
            continue
        before = _last_known(name, check, earlier) if name in SLOW else None
        if before is not None:
            value, on = before
            trial = seen.with_value(name, value)
            bad = rank(_worst(name, value, seen, signs, facts)) >= rank("cannot_tell")
            if bad or (check.on - on).days <= SPEAKS_DAYS:
                seen = trial
                rests = True
                noted: Facts = {"field": name, "value": value, "on": on}
                findings.append(Finding("seen_before", "carry_on", facts=noted, uses=(f"record.{name}",)))
                continue
        left_out = not known and name in MAY_BE_LEFT_OUT and not (name == "filter" and filter_fitted)
        if left_out or rank(worst_possible(name, seen, signs, facts)) < rank("call_soon"):
            continue
        findings.append(Finding("not_seen", "cannot_tell", facts={"field": name}, kind="not_seen"))
    return Gaps(seen, tuple(findings), rests)


def _worst(name: str, value: str, seen: Observed, signs: Sequence[Sign], facts: frozenset[str]) -> Verdict:
    now = [sign for sign in signs if value in sign.values(name) and sign.holds(seen.with_value(name, value), facts)]
    return worst([sign.verdict for sign in now])


def _last_known(name: str, check: Check, earlier: Sequence[Check]) -> tuple[str, date] | None:
    for one in reversed(earlier):
        value = getattr(one.seen, name)
        if one.on <= check.on and isinstance(value, str) and value != "unknown":
            return value, one.on
    return None


def unread(missing: Sequence[str], limits: Sequence[Limit], forecast: Forecast, today: date) -> list[Finding]:
    """Layers that were not read: what the record says of them, and what that allows.

    Under 10 % the record stands in, but only where it knows when the tank was last empty; never for the depth of the
    tank itself, nor for one layer from readings of the other alone. From 50 % on it says "call" by estimate; between
    them nothing can be told.
    """
    if not missing:
        return []
    chance = forecast.chance_over(limits, today)
    facts: Facts = {"what": ", ".join(missing), "chance": chance}
    read = {"sludge": forecast.sludge_readings, "scum": forecast.scum_readings}
    own_past = not any(read.values()) or all(read.get(name) for name in missing)
    speaks = own_past and "pump_out_date" not in forecast.assumed and "liquid_depth" not in missing
    if chance < CLOSE_FROM and speaks:
        return [Finding("rests_on_record", "carry_on", facts=facts, uses=("record.forecast",), chance_over=chance)]
    found = [Finding("not_read", "cannot_tell", facts=facts, kind="not_seen")]
    if chance >= OVER_FROM:
        found.append(by_estimate(chance))
    return found


def by_estimate(chance: float) -> Finding:
    """No reading speaks for today, but the forecast says it is more likely over than not."""
    return Finding("by_estimate", "call_soon", facts={"chance": chance}, uses=("record.forecast",), chance_over=chance)


def disagreements(check: Check, earlier: Sequence[Check], last_pump_out: date | None) -> list[Finding]:
    """Answers of one check that contradict each other or an earlier one. No `carry_on` rests on them."""
    found: list[Finding] = []
    readings = check.seen.readings
    inside = readings.sludge or readings.scum_total or readings.scum_above or readings.scum_below
    if check.gate == "not_opened" and inside:
        found.append(Finding("read_but_not_opened", "cannot_tell", uses=("check.gate",), kind="readings_clash"))
    now = deciding(readings).sludge
    for one in reversed(earlier):
        before = deciding(one.seen.readings).sludge
        if not before or (last_pump_out is not None and one.on <= last_pump_out):
            continue
        if now and before[0].m - now[0].m > SHRANK_M:
            facts: Facts = {"before_m": before[0].m, "on": one.on, "now_m": now[0].m}
            uses = ("seen.readings.sludge",)
            found.append(Finding("sludge_shrank", "cannot_tell", facts=facts, uses=uses, kind="readings_clash"))
        break
    return found


def wrong_dates(
    checks: Sequence[Check], pump_outs: Sequence[PumpOut], occupancy: Sequence[Occupancy], today: date
) -> list[Finding]:
    """Dates that cannot be: a check dated after it was written down, a pump-out that nobody can have seen yet, a
    household of which nobody has moved in yet.

    Entries after `today` are otherwise simply not there yet, so that a record can be judged as of an earlier day.
    """
    found: list[Finding] = []
    told = [("check.on", one.on) for one in checks] + [("pump_out.on", one.on) for one in pump_outs]
    told += [("household.occupancy", one.from_) for one in occupancy]
    found += [_wrong_date("date_out_of_range", path, day) for path, day in dict.fromkeys(told) if not can_be(day)]
    for one in checks:
        if one.recorded_at is not None and (one.on - one.recorded_at.date()).days > 1:
            found.append(_wrong_date("check_in_future", "check.on", one.on))
    later_checks = [one.on for one in checks if one.on > today]
    for pump_out in pump_outs:
        if pump_out.on > today and not later_checks:
            found.append(_wrong_date("pump_out_in_future", "pump_out.on", pump_out.on))
    moved_in = min((one.from_ for one in occupancy if can_be(one.from_)), default=None)
    if moved_in is not None and moved_in > today and not later_checks:
        found.append(_wrong_date("people_in_future", "household.occupancy", moved_in))
    return found


def _wrong_date(ident: str, path: str, on: date) -> Finding:
    return Finding(ident, "cannot_tell", facts={"on": on}, uses=(path,), kind="readings_clash")


def not_checked(check: Check | None, tank: Tank, rules: RuleSet) -> tuple[str, ...]:
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
