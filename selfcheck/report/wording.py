"""A judgement in plain words: the verdict page."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.domain.explain import not_used
from selfcheck.domain.findings import Finding, rank
from selfcheck.domain.flow import LEAST_DAYS
from selfcheck.domain.forecast import HORIZON_YEARS
from selfcheck.domain.layers import Layers
from selfcheck.domain.showing import show_day, show_length, show_length_error, show_volume
from selfcheck.domain.verdict import Judgement
from selfcheck.report.finding_text import (
    Units,
    VerdictWords,
    day_of,
    limit_kind,
    means_of,
    text_of,
)
from selfcheck.report.reckoned import reckoned
from selfcheck.report.rule_lines import RuleLine, at_the_start, rule_lines
from selfcheck.report.verdict_text import (
    because,
    danger_on,
    headline,
    only_time_speaks,
    titles_of,
    what_to_do,
    would_change,
)
from selfcheck.text import clean

__all__ = ["RuleLine", "VerdictPage", "VerdictWords", "verdict_screen"]


_OPEN_TOLD = 2
_CAUSES_TOLD = 2
#: readings by the names that their layers have in words
_NAMED = {
    "seen.readings.scum_total": "scum",
    "seen.readings.scum_above": "scum",
    "seen.readings.scum_below": "scum",
    "seen.readings.outlet_bottom_below_surface": "outlet_height",
}


@dataclass(frozen=True, slots=True)
class VerdictPage:
    """The verdict as plain text. `headline` is the one sentence shown large; the rest stands below in this order.

    `by` is empty where there is no day to act by. `kind` says which of the four kinds a "cannot tell" is, else empty.
    `rule_rows`: one for each rule set, its limits on lines of their own; `rules` holds the same in columns. `always`
    belongs on every verdict.
    `not_used`: answers that were given and had no say this time.
    """

    verdict: str
    headline: str
    do: str
    by: str
    sure: str
    because: tuple[str, ...]
    kind: str
    seen: tuple[str, ...]
    why: tuple[str, ...]
    rule_rows: tuple[str, ...]
    when_next: tuple[str, ...]
    not_checked: tuple[str, ...]
    questionable: tuple[str, ...]
    would_change: tuple[str, ...]
    always: tuple[str, ...]
    rules: tuple[RuleLine, ...]
    not_used: tuple[str, ...] = ()


def verdict_screen(judgement: Judgement, words: VerdictWords, units: Units | None = None) -> VerdictPage:
    """The page for one judgement, in the household's units unless others are given. ContentProblem: words missing."""
    units = units or judgement.household.units
    overdue = only_time_speaks(judgement)
    rules = rule_lines(judgement, words, units)
    return VerdictPage(
        verdict=judgement.verdict,
        headline=headline(judgement, words, units),
        do=what_to_do(judgement, words, units),
        by=_by(judgement, words, units),
        sure=words.say("sure", judgement.sure),
        because=because(judgement, words),
        kind=words.say("kind", judgement.kind) if judgement.kind and not overdue else "",
        seen=_seen(judgement, words, units),
        why=_why(judgement, words, units),
        rule_rows=tuple(line.text for line in rules),
        when_next=_when_next(judgement, words, units),
        not_checked=tuple(words.say("missing", ident) for ident in judgement.missing),
        questionable=_questionable(judgement, words, units),
        would_change=would_change(judgement, words, units),
        always=tuple(str(line) for line in words.verdicts["always"]["lines"]),
        rules=rules,
        not_used=_not_used(judgement, words),
    )


def _by(judgement: Judgement, words: VerdictWords, units: Units) -> str:
    if judgement.verdict == "carry_on" and judgement.look_again > judgement.today:
        return words.say("by", "carry_on").format(day=show_day(judgement.look_again, units))
    told = danger_on(judgement)
    if judgement.act_by is None or (told is not None and told < judgement.today):
        return ""
    if judgement.act_by == judgement.today and rank(judgement.verdict) >= rank("call_now"):
        return words.say("by", "today")
    name = "past" if judgement.act_by < judgement.today else judgement.verdict
    return words.say("by", name).format(day=show_day(judgement.act_by, units))


