"""One check whole: its readings, what was seen, the verdict as of its day, and the words it was made of."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Any

from selfcheck.domain.showing import show_length
from selfcheck.interview.context import Context
from selfcheck.interview.septic_finishing import answers_of
from selfcheck.interview.transcript import transcript
from selfcheck.loading.conversations import flow_ids, script
from selfcheck.sitting.steps import Go, Page, Part, Talk, Way

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.interview.script import Script
    from selfcheck.report.parts import PageWords
    from selfcheck.sitting.record_pages import RecordPages

YEARLY = "yearly"


def check_page(record: RecordPages, check: Check) -> Page:
    """The check with its ways: mend it, and read what was said."""
    sitting, words = record.sitting, record.words
    replaced = check.id in {other.replaces for other in sitting.checks}
    asked = _script_of(record, check)
    verdict = sitting.verdict_then(check)
    now = tuple(line for line in (verdict.headline, verdict.do, verdict.by) if line)
    parts = [
        Part(now, words("check", "verdict"), "strong"),
        Part(_readings(record, check), words("check", "readings"), "items"),
        Part(signs(words, check), words("check", "signs"), "items"),
    ]
    about = [words("check", f"gate_{check.gate}")] if check.gate else []
    about += [words("check", "lid_closed")] if check.lid_closed else []
    about += [words("check", "replaces")] if check.replaces else []
    about = [words("check", "replaced"), *about] if replaced else about
    parts += [Part(tuple(about), kind="muted")] if about else []
    ways = [Way(words("check", "answers"), lambda: Go(partial(_said, record, check, asked)), ("answers", "words"))]
    if not replaced:
        ways.append(Way(words("check", "mend"), lambda: Talk(sitting.correct(check.id)), ("mend", "correct", "change")))
    drawn = None
    if not replaced:
        from selfcheck.sitting.pictures import cloth

        drawn = cloth(sitting, check)
    return Page(words("check", "title", day=record.day(check.on)), tuple(parts), tuple(ways), drawn=drawn)


def _script_of(record: RecordPages, check: Check) -> Script:
    """The conversation that the check was made in: the one that asks most of what was answered."""
    place = record.sitting.place
    answered = {answer.get("question") for answer in _answers(check)}
    scripts = [script(place, flow) for flow in flow_ids(place)]
    kept = [one for one in scripts if one.flow.records]
    yearly = next(one for one in kept if one.flow.id == YEARLY)
    return max(kept, key=lambda one: (len(answered & one.nodes.keys()), one is yearly))


def _answers(check: Check) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = check.model_dump(mode="json")["answers"]
    return found


def _readings(record: RecordPages, check: Check) -> tuple[str, ...]:
    words, units = record.words, record.sitting.household.units
    lines = []
    for name, label in words.of("readings").items():
        for one in getattr(check.seen.readings, name, ()):
            phrase = "reading" if one.said else "reading_bare"
            lines.append(words("check", phrase, name=label, length=show_length(one.m, units), said=one.said))
    return tuple(lines) or (words("check", "no_readings"),)


def signs(words: PageWords, check: Check) -> tuple[str, ...]:
    """Each thing that was looked at, and what was seen."""
    lines = []
    for name, value in check.seen.model_dump(mode="json").items():
        names = words.of(f"seen_{name}")
        if value is None or not names:
            continue
        if value == "unknown":
            seen = words("check", "not_told")
        elif isinstance(value, list):
            seen = ", ".join(str(names.get(one, one)) for one in value) or str(names["nothing"])
        else:
            seen = str(names.get(value, value))
        lines.append(f"{names['name']}: {seen}")
    return tuple(lines)


def _said(record: RecordPages, check: Check, asked: Script) -> Page:
    """The conversation of a check: every question with what was answered."""
    sitting, words = record.sitting, record.words
    dates = {name for name, node in asked.nodes.items() if node.kind == "date"}
    context = Context(check.on, sitting.household, units=sitting.household.units)
    lines: list[str] = []
    for message in transcript(asked, context, answers_of(check, dates)):
        if message.kind == "ask":
            lines.append(message.text)
        elif lines:
            name = "said" if message.kind == "said" else "meant"
            lines[-1] += "\n" + words("check", name, **{name: message.text})
    said = [str(answer["said"]) for answer in _answers(check) if answer.get("said")]
    lines = lines or [words("check", "said", said=one) for one in said]
    title = words("check", "title", day=record.day(check.on))
    shown = Part(tuple(lines), words("check", "answers"), "items") if lines else Part((words("check", "no_answers"),))
    return Page(title, (shown,))
