"""The line-by-line face: typed lines in, text out; it ends well however it ends."""

from __future__ import annotations

import io
import os
import shutil
import signal
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from selfcheck.loading.place import content_place
from selfcheck.plain.face import Face
from selfcheck.plain.listening import LONGEST_LINE, Interrupted, Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone, Talk
from selfcheck.sitting import Sitting
from selfcheck.storage import journal
from tests.faults.walking import lines_through
from tests.sitting.desks import lived_in
from tests.situations.test_half_understood import standing_at

ROOT = Path(__file__).resolve().parents[2]
TODAY = date(2026, 6, 1)
PLACE = content_place(own=False)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return lived_in(tmp_path / "home")


def typed(folder: Path, *lines: str, begin: bool = False, width: int = 78) -> tuple[str, int]:
    """Everything said to these lines, and the exit code."""
    out = io.StringIO()
    sitting = Sitting.open(folder, PLACE, TODAY, begin=begin)
    listener = Listener(io.StringIO("".join(f"{line}\n" for line in lines)))
    try:
        code = Face(sitting, Speaker(out, width), listener).run()
    except Gone as gone:
        code = gone.code
    finally:
        sitting.close()
    return out.getvalue(), code


def test_from_the_start_to_the_verdict_and_the_record(home: Path) -> None:
    walked = lines_through(Path(shutil.copytree(home, home.parent / "walk")), "yearly", TODAY, {"way_in": "sheet"})
    said, code = typed(home, "1", *walked, "", "see my record", "", "look ahead", "", "quit")
    assert code == 0
    assert "> 1" in said
    for words in (
        "By whose rule is it due?",
        "Press Enter",
        "Checks and pump-outs",
        "As of today",
        "answers are saved",
    ):
        assert words in said, words
    assert len(list((home / "checks").iterdir())) == 7
    assert max(map(len, said.splitlines())) <= 78


def test_end_of_input_leaves_the_answers_and_the_next_start_goes_on(home: Path) -> None:
    said, code = typed(home, "1", "2", "none")
    assert code == 0
    assert "Your answers are saved" in said
    offer, _ = typed(home)
    assert "You stopped in the middle" in offer
    more, _ = typed(home, "1", "quit")
    assert "go on from where you left" in more
    anew, _ = typed(home, "2", "quit")
    assert "What do you want to do?" in anew
    assert "You stopped" not in typed(home)[0]


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("something is wrong", "Is anyone hurt or ill"),
        ("my son fell in", "Do not go in"),
        ("what is sludge", "settles on the bottom"),
        ("help", "ask about the job"),
        ("no", "What do you want to do?"),
        ("yes", "go on from where you left"),
        ("quit", "All is saved"),
    ],
)
def test_words_are_met_where_half_done_is_offered(home: Path, line: str, said: str) -> None:
    typed(home, "1", "2", "none")
    assert said in typed(home, line)[0].rpartition(f"> {line}\n")[2]


def test_end_of_input_with_the_lid_off_says_that_it_must_be_shut(home: Path) -> None:
    folder = Path(shutil.copytree(home, home.parent / "walk"))
    choices = {"way_in": "guided", "gate_teach": "call_stay_out", "gate_lid": "firm_heavy"}
    walked = lines_through(folder, "yearly", TODAY, choices)
    conversation = Sitting.open(folder, PLACE, TODAY).begin("yearly")
    conversation.start()
    while conversation.prompt is not None and not conversation.prompt.may_stand_open:
        conversation.hear(walked.pop(0))
    before = [answer.said for answer in conversation.answers]
    assert conversation.prompt is not None
    said, _ = typed(home, "1", *before)
    closing = said.rpartition("> ")[2]
    assert "Let nobody come near until it is shut" in closing


def test_danger_typed_at_a_pause_is_met_at_once(home: Path) -> None:
    said, _ = typed(home, "see my record", "my son fell in")
    after = said.rpartition("my son fell in")[2]
    assert "DANGER" in after
    assert "Do not go in" in after


def test_hostile_lines_come_out_harmless(home: Path) -> None:
    hostile = ["\x1b]52;c;aGk=\x07", "\x1b[2J\x9b31m", "a\0b", "\u202egnp.exe", "[@click=app.quit]x[/]", "9" * 5000]
    said, code = typed(home, "1", *hostile, "quit")
    assert code == 0
    assert not set(said) & {"\x1b", "\x07", "\x9b", "\0", "\u202e"}
    assert max(map(len, said.splitlines())) <= 600


