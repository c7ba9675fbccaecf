"""A danger that was told: asking whether it is over, or never was, and keeping that.

What was told stays on record as it is. That it is over is a check of its own, with nothing looked at. That it never was
is a check in the place of the one that told it, with all that else was in that.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING, Any

from selfcheck.interview.answers import Answer
from selfcheck.interview.hazard_fitting import ALL
from selfcheck.interview.septic_finishing import kept
from selfcheck.loading.conversations import script
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.endings import page_words
from selfcheck.sitting.steps import Go, Page, Part, Stay, Step, Talk, Way

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.domain.verdict import Judgement
    from selfcheck.sitting.table import Sitting

TROUBLE = "trouble"
QUESTION = "trouble_hurt"


def over(judgement: Judgement, said: str, at: str) -> dict[str, Any]:
    """What a check holds that says nothing but that all are well again."""
    answer = Answer(QUESTION, "value", "no", said, None, at)
    seen = {"people_hurt": "no"}
    return {"tank": judgement.tank.id, "seen": seen, "gate": "not_opened", "answers": [kept(answer)]}


def taken_back(judgement: Judgement, checks: Sequence[Check], said: str, at: str) -> dict[str, Any] | None:
    """The check that tells of the danger, without it; None where no single check does."""
    speaks = judgement.check
    told = [one for one in checks if speaks is not None and one.id and one.id == speaks.id]
    if judgement.verdict != "danger" or len(told) != 1:
        return None
    check = told[0]
    left = [one for one in check.hazards if ALL.get(one) != "danger"]
    hurt = check.seen.people_hurt in ("fell_in", "feeling_ill")
    if left == check.hazards and not hurt:
        return None
    raw = check.model_dump(mode="json", exclude={"id", "recorded_at", "sitting"})
    raw["seen"]["people_hurt"] = "no"
    answer = Answer(QUESTION, "value", "no", said, None, at)
    return {**raw, "hazards": left, "answers": [*raw["answers"], kept(answer)], "replaces": check.id}


def over_desk(sitting: Sitting) -> Desk:
    """The page that asks whether it is over, by itself."""
    from selfcheck.sitting.record_pages import desk_of

    return desk_of(sitting, lambda: over_page(sitting), page_words(sitting, "record"))


def way_out(sitting: Sitting) -> tuple[Way, ...]:
    """The way from a page that tells of danger to the one that asks if it is so; none where the record has none."""
    if sitting.judgement().verdict != "danger":
        return ()
    label = page_words(sitting, "record")("over", "not_so")
    to_page = partial(Go, partial(over_page, sitting))
    return (Way(label, to_page, ("over", "it is over"), takes=partial(_not_so, sitting)),)


def _not_so(sitting: Sitting, line: str) -> bool:
    """Whether a line says of what was told that it is not so."""
    from selfcheck.interview.hazards import denied
    from selfcheck.interview.typed_line import normal, words_in

    plain = f" {' '.join(words_in(normal(line)))} "
    listen = script(sitting.place, TROUBLE).interface.listen.get("misheard", ())
    return denied(line) is not None or any(f" {words} " in plain for words in listen)


def over_page(sitting: Sitting) -> Page:
    """What was told and when, with the two answers."""
    from selfcheck.domain.showing import show_day
    from selfcheck.report.finding_text import text_of
    from selfcheck.report.verdict_text import danger_on

    words, found = page_words(sitting, "record"), sitting.judgement()
    day = danger_on(found) or sitting.today
    units, told_in = sitting.household.units, sitting.verdict_words()
    lines = tuple(dict.fromkeys(text_of(one, told_in, units, {}) for one in found.deciding))
    parts = (
        Part(lines, words("over", "told", day=show_day(day, units)), "strong"),
        Part((words("over", "still"),)),
    )
    yes, no, never = words("over", "yes"), words("over", "no"), words("over", "never")

    def end(saved: bool, said: tuple[str, ...]) -> Step:
        done = Part(said) if saved else Part((sitting.trouble,), kind="trouble")
        return Go(lambda: Page(words("over", "title"), (done,)), replace=True)

    def it_is_over() -> Step:
        return end(sitting.danger_over(yes), (words("over", "kept"),))

    def it_never_was() -> Step:
        return end(sitting.danger_never(never), (words("over", "undone"), sitting.verdict().headline))

    def unsure() -> Step:
        return Talk(sitting.begin(TROUBLE))

    def heard(line: str) -> Step | None:
        """That it is not so, in any words, may mean two of the ways, and both say that all are well: one is picked."""
        return Stay(words("over", "which")) if _not_so(sitting, line) else None

    ways = (
        Way(yes, it_is_over, ("yes", "it is over"), slow=True),
        Way(no, unsure, ("no", "not sure")),
        Way(never, it_never_was, ("it never happened",), slow=True),
    )
    return Page(words("over", "title"), parts, ways, hear=heard, ask=words("over", "ask"))
