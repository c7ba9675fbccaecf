from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

import numpy as np
import pytest
from scipy import stats

from selfcheck.domain.accumulation import packing
from selfcheck.domain.check import Check, PumpOut, Reading, Readings, Seen
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.history import after
from selfcheck.domain.household import Box, Drum, Household, Occupancy, Tank
from selfcheck.domain.likelihood import SCALE
from selfcheck.domain.likelihood import Seen as Evidence
from selfcheck.domain.limits import Limit
from selfcheck.domain.posterior import Posterior
from selfcheck.domain.shapes import vessel

LENGTH, WIDTH, DEPTH, OUTLET = 2.44, 1.27, 1.22, 0.43
TANK = Tank(
    shape=Box(length_m=LENGTH, width_m=WIDTH),
    liquid_depth_m=DEPTH,
    outlet_bottom_below_surface_m=OUTLET,
    outlet_top_above_surface_m=0.15,
)
SLUDGE = Limit("sludge_to_outlet", inches=12)
SCUM = Limit("scum_to_outlet", inches=6)
SOLIDS = Limit("solids_by_depth", share=0.25)
EPA = (SLUDGE, SCUM, SOLIDS)
PUMPED = date(2020, 5, 20)


def lived(begun: date, people: float, disposal: str = "none") -> Occupancy:
    return Occupancy.model_validate({"from": begun, "people": people, "disposal": disposal})


HOUSE = Household(occupancy=[lived(date(2010, 1, 1), 3)])


def check(day: date, sludge: float | None, scum: float | None) -> Check:
    readings = Readings(
        sludge=[] if sludge is None else [Reading(m=sludge)], scum_total=[] if scum is None else [Reading(m=scum)]
    )
    return Check(id=day.isoformat(), on=day, seen=Seen(readings=readings))


def checks(count: int, litres: float = 100.0, people: float = 3, start: date = PUMPED) -> list[Check]:
    """Yearly checks that follow the law exactly with a power of 0.8 and 30 % of scum."""
    out = []
    for year in range(1, count + 1):
        day = after(start, year)
        grown = litres / 1000 * people * float(year) ** 0.8 / (LENGTH * WIDTH)
        out.append(check(day, 0.7 * grown, 0.3 * grown))
    return out


def look(found: list[Check], house: Household = HOUSE, today: date | None = None, left: float | None = 0.0) -> Forecast:
    today = today or max((one.on for one in found), default=PUMPED)
    return forecast(house, TANK, vessel(TANK), found, [PumpOut(on=PUMPED, sludge_left_m=left)], today)


def density(b: Any, x: Any, y: Any, sludge: Sequence[Evidence], scum: Sequence[Evidence], pivot: float) -> Any:
    """Posterior weight of each power `b` and log rates `x` of sludge and `y` of scum."""
    total = np.logaddexp(x, y)
    weight = stats.norm.logpdf(total, np.log(0.14) + b * np.log(pivot), math.hypot(0.55, vessel(TANK).relative_error))
    weight = weight + stats.norm.logpdf(y - x, -1.0, 0.7) + stats.norm.logpdf(b, 0.8, 0.12)
    for rate, seen in ((x, sludge), (y, scum)):
        for one in seen:
            volume = np.exp(rate) * one.person_years / one.years * (one.years / pivot) ** b
            off = (volume - one.volume_m3) / one.error_m3
            weight = weight + (stats.norm.logpdf(off) if one.newest else stats.t.logpdf(off / SCALE, 4))
    return np.exp(weight - weight.max())


def left_of(points: Any, weight: Any, axis: int) -> Any:
    """As many points over the stretch of one axis that holds any weight; powers stay as they are."""
    if axis == 0:
        return points
    along = weight.max(axis=tuple(other for other in range(3) if other != axis))
    line = points.ravel()
    live = line[along > 1e-7]
    step = line[1] - line[0]
    return np.linspace(live[0] - step, live[-1] + step, len(line)).reshape(points.shape)


