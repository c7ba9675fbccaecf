"""When will it be due? Dates on which a tank crosses its limits, learned from the household's own readings."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property
from typing import Literal, NamedTuple

from selfcheck.domain.accumulation import Packing, packing
from selfcheck.domain.anchor import Anchor, Bend
from selfcheck.domain.check import Check, PumpOut, standing
from selfcheck.domain.crossing import Thresholds
from selfcheck.domain.date_search import Ladder, ladder, reaches
from selfcheck.domain.evidence import evidence, looked
from selfcheck.domain.findings import Dates
from selfcheck.domain.history import (
    Course,
    Episode,
    History,
    after,
    course,
    history,
    living_from,
    years_between,
)
from selfcheck.domain.household import Disposal, Household, Occupancy, Tank, can_be
from selfcheck.domain.layers import Layers
from selfcheck.domain.likelihood import Grid, Seen
from selfcheck.domain.limits import Limit
from selfcheck.domain.posterior import Posterior
from selfcheck.domain.shapes import Vessel, compartments
from selfcheck.domain.unknown_start import placed

HORIZON_YEARS = 40.0
#: Chances whose dates are given.
SHARES = (0.1, 0.5, 0.9)
#: Chance of being over at which to look again.
LOOK_AT = 0.10
#: A size more doubtful than this tells nothing more: such facts contradict each other (our choice).
MOST_SIZE_ERROR = 1.0
#: Checks that count, newest first; older ones hardly add to it (our choice).
CHECKS_USED = 60

LookReason = Literal["twelve_months", "chance_of_over"]


class Band(NamedTuple):
    """10, 50 and 90 % of both layers' thickness [m] on one day."""

    day: date
    sludge: tuple[float, float, float]
    scum: tuple[float, float, float]


