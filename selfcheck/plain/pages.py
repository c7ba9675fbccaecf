"""Pages to read, as text: the verdict, the record, and what other conversations end in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING

from selfcheck.domain.quantities import show_date
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.report.parts import PartedPage
from selfcheck.sitting import Sitting

if TYPE_CHECKING:
    from selfcheck.report.wording import VerdictPage


def show(page: VerdictPage | PartedPage, out: Speaker, words: Words) -> None:
    """Whichever page a conversation ended in."""
    if isinstance(page, PartedPage):
        reading(page, out)
    else:
        verdict(page, out, words)


def verdict(page: VerdictPage, out: Speaker, words: Words) -> None:
    """The verdict with everything that led to it, the main message first."""
    out.gap()
    out.say(page.headline)
    out.say(page.do)
    for line in (page.by, page.kind, page.sure):
        if line:
            out.say(line)
    for line in page.because:
        _item(out, line)
    _part(out, words("page", "seen"), page.seen)
    _part(out, words("page", "because"), page.why)
    _part(out, words("page", "when_next"), page.when_next)
    _part(out, words("page", "not_checked"), page.not_checked)
    _part(out, words("page", "questionable"), page.questionable)
    _part(out, words("page", "would_change"), page.would_change)
    _part(out, words("page", "by_rule"), page.rule_rows)
    out.gap()
    for line in page.always:
        out.say(line)


def record(sitting: Sitting, out: Speaker, words: Words) -> None:
    """The verdict as of today, then every pump-out and check on record, oldest first, the checks numbered."""
    if sitting.checks:
        verdict(sitting.verdict(), out, words)
    emptied = [words("record", "pump_out", day=day(one.on, sitting)) for one in sitting.pump_outs]
    _part(out, words("record", "pump_outs"), emptied or [words("record", "none")])
    _part(out, words("record", "folder"), [str(sitting.folder)])
    replaced = {check.replaces for check in sitting.checks}
    _part(out, words("record", "checks"), [] if sitting.checks else [words("record", "none")])
    if sitting.checks:
        out.gap()
        out.say(words("record", "checks") + ":")
    for number, check in enumerate(sitting.checks, 1):
        name = "corrected" if check.id in replaced else "check"
        out.choice(number, words("record", name, day=day(check.on, sitting)))


def reading(page: PartedPage, out: Speaker) -> None:
    """A page one only reads: its headline, then part by part."""
    out.gap()
    out.say(page.headline)
    for line in page.lead:
        out.say(line)
    for title, lines in page.parts:
        _part(out, title, lines)
    if page.always:
        out.gap()
    for line in page.always:
        out.say(line)


#: What the start screen opens besides conversations, by option id.
PAGES: dict[str, Callable[[Sitting, Speaker, Words], None]] = {"record": record}


def day(when: date, sitting: Sitting) -> str:
    """A day in the household's way of writing it."""
    return show_date(when, sitting.household.units)


def _part(out: Speaker, title: str, lines: Sequence[str]) -> None:
    """A heading with its lines; nothing at all when there are none."""
    if not lines:
        return
    out.gap()
    out.say(title if title.endswith("?") else f"{title}:")
    for line in lines:
        _item(out, line)


def _item(out: Speaker, line: str) -> None:
    out.say(line, indent="  ", first="- ")
