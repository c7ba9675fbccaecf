"""Thousands of generated records, each made worse, or less known, in one place: no verdict may get milder by it.

    python -m tests.benchmarks.cautious [records]

A record is a practice household of any tank and age, by any rule set, with one to four checks, now and then without a
pump-out or without people, and with two answers of its last check drawn anew. Worse is: one fault more, or a layer read
thicker, as long as it fits into the tank: readings that cannot be are questioned, and settle nothing. Layers so thin
that they count as none are a sign of their own, so that thicker ones are no worse there. Less known is: "don't know" in
place of an answer. That may carry on only where the answer carries on as well, or where earlier checks speak for it.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from typing import Any

from selfcheck.domain.check import Reading, Seen
from selfcheck.domain.findings import rank
from selfcheck.domain.judging import judge
from selfcheck.domain.verdict import Case, Judgement
from selfcheck.practice.dice import Dice
from selfcheck.practice.readings import look
from selfcheck.practice.tank import draw
from tests.cases import HEALTHY, SEVERAL, TODAY, WORSE, all_signs, rule_sets

LAYERS = ("sludge", "scum_total", "scum_above", "scum_below")
#: Layers so thin that they count as none.
THIN = {"no_layers", "no_sludge", "no_scum"}


def record(seed: int) -> tuple[Case, random.Random]:
    """One generated record, and the dice it was made with."""
    chance = random.Random(seed)
    tank, dice = draw(seed, TODAY), Dice(seed + 5)
    last = TODAY - timedelta(days=chance.choice([0, 0, 0, 20, 200, 365, 500]))
    days = [last - timedelta(days=365 * back) for back in range(chance.randint(0, 3), -1, -1)]
    checks = [look(tank.truth(day), dice).check for day in days if day > tank.pump_outs[0].on]
    rules = rule_sets()[chance.choice(sorted(rule_sets()))]
    household = tank.household
    if chance.random() < 0.2:
        household = household.model_copy(update={"occupancy": []})
    pump_outs = tank.pump_outs if chance.random() < 0.8 else []
    case = Case(household, checks, pump_outs, {rules.id: rules}, all_signs(), TODAY, rules=rules.id)
    drawn: dict[str, Any] = {}
    for name in chance.sample(sorted(HEALTHY), 2):
        value = chance.choice(["unknown", None, *WORSE[name]])
        drawn[name] = [value] if name in SEVERAL and value not in ("unknown", None) else value
    return (_with(case, **drawn) if checks and chance.random() < 0.5 else case), chance


def worse(case: Case, chance: random.Random) -> Iterator[tuple[str, Case]]:
    """The record with one thing worse, several times over; each with what it is."""
    seen = case.checks[-1].seen
    for name in chance.sample(sorted(HEALTHY), 4):
        now = getattr(seen, name)
        if name in SEVERAL and isinstance(now, list):
            left = [one for one in WORSE[name] if one not in now]
            if left:
                yield name, _with(case, **{name: [*now, chance.choice(left)]})
        elif now == HEALTHY[name]:
            yield name, _with(case, **{name: chance.choice(WORSE[name])})
    for kind in LAYERS:
        read = getattr(seen.readings, kind)
        if read:
            more = chance.choice([0.005, 0.02, 0.06, 0.15, 0.3])
            thicker = [Reading(m=one.m + more) for one in read]
            yield kind, _with(case, readings=seen.readings.model_copy(update={kind: thicker}))


def less_known(case: Case, chance: random.Random) -> Iterator[tuple[str, Case, list[Case]]]:
    """The record with one answer not known, and with each fault that it may then be."""
    name = chance.choice([one for one in sorted(HEALTHY) if one not in SEVERAL])
    if getattr(case.checks[-1].seen, name) not in (None, "unknown"):
        yield name, _with(case, **{name: "unknown"}), [_with(case, **{name: value}) for value in WORSE[name]]


def amiss(seed: int) -> tuple[int, list[str]]:
    """How many changes were tried on one record, and those that made its verdict milder."""
    case, chance = record(seed)
    if not case.checks:
        return 0, []
    before, tried, found = judge(case), 0, []
    thin = bool(THIN & {one.id for one in before.findings})
    for name, changed in worse(case, chance):
        if name in LAYERS and (thin or _cannot_be(changed)):
            continue
        after, tried = judge(changed), tried + 1
        if rank(after.verdict) < rank(before.verdict):
            found.append(f"{seed} {name}: {before.verdict} becomes {after.verdict}")
    for name, changed, values in less_known(case, chance):
        after, tried = judge(changed), tried + 1
        if after.verdict != "carry_on":
            continue
        could_be = [judge(one) for one in values]
        if before.call_professional or (not after.rests_on_record and any(one.call_professional for one in could_be)):
            found.append(f"{seed} {name} not known: {before.verdict} becomes {after.verdict}")
    return tried, found


def _with(case: Case, **seen: Any) -> Case:
    last = case.checks[-1]
    changed: Seen = last.seen.model_copy(update=seen)
    return replace(case, checks=[*case.checks[:-1], last.model_copy(update={"seen": changed})])


def _cannot_be(case: Case) -> bool:
    found: Judgement = judge(case)
    return any(one.id.startswith("odd_") for one in found.findings)


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 3000
    results = [amiss(seed) for seed in range(count)]
    print(f"{count} records, {sum(tried for tried, _ in results)} changes tried for the worse or the less known")
    milder = [line for _, lines in results for line in lines]
    print("\n".join([*milder, f"made milder: {len(milder)}"]))
