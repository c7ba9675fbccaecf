"""The paper sheet for the check outside: what it says, in the order of the screens.

Safety items, signs and steps come from the conversation itself, so that paper and screen never say different things.
Everything about opening stands after the safety list.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from selfcheck.domain.household import Household, Tank
from selfcheck.domain.marks import Marks, marks
from selfcheck.domain.showing import show_day
from selfcheck.domain.verdict import Judgement
from selfcheck.drawing.lengths import Units, number, on_a_tape, unit
from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.text import clean

Words = Mapping[str, Any]
#: Two readings further apart than this ask for a third (see `domain.agreement`).
_APART = {"us": "1 in", "metric": "2.5 cm"}


@dataclass(frozen=True, slots=True)
class Item:
    """Something to circle: its name, what may be answered, and when it applies where not always."""

    name: str
    choices: tuple[str, ...]
    only: str = ""


@dataclass(frozen=True, slots=True)
class Mark:
    """One mark: its large figure, what it is called, and what it means."""

    figure: str
    name: str
    about: str = ""


@dataclass(frozen=True, slots=True)
class Box:
    """One reading to write down, with the ends of its lines: how many boxes, and when."""

    name: str
    count: int = 1
    only: str = ""


@dataclass(frozen=True, slots=True)
class Sheet:
    """The sheet as plain text, part by part, in the order in which it is used."""

    title: str
    made: str
    day: str
    who: str
    danger: tuple[str, str, str]
    shut: str  # why the tank is not to be opened at all; empty where nothing says so
    contacts: tuple[str, ...]
    before_title: str
    lid: tuple[str, str]
    people: str
    early_signs: tuple[Item, ...]
    bring: tuple[str, str]
    pole: tuple[str, tuple[Mark, ...]]
    stick: tuple[str, tuple[Mark, ...]]
    gate_title: str
    gate_say: str
    gate: tuple[str, ...]  # one box each, as something seen or done
    gate_stop: str
    open_title: str
    lid_off: str
    look: tuple[str, str, tuple[Item, ...]]
    crust: tuple[str, str, str, tuple[Box, ...]]
    by_crust: tuple[str, str, tuple[tuple[str, str], ...]]
    pole_title: str
    pole_do: str
    boxes: tuple[Box, ...]
    close: tuple[str, str, tuple[str, ...], str]
    notes: str
    always: str
    unit: str


def sheet(judgement: Judgement, script: Script, words: Words) -> Sheet:
    """The sheet for the tank of a judgement. `script`: the yearly conversation; `words`: the tables of `sheet_page`.

    Marks stand in the household's units. Raises KeyError or ContentProblem when words are missing.
    """
    household, tank, units = judgement.household, judgement.tank, judgement.household.units
    found = marks(judgement.rules, tank, judgement.vessel, units)
    page, before = words["page"], words["before"]
    caution = script.cautions["fell_in"]
    title = page["title"]
    name = clean(household.name, 40) or page["no_name"]
    return Sheet(
        title=f"{title} · {name}",
        made=page["made"].format(day=show_day(judgement.today, units), rule=judgement.rules.title),
        day=page["day"],
        who=page["who"],
        danger=(page["danger"], page["in_case"], caution.avoid),
        shut=words["page"]["shut"] if judgement.verdict in ("call_now", "danger") else "",
        contacts=_contacts(household, page["call"]),
        before_title=before["title"],
        lid=(before["lid"], _where(tank, before, units)),
        people=before["people"],
        early_signs=_early_signs(script),
        bring=(before["bring"], before["bring_all"]),
        pole=(before["pole"], _pole_marks(found, words["marks"], units)),
        stick=(before["stick"], _stick_marks(found, words["marks"], units)),
        gate_title=words["gate"]["title"],
        gate_say=words["gate"]["say"],
        gate=_gate(script, words["ticks"]),
        gate_stop=words["gate"]["stop"],
        open_title=words["open"]["title"],
        lid_off=_do(script, "lid_off"),
        look=(words["look"]["title"], words["look"]["circle"], _signs(script, words["look"], tank)),
        crust=(words["crust"]["title"], _do(script, "crust_do"), words["crust"]["one_way"], _crust(script)),
        by_crust=_by_crust(found, words["marks"], units),
        pole_title=words["pole"]["title"],
        pole_do=script.words_of("pole_do").ask,
        boxes=_boxes(script, words["pole"], units, tank),
        close=(
            words["close"]["title"],
            script.words_of("lid_back").before,
            _labels(script, "lid_back", only=script.nodes["lid_back"].closes),
            words["close"]["after"],
        ),
        notes=words["close"]["notes"],
        always=words["footer"]["always"],
        unit=unit(units),
    )


def _early_signs(script: Script) -> tuple[Item, ...]:
    """What is wrong today already, before anybody goes near the tank."""
    alarm = _labels(script, "alarm", only=tuple(script.nodes["alarm"].hazard))
    return (
        Item(script.name_of("wrong_now"), _labels(script, "wrong_now")),
        Item(script.name_of("alarm"), alarm),
    )


def _gate(script: Script, ticks: Words) -> tuple[str, ...]:
    """Every safety item as what was seen or done, in words of the paper or else the answers that let a person go on.

    An answer that only leads to the same question asked another way is no such answer, and that other way is left out.
    """
    section = next(one for one in script.flow.sections if one.id == "gate")
    inside = {node.id for node in section.nodes}
    asked_again = {(one.question, option) for node in section.nodes for one in node.when for option in one.is_}
    boxes: list[str] = []
    for node in section.nodes:
        if not node.gate or any(one.question in inside for one in node.when):
            continue
        good = tuple(option for option in node.passes if (node.id, option) not in asked_again)
        answers = " / ".join(_labels(script, node.id, only=good))
        boxes += ticks.get(node.id) or [f"{script.name_of(node.id)}: {answers}"]
    return tuple(boxes)


def _signs(script: Script, words: Words, tank: Tank) -> tuple[Item, ...]:
    """What to circle; a filter only where one may be fitted."""
    section = next(one for one in script.flow.sections if one.id == "look")
    items: list[Item] = []
    for node in section.nodes:
        if node.kind not in ("choose", "choose_several") or node.id in words["leave_out"]:
            continue
        if node.id == "filter" and tank.filter is False:
            continue
        name, choices = script.name_of(node.id), _labels(script, node.id, without=words["leave_out_choices"])
        only = words["if_wrong"] if _is_follow_up(node, script) else ""
        if items and items[-1].choices == choices:  # the same answers for two parts stand once
            items[-1] = Item(f"{items[-1].name}, {name}", choices, only)
        else:
            items.append(Item(name, choices, only))
    return tuple(items)


def _is_follow_up(node: Node, script: Script) -> bool:
    return any(script.nodes[one.question].kind == "choose_several" for one in node.when if one.question)


def _labels(
    script: Script, ident: str, only: tuple[str, ...] | None = None, without: tuple[str, ...] = ()
) -> tuple[str, ...]:
    options = script.nodes[ident].options if only is None else only
    return tuple(script.label_of(ident, option) for option in options if option not in without)


def _do(script: Script, ident: str) -> str:
    said = script.words_of(ident)
    return f"{said.before} {said.ask}".strip()


def _crust(script: Script) -> tuple[Box, ...]:
    return tuple(Box(script.name_of(one)) for one in ("scum_total", "scum_above", "scum_below"))


def _boxes(script: Script, words: Words, units: Units, tank: Tank) -> tuple[Box, ...]:
    """Readings with the pole, and those of a second part, which has a lid of its own to push."""
    third = words["third"].format(step=_APART[units])
    second = [Box(name) for name in words["second"]] if (tank.compartments or 1) > 1 else []
    return (
        Box(script.name_of("wet_line")),
        Box(script.name_of("sludge_1")),
        Box(script.name_of("sludge_2")),
        Box(script.name_of("sludge_3"), only=third),
        Box(script.name_of("outlet_depth")),
        *second,
    )


def _pole_marks(found: Marks, words: Words, units: Units) -> tuple[Mark, ...]:
    made = [_mark(found.book_sludge_m, words["book"], words["book_why"], words, units)]
    if found.wet_line_m is not None:
        made.append(Mark(_figure(found.wet_line_m, units), words["wet"]))
    return tuple(made)


def _stick_marks(found: Marks, words: Words, units: Units) -> tuple[Mark, ...]:
    edge = Mark(_figure(found.outlet_edge_m, units), words["edge"], words["assumed"] if found.outlet_assumed else "")
    return (_mark(found.book_scum_m, words["book_scum"], words["book_scum_why"], words, units), edge)


def _mark(metres: float | None, name: str, about: str, words: Words, units: Units) -> Mark:
    if metres is None:
        return Mark("–", name, words["no_limit"])
    if metres <= 0:
        return Mark(_figure(0.0, units), name, words["used_up"])
    return Mark(_figure(metres, units), name, about)


def _by_crust(found: Marks, words: Words, units: Units) -> tuple[str, str, tuple[tuple[str, str], ...]]:
    """The mark on the pole for each height of crust, up to the first at which any sludge is too much."""
    rows = []
    for row in found.by_crust:
        if row.book_sludge_m is None:
            continue
        any_is_too_much = row.book_sludge_m <= 0
        mark = words["any"] if any_is_too_much else _figure(row.book_sludge_m, units)
        rows.append((_figure(row.scum_above_m, units), mark))
        if any_is_too_much:
            break
    return words["by_crust"], words["crust"], tuple(rows)


def _figure(metres: float, units: Units) -> str:
    return f"{number(metres, units)} {unit(units)}"


def _where(tank: Tank, words: Words, units: Units) -> str:
    place, lid = tank.place, tank.lid
    parts = []
    if place is not None and place.from_a_m is not None and place.from_b_m is not None:
        lengths = {"from_a": on_a_tape(place.from_a_m, units), "from_b": on_a_tape(place.from_b_m, units)}
        parts.append(words["lid_from"].format(**lengths, a=clean(place.corner_a, 30), b=clean(place.corner_b, 30)))
    if place is not None:
        parts += [clean(one, 60) for one in (place.side, place.note) if one]
    if lid is not None and lid.buried_m:
        parts.append(words["lid_deep"].format(deep=on_a_tape(lid.buried_m, units)))
    return "; ".join(parts) or str(words["lid_not_known"])


def _contacts(household: Household, call: str) -> tuple[str, ...]:
    named = [one for one in household.contacts if one.phone]
    return tuple(f"{call} {clean(one.role or one.name, 40)}: {clean(one.phone, 40)}" for one in named[:2])
