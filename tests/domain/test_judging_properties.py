"""What must hold for every record, tried on thousands of generated ones from a fixed seed."""

from __future__ import annotations

import random
from dataclasses import replace
from typing import Any

import pytest

from selfcheck.domain.check import Check
from selfcheck.domain.findings import rank
from selfcheck.domain.judging import Case, judge
from selfcheck.domain.signs import FIELDS, MAY_BE_LEFT_OUT, observed, worst_possible
from tests.benchmarks.cautious import amiss
from tests.cases import HEALTHY, SEVERAL, TODAY, WORSE, all_signs, rule_sets
from tests.cases import build as build_case


def build(**seen: Any) -> Case:
    """A case with the deciding rule set alone, which is quicker and decides the same."""
    case = build_case(**seen)
    return replace(case, rule_sets={case.household.rules: rule_sets()[case.household.rules]})


def some_answers(chance: random.Random, faults: float = 0.12) -> dict[str, Any]:
    """Mostly healthy answers with a few faults and a few gaps."""
    seen: dict[str, Any] = {}
    for name, well in HEALTHY.items():
        throw = chance.random()
        if throw < faults:
            worse = WORSE[name]
            seen[name] = chance.sample(worse, chance.randint(1, 2)) if name in SEVERAL else chance.choice(worse)
        elif throw < 1.4 * faults:
            seen[name] = "unknown"
        else:
            seen[name] = well
    sludge = chance.uniform(0.5, 20)
    seen["sludge"] = [round(sludge, 1), round(sludge + chance.uniform(-0.5, 0.5), 1)][: chance.choice([0, 1, 2, 2, 2])]
    seen["scum_above"] = [round(chance.uniform(0, 4), 1)][: chance.choice([0, 1, 1, 1])]
    return seen


def with_one_worse(name: str, seen: dict[str, Any], value: str) -> dict[str, Any]:
    """The same answers with one fault more (a field of several) or a fault in place of a healthy answer."""
    if name not in SEVERAL:
        return {**seen, name: value}
    now = seen[name] if isinstance(seen[name], list) else []
    return {**seen, name: [*now, value]}


def test_nothing_worse_and_nothing_less_known_makes_a_verdict_milder() -> None:
    """Of a few generated records; thousands of them: `tests.benchmarks.cautious`."""
    results = [amiss(seed) for seed in range(70)]
    assert sum(tried for tried, _ in results) > 250
    assert [line for _, lines in results for line in lines] == []


def test_more_sludge_or_scum_never_makes_the_verdict_milder() -> None:
    chance = random.Random(7)
    for _ in range(15):
        seen = {"sludge": [round(chance.uniform(1, 16), 1)] * 2, "scum_above": [round(chance.uniform(0, 3), 1)]}
        last = -1
        for more in (0, 1, 2, 4, 8, 12):
            grown = judge(build(sludge=[one + more for one in seen["sludge"]], scum_above=seen["scum_above"]))
            assert rank(grown.verdict) >= last, (seen, more)
            last = rank(grown.verdict)


def test_no_reading_silences_a_sign() -> None:
    for name, values in WORSE.items():
        for value in values:
            alone = judge(build(**with_one_worse(name, HEALTHY, value)))
            full = judge(build(**with_one_worse(name, HEALTHY, value), sludge=[18, 18]))
            assert rank(full.verdict) >= max(rank(alone.verdict), rank("call_soon")), (name, value)


def test_not_known_never_carries_on_where_some_answer_would_mean_a_call() -> None:
    facts = frozenset({"acid_attacks", "not_lately_pumped", "used_half_a_year"})
    for name in FIELDS:
        case = build(**{**HEALTHY, name: "unknown"})
        check: Check = case.checks[0]
        worst = worst_possible(name, observed(check.seen), all_signs(), facts)
        assert rank(worst) >= rank("call_soon"), f"{name} can never mean a call, so why ask?"
        assert judge(case).verdict == "cannot_tell", name
        never_asked = judge(build(**{**HEALTHY, name: "null"})).verdict
        assert never_asked == ("carry_on" if name in MAY_BE_LEFT_OUT else "cannot_tell"), name


def test_an_open_answer_is_never_worse_than_the_worst_of_its_answers() -> None:
    for name, values in WORSE.items():
        not_known = judge(build(**{**HEALTHY, name: "unknown"}))
        worst = max(rank(judge(build(**with_one_worse(name, HEALTHY, value))).verdict) for value in values)
        assert rank(not_known.verdict) <= worst, name


def test_carry_on_always_rests_on_everything_that_matters() -> None:
    chance = random.Random(11)
    carried = 0
    for _ in range(100):
        seen = some_answers(chance, 0.02)
        found = judge(build(**seen))
        if found.verdict != "carry_on":
            continue
        carried += 1
        assert "unknown" not in {str(value) for value in seen.values()}
        assert seen["sludge"]
        assert seen["scum_above"] or seen["surface"] == "no_crust"
        assert found.look_again > TODAY
    assert carried > 5


@pytest.mark.parametrize("seed", range(26))
def test_each_cited_answer_matters(seed: int) -> None:
    """Taking a cited answer away changes the verdict, the sureness, or the finding that cites it."""
    chance = random.Random(seed)
    case = build(**some_answers(chance))
    found = judge(case)
    check = case.checks[0]
    for one in found.deciding:
        for path in one.uses:
            if not path.startswith("seen."):
                continue
            without = judge(replace(case, checks=[_without(check, path)]))
            same = any(other == one for other in without.findings)
            changed = without.verdict != found.verdict or without.sure != found.sure or not same
            assert changed, (one.id, path)


def _without(check: Check, path: str) -> Check:
    *_, name = path.split(".")
    if ".readings." in path:
        readings = check.seen.readings.model_copy(update={name: []})
        return check.model_copy(update={"seen": check.seen.model_copy(update={"readings": readings})})
    return check.model_copy(update={"seen": check.seen.model_copy(update={name: None})})
