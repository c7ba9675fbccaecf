"""Every rule set at its own boundary, with the figures its publisher prints; and two worked examples.

The id of each figure is that of its source; `content/sources.toml` says how each was seen. The sets of the two US EPA
manuals, of 1980 and 2002, are from memory, and common practice has no source: these three are held to themselves only.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.household import Box, Tank
from selfcheck.domain.layers import Layers, layers
from selfcheck.domain.limits import Limit, RuleSet, margin, stand
from selfcheck.domain.shapes import Vessel, vessel
from selfcheck.domain.uncertain import Measure
from selfcheck.loading.content import rules, sources
from selfcheck.loading.place import content_place

INCH, FOOT, GALLON = 0.0254, 0.3048, 0.003785411784
HAIR = 1e-6

#: id, kind of limit, figure in SI as its publisher prints it
PRINTED = [
    ("us-epa-homeowner", "sludge_to_outlet", 12 * INCH),
    ("us-epa-homeowner", "scum_to_outlet", 6 * INCH),
    ("us-epa-homeowner", "solids_by_depth", 0.25),
    ("mn-7080-2450", "sludge_to_outlet", 12 * INCH),
    ("mn-7080-2450", "scum_to_outlet", 3 * INCH),
    ("mn-7080-2450", "solids_by_volume", 0.25),
    ("ma-310-cmr-15-351", "sludge_to_outlet", 12 * INCH),
    ("ma-310-cmr-15-351", "scum_to_outlet", 2 * INCH),
    ("ma-310-cmr-15-351", "scum_top_to_outlet_top", 2 * INCH),
    ("ne-title-124", "sludge_to_outlet", 12 * INCH),
    ("ne-title-124", "scum_to_outlet", 3 * INCH),
    ("ne-title-124", "scum_top_to_outlet_top", 1 * INCH),
    ("mason-wa", "sludge_to_outlet", 12 * INCH),
    ("mason-wa", "scum_to_outlet", 3 * INCH),
    ("phs-526", "scum_to_outlet", 3 * INCH),
    ("branz-level", "sludge_to_outlet", 0.250),
    ("branz-level", "scum_to_outlet", 0.075),
    ("auckland", "solids_by_volume", 0.50),
    ("wi-one-third", "solids_by_volume", 0.333333),
    ("on-obc-8-9-3", "solids_by_volume", 0.333333),
    ("nh-1023-01", "solids_by_depth", 0.333333),
    ("fraser-coast", "sludge", 0.500),
    ("us-epa-2002", "solids_by_volume", 0.30),
    ("us-epa-1980", "sludge_to_outlet", 8 * INCH),
    ("us-epa-1980", "scum_to_outlet", 3 * INCH),
    ("common-practice", "scum", 8 * INCH),
    ("common-practice", "sludge", 16 * INCH),
]
LEAST = ("sludge_to_outlet", "scum_to_outlet", "scum_top_to_outlet_top")


@pytest.fixture(scope="module")
def sets() -> dict[str, RuleSet]:
    return rules(content_place(own=False))


@pytest.fixture(scope="module")
def box() -> Vessel:
    return vessel(Tank(shape=Box(length_m=2.4, width_m=1.2), liquid_depth_m=1.2))


def exact(kind: str, value: float) -> Layers:
    """Layers in which one figure is known to the last digit, and nothing else is."""
    return Layers(**{kind: Measure(value, 0.0)})


def test_all_fifteen_sets_are_there_with_these_limits_and_no_others(sets: dict[str, RuleSet]) -> None:
    held = {(name, limit.kind) for name, rule_set in sets.items() for limit in rule_set.limits}
    assert held == {(name, kind) for name, kind, _ in PRINTED} | {("phs-526", "sludge_to_outlet_by_table")}
    assert len(sets) == 15


@pytest.mark.parametrize(("name", "kind", "printed"), PRINTED)
def test_a_hair_over_and_a_hair_under(
    sets: dict[str, RuleSet], box: Vessel, name: str, kind: str, printed: float
) -> None:
    only = [limit for limit in sets[name].limits if limit.kind == kind]
    rule_set = replace(sets[name], limits=tuple(only))
    worse = -HAIR if kind in LEAST else HAIR
    (over,) = stand(rule_set, exact(kind, printed + worse), box)
    (under,) = stand(rule_set, exact(kind, printed - worse), box)
    assert (over.call, over.chance_over) == ("over", 1.0)
    assert (under.call, under.chance_over) == ("under", 0.0)
    assert over.margin == pytest.approx(-HAIR)
    assert under.margin == pytest.approx(HAIR)


@pytest.mark.parametrize(("name", "kind", "printed"), PRINTED)
def test_margin_of_thicknesses_agrees_with_readings(
    sets: dict[str, RuleSet], box: Vessel, name: str, kind: str, printed: float
) -> None:
    """The scalar margin and the layers of the same tank give one figure, with a third of the crust above the water."""
    tank = Tank(
        shape=Box(length_m=2.4, width_m=1.2),
        liquid_depth_m=1.2,
        outlet_bottom_below_surface_m=0.4,
        outlet_top_above_surface_m=0.15,
    )
    read = Readings(liquid_depth=[Reading(m=1.2)], sludge=[Reading(m=0.31)], scum_total=[Reading(m=0.12)])
    standings = stand(sets[name], layers(tank, box, read, "at_outlet"), box)
    (standing,) = [each for each in standings if each.limit.kind == kind]
    assert standing.margin == pytest.approx(margin(standing.limit, tank, box, 0.31, 0.12), abs=1e-12)


#: Source `phs-526`, read in a reprint: inches by capacity in gallons, at 2.5, 3, 4 and 5 ft of liquid.
CELLS = {750: (5, 6, 10, 13), 900: (4, 4, 7, 10), 1000: (4, 4, 6, 8)}


@pytest.mark.parametrize("gallons", sorted(CELLS))
def test_cells_of_the_distance_table(sets: dict[str, RuleSet], gallons: int) -> None:
    table = next(limit.table for limit in sets["phs-526"].limits if limit.table)
    for feet, inches in zip((2.5, 3, 4, 5), CELLS[gallons], strict=True):
        assert table.least(gallons * GALLON, feet * FOOT) == pytest.approx(inches * INCH)


def test_distance_table_between_and_beyond_its_lines(sets: dict[str, RuleSet]) -> None:
    table = next(limit.table for limit in sets["phs-526"].limits if limit.table)
    halfway = (10 + 7) / 2  # 825 gallons at 4 ft lie midway between two printed cells
    assert table.least(825 * GALLON, 4 * FOOT) == pytest.approx(halfway * INCH)
    assert table.least(1500 * GALLON, 4 * FOOT) == pytest.approx(6 * INCH)
    assert table.least(1000 * GALLON, 2 * FOOT) == pytest.approx(4 * INCH)
    assert table.least(500 * GALLON, 4 * FOOT) is None
    assert table.least(1000 * GALLON, 5.5 * FOOT) is None
    assert table.least(745 * GALLON, 4 * FOOT) == pytest.approx(10 * INCH)


def test_distance_table_never_asks_more_of_a_larger_or_a_shallower_tank(sets: dict[str, RuleSet]) -> None:
    table = next(limit.table for limit in sets["phs-526"].limits if limit.table)
    for step in range(30):
        feet = 2.5 + step / 12
        by_size = [table.least(gallons * GALLON, feet * FOOT) for gallons in range(750, 1300, 25)]
        assert by_size == sorted(by_size, reverse=True)
    for gallons in range(750, 1300, 25):
        by_depth = [table.least(gallons * GALLON, (2 + step / 12) * FOOT) for step in range(36)]
        assert by_depth == sorted(by_depth)


def test_distance_table_at_its_boundary_in_a_tank(sets: dict[str, RuleSet]) -> None:
    """A 1000 gallon tank with 4 ft of liquid: sludge 6 in under the outlet device is due, a hair lower is not."""
    tank = Tank(shape=Box(length_m=1000 * GALLON / 1.2 / (4 * FOOT), width_m=1.2), liquid_depth_m=4 * FOOT)
    known = vessel(tank)._replace(relative_error=0.0, depth_error_m=0.0)
    table_only = replace(sets["phs-526"], limits=sets["phs-526"].limits[:1])
    (over,) = stand(table_only, exact("sludge_to_outlet", 6 * INCH - HAIR), known)
    (under,) = stand(table_only, exact("sludge_to_outlet", 6 * INCH + HAIR), known)
    assert (over.call, under.call) == ("over", "under")


def test_common_practice_of_two_thirds(box: Vessel) -> None:
    """Source `common-practice`: two inches above the water mean four below and six in all."""
    tank = Tank(shape=Box(length_m=2.4, width_m=1.2), liquid_depth_m=1.2)
    found = layers(tank, box, Readings(scum_above=[Reading(m=2 * INCH)]), "at_outlet")
    assert found.scum is not None
    assert found.scum_below is not None
    assert found.scum.value == pytest.approx(6 * INCH)
    assert found.scum_below.value == pytest.approx(4 * INCH)
    assert found.scum.error >= 0.2 * found.scum.value


def test_half_full_example() -> None:
    """One foot of sludge in four feet of liquid, no scum: a share of 0.25, right on the limit of one quarter."""
    tank = Tank(shape=Box(length_m=2.4, width_m=1.2), liquid_depth_m=4 * FOOT)
    read = Readings(liquid_depth=[Reading(m=4 * FOOT)], sludge=[Reading(m=FOOT)], scum_total=[Reading(m=0)])
    found = layers(tank, vessel(tank), read, "at_outlet")
    assert found.solids_by_depth is not None
    assert found.solids_by_volume is not None
    assert found.solids_by_depth.value == pytest.approx(0.25)
    assert found.solids_by_volume.value == pytest.approx(0.25)
    quarter = Limit("solids_by_depth", share=0.25)
    assert margin(quarter, tank, vessel(tank), FOOT, 0.0) == pytest.approx(0.0, abs=1e-12)


def test_every_set_has_a_source_and_memory_is_never_confirmed(sets: dict[str, RuleSet]) -> None:
    known = sources(content_place(own=False))
    for name, rule_set in sets.items():
        assert known[name].seen == rule_set.seen
        assert (rule_set.confirmed is None) == (rule_set.seen in ("memory", "none"))
        assert rule_set.href == known[name].href
