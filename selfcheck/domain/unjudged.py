"""What no reading can settle: limits that have no figure for a tank, and parts of the record that could not be read."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import Literal, NamedTuple

from selfcheck.domain.check import Check
from selfcheck.domain.findings import Finding
from selfcheck.domain.limits import Limit, RuleSet
from selfcheck.domain.shapes import Vessel


class Unread(NamedTuple):
    """A part of the record that is there and could not be read. `day`: as its name tells; None where it does not."""

    part: Literal["household", "check", "pump_out"]
    name: str
    day: date | None = None


def has_no_figure(limit: Limit, body: Vessel) -> bool:
    """Whether this is a limit by a table that does not reach a tank of this size or depth."""
    return limit.table is not None and limit.table.least(body.full_m3, body.liquid_depth_m) is None


def without_figure(rules: RuleSet, body: Vessel, last_pump_out: date | None) -> list[Finding]:
    """Limits of the deciding rule set that cannot be judged for this tank at all, each a reason not to carry on."""
    found = []
    if any(has_no_figure(limit, body) for limit in rules.limits):
        found.append(Finding("limit_has_no_figure", "cannot_tell", rules.id, kind="outside_guide"))
    if last_pump_out is None and any(limit.kind == "years" for limit in rules.limits):
        uses = ("record.pump_outs",)
        found.append(Finding("years_not_known", "cannot_tell", rules.id, uses=uses, kind="not_seen"))
    return found


def record_unread(unread: Iterable[Unread], check: Check | None, today: date) -> list[Finding]:
    """A finding that names what could not be read, where it may hold something the verdict ought to rest on.

    A check older than the one used would change little, and what is dated after `today` is not there yet.
    """
    named = []
    for one in unread:
        if one.day is not None and one.day > today:
            continue
        if one.part == "check" and check is not None and one.day is not None and one.day < check.on:
            continue
        named.append(one.name)
    if not named:
        return []
    uses = ("record.files",)
    return [Finding("record_unread", "cannot_tell", facts={"files": ", ".join(named)}, uses=uses, kind="unread")]
