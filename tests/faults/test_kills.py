"""SIGKILL at random moments: see `kill_at_random.py`, which does hundreds by hand."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

SCRIPT = Path(__file__).with_name("kill_at_random.py")


@pytest.mark.skipif(not hasattr(os, "fork"), reason="the kills are done in forked processes")
def test_no_acknowledged_answer_is_lost() -> None:
    done = subprocess.run(
        [sys.executable, str(SCRIPT), "--runs", "24", "--seed", "7"], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    assert "24 kills" in done.stdout
