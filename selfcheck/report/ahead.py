"""The page that looks ahead: dates, own rate, when to look again and why, what is assumed, what a change would do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import timedelta

from selfcheck.domain.conversions import FOOT, GALLON
from selfcheck.domain.distance_table import DistanceTable
from selfcheck.domain.findings import Dates, Finding
from selfcheck.domain.flow import LEAST_DAYS, Flow
from selfcheck.domain.forecast import HORIZON_YEARS
from selfcheck.domain.history import DAYS_A_YEAR
from selfcheck.domain.interval import table_interval_years
from selfcheck.domain.limits import Limit
from selfcheck.domain.showing import show_length, show_volume
from selfcheck.domain.sources import Source
from selfcheck.domain.unjudged import has_no_figure
from selfcheck.domain.verdict import Judgement, RuleRow
from selfcheck.domain.what_if import Compared
from selfcheck.report.ahead_changed import change_headline, comparison
from selfcheck.report.ahead_days import Telling
from selfcheck.report.parts import PageWords, Part, PartedPage, part
from selfcheck.report.reckoned import OUTLET_SOURCE
from selfcheck.text import clean

#: Dates further apart than this are told as "far apart" (our choice), in years.
WIDE_YEARS = 3.0


@dataclass(frozen=True, slots=True)
class Water:
    """How much water goes through: the flow, days of rest in the clear zone where it can be told, and leaks found."""

    flow: Flow
    rest_days: float | None
    leaks: tuple[Finding, ...]


def ahead_page(
    judgement: Judgement,
    limits: Sequence[RuleRow],
    words: PageWords,
    sources: Mapping[str, Source],
    *,
    compared: Compared | None = None,
    water: Water | None = None,
    rule_rows: Sequence[str] = (),
    always: Sequence[str] = (),
) -> PartedPage:
    """The page. `limits`: the deciding rule set taken apart, one row for each limit. `rule_rows`: all rule sets, as the
    verdict tells them. ContentProblem: words missing.
    """
    tell = _AsItIs(judgement, words, sources, judgement.household.units)
    as_it_is = (
        *(tell.water(water) if water is not None else ()),
        *tell.dates(limits),
        *tell.look_again(),
        *tell.sureness(),
        *tell.rate(),
        *tell.assumed(),
        *tell.second_opinion(),
        *part(words("title", "by_rule"), [*rule_rows, words("rules", "authority"), words("rules", "choose")]),
    )
    if compared is None or compared.change.nothing:
        first = comparison(tell, compared) if compared is not None else ()
        return PartedPage(tell.headline(), (*first, *as_it_is), always=tuple(always))
    old = [one._replace(title=words("title", "as_it_is", title=one.title)) for one in as_it_is]
    return PartedPage(change_headline(tell, compared), (*comparison(tell, compared), *old), always=tuple(always))


def nothing_ahead(
    judgement: Judgement,
    words: PageWords,
    sources: Mapping[str, Source],
    water: Water | None = None,
    always: Sequence[str] = (),
) -> PartedPage:
    """The page where nothing is on record to look ahead from: the rule it will go by, and what the meter says."""
    tell = _AsItIs(judgement, words, sources, judgement.household.units)
    lines = [words("dates", "rule", title=judgement.rules.title), words("rules", "authority")]
    parts = (*(tell.water(water) if water is not None else ()), *part(words("title", "by_rule"), lines))
    return PartedPage(words("headline", "nothing"), parts, always=tuple(always))


class _AsItIs(Telling):
    """What is said of the tank as the record has it."""

    def headline(self) -> str:
        due, judged = self.judgement.due, self.judgement
        if any(has_no_figure(limit, judged.vessel) for limit in judged.rules.limits) and not self.reached(due.p50):
            return self.words("headline", "no_figure")
        if due.p50 is None:
            return self.words("headline", "open", years=f"{HORIZON_YEARS:.0f}")
        name = "past" if self.reached(due.p50) else "ahead"
        return self.words("headline", name, day=self.day(due.p50))

    def dates(self, rows: Sequence[RuleRow]) -> tuple[Part, ...]:
        say = self.words
        lines = [say("dates", "rule", title=self.judgement.rules.title)]
        if self.judgement.others:
            lines.insert(0, say("dates", "tank", tank=clean(self.judgement.tank.id, 60)))
        without = [row for row in rows if row.no_figure]
        if without:
            lines.append(say("dates", "no_figure" if len(without) < len(rows) else "none"))
        if not without or len(without) < len(rows):
            lines += self.three(self.judgement.due)
        if len(rows) > 1 or without:
            lines += [self.limit(row.rule_set.limits[0], row.due, row.no_figure) for row in rows]
        return part(say("title", "dates"), lines)

    def three(self, due: Dates) -> list[str]:
        names = ("p10", "p50", "p90")
        years = f"{HORIZON_YEARS:.0f}"
        kinds = ["_beyond" if day is None else "_reached" if self.reached(day) else "" for day in due]
        return [
            self.words("dates", f"{name}{kind}", day=self.when(day), years=years)
            for name, kind, day in zip(names, kinds, due, strict=True)
        ]

    def limit(self, limit: Limit, due: Dates, no_figure: bool) -> str:
        name = self.words("limits", limit.kind)
        if no_figure and limit.table is not None:
            return self.off_table(name, limit.table)
        days = {"p10": self.when(due.p10), "p50": self.around(due.p50), "p90": self.when(due.p90)}
        return self.words("limits", "row", limit=name, **days)

    def off_table(self, name: str, table: DistanceTable) -> str:
        """Why a table has no figure for this tank: the water is too deep for it, or the tank too small."""
        body, units = self.judgement.vessel, self.units
        if table.too_deep(body.liquid_depth_m):
            edge, own = (show_length(one, units) for one in (table.liquid_depth_feet[-1] * FOOT, body.liquid_depth_m))
            return self.words("limits", "too_deep", limit=name, edge=edge, own=own)
        edge, own = (show_volume(one, units) for one in (table.rows[0].gallons * GALLON, body.full_m3))
        return self.words("limits", "too_small", limit=name, edge=edge, own=own)

    def look_again(self) -> tuple[Part, ...]:
        found = self.judgement
        lines = [self.words("look", found.look_reason, day=self.day(found.look_again))]
        if found.look_again <= found.today:
            lines = [self.words("look", "now")]
        return part(self.words("title", "look"), lines)

    def sureness(self) -> tuple[Part, ...]:
        say, ahead, due = self.words, self.judgement.forecast, self.judgement.due
        readings = ahead.sludge_readings
        lines = [say("sure", "readings", count=str(readings)) if readings > 1 else ""]
        lines.append(say("sure", "one_reading") if readings == 1 else "")
        lines.append(say("sure", "no_reading") if readings == 0 else "")
        if due.p10 is not None and due.p90 is not None:
            years = (due.p90 - due.p10).days / DAYS_A_YEAR
            name = "wide" if years > WIDE_YEARS else "narrow"
            lines.append(say("sure", name, span=self.span(12.0 * years)))
        else:
            lines.append(say("sure", "open"))
        lines.append(say("sure", "next"))
        return part(say("title", "sure"), lines)

    def rate(self) -> tuple[Part, ...]:
        say, ahead = self.words, self.judgement.forecast
        low, middle, high = (show_volume(one, self.units) for one in ahead.rate_m3)
        lines = [
            say("rate", ahead.rests_on, litres=middle),
            say("rate", "range", low=low, high=high),
            say("rate", "sludge", inches=show_length(max(ahead.sludge_m_per_year, 0.0), self.units)),
            say("rate", "scum", inches=show_length(max(ahead.scum_m_per_year, 0.0), self.units)),
        ]
        if ahead.rests_on == "published":
            lines += [self.source(one) for one in ("gray-1995", "philip-1993")]
        return part(say("title", "rate"), lines)

    def assumed(self) -> tuple[Part, ...]:
        found, say = self.judgement, self.words
        begun, names = found.forecast.people.start, {}
        start = self.day(begun)
        if found.forecast.past.placed:
            start, names = str(begun.year), {"pump_out_date": "pump_out_placed"}
        lines = [say("assumed", names.get(ident, ident), start=start) for ident in found.forecast.assumed]
        if found.vessel.basis in ("volume", "bedrooms", "default"):
            size, error = show_volume(found.vessel.full_m3, self.units), f"{100 * found.vessel.relative_error:.0f}"
            source = self.sources.get(found.vessel.table)
            table = say.named(source) if source is not None else ""
            lines.append(say("assumed", f"size_{found.vessel.basis}", size=size, error=error, table=table))
        if found.tank.outlet_bottom_below_surface_m is None and (found.layers is None or found.layers.outlet_assumed):
            source = self.sources.get(OUTLET_SOURCE)
            lines.append(say("assumed", "outlet", source=source.title if source is not None else ""))
        if (found.tank.compartments or 1) > 1:
            lines.append(say("assumed", "parted"))
        if found.tank.follows is not None:
            lines.append(say("assumed", "follows"))
        if not lines:
            lines = [say("assumed", "nothing")]
        return part(say("title", "assumed"), lines)

    def second_opinion(self) -> tuple[Part, ...]:
        """The published interval table, with its date counted from the last pump-out where that is known."""
        found, say = self.judgement, self.words
        people = found.forecast.people.people[-1]
        spells = [one for one in found.forecast.occupancy if one.from_ <= found.today]
        if people <= 0:
            return ()
        at_home = people if not spells else spells[-1].people * spells[-1].months_per_year / 12.0
        if at_home <= 0:
            return ()
        years = table_interval_years(found.vessel.full_m3, at_home, spells[-1].disposal if spells else None)
        size = show_volume(found.vessel.full_m3, self.units)
        name = "years_one" if at_home == 1 else "years"
        lines = [say("table", name, years=f"{years:.1f}", size=size, people=f"{at_home:.3g}")]
        if "pump_out_date" not in found.forecast.assumed:
            start = found.forecast.people.start
            day = start + timedelta(days=years * DAYS_A_YEAR)
            lines.append(say("table", "day_reached" if self.reached(day) else "day", day=self.day(day)))
        lines += [say("table", "fitted"), self.source("interval-table")]
        return part(say("title", "table"), lines)

    def water(self, water: Water) -> tuple[Part, ...]:
        say, litres = self.words, water.flow.litres_per_day
        use = show_volume(litres / 1000.0, self.units)
        lines = [say("water", water.flow.basis, litres=use)]
        if water.flow.basis == "people":
            lines.append(say("water", "source_people"))
        if water.rest_days is not None:
            name = "rest_short" if water.rest_days < LEAST_DAYS else "rest"
            lines += [say("water", name, days=f"{water.rest_days:.1f}"), self.source("epa-832-f-00-079")]
        else:
            lines.append(say("water", "rest_unknown"))
        for one in water.leaks:
            lines.append(say("water", one.id))
        return part(say("title", "water"), lines)
