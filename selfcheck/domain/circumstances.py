"""The facts of the record that signs may be given with (see `signs.Given`), as of the day of a check."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from selfcheck.domain.check import Check, PumpOut, Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.history import years_between
from selfcheck.domain.household import Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.shapes import Vessel

#: Layers thinner than this are as good as none. Our choice: what a cloth can show.
AS_GOOD_AS_NONE_M = 0.5 * INCH
#: Litres a person lets down the drains each day; the published means lie between 220 and 262. Our choice: the low one,
#: for a refilling tank that is given the benefit of the doubt.
REFILL_L_PER_PERSON_DAY = 222.0
#: A tank may still be filling for twice the time reckoned, within these bounds in days. Our choice.
FILLING_LEAST, FILLING_MOST = 21, 90


def circumstances(
    tank: Tank,
    body: Vessel,
    check: Check,
    emptied: Sequence[PumpOut],
    ahead: Forecast,
    readings: Readings,
    found: Layers | None,
) -> frozenset[str]:
    """The facts that hold.

    `readings`: with the one sludge reading that decides. `found`: the layers, None where the tank was pumped since.
    """
    facts = {"acid_spares" if tank.material in ("plastic", "fibreglass") else "acid_attacks"}
    before = [one.on for one in emptied if one.on <= check.on]
    people = at_home(ahead, check.on)
    facts.add("lately_pumped" if lately_pumped(body, check, emptied, ahead) else "not_lately_pumped")
    years = years_between(before[-1], check.on) if before else years_between(ahead.people.start, check.on)
    lived_in = people > 0 and years * min(people, 1.0) >= 0.5
    if lived_in:
        facts.add("used_half_a_year")
    if found is not None and readings.sludge and readings.sludge[0].m <= AS_GOOD_AS_NONE_M:
        scum = found.scum
        facts.add("no_layers" if scum is not None and scum.value <= AS_GOOD_AS_NONE_M else "no_sludge")
    return frozenset(facts)


def lately_pumped(body: Vessel, check: Check, emptied: Sequence[PumpOut], ahead: Forecast) -> bool:
    """Whether the tank may still have been filling up on the day of the check: within twice the time that takes."""
    before = [one.on for one in emptied if one.on <= check.on]
    if not before:
        return False
    filling = body.full_m3 * 1000 / (max(at_home(ahead, check.on), 0.1) * REFILL_L_PER_PERSON_DAY)
    return (check.on - before[-1]).days <= min(max(FILLING_LEAST, 2 * filling), FILLING_MOST)


def at_home(ahead: Forecast, day: date) -> float:
    """Mean number of people at home over the year, as of a day; what was assumed where nobody told.

    Not to be taken from `ahead.people`, which counts a person with a disposal for more than one.
    """
    there = [one for one in ahead.occupancy if one.from_ <= day] or list(ahead.occupancy[:1])
    return there[-1].people * there[-1].months_per_year / 12.0 if there else ahead.people.people[-1]
