"""Which rule sets were made for a place, by the words a household writes it in."""

from __future__ import annotations

import pytest

from selfcheck.domain.places import fitting
from selfcheck.loading import content_place, rules

SETS = rules(content_place(own=False))


@pytest.mark.parametrize(
    ("region", "wanted"),
    [
        ("Minnesota", ["mn-7080-2450"]),
        ("near Duluth, MN", ["mn-7080-2450"]),
        ("mn", ["mn-7080-2450"]),
        ("Mason County, Washington", ["mason-wa"]),
        ("kenosha county, wisconsin", ["wi-one-third"]),
        ("Auckland, New Zealand", ["auckland", "branz-level"]),
        ("the woods", []),
        ("", []),
        ("in the man's house on a hill", []),
        ("Ontario, Canada", ["on-obc-8-9-3"]),
    ],
)
def test_the_narrowest_place_comes_first(region: str, wanted: list[str]) -> None:
    assert [one.id for one in fitting(SETS.values(), region)] == wanted


def test_a_whole_country_finds_what_is_for_all_of_it_last() -> None:
    found = [one.id for one in fitting(SETS.values(), "Massachusetts, United States")]
    assert found[0] == "ma-310-cmr-15-351"
    assert "us-epa-homeowner" in found


def test_each_place_is_found_by_its_own_name() -> None:
    for one in SETS.values():
        for place in one.places:
            assert one in fitting(SETS.values(), place), place
