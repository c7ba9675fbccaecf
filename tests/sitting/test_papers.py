"""Papers are made as files that say where they are, and never cover one that is there."""

from __future__ import annotations

import os
import zipfile
from pathlib import Path

import pytest

from selfcheck.sitting import Sitting, papers
from selfcheck.sitting.paper_pages import asks_for_sheet, sheet_made
from selfcheck.sitting.record_pages import RecordPages
from tests.sitting.desks import Driven, demo, opened


@pytest.fixture
def sitting(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Sitting:
    monkeypatch.setattr(papers, "papers", lambda: tmp_path / "papers")
    return opened(demo(tmp_path / "home"))


@pytest.mark.parametrize("paper", list(papers.PAPERS))
def test_each_paper_is_made_once_and_a_changed_one_stands_beside_it(sitting: Sitting, paper: str) -> None:
    first, second = papers.make(sitting, paper), papers.make(sitting, paper)
    assert (first.path, first.before, second.before) == (second.path, False, True)
    assert first.path.stat().st_size > 200
    assert os.stat(first.path).st_mode & 0o077 == 0
    first.path.write_bytes(b"written over by hand")
    third = papers.make(sitting, paper)
    assert third.path != first.path
    assert not third.before
    assert first.path.read_bytes() == b"written over by hand"


def test_the_ways_say_where_each_paper_is(sitting: Sitting, tmp_path: Path) -> None:
    desk = Driven(RecordPages(sitting).desk()).say("papers")
    for number in range(3, 9):
        said = desk.say(str(number)).desk.said.text
        path = Path(said.splitlines()[1])
        assert path.parent == tmp_path / "papers"
        assert path.is_file()
    assert zipfile.is_zipfile(next((tmp_path / "papers").glob("*.zip")))
    assert "Safe or not" in desk.say("1").text
    assert "Tank" in desk.say("back", "2").text


def test_a_place_that_cannot_be_written_is_said(sitting: Sitting, tmp_path: Path) -> None:
    (tmp_path / "papers").write_text("a file in the way")
    desk = Driven(RecordPages(sitting).desk()).say("papers", "3")
    assert desk.desk.said.kind == "trouble"
    assert "papers" in desk.desk.said.text


def test_print_is_heard_in_a_conversation_and_other_lines_are_not(sitting: Sitting) -> None:
    assert asks_for_sheet(sitting, " Print  the sheet. ")
    assert not asks_for_sheet(sitting, "the sheet is filled in")
    assert Path(sheet_made(sitting).splitlines()[1]).is_file()
