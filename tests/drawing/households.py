"""Households, tanks and readings to draw: one told in full, and any that may come."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from hypothesis import strategies as st

from selfcheck.domain.check import Check, PumpOut, Readings
from selfcheck.domain.household import Box, Drum, Household, Oval, Place, Table, Tank, UnknownShape, Upright
from selfcheck.domain.judging import Case, Judgement, judge
from selfcheck.domain.layers import layers
from selfcheck.domain.limits import stand
from selfcheck.domain.shapes import vessel
from selfcheck.drawing.section import SectionPicture, SectionWords, describe
from selfcheck.loading import content_place, rules, signs

INCH = 0.0254
CONTENT = Path(__file__).parents[2] / "content" / "en" / "words" / "pictures.toml"
WORDS: Mapping[str, Mapping[str, str]] = tomllib.loads(CONTENT.read_text("utf-8"))
RULES = rules(content_place(None))
SIGNS = signs(content_place(None))
EPA = RULES["us-epa-homeowner"]
TODAY = date(2026, 6, 1)
WILD = '<script>alert(1)</script> & "x" \x1b]8;;http://x\x07 ]]> \u202e {0.__class__} 漢字'

TANK = Tank.model_validate(
    {
        "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27},
        "liquid_depth_m": 48 * INCH,
        "outlet_bottom_below_surface_m": 17 * INCH,
        "outlet_top_above_surface_m": 6 * INCH,
        "material": "concrete",
        "compartments": 1,
    }
)
HOUSE = Household.model_validate(
    {
        "name": "Case",
        "occupancy": [{"from": "2017-06-01", "people": 2}, {"from": "2022-09-01", "people": 4}],
        "tanks": [TANK.model_dump()],
    }
)


def readings(**inches: list[float]) -> Readings:
    """Readings in inches, by kind."""
    return Readings.model_validate({kind: [{"m": one * INCH} for one in values] for kind, values in inches.items()})


def check_on(day: str, sludge: float, scum: float) -> Check:
    read = readings(liquid_depth=[48], sludge=[sludge], scum_total=[scum])
    return Check.model_validate({"id": day, "on": day, "seen": {"readings": read.model_dump(), "level": "at_outlet"}})


CHECKS = [check_on("2019-05-11", 4, 1.5), check_on("2021-05-15", 6, 2.5), check_on("2025-05-17", 5, 2)]
PUMP_OUTS = [PumpOut(on=date(2017, 6, 10)), PumpOut(on=date(2023, 5, 22), sludge_left_m=0.0)]


def judged(
    house: Household = HOUSE, checks: list[Check] = CHECKS, pump_outs: list[PumpOut] = PUMP_OUTS, today: date = TODAY
) -> Judgement:
    return judge(Case(house, checks, pump_outs, RULES, SIGNS, today, None))


def section(
    tank: Tank = TANK, now: Readings | None = None, last: Readings | None = None, second: Readings | None = None
) -> SectionPicture:
    """The section of a tank as it is described from readings and the default rules."""
    body = vessel(tank, 3)
    found = layers(tank, body, now or Readings())
    return describe(
        body,
        found,
        stand(EPA, found, body),
        layers(tank, body, last) if last is not None else None,
        SectionWords(**WORDS["section"]),
        tank=tank,
        second_layers=layers(tank, body, second) if second is not None else None,
    )


lengths = st.floats(0.3, 6, allow_nan=False)
maybe = st.none() | st.floats(0.01, 4, allow_nan=False)
shapes = st.one_of(
    st.builds(Box, length_m=lengths, width_m=lengths),
    st.builds(Upright, diameter_m=lengths),
    st.builds(Drum, diameter_m=lengths, length_m=lengths, ends=st.sampled_from(["flat", "dished", "round"])),
    st.builds(Oval, width_m=lengths, height_m=lengths, length_m=lengths),
    st.builds(Table, heights_m=st.just([0.4, 0.9, 1.5]), volumes_m3=st.just([0.8, 2.4, 3.9])),
    st.just(UnknownShape()),
)
tanks = st.builds(
    Tank,
    shape=shapes,
    liquid_depth_m=maybe,
    compartments=st.sampled_from([None, 1, 2, 3]),
    first_compartment_share=st.none() | st.floats(0.05, 0.95),
    outlet_bottom_below_surface_m=maybe,
)
_some = st.lists(st.floats(0, 5, allow_nan=False), max_size=3).map(lambda values: [{"m": one} for one in values])
any_readings = st.fixed_dictionaries(
    {}, optional=dict.fromkeys(("liquid_depth", "sludge", "scum_total", "scum_above", "scum_below"), _some)
).map(Readings.model_validate)
household_words = st.text(max_size=80) | st.sampled_from([WILD, "kitchen corner", "porch post", "W" * 60])
tape = st.none() | st.floats(0, 100, allow_nan=False)
places = st.builds(
    Place, corner_a=household_words, corner_b=household_words, corners_apart_m=tape, from_a_m=tape, from_b_m=tape,
    side=household_words, note=household_words,
)  # fmt: skip
_days = st.integers(0, 365 * 12).map(lambda days: date(2014, 1, 1) + timedelta(days=days))


def _check(day: date, read: Readings) -> Check:
    return Check.model_validate({"id": day.isoformat(), "on": day, "seen": {"readings": read.model_dump()}})


checks = st.lists(st.builds(_check, _days, any_readings), max_size=6)
pump_outs = st.lists(st.builds(PumpOut, on=_days, sludge_left_m=st.none() | st.floats(0, 0.3)), max_size=4)


def _house(tank: Tank, spells: list[tuple[date, float]]) -> Household:
    told: dict[str, Any] = {"occupancy": [{"from": day, "people": people} for day, people in spells]}
    return Household.model_validate({**told, "tanks": [tank.model_dump()]})


houses = st.builds(_house, tanks, st.lists(st.tuples(_days, st.integers(1, 9).map(float)), max_size=4))
