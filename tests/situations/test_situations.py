"""What happens at a tank, played by the people it happens to: what an expert would want of it."""

from __future__ import annotations

import pytest

from tests.situations.playing import play_situation, situations


@pytest.mark.parametrize("name", sorted(situations()))
def test_goes_as_an_expert_would_want(name: str) -> None:
    played, found = play_situation(situations()[name])
    assert not found, "\n".join([*found, *(f"{question} > {line}" for question, line in played.typed)])
