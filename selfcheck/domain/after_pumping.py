"""After a pump-out: what residue costs in time, and what was seen in the empty tank.

Published advice differs on residue: some say to leave a little as seed, some to leave none. A skim is harmless either
way, since fresh sewage brings its own microbes; inches are years. So the figure is given and not a ruling.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

from selfcheck.domain.findings import Finding, Verdict
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.history import DAYS_A_YEAR, years_between
from selfcheck.domain.limits import Limit

#: Residue up to this depth [m] counts as a skim: an inch (our choice).
SKIM_M = 0.0254

YesNo = Literal["yes", "no", "unknown"] | None
Tee = Literal["in_place", "loose", "damaged", "missing", "unknown"] | None
Wall = Literal["sound", "damp_white", "pitted", "crumbling", "steel_showing", "cracked", "unknown"] | None
Divider = Literal["sound", "damaged", "missing", "unknown"] | None
Backflow = Literal["none", "slight", "strong", "unknown"] | None


@dataclass(frozen=True, slots=True)
class Residue:
    """What was left: litres, and the months lost.

    `months_to_fill`: time the household's own rate takes to lay down that much from empty. `months_earlier`: how much
    earlier the middle date of its limits comes; None when there is no such date within the forecast.
    """

    litres: float
    months_to_fill: float | None
    months_earlier: float | None


def residue(forecast: Forecast, limits: Sequence[Limit], left_m: float, pumped_on: date) -> Residue:
    """What residue of this depth [m] costs the household; 0 for none. ValueError below 0.

    That residue costs the time in which as much is laid down is plain reckoning; no publication gives a figure.
    `forecast`: of the household, with what its readings taught. The middle of the forecast is used throughout.
    """
    if left_m < 0:
        raise ValueError("what is left cannot be below 0")
    litres = 1000.0 * forecast.vessel.volume_below(left_m)
    clean = forecast.what_if(pumped_on=pumped_on)
    to_fill = _months_until(clean, pumped_on, left_m) if left_m > 0 else 0.0
    without = clean.due(limits).p50
    with_it = forecast.what_if(pumped_on=pumped_on, residue_m=left_m).due(limits).p50
    earlier = None if without is None or with_it is None else 12.0 * years_between(with_it, without)
    return Residue(litres, to_fill, earlier)


def _months_until(clean: Forecast, start: date, depth_m: float) -> float | None:
    """Months until the middle of the sludge forecast reaches a depth; None beyond the forecast. Found on its due
    date.
    """
    day = clean.due([Limit("sludge", value=depth_m)]).p50
    return None if day is None else 12.0 * (day - start).days / DAYS_A_YEAR


@dataclass(frozen=True, slots=True)
class SeenEmpty:
    """What was seen or asked while the pumper was there. None: not asked.

    `wall` and `divider`: the outer wall and the wall between compartments. `backflow`: water that ran back from the
    outlet pipe into the empty tank.
    """

    all_out: YesNo = None
    both_compartments: YesNo = None
    through_manhole: YesNo = None
    inlet_tee: Tee = None
    outlet_tee: Tee = None
    wall: Wall = None
    divider: Divider = None
    filter_cleaned: YesNo = None
    backflow: Backflow = None
    left_m: float | None = None


_BROKEN = ("loose", "damaged", "missing")
#: Field of `SeenEmpty`, what was seen, finding, verdict. All of these are common practice of the trade.
_RULES: tuple[tuple[str, tuple[str, ...], str, Verdict], ...] = (
    ("all_out", ("no",), "pump_out_not_everything_out", "carry_on"),
    ("both_compartments", ("no",), "pump_out_one_compartment_only", "call_soon"),
    ("through_manhole", ("no",), "pump_out_through_the_pipe", "carry_on"),
    ("inlet_tee", _BROKEN, "pump_out_inlet_tee", "call_soon"),
    ("outlet_tee", _BROKEN, "pump_out_outlet_tee", "call_soon"),
    ("wall", ("crumbling", "steel_showing", "cracked"), "pump_out_wall_unsafe", "call_soon"),
    ("wall", ("damp_white", "pitted"), "pump_out_wall_worn", "carry_on"),
    ("divider", ("damaged", "missing"), "pump_out_divider", "call_soon"),
    ("filter_cleaned", ("no",), "pump_out_filter_not_cleaned", "carry_on"),
    ("backflow", ("strong",), "pump_out_backflow_strong", "call_soon"),
    ("backflow", ("slight",), "pump_out_backflow_slight", "carry_on"),
    ("backflow", ("none",), "pump_out_backflow_none", "carry_on"),
)


def seen_empty(seen: SeenEmpty) -> tuple[Finding, ...]:
    """The findings of what was seen, in a fixed order; nothing for what is sound, unknown or was not asked.

    Strong backflow points to a field that stands full; slight to a sag in the outlet pipe; none settles nothing alone,
    since a pumped or resting field gives none either. Each finding's words say so.
    """
    found = [
        Finding(
            ident,
            verdict,
            source="common-practice",
            facts={"seen": getattr(seen, name)},
            uses=(f"pump_out.{name}",),
        )
        for name, values, ident, verdict in _RULES
        if getattr(seen, name) in values
    ]
    if seen.left_m is not None and seen.left_m > 0:
        ident = "pump_out_residue_skim" if seen.left_m <= SKIM_M else "pump_out_residue_inches"
        facts: dict[str, float | str | date | None] = {"metres": seen.left_m}
        found.append(
            Finding(ident, "carry_on", source="common-practice", facts=facts, uses=("pump_out.sludge_left_m",))
        )
    return tuple(found)
