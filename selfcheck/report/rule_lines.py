"""By whose rule is it due? One row for each rule set in words, with each of its limits below it."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from selfcheck.domain.history import days_after
from selfcheck.domain.limits import SHARES, Limit, RuleSet, Standing
from selfcheck.domain.over_time import FRESH_DAYS
from selfcheck.domain.showing import show_day, show_length, show_length_error
from selfcheck.domain.verdict import Judgement, RuleRow
from selfcheck.report.finding_text import Units, VerdictWords, chance_in_words


class RuleLine(NamedTuple):
    """One row of the table "by whose rule is it due?", in words.

    `limits`: one line for each limit: where the tank stands, the limit, the room left with its error, the chance of
    being over. `source`: whose text it is, how it was seen and when it was last compared. `text`: the whole row, each
    limit and the source on a line of its own.
    """

    id: str
    title: str
    call: str
    chance: str
    due: str
    own: bool
    text: str
    limits: tuple[str, ...] = ()
    source: str = ""


def rule_lines(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[RuleLine, ...]:
    """The rows, the deciding rule set first. ContentProblem: words missing."""
    rows = sorted(judgement.by_rule_set, key=lambda row: row.rule_set.id != judgement.rules.id)
    return tuple(_line(row, judgement, words, units) for row in rows)


def no_date(row: RuleRow) -> bool:
    """Whether no date speaks for a rule set: a limit of it has no figure for this tank, and the others leave room."""
    return row.no_figure and row.call == "cannot_tell"


def at_the_start(judgement: Judgement, day: date | None) -> bool:
    """Whether a date of crossing lies so soon after the pump-out that it only says how full the tank was read to be."""
    return day is not None and day <= min(judgement.today, days_after(judgement.forecast.people.start, FRESH_DAYS))


def limit_lines(
    row: RuleRow, judgement: Judgement, words: VerdictWords, units: Units, *, short: bool = False
) -> tuple[str, ...]:
    """One rule set's limits, each in one line. Figures of an earlier day are told with that day.

    `short`: for a column whose heading says that the chance of being over comes last.
    """
    if not row.standings:
        return tuple(_not_told(one, one.value, words, units, row.no_figure) for one in row.rule_set.limits)
    told = tuple(_limit(one, words, units, short, row.no_figure) for one in row.standings)
    if row.by == "forecast" and judgement.check is not None and any(one.margin is not None for one in row.standings):
        return (*told, words.say("limits", "read_on").format(day=show_day(judgement.check.on, units)))
    return told


def _line(row: RuleRow, judgement: Judgement, words: VerdictWords, units: Units) -> RuleLine:
    own = row.rule_set.id == judgement.rules.id
    chance = chance_in_words(row.chance_over) if row.chance_over is not None else ""
    call = words.say("rules", row.call).format(chance=chance)
    if row.by == "forecast":
        call += words.say("rules", "by_forecast")
    day = ""
    if no_date(row):
        due = ""
    elif row.due.p50 is None:
        due = words.say("rules", "due_later")
    elif row.due.p50 <= judgement.today:
        due = words.say("rules", "due_reached")
    else:
        day = show_day(row.due.p50, units)
        due = words.say("rules", "due").format(p50=day)
    head = words.say("rules", "own" if own else "other").format(title=row.rule_set.title, call=call, due=due)
    limits, source = limit_lines(row, judgement, words, units), _source(row.rule_set, words, units)
    text = "\n".join((head, *limits, source))
    return RuleLine(row.rule_set.id, row.rule_set.title, call, chance, day, own, text, limits, source)


def _source(rules: RuleSet, words: VerdictWords, units: Units) -> str:
    about = [rules.publisher, rules.edition, rules.place_in_text, words.say("source_seen", rules.seen)]
    if rules.confirmed is not None:
        about.append(words.say("rules", "confirmed").format(day=show_day(rules.confirmed, units)))
    return words.say("rules", "source").format(about=", ".join(one for one in about if one))


def _limit(one: Standing, words: VerdictWords, units: Units, short: bool, no_figure: bool) -> str:
    kind = one.limit.kind
    if one.now is None or one.margin is None or one.chance_over is None:
        return _not_told(one.limit, one.least, words, units, no_figure)
    key = ("past" if one.margin < 0 else "room") + ("_short" if short else "")
    return words.say("limits", key).format(
        name=words.say("limits", kind),
        now=_figure(kind, one.now.value, units),
        limit=_figure(kind, one.least, units),
        margin=_with_error(kind, abs(one.margin), one.error or 0.0, units),
        chance=chance_in_words(one.chance_over),
    )


def _not_told(limit: Limit, least: float | None, words: VerdictWords, units: Units, no_figure: bool) -> str:
    if no_figure and limit.table is not None:
        return words.say("limits", "no_figure").format(name=words.say("limits", limit.kind))
    asks = _figure(limit.kind, least, units) if least is not None else words.say("limits", "by_table")
    return words.say("limits", "not_told").format(name=words.say("limits", limit.kind), limit=asks)


def _figure(kind: str, value: float | None, units: Units) -> str:
    """A figure as short as a row needs it: in the household's unit alone."""
    if value is None:
        return "?"
    if kind in SHARES:
        return f"{round(100 * value)}%"
    if kind == "years":
        return f"{value:.1f} years".replace(".0 ", " ")
    short = show_length(abs(value), units).partition(" (")[0]
    return short if value >= 0 else f"−{short}"


def _with_error(kind: str, value: float, error: float, units: Units) -> str:
    if kind in SHARES:
        return f"{round(100 * value)} ± {max(round(100 * error), 1)}%"
    return _figure(kind, value, units) if kind == "years" else show_length_error(value, error, units)
