"""From a key, and from an answer, to what is painted: after 10 and after 2,000 messages, against a bare input line."""

from __future__ import annotations

from statistics import median

from tests.benchmarks.endless import question
from tests.benchmarks.terminals import Program, shown

BARE = """
from textual.app import App
from textual.widgets import Input
class Bare(App):
    def compose(self):
        yield Input(placeholder="ready")
Bare().run()
"""
TURNS = 60
KEYS = "abcdefghijklmnopqrstuvwyz"


def run() -> None:
    """Print medians, 99th percentiles, and what 2,000 messages cost more than 10."""
    bare = Program(["-c", BARE])
    bare.until("ready")
    floor = [bare.answered(key, key) for key in KEYS[:20]]
    bare.stop()
    print(f"  a key in a bare input line       {shown(floor)}")
    answers: dict[int, list[float]] = {}
    keys: dict[int, list[float]] = {}
    for count in (10, 2000):
        program = Program(["-m", "tests.benchmarks.endless", str(count)])
        program.until("What would you like")
        program.answered("1", question(1))
        keys[count] = [program.answered(key, key) for key in KEYS[:20]]
        program.child.send("\x15")
        answers[count] = []
        for turn in range(2, TURNS + 2):
            answers[count].append(program.answered("6 in\r", question(turn)))
        program.stop()
        print(f"  a key after {count:4} messages        {shown(keys[count])}")
        print(f"  an answer after {count:4} messages    {shown(answers[count])}")
    key, answer = (median(taken[2000]) / median(taken[10]) for taken in (keys, answers))
    print(f"  2,000 against 10: key {key:.2f} ×, answer {answer:.2f} × (aim 1.3)")
