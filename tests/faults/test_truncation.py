"""Files cut off at every byte: what was whole before the cut is used, and nothing else is made up."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from selfcheck.domain.check import Check, Reading, Readings, Seen
from selfcheck.domain.household import Household
from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import Answer
from selfcheck.storage import journal, writing
from selfcheck.storage.folder import read

ANSWERS = tuple(
    Answer(f"q{number}", "value", value, said, at="2026-05-18T17:40:03Z")
    for number, (value, said) in enumerate(
        [("a", "1"), (0.2032, '8"'), (("x", "y"), "1, 2"), (date(2024, 4, 12), "é\n")]
    )
)


def test_a_journal_cut_at_every_byte_gives_back_every_whole_answer(tmp_path: Path) -> None:
    book = journal.Journal.begin(tmp_path, "yearly", "2026-05-18T17:40:03Z")
    whole_after = []  # size of the file when each answer was acknowledged
    for answer in ANSWERS:
        book.keep(answer)
        whole_after.append(book.path.stat().st_size)
    book.close()
    whole = book.path.read_bytes()
    for cut in range(len(whole)):
        book.path.write_bytes(whole[:cut])
        try:
            opened = journal.load(book.path)
        except RecordProblem:
            assert cut < whole_after[0]
            continue
        acknowledged = sum(size <= cut for size in whole_after)
        assert opened.answers in (ANSWERS[:acknowledged], ANSWERS[: acknowledged + 1])  # one may lack its line end only
        if cut % 9 and cut not in whole_after:
            continue
        opened.journal.keep(Answer("later", "value", "z"))
        opened.journal.close()
        assert journal.load(book.path).answers == (*opened.answers, Answer("later", "value", "z"))
        assert journal.load(book.path).problems == ()


def test_a_check_cut_at_every_byte_is_named_and_never_half_used(tmp_path: Path) -> None:
    seen = Seen(readings=Readings(sludge=[Reading(m=0.2, said="8 in")]), smell="earthy")
    writing.write_household(tmp_path, Household(), date(2026, 5, 18))
    kept = writing.write_check(tmp_path, Check(id="", on=date(2025, 5, 18)))
    torn = writing.write_check(tmp_path, Check(id="", on=date(2026, 5, 18), seen=seen))
    path = tmp_path / "checks" / f"{torn.id}.json"
    whole = path.read_bytes()
    for cut in range(len(whole) - 1):  # without its last line end it is still whole
        path.write_bytes(whole[:cut])
        found = read(tmp_path)
        assert found.checks == (kept,)
        assert len(found.problems) == 1
    path.write_bytes(whole[:-1])
    assert read(tmp_path).checks == (kept, torn)
