"""The conversations as they stand in the content, the households they are walked with, and the graph of each."""

from __future__ import annotations

from datetime import date
from functools import cache

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.interview.answers import Value
from selfcheck.interview.context import Context
from selfcheck.interview.routes import Graph, explore
from selfcheck.interview.script import Script
from selfcheck.loading import content_place, rules, script

PLACE = content_place(own=False)
TODAY = date(2026, 5, 18)
FLOWS = ("yearly", "trouble", "learn", "after_pump_out")
HOUSEHOLDS = ("new", "known", "partly")

#: one value that leads on, and one that leads elsewhere, where a predicate looks at the number
SAMPLES: dict[str, tuple[Value, ...]] = {
    "wrong_now": ((), ("fell_in",), ("house",), ("yard",), ("house", "yard")),
    "house_signs": (("sewage_backup",), ("gurgling",)),
    "yard_signs": (("sunken_ground",), ("lush_strip",)),

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
}


def household(name: str) -> Context:
    """`new`: nothing on record. `known`: all facts and a check. `partly`: people alone, a filter, an unknown outlet."""
    sets = rules(PLACE)
    if name == "new":
        return Context(TODAY, Household(), rule_sets=sets)
    spell = {"from": "2018-04-01", "people": 3, "disposal": "daily"}
    if name == "partly":
        tank = {"id": "main", "filter": True}
        return Context(TODAY, Household.model_validate({"occupancy": [spell], "tanks": [tank]}), rule_sets=sets)
    shape = {"kind": "box", "length_m": 2.44, "width_m": 1.27}
    tank = {"id": "main", "shape": shape, "liquid_depth_m": 1.22, "outlet_bottom_below_surface_m": 0.43, "filter": False}
    known = Household.model_validate({"occupancy": [spell], "tanks": [tank], "bedrooms": 3})
    earlier = Check.model_validate(
        {"id": "2025-05-10", "on": "2025-05-10", "seen": {"readings": {"sludge": [{"m": 0.18}, {"m": 0.19}]}}}
    )
    pumped = PumpOut.model_validate({"on": "2024-04-12", "sludge_left_m": 0.0})
    return Context(TODAY, known, checks=(earlier,), pump_outs=(pumped,), rule_sets=sets)


@cache
def talk(flow: str) -> Script:
    return script(PLACE, flow)


@cache
def graph(flow: str, name: str, *, hazards: tuple[str, ...] = (), leaving: bool = True, breaks: bool = False) -> Graph:
    return explore(talk(flow), household(name), SAMPLES, leaving=leaving, hazards=hazards, breaks=breaks, skipping=False)
