"""The open check: each answer on the disk, and a torn line costs that line alone."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import Answer
from selfcheck.storage import journal, journal_lines
from selfcheck.storage.journal import Journal
from selfcheck.storage.lock import Lock

STARTED = "2026-05-18T17:40:03Z"
ANSWERS = (
    Answer("way_in", "value", "guided", "1", at=STARTED),
    Answer("sludge_1", "value", 0.2032, '8" or so', error=0.012),
    Answer("yard", "value", ("wet_smelly", "lush_strip"), "1 and 3"),
    Answer("house", "value", (), "none"),
    Answer("pumped", "value", date(2024, 4, 12), "april 2024", observed="2026-05-17"),
    Answer("smell", "unknown", None, "no\nidea \x1b]52;c;x\x07 \u202e"),
    Answer("note", "skipped"),
    Answer("zero", "value", 0.0, "none"),
)


def kept(folder: Path, answers: tuple[Answer, ...] = ANSWERS) -> Path:
    book = Journal.begin(folder, "yearly", STARTED, "1")
    for answer in answers:
        book.keep(answer)
    book.close()
    return book.path


def test_every_kind_of_answer_comes_back_as_it_was(tmp_path: Path) -> None:
    kept(tmp_path)
    (opened,), problems = journal.find(tmp_path)
    assert opened.answers == ANSWERS
    assert (opened.journal.header.flow, opened.journal.header.started, opened.problems) == ("yearly", STARTED, ())
    assert problems == []


def test_beginning_leaves_nothing_until_the_first_answer(tmp_path: Path) -> None:
    book = Journal.begin(tmp_path, "yearly", STARTED)
    assert not (tmp_path / "open").exists()
    book.keep(ANSWERS[0])
    assert len(book.path.read_bytes().splitlines()) == 2


def test_going_on_after_a_torn_line_keeps_the_torn_part_aside(tmp_path: Path) -> None:
    path = kept(tmp_path)
    torn = path.read_bytes()[:-20]
    path.write_bytes(torn)
    opened = journal.load(path)
    assert opened.answers == ANSWERS[:-1]
    assert "last line" in str(opened.problems[0])
    assert path.read_bytes() == torn  # reading changes nothing
    opened.journal.keep(ANSWERS[-1])
    assert journal.load(path).answers == ANSWERS
    aside = [p for p in path.parent.iterdir() if ".torn-" in p.name]
    assert len(aside) == 1
    assert torn.endswith(aside[0].read_bytes())


def test_a_damaged_line_in_the_middle_costs_that_line_alone(tmp_path: Path) -> None:
    path = kept(tmp_path)
    lines = path.read_bytes().split(b"\n")
    lines[2] = b'{"question": "sludge_1", "state": "value", "value": true}'
    lines[4] = b"\xff\xfe\0"
    path.write_bytes(b"\n".join(lines))
    opened = journal.load(path)
    assert opened.answers == (ANSWERS[0], ANSWERS[2], *ANSWERS[4:])
    assert ["line 3" in str(opened.problems[0]), "line 5" in str(opened.problems[1])] == [True, True]


def test_a_damaged_first_line_costs_no_answer(tmp_path: Path) -> None:
    path = kept(tmp_path)
    path.write_bytes(b"?" + path.read_bytes())
    opened = journal.load(path)
    assert (opened.answers, opened.journal.header.flow) == (ANSWERS, "yearly")
    path.write_bytes(path.read_bytes().split(b"\n")[0] + b"\n")
    with pytest.raises(RecordProblem):
        journal.load(path)


def test_one_from_a_newer_program_is_refused_and_stays(tmp_path: Path) -> None:
    path = kept(tmp_path)
    path.write_bytes(path.read_bytes().replace(b'"version": 1', b'"version": 2', 1))
    found, problems = journal.find(tmp_path)
    assert (found, len(problems)) == ([], 1)
    assert "newer" in str(problems[0])


def test_newest_first_and_what_is_put_aside_is_not_offered(tmp_path: Path) -> None:
    older = kept(tmp_path)
    book = Journal.begin(tmp_path, "trouble", "2026-06-18T17:40:03Z")
    book.keep(ANSWERS[0])
    found, _ = journal.find(tmp_path)
    assert [one.journal.header.flow for one in found] == ["trouble", "yearly"]
    book.put_aside()
    found[1].journal.remove()
    assert journal.find(tmp_path) == ([], [])
    assert not older.exists()
    assert book.path.with_suffix(".left").exists()


values = st.one_of(
    st.none(),
    st.text(),
    st.floats(allow_nan=False, allow_infinity=False),
    st.dates(),
    st.lists(st.text()).map(tuple),
)
answers = st.builds(
    Answer,
    st.text(min_size=1),
    st.sampled_from(["value", "unknown", "skipped"]),
    values,
    st.text(),
    st.none() | st.floats(allow_nan=False, allow_infinity=False),
    st.text(),
    st.text(),
)


@settings(max_examples=150, deadline=None)
@given(answers)
def test_any_answer_survives_the_line_it_is_written_as(answer: Answer) -> None:
    line = journal_lines.answer_line(answer)
    assert line.count(b"\n") == 1
    assert journal_lines.read_answer(line) == answer


def test_one_writer_a_folder(tmp_path: Path) -> None:
    first, second = Lock(tmp_path), Lock(tmp_path)
    assert first.take()
    assert not second.take()
    assert "Another" in second.reason
    first.release()
    assert second.take()
    second.release()


def test_no_lock_where_nothing_may_be_written(tmp_path: Path) -> None:
    lock = Lock(tmp_path / "missing")
    assert not lock.take()
    assert "does not allow writing" in lock.reason
