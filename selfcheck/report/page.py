"""The household's page: one self-contained HTML file with the verdict first, to keep, to print and to hand over."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.history import counted
from selfcheck.domain.limits import RuleSet
from selfcheck.domain.showing import show_date, show_day, show_length, show_volume
from selfcheck.domain.verdict import Judgement, RuleRow
from selfcheck.report.finding_text import VerdictWords, chance_in_words
from selfcheck.report.markup import Html, document, join, listing, tag, text
from selfcheck.report.page_style import STYLE
from selfcheck.report.pictures import pictures
from selfcheck.report.readings import Row, rows
from selfcheck.report.rule_lines import limit_lines, no_date
from selfcheck.report.wording import VerdictPage, verdict_screen
from selfcheck.text import clean

Tables = Mapping[str, Any]
#: Rows of the table of readings; the rest stands in the record. With them the page stays on two sheets. Our choice.
MOST_ROWS = 7


@dataclass(frozen=True, slots=True)
class PageWords:
    """The words of the page: those of the verdict, the tables of `report_page`, and those of `pictures`."""

    verdict: VerdictWords
    page: Tables
    pictures: Tables


def household_page(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: PageWords, unread: str = ""
) -> str:
    """The page as HTML. `checks`, `pump_outs`: the whole record. Units are the household's.

    `unread`: which parts of the record could not be read, said first.

    Raises ContentProblem or KeyError when words are missing.
    """
    household, said = judgement.household, words.page
    name = clean(household.name, 80) or said["page"]["no_name"]
    title = said["page"]["title"].format(name=name)
    screen = verdict_screen(judgement, words.verdict)
    several = bool(judgement.others)
    header = tag(
        "header",
        tag("h1", title),
        tag("p", said["page"]["as_of"].format(day=show_day(judgement.today, household.units))),
        tag("p", said["page"]["tank"].format(tank=clean(judgement.tank.id, 60))) if several else None,
        tag("p", said["page"]["demonstration"]) if household.demonstration else None,
        tag("p", tag("strong", unread)) if unread else None,
    )
    main = [
        _verdict(screen, said),
        _pictures(judgement, checks, pump_outs, words, "a"),
        _evidence(screen, said),
        _readings(rows(judgement, checks, pump_outs, said["readings"]), said),
        _rule_table(judgement, words),
        tag(
            "div",
            _ahead(judgement, screen, said),
            _open(judgement, screen, said),
            _facts(judgement, pump_outs, said),
            class_="two",
        ),
        *(_other(one, checks, pump_outs, words, f"b{number}") for number, one in enumerate(judgement.others)),
        _sources(judgement, words),
        tag("div", *(tag("p", line) for line in screen.always), class_="always"),
    ]
    return document(title, STYLE, header, "\n", tag("main", *(join(part, "\n") for part in main if part)))


def _verdict(screen: VerdictPage, said: Tables) -> Html:
    return tag(
        "section",
        tag("p", screen.headline, class_="said"),
        tag("p", screen.do, class_="do"),
        tag("p", tag("b", screen.by)) if screen.by else None,
        tag("p", screen.kind) if screen.kind else None,
        tag("p", tag("b", f"{said['parts']['sure']}: "), f"{screen.sure} ", _sentence(screen.because)),
        class_=f"verdict {screen.verdict}",
    )


def _sentence(reasons: Sequence[str]) -> str:
    joined = "; ".join(reasons)
    return f"{joined[:1].upper()}{joined[1:]}." if joined else ""


def _part(title: str, lines: Sequence[str]) -> Html | None:
    return tag("section", tag("h2", title), listing(list(lines))) if lines else None


def _pictures(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: PageWords, prefix: str
) -> Html:
    drawn = pictures(judgement, checks, pump_outs, words.pictures, prefix)
    return tag(
        "section",
        tag("h2", words.page["parts"]["pictures"]),
        tag("div", *drawn, class_="pictures by-two" if len(drawn) == 4 else "pictures"),
    )


def _evidence(screen: VerdictPage, said: Tables) -> Html:
    parts = said["parts"]
    return tag("div", _part(parts["seen"], screen.seen), _part(parts["why"], screen.why), class_="two")


def _open(judgement: Judgement, screen: VerdictPage, said: Tables) -> Html:
    looked = judgement.check is not None and judgement.check.gate == "passed"
    parts = said["parts"]
    return tag(
        "div",
        _part(parts["questionable"], screen.questionable),
        _part(parts["not_checked"], screen.not_checked or ([said["not_checked"]["none"]] if looked else [])),
        _part(parts["would_change"], screen.would_change),
        _part(parts["not_used"], screen.not_used),
    )


def _readings(found: Sequence[Row], said: Tables) -> Html:
    words = said["readings"]
    heads = ("day", "sludge", "scum", "depth")
    if not found:
        return tag("section", tag("h2", said["parts"]["readings"]), tag("p", words["none"]))
    body = [_reading_row(row, words) for row in found[:MOST_ROWS]]
    more = len(found) - MOST_ROWS
    return tag(
        "section",
        tag("h2", said["parts"]["readings"]),
        tag(
            "table",
            tag("caption", words["about"]),
            tag("thead", tag("tr", *(tag("th", words[one], scope="col") for one in heads))),
            tag("tbody", *body),
        ),
        tag("p", words["older" if more > 1 else "older_one"].format(count=more), class_="quiet") if more > 0 else None,
    )


def _reading_row(row: Row, words: Tables) -> Html:
    first = tag("th", row.day, scope="row")
    if row.pumped:
        return tag("tr", first, tag("td", row.pumped, colspan="3"))
    told = [join(value, _typed(typed, words)) for value, typed in zip((row.sludge, row.scum), row.typed, strict=True)]
    return tag("tr", first, *(tag("td", one) for one in told), tag("td", row.depth or words["not_read"]))


def _typed(typed: str, words: Tables) -> Html | None:
    return tag("small", words["typed"].format(said=typed)) if typed else None


def _rule_table(judgement: Judgement, words: PageWords) -> Html:
    said = words.page["rules"]
    own_first = sorted(judgement.by_rule_set, key=lambda row: row.rule_set.id != judgement.rules.id)
    return tag(
        "section",
        tag("h2", words.page["parts"]["by_rule"]),
        tag(
            "table",
            tag("caption", said["about"]),
            tag("thead", tag("tr", *(tag("th", said[one], scope="col") for one in ("rule", "now", "limits", "due")))),
            tag("tbody", *(_rule_row(row, judgement, said, words.verdict) for row in own_first)),
        ),
        class_="rules",
    )


def _rule_row(row: RuleRow, judgement: Judgement, said: Tables, verdict_words: VerdictWords) -> Html:
    own = row.rule_set.id == judgement.rules.id
    notes = []
    if row.chance_over is not None:
        notes.append(said["chance"].format(chance=chance_in_words(row.chance_over)))
    if row.by == "forecast":
        notes.append(said["reckoned"])
    units = judgement.household.units
    due = said["later"] if row.due.p50 is None else show_day(row.due.p50, units)
    if no_date(row):
        due = said["no_date"]
    elif row.due.p50 is not None and row.due.p50 <= judgement.today:
        due = said["reached"]
    limits = limit_lines(row, judgement, verdict_words, units, short=True)
    return tag(
        "tr",
        tag("th", row.rule_set.title, tag("small", said["own"] if own else row.rule_set.jurisdiction), scope="row"),
        tag("td", said[row.call], tag("small", ", ".join(notes)) if notes else None, data_name=said["now"]),
        tag(
            "td",
            *(tag("small", line) for line in limits),
            class_="limits",
            data_name=said["limits"],
        ),
        tag("td", due, data_name=said["due"]),
        class_="own" if own else None,
    )


def _ahead(judgement: Judgement, screen: VerdictPage, said: Tables) -> Html:
    words, units, due = said["ahead"], judgement.household.units, judgement.due

    def day(one: date | None) -> str:
        return show_day(one, units) if one else str(words["open"])

    dates = [(words["earliest"], due.p10), (words["likely"], due.p50), (words["latest"], due.p90)]
    return tag(
        "section",
        tag("h2", said["parts"]["ahead"]),
        listing(list(screen.when_next)),
        tag("h3", words["due"]),
        tag("dl", *(join(tag("dt", name), tag("dd", day(one))) for name, one in dates)),
        tag("p", words["due_of"], class_="quiet"),
    )


def _other(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: PageWords, prefix: str
) -> Html:
    """Another tank of the household, shorter."""
    screen = verdict_screen(judgement, words.verdict)
    title = words.page["page"]["other_tank"].format(tank=clean(judgement.tank.id, 60))
    return tag(
        "section",
        tag("h2", title),
        _verdict(screen, words.page),
        _pictures(judgement, checks, pump_outs, words, prefix),
        _evidence(screen, words.page),
        _readings(rows(judgement, checks, pump_outs, words.page["readings"]), words.page),
        _ahead(judgement, screen, words.page),
        _open(judgement, screen, words.page),
    )


def _facts(judgement: Judgement, pump_outs: Sequence[PumpOut], said: Tables) -> Html:
    words, units, tank = said["facts"], judgement.household.units, judgement.tank
    not_known = str(words["not_known"])
    emptied = counted(pump_outs, tank.id, judgement.today)
    there = [one for one in judgement.household.occupancy if one.from_ <= judgement.today]
    lives = max(there, key=lambda one: one.from_) if there else None
    facts = {
        "volume": show_volume(judgement.vessel.full_m3, units),
        "depth": show_length(tank.liquid_depth_m, units) if tank.liquid_depth_m else not_known,
        "material": words["materials"].get(tank.material, not_known),
        "parts": str(tank.compartments) if tank.compartments else not_known,
        "people": words["people_now"].format(people=f"{lives.people:g}", day=show_date(lives.from_, units, *lives.span))
        if lives
        else not_known,
        "pumped": show_date(emptied[-1].on, units, *emptied[-1].span) if emptied else not_known,
    }
    rows_ = (join(tag("dt", words[name]), tag("dd", value)) for name, value in facts.items())
    return tag("section", tag("h2", said["parts"]["facts"]), tag("dl", *rows_))


def _sources(judgement: Judgement, words: PageWords) -> Html:
    said, units = words.page["sources"], judgement.household.units
    sets = [row.rule_set for row in judgement.by_rule_set]
    lines = {one.title: _rule_source(one, said, units) for one in sets}
    for finding in judgement.findings:
        source = words.verdict.sources.get(finding.source)
        if source is not None and source.title not in lines and source.id not in {one.id for one in sets}:
            about = [source.publisher, str(source.year or ""), source.place_in_text, said[source.seen]]
            lines[source.title] = _source(source.title, source.href, about)
    return tag(
        "section",
        tag("h2", words.page["parts"]["sources"]),
        tag("ul", *(tag("li", line) for line in lines.values()), class_="sources"),
    )


def _rule_source(rule: RuleSet, said: Tables, units: Any) -> Html:
    seen = str(said[rule.seen])
    confirmed = said["confirmed"].format(day=show_day(rule.confirmed, units)) if rule.confirmed else ""
    return _source(rule.title, rule.href, [rule.publisher, rule.edition, rule.place_in_text, seen, confirmed])


def _source(title: str, href: str, about: Sequence[str]) -> Html:
    """One publication. The link is followed by nobody but the reader."""
    name = tag("a", title, href=href, rel="noreferrer") if href.startswith("https://") else text(title)
    told = ", ".join(one for one in about if one)
    return join(name, f". {told[:1].upper()}{told[1:]}.")
