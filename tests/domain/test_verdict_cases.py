"""The hand-made cases: what an expert would decide. No verdict may be milder than the expert's."""

from __future__ import annotations

from typing import Any

import pytest

from selfcheck.domain.findings import rank
from tests.cases import judged, written_cases


@pytest.mark.parametrize("case", written_cases(), ids=lambda case: case["id"])
def test_the_verdict_is_the_experts(case: dict[str, Any]) -> None:
    verdict = judged(case).verdict
    assert rank(verdict) >= min(rank(one) for one in case["expect"]), f"too mild: {verdict}; {case['why']}"
    assert verdict in case["expect"], f"{verdict}; {case['why']}"


def test_ids_are_used_once() -> None:
    ids = [case["id"] for case in written_cases()]
    assert len(ids) == len(set(ids)) >= 60
    assert all(case["why"] for case in written_cases())
