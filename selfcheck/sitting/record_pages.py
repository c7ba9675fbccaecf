"""My record as pages: the list of checks and pump-outs, one of each whole, and the layers over the years."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.showing import show_date, show_day
from selfcheck.sitting.check_page import check_page
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.endings import page_words
from selfcheck.sitting.pump_out_page import pump_out_page
from selfcheck.sitting.steps import Go, Page, Part, Stay, Step, Talk, Way

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.report.parts import PageWords
    from selfcheck.sitting.table import Sitting

#: rows of the list on one page, so that each has a number key and the ways below it too
ROWS = 6
_YEAR = re.compile(r"(?:in |year )?((?:19|20|21)\d\d)", re.IGNORECASE)


class RecordPages:
    """The pages of one household's record. They read the sitting anew each time."""

    def __init__(self, sitting: Sitting) -> None:
        self.sitting = sitting
        self.words = page_words(sitting, "record")

    def desk(self) -> Desk:
        """A desk that begins with the first page of the record."""
        return desk_of(self.sitting, self.root, self.words)

    def day(self, day: date) -> str:
        """A day as the household writes it."""
        return show_day(day, self.sitting.household.units)

    def day_of(self, pump_out: PumpOut) -> str:
        """The day of a pump-out, as wide as it was told."""
        return show_date(pump_out.on, self.sitting.household.units, *pump_out.span)

    def root(self) -> Page:
        """What there is, in one page."""
        from selfcheck.sitting.contact_pages import ContactPages
        from selfcheck.sitting.fact_pages import FactPages
        from selfcheck.sitting.paper_pages import PaperPages
        from selfcheck.sitting.removing_pages import RemovingPages
        from selfcheck.sitting.take_in_pages import TakeInPages

        sitting, words = self.sitting, self.words
        rows = len(sitting.checks) + len(sitting.pump_outs) + len(sitting.mended_pump_outs)
        parts = []
        if rows:
            verdict = sitting.verdict()
            now = tuple(line for line in (verdict.headline, verdict.by) if line)
            parts.append(Part(now, words("record", "as_of"), "strong"))
        else:
            parts.append(Part((words("record", "empty"),)))
        if sitting.problems:
            named = tuple(str(problem) for problem in sitting.problems)
            parts.append(Part(named, words("record", "problems"), "trouble"))
        if sitting.read_only:
            parts.append(Part((f"{sitting.read_only} {words('record', 'read_only')}",), kind="trouble"))
        parts.append(Part((str(sitting.folder),), words("record", "folder"), "muted"))
        ways = (
            Way(words("record", "checks", count=str(rows)), lambda: Go(self.listing), ("list",), slow=True),
            Way(words("record", "history"), lambda: Go(self.history), ("history", "picture"), slow=True),
            Way(words("record", "facts"), lambda: Go(FactPages(self).root), ("facts", "tank facts")),
            Way(words("record", "contacts"), lambda: Go(ContactPages(self).root), ("contacts", "phone")),
            Way(words("record", "papers"), lambda: Go(PaperPages(sitting, words).root), ("print", "export", "files")),
            *TakeInPages(self).ways(),
            *RemovingPages(self).ways(),
        )
        if rows and sitting.verdict().verdict == "danger":
            from selfcheck.sitting.over import over_page

            ways = (Way(words("over", "way"), lambda: Go(partial(over_page, sitting)), ("over", "it is over")), *ways)
        return Page(words("record", "title"), tuple(parts), ways)

    def or_told(self, talk: Conversation, step: Step) -> Step:
        """The step after a small talk, or the way to the verdict where a danger was told in it."""
        from selfcheck.sitting.paper_pages import PaperPages

        if not talk.state.answered.hazards:
            return step
        return Go(partial(PaperPages(self.sitting, self.words).verdict, self.sitting.verdict()))

    def listing(self, start: int = 0) -> Page:
        """Checks and pump-outs, the newest first, each check with its verdict. `start`: how many are passed over."""
        words = self.words
        sitting = self.sitting
        records: list[Check | PumpOut] = [*sitting.checks, *sitting.pump_outs, *sitting.mended_pump_outs]
        rows = sorted(records, key=_newest_first, reverse=True)
        here = rows[start : start + ROWS]
        ways = [self._row(record) for record in here]
        left = len(rows) - start - len(here)
        if left:
            further = partial(self.listing, start + ROWS)
            ways.append(
                Way(words("list", "earlier", count=str(left)), lambda: Go(further), ("earlier", "more"), slow=True)
            )
        ways.append(Way(words("list", "add"), lambda: Talk(self.sitting.begin("after_pump_out")), ("add",)))
        span = words("list", "span", first=str(start + 1), last=str(start + len(here)), count=str(len(rows)))
        said = (span,) if rows else (words("list", "none"),)
        hear, hint = (partial(self._of_year, rows), words("list", "hint_year")) if len(rows) > ROWS else (None, "")
        return Page(words("list", "title"), (Part(said, kind="muted"),), tuple(ways), hear, hint)

    def _of_year(self, rows: Sequence[Check | PumpOut], line: str) -> Step | None:
        """The list from the newest record of a year on; None for a line that is no year."""
        year = _YEAR.fullmatch(line.strip())
        if year is None:
            return None
        start = next((at for at, one in enumerate(rows) if one.on.year <= int(year[1])), len(rows) - 1)
        return Go(partial(self.listing, start), replace=True)

    def _row(self, record: Check | PumpOut) -> Way:
        words = self.words
        if isinstance(record, PumpOut):
            day = self.day_of(record)
            stands = record in self.sitting.pump_outs
            label = words("list", "pump_out" if stands else "pump_out_mended", day=day)
            return Way(label, partial(Go, partial(pump_out_page, self, record.id, stands)))
        day = self.day(record.on)
        if record.id in {check.replaces for check in self.sitting.checks}:
            label = words("list", "corrected", day=day)
        else:
            label = words("list", "check", day=day, verdict=self.sitting.verdict_then(record).headline)
        return Way(label, partial(Go, partial(check_page, self, record)), slow=True)

    def history(self) -> Page:
        """Both layers over the years, as a picture and in words."""
        from selfcheck.sitting.pictures import history

        drawn = history(self.sitting)
        title = self.words("history", "title")
        if drawn is None:
            return Page(title, (Part((self.words("history", "empty"),)),))
        return Page(title, (Part(drawn.words, kind="items"),), drawn=drawn)

    def stay(self, done: str) -> Stay:
        """Stay on the page with what was done, or with what could not be saved."""
        trouble = self.sitting.trouble
        return Stay(trouble, "trouble") if trouble else Stay(done)


def desk_of(sitting: Sitting, first: object, words: PageWords) -> Desk:
    """A desk of this household that begins with the page `first` makes."""
    assert callable(first)
    phrases = partial(words, "desk")
    return Desk(first, phrases, sitting.ask_back, sitting.ask_near, sitting.command_in)


def _newest_first(record: Check | PumpOut) -> tuple[date, str]:
    return record.on, str(getattr(record, "recorded_at", "") or "")
