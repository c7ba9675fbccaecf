"""SIGKILL at random moments: see `kill_at_random.py`, which does hundreds by hand."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
SCRIPT = "tests.faults.kill_at_random"


@pytest.mark.skipif(not hasattr(os, "fork"), reason="the kills are done in forked processes")
def test_no_acknowledged_answer_is_lost() -> None:
    done = subprocess.run(
        [sys.executable, "-m", SCRIPT, "--runs", "16", "--seed", "7"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    assert "16 kills" in done.stdout
