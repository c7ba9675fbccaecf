"""What stands on the pages one only reads, as paragraphs of text and part."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from selfcheck.app.words import FaceWords

if TYPE_CHECKING:
    from selfcheck.domain.check import Check, PumpOut
    from selfcheck.errors import RecordProblem
    from selfcheck.report.wording import VerdictPage

Paragraph = tuple[str, str]
GAP: Paragraph = ("", "text")


def verdict(page: VerdictPage, words: FaceWords) -> list[Paragraph]:
    """One sentence first, what to do and by when; then how sure and why, the rules, the next look, what is missing."""
    lines: list[Paragraph] = [(page.headline, "strong"), GAP, (page.do, "text")]
    if page.by:
        lines.append((page.by, "text"))
    lines += _section(words.how_sure, [page.sure])
    lines += _section(words.because, _each(page.because))
    lines += _section(words.seen, _each(page.seen))
    lines += _section(words.whose_rule, _each(page.rule_rows))
    lines += _section(words.when_next, _each(page.when_next))
    lines += _section(words.not_checked, _each(page.not_checked))
    lines += _section(words.would_change, _each(page.would_change))
    return [*lines, GAP, (words.first_note, "muted")]


def _section(title: str, lines: Sequence[str]) -> list[Paragraph]:
    kept = [line for line in lines if line]
    return [GAP, (title, "key"), *((line, "text") for line in kept)] if kept else []


def _each(value: object) -> list[str]:
    if isinstance(value, str):
        return [value]
    if isinstance(value, Iterable):
        return [line if isinstance(line, str) else " · ".join(str(part) for part in line if part) for line in value]
    return []


def help_sheet(words: FaceWords) -> list[Paragraph]:
    """Keys and what one may type."""
    keys = (
        ("f1", words.help), ("f2", words.why), ("f3", words.how), ("f4", words.back), ("f5", words.change),
        ("f6", words.unknown), ("f7", words.tank), ("f8", words.trouble), ("f9", words.repeat), ("f10", words.leave),
        ("ctrl+p", words.page_colours.lower()), ("ctrl+c", words.quit),
    )  # fmt: skip
    rows = [(f"  {key.ljust(8)}{word}", "text") for key, word in keys]
    end = [GAP, (words.help_saved, "text"), GAP, (words.first_note, "muted")]
    return [(words.help_typing, "text"), GAP, (words.help_keys, "text"), GAP, *rows, *end]


def record(
    checks: Sequence[Check], pump_outs: Sequence[PumpOut], problems: Sequence[RecordProblem], words: FaceWords
) -> list[Paragraph]:
    """Checks and pump-outs, the latest first, then what could not be read."""
    rows = [
        (check.on, words.record_check, f"{words.record_replaces} {check.replaces}" if check.replaces else "")
        for check in checks
    ]
    rows += [(pump_out.on, words.record_pump_out, pump_out.by) for pump_out in pump_outs]
    lines: list[Paragraph] = [
        (f"{day.isoformat()}  {kind}{'  ' + more if more else ''}", "text")
        for day, kind, more in sorted(rows, key=lambda row: row[0], reverse=True)
    ]
    if not lines:
        lines = [(words.record_empty, "text")]
    lines += [(f"{problem.what} {problem.mend}", "trouble") for problem in problems]
    return lines
