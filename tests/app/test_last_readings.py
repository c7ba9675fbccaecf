"""Where the newest check read no layer, every picture of the tank shows the last readings, with their day."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from selfcheck.app import picture
from selfcheck.drawing.section import as_lines, as_one_line, as_words
from selfcheck.drawing.spans import as_text
from selfcheck.loading.conversations import texts
from selfcheck.report.pictures import pictures
from selfcheck.sitting import Sitting
from tests.sitting.desks import PLACE, demo


def test_a_danger_told_leaves_the_last_readings_in_view_with_their_day(tmp_path: Path) -> None:
    words = texts(PLACE, "pictures")
    sitting = Sitting.open(demo(tmp_path / "home"), PLACE, date(2026, 6, 20), in_place=True, fixed_day=True)
    before = as_one_line(picture.of(sitting, None, words["section"]))
    assert "?" not in before
    assert "2026" not in before
    talk = sitting.begin("trouble")
    talk.start()
    assert as_one_line(picture.of(sitting, talk, words["section"])) == before
    talk.hear("my husband fell in")
    sitting.conclude(talk)
    shown = picture.of(sitting, None, words["section"])
    assert as_one_line(shown) == f"{before} · May 16, 2026"
    assert as_words(shown)[-1] == as_text(as_lines(shown, 38, 16))[-1].strip() == "read on May 16, 2026"
    printed = str(pictures(sitting.judgement(), sitting.checks, sitting.pump_outs, words)[0])
    assert "read on May 16, 2026" in printed
    assert "not known yet" not in printed
    check = sitting.begin("yearly")  # a check under way shows what it reads itself
    check.start()
    assert "?" in as_one_line(picture.of(sitting, check, words["section"]))


def test_readings_of_a_tank_that_was_pumped_since_are_not_shown(tmp_path: Path) -> None:
    words = texts(PLACE, "pictures")
    sitting = Sitting.open(demo(tmp_path / "home"), PLACE, date(2026, 6, 20), in_place=True, fixed_day=True)
    out = sitting.pump_outs[-1].model_copy(update={"on": date(2026, 5, 30)})
    talk = sitting.begin("trouble")
    talk.start()
    talk.hear("my husband fell in")
    sitting.conclude(talk)
    printed = str(pictures(sitting.judgement(), sitting.checks, [out], words)[0])
    assert "crust: not known yet" in printed
    assert "read on" not in printed
