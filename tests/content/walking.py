"""The conversations as they stand in the content, the households they are walked with, and the graph of each.

The yearly check is walked in parts, since every answer of one part meets every answer of the other: `way` varies all
that comes before the tank is open and reads it in one way; `readings` goes out in one way and varies all that is read;
`path` takes hardly any turn of its own, and is for what may happen at any moment.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cache

import pytest

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.interview import septic_readings
from selfcheck.interview.answers import BREAK, Answer, Value
from selfcheck.interview.context import Context
from selfcheck.interview.predicates import PREDICATES, Named
from selfcheck.interview.routes import Graph, explore
from selfcheck.interview.script import Script
from selfcheck.loading import content_place, rules, script

PLACE = content_place(own=False)
TODAY = date(2026, 5, 18)
HOUSEHOLDS = ("new", "known", "partly")
READINGS = ("level", "surface", "smell", "parts", "scum_total", "wet_line", "sludge_1", "sludge_2", "outlet_depth")
LID = ("lid_form", "lid_diameter", "lid_side", "lid_width", "lid_thickness", "lid_material")
LAYERS = ("scum_total", "scum_above", "scum_below", "sludge_1", "sludge_2", "sludge_3", "crust_hangs")
TURNING = (
    "third_sludge_reading_wanted", "outlet_depth_wanted", "crust_hangs_wanted", "crust_stands_wanted",
    "crust_part_wanted",
)  # fmt: skip
FACTS = ("last_pump_out", "people", "size", "people_since", "facts_same")


@dataclass(frozen=True)
class Walk:
    """What is tried: `samples` by question, else every option. `sure`: questions with no "don't know".

    `resumed`: it is taken up again after a break.
    """

    flow: str
    samples: dict[str, tuple[Value, ...]] = field(default_factory=dict)
    sure: tuple[str, ...] = ()
    resumed: bool = False


SEVERAL: dict[str, tuple[Value, ...]] = {
    "wrong_now": ((), ("fell_in",), ("house",), ("yard",), ("house", "yard")),
    "house_signs": (("sewage_backup",), ("gurgling",)),
    "yard_signs": (("sunken_ground",), ("lush_strip",)),
}
#: one value that leads on, and one that leads elsewhere, where a condition looks at the number
NUMBERS: dict[str, tuple[Value, ...]] = {
    "people": (3.0,),
    "size": (3.8,),
    "bedrooms": (3.0,),
    "wet_line": (1.2,),
    "scum_total": (0.08,),
    "scum_above": (0.03,),
    "scum_below": (0.05,),
    "sludge_1": (0.2,),
    "sludge_2": (0.2, 0.35),
    "sludge_3": (0.2,),
    "outlet_depth": (0.42,),
    "crust_hangs": (0.05,),
    "crust_stands": (0.03,),
    "second_scum": (0.02,),
    "second_sludge_1": (0.1,),
    "second_sludge_2": (0.1,),
    "lid_form": ("round", "rectangular"),
    "lid_diameter": (0.61,),
    "lid_side": (0.61,),
    "lid_width": (0.5,),
    "lid_thickness": (0.076,),
    "lid_material": ("concrete",),
}
#: the way out to the tank, and what is read there, where a walk is not about them
OUT: dict[str, tuple[Value, ...]] = {
    "way_in": ("guided", "sheet"),
    "wrong_now": ((),),
    "alarm": ("not_fitted",),
    "facts_same": ("same",),
    "lid_form": ("round",),
    "gate_helper": ("adult_here",),
    "gate_away": ("none_here",),
    "gate_lid": ("firm_heavy", "cracked"),
    "gate_teach": ("call_stay_out",),
}
READ: dict[str, tuple[Value, ...]] = {
    "level": ("at_outlet",),
    "surface": ("brown",),
    "smell": ("earthy",),
    "parts": ((),),
    "sludge_2": (0.2,),
}


def along(*ways: dict[str, tuple[Value, ...]], **tried: tuple[Value, ...]) -> dict[str, tuple[Value, ...]]:
    """The samples of a walk: the usual numbers, the ways it goes as usual, and what it is about."""
    samples = dict(NUMBERS)
    for way in (*ways, tried):
        samples |= way
    return samples


WALKS = {
    "way": Walk(
        "yearly",
        along(SEVERAL, READ, level=("at_outlet", "stayed_shut"), what_changed=(("pumped", "people", "size"),)),
        (*READINGS, "what_changed"),
    ),
    # of crust, smell and the state of parts no condition looks at which of them it is
    "readings": Walk(
        "yearly",
        along(
            OUT,
            gate_lid=("firm_heavy",),
            surface=("brown", "no_crust"),
            smell=("earthy",),
            inlet_tee_state=("loose",),
            outlet_tee_state=("loose",),
            wall_state=("pitted",),
            unseen=(("wall",),),
        ),
        ("wrong_now", "alarm", *FACTS, *LID),
    ),
    "path": Walk(
        "yearly",
        along(OUT, READ, wrong_now=((), ("feeling_ill",)), gate_helper=("adult_here", "alone")),
        ("wrong_now", "alarm", *FACTS, *READINGS, *LID),
    ),
    "again": Walk(
        "yearly",
        along(OUT, READ, way_in=("guided", "hidden"), wrong_now=((), ("feeling_ill",)), gate_lid=("firm_heavy",)),
        ("wrong_now", "alarm", *FACTS, *READINGS, *LID),
        resumed=True,
    ),
    "second": Walk(
        "yearly",
        along(OUT, READ, which_tank=("first", "second")),
        ("wrong_now", "alarm", *FACTS, *READINGS, *LID),
    ),
    "trouble": Walk("trouble"),
    "tank_facts": Walk("tank_facts"),
    "learn": Walk("learn", {"learn_people": (3.0,), "learn_size": (3.8,)}),
    "after_pump_out": Walk("after_pump_out"),
    "pumped_of_two": Walk(
        "after_pump_out",
        {"which_tank": ("first", "second"), "through": ("manhole",), "left": ("nothing",), "pumped_parts": ((),)},
    ),
    "learn_of_two": Walk(
        "learn",
        {
            "which_tank": ("first", "second"),
            "my_stage": ("long_here",),
            "sewer_or_tank": ("tank",),
            "learn_wrong": ((),),
            "learn_alarm": ("not_fitted",),
            "learn_people": (3.0,),
            "learn_size": (3.8,),
            "learn_lid": ("not_found",),
        },
    ),
    "find_of_two": Walk(
        "find_tank", {"which_tank": ("first", "second"), "find_known": ("in_sight",), "side": ("left",)}
    ),
    "look_ahead": Walk(
        "look_ahead",
        {
            "if_what": (("people", "months", "disposal"), ("size", "rules", "residue"), ()),
            "if_rules": ("auckland",),
            "rule_pick": ("auckland",),
            "meter_unit": ("gallons", "no_meter"),
        },
    ),
    # a pipe at the usual depth, and one so shallow that the tank's top may lie just under the grass
    "find_tank": Walk("find_tank", {"pipe_where": ("basement",), "pipe_depth": (0.6, 0.0)}),
}


@cache
def household(name: str) -> Context:
    """`new`: nothing on record. `known`: all facts and a check. `partly`: people alone, a filter, an unknown outlet.
    `two`: two tanks in a row, the first of two parts.
    """
    sets = rules(PLACE)
    if name == "new":
        return Context(TODAY, Household(), rule_sets=sets)
    spell = {"from": "2018-04-01", "people": 3, "disposal": "daily"}
    if name == "partly":
        tank = {"id": "main", "filter": True}
        return Context(TODAY, Household.model_validate({"occupancy": [spell], "tanks": [tank]}), rule_sets=sets)
    shape = {"kind": "box", "length_m": 2.44, "width_m": 1.27}
    tank = {"id": "main", "shape": shape, "liquid_depth_m": 1.22, "filter": False}
    tank["outlet_bottom_below_surface_m"] = 0.43
    if name == "two":
        front, back = {**tank, "compartments": 2}, {"id": "back", "follows": "main"}
        both = Household.model_validate({"occupancy": [spell], "tanks": [front, back]})
        return Context(TODAY, both, rule_sets=sets)
    known = Household.model_validate({"occupancy": [spell], "tanks": [tank], "bedrooms": 3})
    earlier = Check.model_validate(
        {"id": "2025-05-10", "on": "2025-05-10", "seen": {"readings": {"sludge": [{"m": 0.18}, {"m": 0.19}]}}}
    )
    pumped = PumpOut.model_validate({"on": "2024-04-12", "sludge_left_m": 0.0})
    return Context(TODAY, known, checks=(earlier,), pump_outs=(pumped,), rule_sets=sets)


@contextmanager
def turning_on_little() -> Iterator[None]:
    """What a reading is worth hangs on two answers alone, so that both ways of it meet all the rest.

    Nothing that is safe may rest on which way it is; which way it is in truth is told by `tests/sitting`.
    """
    better = ("sludge_third", "outlet_depth", "scum_below", "scum_above")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(
            septic_readings,
            "_could_turn_the_verdict",
            lambda answered, context: better if answered.number("sludge_2") == 0.2 else (),
        )
        for name in TURNING:
            layers = tuple(one for one in PREDICATES[name].reads or () if one in LAYERS)
            patch.setitem(PREDICATES, name, replace(PREDICATES[name], reads=layers))
        called = Named(lambda answered, context: answered.chosen("surface", "no_crust"), ("surface",))
        patch.setitem(PREDICATES, "called_anyway", called)
        yield


@cache
def talk(flow: str) -> Script:
    return script(PLACE, flow)


@cache
def graph(name: str, whose: str, *, hazards: tuple[str, ...] = ()) -> Graph:
    """Every state and edge of a walk in one household."""
    walk = WALKS[name]
    whole = talk(walk.flow)
    sections = tuple(
        replace(
            section,
            nodes=tuple(
                replace(node, unknown_allowed=False) if node.id in walk.sure else node for node in section.nodes
            ),
        )
        for section in whole.flow.sections
    )
    narrowed = replace(whole, flow=replace(whole.flow, sections=sections))
    given = (Answer(BREAK, "value"),) if walk.resumed else ()
    with turning_on_little():
        return explore(narrowed, household(whose), walk.samples, hazards=hazards, skipping=False, given=given)
