"""Programs in a real terminal, and how long it takes until some words are painted."""

from __future__ import annotations

import atexit
import os
import shutil
import sys
import tempfile
import time
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from statistics import median, quantiles

import pexpect

ROOT = Path(__file__).resolve().parents[2]
PATIENCE = 60.0


@cache
def environment() -> dict[str, str]:
    """As on a household's computer: compiled modules are kept, and data lies apart; both are gone after this run."""
    kept = tempfile.mkdtemp(prefix="benchmark")
    atexit.register(shutil.rmtree, kept, ignore_errors=True)
    found = {**os.environ, "TERM": "xterm-256color", "PYTHONPYCACHEPREFIX": f"{kept}/compiled"}
    found.update(XDG_DATA_HOME=f"{kept}/data", XDG_CONFIG_HOME=f"{kept}/config", XDG_STATE_HOME=f"{kept}/state")
    found.update(PYTHONPATH=str(ROOT), TEXTUAL_ANIMATIONS="none")
    for name in ("PYTHONDONTWRITEBYTECODE", "NO_COLOR", "ACCESSIBLE"):
        found.pop(name, None)
    return found


class Program:
    """A Python program in a terminal of 80 × 24."""

    def __init__(self, arguments: Sequence[str]) -> None:
        self.began = time.perf_counter()
        self.child = pexpect.spawn(
            sys.executable, list(arguments), cwd=str(ROOT), env=environment(), dimensions=(24, 80), timeout=PATIENCE
        )
        self.child.delaybeforesend = None

    def until(self, words: str) -> float:
        """Seconds since it was started, when these words have come."""
        self.child.expect_exact(words)
        return time.perf_counter() - self.began

    def answered(self, keys: str, words: str) -> float:
        """Seconds from these keys to these words."""
        began = time.perf_counter()
        self.child.send(keys)
        self.child.expect_exact(words)
        return time.perf_counter() - began

    def peak_mb(self) -> float:
        """The most memory it has held so far [MB]; 0 where the system does not say."""
        status = Path(f"/proc/{self.child.pid}/status")
        if not status.exists():
            return 0.0
        line = next(line for line in status.read_text().splitlines() if line.startswith("VmHWM"))
        return int(line.split()[1]) / 1024

    def stop(self) -> None:
        """End it at once."""
        self.child.close(force=True)


def shown(values: Sequence[float]) -> str:
    """Median and 99th percentile, in milliseconds."""
    high = quantiles(values, n=100)[98] if len(values) > 1 else values[0]
    return f"median {median(values) * 1000:6.1f} ms   p99 {high * 1000:6.1f} ms"
