"""From the last readings on: how the layers that were really there grow, and when they cross a limit.

The forecast knows the household's rates; the last readings know the tank. Where there are good readings, they are taken
as they are and made to grow with the people at home, V(t) ∝ N̄(t)·t^b with b as in `accumulation`; their own error and
the error of the growth add in quadrature. Where there are none, the forecast speaks.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from math import hypot, inf, log

from selfcheck.domain.accumulation import POWER_MEAN, POWER_SPREAD
from selfcheck.domain.findings import Dates
from selfcheck.domain.forecast import HORIZON_YEARS, LOOK_AT, Forecast
from selfcheck.domain.history import DAYS_A_YEAR, after, years_between
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import Limit, Standing, chance_over, margin_of

#: How far the growth since a reading may be off, as a share of it: habits differ from year to year. Our choice.
GROWTH_ERROR = 0.30
#: Readings sooner than this after the last pump-out are too small to be carried on by themselves. Our choice, in years.
LEAST_YEARS = 0.5
_STEP = 0.01


@dataclass(frozen=True)
class Outlook:
    """What lies ahead of one tank: from `layers`, read on the day `on`, where there are any, else from the forecast."""

    ahead: Forecast
    layers: Layers | None = None
    on: date | None = None
    _margins: dict[Limit, tuple[Callable[[float, float], float], float]] = field(default_factory=dict)
    _states: dict[date, tuple[tuple[float, float], tuple[float, float], float]] = field(default_factory=dict)

    def chance_over(self, limits: Sequence[Limit], standings: Sequence[Standing], day: date) -> float:
        """Chance that one of the limits is crossed by a day. `standings`: the same limits on the day of the check."""
        if not self._usable(standings):
            return self.ahead.chance_over(limits, day)
        return self._greatest(standings, day)

    def due(self, limits: Sequence[Limit], standings: Sequence[Standing]) -> Dates:
        """10, 50 and 90 % days on which the first limit is crossed; None beyond the forecast's horizon."""
        if not self._usable(standings):
            return self.ahead.due(limits)
        return Dates(*(self._day(standings, chance) for chance in (0.1, 0.5, 0.9)))

    def look_again(self, limits: Sequence[Limit], standings: Sequence[Standing]) -> tuple[date, str]:
        """The earlier of twelve months after the last look and the day the chance of being over reaches 10 %."""
        if not self._usable(standings):
            look, reason = self.ahead.look_again(limits)
            return look, str(reason)
        assert self.on is not None
        yearly = after(self.on, 1.0)
        likely = self._day(standings, LOOK_AT)
        if likely is not None and likely < yearly:
            return max(likely, self.on), "chance_of_over"
        return yearly, "twelve_months"

    def _usable(self, standings: Sequence[Standing]) -> bool:
        told = any(one.margin is not None and one.limit.kind != "years" for one in standings)
        return told and self.on is not None and years_between(self.ahead.people.start, self.on) >= LEAST_YEARS

    def _growth(self, day: date) -> tuple[float, float]:
        """How many times the solids of the check there are on a later day, and the standard error of that."""
        people = self.ahead.people
        assert self.on is not None
        then, now = years_between(people.start, self.on), years_between(people.start, day)
        before = people.person_years(then)
        if now <= then or before <= 0:
            return 1.0, 0.0
        times = people.person_years(now) / before * (now / then) ** (POWER_MEAN - 1)
        times = max(times, 1.0)
        return times, hypot(times * POWER_SPREAD * log(now / then), GROWTH_ERROR * (times - 1))

    def _greatest(self, standings: Sequence[Standing], day: date) -> float:
        """The greatest chance of any limit being over on that day."""
        return max((self._chance(one, day) for one in standings), default=0.0)

    def _chance(self, one: Standing, day: date) -> float:
        if one.limit.kind == "years":
            return self.ahead.chance_over([one.limit], day)
        if one.margin is None or one.error is None:
            return 0.0
        left, start = self._left(one.limit)
        if start == inf:
            return chance_over(one.margin, one.error)
        now, more, error = self._state(day)
        grown = left(*now)
        slope = (left(*more) - grown) / _STEP
        return chance_over(one.margin + grown - start, hypot(one.error, slope * error))

    def _left(self, limit: Limit) -> tuple[Callable[[float, float], float], float]:
        """What is left before the limit as a function of both layers [m], and what was left on the day of the check."""
        if limit not in self._margins:
            left = margin_of(limit, self.ahead.tank, self.ahead.vessel)
            self._margins[limit] = (left, left(*self._thick(1.0)))
        return self._margins[limit]

    def _state(self, day: date) -> tuple[tuple[float, float], tuple[float, float], float]:
        """Both layers on a day, both when a little more has gathered, and the standard error of the growth."""
        if day not in self._states:
            times, error = self._growth(day)
            self._states[day] = (self._thick(times), self._thick(times + _STEP), error)
        return self._states[day]

    def _thick(self, times: float) -> tuple[float, float]:
        """Sludge and scum [m] when there is `times` as much of what gathered since the pump-out."""
        packing, found = self.ahead.packing, self.layers
        residue = packing.sludge_m3(self.ahead.residue_m)
        sludge = found.sludge.value if found is not None and found.sludge is not None else 0.0
        scum = found.scum.value if found is not None and found.scum is not None else 0.0
        gained = max(packing.sludge_m3(sludge) - residue, 0.0)
        kept = packing.sludge_m3(sludge) - gained
        return packing.sludge_m(kept + gained * times), packing.scum_m(packing.scum_m3(scum) * times)

    def _day(self, standings: Sequence[Standing], chance: float) -> date | None:
        """The first day by which the chance of being over reaches `chance`, not before the day of the check."""
        assert self.on is not None
        if self._greatest(standings, self.on) >= chance:
            return self.on
        low, high = 0, 1
        while self._greatest(standings, self.on + timedelta(days=high)) < chance:
            low, high = high, 4 * high
            if low > HORIZON_YEARS * DAYS_A_YEAR:
                return None
        while high - low > 1:
            middle = (low + high) // 2
            if self._greatest(standings, self.on + timedelta(days=middle)) < chance:
                low = middle
            else:
                high = middle
        return self.on + timedelta(days=high)
