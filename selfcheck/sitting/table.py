"""One household that is open: its record, its conversations, its verdict.

Answers go to the journal one by one; a conversation that comes to its end becomes finished files and a verdict.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from selfcheck import __version__
from selfcheck.domain.household import Household
from selfcheck.errors import UsageProblem
from selfcheck.interview.answers import Answer
from selfcheck.interview.septic_finishing import answers_of
from selfcheck.sitting.at_start import HomeFacts, Unfinished, home_facts
from selfcheck.sitting.open_record import OpenRecord

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage

__all__ = ["HomeFacts", "Sitting", "Unfinished"]


class Sitting(OpenRecord):
    """A household that is open, and the conversations about it. Make one with `Sitting.open`."""

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

    def danger_never(self, said: str) -> bool:
        """Take back the danger told of, each time that day. False: it could not be saved, and `trouble` says so."""
        from selfcheck.sitting.concluding import keep_check
        from selfcheck.sitting.over import taken_back

        self._come_to_the_table()
        told, saved = {one.id for one in self.judgement().deciding}, True
        raw = taken_back(self.judgement(), self.checks, said, self._time())
        if raw is None:
            return self.danger_over(said)
        day = raw["on"]
        while raw is not None and raw["on"] == day and told >= {one.id for one in self.judgement().deciding}:
            saved &= keep_check(self, self._keeper, raw)
            raw = taken_back(self.judgement(), self.checks, said, self._time())
        return saved

    def home(self) -> HomeFacts:
        """What the start screen says. It judges the record, so it is not for the first frame of a big one."""
        return home_facts(self)

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
