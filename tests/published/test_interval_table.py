"""The forecast beside what is published: intervals, amounts a person, worked examples, and what the trade sees.

Sources by id: `interval-table` (two independent reprints agree), `gray-1995`, `philip-1993`, `gill-2022` (abstracts,
read), `us-epa-homeowner` (3 to 5 years, reprint), `common-practice` (5 to 8 years on average, 1 to 12 seen; no source).
"""

from __future__ import annotations

import math
from datetime import date, timedelta

import pytest

from selfcheck.domain.accumulation import POWER_MEAN, POWER_SPREAD, RATE_MEDIAN_M3, RATE_SPREAD
from selfcheck.domain.check import Check, PumpOut, Reading, Readings, Seen
from selfcheck.domain.forecast import Forecast, forecast
from selfcheck.domain.household import Disposal, Household, Occupancy, Tank
from selfcheck.domain.interval import table_interval_years
from selfcheck.domain.limits import Limit
from selfcheck.domain.shapes import vessel

GALLON, INCH = 0.003785411784, 0.0254
EMPTIED = date(2020, 1, 1)

#: interval-table: years by gallons, for 1 to 10 people
TABLE = {
    500: [5.8, 2.6, 1.5, 1.0, 0.7, 0.4, 0.3, 0.2, 0.1],
    750: [9.1, 4.2, 2.6, 1.8, 1.3, 1.0, 0.7, 0.6, 0.4, 0.3],
    900: [11.0, 5.2, 3.3, 2.3, 1.7, 1.3, 1.0, 0.8, 0.7, 0.5],
    1000: [12.4, 5.9, 3.7, 2.6, 2.0, 1.5, 1.2, 1.0, 0.8, 0.7],
    1250: [15.6, 7.5, 4.8, 3.4, 2.6, 2.0, 1.7, 1.4, 1.2, 1.0],
    1500: [18.9, 9.1, 5.9, 4.2, 3.3, 2.6, 2.1, 1.8, 1.5, 1.3],
    1750: [22.1, 10.7, 6.9, 5.0, 3.9, 3.1, 2.6, 2.2, 1.9, 1.6],
    2000: [25.4, 12.4, 8.0, 5.9, 4.5, 3.7, 3.1, 2.6, 2.2, 2.0],
    2250: [28.6, 14.0, 9.1, 6.7, 5.2, 4.2, 3.5, 3.0, 2.6, 2.3],
    2500: [31.9, 15.6, 10.2, 7.5, 5.9, 4.8, 4.0, 3.5, 3.0, 2.6],
}
CELLS = [(gallons, people, years) for gallons, row in TABLE.items() for people, years in enumerate(row, start=1)]


def outlook(volume_m3: float, people: float, checks: list[Check] | None = None) -> Forecast:
    tank = Tank(volume_m3=volume_m3, liquid_depth_m=48 * INCH)
    house = Household(occupancy=[Occupancy.model_validate({"from": EMPTIED, "people": people})])
    today = checks[-1].on if checks else EMPTIED
    return forecast(house, tank, vessel(tank), checks or [], [PumpOut(on=EMPTIED, sludge_left_m=0.0)], today)


def median_years(found: Forecast, *limits: Limit) -> float:
    day = found.due(limits).p50
    assert day is not None
    return (day - EMPTIED).days / 365.25


def test_every_cell_of_the_interval_table() -> None:
    """Two constants are fitted to the table itself (see `interval`), so this checks the form and the typing of 99
    cells.
    """
    assert len(CELLS) == 99
    found = [(cell, table_interval_years(cell[0] * GALLON, cell[1])) for cell in CELLS]
    assert all(abs(years - cell[2]) <= 0.1 for cell, years in found)
    assert sum(round(years + 1e-9, 1) == cell[2] for cell, years in found) >= 94


@pytest.mark.parametrize(
    ("gallons", "people", "disposal", "years"), [(750, 6, "none", 1.0), (750, 6, "daily", 0.8), (750, 2, "none", 4.2)]
)
def test_the_examples_printed_with_the_table(gallons: float, people: float, disposal: Disposal, years: float) -> None:
    assert table_interval_years(gallons * GALLON, people, disposal) == pytest.approx(years, abs=0.051)


def test_the_tables_formula_refuses_what_it_cannot_mean() -> None:
    for volume, people in ((3.0, 0.0), (-1.0, 2.0)):
        with pytest.raises(ValueError, match="people"):
            table_interval_years(volume, people)
    assert table_interval_years(0.1, 4) == 0.0