@dataclass(frozen=True)
class Forecast:
    """What is to be expected of one tank. Made by `forecast`; every question below is answered from the same posterior.

    `anchor`: the last whole readings, where everything ahead starts; None where the rates alone speak (see `read_on`).
    `packing` is of the compartment that the inlet opens into: all solids are taken to settle there (common practice:
    most do), so that dates err to the early side.
    `people` is the course of the household from the last pump-out on, its last entry going on for ever.
    `sludge_readings` and `scum_readings` count what the household's own rate rests on; with none it is the published
    rates alone. `assumed` names what was assumed: `pump_out_date`, `residue`, `people`.
    """

    today: date
    tank: Tank
    vessel: Vessel
    past: History
    people: Course
    residue_m: float
    occupancy: tuple[Occupancy, ...]
    last_look: date | None
    evidence: tuple[tuple[Seen, ...], tuple[Seen, ...]] = field(repr=False)
    posterior: Posterior = field(repr=False)
    packing: Packing = field(repr=False)
    anchor: Anchor | None = field(default=None, repr=False)

    @property
    def assumed(self) -> tuple[str, ...]:
        """Ids of what had to be assumed about the past."""
        return self.past.assumed

    @property
    def sludge_readings(self) -> int:
        """How many readings of the sludge the household's own rate rests on."""
        return len(self.evidence[0])

    @property
    def scum_readings(self) -> int:
        """How many readings of the scum it rests on."""
        return len(self.evidence[1])

    @property
    def rests_on(self) -> Literal["readings", "published"]:
        """Whether the household's own readings had a say."""
        return "readings" if self.sludge_readings + self.scum_readings else "published"

    @cached_property
    def rate_m3(self) -> tuple[float, float, float]:
        """10, 50 and 90 % of the solids one person leaves in the first year after a pump-out [m³], without a
        disposal.
        """
        low, middle, high = (self.posterior.rate_quantile(share) for share in (0.1, 0.5, 0.9))
        return low, middle, high

    @cached_property
    def litres_per_person_year(self) -> float:
        """The household's own rate: litres of sludge and scum a person leaves in the first year after a pump-out
        (median).
        """
        return 1000.0 * self.posterior.rate_quantile(0.5)

    @cached_property
    def sludge_m_per_year(self) -> float:
        """How much the sludge is expected to rise over the twelve months from today [m] (difference of medians)."""
        now, later = self.bands([self.today, after(self.today, 1.0)])
        return later.sludge[1] - now.sludge[1]

    @cached_property
    def scum_m_per_year(self) -> float:
        """How much the scum is expected to thicken over the twelve months from today [m] (difference of medians)."""
        now, later = self.bands([self.today, after(self.today, 1.0)])
        return later.scum[1] - now.scum[1]

    @cached_property
    def _bends(self) -> dict[tuple[Limit, ...], Bend | None]:
        return {}

    @cached_property
    def _thresholds(self) -> Thresholds:
        return Thresholds(self.posterior, self.tank, self.vessel, self.packing, self.residue_m)

    def read_on(self, day: date, *layers: Layers) -> Forecast:
        """The same, starting at the layers that were read on a day since the last pump-out, in each compartment."""
        return replace(self, anchor=Anchor(day, layers))

    def chance_over(self, limits: Sequence[Limit], day: date) -> float:
        """Chance that at least one of the limits has been crossed by that day, since the last pump-out."""
        bend = self._bend(limits)
        t = years_between(self.people.start, day)
        own = self._crossed(limits, t)
        if bend is None or self._past_years(limits, t):
            return own
        return bend.chance(own, day)

    def due(self, limits: Sequence[Limit]) -> Dates:
        """10, 50 and 90 % dates on which the first of these limits is crossed; None beyond forty years from today.

        A date may lie in the past: then the tank is likely over already.
        """
        p10, p50, p90 = (self._when(limits, share) for share in SHARES)
        return Dates(p10, p50, p90)

    def look_again(self, limits: Sequence[Limit]) -> tuple[date, LookReason]:
        """The earlier of twelve months after the last look and the day the chance of being over reaches 10 %.

        The last look is the last check or pump-out on record, or today when there is none. Never before today.
        """
        yearly = _a_year_after(self.last_look or self.today)
        likely = self._when(limits, LOOK_AT)
        if likely is not None and likely < yearly:
            return max(likely, self.today), "chance_of_over"
        return max(yearly, self.today), "twelve_months"

    def bands(self, days: Sequence[date]) -> list[Band]:
        """Both layers' thickness on each day, for a picture: what the rates say, for past spans between pump-outs as
        well.

        A day before the first known pump-out has no layers.
        """
        return [self._band(day) for day in days]

    def what_if(
        self,
        *,
        people: float | None = None,
        months_per_year: float | None = None,
        disposal: Disposal | None = None,
        vessel: Vessel | None = None,
        tank: Tank | None = None,
        pumped_on: date | None = None,
        residue_m: float = 0.0,
    ) -> Forecast:
        """The same household from today on with something changed; what is None stays as it is.

        `pumped_on` empties the tank on that day (today or later) but for `residue_m`; until then things go on as they
        are.
        """
        occupancy = living_from(
            self.occupancy, self.people, self.today, people=people, months_per_year=months_per_year, disposal=disposal
        )
        start = pumped_on or self.people.start
        after_all, of = vessel or self.vessel, tank or self.tank
        return replace(
            self,
            anchor=self.anchor if tank is None and vessel is None and pumped_on is None else None,
            tank=of,
            vessel=after_all,
            packing=self.packing if tank is None and vessel is None else packing(compartments(of, after_all)[0]),
            occupancy=occupancy,
            people=course(occupancy, start),
            residue_m=residue_m if pumped_on else self.residue_m,
            last_look=pumped_on or self.last_look,
        )

    def _band(self, day: date) -> Band:
        span: Episode | None = self.past.episode_of(day)
        if span is None or day > self.today or span is self.past.current:
            people, residue_m = self.people, self.residue_m
        else:
            people, residue_m = span.course, span.residue_m
        growth = self.posterior.growth(people, years_between(people.start, day))
        residue = self.packing.sludge_m3(residue_m)
        sludge = [self.packing.sludge_m(residue + v) for v in self._gained(self.posterior.sludge, growth, SHARES)]
        scum = [self.packing.scum_m(v) for v in self._gained(self.posterior.scum, growth, SHARES)]
        return Band(day, (sludge[0], sludge[1], sludge[2]), (scum[0], scum[1], scum[2]))

    def _gained(self, layer: Grid, growth: Grid, shares: Sequence[float]) -> list[float]:
        return self.posterior.volume_quantiles(layer, growth, shares)

    def _growth(self, t: float) -> Grid:
        """Log growth for each power up to time t: the most it has been, since what was over once counts as over."""
        now = self.posterior.growth(self.people, t)
        for knot in self.people.times[1:]:
            if knot < t:
                now = list(map(max, now, self.posterior.growth(self.people, knot)))
        return now

    def _bend(self, limits: Sequence[Limit]) -> Bend | None:
        """How the last whole readings bend what the rates say of these limits."""
        if self.anchor is None:
            return None
        wanted = tuple(limits)
        if wanted not in self._bends:
            self._bends[wanted] = self.anchor.bend(
                wanted, self.vessel, lambda day: self._grown_over(wanted, years_between(self.people.start, day))
            )
        return self._bends[wanted]

    def _past_years(self, limits: Sequence[Limit], t: float) -> bool:
        t += self._longer
        return any(limit.kind == "years" and limit.value is not None and t >= limit.value for limit in limits)

    @cached_property
    def _longer(self) -> float:
        """Years by which the pump-out may lie further back than where readings put it; limits in years go by that."""
        earliest, begun = self.past.current.earliest, self.people.start
        if earliest is None or begun != self.past.current.start:  # known, or pumped since
            return 0.0
        return years_between(earliest, begun)

    def _crossed(self, limits: Sequence[Limit], t: float) -> float:
        return 1.0 if self._past_years(limits, t) else self._grown_over(limits, t)

    def _grown_over(self, limits: Sequence[Limit], t: float) -> float:
        """Chance by the rates alone that the layers have grown past one of the limits."""
        return 0.0 if t <= 0.0 else min(self._thresholds.order(limits).below(self._growth(t)), 1.0)

    def _when(self, limits: Sequence[Limit], share: float) -> date | None:
        """The day by which the chance of being over reaches `share`."""
        most = years_between(self.people.start, self.today) + HORIZON_YEARS
        fixed = min((limit.value for limit in limits if limit.kind == "years" and limit.value), default=math.inf)
        fixed -= self._longer
        order = self._thresholds.order(limits)
        bend = self._bend(limits)
        if bend is not None:
            share = bend.share(share)
        found = min(reaches(order, self._ladder, self._growth, share), fixed)
        return after(self.people.start, found) if found <= most else None

    @cached_property
    def _ladder(self) -> Ladder:
        return ladder(years_between(self.people.start, self.today) + HORIZON_YEARS, self._growth)


