"""What the start says of a household, and the conversation in which a person picks what to do."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import Answer

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.table import Sitting

FLOW = "home"


@dataclass(frozen=True)
class Unfinished:
    """A conversation that was left open. `started`: ISO time. `lid_off`: the tank may stand open since."""

    flow: str
    started: str
    answers: tuple[Answer, ...]
    problems: tuple[RecordProblem, ...]
    lid_off: bool = False


@dataclass(frozen=True)
class HomeFacts:
    """What the start screen says about the household.

    `by`: by which day to do what the verdict says, or to look again; empty where there is none.
    """

    name: str
    last_check: date | None
    verdict_line: str
    by: str
    unfinished: Unfinished | None
    problems: tuple[RecordProblem, ...]
    danger_on: date | None = None  # the earlier day on which a danger was told that is not over


def home_facts(sitting: Sitting) -> HomeFacts:
    """What the start screen says. It judges the record, so it is not for the first frame of a big one."""
    from selfcheck.domain.check import standing

    unfinished = sitting.unfinished()
    on_record = bool(sitting.checks or sitting.pump_outs)
    return HomeFacts(
        name=sitting.household.name,
        last_check=max((check.on for check in standing(list(sitting.checks))), default=None),
        verdict_line=sitting.verdict().headline if on_record else "",
        by=sitting.verdict().by if on_record else "",
        unfinished=unfinished,
        problems=(*sitting.problems, *_clock_problem(sitting)),
        danger_on=sitting.danger_before() if on_record else None,
    )


def start_talk(sitting: Sitting) -> Conversation:
    """The conversation of the start, not begun yet. Nothing of it is kept: it only finds out what is wanted."""
    from selfcheck.interview.context import Context
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.loading.conversations import script

    asked = script(sitting.place, FLOW)
    context = Context(sitting.today, sitting.household, units=sitting.household.units)
    talk = Conversation(asked, context, ask_back=sitting.ask_back, ask_near=sitting.ask_near)
    talk.trouble = lambda: sitting.trouble
    return talk


def _clock_problem(sitting: Sitting) -> list[RecordProblem]:
    """A clock that stands before the last record was surely set back; said, because every date rests on it."""
    days = [check.on for check in sitting.checks] + [pump_out.on for pump_out in sitting.pump_outs]
    if not days or max(days) <= sitting.today:
        return []
    from selfcheck.domain.showing import show_day

    last, today = (show_day(day, sitting.household.units) for day in (max(days), sitting.today))
    what = f"a day in it, {last}, lies after today, {today}."
    return [RecordProblem("The record", what, "Check the clock of this computer.")]
