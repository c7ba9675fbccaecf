"""What a careful household reads of a practice tank: the truth with the errors of cloth, pole, stick and tape.

Errors are as large as the readings are said to have, one in twenty twice as large, and figures are rounded as people
round them. Now and then something goes wrong: a smeared cloth, inches for centimetres, a thing not seen. Our choice.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import hypot
from typing import Any, NamedTuple

from selfcheck.domain.agreement import AGREE_WITHIN_M
from selfcheck.domain.check import Check, Reading, Readings, Seen
from selfcheck.domain.conversions import INCH
from selfcheck.domain.layers import FLOOR_ERROR_M, FOOT_ERROR_M, MARK_ERROR_M, STAIN_ERROR_M
from selfcheck.domain.signs import SEVERAL
from selfcheck.practice.dice import Dice
from selfcheck.practice.tank import Truth

#: Chances of what goes wrong with one check: a smeared cloth, a wrong unit, a layer not read, a sign not seen.
SMEARED, WRONG_UNIT, NOT_READ, NOT_SEEN = 0.02, 0.01, 0.02, 0.03
#: One reading in twenty is twice as far off as the rest.
CARELESS, TIMES = 0.05, 2.0
_WRONG = hypot(STAIN_ERROR_M, MARK_ERROR_M)


class Look(NamedTuple):
    """One check, what went wrong with it, and how far floor and pole put every dip of the day off [m].

    Ids of what went wrong: `smeared`, `wrong_unit`, `not_read`, `not_seen`; empty when all went well.
    """

    check: Check
    slips: tuple[str, ...]
    tilt: float


def look(truth: Truth, dice: Dice, *, slips: bool = True) -> Look:
    """A check of a tank on a day, as a household would take it."""
    wrong = [name for name, chance in _CHANCES if dice.happens(chance) and slips]
    tilt = _off(dice, FLOOR_ERROR_M)
    sludge = [_read(truth.sludge + tilt + _off(dice, _WRONG)) for _ in range(2)]
    if "smeared" in wrong:
        sludge[1] = _read(sludge[1] + dice.uniform(3.0, 10.0) * INCH)
    if "wrong_unit" in wrong:
        sludge[1] = _read(sludge[1] / 2.54)
    if abs(sludge[0] - sludge[1]) > AGREE_WITHIN_M:
        sludge.append(_read(truth.sludge + tilt + _off(dice, _WRONG)))
    scum_way = dice.one_of(("scum_total", "scum_above", "scum_below", "scum_below"))
    scum_error = MARK_ERROR_M if scum_way == "scum_above" else FOOT_ERROR_M
    readings: dict[str, list[float]] = {
        "sludge": sludge,
        "liquid_depth": [_read(truth.liquid_depth + _off(dice, hypot(MARK_ERROR_M, FLOOR_ERROR_M)))],
        scum_way: [_read(_scum(truth, scum_way) + _off(dice, scum_error))],
    }
    if "not_read" in wrong:
        readings[dice.one_of(("sludge", scum_way))] = []
    seen: dict[str, Any] = {name: list(value) if name in SEVERAL else value for name, value in truth.signs.items()}
    if "not_seen" in wrong:
        seen[dice.one_of(("inlet_tee", "outlet_tee", "wall", "smell", "under_lid"))] = "unknown"
    kept = {name: [Reading(m=value) for value in values] for name, values in readings.items()}
    check = Check(
        id=truth.on.isoformat(),
        on=truth.on,
        gate="passed",
        lid_closed=True,
        seen=Seen(readings=Readings(**kept), **seen),
    )
    return Look(check, tuple(wrong), tilt)


def better(first: Look, truth: Truth, wanted: Iterable[str], dice: Dice) -> Look:
    """The same check with the better readings that were asked for (ids of `domain.better_reading`) taken as well."""
    readings = first.check.seen.readings
    more: dict[str, list[Reading]] = {}
    for what in wanted:
        if what == "outlet_depth":
            felt = _read(truth.outlet_below + _off(dice, FOOT_ERROR_M))
            more["outlet_bottom_below_surface"] = [Reading(m=felt)]
        elif what == "sludge_third":
            third = _read(truth.sludge + first.tilt + _off(dice, _WRONG))
            more["sludge"] = [*readings.sludge, Reading(m=third)]
        elif what in ("scum_below", "scum_above"):
            error = MARK_ERROR_M if what == "scum_above" else FOOT_ERROR_M
            more[what] = [Reading(m=_read(_scum(truth, what) + _off(dice, error)))]
    seen = first.check.seen.model_copy(update={"readings": readings.model_copy(update=more)})
    return first._replace(check=first.check.model_copy(update={"seen": seen}))


_CHANCES = (("smeared", SMEARED), ("wrong_unit", WRONG_UNIT), ("not_read", NOT_READ), ("not_seen", NOT_SEEN))


def _scum(truth: Truth, way: str) -> float:
    return {"scum_total": truth.scum, "scum_above": truth.scum_above, "scum_below": truth.scum_below}[way]


def _off(dice: Dice, error: float) -> float:
    careless, amount = dice.happens(CARELESS), dice.normal(0.0, error)
    return TIMES * amount if careless else amount


def _read(metres: float) -> float:
    """To the quarter inch, and never below nothing."""
    return max(round(metres / (0.25 * INCH)) * 0.25 * INCH, 0.0)
