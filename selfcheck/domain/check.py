"""What was seen at one check, and one pump-out: the models behind `checks/*.json` and `pump_outs/*.json`.

Every field of `Seen` may also be `"unknown"` (asked, could not be told) or null (not asked).
"""

# Annotations are left as they stand: pydantic would compile each of them from text, at every start.
from collections.abc import Sequence
from datetime import date, datetime
from typing import Annotated, Any, Literal

from pydantic import Field

from selfcheck.domain.household import Metres, Record, spread

CHECK_FORMAT = "selfcheck-check"
CHECK_VERSION = 1
PUMP_OUT_FORMAT = "selfcheck-pump-out"
PUMP_OUT_VERSION = 1

Unknown = Literal["unknown"]

#: what a danger that is told of writes in a check
_OF_DANGER = frozenset({"hazards", "people_hurt", "lid", "lid_closed", "house", "yard", "alarm"})
_ALL_WELL = (("people_hurt", "no"), ("lid", "sound"))


class Reading(Record):
    """One length as it was taken: metres, what the person said, and an own standard error where the words carry one."""

    m: Annotated[float, Field(allow_inf_nan=False)]
    said: str = ""
    error_m: Metres | None = None


class Readings(Record):
    """All lengths read at one check. An empty list: not read. See `layers` for what each is measured from."""

    liquid_depth: list[Reading] = Field(default_factory=list)
    sludge: list[Reading] = Field(default_factory=list)
    scum_total: list[Reading] = Field(default_factory=list)
    scum_above: list[Reading] = Field(default_factory=list)
    scum_below: list[Reading] = Field(default_factory=list)
    outlet_bottom_below_surface: list[Reading] = Field(default_factory=list)


Tee = Literal["in_place", "loose", "damaged", "missing", "unknown"]
YardSign = Literal["wet_smelly", "wet_after_rain", "lush_strip", "sunken_ground"]
HouseSign = Literal["slow_all_drains", "slow_one_drain", "gurgling", "smell_indoors", "sewage_backup"]


class Seen(Record):
    """Readings and signs of one check."""

    readings: Readings = Field(default_factory=Readings)
    second_compartment: Readings | None = None  # read through its own opening, where there is one
    level: Literal["at_outlet", "above_outlet", "below_outlet"] | Unknown | None = None
    smell: Literal["none", "earthy", "rotten_egg", "chemical"] | Unknown | None = None
    surface: Literal["brown", "pale_grey", "black", "no_crust"] | Unknown | None = None
    inlet_tee: Tee | None = None
    outlet_tee: Tee | None = None
    wall: Literal["sound", "damp_white", "pitted", "crumbling", "steel_showing"] | Unknown | None = None
    lid: Literal["sound", "cracked", "rocking", "missing"] | Unknown | None = None
    under_lid: Literal["clean", "scum_or_paper"] | Unknown | None = None
    inflow: Literal["none", "steady"] | Unknown | None = None
    filter: Literal["not_fitted", "clean", "clogged"] | Unknown | None = None
    alarm: Literal["not_fitted", "quiet", "sounding"] | Unknown | None = None
    roots: Literal["none", "seen"] | Unknown | None = None
    yard: list[YardSign] | Unknown | None = None
    house: list[HouseSign] | Unknown | None = None
    people_hurt: Literal["no", "feeling_ill", "fell_in"] | Unknown | None = None


class KeptAnswer(Record):
    """One answer of the conversation as it was given, kept beside what it was taken to mean."""

    question: str
    said: str = ""
    at: str = ""


class Check(Record):
    """`checks/YYYY-MM-DD.json`: one dated check. `replaces` names the id of the check that this one corrects."""

    format: Literal["selfcheck-check"] = "selfcheck-check"
    version: Literal[1] = 1
    id: str
    on: date
    recorded_at: datetime | None = None
    replaces: str | None = None
    tank: str = "main"
    seen: Seen = Field(default_factory=Seen)
    gate: Literal["passed", "not_opened", "not_confirmed"] | None = None
    lid_closed: bool | None = None
    hazards: list[str] = Field(default_factory=list)  # ids of the dangers told of during the check
    answers: list[KeptAnswer | dict[str, Any]] = Field(default_factory=list)


