"""The table of checks: one row a check, units in the header, nothing that a spreadsheet would run."""

from __future__ import annotations

import csv
import io
from functools import cache
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.check import Check
from selfcheck.loading import content_place
from selfcheck.loading.conversations import texts
from selfcheck.report.table import DANGEROUS, SIGNS, cell, checks_table
from tests.cases import build, check_of


@cache
def words() -> dict[str, Any]:
    return texts(content_place(None), "table")


def rows(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


def test_one_row_a_check_with_units_in_the_header() -> None:
    checks = [check_of("2025-05-01", sludge=[2.0, 2.5, 3.0]), check_of("2026-05-18")]
    found = rows(checks_table(build().household, checks, words()))
    assert [row["date"] for row in found] == ["2025-05-01", "2026-05-18"]
    assert [found[0][f"sludge {number} (in)"] for number in (1, 2, 3)] == ["2", "2.5", "3"]
    assert found[1]["sludge 3 (in)"] == ""
    assert found[0]["liquid depth (in)"] == "48"
    assert set(SIGNS) <= set(found[0])
    assert found[0]["yard"] == "none"
    assert found[0]["roots"] == ""


def test_metric_households_get_centimetres() -> None:
    household = build().household.model_copy(update={"units": "metric"})
    (row,) = rows(checks_table(household, [check_of("2026-05-18", sludge=[10.0])], words()))
    assert row["sludge 1 (cm)"] == "25.4"


def test_a_corrected_check_says_by_which() -> None:
    case = build({"correct": {"sludge": [6, 6]}})
    found = rows(checks_table(case.household, case.checks, words()))
    assert [row["corrected by"] for row in found] == ["2026-05-18-2", ""]


def test_lines_end_as_the_standard_says() -> None:
    text = checks_table(build().household, build().checks, words())
    assert text.endswith("\r\n")
    assert text.count("\r\n") == text.count("\n") == 2


@pytest.mark.parametrize("begin", [*DANGEROUS, " =", "  @", "'="])
def test_dangerous_cells_are_defused(begin: str) -> None:
    assert cell(f"{begin}1+1").startswith("'")


@given(st.text(max_size=60))
def test_no_cell_begins_so_that_a_spreadsheet_runs_it(text: str) -> None:
    check = Check.model_validate({"id": text, "on": "2026-05-18", "tank": text})
    (row,) = rows(checks_table(build().household, [check], words()))
    for value in row.values():
        assert not value.lstrip(" ").startswith(DANGEROUS)
    assert cell(cell("plain")) == "plain"
