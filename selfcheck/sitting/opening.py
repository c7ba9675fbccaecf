"""Which pages a choice of the start opens, and which follow a conversation."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from selfcheck.sitting.desk import Desk
from selfcheck.sitting.endings import page_words
from selfcheck.sitting.paper_pages import PaperPages
from selfcheck.sitting.record_pages import RecordPages, desk_of
from selfcheck.sitting.steps import Part

if TYPE_CHECKING:
    from selfcheck.report.parts import PartedPage
    from selfcheck.report.wording import VerdictPage
    from selfcheck.sitting.table import Sitting

RECORD, PRACTICE = "record", "practice"


def get_ready() -> None:
    """Load what any choice of the start needs, so that the first one is not kept waiting. Safe in a thread."""
    import selfcheck.interview.dialogue
    import selfcheck.loading.conversations  # noqa: F401


def desk(sitting: Sitting, choice: str) -> Desk | None:
    """The pages that a choice of the start opens; None when it opens none."""
    if choice == RECORD:
        return RecordPages(sitting).desk()
    if choice == PRACTICE:
        from selfcheck.sitting.practice_pages import PracticePages

        return PracticePages(sitting).desk()
    return None


def verdict_desk(sitting: Sitting, found: VerdictPage | PartedPage, first: tuple[Part, ...] = ()) -> Desk:
    """The page that a conversation ended in, with what helps to act on it. `first` stands above it."""
    words = page_words(sitting, "record")
    return desk_of(sitting, partial(PaperPages(sitting, words).verdict, found, first), words)