def forecast(
    household: Household,
    tank: Tank,
    vessel: Vessel,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    today: date,
) -> Forecast:
    """Learn a household's rates from its record and look ahead from `today`.

    `checks`: of any tank, in any order, corrections among them; those of this tank up to `today` that stand are used.
    Readings before an earlier pump-out count too: the household is the same. Nothing is raised; what was missing and
    assumed is named in `Forecast.assumed`. Method and figures: `accumulation`, `posterior`.
    """
    mine = [one for one in standing(list(checks)) if one.tank == tank.id and can_be(one.on) and one.on <= today]
    looks = [one.on for one in mine if looked(one)]
    past = history(household, pump_outs, today, tank=tank.id, first_check=looks[0] if looks else None)
    packed = packing(compartments(tank, vessel)[0])
    used = [one for one in mine if looked(one)][-CHECKS_USED:]
    past = placed(past, used, packed)
    read = evidence(used, past, packed)
    current = past.current
    known = [current.start] if current.start_known else []
    return Forecast(
        today=today,
        tank=tank,
        vessel=vessel,
        past=past,
        people=current.course,
        residue_m=current.residue_m,
        occupancy=tuple(sorted((one for one in household.occupancy if can_be(one.from_)), key=lambda one: one.from_)),
        last_look=max([*known, *looks], default=None),
        evidence=read,
        posterior=Posterior(*read, min(vessel.relative_error, MOST_SIZE_ERROR)),
        packing=packed,
    )


def _a_year_after(day: date) -> date:
    if day.year == date.max.year:
        return date.max
    try:
        return day.replace(year=day.year + 1)
    except ValueError:  # 29 February
        return day.replace(year=day.year + 1, day=28)
