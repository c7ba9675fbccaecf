"""Grades: readings against the truth they were taken from, and a verdict against the one the truth calls for.

The truth knows no error: past a limit is past it, by a hair or by a foot. A reading cannot see a hair, and a rule that
allows one chance in ten must now and then miss one. So "milder than the truth" is told in two ways, and both are
counted apart: `milder` by more than readings can be blamed for, which must never be; `within_error`, past a limit by
less than two standard errors of the reading; `on_record`, where nobody could see a part this time, an earlier look
spoke for it, as the verdict says, and it failed since.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import inf
from typing import Literal, NamedTuple

from selfcheck.domain.check import Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.findings import Verdict, rank, worst
from selfcheck.domain.history import years_between
from selfcheck.domain.limits import LENGTHS, SHARES, Limit, RuleSet
from selfcheck.domain.signs import Observed, Sign, matching
from selfcheck.domain.verdict import Judgement
from selfcheck.practice.readings import Look
from selfcheck.practice.tank import PracticeTank, Truth

#: Past a limit by less than this many standard errors of the reading is within what a reading can miss.
WITHIN = 2.0
#: A reading is good within the first of these of the truth, fair within the second [m]. Our choice.
GOOD_M, FAIR_M = 1.0 * INCH, 2.0 * INCH

_NEXT_TO_NOTHING = frozenset({"no_layers", "no_sludge"})

#: An error smaller than this is no more than how figures are rounded [m]. Our choice.
ROUNDED_M = 0.25 * INCH

Grade = Literal["exact", "too_urgent", "cannot_tell", "within_error", "on_record", "milder"]


class TrueVerdict(NamedTuple):
    """What the truth calls for.

    `signs`: by what is to be seen alone; `plain`: the same but for signs that turn on a layer being next to nothing,
    which a reading can miss like a limit. `fields`: those it rests on. `margins`: what is left before each limit.
    """

    verdict: Verdict
    signs: Verdict
    plain: Verdict
    fields: frozenset[str]
    margins: tuple[tuple[Limit, float], ...]


class StripError(NamedTuple):
    """One error that was drawn into a strip, and by how much it is off for it [m, signed].

    `pole`: it leaned, or stood on a high spot; `stain`: it was smeared up the cloth, or washed off; `foot`: of the
    stick, below the crust or inside of it; `mark`: the stick itself, read aslant or pressed down.
    """

    cause: Literal["pole", "stain", "foot", "mark"]
    off_m: float


class ReadingGrade(NamedTuple):
    """One length against the truth: by how much it is off [m, signed], and how good that is."""

    kind: str
    read_m: float
    true_m: float
    off_m: float
    grade: Literal["good", "fair", "off"]


def true_verdict(tank: PracticeTank, truth: Truth, rules: RuleSet, signs: Sequence[Sign]) -> TrueVerdict:
    """By one rule set from the truth without error, and by every sign as it truly is."""
    margins = tuple((limit, true_margin(limit, tank, truth)) for limit in rules.limits)
    shown = {
        name: frozenset(value or ("none",)) if isinstance(value, tuple) else frozenset({value})
        for name, value in truth.signs.items()
    }
    what, facts = Observed({**shown, "lid_closed": frozenset({"yes"})}), _facts(tank, truth)
    held = matching(what, signs, facts)
    by_signs = worst([sign.verdict for sign in held])
    plain = worst([sign.verdict for sign in matching(what, signs, facts - _NEXT_TO_NOTHING)])
    fields = frozenset(name for sign in held if sign.verdict == by_signs for name in sign.fields())
    by_layers: Verdict = "call_soon" if any(margin <= 0.0 for _, margin in margins) else "carry_on"
    return TrueVerdict(worst([by_signs, by_layers]), by_signs, plain, fields, margins)


def true_margin(limit: Limit, tank: PracticeTank, truth: Truth) -> float:
    """What is truly left before a limit: metres or a share, below zero when past it; infinite where it has no say."""
    outlet = truth.liquid_depth - truth.outlet_below
    value = limit.value or 0.0
    match limit.kind:
        case "sludge_to_outlet":
            return outlet - truth.sludge - value
        case "scum_to_outlet":
            return truth.outlet_below - truth.scum_below - value
        case "scum_top_to_outlet_top":
            return truth.outlet_top - truth.scum_above - value
        case "solids_by_depth":
            return value - (truth.sludge + truth.scum) / truth.liquid_depth
        case "solids_by_volume":
            inside = tank.vessel
            under = inside.full_m3 - inside.volume_below(truth.liquid_depth - truth.scum_below)
            crust = under + inside.surface_area(truth.liquid_depth) * truth.scum_above
            return value - (inside.volume_below(truth.sludge) + crust) / inside.full_m3
        case "sludge":
            return value - truth.sludge
        case "scum":
            return value - truth.scum
        case "sludge_to_outlet_by_table" if limit.table is not None:
            least = limit.table.least(tank.vessel.full_m3, truth.liquid_depth)
            return inf if least is None else outlet - truth.sludge - least
    return inf


def grade(judged: Judgement, true: TrueVerdict) -> Grade:
    """A verdict against the truth's. A "cannot tell" reassures nobody, and is neither milder nor too urgent."""
    if judged.verdict == true.verdict:
        return "exact"
    if judged.verdict == "cannot_tell":
        return "cannot_tell"
    if rank(judged.verdict) > rank(true.verdict):
        return "too_urgent"
    errors = {one.limit: one.error for one in judged.standings if one.error is not None}
    past = [-margin / errors[limit] if limit in errors else inf for limit, margin in true.margins if margin <= 0.0]
    deep = max(past, default=0.0) > WITHIN
    if rank(judged.verdict) >= rank(true.plain) and not deep:
        return "within_error"
    spoken_for = {str(one.facts.get("field")) for one in judged.findings if one.id == "seen_before"}
    return "on_record" if spoken_for & true.fields and not deep else "milder"


