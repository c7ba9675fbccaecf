"""Slips of the people at the tank: a wrong unit, numbers swapped, an answer taken back. They are mended cheaply."""

from __future__ import annotations

from tests.situations.slipping import SLIPS, STYLES, slip


def test_nearly_all_slips_are_mended_in_at_most_two_turns_more() -> None:
    slips = [slip(seed) for seed in range(26)]
    lost = [f"{one.kind}, {one.style}: {' / '.join(one.typed[-8:])}" for one in slips if not one.recovered]
    assert len(lost) <= 0.05 * len(slips), "\n".join(lost)
    assert {one.kind for one in slips} == set(SLIPS)
    assert {one.style for one in slips} == set(STYLES)
