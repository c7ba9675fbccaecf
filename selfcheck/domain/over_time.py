"""What the days gone by since the last look make of a record, and how each rule set sees the tank."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Literal

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.findings import Dates, Facts, Finding
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.gaps import by_estimate
from selfcheck.domain.history import days_after, years_between
from selfcheck.domain.limits import OVER_FROM, Limit, RuleSet, Standing, call_of, stand
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.unjudged import has_no_figure
from selfcheck.domain.verdict import RuleRow
from selfcheck.domain.weighing import Weighed, greatest

#: Readings speak for themselves this long before the forecast is asked as well. Our choice.
FRESH_DAYS = 30


def starting(ahead: Forecast, weighed: Weighed | None, check: Check | None) -> Forecast:
    """The forecast from the last readings on, where they are whole and undisputed; else from its rates alone."""
    if weighed is None or check is None or weighed.missing or weighed.disputed:
        return ahead
    return ahead.read_on(check.on, *weighed.compartments)


def look_again(
    view: Forecast,
    limits: Sequence[Limit],
    check: Check | None,
    last: date | None,
    today: date,
) -> tuple[date, str]:
    """The day to measure again. Fresh readings or a fresh pump-out speak for at least `FRESH_DAYS`."""
    look, reason = view.look_again(limits)
    known = [one for one in (check.on if check else None, last) if one is not None]
    if known and (today - max(known)).days <= FRESH_DAYS:
        look = max(look, days_after(max(known), FRESH_DAYS))
    return look, reason


def over_time(
    chance: float, check: Check | None, emptied: Sequence[PumpOut], pumped_since: bool, look: date, today: date
) -> list[Finding]:
    """What the days gone by since the last look or pump-out make of it. `chance`: of being over today."""
    last, wide = (emptied[-1].on, emptied[-1].within_days) if emptied else (None, None)
    known = [one for one in (check.on if check else None, last) if one is not None]
    if check is not None and known and (today - max(known)).days <= FRESH_DAYS:
        if pumped_since:
            since: Facts = {"on": last, "wide_days": wide, "chance": chance}
            return [Finding("pumped_since", "carry_on", facts=since, uses=("record.pump_outs",), chance_over=chance)]
        return []
    if chance >= OVER_FROM:
        return [by_estimate(chance)]
    if check is None:
        return []
    facts: Facts = {"on": max(known), "chance": chance, "wide_days": wide if check.on != max(known) else None}
    if today >= look:
        return [Finding("time_to_look", "cannot_tell", facts=facts, uses=("record.forecast",), kind="not_seen")]
    ident = "pumped_since" if pumped_since else "forecast_under"
    return [Finding(ident, "carry_on", facts=facts, uses=("record.forecast",), chance_over=chance)]


def rule_row(
    rules: RuleSet, view: Forecast, weighed: Weighed | None, fresh: bool, body: Vessel, last: date | None, today: date
) -> RuleRow:
    """One rule set: by the readings where they are fresh and tell of all layers, else by what lies ahead of them."""
    years = years_between(last, today) if last else None
    no_figure = any(has_no_figure(limit, body) for limit in rules.limits)
    if weighed is not None and weighed.disputed:
        return RuleRow(rules, None, "cannot_tell", view.due(rules.limits), (), "readings", no_figure)
    stood = [stand(rules, one, body, years) for one in weighed.compartments] if weighed is not None else []
    standings = max(stood, key=lambda one: greatest(one) or 0.0, default=())
    due = view.due(rules.limits)
    now = greatest(standings)
    if weighed is not None and fresh and not weighed.missing and now is not None:
        return _row(rules, now, due, standings, "readings", no_figure)
    return _row(rules, view.chance_over(rules.limits, today), due, standings, "forecast", no_figure)


def _row(
    rules: RuleSet,
    chance: float,
    due: Dates,
    standings: tuple[Standing, ...],
    by: Literal["readings", "forecast"],
    no_figure: bool,
) -> RuleRow:
    """The row; where one limit has no figure for this tank, room by the others is no answer."""
    call = call_of(chance)
    if no_figure and call == "under":
        return RuleRow(rules, None, "cannot_tell", due, standings, by, no_figure)
    return RuleRow(rules, chance, call, due, standings, by, no_figure)
