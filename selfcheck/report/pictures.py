"""The pictures of a household's page, each as one SVG element with a title and a description."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from selfcheck.domain.check import Check, PumpOut, standing
from selfcheck.domain.layers import Layers, layers
from selfcheck.domain.limits import stand
from selfcheck.domain.marks import marks
from selfcheck.domain.verdict import Judgement
from selfcheck.drawing import cloth, history, patches, section, sketch
from selfcheck.drawing.section_picture import SectionWords
from selfcheck.report.markup import Html

Tables = Mapping[str, Any]
#: checks without readings that are passed over at most; our choice
_LOOKED_AT = 20


def pictures(
    judgement: Judgement, checks: Sequence[Check], pump_outs: Sequence[PumpOut], words: Tables, prefix: str = "p"
) -> list[Html]:
    """The tank in section, both layers over the years, the cloth, where the lid is; surfaces that were not healthy.

    What is not known is left out.

    `words`: the tables of `pictures`. `prefix` begins every id in them, so that two tanks can share one page.
    """
    tank, body, units = judgement.tank, judgement.vessel, judgement.household.units
    mine = [one for one in standing(list(checks)) if one.tank == tank.id and one.on <= judgement.today]
    before = [one for one in mine if judgement.check is None or one.id != judgement.check.id]
    last = layers(tank, body, before[-1].seen.readings, before[-1].seen.level) if before else None
    now, then = judgement.layers, None
    if now is not None and now.sludge is None and now.scum is None:
        now, last, then = _read_before(judgement, before, pump_outs)
    in_section = section.describe(
        body,
        now,
        judgement.standings if then is None or now is None else stand(judgement.rules, now, body),
        last if now is not None else None,
        SectionWords(**words["section"]),
        tank=tank,
        second_layers=judgement.second_layers,
        read_on=then,
    )
    found = [section.as_svg(in_section, units, f"{prefix}-tank")]
    if mine or pump_outs:
        over_time = history.describe(judgement, checks, pump_outs, words["history"])
        found.append(history.as_svg(over_time, units, f"{prefix}-years"))
    if judgement.check is not None and judgement.check.seen.readings.sludge and not judgement.pumped_since:
        crust = judgement.layers.scum if judgement.layers is not None else None
        here = marks(judgement.rules, tank, body, units, scum_m=crust.value if crust is not None else None)
        read = cloth.describe(judgement.check.seen.readings, words["cloth"], here)
        found.append(cloth.as_svg(read, units, f"{prefix}-cloth"))
    if tank.place is not None and tank.place.from_a_m is not None and tank.place.from_b_m is not None:
        found.append(sketch.as_svg(sketch.describe(tank.place, words["sketch"]), units, f"{prefix}-lid"))
    found += _surfaces(judgement, words, prefix)
    return [Html(one) for one in found]


def _read_before(
    judgement: Judgement, before: Sequence[Check], pump_outs: Sequence[PumpOut]
) -> tuple[Layers | None, Layers | None, date | None]:
    """What the last check that read a layer found, then the one before it, and the day of the first.

    The layers of today, and no day, where the tank was pumped out since or nobody read one.
    """
    tank, body = judgement.tank, judgement.vessel
    emptied = max((one.on for one in pump_outs if one.tank == tank.id and one.on <= judgement.today), default=date.min)
    found = [(one.on, layers(tank, body, one.seen.readings, one.seen.level)) for one in before[-_LOOKED_AT:]]
    read = [(on, one) for on, one in found if one.sludge is not None or one.scum is not None]
    if not read or read[-1][0] <= emptied:
        return judgement.layers, read[-1][1] if read else None, None
    return read[-1][1], read[-2][1] if len(read) > 1 else None, read[-1][0]


def _surfaces(judgement: Judgement, words: Tables, prefix: str) -> list[str]:
    """The patches of what was seen, where that is not the healthy one."""
    if judgement.check is None or judgement.pumped_since:
        return []
    seen, units = judgement.check.seen, judgement.household.units
    attacked = judgement.tank.material not in ("plastic", "fibreglass")
    topics: tuple[tuple[patches.Topic, str | None, str], ...] = (
        ("surface", seen.surface, "brown"),
        ("wall", seen.wall, "sound"),
    )
    return [
        patches.as_svg(patches.describe(topic, words["patches"], told, attacked), units, f"{prefix}-{topic}")
        for topic, told, healthy in topics
        if told not in (None, "unknown", healthy)
    ]
