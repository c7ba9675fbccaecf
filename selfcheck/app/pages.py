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
    from selfcheck.sitting.steps import Page

Paragraph = tuple[str, str]
DOT = "· "  # before each thing of a list; its further lines hang below its first word
GAP: Paragraph = ("", "text")
#: how the band behind the one large sentence looks, by verdict
BANDS = {"carry_on": "band_calm", "cannot_tell": "band_soon", "call_soon": "band_soon"}

#: verdicts that no rule set has a say in: whose rule it is stands on the page that looks ahead
URGENT = ("danger", "call_now")


def home_facts(facts: HomeFacts, sitting: Sitting, half_done: str, words: FaceWords) -> list[Paragraph]:
    """The start's lines about the household. `half_done`: the name of what was left open, if anything was."""
    units = sitting.household.units
    lines: list[Paragraph] = []
    if facts.verdict_line:
        lines.append((facts.verdict_line, "strong"))
    lines += [(facts.by, "text")] if facts.by else []
    if facts.last_check is None:
        lines.append((words("no_check"), "text"))
    else:
        lines.append((words("last_check", day=show_day(facts.last_check, units)), "text"))
    if facts.unfinished is not None:
        day = started(facts.unfinished, sitting)
        lines.append((words("half_done", title=half_done, day=day), "open"))
        if facts.unfinished.lid_off:
            lines.append((words("half_done_lid"), "trouble"))
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
    rules = () if page.verdict in URGENT else page.rule_rows
    sections = (
        ("because", page.why), ("by_rule", rules), ("when_next", page.when_next),
        ("seen", (*page.seen, *page.not_used)),
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
    if page.drawn:
        lines += [GAP, *((line, "text") for line in page.drawn)]
    for title, texts in page.parts:
        lines += _section(title, texts)
    return [*lines, GAP, *((line, "muted") for line in page.always)]


def of_desk(page: Page, words: FaceWords) -> list[Paragraph]:
    """A page with ways on: what stands first, the verdict where it has one, else part by part."""
    lines: list[Paragraph] = []
    for part in page.parts:
        if not part.lines:
            continue
        lines += [GAP] if lines else []
        lines += [(part.title, "key")] if part.title else []
        kind = "text" if part.kind == "items" else part.kind
        for line in part.lines:
            first, *more = line.split("\n")
            lines.append((f"{DOT}{first}" if part.kind == "items" else first, kind))
            lines += [(f"  {one}", "muted") for one in more]
    if page.verdict is not None:
        lines += [*([GAP] if lines else []), *ending(page.verdict, words)]
    return lines


COMMANDS_KEY = "ctrl+p"
#: stands for the colours among the commands; it is no key
COLOURS_KEY = "colours"
#: keys that do something in each place
KEYS = {
    "start": (("f7", "tank"), (COMMANDS_KEY, "all_commands"), ("ctrl+c", "quit")),
    "talk": (
        ("f2", "why"), ("f3", "how"), ("f4", "back"), ("f5", "change"), ("f6", "unknown"), ("f7", "tank"),
        ("f8", "trouble"), ("f9", "repeat"), ("f10", "leave"), ("f12", "sheet_key"), (COMMANDS_KEY, "all_commands"),
        ("ctrl+c", "quit"),
    ),
    "pages": (("escape", "back"), ("f7", "picture"), (COMMANDS_KEY, "all_commands"), ("ctrl+c", "quit")),
}  # fmt: skip


def help_sheet(words: FaceWords, here: str) -> list[Paragraph]:
    """What one may type and the keys, in the place where one stands: one of `KEYS`."""
    rows = [(f"  {key.ljust(8)}{words(name)}", "text") for key, name in KEYS[here]]
    reading = [(words("help_reading"), "text")] if here == "talk" else []
    return [(words(f"help_{here}"), "text"), GAP, *rows, GAP, *reading, (words("help_saved"), "text")]


def _section(title: str, lines: Sequence[str]) -> list[Paragraph]:
    return [GAP, (title, "key"), *(one for line in lines for one in _item(line))] if lines else []


def _item(line: str) -> list[Paragraph]:
    """One thing of a list; what stands on lines of its own hangs below it."""
    first, *more = line.split("\n")
    return [(f"{DOT}{first}", "text"), *((f"  {one}", "muted") for one in more)]
