"""One household that is open: its record, its conversations, its verdict.

Answers go to the journal one by one; a conversation that comes to its end becomes finished files and a verdict.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from selfcheck import __version__
from selfcheck.domain.household import Household
from selfcheck.errors import FolderProblem, UsageProblem
from selfcheck.interview.answers import Answer
from selfcheck.interview.finishing import answers_of
from selfcheck.sitting.at_start import HomeFacts, Unfinished, home_facts
from selfcheck.sitting.keeping import Keeper
from selfcheck.sitting.kept_record import KeptRecord
from selfcheck.storage import folder as folders
from selfcheck.storage.folder import NOTHING
from selfcheck.storage.layout import HOUSEHOLD, holds_record
from selfcheck.storage.locations import default_household
from selfcheck.storage.removing import ours
from selfcheck.storage.working_copy import working_copy

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script
    from selfcheck.loading.place import Place
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage

__all__ = ["Clock", "HomeFacts", "Sitting", "Unfinished"]

Clock = Callable[[], datetime]
Changed = TypeVar("Changed")


class Sitting(KeptRecord):
    """A household that is open. Make one with `Sitting.open`.

    `began_with`: the household as the folder held it.
    """

    def __init__(self, folder: Path, place: Place, today: date, rules: str | None, clock: Clock) -> None:
        super().__init__(folder, place, today, rules)
        self.clock = clock
        self.began_with = self.household
        self._keeper = Keeper(folder)

    @classmethod
    def open(
        cls,
        folder: Path | None,
        place: Place,
        today: date,
        rules: str | None = None,
        *,
        begin: bool = False,
        fixed_day: bool = False,
        in_place: bool = False,
        clock: Clock | None = None,
    ) -> Sitting:
        """Open the household in `folder`; None: the user's own, which may not exist yet.

        `begin`: an empty or missing folder is the start of a new household; it is made with the first conversation.
        A household with `demonstration: true` is opened as a working copy, but not `in_place`. `fixed_day`: `today` was
        given, so that the times in the record lie on that day too; `clock` gives them otherwise. Raises FolderProblem
        when the folder cannot be used.
        """
        begin = begin or folder is None
        where = folder if folder is not None else default_household()
        sitting = cls(where, place, today, rules, clock or (_clock_of(today) if fixed_day else _now))
        sitting._read(begin)
        if sitting.demonstration and not in_place:
            sitting.folder = working_copy(where)
            sitting._keeper = Keeper(sitting.folder)
            sitting._read(begin)
        return sitting

    def close(self) -> None:
        """Let go of the folder. Nothing needs to be saved here: every answer already is."""
        self._keeper.close()

    @property
    def read_only(self) -> str:
        """Why nothing can be saved in this folder, in words; empty when it can. Tries to become its one writer."""
        return self._keeper.read_only()

    @property
    def trouble(self) -> str:
        """What is not saved and why, in words; empty while all is well. A face shows it whenever it is not empty."""
        return self._keeper.trouble

    def unfinished(self) -> Unfinished | None:
        """The newest conversation that was left open."""
        opened, problems = self._keeper.opened(self._written())
        known = {str(problem) for problem in self.problems}
        fresh = [one for one in problems if str(one) not in known]
        if fresh:
            self.hold(problems=(*self.problems, *fresh))
        if opened is None:
            return None
        header = opened.journal.header
        lid_off = self._conversation(header.flow, opened.answers).state.open
        return Unfinished(header.flow, header.started, opened.answers, opened.problems, lid_off)

    def begin(self, flow_id: str, **about: Any) -> Conversation:
        """Begin a conversation. One of the same kind that was left open is put aside; its answers stay on disk.

        In a folder that cannot be written the conversation goes all the same, and `trouble` says that nothing is kept.
        `about` is kept with the answers: `replaces` names a check that this one corrects.
        """
        if self._come_to_the_table():
            opened, _ = self._keeper.opened(self._written())
            if opened is not None and opened.journal.header.flow == flow_id:
                opened.journal.put_aside()
        replaced = next((one for one in self.checks if one.id == about.get("replaces")), None)
        day = (replaced.on if replaced is not None else self.today).isoformat()
        self._keeper.begin(flow_id, self._time(), __version__, day=day, **about)
        return self._conversation(flow_id, ())

    def resume(self) -> Conversation:
        """Go on with the newest conversation that was left open. Raises UsageProblem when there is none."""
        self._come_to_the_table()
        opened, _ = self._keeper.opened(self._written())
        if opened is None:
            raise UsageProblem("There is nothing left open here.", "Begin a new one.")
        self._keeper.journal = opened.journal
        return self._conversation(opened.journal.header.flow, opened.answers)

    def correct(self, check_id: str) -> Conversation:
        """Take up a finished check again, to mend it. What comes of it is a new file; the old one stays.

        Its answers come back up to the one that called them right. Raises UsageProblem when there is no such check.
        """
        check = next((one for one in self.checks if one.id == check_id), None)
        if check is None:
            raise UsageProblem(f"There is no check {check_id}.", "Name one that is on record.")
        fresh = self.begin("yearly", replaces=check_id)
        nodes = fresh.script.nodes
        dates = {name for name, node in nodes.items() if node.kind == "date"}
        right = {name for name, node in nodes.items() if node.kind == "confirm"}
        answers = [answer for answer in answers_of(check, dates) if answer.question not in right]
        for answer in answers:
            self._keeper.keep(answer)
        return self._conversation("yearly", tuple(answers))

    def discard(self) -> None:
        """Do not offer the newest open conversation again. Its answers stay on disk under another ending."""
        opened, _ = self._keeper.opened(self._written())
        if opened is not None and not self.read_only:
            opened.journal.put_aside()

    def conclude(self, conversation: Conversation) -> VerdictPage | PartedPage | str:
        """Turn a conversation that has come to its end into finished files, and judge the record.

        Gives the page of the conversation where it has one of its own, else the verdict page when a check was made,
        else "". When a file cannot be saved, `trouble` says so, the answers stay in the journal, and the page is given
        all the same.
        """
        from selfcheck.sitting.concluding import conclude

        made_check = conclude(self, self._keeper, conversation)
        if conversation.ending is not None and conversation.ending.outcome == "danger":
            told = self.verdict() if made_check else None
            return told if told is not None and told.verdict == "danger" else ""  # nothing milder is shown after it
        from selfcheck.sitting.endings import page_of

        page = page_of(self, conversation)
        if page is not None:
            return page
        return self.verdict() if made_check else ""

    def look_ahead(self) -> PartedPage:
        """The page of dates, as the record stands."""
        from selfcheck.sitting.endings import ahead

        return ahead(self)

    def keep_household(self, draft: dict[str, Any]) -> bool:
        """Replace the facts about the house. False: it could not be saved, and `trouble` says why."""
        from selfcheck.sitting.concluding import keep_household

        self._come_to_the_table()
        return keep_household(self, self._keeper, draft)

    def danger_over(self, said: str) -> bool:
        """Keep that the danger told of is over, as a check of today. False: it could not be saved."""
        from selfcheck.sitting.concluding import keep_check
        from selfcheck.sitting.over import over

        self._come_to_the_table()
        return keep_check(self, self._keeper, over(self.judgement(), said, self._time()))

    def change_files(self, change: Callable[[Path], Changed]) -> Changed:
        """Change the files of the record as its one writer, and read it anew. Raises FolderProblem."""
        if not self._come_to_the_table():
            raise FolderProblem(self.trouble, "Close the other program, or allow writing there, and try again.")
        try:
            return change(self.folder)
        finally:
            self._begin_anew()

    def _begin_anew(self) -> None:
        self.hold(**NOTHING._asdict())
        self.began_with = self.household
        self._read(begin=True)

    def home(self) -> HomeFacts:
        """What the start screen says. It judges the record, so it is not for the first frame of a big one."""
        return home_facts(self)

    def _read(self, begin: bool) -> None:
        """Take in what the folder holds now. `begin`: nothing there is the start of a new household, not a fault."""
        if begin and not holds_record(self.folder):
            return
        try:
            found = folders.read(self.folder)
        except FolderProblem:
            if begin and not ours(self.folder):  # what lies there is none of this program's
                return
            raise
        sound = found.household_read or not (self.folder / HOUSEHOLD).exists()
        self.hold(**found._replace(household_read=sound)._asdict())
        self.began_with = self.household

    def _written(self) -> set[str]:
        """The sittings that ended in a check on record."""
        return {str((check.model_extra or {}).get("sitting")) for check in self.checks}

    def _come_to_the_table(self) -> bool:
        """Become the one writer of the folder and see what others wrote meanwhile. False: nothing can be saved."""
        if not self._keeper.come_to_the_table():
            return False
        self._read(begin=True)
        self._keeper.take_away(self._written())
        return True

    def small_talk(self, asked: Script, household: Household | None = None) -> Conversation:
        """A conversation of which nothing is kept as it goes but a danger; whoever began it sees to what comes of it.

        `household`: what it takes to be on record, where that is not the household as it stands.
        """
        from selfcheck.interview.dialogue import Conversation

        context, guide = self.context(household), (self.ask_back, self.ask_near)
        if not asked.flow.hazards_write:
            return Conversation(asked, context, (), lambda answer: None, self._time, *guide)
        from selfcheck.sitting.small_talks import noting

        return Conversation(asked, context, (), noting(asked, context, self._keep_told), self._time, *guide)

    def _keep_told(self, raw: dict[str, Any]) -> str:
        from selfcheck.sitting.concluding import keep_check

        self._come_to_the_table()
        keep_check(self, self._keeper, raw)
        return self.checks[-1].id

    def _conversation(self, flow_id: str, answers: tuple[Answer, ...]) -> Conversation:
        from selfcheck.interview.dialogue import Conversation
        from selfcheck.loading.conversations import script
        from selfcheck.sitting.several_tanks import offering

        asked = offering(script(self.place, flow_id), self.household)
        keep, guide = self._keeper.keep, (self.ask_back, self.ask_near)
        talk = Conversation(asked, self.context(), answers, keep, self._time, *guide)
        talk.trouble = lambda: self.trouble
        return talk

    def _time(self) -> str:
        return self.clock().isoformat(timespec="seconds").replace("+00:00", "Z")


def _now() -> datetime:
    return datetime.now(UTC)


def _clock_of(day: date) -> Clock:
    """The time of now, on a given day."""
    return lambda: datetime.combine(day, _now().time(), UTC)
