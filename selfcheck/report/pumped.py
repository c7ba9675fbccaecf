"""The page after a pump-out: what each thing seen in the empty tank means, and what is left in it costs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from selfcheck.domain.after_pumping import Residue, SeenEmpty, seen_empty
from selfcheck.domain.findings import LADDER, Finding, rank
from selfcheck.domain.household import spread
from selfcheck.domain.showing import show_date, show_length, show_volume
from selfcheck.domain.sources import Source
from selfcheck.report.finding_text import Units, VerdictWords
from selfcheck.report.parts import PageWords, Part, PartedPage, part
from selfcheck.report.wording import VerdictPage


@dataclass(frozen=True, slots=True)
class Pumped:
    """One pump-out as it was told. `on`: None when its day is not known, and nothing was stored then; `within_days`:
    how wide it was told. `left`: what stays in the tank costs, where its depth was told. `tank`: which tank the verdict
    on top is of, where there are several.
    """

    on: date | None
    seen: SeenEmpty
    left: Residue | None
    within_days: int | None = None
    tank: str = ""


def pumped_page(pumped: Pumped, verdict: VerdictPage, words: PageWords, told: VerdictWords, units: Units) -> PartedPage:
    """The page: what to do first, then what was seen, the most urgent first, then what was left.

    On top stands the verdict of the record, or what was seen in the empty tank where that is more urgent. `told`: the
    words of verdicts. ContentProblem: words missing.
    """
    found = _by_urgency(pumped.seen)
    worst = found[0].verdict if found else "carry_on"
    parts = (
        *part(words("title", "seen"), found_lines(pumped.seen, words) or [words("seen", "nothing")]),
        *_residue(pumped, words, told.sources, units),
        *part(words("title", "open"), [words("open", name) for name in _not_told(pumped.seen)]),
        *part(words("title", "when_next"), verdict.when_next),
        *part(words("title", "why"), verdict.because),
    )
    stored = words("lead", "no_day")
    if pumped.on is not None:
        day = show_date(pumped.on, units, *spread(pumped.on, pumped.within_days))
        stored = words("lead", "stored", day=day)
    if rank(worst) > [str(one) for one in LADDER].index(verdict.verdict):
        steps = [str(words.of(one.id).get("do", "")) for one in found if one.verdict == worst]
        lead = tuple(line for line in (*steps[:2], stored) if line)
        return PartedPage(told.say("headline", worst), parts, lead, verdict.always, worst)
    about = words("lead", "tank", tank=pumped.tank) if pumped.tank else ""
    lead = tuple(line for line in (about, verdict.do, verdict.by, verdict.sure, stored) if line)
    return PartedPage(verdict.headline, parts, lead, verdict.always, verdict.verdict)


def found_lines(seen: SeenEmpty, words: PageWords) -> list[str]:
    """Each thing that was found, the most urgent first: what was seen, what it may mean, the one next step."""
    found = [one for one in _by_urgency(seen) if not one.id.startswith("pump_out_residue")]
    told = [words.of(one.id) for one in found]
    return [" ".join(str(about[key]) for key in ("text", "means", "do") if about.get(key)) for about in told]


def _by_urgency(seen: SeenEmpty) -> list[Finding]:
    return sorted(seen_empty(seen), key=lambda one: -rank(one.verdict))


def _residue(pumped: Pumped, words: PageWords, sources: Mapping[str, Source], units: Units) -> tuple[Part, ...]:
    left, cost = pumped.seen.left_m, pumped.left
    lines: list[str] = []
    if left is None:
        lines.append(words("residue", "not_known"))
    elif cost is None or left <= 0:
        lines.append(words("residue", "none"))
    else:
        lines.append(
            words("residue", "litres", depth=show_length(left, units), litres=show_volume(cost.litres / 1000, units))
        )
        if cost.months_to_fill is not None:
            lines.append(words("residue", "months", months=f"{cost.months_to_fill:.0f}"))
        if cost.months_earlier is not None:
            lines.append(words("residue", "earlier", months=f"{max(cost.months_earlier, 0.0):.0f}"))
        skim = any(one.id == "pump_out_residue_skim" for one in seen_empty(pumped.seen))
        lines.append(words("residue", "skim" if skim else "inches"))
    lines += [words("residue", "advice_all"), words("residue", "advice_some"), words("residue", "advice_ours")]
    known = sources.get("common-practice")
    if known is not None:
        lines.append(words.source_line(known))
    return part(words("title", "residue"), lines)


def _not_told(seen: SeenEmpty) -> list[str]:
    """What was not told or not seen, and is worth asking the service."""
    names = (
        "all_out",
        "both_compartments",
        "through_manhole",
        "inlet_tee",
        "outlet_tee",
        "wall",
        "divider",
        "filter_cleaned",
        "backflow",
    )
    return [name for name in names if getattr(seen, name) == "unknown"]
