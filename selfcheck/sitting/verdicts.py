"""A record → all that a judgement rests on, and the words it is told in."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING, Any, Literal

from selfcheck.errors import RecordProblem, UsageProblem
from selfcheck.storage.folder import Folder
from selfcheck.storage.layout import CHECKS, HOUSEHOLD, PUMP_OUTS

if TYPE_CHECKING:
    from selfcheck.domain.unjudged import Unread
    from selfcheck.domain.verdict import Case
    from selfcheck.loading.place import Place
    from selfcheck.report.finding_text import VerdictWords

LANGUAGE = "en"
#: where in a folder a problem lies → what it keeps from being read
_PARTS: dict[str, Literal["household", "check", "pump_out"]] = {
    HOUSEHOLD: "household",
    CHECKS: "check",
    PUMP_OUTS: "pump_out",
}


def case_of(place: Place, record: Folder, today: date, rules: str | None = None) -> Case:
    """What a judgement of the record as of `today` rests on, what could not be read among it.

    `rules`: id of the set of limits it goes by, in place of the household's own. Raises UsageProblem for one that is
    not there.
    """
    from selfcheck.domain.verdict import Case
    from selfcheck.loading.content import rules as all_rules
    from selfcheck.loading.content import signs

    rule_sets = all_rules(place)
    if rules is not None and rules not in rule_sets:
        known = ", ".join(rule_sets)
        raise UsageProblem(f'There is no set of limits "{rules}".', f"Name one of these: {known}.")
    shared = tuple(dict.fromkeys(ident for one in record.problems for ident in one.shared))
    unread = unread_in(record.problems)
    return Case(*record[:3], rule_sets, signs(place), today, rules, unread, shared)


def unread_in(problems: Sequence[RecordProblem]) -> tuple[Unread, ...]:
    """The parts of the record that could not be read, with the day that the name of the file tells."""
    from selfcheck.domain.unjudged import Unread

    found = []
    for one in problems:
        part = _PARTS.get(one.file.partition("/")[0])
        if part is not None and not one.used:
            found.append(Unread(part, one.file, _day_in(one.file)))
    return tuple(found)


def _day_in(file: str) -> date | None:
    try:
        return date.fromisoformat(file.rpartition("/")[2][:10])
    except ValueError:
        return None


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

    def get(self, key: str, default: Any = None) -> Any:
        """What stands there, or `default`. Asked of the table itself, which has its own word for what is missing."""
        return self._table.get(key, default)

    def __contains__(self, key: object) -> bool:
        return key in self._table

    def __iter__(self) -> Iterator[str]:
        return iter(self._table)

    def __len__(self) -> int:
        return len(self._table)
