"""Verdicts on thousands of practice tanks whose truth is known.

    python -m tests.benchmarks.practice [tanks]

Each tank is read by a household once now, and up to twice in years before, with honest errors and now and then a slip.
It takes the better readings that it is offered. A verdict is *milder* only when the truth is past a limit by more than
two standard errors of the reading, or shows a fault that the verdict passes over; closer misses are counted beside it,
as `within_error`: a rule that calls from one chance in ten on must have some (see `selfcheck.practice.grading`). Both
figures are printed. *Good readings* are checks without a slip, however close the truth lies to a limit; *not close* are
those of them where it lies two standard errors or more from every limit.

The last lines hold the errors that readings are said to have against those they had: root mean square of margin less
true margin over its standard error, 1 where the two agree. It lies over 1 as one reading in twenty is twice as far off
as the rest, and under 1 for an outlet that is assumed, whose whole published half-span is taken for one standard error.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterable
from datetime import date, timedelta
from math import sqrt
from typing import NamedTuple

from selfcheck.domain.findings import Verdict, rank
from selfcheck.domain.judging import Case, judge
from selfcheck.domain.limits import Kind
from selfcheck.domain.verdict import Judgement
from selfcheck.loading import content_place, rules, signs
from selfcheck.practice.dice import Dice
from selfcheck.practice.grading import Grade, TrueVerdict, grade, near, true_verdict
from selfcheck.practice.readings import Look, better, look
from selfcheck.practice.tank import PracticeTank, draw

TODAY = date(2026, 5, 18)
#: Times that a household takes the better readings it is offered before the verdict counts.
ASKED = 3
PLACE = content_place(None, own=False)
RULES, SIGNS = rules(PLACE), signs(PLACE)


class Graded(NamedTuple):
    """One practice tank, its last look, its verdict and the grade of it."""

    tank: PracticeTank
    last: Look
    judged: Judgement
    true: TrueVerdict
    grade: Grade

    @property
    def settled(self) -> bool:
        """Whether the truth lies further from every limit than readings can be off."""
        return not near(self.true, {one.limit: one.error or 0.0 for one in self.judged.standings})


def graded(seed: int) -> Graded:
    """Draw, read, judge and grade one tank."""
    tank, dice = draw(seed, TODAY), Dice(seed + 1_000_000_007)
    emptied = tank.pump_outs[0].on
    days = [TODAY - timedelta(days=365 * back) for back in range(int(dice.uniform(0, 3)), -1, -1)]
    looks = [look(tank.truth(day), dice) for day in days if (day - emptied).days > 120]
    own = RULES[tank.household.rules]
    truth = tank.truth(TODAY)
    for _ in range(ASKED):
        checks = [one.check for one in looks]
        judged = judge(Case(tank.household, checks, tank.pump_outs, {own.id: own}, SIGNS, TODAY))
        if not judged.better:
            break
        looks[-1] = better(looks[-1], truth, judged.better, dice)
    true = true_verdict(tank, truth, own, SIGNS)
    return Graded(tank, looks[-1], judged, true, grade(judged, true))


def share(part: Iterable[Graded], *wanted: Grade) -> float:
    """Per cent of these that have one of the grades."""
    grades = Counter(one.grade for one in part)
    return 100 * sum(grades[grade] for grade in wanted) / max(sum(grades.values()), 1)


def spread(part: Iterable[Graded], *kinds: Kind) -> float:
    """How far margins lay from the true ones, in the standard errors they were given with: root mean square."""
    off = []
    for one in part:
        true = dict(one.true.margins)
        for told in one.judged.standings:
            if told.limit.kind in kinds and told.margin is not None and told.error:
                off.append((told.margin - true[told.limit]) / told.error)
    return sqrt(sum(z * z for z in off) / max(len(off), 1))


def outlet_known(one: Graded) -> bool:
    """Whether the outlet's height is on record or was felt."""
    return one.judged.layers is not None and not one.judged.layers.outlet_assumed


def summary(found: list[Graded]) -> list[str]:
    """The lines of the table."""
    good = [one for one in found if not one.last.slips]
    settled = [one for one in good if one.settled]
    lines = [f"{len(found)} tanks, {len(good)} with good readings, of these {len(settled)} not close to a limit"]
    truths: Counter[Verdict] = Counter(one.true.verdict for one in found)
    lines.append("truth: " + ", ".join(f"{verdict} {truths[verdict]}" for verdict in sorted(truths, key=rank)))
    for name, part in (("all", found), ("good readings", good), ("not close", settled)):
        told = ", ".join(f"{grade} {share(part, grade):.1f} %" for grade in GRADES)
        lines.append(f"{name}: {told}")
    counts = Counter(one.grade for one in found)
    lines.append(
        f"milder than the truth: {counts['milder']}; past a limit within error, not seen: {counts['within_error']}"
    )
    for name, part in (("all", found), ("good readings", good), ("not close", settled)):
        well = [one for one in part if one.true.verdict == "carry_on"]
        lines.append(f"carry_on where the truth is, {name}: {share(well, 'exact'):.1f} %")
    for name, known in (("outlet known", True), ("outlet assumed", False)):
        part = [one for one in good if outlet_known(one) is known]
        told = ", ".join(f"{kind} {spread(part, kind):.2f}" for kind in MEASURED)
        lines.append(f"error had / error said, {name}: {told}")
    return lines


MEASURED: tuple[Kind, ...] = (
    "sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top", "solids_by_depth", "solids_by_volume",
)  # fmt: skip
GRADES: tuple[Grade, ...] = ("exact", "too_urgent", "cannot_tell", "within_error", "on_record", "milder")

if __name__ == "__main__":
    print("\n".join(summary([graded(seed) for seed in range(int(sys.argv[1]) if len(sys.argv) > 1 else 3000)])))
