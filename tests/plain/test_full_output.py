"""An output that takes no more: one plain line, exit code 2, nothing lost that was saved."""

from __future__ import annotations

import errno
import io
import os
import resource
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from selfcheck.__main__ import main
from selfcheck.storage import journal
from tests.sitting.desks import lived_in

ROOT = Path(__file__).resolve().parents[2]
DAY = "2026-06-01"
HOMES = ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME")


class Full(io.StringIO):
    """Takes so many signs, then no more; a real stream tells of it when it writes or when it is flushed."""

    def __init__(self, room: int, number: int = errno.ENOSPC, *, late: bool = False) -> None:
        super().__init__()
        self._room, self._number, self._late = room, number, late

    def write(self, text: str) -> int:
        self._room -= len(text)
        if not self._late:
            self.flush()
        return super().write(text)

    def flush(self) -> None:
        if self._room < 0:
            raise OSError(self._number, os.strerror(self._number))


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    for name in HOMES:
        monkeypatch.setenv(name, str(tmp_path / name))
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    return lived_in(tmp_path / "home")


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EPIPE, errno.EBADF, errno.EIO], ids=errno.errorcode.get)
@pytest.mark.parametrize("late", [False, True])
@pytest.mark.parametrize(
    "door", ["judge", "judge --json", "examine", "schema", "note", "sheet", "--help", "note --help"]
)
def test_one_line_at_most_and_no_trace(
    home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, door: str, late: bool, number: int
) -> None:
    told = io.StringIO()
    monkeypatch.setattr(sys, "stdout", Full(20, number, late=late))
    monkeypatch.setattr(sys, "stderr", told)
    command, *more = door.split()
    where = [] if command == "schema" or "--help" in door else [str(home), "--today", DAY]
    assert main([command, *where, *more]) == 2
    said = f"The text could not be written out ({os.strerror(number)}). What was saved before is safe."
    assert told.getvalue().splitlines() == ([] if number == errno.EPIPE else [said])  # a reader that went chose to
    assert not list((tmp_path / "XDG_STATE_HOME").rglob("*"))


@pytest.mark.parametrize("arguments", [["--help"], ["judge", "demo_household"], ["schema"], ["--plain"]])
def test_a_reader_that_has_gone_or_an_output_that_was_shut(tmp_path: Path, arguments: list[str]) -> None:
    reading, writing = os.pipe()
    os.close(reading)
    for out in (writing, None):
        done = subprocess.run(
            [sys.executable, "-m", "selfcheck", *arguments],
            cwd=ROOT,
            env={**os.environ, "PYTHONDONTWRITEBYTECODE": "1", **dict.fromkeys(HOMES, str(tmp_path))},
            stdout=out,
            stderr=subprocess.PIPE,
            stdin=subprocess.DEVNULL,
            text=True,
            check=False,
            preexec_fn=None if out else lambda: os.close(1),
        )
        assert (done.returncode, len(done.stderr.splitlines())) == (2, 0 if out else 1)
    os.close(writing)


def _given(home: Path) -> list[str]:
    """What was typed to the questions of the conversation that is open."""
    (opened,) = journal.find(home)[0]
    return [one.said for one in opened.answers if not one.question.startswith("_")]


def test_the_answers_given_before_it_stay(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    spoken = io.StringIO()
    monkeypatch.setattr(sys, "stdin", io.StringIO("1\n1\nnone\n"))
    monkeypatch.setattr(sys, "stdout", spoken)
    main([str(home), "--plain", "--today", DAY])
    whole = _given(home)
    assert "none" in whole
    room = spoken.getvalue().index("> none")
    shutil.rmtree(home / "open")
    told = io.StringIO()
    monkeypatch.setattr(sys, "stdin", io.StringIO("1\n1\nnone\n"))
    monkeypatch.setattr(sys, "stdout", Full(room + 10))
    monkeypatch.setattr(sys, "stderr", told)
    assert main([str(home), "--plain", "--today", DAY]) == 2
    assert len(told.getvalue().splitlines()) == 1
    assert "No space left" in told.getvalue()
    assert _given(home) == whole


@pytest.mark.parametrize("arguments", [["judge", "demo_household"], ["schema"]])
@pytest.mark.parametrize("errors_too", [False, True])
def test_a_real_file_that_may_grow_no_more(tmp_path: Path, arguments: list[str], errors_too: bool) -> None:
    with (tmp_path / "out").open("w") as out:
        done = subprocess.run(
            [sys.executable, "-m", "selfcheck", *arguments],
            cwd=ROOT,
            env={**os.environ, "PYTHONDONTWRITEBYTECODE": "1", "XDG_STATE_HOME": str(tmp_path / "state")},
            stdout=out,
            stderr=subprocess.STDOUT if errors_too else subprocess.PIPE,
            stdin=subprocess.DEVNULL,
            text=True,
            check=False,
            preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100)),
        )
    assert done.returncode == 2
    if not errors_too:
        assert done.stderr.splitlines() == [
            "The text could not be written out (File too large). What was saved before is safe."
        ]


def test_a_name_that_is_too_long_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for arguments in (["judge"], ["--plain"], ["note"], ["unpack", str(tmp_path)], ["report", "--to", "x.html"]):
        assert main([*arguments, str(tmp_path / ("x" * 300))]) == 2
        told = capsys.readouterr().err
        assert "mistake" not in told
        assert len(told.splitlines()) == 2
