"""Conditions on what is odd in an answer, held against the others and the record."""

from __future__ import annotations

from datetime import date
from typing import Any

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_readings import SCUM, SLUDGE
from selfcheck.interview.septic_record import tank_of

#: A sludge layer that lost more than this since last time is questioned. Our choice.
SHRINKS_M = 0.05
#: Longer after a pump-out nobody is asked how its worker left the lid. Our choice.
LATELY_DAYS = 14


@predicate("sludge_over_water", reads=("wet_line", "level", *SLUDGE, "which_tank"))
def sludge_over_water(answered: Answered, context: Context) -> bool:
    """The last sludge reading is higher than the water is deep."""
    depth, sludge = _depth(answered, context), _last_told(answered)
    return depth is not None and sludge is not None and sludge > depth


@predicate("crust_seen_but_none_read", reads=("surface", "scum_total"))
def crust_seen_but_none_read(answered: Answered, context: Context) -> bool:
    """A crust was seen, and its thickness is nothing."""
    return answered.chosen("surface", "brown") and answered.number("scum_total") == 0


@predicate("crust_read_but_none_seen", reads=("surface", *SCUM))
def crust_read_but_none_seen(answered: Answered, context: Context) -> bool:
    """No crust was seen, and one was measured."""
    return answered.chosen("surface", "no_crust") and any((answered.number(name) or 0) > 0 for name in SCUM)


@predicate("sludge_shrank", reads=("sludge_1", "which_tank"))
def sludge_shrank(answered: Answered, context: Context) -> bool:
    """The sludge is well below that of the last check, and no pump-out came between."""
    now, last = answered.number("sludge_1"), _sludge_on_record(answered, context)
    return now is not None and last is not None and now < last - SHRINKS_M and "last_pump_out" not in answered


@predicate("pumped_today", reads=("pumped_on",))
def pumped_today(answered: Answered, context: Context) -> bool:
    """The pump-out may be going on now: it is of today, or its day is not known."""
    return answered.value("pumped_on") in (None, context.today)


@predicate("pumped_lately", reads=("pumped_on",))
def pumped_lately(answered: Answered, context: Context) -> bool:
    """What the lid is like now may still be the work of that day: its day is not known, or lies weeks back at most."""
    day = answered.value("pumped_on")
    if not isinstance(day, date):
        return True
    half_width = (answered["pumped_on"].error or 0.0) * 3**0.5
    return (context.today - day).days - half_width <= LATELY_DAYS


@predicate("pump_out_ahead", reads=())
def pump_out_ahead(answered: Answered, context: Context) -> bool:
    """The pump-out is dated later than today."""
    return _later(context.draft().get("pump_out", {}).get("on"), context)


@predicate("filter_unlike_record", reads=("filter", "which_tank"))
def filter_unlike_record(answered: Answered, context: Context) -> bool:
    """No filter was seen, and one is on record."""
    return bool(tank_of(context, answered).filter) and answered.chosen("filter", "not_fitted")


@predicate("parts_unlike_record", reads=("which_tank",))
def parts_unlike_record(answered: Answered, context: Context) -> bool:
    """The tank is told to have another number of compartments than is on record."""
    known = tank_of(context, answered).compartments
    tanks = context.draft().get("household", {}).get("tanks") or [{}]
    told = tanks[0].get("compartments")
    return known is not None and told is not None and told != known


@fill("parts_on_record")
def parts_on_record(answered: Answered, context: Context) -> str | None:
    """How many compartments are on record."""
    known = tank_of(context, answered).compartments
    return None if known is None else f"{known}"


@predicate("chart_not_read", reads=("chart_rows",))
def chart_not_read(answered: Answered, context: Context) -> bool:
    """What was typed off a maker's chart makes no rising lines."""
    from selfcheck.domain.chart_text import read_chart

    told = answered.value("chart_rows")
    return isinstance(told, str) and read_chart(told, context.units) is None


@predicate("check_ahead", reads=())
def check_ahead(answered: Answered, context: Context) -> bool:
    """The check is dated later than today."""
    return _later(context.draft().get("check", {}).get("on"), context)


@fill("depth_told")
def depth_told(answered: Answered, context: Context) -> str | None:
    """How deep the water is, as told now or as on record."""
    from selfcheck.domain.quantities import show_length

    depth = _depth(answered, context)
    return None if depth is None else show_length(depth, context.units)


@fill("last_sludge")
def last_sludge(answered: Answered, context: Context) -> str | None:
    """The sludge of the last check since the last pump-out."""
    from selfcheck.domain.quantities import show_length

    last = _sludge_on_record(answered, context)
    return None if last is None else show_length(last, context.units)


def _later(day: Any, context: Context) -> bool:
    return isinstance(day, str) and day > context.today.isoformat()


def _depth(answered: Answered, context: Context) -> float | None:
    told = answered.number("wet_line")
    return tank_of(context, answered).liquid_depth_m if told is None else told


def _last_told(answered: Answered) -> float | None:
    told = [length for question in SLUDGE if (length := answered.number(question)) is not None]
    return told[-1] if told else None


def _sludge_on_record(answered: Answered, context: Context) -> float | None:
    from selfcheck.domain.agreement import sludge_that_counts
    from selfcheck.domain.check import standing

    tank = tank_of(context, answered).id
    pumped = max((one.on for one in context.pump_outs if one.tank == tank), default=None)
    for check in reversed(standing([one for one in context.checks if one.tank == tank])):
        if pumped is not None and check.on <= pumped:
            return None
        counted = sludge_that_counts(check.seen.readings.sludge)[0]
        if counted is not None:
            return counted.m
    return None