def reference(
    sludge: Sequence[Evidence], scum: Sequence[Evidence], pivot: float, limits: tuple[Limit, ...], people: float
) -> list[float]:
    """10, 50 and 90 % crossing times [yr] by brute force on a dense grid, in closed form for the box.

    Laid twice: over all that is possible, then as densely over what the readings have left of it.
    """
    centre = np.log(0.14) + 0.8 * np.log(pivot)
    b, x, y = grid = (
        (0.5 + 0.6 * (np.arange(40) + 0.5) / 40)[:, None, None],
        np.linspace(centre - 3.2, centre + 2.6, 260)[None, :, None],
        np.linspace(centre - 5.0, centre + 2.2, 240)[None, None, :],
    )
    weight = density(*grid, sludge, scum, pivot)
    b, x, y = grid = tuple(left_of(one, weight, axis) for axis, one in enumerate(grid))
    weight = density(*grid, sludge, scum, pivot)
    total = np.logaddexp(x, y)
    area = LENGTH * WIDTH
    by_kind = {
        "sludge_to_outlet": np.log(area * (DEPTH - OUTLET - 12 * 0.0254)) - x + 0 * y,
        "scum_to_outlet": np.log(area * 1.5 * (OUTLET - 6 * 0.0254)) - y + 0 * x,
        "solids_by_depth": np.log(area * DEPTH * 0.25) - total,
    }
    first = np.minimum.reduce([by_kind[limit.kind] for limit in limits])
    when = (pivot * np.exp((first - np.log(people)) / b)).ravel()
    order = np.argsort(when)
    below = np.cumsum(weight.ravel()[order]) / weight.sum()
    return [float(when[order][np.searchsorted(below, share)]) for share in (0.1, 0.5, 0.9)]


