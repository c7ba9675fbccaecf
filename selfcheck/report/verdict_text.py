"""The short sentences of a judgement: what to do, how sure and why, and what would change it."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from datetime import date

from selfcheck.domain.conversions import INCH
from selfcheck.domain.showing import show_day, show_length
from selfcheck.domain.verdict import Judgement
from selfcheck.report.finding_text import Units, VerdictWords, in_second, limit_kind, name_of, step_of, text_of

#: Steps told together when several faults call for somebody; the others stand in the findings.
_STEPS_TOLD = 2
#: The least anybody reads on a pole; how much thinner a layer would have to be is told in such steps. Our choice.
READABLE_M: dict[Units, float] = {"us": INCH / 4.0, "metric": 0.005}
_SENTENCE_END = re.compile(r"(?<=\.)\s+(?=[A-Z])")


def headline(judgement: Judgement, words: VerdictWords, units: Units) -> str:
    """What stands first. A danger told on an earlier day stands with its day and with what was told."""
    day = danger_on(judgement)
    if day is not None and day < judgement.today:
        told = text_of(judgement.deciding[0], words, units, titles_of(judgement))
        return words.say("headline", "danger_told").format(day=show_day(day, units), told=told)
    return words.say("headline", "time_to_look" if only_time_speaks(judgement) else judgement.verdict)


def only_time_speaks(judgement: Judgement) -> bool:
    """Whether nothing speaks but the time gone by: then it is said so, and not that a check failed."""
    return {finding.id for finding in judgement.findings if finding.verdict == judgement.verdict} == {"time_to_look"}


def danger_on(judgement: Judgement) -> date | None:
    """The day on which the danger that the judgement tells of was told; None where it tells of none."""
    if judgement.verdict != "danger":
        return None
    looked = judgement.check.on if judgement.check is not None else judgement.today
    days = [one.facts.get("on") or one.facts.get("at_pump_out") for one in judgement.deciding]
    return max((day if isinstance(day, date) else looked for day in days), default=judgement.today)


def what_to_do(judgement: Judgement, words: VerdictWords, units: Units) -> str:
    """What to do: from the findings that decide, two at most, else from the verdict."""
    if judgement.verdict == "carry_on":
        return words.say("do", judgement.verdict)
    steps: list[str] = []
    for one in judgement.deciding:
        if limit_kind(one) is not None:
            steps.append(words.say("pump", "call_soon"))
        elif one.id == "by_estimate":
            steps.append(words.say("pump", "by_estimate"))
        else:
            steps.append(step_of(one, words, units))
    told = [step for step in dict.fromkeys(steps) if step]
    most = _STEPS_TOLD if judgement.call_professional and judgement.verdict != "danger" else 1
    return _each_once(told[:most], words) or words.say("do", judgement.verdict)


def _each_once(steps: Sequence[str], words: VerdictWords) -> str:
    """The steps as one text. A sentence that several share comes once, where it came last: so the call ends it.

    A sentence that another one goes beyond (the table `beyond` of the verdicts' words) is left out.
    """
    told = [one for step in steps for one in _SENTENCE_END.split(step)]
    beyond = words.verdicts.get("beyond", {})
    less = {covered for one in told for covered in beyond.get(one.rstrip("."), ())}
    last = {one: place for place, one in enumerate(told)}
    return " ".join(one for place, one in enumerate(told) if last[one] == place and one.rstrip(".") not in less)


def because(judgement: Judgement, words: VerdictWords) -> tuple[str, ...]:
    """Why it is as sure as it is, a reason each."""
    reasons = ("time_to_look",) if only_time_speaks(judgement) else judgement.because
    return tuple(words.say("because", ident) for ident in reasons)


def because_line(judgement: Judgement, words: VerdictWords) -> str:
    """How sure and why, as one sentence."""
    reasons = because(judgement, words)
    sure = words.say("sure", judgement.sure).rstrip(".")
    return f"{sure}: {'; '.join(reasons)}." if reasons else f"{sure}."


def would_change(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    """The smallest change that would turn the verdict, as a sentence, or that there is none where something calls; then
    the better readings that could turn it.
    """
    better = tuple(words.say("better", ident) for ident in judgement.better)
    return (*_smallest(judgement, words, units), *better)


def _smallest(judgement: Judgement, words: VerdictWords, units: Units) -> tuple[str, ...]:
    change = judgement.would_change
    if change is None:
        silent = judgement.verdict in ("carry_on", "danger")
        return () if silent else (words.say("change", "none"),)
    if change.name == "by_estimate":
        return (words.say("change", "answer_by_estimate"),)
    if change.what in ("sludge", "scum") and change.now_m is not None and change.then_m is not None:
        template = words.say("change", f"{change.what}_{change.verdict}")
        step = READABLE_M[units]
        more = math.ceil(abs(change.then_m - change.now_m) / step - 1e-9) * step
        told = template.format(more=show_length(more, units))
        return (told if change.compartment == 1 else in_second(told, words),)
    named = judgement.deciding[0]
    name = (
        name_of(named, words, units) if change.what == "answer" else text_of(named, words, units, titles_of(judgement))
    )
    titles = titles_of(judgement)
    left = next((text_of(one, words, units, titles) for one in judgement.findings if one.id == change.left), "")
    return (words.say("change", f"{change.what}_{change.verdict}").format(name=name, left=left),)


def titles_of(judgement: Judgement) -> dict[str, str]:
    return {row.rule_set.id: row.rule_set.title for row in judgement.by_rule_set}
