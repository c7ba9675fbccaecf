"""A finding in plain words: its template from the content, filled with its own numbers in the household's units."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from math import ceil
from typing import TYPE_CHECKING, Any, Literal, NamedTuple

from selfcheck.content_words import filled
from selfcheck.domain.findings import Finding
from selfcheck.domain.household import spread
from selfcheck.domain.showing import show_date, show_length
from selfcheck.errors import ContentProblem

if TYPE_CHECKING:
    from selfcheck.domain.sources import Source

Units = Literal["us", "metric"]
CALLS = ("over", "close", "under")
#: distances that can turn into their opposite; below zero they are told in other words
_DISTANCES = ("sludge_to_outlet", "sludge_to_outlet_by_table", "scum_to_outlet", "scum_top_to_outlet_top")
_LENGTHS = ("least_m", "most_m", "before_m", "now_m", "metres")


class VerdictWords(NamedTuple):
    """The words a judgement is told in: the tables of `findings`, `signs` and `verdicts`, and the sources by id."""

    findings: Mapping[str, Any]
    signs: Mapping[str, Any]
    verdicts: Mapping[str, Any]
    sources: Mapping[str, Source]

    def say(self, table: str, key: str) -> str:
        """One phrase of the verdicts file. Raises ContentProblem when it is not there."""
        try:
            return str(self.verdicts[table][key])
        except KeyError:
            raise ContentProblem("words/verdicts.toml", table, key, "these words are missing.") from None

    def listed(self, idents: Iterable[str]) -> str:
        """What was not checked, in a list within a sentence: each by its name, without what explains it."""
        return ", ".join(dict.fromkeys(self.say("missing", ident).partition(",")[0] for ident in idents))

    def source_line(self, source: Source) -> str:
        """A publication in one line, with how it was seen."""
        return self.say("seen", "source").format(source=self.named(source))

    def named(self, source: Source) -> str:
        """A publication by its title, with how it was seen."""
        how = "" if source.seen == "none" else f" ({self.say('source_seen', source.seen)})"
        return f"{source.title}{how}"

    def of(self, ident: str) -> Mapping[str, Any]:
        """The table of a finding or sign. Raises ContentProblem when there is none."""
        for name, tables in (("findings", self.findings), ("signs", self.signs)):
            if ident in tables:
                table: Mapping[str, Any] = tables[ident]
                if name == "signs" and not table.get("seen"):
                    raise ContentProblem("words/signs.toml", ident, "seen", "these words are missing.")
                return table
        what = "there are no words for this finding."
        raise ContentProblem("words/signs.toml", ident, "", what, "Add a table for it.")


def limit_kind(finding: Finding) -> tuple[str, str] | None:
    """(kind, call) of a finding about a limit; None for any other."""
    kind, _, call = finding.id.rpartition("_")
    return (kind, call) if "rules" in finding.facts and call in CALLS else None


def text_of(finding: Finding, words: VerdictWords, units: Units, titles: Mapping[str, str]) -> str:
    """What was found, in one or two sentences. `titles`: rule set id → title."""
    told = _text_of(finding, words, units, titles)
    return told if finding.facts.get("compartment") is None else in_second(told, words)


def in_second(text: str, words: VerdictWords) -> str:
    """A sentence as one about the second part of a tank."""
    return words.say("seen", "in_second").format(text=text[:1].lower() + text[1:])


def _text_of(finding: Finding, words: VerdictWords, units: Units, titles: Mapping[str, str]) -> str:
    about = limit_kind(finding)
    if about is not None:
        kind, call = about
        fills = {
            "now": _figure(kind, finding.facts.get("now"), units),
            "limit": _figure(kind, finding.facts.get("limit"), units),
            "rule": titles.get(str(finding.facts["rules"]), str(finding.facts["rules"])),
        }
        now = finding.facts.get("now")
        beyond = "beyond" if isinstance(now, (int, float)) and now < 0 and kind in _DISTANCES else "text"
        return f"{filled(_text(words, kind, beyond), fills)} {words.findings['calls'][call]}"
    table = words.of(finding.id)
    return filled(str(table.get("text") or table.get("seen", "")), fills_of(finding, words, units))


def step_of(finding: Finding, words: VerdictWords, units: Units) -> str:
    """What to do about it; empty where it has no words of its own for that."""
    if limit_kind(finding) is not None:
        return ""
    return filled(str(words.of(finding.id).get("do", "")), fills_of(finding, words, units))


def name_of(finding: Finding, words: VerdictWords, units: Units) -> str:
    """A short name of what is open, for "if … turned out well"."""
    table = words.of(finding.id)
    return filled(str(table.get("short") or table.get("seen", "")), fills_of(finding, words, units)).rstrip(".")


def means_of(finding: Finding, words: VerdictWords) -> list[str]:
    """What it may mean, likeliest first; then what tells those apart, where there is more than one."""
    table = words.of(finding.id) if limit_kind(finding) is None else {}
    means = [str(one) for one in table.get("means", ())]
    lines = [words.say("seen", "means").format(means="; or ".join(means))] if means else []
    if len(means) > 1 and table.get("tell"):
        lines.append(words.say("seen", "tell").format(tell=table["tell"]))
    return lines


def fills_of(finding: Finding, words: VerdictWords, units: Units) -> dict[str, str]:
    """The finding's facts as words."""
    fills: dict[str, str] = {}
    for name, value in finding.facts.items():
        if name in _LENGTHS and isinstance(value, (int, float)):
            fills[name] = show_length(max(float(value), 0.0), units)
        elif name.endswith("hours") and isinstance(value, (int, float)):
            fills[name] = str(max(ceil(value), 2))  # told as "less than"; nobody knows it to the minute
        elif name == "chance" and isinstance(value, (int, float)):
            fills[name] = chance_in_words(float(value))
        elif isinstance(value, date):
            fills[name] = day_of(finding, name, units)
        elif name == "field":
            fills[name] = words.say("missing", str(value))
        elif name == "what":
            fills[name] = words.listed(str(value).split(", "))
        elif name == "sign":
            fills[name] = str(words.of(str(value)).get("seen", ""))
        elif isinstance(value, str):
            fills[name] = value
    return fills


def day_of(finding: Finding, name: str, units: Units) -> str:
    """A day among the facts, as wide as it was told; empty where there is none."""
    day, wide = finding.facts.get(name), finding.facts.get("wide_days")
    if not isinstance(day, date):
        return ""
    return show_date(day, units, *spread(day, wide if isinstance(wide, (int, float)) else None))


def chance_in_words(chance: float) -> str:
    """A chance as whole per cent; "under 1%" and "over 99%" at the ends."""
    if chance < 0.005:
        return "under 1%"
    if chance > 0.995:
        return "over 99%"
    return f"{round(100 * chance)}%"


def _figure(kind: str, value: float | str | date | None, units: Units) -> str:
    if not isinstance(value, (int, float)):
        return "?"
    if kind.startswith("solids"):
        return f"{round(100 * value)}%"
    if kind == "years":
        return f"{value:.1f} years".replace(".0 ", " ")
    return show_length(abs(value), units)


def _text(words: VerdictWords, ident: str, key: str) -> str:
    return str(words.of(ident).get(key, ""))