@pytest.mark.parametrize("count", [0, 1, 2, 5])
@pytest.mark.parametrize("limits", [(SLUDGE,), (SCUM,), (SOLIDS,), EPA], ids=["sludge", "scum", "solids", "all"])
def test_dates_agree_with_a_brute_force_reference_to_one_percent(
    count: int, limits: tuple[Limit, ...], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("selfcheck.domain.outlet.EDGE_ERROR_M", 0.0)
    found = look(checks(count))
    assert found.rests_on == ("readings" if count else "published")
    sludge, scum = found.evidence
    for one, bottom, top in zip(checks(count), sludge, scum, strict=True):
        assert bottom.volume_m3 == pytest.approx(one.seen.readings.sludge[0].m * LENGTH * WIDTH, rel=1e-6)
        assert top.volume_m3 == pytest.approx(one.seen.readings.scum_total[0].m * LENGTH * WIDTH, rel=1e-6)
        assert bottom.person_years == pytest.approx(3 * bottom.years)
    wanted = reference(sludge, scum, found.posterior.pivot, limits, 3)
    dates = found.due(limits)
    horizon = (found.today - PUMPED).days / 365.25 + 40
    for got, want in zip((dates.p10, dates.p50, dates.p90), wanted, strict=True):
        if want > horizon:
            assert got is None or (got - PUMPED).days / 365.25 > 0.99 * horizon
        else:
            assert got is not None
            assert (got - PUMPED).days / 365.25 == pytest.approx(want, rel=0.01, abs=1.0 / 365)


def test_the_rate_is_learned() -> None:
    assert look([]).litres_per_person_year == pytest.approx(140, rel=0.01)
    assert look(checks(5, litres=60)).litres_per_person_year == pytest.approx(60, rel=0.05)
    assert look(checks(5, litres=260)).litres_per_person_year == pytest.approx(260, rel=0.05)


def test_more_readings_make_the_band_narrower() -> None:
    def width(count: int) -> int:
        dates = look(checks(count)).due([SLUDGE])
        assert dates.p10 is not None
        assert dates.p90 is not None
        return (dates.p90 - dates.p10).days

    assert width(0) > width(1) > width(3) > width(8)


def test_one_wild_reading_does_not_throw_it() -> None:
    good = checks(5)
    wild = [*good[:3], check(good[3].on, 0.75, 0.35), good[4]]
    calm, thrown = look(good), look(wild)
    without = look([*good[:3], good[4]])
    assert thrown.litres_per_person_year == pytest.approx(calm.litres_per_person_year, rel=0.05)
    a, b = thrown.due(EPA).p50, without.due(EPA).p50
    assert a is not None
    assert b is not None
    assert abs((a - b).days) < 60


def test_a_change_of_household_is_followed() -> None:
    """Two people for four years, then six: the same rate a person, and the tank is due far sooner."""
    change = after(PUMPED, 4.0)
    found, area = [], LENGTH * WIDTH
    for year in range(1, 7):
        person_years = 2.0 * min(year, 4) + 6.0 * max(year - 4, 0)
        grown = 0.1 * person_years / year * year**0.8 / area
        found.append(check(after(PUMPED, year), 0.7 * grown, 0.3 * grown))
    grew = Household(occupancy=[lived(date(2010, 1, 1), 2), lived(change, 6)])
    followed = look(found, grew)
    assert followed.litres_per_person_year == pytest.approx(100, rel=0.05)
    small = Household(occupancy=[lived(date(2010, 1, 1), 2)])
    before = look(found[:4], small).due([SLUDGE]).p50
    told_so = look(found[:4], grew).due([SLUDGE]).p50
    assert before is not None
    assert told_so is not None
    assert told_so < before - timedelta(days=2 * 365)


def test_earlier_spans_inform_the_households_own_rate() -> None:
    first = date(2012, 5, 20)
    old = checks(4, litres=60, start=first)
    pump_outs = [PumpOut(on=first, sludge_left_m=0.0), PumpOut(on=PUMPED, sludge_left_m=0.0)]
    found = forecast(HOUSE, TANK, vessel(TANK), old, pump_outs, PUMPED)
    assert found.sludge_readings == 4
    assert found.litres_per_person_year == pytest.approx(60, rel=0.06)


def test_corrections_other_tanks_and_later_checks_do_not_count() -> None:
    good = checks(3)
    corrected = good[2].model_copy(update={"id": "x", "replaces": good[2].id})
    other = check(good[1].on + timedelta(days=1), 0.9, 0.2).model_copy(update={"tank": "second"})
    late = check(good[2].on + timedelta(days=400), 0.9, 0.2)
    found = look([*good, corrected, other, late], today=good[2].on)
    assert found.sludge_readings == 3
    assert found.due(EPA) == look(good).due(EPA)


def test_residue_brings_the_date_forward() -> None:
    clean, left = look([]).due([SLUDGE]), look([], left=0.15).due([SLUDGE])
    assert clean.p50 is not None
    assert left.p50 is not None
    assert left.p50 < clean.p50
    assert look([], left=0.9).due([SLUDGE]).p50 == PUMPED
    assert look([], left=None).assumed == ("residue",)


def test_a_limit_in_years_has_its_own_date() -> None:
    three = Limit("years", years=3)
    dates = look([]).due([three])
    assert dates.p10 == dates.p50 == dates.p90 == after(PUMPED, 3.0)
    both = look([]).due([three, SLUDGE])
    assert both.p90 == after(PUMPED, 3.0)
    assert look([]).chance_over([three], after(PUMPED, 3.1)) == 1.0


def test_the_first_of_several_limits_comes_no_later_than_any() -> None:
    found = look(checks(2))
    together = found.due(EPA).p50
    assert together is not None
    alone = [found.due([limit]).p50 for limit in EPA]
    assert all(one is None or together <= one for one in alone)


def test_chance_and_dates_are_two_views_of_one_thing() -> None:
    found = look(checks(2))
    dates = found.due(EPA)
    for share, day in ((0.1, dates.p10), (0.5, dates.p50), (0.9, dates.p90)):
        assert day is not None
        assert found.chance_over(EPA, day) == pytest.approx(share, abs=0.02)
    chances = [found.chance_over(EPA, after(PUMPED, t / 4)) for t in range(60)]
    assert chances == sorted(chances)
    assert found.chance_over(EPA, PUMPED) == 0.0


def test_an_empty_house_is_never_due() -> None:
    empty = Household(occupancy=[lived(date(2010, 1, 1), 0)])
    found = look([], empty, today=after(PUMPED, 6))
    assert found.due(EPA).p10 is None
    assert found.chance_over(EPA, after(PUMPED, 30)) == 0.0
    assert found.sludge_m_per_year == 0.0


def test_a_limit_that_does_not_apply_has_no_say() -> None:
    tank = TANK.model_copy(update={"outlet_top_above_surface_m": None})
    found = forecast(HOUSE, tank, vessel(tank), [], [PumpOut(on=PUMPED)], PUMPED)
    top = Limit("scum_top_to_outlet_top", inches=1)
    assert found.due([top]).p10 is None
    assert found.due([top, SLUDGE]) == found.due([SLUDGE])
    assert found.due([]).p50 is None


def test_look_again_is_yearly_or_earlier_and_never_past() -> None:
    fresh = look(checks(1, litres=60))
    assert fresh.look_again([SLUDGE]) == (date(2022, 5, 20), "twelve_months")
    full = look(checks(1, litres=350))
    day, reason = full.look_again(EPA)
    assert reason == "chance_of_over"
    assert full.today <= day < date(2022, 5, 20)
    late = look(checks(1, litres=60), today=date(2025, 1, 1))
    assert late.look_again([SLUDGE])[0] == date(2025, 1, 1)


def test_what_if() -> None:
    found = look(checks(3))
    now = found.due(EPA).p50
    more = found.what_if(people=6).due(EPA).p50
    fewer = found.what_if(people=1).due(EPA).p50
    grinder = found.what_if(disposal="daily").due(EPA).p50
    summers = found.what_if(months_per_year=3).due(EPA).p50
    assert now is not None
    assert more is not None
    assert grinder is not None
    assert more < grinder < now
    assert all(one is None or one > now for one in (fewer, summers))
    assert found.what_if().due(EPA) == found.due(EPA)
    emptied = found.what_if(pumped_on=found.today)
    assert emptied.bands([found.today])[0].sludge == (0.0, 0.0, 0.0)
    later = emptied.due(EPA).p50
    assert later is not None
    assert later > now + timedelta(days=2 * 365)
    wide = vessel(TANK.model_copy(update={"shape": Box(length_m=4.88, width_m=1.27)}))
    roomy = found.what_if(vessel=wide).due(EPA).p50
    assert roomy is not None
    assert roomy > now


def test_bands_pass_through_the_readings_and_widen() -> None:
    found = look(checks(4))
    days = [one.on for one in checks(4)] + [after(PUMPED, 10.0)]
    bands = found.bands(days)
    for band, one in zip(bands, checks(4), strict=False):
        assert band.sludge[0] < one.seen.readings.sludge[0].m < band.sludge[2]
        assert band.scum[0] < one.seen.readings.scum_total[0].m < band.scum[2]
    assert bands[-1].sludge[2] - bands[-1].sludge[0] > bands[3].sludge[2] - bands[3].sludge[0]
    assert 0.02 < found.sludge_m_per_year < 0.06


def test_bands_of_an_earlier_span_use_its_own_start() -> None:
    first = date(2012, 5, 20)
    pump_outs = [PumpOut(on=first, sludge_left_m=0.0), PumpOut(on=PUMPED, sludge_left_m=0.0)]
    found = forecast(HOUSE, TANK, vessel(TANK), checks(2), pump_outs, after(PUMPED, 2.0))
    before, emptied = found.bands([PUMPED, PUMPED + timedelta(days=30)])
    assert before.sludge[1] > 0.2 > 0.05 > emptied.sludge[1]


def test_the_same_record_gives_the_same_dates() -> None:
    assert look(checks(3)).due(EPA) == look(list(reversed(checks(3)))).due(EPA)


def test_impossible_readings_are_left_out() -> None:
    good = checks(3)
    odd = [*good, check(after(PUMPED, 3.0) + timedelta(days=1), 1.6, 0.1)]
    assert look(odd).sludge_readings == 3
    assert look(odd).scum_readings == 4


def test_two_hundred_checks_are_taken() -> None:
    many = [check(after(PUMPED, n / 12), 0.05 + n * 0.0005, 0.02) for n in range(1, 201)]
    found = look(many)
    assert found.sludge_readings == 60
    assert found.due(EPA).p50 is not None


@pytest.mark.parametrize("kind", ["box", "drum"])
def test_layer_volumes_and_thickness_turn_into_each_other(kind: str) -> None:
    tank = TANK if kind == "box" else Tank(shape=Drum(diameter_m=1.5, length_m=2.4, ends="dished"), liquid_depth_m=1.2)
    inside = vessel(tank)
    packed = packing(inside)
    for share in (0.01, 0.1, 0.3, 0.6, 0.9):
        depth = share * inside.liquid_depth_m
        assert packed.sludge_m(inside.volume_below(depth)) == pytest.approx(depth, abs=0.001)
        hanging, standing = depth * 2 / 3, depth / 3
        full = inside.liquid_depth_m
        scum = inside.full_m3 - inside.volume_below(full - hanging) + inside.surface_area(full) * standing
        assert packed.scum_m(scum) == pytest.approx(depth, abs=0.001)


def test_weights_sum_to_one_and_dates_hold_under_hard_evidence() -> None:
    """Twenty very sharp readings far from what is known beforehand neither overflow nor leave the grid empty."""
    sharp = [Evidence(3.0 * t, float(t), 0.9 * t**1.05, 1e-3) for t in range(1, 21)]
    found = Posterior(sharp, [], 0.0)
    assert sum(map(sum, found.weights)) == pytest.approx(1.0)
    assert 0.25 < found.rate_quantile(0.5) < 0.6
    assert 0.98 < sum(p * sum(row) for p, row in zip(found.powers, found.weights, strict=True)) < 1.1
