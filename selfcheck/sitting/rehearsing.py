"""A household for a prepared conversation: at a table of its own that is cleared away afterwards."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from selfcheck.loading.journeys import Journey
from selfcheck.loading.place import Place
from selfcheck.sitting.open_record import Clock
from selfcheck.sitting.table import Sitting
from selfcheck.storage.working_copy import passing_household


@contextmanager
def sitting_for(journey: Journey, place: Place) -> Iterator[Sitting]:
    """A sitting with the journey's household, on the journey's day, in a folder that is gone afterwards."""
    day = journey.today or date.today()
    beside = Path(journey.folder) if journey.folder else Path()
    with passing_household(journey.household, journey.checks, journey.pump_outs, beside) as folder:
        sitting = Sitting.open(
            folder, place, day, journey.rules or None, begin=True, in_place=True, clock=_even_clock(day)
        )
        try:
            yield sitting
        finally:
            sitting.close()


def _even_clock(day: date) -> Clock:
    """A clock that begins at noon and goes on by one second each time it is looked at."""
    now = datetime(day.year, day.month, day.day, 12, tzinfo=UTC)

    def tick() -> datetime:
        nonlocal now
        now += timedelta(seconds=1)
        return now

    return tick
