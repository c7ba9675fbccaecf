"""What to say when calling a service: one screen of plain lines."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from selfcheck.domain import lid as lids
from selfcheck.domain.check import PumpOut
from selfcheck.domain.findings import Finding, rank
from selfcheck.domain.history import counted
from selfcheck.domain.household import Lid, Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.showing import show_date, show_day, show_length, show_length_error, show_volume
from selfcheck.domain.verdict import Judgement
from selfcheck.drawing.lengths import Units
from selfcheck.report.finding_text import VerdictWords, limit_kind, text_of
from selfcheck.report.verdict_text import headline
from selfcheck.text import clean

Tables = Mapping[str, Any]
WIDTH = 78
#: It sets itself to a terminal between these. Our choice.
NARROWEST, WIDEST = 60, 100
MOST_ROWS = 22
#: What a call cannot do without: whom to call, what is wanted, by when, and why.
_WHOLE = ("call", "want", "by", "signs")
_MOST_SIGNS = 2
_MOST_MISSING = 4
_LABEL = 10
_POUND = 0.45359237
#: Signs whose call says what is the matter in words of its own, the most urgent first.
_NAMED = ("sewage_backup", "slow_and_gurgling", "level_high_and_drains")
#: Days for which a tank counts as pumped just now. Our choice.
_JUST_DAYS = 90
_HALF_PUMPED = "pump_out_one_compartment_only"


@dataclass(frozen=True, slots=True)
class Note:
    """The note as (label, what to say), in the order in which it is said. `first` stands above all of it.

    `whole`: labels of what is never cut short, the number to call and the reason to call.
    """

    title: str
    first: str
    said: tuple[tuple[str, str], ...]
    whole: frozenset[str] = frozenset()


def call_note(judgement: Judgement, pump_outs: Sequence[PumpOut], verdict_words: VerdictWords, words: Tables) -> Note:
    """The note for the judged tank, in the household's units. `words`: the tables of `call_note`.

    Raises ContentProblem or KeyError when words are missing.
    """
    labels, units = words["labels"], judgement.household.units
    said = [
        (labels["call"], _whom(judgement)),
        (labels["want"], _wanted(judgement, words["want"])),
        (labels["by"], _by(judgement)),
        (labels["tank"], _tank(judgement, words["tank"], units)),
        (labels["access"], _access(judgement.tank, words, units)),
        (labels["hose"], _hose(judgement.tank, words["hose"], units)),
        (labels["read"], _read(judgement, words["read"], units)),
        (labels["pumped"], _pumped(judgement, pump_outs, words["pumped"], units)),
        (labels["signs"], _signs(judgement, verdict_words, words["signs"], units)),
        (labels["ask"], _questions(judgement, pump_outs, words["ask"])),
        (labels["not_done"], _not_done(judgement, pump_outs, verdict_words, words["not_done"])),
    ]
    first = ""
    if judgement.verdict == "danger":
        first = f"{headline(judgement, verdict_words, units)} {words['note']['danger']}"
    elif judgement.check is None:
        first = words["note"]["unchecked"]
    elif not judgement.call_professional:
        first = words["note"]["no_need"]
    told = tuple((label, what) for label, what in said if what)
    return Note(words["note"]["title"], first, told, frozenset(labels[name] for name in _WHOLE))


def note_lines(note: Note, columns: int = WIDTH) -> list[str]:
    """The note as at most 22 lines, as wide as `columns` within 60 and 100 signs.

    Where a record says more than fits, the longest part is cut that may be.
    """
    most = max(NARROWEST, min(columns, WIDEST))
    parts = [(label, textwrap.wrap(what, most - _LABEL)) for label, what in note.said]
    head = [note.title, *textwrap.wrap(note.first, most)]
    while len(head) + sum(len(lines) for _, lines in parts) > MOST_ROWS:
        longest = max((lines for label, lines in parts if label not in note.whole), key=len, default=[])
        if len(longest) < 2:
            break
        longest.pop()
        longest[-1] = f"{longest[-1][: most - _LABEL - 1].rstrip(' ,;')}…"
    return head + [
        f"{label if number == 0 else '':<{_LABEL}}{line}" for label, lines in parts for number, line in enumerate(lines)
    ]


def _whom(judgement: Judgement) -> str:
    named = [one for one in judgement.household.contacts if one.phone or one.name]
    if not named:
        return ""
    return ", ".join(clean(part, 40) for part in (named[0].role, named[0].name, named[0].phone) if part)


def _wanted(judgement: Judgement, words: Tables) -> str:
    """A pump-out where the layers ask for it, somebody to look where a fault does; else an offer.

    What cannot wait stands first: after a danger that all are safe, then sewage in the house.
    """
    if not judgement.call_professional:
        return str(words["service"])
    if judgement.verdict == "danger":
        return str(words["safe"])
    ids = {one.id for one in judgement.deciding}
    named = next((one for one in _NAMED if one in ids), "")
    told = []
    if judgement.verdict == "call_now":
        told.append(words[named] if named else words["today"])
    layers_ask = _layers_ask(judgement)
    if layers_ask:
        told.append(words["pump"] if any(limit_kind(one) for one in layers_ask) else words["estimate"])
    if _HALF_PUMPED in ids:
        told.append(words["other_half"])
    if len(ids - {one.id for one in layers_ask} - {named, _HALF_PUMPED}) > 0:
        told.append(words["look"])
    return "; ".join(told)


def _layers_ask(judgement: Judgement) -> list[Finding]:
    return [one for one in judgement.deciding if limit_kind(one) is not None or one.id == "by_estimate"]


def _just_pumped(judgement: Judgement, pump_outs: Sequence[PumpOut]) -> bool:
    """Whether the tank was pumped since it was last looked into, so that it is not to be pumped once more."""
    emptied = counted(pump_outs, judgement.tank.id, judgement.today)
    if not emptied or _layers_ask(judgement) or (judgement.today - emptied[-1].on).days > _JUST_DAYS:
        return False
    return judgement.check is None or emptied[-1].on >= judgement.check.on


def _by(judgement: Judgement) -> str:
    if not judgement.call_professional or judgement.act_by is None:
        return ""
    return show_day(judgement.act_by, judgement.household.units)


def _tank(judgement: Judgement, words: Tables, units: Units) -> str:
    tank, body = judgement.tank, judgement.vessel
    basis = words[f"basis_{body.basis}"].format(bedrooms=judgement.household.bedrooms)
    count = tank.compartments
    if count is None:
        parts = words["parts_unknown"]
    else:
        parts = words["parts_one"] if count == 1 else words["parts_more"].format(count=count)
    told = [
        f"{show_volume(body.full_m3, units)}, {basis}",
        words[f"form_{tank.shape.kind}"],
        words[f"material_{tank.material or 'unknown'}"],
        parts,
        words["filter"] if tank.filter else "",
    ]
    return "; ".join(one for one in told if one)


def _access(tank: Tank, words: Tables, units: Units) -> str:
    said, place, lid = words["access"], tank.place, tank.lid
    told = [_lid(lid, words, units)] if lid is not None else [said["not_known"]]
    if place is not None and place.from_a_m is not None and place.from_b_m is not None:
        lengths = {"from_a": show_length(place.from_a_m, units), "from_b": show_length(place.from_b_m, units)}
        told.append(said["place"].format(**lengths, a=clean(place.corner_a, 30), b=clean(place.corner_b, 30)))
    if tank.inlet_side:
        told.append(said["inlet"].format(side=clean(tank.inlet_side, 40)))
    if place is not None and place.note:
        told.append(clean(place.note, 60))
    return "; ".join(told)


def _hose(tank: Tank, words: Tables, units: Units) -> str:
    far = tank.place.from_truck_m if tank.place is not None else None
    return str(words["ask"] if far is None else words["far"].format(length=show_length(far, units)))


def _lid(lid: Lid, words: Tables, units: Units) -> str:
    said = words["access"]
    told = [words["lid"][lid.material or "unknown"]]
    across = max((side for side in (lid.diameter_m, lid.length_m, lid.width_m) if side), default=None)
    if across is not None:
        told.append(words["lid"]["across"].format(size=show_length(across, units)))
    weight = lids.mass(lid)
    if weight is not None:
        low = _weight(weight.low_kg, units).partition(" ")[0]
        told.append(said["weight"].format(low=low, high=_weight(weight.high_kg, units)))
    if lid.buried_m is not None:
        told.append(said["buried"].format(deep=show_length(lid.buried_m, units)) if lid.buried_m else said["bare"])
    return str(said["lid"].format(form=", ".join(told)))


def _weight(kilograms: float, units: Units) -> str:
    return f"{kilograms / _POUND:.0f} lb" if units == "us" else f"{kilograms:.0f} kg"


def _read(judgement: Judgement, words: Tables, units: Units) -> str:
    found, check = judgement.layers, judgement.check
    if check is None or found is None:
        return str(words["gone"] if judgement.pumped_since else words["none"])
    day = show_day(check.on, units)
    told = _layers_told(found, units)
    if not told:
        return str(words["none"])
    if found.liquid_depth is not None:
        told["depth"] = show_length(found.liquid_depth.value, units)
    reckoned = f" ({words['two_thirds']})" if found.scum_way == "above" else ""
    second = _layers_told(judgement.second_layers, units) if judgement.second_layers is not None else {}
    then = f"; {words['second'].format(list=_listed(second, words))}" if second else ""
    if len(told) == 3:
        return f"{words['layers'].format(day=day, **told)}{reckoned}{then}"
    return f"{words['part'].format(day=day, list=_listed(told, words))}{reckoned}{then}"


def _layers_told(found: Layers, units: Units) -> dict[str, str]:
    return {
        name: show_length_error(layer.value, layer.error, units)
        for name, layer in (("sludge", found.sludge), ("scum", found.scum))
        if layer is not None
    }


def _listed(told: Mapping[str, str], words: Tables) -> str:
    return ", ".join(words[name].format(**{name: value}) for name, value in told.items())


def _pumped(judgement: Judgement, pump_outs: Sequence[PumpOut], words: Tables, units: Units) -> str:
    emptied = counted(pump_outs, judgement.tank.id, judgement.today)
    if not emptied:
        return str(words["never"])
    last = emptied[-1]
    return str(words["last"].format(day=show_date(last.on, units, *last.span)))


def _signs(judgement: Judgement, verdict_words: VerdictWords, words: Tables, units: Units) -> str:
    """Faults that were seen, the most urgent first; limits and open questions stand elsewhere."""
    titles = {row.rule_set.id: row.rule_set.title for row in judgement.by_rule_set}
    told = [
        text_of(one, verdict_words, units, titles)
        for one in judgement.findings
        if limit_kind(one) is None and rank(one.verdict) >= rank("call_soon") and one.id in verdict_words.signs
    ]
    if not told:
        return str(words["none"])
    more = len(told) - _MOST_SIGNS
    return " ".join(told[:_MOST_SIGNS]) + (f" {words['more'].format(count=more)}" if more > 0 else "")


def _questions(judgement: Judgement, pump_outs: Sequence[PumpOut], words: Tables) -> str:
    """What a good service is asked for: a whole pump-out, but where the tank was pumped just now."""
    if _just_pumped(judgement, pump_outs):
        half = any(one.id == _HALF_PUMPED for one in judgement.findings)
        return "; ".join([*words["service"], *([words["both"]] if half else [])])
    asked = list(words["questions"])
    if (judgement.tank.compartments or 2) > 1:
        asked.insert(3, words["both"])
    if judgement.tank.filter:
        asked.append(words["filter"])
    return "; ".join(asked)


def _not_done(judgement: Judgement, pump_outs: Sequence[PumpOut], verdict_words: VerdictWords, words: Tables) -> str:
    check = judgement.check
    told = []
    if _just_pumped(judgement, pump_outs):
        told.append(words["since"])
    elif check is None or check.gate == "not_opened":
        told.append(words["shut"])
    elif check.gate == "not_confirmed":
        told.append(words["unsafe"])
    missing = [verdict_words.say("missing", one).split(",")[0] for one in judgement.missing]
    if missing and check is not None:
        listed = ", ".join(missing[:_MOST_MISSING]) + ("…" if len(missing) > _MOST_MISSING else "")
        told.append(words["list"].format(list=listed))
    told.append(words["never"])
    return "; ".join(told)
