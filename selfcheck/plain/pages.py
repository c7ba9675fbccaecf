"""Pages to read, as text: the verdict, and what other conversations end in."""

from __future__ import annotations

from collections.abc import Sequence
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
    _part(out, words("page", "seen"), (*page.seen, *page.not_used))
    _part(out, words("page", "because"), page.why)
    _part(out, words("page", "when_next"), page.when_next)
    _part(out, words("page", "not_checked"), page.not_checked)
    _part(out, words("page", "questionable"), page.questionable)
    _part(out, words("page", "would_change"), page.would_change)
    if page.verdict not in ("danger", "call_now"):  # no rule set has a say in those
        _part(out, words("page", "by_rule"), page.rule_rows)
    out.gap()
    for line in page.always:
        out.say(line)


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