def test_a_narrow_screen_gets_short_lines(home: Path) -> None:
    said, _ = typed(home, "quit", width=40)
    assert max(map(len, said.splitlines())) <= 40


def test_a_file_that_cannot_be_used_is_named_at_the_start(home: Path) -> None:
    (home / "checks/2025-05-17.json").write_text("{")
    said, _ = typed(home, "quit")
    assert "checks/2025-05-17.json" in said


def test_an_endless_line_is_cut(home: Path) -> None:
    listener = Listener(io.StringIO("x" * 100_000 + "\nnext\n"))
    assert len(listener.line() or "") == LONGEST_LINE
    assert listener.line() == "next"
    assert listener.line() is None


def test_a_signal_waits_until_the_answer_is_saved() -> None:
    listener = Listener(io.StringIO("one\n"))
    with listener.minding_signals():
        os.kill(os.getpid(), signal.SIGTERM)
        with pytest.raises(Interrupted):
            listener.line()
        assert listener.line() == "one"


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM, signal.SIGHUP])
def test_a_signal_loses_nothing(home: Path, number: int) -> None:
    child = subprocess.Popen(
        [sys.executable, "-m", "selfcheck", str(home), "--plain", "--today", "2026-06-01"],
        cwd=ROOT,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    assert child.stdin is not None
    assert child.stdout is not None
    child.stdin.write("1\n2\nnone\n")
    child.stdin.flush()
    said = ""
    while said.count("> ") < 4:  # the start and three questions
        letter = child.stdout.read(1)
        assert letter, said
        said += letter
    child.send_signal(number)
    rest, errors = child.communicate(timeout=20)
    assert (child.returncode, errors) == (130, "")
    assert "saved" in rest
    (left,), _ = journal.find(home)
    assert [answer.question for answer in left.answers][:2] == ["way_in", "wrong_now"]


def test_a_new_household_is_begun_only_when_the_person_says_so(tmp_path: Path) -> None:
    def start(answer: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-m", "selfcheck", str(tmp_path / "new"), "--today", "2026-06-01"],
            cwd=ROOT,
            input=answer,
            capture_output=True,
            text=True,
            check=False,
        )

    assert start("").returncode == start("no\n").returncode == 2
    assert not (tmp_path / "new").exists()
    done = start("yes\nquit\n")
    assert (done.returncode, done.stderr) == (0, "")
    assert "A new household" in done.stdout


def test_streams_that_are_closed_are_no_fault(home: Path) -> None:
    done = subprocess.run(
        f'"{sys.executable}" -m selfcheck "{home}" <&-',
        shell=True,
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "Juniper Lane" in done.stdout


def test_with_nothing_on_record_nothing_is_foretold(tmp_path: Path) -> None:
    said, code = typed(tmp_path / "new", "look ahead", "dates", "", "see my record", "", "quit", begin=True)
    assert code == 0
    assert "nothing on record to look ahead from" in said
    assert "due around" not in said


@pytest.mark.parametrize("killed", [False, True])
def test_a_new_household_left_half_way_is_gone_on_with(tmp_path: Path, killed: bool) -> None:
    def start() -> subprocess.Popen[str]:
        return subprocess.Popen(
            [sys.executable, "-m", "selfcheck", str(tmp_path / "new"), "--plain", "--today", "2026-06-01"],
            cwd=ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    child = start()
    assert child.stdin is not None
    assert child.stdout is not None
    child.stdin.write("yes\n1\n2\n")
    child.stdin.flush()
    said = ""
    while said.count("> ") < 4:  # new or not, the start and two questions
        letter = child.stdout.read(1)
        assert letter, said
        said += letter
    if killed:
        child.kill()
    child.communicate(timeout=20)
    shown, _ = start().communicate("1\n", timeout=20)
    assert "Begin a new household" not in shown
    assert "You stopped in the middle of: The yearly check" in shown


def test_a_warning_is_told_before_the_heading_of_the_part_that_it_leads_to() -> None:
    out = io.StringIO()
    talk = Talk(None, Speaker(out, 78), Listener(io.StringIO("")), Words(PLACE))
    talk.hear(standing_at("gate_lid", person="homeowner"), "the lid cracked")
    said = out.getvalue()
    assert said.index("STOP:") < said.index("Part ")
