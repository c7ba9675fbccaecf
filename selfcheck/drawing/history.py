"""Both layers over the years, described once: readings, pump-outs, people at home, and what is likely from here on.

The picture is the tank itself drawn out in time: sludge stands on the floor, the crust hangs from the water line, and
what lies between is the clear zone. Heights in metres above the floor.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import TYPE_CHECKING

from selfcheck.domain.check import Reading, Readings, standing
from selfcheck.domain.findings import Dates
from selfcheck.domain.forecast import Band
from selfcheck.domain.history import counted
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import stand
from selfcheck.domain.showing import show_date, show_day
from selfcheck.domain.uncertain import Measure
from selfcheck.drawing.lengths import Units, number, unit, with_error
from selfcheck.drawing.section_picture import SHARE_ABOVE_WATER, LimitLine, describe_limits
from selfcheck.drawing.words import Words, month, say

if TYPE_CHECKING:
    from selfcheck.domain.check import Check, PumpOut
    from selfcheck.domain.verdict import Judgement
    from selfcheck.drawing.spans import Line

SAMPLES = 160  # days at which the likely layers are asked for
#: Readings drawn; of a longer record as many are picked, evenly, with the first and the newest. Our choice.
MOST_DRAWN = 100
MOST_TOLD = 30  # readings told in words, picked in the same way. Our choice
_LEAST_AHEAD, _MOST_AHEAD = 730, 15 * 365  # days shown after today. Our choice


@dataclass(frozen=True, slots=True)
class DatedReading:
    """What one check read, thickness and standard error [m]; None was not read."""

    on: date
    sludge: Measure | None
    scum: Measure | None


@dataclass(frozen=True, slots=True)
class HistoryPicture:
    """What is drawn, from day `first` to day `last`.

    `bands`: both layers' likely thickness (10, 50, 90 %) on days in order, from the first known pump-out
    on. `people`: from which day on how many were at home. `due`: 10, 50, 90 % days of the first crossing.
    `emptied_within`: first and last day that each pump-out may have been, by its words. `left_out`: readings not drawn.
    """

    first: date
    today: date
    last: date
    liquid_depth: float
    readings: tuple[DatedReading, ...]
    emptied: tuple[date, ...]
    emptied_within: tuple[tuple[date, date], ...]
    people: tuple[tuple[date, float], ...]
    bands: tuple[Band, ...]
    due: Dates
    limits: tuple[LimitLine, ...]
    words: Words
    left_out: int = 0

    def share(self, day: date) -> float:
        """Where a day lies, from 0 at `first` to 1 at `last`."""
        return (day - self.first).days / max(1, (self.last - self.first).days)

    def band(self, day: date) -> Band | None:
        """The likely layers as of the last sampled day up to this one."""
        place = bisect_right(self.bands, day, key=lambda band: band.day)
        return self.bands[place - 1] if place else None

    def crust_edge(self, thickness: float) -> float:
        """Height of the underside of a crust; two thirds of it hang below the water line (common practice)."""
        return self.liquid_depth - thickness * (1 - SHARE_ABOVE_WATER)


def describe(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: Words
) -> HistoryPicture:
    """The history of the judged tank and what is likely from the day of the judgement on.

    `checks`, `pump_outs`: of any tank; those of this one up to that day are drawn, without what a correction replaced.
    """
    today, tank, vessel, ahead = judgement.today, judgement.tank, judgement.vessel, judgement.forecast
    mine = [one for one in standing(list(checks)) if one.tank == tank.id and one.on <= today]
    readings = []
    for check in mine:
        read = layers(tank, vessel, check.seen.readings, check.seen.level)
        if read.sludge is not None or read.scum is not None:
            readings.append(DatedReading(check.on, read.sludge, read.scum))
    pumped = counted(pump_outs, tank.id, today)
    emptied = tuple(one.on for one in pumped)
    begun = [*emptied[:1], *(one.on for one in readings[:1])]
    first = min(begun, default=today - timedelta(days=365))
    last = _last(today, judgement.due)
    days = {first + (last - first) * step / (SAMPLES - 1) for step in range(SAMPLES)}
    days |= {today, *emptied, *(day + timedelta(days=1) for day in emptied)}
    known_from = emptied[0] if emptied else ahead.people.start  # nobody can tell the layers of the time before
    people = [(max(one.from_, first), one.people) for one in ahead.occupancy if one.from_ <= last]
    return HistoryPicture(
        first=first,
        today=today,
        last=last,
        liquid_depth=vessel.liquid_depth_m,
        readings=_thinned(readings, MOST_DRAWN),
        emptied=emptied,
        emptied_within=tuple(one.span for one in pumped),
        people=tuple(dict(people).items()),
        bands=tuple(ahead.bands(sorted(day for day in days if day >= known_from))),
        due=judgement.due,
        limits=_limits(judgement, words),
        words=words,
        left_out=max(0, len(readings) - MOST_DRAWN),
    )


def thinner(picture: HistoryPicture, most: int) -> HistoryPicture:
    """The same with `most` readings at most, where there is no room to tell more of them apart."""
    kept = _thinned(picture.readings, max(2, most))
    return replace(picture, readings=kept, left_out=picture.left_out + len(picture.readings) - len(kept))


def _thinned(readings: Sequence[DatedReading], most: int) -> tuple[DatedReading, ...]:
    """As many as can be told apart in a picture, evenly picked, with the first and the newest."""
    if len(readings) <= most:
        return tuple(readings)
    return tuple(readings[round(at * (len(readings) - 1) / (most - 1))] for at in range(most))


def reading_name(picture: HistoryPicture, name: str) -> str:
    """What the mark of a reading is called: `reading_mark`, or `reading_short` where room is scarce; where not all are
    drawn, it says how many are.
    """
    said = say(picture.words, name)
    if not picture.left_out:
        return said
    drawn = len(picture.readings)
    return f"{said} {say(picture.words, 'some_drawn', drawn=str(drawn), all=str(drawn + picture.left_out))}"


def _limits(judgement: Judgement, words: Words) -> tuple[LimitLine, ...]:
    """As heights; where nothing was read, those of the tank standing full."""
    tank, vessel = judgement.tank, judgement.vessel
    if judgement.layers is not None:
        return describe_limits(vessel, judgement.layers, judgement.standings, words)
    full = layers(tank, vessel, Readings(liquid_depth=[Reading(m=vessel.liquid_depth_m)]))
    return describe_limits(vessel, full, stand(judgement.rules, full, vessel), words)


def _last(today: date, due: Dates) -> date:
    """A little beyond the latest day that it may be due, within what can be drawn."""
    latest = max((day for day in (due.p10, due.p50, due.p90) if day is not None), default=today)
    ahead = min(max((latest - today).days * 1.08, _LEAST_AHEAD), _MOST_AHEAD)
    return today + timedelta(days=round(ahead))


def count(people: float) -> str:
    """`3` or `2.5`."""
    return f"{people:g}"


def due_lines(picture: HistoryPicture) -> list[str]:
    """When it is due, early, likely and late, as sentences."""
    due, words = picture.due, picture.words
    if due.p10 is None:
        return [say(words, "due_never")]
    lines = [say(words, "due_likely", middle=month(due.p50))] if due.p50 is not None else []
    lines.append(say(words, "due_early", early=month(due.p10)))
    lines.append(say(words, "due_late", late=month(due.p90)) if due.p90 is not None else say(words, "due_open"))
    return lines


def as_words(picture: HistoryPicture, units: Units = "us") -> list[str]:
    """The history for people who hear it: what happened in order of the days, then the limits, then what is likely."""
    picture = thinner(picture, MOST_TOLD)
    words = picture.words
    about = say(words, "about")

    def told(metres: float) -> str:
        return f"{number(metres, units)} {unit(units)}"

    span = say(words, "span", first=month(picture.first), last=month(picture.last), depth=told(picture.liquid_depth))
    happened: list[tuple[date, int, str]] = []
    for one in picture.readings:
        parts = [
            say(words, f"{name}_is", length=with_error(measure.value, measure.error, units, about))
            for name, measure in (("crust", one.scum), ("sludge", one.sludge))
            if measure is not None
        ]
        day = show_day(one.on, units)
        happened.append((one.on, 0, say(words, "reading", day=day, layers=", ".join(parts)) + "."))
    pumped = zip(picture.emptied, picture.emptied_within, strict=True)
    happened += [(day, 1, say(words, "pumped_on", day=show_date(day, units, *within)) + ".") for day, within in pumped]
    happened += [
        (day, 2, say(words, "people_from", day=month(day), count=count(people)) + ".") for day, people in picture.people
    ]
    lines = [span, *_some_told(picture)]
    lines += [text for _, _, text in sorted(happened)]
    lines += [say(words, "limit", name=one.name, length=told(one.height)) + "." for one in picture.limits]
    lines += [_likely(picture, day, told) for day in _years_ahead(picture)]
    return [*lines, *due_lines(picture)]


def _some_told(picture: HistoryPicture) -> list[str]:
    if not picture.left_out:
        return []
    told = len(picture.readings)
    return [say(picture.words, "some_told", told=str(told), all=str(told + picture.left_out))]


def _years_ahead(picture: HistoryPicture) -> list[date]:
    return [day for step in range(1, 16) if (day := picture.today + timedelta(days=365 * step)) <= picture.last]


def _likely(picture: HistoryPicture, day: date, told: Callable[[float], str]) -> str:
    band = picture.band(day)
    assert band is not None
    crust_low, crust, crust_high = map(told, band.scum)
    sludge_low, sludge, sludge_high = map(told, band.sludge)
    text = say(
        picture.words, "ahead_on", day=month(day), crust=crust, crust_low=crust_low, crust_high=crust_high,
        sludge=sludge, sludge_low=sludge_low, sludge_high=sludge_high,
    )  # fmt: skip
    return text + "."


def as_lines(picture: HistoryPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The history as at most `height` lines of exactly `width` cells."""
    from selfcheck.drawing.history_lines import as_lines as draw

    return draw(picture, width, height, units)


def as_svg(picture: HistoryPicture, units: Units = "us", prefix: str = "history") -> str:
    """The history as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    from selfcheck.drawing.history_svg import as_svg as draw

    return draw(picture, units, prefix)
