"""How long `judge` takes against an empty program that only loads pydantic."""

from __future__ import annotations

import subprocess
import sys
import time
from statistics import median

from tests.benchmarks.terminals import ROOT, environment

ROUNDS = 15
PROGRAMS = {
    "pydantic": ["-c", "from pydantic import BaseModel"],
    "judge": ["-m", "selfcheck", "judge", "demo_household", "--json", "--today", "2026-06-01"],
}


def run() -> None:
    """Print medians and their ratio, of alternating runs."""
    times: dict[str, list[float]] = {name: [] for name in PROGRAMS}
    for turn in range(ROUNDS + 1):
        for name, arguments in PROGRAMS.items():
            began = time.perf_counter()
            subprocess.run([sys.executable, *arguments], cwd=ROOT, env=environment(), capture_output=True, check=True)
            if turn:
                times[name].append(time.perf_counter() - began)
    for name, taken in times.items():
        print(f"  {name:10} {median(taken) * 1000:6.0f} ms")
    print(f"  {median(times['judge']) / median(times['pydantic']):.2f} × (aim 1.5)")
