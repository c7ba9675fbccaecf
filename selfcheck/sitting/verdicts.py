"""A record → a judgement, and the words it is told in."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING, Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import UsageProblem

if TYPE_CHECKING:
    from selfcheck.domain.verdict import Case, Judgement
    from selfcheck.loading.place import Place
    from selfcheck.report.finding_text import VerdictWords

LANGUAGE = "en"


def judged(
    place: Place,
    household: Household,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    today: date,
    rules: str | None = None,
) -> Judgement:
    """The record judged as of `today`, by the set of limits `rules` or else the household's own.

    Raises UsageProblem for a set of limits that is not there.
    """
    from selfcheck.domain.judging import judge

    return judge(case_of(place, household, checks, pump_outs, today, rules))


def case_of(
    place: Place,
    household: Household,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    today: date,
    rules: str | None = None,
) -> Case:
    """What a judgement rests on. Raises UsageProblem for a set of limits that is not there."""
    from selfcheck.domain.verdict import Case
    from selfcheck.loading.content import rules as all_rules
    from selfcheck.loading.content import signs

    rule_sets = all_rules(place)
    if rules is not None and rules not in rule_sets:
        known = ", ".join(rule_sets)
        raise UsageProblem(f'There is no set of limits "{rules}".', f"Name one of these: {known}.")
    return Case(household, checks, pump_outs, rule_sets, signs(place), today, rules)


def verdict_words(place: Place) -> VerdictWords:
    """The words that a judgement is told in. Each table is read when a word of it is first needed."""
    from selfcheck.loading.content import sources
    from selfcheck.loading.files import read_table
    from selfcheck.report.finding_text import VerdictWords

    def words(name: str) -> Late:
        return Late(lambda: read_table(place, f"{LANGUAGE}/words/{name}.toml"))

    return VerdictWords(words("findings"), words("signs"), words("verdicts"), Late(lambda: sources(place)))


class Late(Mapping[str, Any]):
    """A table that is read when somebody first looks into it."""

    def __init__(self, read: Callable[[], Mapping[str, Any]]) -> None:
        self._read = read

    @cached_property
    def _table(self) -> Mapping[str, Any]:
        return self._read()

    def __getitem__(self, key: str) -> Any:
        return self._table[key]

    def __contains__(self, key: object) -> bool:
        return key in self._table

    def get(self, key: str, default: Any = None) -> Any:
        """What stands there, or `default`. Asked of the table itself, which has its own word for what is missing."""
        return self._table.get(key, default)

    def __iter__(self) -> Iterator[str]:
        return iter(self._table)

    def __len__(self) -> int:
        return len(self._table)