class PumpOut(Record):
    """`pump_outs/YYYY-MM-DD.json`: one pump-out.

    `within_days`: how wide the day was told, as in "May 2020", with `on` at its middle; null for one day.
    `sludge_left_m`: depth of residue left on the floor; null when not known. `through`: the opening the hose went in
    by. `parts`: which compartments were emptied. `backflow`: water that ran back into the tank from the outlet pipe.
    `filter_cleaned`: of the screen in the outlet tee, where there is one. `divider`: the wall between two compartments.
    `id`: the name of its file. `replaces` names the id of the pump-out that this one corrects.
    """

    format: Literal["selfcheck-pump-out"] = "selfcheck-pump-out"
    version: Literal[1] = 1
    id: str = ""
    tank: str = "main"
    on: date
    within_days: Annotated[int, Field(ge=1, le=40_000)] | None = None
    sludge_left_m: Metres | None = None
    through: Literal["manhole", "small_pipe"] | None = None
    parts: Literal["both", "one_of_two", "only_one"] | None = None
    backflow: Literal["none", "slight", "strong"] | None = None
    filter_cleaned: bool | None = None
    divider: Literal["sound", "damaged", "missing"] | None = None
    by: str = ""
    note: str = ""
    replaces: str | None = None

    @property
    def span(self) -> tuple[date, date]:
        """First and last day that it may have been."""
        return spread(self.on, self.within_days)


def standing(checks: list[Check]) -> list[Check]:
    """The checks that count, oldest first: those that no later one replaces.

    A correction keeps the date of what it corrects; of two that replace the same check the later recorded one stands.
    One that held nothing but a danger, and was taken back, counts as never made.
    """
    gone = _taken_back(checks)
    left = [check for check in checks if check.id not in gone] if gone else checks
    replaced = {check.replaces for check in left if check.replaces}
    kept = [check for check in left if check.id not in replaced]
    return sorted(kept, key=lambda check: (check.on, _moment(check), check.id))


def _taken_back(checks: Sequence[Check]) -> set[str]:
    """Ids of the checks that tell of nothing in the place of one that held a danger alone, and of those before them."""
    nothing = [one for one in checks if one.replaces and one.gate == "not_opened" and not _holds(one)]
    if not nothing:
        return set()
    known: dict[str, list[Check]] = {}
    for one in checks:
        known.setdefault(one.id, []).append(one)
    gone: set[str] = set()
    for one in nothing:
        chain = [one]
        while (before := known.get(chain[-1].replaces or "", ())) and len(before) == 1 and before[0] not in chain:
            if not _holds(before[0]) <= _OF_DANGER:
                break
            chain.append(before[0])
        if any("hazards" in _holds(each) for each in chain) and len(known[one.id]) == 1:
            gone.update(each.id for each in chain)
    return gone


def _holds(check: Check) -> set[str]:
    """What a check tells of, but for all well with people and lid."""
    read = check.seen.model_dump(exclude_defaults=True)
    told = {name for name, value in read.items() if (name, value) not in _ALL_WELL}
    told |= {"lid_closed"} if check.lid_closed is False else set()
    hurt = check.seen.people_hurt in ("fell_in", "feeling_ill")
    return told | ({"hazards"} if check.hazards or hurt else set())


def standing_pump_outs(pump_outs: Sequence[PumpOut]) -> tuple[tuple[PumpOut, ...], tuple[PumpOut, ...]]:
    """The pump-outs that count, those that no other one replaces; and the others. Both in the order they came in."""
    replaced = {one.replaces for one in pump_outs if one.replaces and one.replaces != one.id}
    kept = tuple(one for one in pump_outs if one.id not in replaced)
    return kept, tuple(one for one in pump_outs if one.id in replaced)


def _moment(check: Check) -> str:
    return check.recorded_at.isoformat() if check.recorded_at else ""
