"""One pump-out whole: what was told of it, what that means, and each part put right with the old one kept."""

from __future__ import annotations

import json
from datetime import date
from functools import partial
from pathlib import Path

import pytest

from selfcheck.sitting import Sitting
from selfcheck.sitting.pump_out_page import pump_out_page
from selfcheck.sitting.record_pages import RecordPages, desk_of
from selfcheck.storage.examine import examine
from selfcheck.storage.folder import read
from tests.sitting.desks import TODAY, Driven, opened


def at(sitting: Sitting, label: str = "May 22, 2023 · pump-out") -> Driven:
    return Driven(RecordPages(sitting).desk()).say("checks", label)


#: what is told of, what is said to its question, what stands there then, and what is kept
MENDED: list[tuple[str, list[str], str, str, object]] = [
    ("On May 22, 2023", ["2023-05-20"], "On May 20, 2023", "on", date(2023, 5, 20)),
    ("opening used", ["small pipe"], "Through a small pipe", "through", "small_pipe"),
    ("parts", ["one of two", "yes"], "One of two parts was emptied", "parts", "one_of_two"),
    ("wall between", ["it is leaning"], "The wall between the parts was broken", "divider", "damaged"),
    ("left on the floor", ["more", "3 in"], "Left on the floor: 3 in (8 cm)", "sludge_left_m", 0.0762),
    ("left on the floor", ["I don't know"], "not known", "sludge_left_m", None),
    ("running back", ["a lot"], "Much water ran back", "backflow", "strong"),
    ("filter", ["not cleaned"], "The filter was not cleaned", "filter_cleaned", False),
    ("who", ["Valley Hauling"], "By: Valley Hauling", "by", "Valley Hauling"),
    ("note", ["Paid in cash"], "Note: Paid in cash", "note", "Paid in cash"),
]


def test_each_part_is_put_right_and_the_old_one_stays(sitting: Sitting, home: Path) -> None:
    before = (home / "pump_outs/2023-05-22.json").read_bytes()
    pages = RecordPages(sitting)
    desk = Driven(desk_of(sitting, partial(pump_out_page, pages, "2023-05-22"), pages.words)).say("mend")
    for done, (thing, said, told, field, value) in enumerate(MENDED, 1):
        labels = [way.label.lower() for way in desk.desk.page.ways]
        desk.say(str(1 + next(at for at, label in enumerate(labels) if thing.lower() in label)), *said)
        assert "Kept." in desk.desk.said.text, (thing, desk.heard)
        assert told in desk.text
        found = read(home)
        new = next(one for one in found.pump_outs if one.replaces)
        assert (len(found.pump_outs), len(found.mended_pump_outs)) == (2, done)
        assert getattr(new, field) == (pytest.approx(value) if isinstance(value, float) else value)
        assert [one.id for one in sitting.pump_outs] == [one.id for one in found.pump_outs]
    assert told in desk.say("back").text
    assert (home / "pump_outs/2023-05-22.json").read_bytes() == before
    assert found.household.tank().compartments == 2  # the question asks whether the tank has two parts after all
    assert examine(home, TODAY).problems == ()


def test_a_day_that_was_wrong_no_longer_counts_and_a_second_mending_replaces_the_first(
    sitting: Sitting, home: Path
) -> None:
    desk = at(sitting).say("mend", "1", "2025-05-22").say("1", "2022-05-22")
    assert "On May 22, 2022" in desk.text
    assert [one.on.year for one in sitting.pump_outs] == [2017, 2022]
    assert [one.on.year for one in sitting.mended_pump_outs] == [2023, 2025]
    assert max(one.on for one in sitting.context().pump_outs) == date(2022, 5, 22)
    desk.say("back", "back")
    assert desk.text.count("pump-out, mended later") == 2
    desk.say("May 22, 2025 · pump-out, mended later")
    assert "The newer one counts" in desk.text
    assert "Mend it" not in desk.text


def test_what_does_not_change_and_what_cannot_be_kept_changes_nothing(sitting: Sitting, home: Path) -> None:
    for said in ("2023-05-22", "I don't know", "skip", "leave"):
        desk = at(sitting).say("mend", "1", said)
        assert "stays as it was" in desk.desk.said.text, said
    assert len(list((home / "pump_outs").iterdir())) == 2
    other = opened(home)
    sitting.close()
    assert other.read_only == ""
    desk = at(sitting).say("mend", "1", "2023-05-20")
    assert "Another selfcheck has this folder open." in desk.desk.said.text
    assert len(list((home / "pump_outs").iterdir())) == 2


def test_what_was_found_is_told_with_what_it_means(sitting: Sitting, home: Path) -> None:
    path = home / "pump_outs/2023-05-22.json"
    told = json.loads(path.read_text())
    path.write_text(json.dumps({**told, "backflow": "strong", "parts": "one_of_two", "filter_cleaned": False}))
    check = json.loads((home / "checks/2023-05-06.json").read_text())
    check |= {"id": "2023-05-22", "on": "2023-05-22", "seen": {"outlet_tee": "missing"}}
    (home / "checks/2023-05-22.json").write_text(json.dumps(check))
    text = at(opened(home)).text
    for words in ("Much water ran back", "One of two parts", "The filter was not cleaned", "What that means"):
        assert words in text
    assert "tee" in text.partition("What that means")[2]
