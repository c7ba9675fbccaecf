"""How long until the first question is painted, and how much memory that takes, against a bare app of one word; and
how long until the first question of a check stands there, when it is picked at once.
"""

from __future__ import annotations

from statistics import median

from tests.benchmarks.terminals import Program

BARE = """
from textual.app import App
from textual.widgets import Static
class Bare(App):
    def compose(self):
        yield Static("ready")
Bare().run()
"""
QUESTION = "What do you want to do?"
#: a check is the first choice of the start; among the keys of its first question stand these words
CHECK, UNDER_A_QUESTION = "1", "save and leave"
ROUNDS = 15


def run() -> None:
    """Print medians and ratios of alternating starts; the first of each only compiles."""
    times: dict[str, list[float]] = {"bare": [], "selfcheck": []}
    memory: dict[str, list[float]] = {"bare": [], "selfcheck": []}
    begun: list[tuple[float, float]] = []
    programs = {"bare": (["-c", BARE], "ready"), "selfcheck": (["-m", "selfcheck", "demo_household"], QUESTION)}
    for turn in range(ROUNDS + 1):
        for name, (arguments, words) in programs.items():
            program = Program(arguments)
            taken, held = program.until(words), program.peak_mb()
            if turn and name == "selfcheck":
                program.child.send(CHECK)
                begun.append((program.until(UNDER_A_QUESTION), program.peak_mb()))
            program.stop()
            if turn:
                times[name].append(taken)
                memory[name].append(held)
    for name in programs:
        print(f"  {name:10} {median(times[name]) * 1000:6.0f} ms   {median(memory[name]):5.1f} MB")
    ratio = median(times["selfcheck"]) / median(times["bare"])
    paired = median(ours / bare for ours, bare in zip(times["selfcheck"], times["bare"], strict=True))
    more = median(memory["selfcheck"]) / max(median(memory["bare"]), 1e-9)
    print(f"  time {ratio:.2f} × (pair by pair {paired:.2f} ×; aim 1.5, then 1.2)   memory {more:.2f} × (aim 1.6)")
    later, most = (median(column) for column in zip(*begun, strict=True))
    print(f"  first question of a check, picked at once: {later / median(times['bare']):.2f} ×   {most:.1f} MB")
