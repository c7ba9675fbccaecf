from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.check import PumpOut
from selfcheck.domain.history import PEOPLE_ASSUMED, YEARS_ASSUMED, after, counted, course, history, years_between
from selfcheck.domain.household import Household, Occupancy

TODAY = date(2026, 5, 18)


def lived(begun: date, people: float, months: float = 12, disposal: str = "none") -> Occupancy:
    return Occupancy.model_validate({"from": begun, "people": people, "months_per_year": months, "disposal": disposal})


def test_person_years_follow_a_change_of_household() -> None:
    start = date(2020, 1, 1)
    found = course([lived(date(2015, 1, 1), 4), lived(after(start, 2.0), 1)], start)
    assert found.person_years(2.0) == pytest.approx(8.0, abs=0.01)
    assert found.person_years(5.0) == pytest.approx(11.0, abs=0.01)


def test_months_away_and_a_disposal_count() -> None:
    start = date(2020, 1, 1)
    assert course([lived(start, 4, months=3)], start).person_years(2.0) == pytest.approx(2.0)
    assert course([lived(start, 4, disposal="daily")], start).person_years(1.0) == pytest.approx(4.8)
    assert course([lived(start, 4, disposal="sometimes")], start).person_years(1.0) == pytest.approx(4.4)


def test_the_first_household_is_taken_to_have_been_there_before() -> None:
    found = course([lived(date(2022, 1, 1), 3)], date(2020, 1, 1))
    assert found.person_years(1.0) == pytest.approx(3.0)


def test_of_two_entries_on_one_day_the_later_one_in_the_file_holds() -> None:
    day = date(2022, 1, 1)
    found = course([lived(date(2020, 1, 1), 2), lived(day, 9), lived(day, 5)], date(2020, 1, 1))
    assert found.people[-1] == 5


@given(
    st.lists(st.tuples(st.integers(0, 9000), st.floats(0, 20), st.floats(0, 12)), max_size=6),
    st.lists(st.floats(0, 40), min_size=2, max_size=6),
)
def test_person_years_never_fall(spells: list[tuple[int, float, float]], times: list[float]) -> None:
    first = date(2000, 1, 1)
    found = course([lived(first + timedelta(days=d), n, m) for d, n, m in spells], date(2005, 3, 4))
    totals = [found.person_years(t) for t in sorted(times)]
    assert totals == sorted(totals)
    assert all(total >= 0 for total in totals)


def test_a_check_on_the_day_of_a_pump_out_belongs_to_the_span_before() -> None:
    pump_outs = [PumpOut(on=date(2024, 4, 12)), PumpOut(on=date(2020, 4, 12), sludge_left_m=0.05)]
    past = history(Household(occupancy=[lived(date(2015, 1, 1), 3)]), pump_outs, TODAY)
    assert [one.start for one in past.episodes] == [date(2020, 4, 12), date(2024, 4, 12)]
    assert past.episode_of(date(2024, 4, 12)) is past.episodes[0]
    assert past.episode_of(date(2024, 4, 13)) is past.current
    assert past.episode_of(date(2019, 1, 1)) is None
    assert past.episodes[0].residue_m == 0.05
    assert past.assumed == ("residue",)


def test_an_unknown_pump_out_date_is_assumed_and_flagged() -> None:
    past = history(Household(occupancy=[lived(date(2015, 6, 1), 3)]), [], TODAY)
    assert past.current.start == date(2015, 6, 1)
    assert past.assumed == ("pump_out_date",)
    nothing = history(Household(), [], TODAY)
    assert years_between(nothing.current.start, TODAY) == pytest.approx(YEARS_ASSUMED, abs=0.01)
    assert nothing.current.course.people == (PEOPLE_ASSUMED,)
    assert nothing.assumed == ("pump_out_date", "people")
    early = history(Household(), [], TODAY, first_check=date(2021, 5, 18))
    assert early.current.start < date(2021, 5, 18) - timedelta(days=7 * 365)


def test_bedrooms_stand_in_for_people() -> None:
    assert history(Household(bedrooms=4), [], TODAY).current.course.people == (4.0,)


def test_a_corrected_pump_out_counts_once() -> None:
    wrong = PumpOut(on=date(2024, 4, 12))
    right = PumpOut(on=date(2023, 4, 12), replaces="2024-04-12")
    assert [one.on for one in counted([wrong, right], "main", TODAY)] == [date(2023, 4, 12)]
    same_day = PumpOut(on=date(2024, 4, 12), sludge_left_m=0.1, replaces="2024-04-12")
    for files in ([wrong, same_day], [same_day, wrong]):
        assert [one.sludge_left_m for one in counted(files, "main", TODAY)] == [0.1]


def test_other_tanks_and_days_to_come_do_not_count() -> None:
    files = [PumpOut(on=date(2024, 4, 12), tank="second"), PumpOut(on=date(2027, 1, 1))]
    assert counted(files, "main", TODAY) == []
