"""What terms of a typed line say of danger, as written by the command `python -m tests.benchmarks.hazard_weights`."""

from __future__ import annotations

from pathlib import Path

TABLES = Path(__file__).with_name("hazard_weights.tsv")


def hazard_weights() -> str:
    """The tables as text, a row a line, its fields parted by tabs; how they are read stands in `hazard_weighing.py`."""
    return TABLES.read_text(encoding="utf-8")
