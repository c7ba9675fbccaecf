"""Prepared conversations over the whole content: the order of the questions, what is said in danger, how each ends."""

from __future__ import annotations

import io
from pathlib import Path
from statistics import median

import pytest

from selfcheck.loading.journeys import load
from selfcheck.plain.rehearsal import play
from tests.content.walking import PLACE, talk

JOURNEYS = sorted((Path(__file__).parents[1] / "journeys").glob("*.toml"))


@pytest.mark.parametrize("path", JOURNEYS, ids=lambda path: path.stem)
def test_goes_as_prepared(path: Path) -> None:
    transcript = io.StringIO()
    played = play(load(path), PLACE, transcript)
    assert not played.surprises, "\n".join(played.surprises) + "\n" + transcript.getvalue()


def questions(name: str) -> tuple[int, int]:
    """How many questions a journey asks, and how many of them are gate items."""
    journey = load(Path(__file__).parents[1] / "journeys" / f"{name}.toml")
    nodes = [talk(journey.flow).nodes[turn.expect_question] for turn in journey.typed]
    asked = [node for node in nodes if node.kind not in ("say", "stop")]
    return len(asked), sum(node.gate for node in asked)


def test_a_check_asks_few_questions() -> None:
    """The gate costs eight answers; the rest is kept short, and shorter still when the facts are on record."""
    outside, gate = questions("first_check_outside")
    assert gate == 8
    ways = [outside, questions("from_a_sheet")[0], questions("known_household")[0]]
    assert median(ways) <= 22
    known, known_gate = questions("known_household")
    assert known - known_gate <= 15
