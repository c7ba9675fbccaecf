"""One household at the table: what both faces do with it, from opening its folder to the verdict.

Answers go to the journal one by one; a conversation that comes to its end becomes finished files and a verdict.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import FolderProblem, RecordProblem, UsageProblem
from selfcheck.interview.answers import Answer
from selfcheck.storage import folder as folders
from selfcheck.storage import journal as journals
from selfcheck.storage.finishing import make_check, make_household, make_pump_out
from selfcheck.storage.locations import default_household
from selfcheck.storage.lock import Lock
from selfcheck.storage.working_copy import working_copy
from selfcheck.storage.writing import make_folder, write_check, write_household, write_pump_out

if TYPE_CHECKING:
    from selfcheck.domain.judging import Judgement
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.loading.place import Place
    from selfcheck.report.finding_text import VerdictWords
    from selfcheck.report.wording import VerdictPage

Clock = Callable[[], datetime]


@dataclass(frozen=True)
class Unfinished:
    """A conversation that was left open."""

    flow: str
    started: str  # ISO time
    answers: tuple[Answer, ...]
    problems: tuple[RecordProblem, ...]


@dataclass(frozen=True)
class HomeFacts:
    """What the start screen says about the household."""

    name: str
    last_check: date | None
    verdict_line: str
    look_again: date | None
    unfinished: Unfinished | None
    problems: tuple[RecordProblem, ...]


class Sitting:
    """A household that is open. Make one with `Sitting.open`."""

    def __init__(self, folder: Path, place: Place, today: date, rules: str | None, clock: Clock) -> None:
        self.folder = folder
        self.place = place
        self.today = today
        self.rules = rules
        self.household = Household()
        self.checks: tuple[Check, ...] = ()
        self.pump_outs: tuple[PumpOut, ...] = ()
        self.problems: tuple[RecordProblem, ...] = ()
        self.demonstration = False
        self._clock = clock
        self._lock = Lock(folder)
        self._journal: journals.Journal | None = None
        self._unsaved: list[str] = []
        self._household_read = True
        self._began_with = self.household
        self._judged: Judgement | None = None

    @classmethod
    def open(
        cls,
        folder: Path | None,
        place: Place,
        today: date,
        rules: str | None = None,
        *,
        begin: bool = False,
        clock: Clock | None = None,
    ) -> Sitting:
        """Open the household in `folder`; None: the user's own, which may not exist yet.

        `begin`: an empty or missing folder is the start of a new household; it is made with the first answer.
        A household with `demonstration: true` is opened as a working copy. Raises FolderProblem when the folder cannot
        be used, UsageProblem for a rule set that is not there.
        """
        begin = begin or folder is None
        where = folder if folder is not None else default_household()
        sitting = cls(where, place, today, rules, clock or (lambda: datetime.now(UTC)))
        sitting._read(begin)
        if sitting.demonstration:
            sitting.folder = working_copy(where)
            sitting._lock = Lock(sitting.folder)
            sitting._read(begin)
        return sitting

    @classmethod
    def look(cls, folder: Path, place: Place, today: date, rules: str | None = None) -> Sitting:
        """Open a folder only to judge what is in it: no copy is made and nothing is written. Raises FolderProblem."""
        sitting = cls(folder, place, today, rules, lambda: datetime.now(UTC))
        sitting._read(begin=False)
        return sitting

    def close(self) -> None:
        """Let go of the folder. Nothing needs to be saved here: every answer already is."""
        if self._journal is not None:
            self._journal.close()
        self._lock.release()

    @property
    def read_only(self) -> str:
        """Why nothing can be saved in this folder, in words; empty when it can. Tries to become its one writer."""
        if not self._lock.held:
            try:
                make_folder(self.folder)
            except OSError as error:
                return f"The folder cannot be made ({error.strerror})."
            self._lock.take()
        return self._lock.reason

    @property
    def trouble(self) -> str:
        """What is not saved and why, in words; empty while all is well. A face shows it whenever it is not empty."""
        said = list(self._unsaved)
        if self._journal is not None and self._journal.trouble:
            waiting = len(self._journal.waiting)
            some = "The last answer is" if waiting == 1 else f"The last {waiting} answers are"
            said.append(f"{some} not saved ({self._journal.trouble}). It is tried again with the next answer.")
        return " ".join(said)

    def unfinished(self) -> Unfinished | None:
        """The newest conversation that was left open."""
        opened = self._opened()
        if opened is None:
            return None
        header = opened.journal.header
        return Unfinished(header.flow, header.started, opened.answers, opened.problems)

    def begin(self, flow_id: str, **about: Any) -> Conversation:
        """Begin a conversation. One of the same kind that was left open is put aside; its answers stay on disk.

        In a folder that cannot be written the conversation goes all the same, and `trouble` says that nothing is kept.
        """
        writes = self._come_to_the_table()
        opened = self._opened()
        if writes and opened is not None and opened.journal.header.flow == flow_id:
            opened.journal.put_aside()
        day = self.today.isoformat()
        from selfcheck import __version__

        self._journal = journals.Journal.begin(self.folder, flow_id, self._now(), __version__, day=day, **about)
        return self._conversation(flow_id, ())

    def resume(self) -> Conversation:
        """Go on with the newest conversation that was left open. Raises UsageProblem when there is none."""
        self._come_to_the_table()
        opened = self._opened()
        if opened is None:
            raise UsageProblem("There is nothing left open here.", "Begin a new one.")
        self._journal = opened.journal
        return self._conversation(opened.journal.header.flow, opened.answers)

    def discard(self) -> None:
        """Do not offer the newest open conversation again. Its answers stay on disk under another ending."""
        opened = self._opened()
        if opened is not None and not self.read_only:
            opened.journal.put_aside()

    def conclude(self, conversation: Conversation) -> VerdictPage | str:
        """Turn a conversation that has come to its end into finished files, and judge the record.

        Gives the verdict page when a check was made, else "". When a file cannot be saved, `trouble` says so, the
        answers stay in the journal, and the verdict is given all the same.
        """
        journal = self._journal
        if journal is None:
            raise UsageProblem("This conversation has been concluded already.", "Begin a new one.")
        records = conversation.script.flow.records
        draft = {name: part for name, part in conversation.draft().items() if name in records}
        self._unsaved = []
        saved = not self.read_only and journal.flush()
        saved &= self._finish_household(draft.get("household", {}), records)
        if "pump_out" in draft:
            saved &= self._finish_pump_out(draft["pump_out"])
        seen = draft.get("check", {}).get("seen")
        made_check = bool(seen) or records[:1] == ("check",)
        if made_check:
            saved &= self._finish_check(draft.get("check", {}), conversation, journal)
        if saved:
            journal.remove() if records else journal.put_aside()
        self._journal = None
        self._judged = None
        return self.verdict() if made_check else ""

    def judgement(self) -> Judgement:
        """The whole record judged, as of today."""
        if self._judged is None:
            from selfcheck.domain.judging import Case, judge
            from selfcheck.loading.content import rules, signs

            rule_sets = rules(self.place)
            if self.rules is not None and self.rules not in rule_sets:
                known = ", ".join(rule_sets)
                raise UsageProblem(f'There is no set of limits "{self.rules}".', f"Name one of these: {known}.")
            self._judged = judge(
                Case(
                    household=self.household,
                    checks=list(self.checks),
                    pump_outs=list(self.pump_outs),
                    rule_sets=rule_sets,
                    signs=signs(self.place),
                    today=self.today,
                    rules=self.rules,
                )
            )
        return self._judged

    def verdict(self) -> VerdictPage:
        """The judgement in words."""
        from selfcheck.report.wording import verdict_screen

        return verdict_screen(self.judgement(), self.verdict_words(), self.household.units)

    def verdict_words(self) -> VerdictWords:
        """The words that a judgement is told in."""
        from selfcheck.loading.content import sources
        from selfcheck.loading.conversations import texts
        from selfcheck.report.finding_text import VerdictWords

        tables = {name: texts(self.place, name) for name in ("findings", "signs", "verdicts")}
        return VerdictWords(**tables, sources=sources(self.place))

    def home(self) -> HomeFacts:
        """What the start screen says. It judges the record, so it is not for the first frame of a big one."""
        judged = self.checks or self.pump_outs
        return HomeFacts(
            name=self.household.name,
            last_check=max((check.on for check in self.checks), default=None),
            verdict_line=self.verdict().headline if judged else "",
            look_again=self.judgement().look_again if judged else None,
            unfinished=self.unfinished(),
            problems=(*self.problems, *self._clock_problem()),
        )

    # ------------------------------------------------------------------ the folder

    def _read(self, begin: bool) -> None:
        """Take in what the folder holds now. `begin`: nothing there is the start of a new household, not a fault."""
        if begin and not folders.holds_record(self.folder):
            return
        found = folders.read(self.folder)
        self.household = self._began_with = found.household
        self.checks, self.pump_outs, self.problems = found.checks, found.pump_outs, found.problems
        self._household_read = found.household_read or not (self.folder / folders.HOUSEHOLD).exists()
        self.demonstration = found.household.demonstration
        self._judged = None
        self._take_away_concluded()

    def _opened(self) -> journals.Opened | None:
        """The newest open conversation that did not end in a record yet."""
        written = {(check.model_extra or {}).get("sitting") for check in self.checks}
        found, problems = journals.find(self.folder)
        known = set(self.problems)
        self.problems = (*self.problems, *(one for one in problems if str(one) not in {str(old) for old in known}))
        return next((one for one in found if one.answers and one.journal.header.sitting not in written), None)

    def _come_to_the_table(self) -> bool:
        """Become the one writer of the folder and see what others wrote meanwhile. False: nothing can be saved."""
        if self._journal is not None:
            self._journal.close()
            self._journal = None
        self._unsaved = []
        reason = self.read_only
        if reason:
            self._unsaved = [f"Nothing is saved in this folder. {reason}"]
            return False
        self._read(begin=True)
        return True

    def _take_away_concluded(self) -> None:
        """Remove a journal whose check was written just before a crash; only as the writer of the folder."""
        if not self._lock.held:
            return
        written = {(check.model_extra or {}).get("sitting") for check in self.checks}
        for opened in journals.find(self.folder)[0]:
            if opened.journal.header.sitting in written:
                opened.journal.remove()

    def _clock_problem(self) -> list[RecordProblem]:
        """A clock that stands before the last record was surely set back; said, because every date rests on it."""
        days = [check.on for check in self.checks] + [pump_out.on for pump_out in self.pump_outs]
        if not days or max(days) <= self.today:
            return []
        what = f"a day in it, {max(days)}, lies after today, {self.today}."
        return [RecordProblem("the record", what, "Check the clock of this computer.")]

    # ------------------------------------------------------------------ the conversation

    def _conversation(self, flow_id: str, answers: tuple[Answer, ...]) -> Conversation:
        from selfcheck.interview.context import Context
        from selfcheck.interview.dialogue import Conversation
        from selfcheck.loading.content import rules
        from selfcheck.loading.conversations import script

        context = Context(
            today=self.today,
            household=self.household,
            checks=self.checks,
            pump_outs=self.pump_outs,
            rule_sets=rules(self.place),
            units=self.household.units,
        )
        return Conversation(script(self.place, flow_id), context, answers, keep=self._keep, now=self._now)

    def _keep(self, answer: Answer) -> None:
        if self._lock.held and self._journal is not None:
            self._journal.keep(answer)

    def _now(self) -> str:
        return self._clock().isoformat(timespec="seconds").replace("+00:00", "Z")

    # ------------------------------------------------------------------ finished files

    def _finish_household(self, draft: dict[str, Any], records: tuple[str, ...]) -> bool:
        """Write the facts about the house where they changed, and in a new folder where there are none yet."""
        household, left_out = make_household(draft, self._began_with, self.household, self.today)
        self._name_left_out("household.json", left_out)
        missing = bool(records) and not (self.folder / folders.HOUSEHOLD).exists()
        if household == self.household and not missing:
            return True
        self.household = household
        if not self._household_read:
            self._unsaved.append("household.json is damaged, so it was left as it is: the new facts are not in it.")
            return False
        return self._saved(lambda: write_household(self.folder, household, self.today))

    def _finish_pump_out(self, draft: dict[str, Any]) -> bool:
        pump_out, left_out = make_pump_out({"tank": self.household.tank().id, **draft})
        self._name_left_out("pump_outs", left_out)
        if pump_out is None or pump_out in self.pump_outs:
            return True
        self.pump_outs = tuple(sorted((*self.pump_outs, pump_out), key=lambda one: one.on))
        return self._saved(lambda: write_pump_out(self.folder, pump_out))

    def _finish_check(self, draft: dict[str, Any], conversation: Conversation, journal: journals.Journal) -> bool:
        about = journal.header.about
        check, left_out = make_check(
            {"tank": self.household.tank().id, **draft},
            conversation.answers,
            _day(about.get("day")) or self.today,
            self._clock(),
            journal.header.sitting,
            about.get("replaces"),
        )
        self._name_left_out("checks", left_out)
        written: list[Check] = []
        saved = self._saved(lambda: written.append(write_check(self.folder, check)))
        self.checks = (*self.checks, written[0] if written else check)
        return saved

    def _saved(self, write: Callable[[], object]) -> bool:
        if self.read_only:
            return False
        try:
            write()
        except FolderProblem as problem:
            self._unsaved.append(f"{problem.what} Your answers are kept. {problem.mend}")
            return False
        return True

    def _name_left_out(self, name: str, paths: list[str]) -> None:
        if paths:
            listed = ", ".join(dict.fromkeys(paths))
            self._unsaved.append(
                f"{name} cannot hold what was said about: {listed}. The words are kept with the check."
            )


def _day(text: Any) -> date | None:
    try:
        return date.fromisoformat(text)
    except (TypeError, ValueError):
        return None
