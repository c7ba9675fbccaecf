"""How the page that looks ahead tells a day, a stretch of time and a source."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from selfcheck.domain.forecast import HORIZON_YEARS
from selfcheck.domain.showing import show_day
from selfcheck.domain.sources import Source
from selfcheck.domain.verdict import Judgement
from selfcheck.report.finding_text import Units
from selfcheck.report.parts import PageWords


@dataclass(frozen=True)
class Telling:
    """One judgement and the words to tell it in. ContentProblem from each of them: words missing."""

    judgement: Judgement
    words: PageWords
    sources: Mapping[str, Source]
    units: Units

    def day(self, day: date) -> str:
        return show_day(day, self.units)

    def reached(self, day: date | None) -> bool:
        """Whether a day is past or today."""
        return day is not None and day <= self.judgement.today

    def when(self, day: date | None) -> str:
        if self.reached(day):
            return self.words("dates", "reached")
        return self.words("dates", "beyond", years=f"{HORIZON_YEARS:.0f}") if day is None else self.day(day)

    def span(self, months: float) -> str:
        """A stretch of time in months below two years, else in years and halves."""
        if months < 24:
            count = round(months)
            return self.words("span", "month" if count == 1 else "months", count=str(count))
        return self.words("span", "years", count=f"{round(months / 6) / 2:g}")

    def source(self, ident: str) -> str:
        known = self.sources.get(ident)
        return self.words.source_line(known) if known is not None else ""

    def around(self, day: date | None) -> str:
        if day is None or self.reached(day):
            return self.when(day)
        return self.words("dates", "around", day=self.day(day))
