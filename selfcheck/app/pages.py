"""What stands on the pages one only reads, as paragraphs of text and part."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from selfcheck.app.words import FaceWords
from selfcheck.domain.showing import show_day
from selfcheck.report.parts import PartedPage

if TYPE_CHECKING:
    from selfcheck.report.wording import VerdictPage
    from selfcheck.sitting import HomeFacts, Sitting, Unfinished

Paragraph = tuple[str, str]
DOT = "· "  # before each thing of a list; its further lines hang below its first word
GAP: Paragraph = ("", "text")
#: how the band behind the one large sentence looks, by verdict
BANDS = {"carry_on": "band_calm", "cannot_tell": "band_soon", "call_soon": "band_soon"}


def home_facts(facts: HomeFacts, sitting: Sitting, half_done: str, words: FaceWords) -> list[Paragraph]:
    """The start's lines about the household. `half_done`: the name of what was left open, if anything was."""
    units = sitting.household.units
    lines: list[Paragraph] = []
    if facts.verdict_line:
        lines.append((facts.verdict_line, "strong"))
    if facts.last_check is None:
        lines.append((words("no_check"), "text"))
    else:
        lines.append((words("last_check", day=show_day(facts.last_check, units)), "text"))
    if facts.look_again is not None:
        lines.append((words("look_again", day=show_day(facts.look_again, units)), "text"))
    if facts.unfinished is not None:
        day = started(facts.unfinished, sitting)
        lines.append((words("half_done", title=half_done, day=day), "open"))
    lines += [(f"{problem.what} {problem.mend}", "trouble") for problem in facts.problems]
    if sitting.read_only:
        lines.append((sitting.read_only, "trouble"))
    if sitting.demonstration:
        lines.append((words("demonstration"), "muted"))
    return lines


def started(unfinished: Unfinished, sitting: Sitting) -> str:
    """The day on which a conversation was begun, as the household writes days."""
    try:
        return show_day(date.fromisoformat(unfinished.started[:10]), sitting.household.units)
    except ValueError:
        return unfinished.started


def verdict(page: VerdictPage, words: FaceWords) -> list[Paragraph]:
    """One sentence first, what to do and by when, how sure; then why, whose rule, when next, what is missing."""
    lines: list[Paragraph] = [(page.headline, BANDS.get(page.verdict, "band_now")), GAP, (page.do, "text")]
    lines += [(line, "text") for line in (page.by, page.kind) if line]
    lines += [GAP, (page.sure, "strong"), *((f"{DOT}{line}", "text") for line in page.because)]
    sections = (
        ("because", page.why), ("by_rule", page.rule_rows), ("when_next", page.when_next), ("seen", page.seen),
        ("not_checked", page.not_checked), ("questionable", page.questionable), ("would_change", page.would_change),
    )  # fmt: skip
    for name, texts in sections:
        lines += _section(words(name), texts)
    return [*lines, GAP, *((line, "muted") for line in page.always)]


def ending(page: VerdictPage | PartedPage, words: FaceWords) -> list[Paragraph]:
    """The page that a conversation ended in."""
    return parted(page) if isinstance(page, PartedPage) else verdict(page, words)


def parted(page: PartedPage) -> list[Paragraph]:
    """A page one only reads: its headline, then part by part."""
    band = BANDS.get(page.verdict, "band_now") if page.verdict else "strong"
    lines: list[Paragraph] = [(page.headline, band)]
    if page.lead:
        lines += [GAP, *((line, "text") for line in page.lead)]
    for title, texts in page.parts:
        lines += _section(title, texts)
    return [*lines, GAP, *((line, "muted") for line in page.always)]


def help_sheet(words: FaceWords) -> list[Paragraph]:
    """Keys and what one may type."""
    keys = (
        ("f1", "help"), ("f2", "why"), ("f3", "how"), ("f4", "back"), ("f5", "change"), ("f6", "unknown"),
        ("f7", "tank"), ("f8", "trouble"), ("f9", "repeat"), ("f10", "leave"),
        ("ctrl+p", "page_colours"), ("ctrl+c", "quit"),
    )  # fmt: skip
    rows = [(f"  {key.ljust(8)}{words(name)}", "text") for key, name in keys]
    first = [(words("help_typing"), "text"), GAP, (words("help_keys"), "text"), GAP]
    return [*first, *rows, GAP, (words("help_reading"), "text"), (words("help_saved"), "text")]


def record(sitting: Sitting, words: FaceWords) -> list[Paragraph]:
    """Checks and pump-outs, the latest first, then what could not be read, and where it all lies."""
    units = sitting.household.units
    replaced = {check.replaces for check in sitting.checks}
    rows = [(check.on, words("corrected" if check.id in replaced else "check")) for check in sitting.checks]
    rows += [(pump_out.on, words("pump_out")) for pump_out in sitting.pump_outs]
    lines: list[Paragraph] = [
        (f"{show_day(day, units).ljust(20)}{kind}", "text")
        for day, kind in sorted(rows, key=lambda row: row[0], reverse=True)
    ]
    lines = lines or [(words("no_check"), "text")]
    lines += [(f"{problem.what} {problem.mend}", "trouble") for problem in sitting.problems]
    return [*lines, GAP, (str(sitting.folder), "muted")]


def _section(title: str, lines: Sequence[str]) -> list[Paragraph]:
    return [GAP, (title, "key"), *((f"{DOT}{line}", "text") for line in lines)] if lines else []
