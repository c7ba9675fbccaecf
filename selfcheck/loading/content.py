"""Rules, signs and sources: what is decided, as data."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.errors import ContentProblem
from selfcheck.loading.files import mould, read_table, read_toml
from selfcheck.loading.place import Place

if TYPE_CHECKING:
    from selfcheck.domain.limits import RuleSet
    from selfcheck.domain.signs import Sign
    from selfcheck.domain.sources import Source


def rules(place: Place) -> dict[str, RuleSet]:
    """Every set of limits by id, one file each."""
    from selfcheck.domain.limits import RuleSet

    found: dict[str, RuleSet] = {}
    for name in place.names("rules", ".toml"):
        relative = f"rules/{name}.toml"
        rule_set = read_toml(place, relative, RuleSet, "rule set")
        if rule_set.id != name:
            what = f'the id must be the file\'s own name, "{name}".'
            raise ContentProblem(place.shown(relative), rule_set.id, "id", what)
        found[name] = rule_set
    return found


def signs(place: Place) -> list[Sign]:
    """Every sign, file by file: `[[signs]]` tables, ids used once."""
    from selfcheck.domain.signs import Sign

    found: list[Sign] = []
    seen: set[str] = set()
    for name in place.names("signs", ".toml"):
        relative = f"signs/{name}.toml"
        file = place.shown(relative)
        table = read_table(place, relative, "signs")
        rows = table.pop("signs", None)
        if table or not isinstance(rows, list):
            raise ContentProblem(file, "", next(iter(table), "signs"), "only [[signs]] tables belong here.")
        for number, row in enumerate(rows, 1):
            sign = mould(row, Sign, file, str(row.get("id", f"sign {number}")))
            if sign.id in seen:
                raise ContentProblem(file, sign.id, "id", "this id is used twice.")
            seen.add(sign.id)
            found.append(sign)
    return found


def sources(place: Place) -> dict[str, Source]:
    """Every publication by id."""
    from selfcheck.domain.sources import SourceList

    relative = "sources.toml"
    found: dict[str, Source] = {}
    for source in read_toml(place, relative, SourceList, "sources").sources:
        if source.id in found:
            raise ContentProblem(place.shown(relative), source.id, "id", "this id is used twice.")
        found[source.id] = source
    return found
