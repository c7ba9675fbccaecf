"""Dates as people say them, on 18 May 2026, a Monday."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.quantities import read_date

TODAY = date(2026, 5, 18)


@pytest.mark.parametrize(
    ("text", "earliest", "latest"),
    [
        ("today", "2026-05-18", "2026-05-18"),
        ("this morning", "2026-05-18", "2026-05-18"),
        ("yesterday", "2026-05-17", "2026-05-17"),
        ("ayer", "2026-05-17", "2026-05-17"),
        ("last friday", "2026-05-15", "2026-05-15"),
        ("last May", "2025-05-01", "2025-05-31"),
        ("June", "2025-06-01", "2025-06-30"),
        ("May 2019", "2019-05-01", "2019-05-31"),
        ("may '19", "2019-05-01", "2019-05-31"),
        ("mayo de 2019", "2019-05-01", "2019-05-31"),
        ("5/2024", "2024-05-01", "2024-05-31"),
        ("2019", "2019-01-01", "2019-12-31"),
        ("it was pumped in 2019", "2019-01-01", "2019-12-31"),
        ("in '08", "2008-01-01", "2008-12-31"),
        ("early 2019", "2019-01-01", "2019-04-30"),
        ("around 2015", "2014-01-01", "2016-12-31"),
        ("like 2018ish", "2017-01-01", "2019-12-31"),
        ("the year before last", "2024-01-01", "2024-12-31"),
        ("beginning of last year", "2025-01-01", "2025-04-30"),
        ("10+ years ago", "2011-05-18", "2016-05-18"),
        ("April 12, 24", "2024-04-12", "2024-04-12"),
        ("may of 22", "2022-05-01", "2022-05-31"),
        ("back in 19", "2019-01-01", "2019-12-31"),
        ("98", "1998-01-01", "1998-12-31"),
        ("2018 or 2019", "2018-01-01", "2019-12-31"),
        ("between 2018 and 2020", "2018-01-01", "2020-12-31"),
        ("the 90s", "1990-01-01", "1999-12-31"),
        ("last year", "2025-01-01", "2025-12-31"),
        ("el año pasado", "2025-01-01", "2025-12-31"),
        ("last month", "2026-04-01", "2026-04-30"),
        ("in the spring", "2026-03-01", "2026-05-18"),
        ("spring 2021", "2021-03-01", "2021-05-31"),
        ("last summer", "2025-06-01", "2025-08-31"),
        ("2019-05-04", "2019-05-04", "2019-05-04"),
        ("20240504", "2024-05-04", "2024-05-04"),
        ("13/4/2024", "2024-04-13", "2024-04-13"),
        ("4/13/24", "2024-04-13", "2024-04-13"),
        ("5/5/2024", "2024-05-05", "2024-05-05"),
        ("May 4th 2024", "2024-05-04", "2024-05-04"),
        ("the 4th of May, 2024", "2024-05-04", "2024-05-04"),
        ("4 May 2024", "2024-05-04", "2024-05-04"),
        ("July 4", "2025-07-04", "2025-07-04"),
        ("10 days ago", "2026-05-08", "2026-05-08"),
    ],
)
def test_spans(text: str, earliest: str, latest: str) -> None:
    reading = read_date(text, TODAY)
    assert reading.status == "value"
    assert (str(reading.earliest), str(reading.latest)) == (earliest, latest)
    assert reading.earliest is not None
    assert reading.day is not None
    assert reading.latest is not None
    assert reading.earliest <= reading.day <= reading.latest


@pytest.mark.parametrize(
    ("text", "middle"),
    [
        ("3 years ago", "2023-05-18"),
        ("three years back", "2023-05-18"),
        ("hace 3 años", "2023-05-18"),
        ("a couple years back", "2024-05-18"),
        ("6 months ago", "2025-11-18"),
        ("two weeks ago", "2026-05-04"),
        ("a decade ago", "2016-05-18"),
        ("10 years", "2016-05-18"),
    ],
)
def test_so_long_ago_is_a_stretch_around_its_day(text: str, middle: str) -> None:
    reading = read_date(text, TODAY)
    assert str(reading.day) == middle
    assert reading.earliest is not None
    assert reading.latest is not None
    assert reading.earliest < date.fromisoformat(middle) < reading.latest


def test_rough_is_wider() -> None:
    plain, rough = read_date("3 years ago", TODAY), read_date("about 3 years ago", TODAY)
    assert plain.earliest is not None
    assert rough.earliest is not None
    assert rough.earliest < plain.earliest


@pytest.mark.parametrize("text", ["5/4/2024", "05-04-2024", "5.4.2024", "5/4/24"])
def test_day_and_month_are_asked_when_both_fit(text: str) -> None:
    reading = read_date(text, TODAY)
    assert reading.status == "ask"
    assert [day for _, day in reading.meanings] == [date(2024, 5, 4), date(2024, 4, 5)]


@pytest.mark.parametrize("text", ["2019, maybe 2020", "march 5 2020 and june 2021"])
def test_two_dates_are_asked(text: str) -> None:
    assert read_date(text, TODAY).status == "ask"


@pytest.mark.parametrize("text", ["2030", "June 2027", "tomorrow", "next week", "in 3 years", "2026-12-01"])
def test_the_future_is_flagged(text: str) -> None:
    reading = read_date(text, TODAY)
    assert (reading.status, reading.future) == ("value", True)


@pytest.mark.parametrize("text", ["never", "never pumped", "it has never been pumped", "nunca"])
def test_never_is_not_unknown(text: str) -> None:
    reading = read_date(text, TODAY)
    assert (reading.status, reading.never) == ("none", True)


@pytest.mark.parametrize("text", ["", "I don't know", "not sure", "no idea", "no sé", "?"])
def test_not_known(text: str) -> None:
    reading = read_date(text, TODAY)
    assert (reading.status, reading.never) == ("none", False)


@pytest.mark.parametrize(
    "text",
    [
        "brown",
        "hello",
        "Feb 30 2024",
        "2/30/2024",
        "every 3 years",
        "1,000 gal",
        "9**9**9",
        "before 2010",
        "since 2019",
        "not 2019",
        "years ago",
        "14 in",
        "x" * 5000,
        "1" * 70,
        "-" * 80,
    ],
)
def test_no_date(text: str) -> None:
    assert read_date(text, TODAY).status == "unclear"


@given(st.text(max_size=90), st.dates(date(1990, 1, 1), date(2080, 1, 1)))
def test_any_text_gets_a_reading(text: str, today: date) -> None:
    reading = read_date(text, today)
    assert (reading.day is not None) == (reading.status == "value")


@given(
    st.integers(0, 110),
    st.sampled_from(["days", "weeks", "months", "years"]),
    st.dates(date(2020, 1, 1), date(2090, 1, 1)),
)
def test_ago_lies_in_the_past(count: int, unit: str, today: date) -> None:
    reading = read_date(f"{count} {unit} ago", today)
    assert reading.day is not None
    assert reading.latest is not None
    assert reading.day <= today
    assert reading.latest <= today