#: litres a person after so many years. interval-table gives a rate: taken over the 1 to 8 years that its usual cells
#: span.
PUBLISHED = [
    ("gray-1995, first six months", 0.5, 0.254 * 365.25 * 0.5),
    ("gray-1995, mean, taken over a year", 1.0, 0.234 * 365.25),
    ("gray-1995, by sixty months", 5.0, 0.178 * 365.25 * 5.0),
    ("philip-1993, three years", 3.0, 0.2 * 365.25 * 3.0),
    ("gill-2022, first year", 1.0, 250.0),
    ("gill-2022, after two years, at most", 2.0, 2 * 150.0),
    ("interval-table, a year", 1.0, 76.8 * GALLON * 1000),
    ("interval-table, eight years", 8.0, 8 * 76.8 * GALLON * 1000),
    ("lowest rate quoted, a year", 1.0, 65.0),
    ("highest rate quoted, a year", 1.0, 290.0),
]


@pytest.mark.parametrize(("figure", "years", "litres"), PUBLISHED, ids=[one[0] for one in PUBLISHED])
def test_what_is_known_beforehand_covers_every_published_amount(figure: str, years: float, litres: float) -> None:
    """`ln V = ln r + b ln t` is taken as normal, which leaves out that `b` is cut; the band is 1.96 deviations wide."""
    middle = math.log(RATE_MEDIAN_M3) + POWER_MEAN * math.log(years)
    spread = math.hypot(RATE_SPREAD, POWER_SPREAD * math.log(years))
    assert abs(math.log(litres / 1000) - middle) < 1.96 * spread


def test_the_power_of_time_agrees_with_the_study_that_gives_two_times() -> None:
    """gray-1995: 0.254 L a day over half a year and 0.178 L a day over five years give b = 0.845, inside 0.80 ±
    0.12.
    """
    power = math.log(0.178 * 5.0 / (0.254 * 0.5)) / math.log(5.0 / 0.5)
    assert power == pytest.approx(0.845, abs=0.001)
    assert abs(power - POWER_MEAN) < POWER_SPREAD


def test_a_reading_carried_on_in_a_straight_line() -> None:
    """8.5 in after 26 months reach 30 % of 48 in after 44.0 months in a straight line: our law with b = 1 and no
    errors.

    Solids that pack take longer, so the forecast's middle lies later, and the straight line lies inside its band.
    """
    day = EMPTIED + timedelta(days=round(26 * 365.25 / 12))
    seen = Seen(readings=Readings(sludge=[Reading(m=8.5 * INCH)], scum_total=[Reading(m=0.0)]))
    found = outlook(1000 * GALLON, 3, [Check(id="one", on=day, seen=seen)])
    limit = Limit("solids_by_depth", share=0.30)
    dates = found.due([limit])
    assert dates.p10 is not None
    assert 44.0 / 12 < median_years(found, limit) < 60.0 / 12
    assert (dates.p10 - EMPTIED).days / 365.25 < 44.0 / 12 + 0.1


def test_a_council_example() -> None:
    """Cavan County Council, 2022: 3.5 m³ and three people, every 4 years. One third of the tank as solids gives
    about that.
    """
    assert median_years(outlook(3.5, 3), Limit("solids_by_volume", share=1 / 3)) == pytest.approx(4.0, abs=1.0)


def test_the_same_tank_under_a_careful_and_a_loose_rule() -> None:
    """3 to 5 years as published and 5 to 8 as the trade sees are one tank under two limits. 2.5 people: from memory."""
    found = outlook(1000 * GALLON, 2.5)
    careful = (
        Limit("sludge_to_outlet", inches=12),
        Limit("scum_to_outlet", inches=6),
        Limit("solids_by_depth", share=0.25),
    )
    loose = (Limit("scum", inches=8), Limit("sludge", inches=16))
    assert 3 <= median_years(found, *careful) <= 5
    assert 5 <= median_years(found, *loose) <= 8
    dates = found.due(careful)
    assert dates.p10 is not None
    assert dates.p90 is not None
    assert (dates.p10 - EMPTIED).days / 365.25 >= 1
    assert (dates.p90 - EMPTIED).days / 365.25 <= 12


def test_a_small_tank_with_many_people_and_a_disposal_is_long_due() -> None:
    """750 gallons, six people, a disposal used daily, fourteen years: over, on the forecast alone."""
    tank = Tank(volume_m3=2.84)
    house = Household(
        occupancy=[Occupancy.model_validate({"from": date(2008, 6, 1), "people": 6, "disposal": "daily"})]
    )
    found = forecast(house, tank, vessel(tank, 3), [], [PumpOut(on=date(2012, 5, 1))], date(2026, 5, 18))
    careful = [Limit("sludge_to_outlet", inches=12), Limit("solids_by_depth", share=0.25)]
    assert found.chance_over(careful, date(2026, 5, 18)) > 0.99
    assert found.look_again(careful)[0] == date(2026, 5, 18)