def grade_readings(truth: Truth, readings: Readings) -> tuple[ReadingGrade, ...]:
    """Each length against the truth it was taken from."""
    true: Mapping[str, float] = {
        "sludge": truth.sludge,
        "scum_total": truth.scum,
        "scum_above": truth.scum_above,
        "scum_below": truth.scum_below,
        "liquid_depth": truth.liquid_depth,
        "outlet_bottom_below_surface": truth.outlet_below,
    }
    graded = []
    for kind, value in true.items():
        for reading in getattr(readings, kind):
            off = reading.m - value
            how: Literal["good", "fair", "off"]
            how = "good" if abs(off) <= GOOD_M else "fair" if abs(off) <= FAIR_M else "off"
            graded.append(ReadingGrade(kind, reading.m, value, off, how))
    return tuple(graded)


def drawn_in(look: Look, truth: Truth) -> dict[str, list[tuple[StripError, ...]]]:
    """What was drawn into each strip of a look, by kind of reading, the largest error first."""
    found: dict[str, list[tuple[StripError, ...]]] = {}
    for one in grade_readings(truth, look.check.seen.readings):
        match one.kind:
            case "sludge":
                errors = [StripError("pole", look.tilt), StripError("stain", one.off_m - look.tilt)]
            case "scum_above":
                errors = [StripError("mark", one.off_m)]
            case _:
                errors = [StripError("foot", one.off_m)]
        told = sorted((error for error in errors if abs(error.off_m) >= ROUNDED_M), key=lambda error: -abs(error.off_m))
        found.setdefault(one.kind, []).append(tuple(told))
    return found


def near(true: TrueVerdict, errors: Mapping[Limit, float]) -> bool:
    """Whether the truth lies within two standard errors of a limit, so that no reading could settle it."""
    told = [(limit, margin) for limit, margin in true.margins if limit.kind in (*LENGTHS, *SHARES)]
    return any(abs(margin) <= WITHIN * errors.get(limit, 0.0) for limit, margin in told)


def _facts(tank: PracticeTank, truth: Truth) -> frozenset[str]:
    """The facts of the record that signs may be given with, as they truly are."""
    acid = "acid_spares" if tank.tank.material in ("plastic", "fibreglass") else "acid_attacks"
    facts = {acid, "not_lately_pumped"}
    start = max(one.on for one in tank.pump_outs if one.on <= truth.on)
    lived = [one for one in tank.household.occupancy if one.from_ <= truth.on] or tank.household.occupancy[:1]
    if years_between(start, truth.on) * min(lived[-1].people * lived[-1].months_per_year / 12.0, 1.0) >= 0.5:
        facts.add("used_half_a_year")
    if truth.sludge <= 0.5 * INCH:
        facts.add("no_layers" if truth.scum <= 0.5 * INCH else "no_sludge")
    return frozenset(facts)
