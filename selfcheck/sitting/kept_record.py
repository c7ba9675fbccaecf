"""The record of one household as it is held in memory, and what follows from it: judgement, verdict, answers."""

from __future__ import annotations

from datetime import date
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import RecordProblem
from selfcheck.sitting.verdicts import case_of, verdict_words
from selfcheck.storage.folder import NOTHING

if TYPE_CHECKING:
    from selfcheck.domain.verdict import Case, Judgement
    from selfcheck.interview.context import Context
    from selfcheck.interview.side_questions import Guide, Reply
    from selfcheck.loading.place import Place
    from selfcheck.report.finding_text import VerdictWords
    from selfcheck.report.wording import VerdictPage


class KeptRecord:
    """What one folder holds, judged by the rules that count on `today`. `held` changes by `hold` alone."""

    def __init__(self, folder: Path, place: Place, today: date, rules: str | None) -> None:
        self.folder = folder
        self.place = place
        self.today = today
        self.rules = rules
        self.held = NOTHING
        self._judged: Judgement | None = None
        self._judged_then: dict[str, VerdictPage] = {}
        self._guide: Guide | None = None

    @property
    def household(self) -> Household:
        """The facts of the house."""
        return self.held.household

    @property
    def checks(self) -> tuple[Check, ...]:
        """Every check, also those that a later one mends."""
        return self.held.checks

    @property
    def pump_outs(self) -> tuple[PumpOut, ...]:
        """The pump-outs that count."""
        return self.held.pump_outs

    @property
    def mended_pump_outs(self) -> tuple[PumpOut, ...]:
        """Pump-outs that a later one mends."""
        return self.held.mended_pump_outs

    @property
    def problems(self) -> tuple[RecordProblem, ...]:
        """Each file that could not be used, or is odd."""
        return self.held.problems

    @property
    def household_read(self) -> bool:
        """The household's file is sound, or there is none yet."""
        return self.held.household_read

    @property
    def demonstration(self) -> bool:
        """An invented household, opened as a copy."""
        return self.held.household.demonstration

    def hold(self, **changed: Any) -> None:
        """Put other parts of the record in place of those held; what was judged no longer holds then."""
        self.held = self.held._replace(**changed)
        self._judged, self._judged_then = None, {}

    def case(self) -> Case:
        """All that a judgement of the record rests on. Raises UsageProblem as `judgement` does."""
        return case_of(self.place, self.held, self.today, self.rules)

    def judgement(self) -> Judgement:
        """The whole record judged, as of today. Raises UsageProblem when the rule set asked for is not there."""
        if self._judged is None:
            from selfcheck.domain.judging import judge

            self._judged = judge(self.case())
        return self._judged

    def verdict(self) -> VerdictPage:
        """The judgement in words."""
        from selfcheck.report.wording import verdict_screen

        return verdict_screen(self.judgement(), self.verdict_words(), self.household.units)

    def verdict_then(self, check: Check) -> VerdictPage:
        """The verdict as it stood on the day of a check, from what was on record by then."""
        if check.id not in self._judged_then:
            from selfcheck.domain.judging import judge
            from selfcheck.report.wording import verdict_screen

            checks = [one for one in self.checks if one.on < check.on and one.id != check.id] + [check]
            pump_outs = [one for one in self.pump_outs if one.on <= check.on]
            then = self.held._replace(checks=tuple(checks), pump_outs=tuple(pump_outs))
            found = judge(case_of(self.place, then, check.on, self.rules))
            self._judged_then[check.id] = verdict_screen(found, self.verdict_words(), self.household.units)
        return self._judged_then[check.id]

    def verdict_words(self) -> VerdictWords:
        """The words that a judgement is told in."""
        return verdict_words(self.place)

    def danger_before(self) -> date | None:
        """The day before today on which a danger was told that is not over; None without one."""
        from selfcheck.report.verdict_text import danger_on

        day = danger_on(self.judgement())
        return day if day is not None and day < self.today else None

    def context(self, household: Household | None = None) -> Context:
        """What conversations see of the record; `household`: what they take to be on record in place of its own."""
        from selfcheck.interview.context import Context
        from selfcheck.loading.content import rules, signs

        return Context(
            today=self.today,
            household=self.household if household is None else household,
            checks=self.checks,
            pump_outs=self.pump_outs,
            rule_sets=rules(self.place),
            rules=self.rules,
            signs=cache(lambda: tuple(signs(self.place))),
            units=self.household.units,
        )

    def ask_back(self, text: str) -> Reply | None:
        """The guide's answer to a question about the job, or the marks of this tank; None when neither has one."""
        from selfcheck.sitting.pole_marks import marks_asked

        marks = marks_asked(text, self.place, self.context())
        if marks is not None:
            return marks
        return self._opened_guide().answer(text)

    def ask_near(self, text: str) -> list[Reply]:
        """The guide's answers that a line may have asked for, where none is sure."""
        return self._opened_guide().perhaps(text)

    def command_in(self, text: str) -> str:
        """The command that a line is, or "call_for_help", or "answer" for a bare yes, no or none; "" for neither."""
        from selfcheck.interview.typed_line import command_of, is_one_of
        from selfcheck.loading.conversations import interface

        known = interface(self.place)
        if is_one_of(known, "calls_for_help", text):
            return "call_for_help"
        bare = any(is_one_of(known, name, text) for name in ("yes", "no", "none", "go_on"))
        return command_of(known, text) or ("answer" if bare else "")

    def _opened_guide(self) -> Guide:
        if self._guide is None:
            from selfcheck.loading.guide import guide

            self._guide = guide(self.place)
        return self._guide
