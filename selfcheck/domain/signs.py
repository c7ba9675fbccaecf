"""What is seen, smelled or heard, and how urgent it is.

The signs themselves are data in `content/signs/`; this module only matches them against one check. A sign names answers
(`when`) and facts of the record (`given`). A sign that joins others stands `instead_of` them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from selfcheck.domain.check import Seen
from selfcheck.domain.findings import CannotTell, Finding, Sureness, Verdict, rank, worst
from selfcheck.domain.strict import STRICT

Mark = Literal["published", "common practice", "from memory", "our choice"]
Given = Literal[
    "lately_pumped",  # so lately that the tank may still be filling
    "not_lately_pumped",
    "used_half_a_year",  # lived in for six months or more since the last pump-out on record
    "acid_attacks",  # concrete or steel, or a material that is not known
    "acid_spares",  # plastic or fibreglass
    "no_layers",  # next to no sludge and no scum were read
    "no_sludge",  # next to no sludge was read, but some scum
]

#: fields that older records and plain systems leave out; not asked is then no gap in the evidence
MAY_BE_LEFT_OUT = frozenset({"roots", "filter", "alarm", "lid_closed"})
#: fields that hold any number of signs
SEVERAL = frozenset({"yard", "house", "hazards"})
#: what a check holds beside what was seen
OF_CHECK = frozenset({"lid_closed", "hazards"})


@dataclass(frozen=True, slots=True)
class Sign:
    """One sign, or several that mean more together.

    `when`: field of the check → the values that count; every field named must hold. `every`: field of several → values
    that must all be there. `given`: facts of the record that must hold as well. `verdict`: how urgent it is by itself.
    `source` and `mark`: who says so and how well founded that is. `kind`: for `cannot_tell`, which of the four kinds.
    `sure`: how far the sign by itself settles the matter. `within_days`: for `call_soon`, days until it should be dealt
    with. `lasts`: it stays until somebody mends it, also through a pump-out. `instead_of`: signs that it says better.
    """

    id: str
    verdict: Verdict
    source: str
    mark: Mark
    when: dict[str, tuple[str, ...]] = field(default_factory=dict)
    every: dict[str, tuple[str, ...]] = field(default_factory=dict)
    given: tuple[Given, ...] = ()
    instead_of: tuple[str, ...] = ()
    kind: CannotTell | None = None
    sure: Sureness = "sure"
    within_days: int | None = None
    lasts: bool = False

    __pydantic_config__ = STRICT

    def values(self, name: str) -> tuple[str, ...]:
        """The values of one field that this sign names."""
        return self.when.get(name, ()) + self.every.get(name, ())

    def fields(self) -> tuple[str, ...]:
        """The fields that this sign rests on."""
        return tuple(dict.fromkeys((*self.when, *self.every)))

    def holds(self, what: Observed, facts: frozenset[str]) -> bool:
        """Whether a check shows it, with these facts of the record."""
        return (
            facts.issuperset(self.given)
            and all(what.of(name) & set(values) for name, values in self.when.items())
            and all(what.of(name) >= set(values) for name, values in self.every.items())
        )


@dataclass(frozen=True, slots=True)
class Observed:
    """The answers that signs may name: field → values; empty where not asked, `{"unknown"}` where not known."""

    values: Mapping[str, frozenset[str]] = field(default_factory=dict)

    def of(self, name: str) -> frozenset[str]:
        """The values of one field."""
        return self.values.get(name, frozenset())

    def with_value(self, name: str, value: str) -> Observed:
        """The same check with one more value (a field of several) or another value."""
        now = self.of(name) - {"unknown"} if name in SEVERAL else frozenset()
        return Observed({**self.values, name: now | {value}})


def observed(seen: Seen, lid_closed: bool | None = None, hazards: Sequence[str] = ()) -> Observed:
    """The answers of a check in the form that signs are matched against.

    `lid_closed` is taken in as "yes" or "no"; `hazards` are the ids of dangers that were told of.
    """
    values: dict[str, frozenset[str]] = {}
    for name in FIELDS:
        value = getattr(seen, name)
        if value is None:
            continue
        values[name] = frozenset({value}) if isinstance(value, str) else frozenset(value) or frozenset({"none"})
    if lid_closed is not None:
        values["lid_closed"] = frozenset({"yes" if lid_closed else "no"})
    if hazards:
        values["hazards"] = frozenset(hazards)
    return Observed(values)


#: the fields of a check that hold signs
FIELDS = (
    "people_hurt", "lid", "house", "yard", "alarm", "level", "inlet_tee", "outlet_tee", "wall", "smell", "surface",
    "under_lid", "inflow", "filter", "roots",
)  # fmt: skip


def matching(what: Observed, signs: Sequence[Sign], facts: frozenset[str]) -> list[Sign]:
    """The signs that hold, without those that another one says better."""
    held = [sign for sign in signs if sign.holds(what, facts)]
    said_better = {ident for sign in held for ident in sign.instead_of}
    return [sign for sign in held if sign.id not in said_better]


def as_finding(sign: Sign, what: Observed) -> Finding:
    """A sign that holds, as a finding with the answers it rests on."""
    uses = tuple(f"check.{name}" if name in OF_CHECK else f"seen.{name}" for name in sign.fields())
    facts: dict[str, str | float] = {"sure": sign.sure, "mark": sign.mark}
    if sign.within_days is not None:
        facts["within_days"] = sign.within_days
    return Finding(sign.id, sign.verdict, sign.source, dict(facts), uses, kind=sign.kind)


def findings(what: Observed, signs: Sequence[Sign], facts: frozenset[str]) -> list[Finding]:
    """What the signs of one check say, most urgent first."""
    held = [as_finding(sign, what) for sign in matching(what, signs, facts)]
    return sorted(held, key=lambda finding: -rank(finding.verdict))


def worst_possible(name: str, what: Observed, signs: Sequence[Sign], facts: frozenset[str]) -> Verdict:
    """The most urgent verdict that any value of one field could bring about, the other answers as they are.

    Only values that some sign names are tried; all others mean nothing by themselves.
    """
    named = sorted({value for sign in signs for value in sign.values(name)})
    return worst(
        [
            sign.verdict
            for value in named
            for sign in matching(what.with_value(name, value), signs, facts)
            if sign.values(name)
        ]
    )
