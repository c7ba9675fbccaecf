"""Who lived there since the tank was last emptied: person-years, pump-outs and the spans between them.

Times are years of 365.25 days. A person who is away part of the year counts for the months at home; a food waste
disposal makes one person count for more (see `DISPOSAL`).
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from datetime import date, timedelta
from typing import NamedTuple

from selfcheck.domain.check import PumpOut
from selfcheck.domain.household import Disposal, Household, Occupancy, can_be

DAYS_A_YEAR = 365.25
#: How much more solids a person leaves with a food waste disposal. Daily: the ±20 % printed with the published table of
#: pumping intervals (source: interval-table). Sometimes: half of that (our choice).
DISPOSAL: dict[Disposal | None, float] = {"none": 1.0, None: 1.0, "sometimes": 1.1, "daily": 1.2}
#: People assumed when nobody told how many live there and the bedrooms are not known either (our choice).
PEOPLE_ASSUMED = 3.0
#: Years since the last pump-out assumed when neither a pump-out nor a household is on record: the long end of what the
#: trade sees on average, 5 to 8 years (common practice), so that the assumed date errs to the early side.
YEARS_ASSUMED = 8.0


def years_between(start: date, end: date) -> float:
    """Years from `start` to `end` [yr]; negative when `end` is earlier."""
    return (end - start).days / DAYS_A_YEAR


def after(start: date, years: float) -> date:
    """The day `years` after `start`, to the nearest day; the last day a calendar knows when it lies beyond that."""
    return days_after(start, years * DAYS_A_YEAR)


def days_after(start: date, days: float) -> date:
    """The day that many days after `start` (before it where negative), no further than a calendar knows days."""
    try:
        return start + timedelta(days=round(days))
    except OverflowError:
        return date.max if days > 0 else date.min


def weight(occupancy: Occupancy) -> float:
    """How many year-round people without a disposal this household counts for, from 0 up.

    Months at home count by their share of the year. A disposal used daily counts a fifth more (source: interval-table,
    read in a reprint), one used sometimes half of that (our choice).
    """
    return occupancy.people * occupancy.months_per_year / 12.0 * DISPOSAL[occupancy.disposal]


class Course(NamedTuple):
    """Person-years since `start`: piecewise linear, with a knot wherever the household changed.

    `times` [yr since start] begins with 0; `totals` are the person-years at each knot; `people` counts from that knot
    on.
    """

    start: date
    times: tuple[float, ...]
    totals: tuple[float, ...]
    people: tuple[float, ...]

    def person_years(self, t: float) -> float:
        """Person-years gathered by `t` years after the start; 0 before it."""
        if t <= 0.0:
            return 0.0
        at = bisect_right(self.times, t) - 1
        return self.totals[at] + self.people[at] * (t - self.times[at])

    def since(self, start: date) -> Course:
        """The same household counted from a later day on."""
        t = years_between(self.start, start)
        at = max(bisect_right(self.times, t) - 1, 0)
        times = (0.0, *(one - t for one in self.times[at + 1 :]))
        totals = (0.0, *(one - self.person_years(t) for one in self.totals[at + 1 :]))
        return Course(start, times, totals, self.people[at:])


def course(occupancy: Sequence[Occupancy], start: date, *, people: float = PEOPLE_ASSUMED) -> Course:
    """Person-years from `start` on. The last household goes on for ever; the first one is taken to have been there
    before.

    `people` stands in when no household is on record.
    """
    spells = sorted(occupancy, key=lambda one: one.from_)
    if not spells:
        return Course(start, (0.0,), (0.0,), (people,))
    begun = max((i for i, one in enumerate(spells) if one.from_ <= start), default=0)
    times, totals, counts = [0.0], [0.0], [weight(spells[begun])]
    for one in spells[begun + 1 :]:
        t = years_between(start, one.from_)
        total = totals[-1] + counts[-1] * (t - times[-1])
        if t == times[-1]:  # two entries on one day: the later one in the file holds
            counts[-1] = weight(one)
            continue
        times.append(t)
        totals.append(total)
        counts.append(weight(one))
    return Course(start, tuple(times), tuple(totals), tuple(counts))


def living_from(
    occupancy: tuple[Occupancy, ...],
    so_far: Course,
    today: date,
    *,
    people: float | None = None,
    months_per_year: float | None = None,
    disposal: Disposal | None = None,
) -> tuple[Occupancy, ...]:
    """Who lives there with something changed from today on; what is None, and the years before, stay as they were.

    `so_far`: the course that stands in where no household is on record.
    """
    last = occupancy[-1] if occupancy else Occupancy(from_=so_far.start, people=so_far.people[-1])
    wanted = {"people": people, "months_per_year": months_per_year, "disposal": disposal}
    told = {name: value for name, value in wanted.items() if value is not None}
    if not told:
        return occupancy or (last,)
    before = [one for one in occupancy if one.from_ < today]
    if not before:  # somebody was there before today, too
        before = [last.model_copy(update={"from_": min(so_far.start, today)})]
    return (*before, last.model_copy(update={"from_": today, **told}))


class Episode(NamedTuple):
    """One span between pump-outs. `end` is None for the present one; `residue_m` is the sludge left on the floor at
    its start. `start_error` [yr] and `earliest`: of a start put where readings make it likely (`unknown_start`).
    """

    course: Course
    end: date | None
    residue_m: float
    start_known: bool
    residue_known: bool
    start_error: float = 0.0
    earliest: date | None = None

    @property
    def start(self) -> date:
        """The day of the pump-out that began it, or the day assumed."""
        return self.course.start

    def holds(self, day: date) -> bool:
        """Whether a check of that day belongs here. A check on the day of a pump-out shows what was about to be
        pumped.
        """
        return self.start < day and (self.end is None or day <= self.end)


class History(NamedTuple):
    """All spans, oldest first; the last one is the present. `people_known` is False when the count of people is
    assumed.
    """

    episodes: tuple[Episode, ...]
    people_known: bool

    @property
    def current(self) -> Episode:
        """The span since the last pump-out."""
        return self.episodes[-1]

    @property
    def placed(self) -> bool:
        """Whether the present span begins where readings put it, for want of a known pump-out."""
        return self.current.earliest is not None

    @property
    def assumed(self) -> tuple[str, ...]:
        """Ids of what had to be assumed: `pump_out_date`, `residue`, `people`."""
        ids = []
        if not self.current.start_known:
            ids.append("pump_out_date")
        elif not self.current.residue_known:
            ids.append("residue")
        if not self.people_known:
            ids.append("people")
        return tuple(ids)

    def episode_of(self, day: date) -> Episode | None:
        """The span that holds this day; None before the first known one."""
        return next((one for one in reversed(self.episodes) if one.holds(day)), None)


def counted(pump_outs: Sequence[PumpOut], tank: str, today: date) -> list[PumpOut]:
    """The pump-outs of this tank up to today that no correction replaces, one a day, oldest first."""
    mine = [one for one in pump_outs if one.tank == tank and can_be(one.on) and one.on <= today]
    replaced = {one.replaces for one in mine if one.replaces}
    kept: dict[date, PumpOut] = {}
    for one in mine:
        if one.replaces or (one.id or one.on.isoformat()) not in replaced:
            earlier = kept.get(one.on)
            if earlier is None or not earlier.replaces or one.replaces:
                kept[one.on] = one
    return [kept[day] for day in sorted(kept)]


def history(
    household: Household,
    pump_outs: Sequence[PumpOut],
    today: date,
    *,
    tank: str = "main",
    first_check: date | None = None,
) -> History:
    """The spans between pump-outs of one tank, with the person-years of each.

    With no pump-out on record the present span is taken to begin when the first known household moved in, or
    `YEARS_ASSUMED` before the first check (or before today) when that is not known either; it is then flagged. That is
    the earliest it is taken to be: where somebody has read the layers, `unknown_start` puts it where they make it
    likely. Without readings it may err to the late side, and a forecast resting on it alone must not reassure.
    """
    # changes already planned count from their day; a day that cannot be meant is left out
    occupancy = [one for one in household.occupancy if can_be(one.from_)]
    people = float(household.bedrooms) if household.bedrooms else PEOPLE_ASSUMED
    emptied = counted(pump_outs, tank, today)
    episodes: list[Episode] = []
    for i, one in enumerate(emptied):
        episodes.append(
            Episode(
                course=course(occupancy, one.on, people=people),
                end=emptied[i + 1].on if i + 1 < len(emptied) else None,
                residue_m=one.sludge_left_m or 0.0,
                start_known=True,
                residue_known=one.sludge_left_m is not None,
            )
        )
    if not episodes:
        first = min((day for day in (first_check, today) if day is not None), default=today)
        past = [one.from_ for one in occupancy if one.from_ < first]
        begun = min(past) if past else days_after(first, -YEARS_ASSUMED * DAYS_A_YEAR)
        episodes.append(Episode(course(occupancy, begun, people=people), None, 0.0, False, False))
    return History(tuple(episodes), people_known=bool(occupancy))
