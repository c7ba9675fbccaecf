"""The signs as data: every one is whole, and joins others without hiding anything."""

from __future__ import annotations

from typing import get_args, get_type_hints

import pytest

from selfcheck.domain.check import Seen
from selfcheck.domain.findings import rank
from selfcheck.domain.signs import FIELDS, Observed, Sign, findings, matching, observed
from selfcheck.interview.hazard_fitting import ALL
from tests.cases import all_signs, verdict_words

SIGNS = {sign.id: sign for sign in all_signs()}


def values_of(name: str) -> set[str]:
    """Every value that a field of a check may hold."""
    if name == "lid_closed":
        return {"yes", "no"}
    if name == "hazards":
        return set(ALL)
    found: set[str] = set()
    todo = [get_type_hints(Seen)[name]]
    while todo:
        one = todo.pop()
        found |= {one} if isinstance(one, str) else set()
        todo += get_args(one)
    return found


@pytest.mark.parametrize("sign", all_signs(), ids=lambda sign: sign.id)
def test_a_sign_is_whole(sign: Sign) -> None:
    assert sign.fields() or sign.given
    for name in sign.fields():
        assert set(sign.values(name)) <= values_of(name), name
    assert sign.source in verdict_words().sources
    assert (sign.kind is not None) == (sign.verdict == "cannot_tell")
    assert (sign.within_days is not None) == (sign.verdict == "call_soon")


@pytest.mark.parametrize("sign", all_signs(), ids=lambda sign: sign.id)
def test_what_says_it_better_is_at_least_as_urgent(sign: Sign) -> None:
    for ident in sign.instead_of:
        assert rank(SIGNS[ident].verdict) <= rank(sign.verdict), ident


def test_every_field_is_named_by_a_sign() -> None:
    assert {name for sign in all_signs() for name in sign.fields()} == {*FIELDS, "lid_closed", "hazards"}


@pytest.mark.parametrize(
    ("field", "value"),
    [
        (name, value)
        for name in FIELDS
        for value in sorted(values_of(name))
        if value not in {"unknown", "none", "in_place", "sound", "clean", "not_fitted", "quiet", "no", "at_outlet",
                         "earthy", "brown"}
    ],
)  # fmt: skip
def test_every_value_that_is_not_healthy_says_something(field: str, value: str) -> None:
    facts = frozenset({"acid_attacks", "not_lately_pumped", "used_half_a_year"})
    assert matching(Observed({field: frozenset({value})}), all_signs(), facts)


def test_a_joined_sign_replaces_its_parts() -> None:
    seen = observed(Seen(smell="rotten_egg", surface="pale_grey"))
    said = [one.id for one in findings(seen, all_signs(), frozenset({"acid_attacks"}))]
    assert said == ["acid_attack"]
    said = [one.id for one in findings(seen, all_signs(), frozenset({"acid_spares"}))]
    assert said == ["hydrogen_sulfide"]


def test_every_of_a_list_must_be_there() -> None:
    sign = SIGNS["slow_and_gurgling"]
    assert not sign.holds(observed(Seen(house=["gurgling"])), frozenset())
    assert sign.holds(observed(Seen(house=["gurgling", "slow_all_drains", "smell_indoors"])), frozenset())


def test_asked_and_nothing_is_not_the_same_as_not_asked() -> None:
    assert observed(Seen(yard=[])).of("yard") == {"none"}
    assert observed(Seen()).of("yard") == set()
    assert observed(Seen(yard="unknown")).of("yard") == {"unknown"}


def test_findings_cite_their_answers_and_come_worst_first() -> None:
    seen = observed(Seen(yard=["lush_strip"], lid="cracked", house=["slow_one_drain"]), lid_closed=True)
    found = findings(seen, all_signs(), frozenset())
    assert [one.id for one in found] == ["lid_cracked", "lush_strip", "slow_one_drain"]
    assert found[0].uses == ("seen.lid",)
