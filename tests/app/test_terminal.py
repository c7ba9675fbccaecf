"""The program in a real terminal: what a person would see, and that nothing else is sent."""

from __future__ import annotations

import os
import signal
import sys
import time
from pathlib import Path

import pexpect
import pyte
import pytest

ROOT = Path(__file__).resolve().parents[2]
PATIENCE = 30.0  # seconds; only a program that hangs needs them


class Terminal:
    """A terminal of some size with the program in it."""

    def __init__(self, arguments: list[str], width: int, height: int, home: Path) -> None:
        self.screen = pyte.Screen(width, height)
        self._stream = pyte.Stream(self.screen)
        self.sent = ""
        environment = {
            **os.environ,
            "TERM": "xterm-256color",
            "COLORTERM": "truecolor",
            "XDG_DATA_HOME": str(home),
            "XDG_CONFIG_HOME": str(home),
            "TEXTUAL_ANIMATIONS": "none",
        }
        for name in ("ACCESSIBLE", "NO_COLOR"):
            environment.pop(name, None)
        self.child = pexpect.spawn(
            sys.executable, ["-m", "selfcheck", *arguments], cwd=str(ROOT), env=environment, encoding="utf-8",
            dimensions=(height, width), timeout=PATIENCE,
        )  # fmt: skip

    def text(self) -> str:
        return "\n".join(line.rstrip() for line in self.screen.display)

    def wait_for(self, words: str) -> None:
        """Read on until the screen shows these words."""
        end = time.monotonic() + PATIENCE
        while words not in self.text():
            assert time.monotonic() < end, f"{words!r} never came:\n{self.text()}"
            self._read()

    def press(self, key: str) -> None:
        """Press a number key as somebody does who has read the question."""
        time.sleep(0.4)
        self.child.send(key)

    def wait_for_end(self) -> int:
        """Read on until the program has gone; its exit code."""
        while self.child.isalive():
            self._read()
        self.child.close()
        return int(self.child.exitstatus if self.child.exitstatus is not None else -1)

    def _read(self) -> None:
        try:
            read = self.child.read_nonblocking(65536, timeout=0.2)
            self.sent += read
            self._stream.feed(read)
        except pexpect.TIMEOUT:
            return
        except pexpect.EOF:
            self.child.wait()


def test_a_closed_terminal_leaves_the_answers_and_a_second_start_goes_on(tmp_path: Path) -> None:
    terminal = Terminal(["demo_household", "--today", "2026-06-01"], 60, 20, tmp_path)
    terminal.wait_for("What do you want to do?")
    terminal.child.send("1")  # at once: the record may not have been read yet
    terminal.wait_for("How do you want to do the check?")
    terminal.press("1")
    terminal.wait_for("right now")
    terminal.child.send("none\r")
    terminal.wait_for("› none")
    terminal.child.send("\x1bOQ")  # f2
    terminal.wait_for("│")
    terminal.child.close(force=True)  # hang up

    again = Terminal(["demo_household", "--today", "2026-06-01"], 80, 24, tmp_path)
    again.wait_for("Half done:")
    again.child.send("1")
    again.wait_for("Go on where I stopped")
    again.child.send("1")
    again.wait_for("We go on from where you left")
    again.child.send("\x03")
    again.wait_for("ctrl+c again")
    again.child.send("\x03")
    assert again.wait_for_end() == 0


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_a_signal_leaves_the_terminal_as_it_was(tmp_path: Path, number: signal.Signals) -> None:
    terminal = Terminal(["demo_household", "--today", "2026-06-01"], 60, 20, tmp_path)
    terminal.wait_for("What do you want to do?")
    terminal.child.send("1")
    terminal.wait_for("How do you want to do the check?")
    os.kill(terminal.child.pid, number)
    assert terminal.wait_for_end() == 130
    entered, left = terminal.sent.rpartition("\x1b[?1049h")[2].partition("\x1b[?1049l")[::2]
    assert entered
    assert "\x1b[?1049l" in terminal.sent
    assert "Traceback" not in terminal.sent
    for mode in ("1000", "1003", "1006", "2004"):  # the mouse in three ways, and pasting
        assert terminal.sent.rfind(f"\x1b[?{mode}l") >= terminal.sent.rfind(f"\x1b[?{mode}h"), mode
    assert "\x1b[?25h" in terminal.sent
    assert left.count("\x1b[?1049h") == 0
