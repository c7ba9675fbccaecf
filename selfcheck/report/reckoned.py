"""What was not read but reckoned or assumed, as a line each, with whose figure stands in."""

from __future__ import annotations

from selfcheck.domain.flow import flow
from selfcheck.domain.showing import show_length, show_volume
from selfcheck.domain.verdict import Judgement
from selfcheck.report.finding_text import Units, VerdictWords

#: the share of the liquid depth at which an outlet device is taken to hang
OUTLET_SOURCE = "wac-246-272c"


def reckoned(judgement: Judgement, words: VerdictWords, units: Units) -> list[str]:
    """How the crust was made whole, where the outlet hangs, how large the tank is, and how much water runs in.

    Only what the layers of the last check rest on. ContentProblem: words missing.
    """
    found, body, lines = judgement.layers, judgement.vessel, list[str]()
    if found is None:
        return lines
    if found.two_thirds_used and found.scum is not None:
        lines.append(words.say("reckoned", f"scum_{found.scum_way}"))
    if found.outlet_assumed and found.outlet_height is not None:
        edge = show_length(max(body.liquid_depth_m - found.outlet_height.value, 0.0), units)
        source = words.sources.get(OUTLET_SOURCE)
        title = source.title if source is not None else ""
        lines.append(words.say("reckoned", "outlet").format(edge=edge, source=title))
    if judgement.detention_days is None:
        return lines
    if body.basis in ("bedrooms", "default"):
        told = {"size": show_volume(body.full_m3, units), "error": f"{100 * body.relative_error:.0f}"}
        source = words.sources.get(body.table)
        table = words.named(source) if source is not None else ""
        lines.append(words.say("reckoned", f"size_{body.basis}").format(table=table, **told))
    one_person = flow(1.0, judgement.household.meter, judgement.today)
    water = show_volume(one_person.litres_per_day / 1000.0, units)
    lines.append(words.say("reckoned", f"water_{one_person.basis}").format(water=water))
    return lines
