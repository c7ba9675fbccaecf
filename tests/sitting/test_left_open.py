"""A check that was left with the lid off: the start says so, and it is not put away before the lid is asked for."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.faults.walking import lines_through
from tests.sitting.test_endings import TODAY, at
from tests.sitting.test_second_part_and_tank import house


@pytest.mark.parametrize(("last", "lid_off"), [("gate_begin", False), ("level", True), ("lid_back", False)])
def test_the_start_knows_whether_the_lid_may_be_off(tmp_path: Path, last: str, lid_off: bool) -> None:
    folder = house(tmp_path / "home")
    choices = {"way_in": "guided", "gate_teach": "call_stay_out", "second_lid": "leave_it"}
    with at(folder) as sitting:
        conversation = sitting.begin("yearly")
        conversation.start()
        for line in lines_through(folder, "yearly", TODAY, choices):
            asked = conversation.prompt.question if conversation.prompt is not None else ""
            conversation.hear(line)
            if asked == last:
                break
        left = sitting.unfinished()
        assert left is not None
        assert left.lid_off is lid_off


@pytest.mark.parametrize(
    ("lines", "half_done"),
    [
        ((), False),
        (("back", "something else", "skip"), False),
        (("no", "back"), False),
        (("no",), True),
        (("the ground has sunk",), True),
        (("no", "back", "no"), True),
    ],
)
def test_only_what_can_be_gone_on_with_is_half_done(tmp_path: Path, lines: tuple[str, ...], half_done: bool) -> None:
    with at(house(tmp_path / "home")) as sitting:
        conversation = sitting.begin("trouble")
        conversation.start()
        for line in (*lines, "leave"):
            conversation.hear(line)
        assert conversation.ending is not None
        assert (sitting.unfinished() is not None) is half_done