def _seen(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    """What was found that is no limit, and the layers; the most urgent first. With several tanks, which one this is."""
    lines = []
    if judgement.others:
        lines.append(words.say("seen", "of_tank").format(tank=clean(judgement.tank.id, 60)))
    lines += [
        words.say("seen", "other_tank").format(tank=clean(one.tank.id, 60), headline=headline(one, words, units))
        for one in judgement.others
    ]
    if judgement.check is None:
        lines.append(words.say("seen", "none"))
    else:
        lines.append(words.say("seen", "check").format(day=show_day(judgement.check.on, units)))
    titles = titles_of(judgement)
    told = [one for one in judgement.findings if limit_kind(one) is None]
    open_ones = [one for one in told if one.id == "not_seen"]
    if len(open_ones) > _OPEN_TOLD:
        told = [one for one in told if one.id != "not_seen"]
        names = words.listed(str(one.facts["field"]) for one in open_ones)
        lines.append(words.say("seen", "not_known").format(list=names))
    if judgement.check is None:
        told = [one for one in told if one.id != "never_checked"]  # said already
    lines += [_on_the_day(one, text_of(one, words, units, titles), words, units) for one in told]
    found = judgement.layers
    if found is not None and found.scum and found.sludge and found.liquid_depth:
        lines.append(
            words.say("seen", "layers").format(
                scum=show_length_error(found.scum.value, found.scum.error, units),
                sludge=show_length_error(found.sludge.value, found.sludge.error, units),
                depth=show_length(found.liquid_depth.value, units),
            )
        )
    second = judgement.second_layers
    if second is not None and second.scum and second.sludge:
        lines.append(
            words.say("seen", "second_layers").format(
                scum=show_length_error(second.scum.value, second.scum.error, units),
                sludge=show_length_error(second.sludge.value, second.sludge.error, units),
            )
        )
    days = judgement.detention_days
    if days is not None and days >= LEAST_DAYS:  # a shorter rest is a finding of its own
        lines.append(words.say("seen", "detention").format(days=f"{days:.1f}"))
    lines += reckoned(judgement, words, units)
    return tuple(dict.fromkeys(lines))


def _on_the_day(finding: Finding, text: str, words: VerdictWords, units: Units) -> str:
    """The text; where it is a sign seen at a pump-out, with the day of that."""
    day = day_of(finding, "at_pump_out", units)
    if not day or finding.id.startswith("pump_out_"):  # those say it themselves
        return text
    return words.say("seen", "at_pump_out").format(day=day, text=text)


def _why(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    """What the findings that decide rest on: limits in figures, signs with what they may mean, each with its source."""
    lines: list[str] = []
    titles = titles_of(judgement)
    for one in judgement.deciding:
        about = [text_of(one, words, units, titles)] if limit_kind(one) is not None else []
        about += _give_or_take(one, words, units, judgement.layers)
        about += means_of(one, words)
        source = words.sources.get(one.source)
        if about and source is not None:
            about.append(words.source_line(source))
        lines += about
    return tuple(dict.fromkeys(lines))


def _give_or_take(finding: Finding, words: VerdictWords, units: Units, layers: Layers | None) -> list[str]:
    """How far off the figure of a limit may be, and what that comes from, the largest cause first.

    An outlet that was only assumed stands for all, where it is the largest cause.
    """
    about, error = limit_kind(finding), finding.facts.get("error")
    causes = str(finding.facts.get("error_from") or "")
    if about is None or not causes or not isinstance(error, (int, float)):
        return []
    named = " and ".join(words.say("error", cause.replace(" ", "_")) for cause in causes.split(", ")[:_CAUSES_TOLD])
    often = f"{max(round(100 * error), 1)}%" if about[0].startswith("solids") else show_length(error, units)
    assumed = layers is not None and layers.outlet_assumed and causes.startswith("outlet edge")
    return [words.say("seen", "not_measured" if assumed else "give_or_take").format(error=often, causes=named)]


def _not_used(judgement: Judgement, words: VerdictWords) -> tuple[str, ...]:
    """The answers that had no say, in one line; none where nothing wrong was seen and so all of them count."""
    idents = [_NAMED.get(path, path.rpartition(".")[2]) for path in not_used(judgement)]
    if not idents or judgement.verdict == "carry_on":
        return ()
    return (words.say("seen", "not_used").format(list=words.listed(idents)),)


def _when_next(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    day = show_day(judgement.look_again, units)
    pump = any(limit_kind(one) is not None or one.id == "by_estimate" for one in judgement.deciding)
    if judgement.call_professional and pump:
        lines = [words.say("when", "after_pump_out")]
    elif rank(judgement.verdict) >= rank("call_now"):
        lines = [words.say("when", "after_professional")]
    elif judgement.look_again <= judgement.today:
        lines = [words.say("when", "look_now")]
    else:
        lines = [words.say("when", f"look_{judgement.look_reason}").format(day=day)]
    due = judgement.due
    no_figure = any(one.id == "limit_has_no_figure" for one in judgement.findings)
    if no_figure:
        lines.append(words.say("when", "due_no_figure" if due.p50 else "due_none"))
    if due.p50 is None and no_figure:
        pass
    elif due.p50 is None:
        lines.append(words.say("when", "due_open").format(years=round(HORIZON_YEARS)))
    elif at_the_start(judgement, due.p50):
        lines.append(words.say("when", "due_reached"))
    elif due.p50 <= judgement.today:
        lines.append(words.say("when", "due_past").format(p50=show_day(due.p50, units)))
    else:
        first = due.p10 or due.p50
        name = "due_maybe_past" if first <= judgement.today else "due"
        lines.append(words.say("when", name).format(p50=show_day(due.p50, units), p10=show_day(first, units)))
    if judgement.forecast.rests_on == "published":
        lines.append(words.say("when", "rate_published"))
    else:
        amount = show_volume(judgement.forecast.litres_per_person_year / 1000, units)
        name = "rate_first_part" if (judgement.tank.compartments or 1) > 1 else "rate"
        lines.append(words.say("when", name).format(amount=amount))
    if "pump_out_date" in judgement.forecast.assumed:
        start = judgement.forecast.people.start
        if judgement.forecast.past.placed:
            lines.append(words.say("when", "start_placed").format(day=start.year))
        else:
            lines.append(words.say("when", "start_assumed").format(day=show_day(start, units)))
    if judgement.tank.follows is not None:
        lines.append(words.say("when", "follows"))
    return tuple(lines)


def _questionable(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    titles = titles_of(judgement)
    lines = [words.say("rules", "unknown")] if "rules_not_known" in judgement.questionable else []
    lines += [text_of(one, words, units, titles) for one in judgement.findings if one.id in judgement.questionable]
    return tuple(dict.fromkeys(lines))
