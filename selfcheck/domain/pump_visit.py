"""What a pump-out showed, as evidence for the verdict until a later check shows that part healthy."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import NamedTuple

from selfcheck.domain.after_pumping import SeenEmpty, YesNo, seen_empty
from selfcheck.domain.check import Check, PumpOut, Readings
from selfcheck.domain.findings import Finding, Sureness
from selfcheck.domain.signs import FIELDS

#: every yearly check asks these; notes of what a pump-out showed ask none of them
_ASKED_YEARLY = ("people_hurt", "house", "yard", "level")
#: How far each finding that calls for somebody settles the matter by itself. Our choice.
_SURE: dict[str, Sureness] = {"pump_out_one_compartment_only": "sure", "pump_out_backflow_strong": "fairly_sure"}


class Spoken(NamedTuple):
    """The check that speaks for the tank, with what was seen at pump-outs after it put in.

    `check`: None where nothing is on record. `earlier`: the checks before it. `fields`: those that were seen at the
    newest pump-out, on the day `pumped_on`, told as wide as `pumped_within`. `whole`: a check proper stands behind it,
    not such notes alone.
    """

    check: Check | None
    earlier: list[Check]
    fields: frozenset[str] = frozenset()
    pumped_on: date | None = None
    whole: bool = True
    pumped_within: int | None = None


def spoken(checks: Sequence[Check], emptied: Sequence[PumpOut]) -> Spoken:
    """Puts notes made at pump-outs into the check before them, which still speaks for all that they leave out.

    `checks`: those that stand, oldest first; `emptied`: the pump-outs that count, oldest first.
    """
    proper = len(checks)
    while proper and _is_visit(checks[proper - 1], emptied):
        proper -= 1
    notes = checks[proper:]
    if not notes:
        return Spoken(checks[-1] if checks else None, list(checks[:-1]))
    whole = proper > 0
    merged = checks[proper - 1] if whole else notes[0]
    for one in notes:
        told = {name: getattr(one.seen, name) for name in _told(one)}
        changed = {
            "seen": merged.seen.model_copy(update=told),
            "hazards": [*dict.fromkeys(merged.hazards + one.hazards)],
        }
        if one.lid_closed is not None:
            changed["lid_closed"] = one.lid_closed
        merged = merged.model_copy(update=changed)
    last = emptied[-1].on
    fields = frozenset(name for one in notes if one.on >= last for name in _told(one))
    earlier = list(checks[: proper - 1]) if whole else []
    return Spoken(merged, earlier, fields, last, whole, emptied[-1].within_days)


def findings(emptied: Sequence[PumpOut], checks: Sequence[Check]) -> list[Finding]:
    """What the newest pump-out told, without what a later check has shown to be healthy or to be otherwise.

    Water that ran back, and the wall between compartments, keep speaking through a later pump-out at which nobody told
    of them.
    """
    if not emptied:
        return []
    newest = emptied[-1]
    found = _still(newest, told_at(newest.model_copy(update={"backflow": None, "divider": None})), checks)
    backflow = next((one for one in reversed(emptied) if one.backflow is not None), newest)
    divider = next((one for one in reversed(emptied) if one.divider is not None), newest)
    found += _still(backflow, SeenEmpty(backflow=backflow.backflow), checks)
    return found + _still(divider, SeenEmpty(divider=divider.divider), checks)


def asked_of(check: Check, found: Sequence[Finding]) -> list[Finding]:
    """Without the gaps of questions that were not asked: on the day of a pump-out they say nothing against a tank."""
    return [one for one in found if one.id != "not_seen" or getattr(check.seen, str(one.facts["field"])) is not None]


def told_at(pump_out: PumpOut) -> SeenEmpty:
    """What the record of a pump-out tells of the empty tank."""
    parts: dict[str | None, YesNo] = {"both": "yes", "one_of_two": "no"}
    through: dict[str | None, YesNo] = {"manhole": "yes", "small_pipe": "no"}
    cleaned: dict[bool | None, YesNo] = {True: "yes", False: "no"}
    return SeenEmpty(
        both_compartments=parts.get(pump_out.parts),
        through_manhole=through.get(pump_out.through),
        filter_cleaned=cleaned.get(pump_out.filter_cleaned),
        backflow=pump_out.backflow,
        divider=pump_out.divider,
        left_m=pump_out.sludge_left_m,
    )


def _still(pump_out: PumpOut, seen: SeenEmpty, checks: Sequence[Check]) -> list[Finding]:
    later = [one for one in checks if one.on > pump_out.on]
    found = []
    for one in seen_empty(seen):
        if any(_SETTLES[one.id](check) for check in later):
            continue
        facts = {**one.facts, "on": pump_out.on, "at_pump_out": pump_out.on, "wide_days": pump_out.within_days}
        if one.id in _SURE:
            facts["sure"] = _SURE[one.id]
        found.append(one._replace(facts=facts))
    return found


def _is_visit(check: Check, emptied: Sequence[PumpOut]) -> bool:
    """Whether a check holds nothing but what was told at a pump-out. A danger has a day of its own."""
    if not any(one.on <= check.on for one in emptied) or check.gate == "passed" or check.hazards:
        return False
    asked = any(getattr(check.seen, name) is not None for name in _ASKED_YEARLY)
    return not asked and check.seen.second_compartment is None and not _layers_read(check.seen.readings)


def _told(check: Check) -> list[str]:
    return [name for name in FIELDS if getattr(check.seen, name) is not None]


def _layers_read(readings: Readings) -> bool:
    return bool(readings.sludge or readings.scum_total or readings.scum_above or readings.scum_below)


def _second_read(check: Check) -> bool:
    second = check.seen.second_compartment
    return second is not None and bool(second.sludge)


def _sludge_read(check: Check) -> bool:
    return bool(check.seen.readings.sludge)


def _field_sound(check: Check) -> bool:
    """A field that stands full shows: in a full tank the water is above the outlet, or the ground is wet."""
    drains = check.seen.house
    slow = isinstance(drains, list) and bool({"slow_all_drains", "gurgling", "sewage_backup"} & {*drains})
    return check.seen.level == "at_outlet" and check.seen.yard == [] and drains != "unknown" and not slow


def _level_seen(check: Check) -> bool:
    return check.seen.level not in (None, "unknown")


def _never(check: Check) -> bool:
    """The wall between compartments stands under water; only an empty tank shows it."""
    return False


def _filter_seen(check: Check) -> bool:
    return check.seen.filter not in (None, "unknown")


#: finding → whether a check after the pump-out speaks in its place
_SETTLES: dict[str, Callable[[Check], bool]] = {
    "pump_out_one_compartment_only": _second_read,
    "pump_out_through_the_pipe": _sludge_read,
    "pump_out_filter_not_cleaned": _filter_seen,
    "pump_out_divider": _never,
    "pump_out_backflow_strong": _field_sound,
    "pump_out_backflow_slight": _level_seen,
    "pump_out_backflow_none": _level_seen,
    "pump_out_residue_skim": _sludge_read,
    "pump_out_residue_inches": _sludge_read,
}
