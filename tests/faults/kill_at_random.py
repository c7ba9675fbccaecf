"""Kills the line-by-line face at random moments and looks for answers that were acknowledged and are gone.

    python -m tests.faults.kill_at_random [--runs 300] [--seed 1]

An answer is acknowledged when the next question is on the screen. Each run is killed (SIGKILL) a random moment after a
random line was sent. Afterwards every acknowledged answer must be in the journal or in the finished record, and the
next start must offer to go on. Exit 0 when no run lost anything.
"""

from __future__ import annotations

import argparse
import functools
import os
import random
import select
import shutil
import signal
import sys
import tempfile
import time
import traceback
from datetime import date
from pathlib import Path

from selfcheck.__main__ import main as program
from selfcheck.interview.answers import ENGINE, Answer
from selfcheck.loading import content, conversations
from selfcheck.loading.place import content_place
from selfcheck.plain import face
from selfcheck.sitting import Sitting
from selfcheck.storage import journal
from selfcheck.storage.folder import read
from tests.faults.walking import lines_through
from tests.sitting.desks import lived_in

ROOT = Path(__file__).resolve().parents[2]
TODAY = "2026-06-01"
#: the check from a filled-in sheet, with a tee that hangs loose
CHOICES = {"way_in": "sheet", "inlet_tee_state": "loose", "gate_teach": "call_stay_out"}


# The content is read once, before the processes part, so that hundreds of them start at once.
conversations.script = face.script = functools.lru_cache(conversations.script)  # type: ignore[assignment]
content.rules = functools.lru_cache(content.rules)  # type: ignore[assignment]
content.signs = functools.lru_cache(content.signs)  # type: ignore[assignment]


class Child:
    """The program in a process of its own, with pipes for its input and output."""

    def __init__(self, folder: Path) -> None:
        to_child, self._in = os.pipe()
        self._out, from_child = os.pipe()
        self.pid = os.fork()
        if self.pid == 0:
            os.dup2(to_child, 0)
            os.dup2(from_child, 1)
            for handle in (to_child, from_child, self._in, self._out):
                os.close(handle)
            sys.stdin = os.fdopen(0, encoding="utf-8")
            sys.stdout = os.fdopen(1, "w", encoding="utf-8")
            code = 2
            try:
                code = program([str(folder), "--plain", "--today", TODAY])
                sys.stdout.flush()
            except BaseException:  # a child must never go on as the parent
                traceback.print_exc()
            os._exit(code)
        os.close(to_child)
        os.close(from_child)

    def until_asked(self) -> str:
        """Everything said up to the next mark at which it waits for a line, or to its end."""
        said = b""
        while not said.endswith(b"> "):
            select.select([self._out], [], [], 20)
            more = os.read(self._out, 65536)
            if not more:
                break
            said += more
        return said.decode()

    def type(self, line: str) -> None:
        os.write(self._in, line.encode() + b"\n")

    def kill(self) -> None:
        os.kill(self.pid, signal.SIGKILL)
        self.wait()

    def wait(self) -> None:
        os.waitpid(self.pid, 0)
        os.close(self._in)
        os.close(self._out)


def kept(folder: Path) -> list[Answer]:
    """What is on the disk: the answers of the open conversation, or those of the check that came of it."""
    found, _ = journal.find(folder)
    if found:
        return [answer for answer in found[0].answers if not answer.question.startswith(ENGINE)]
    newest = [check for check in read(folder).checks if (check.model_extra or {}).get("sitting")]
    given = newest[-1].model_dump()["answers"] if newest else []
    return [Answer(one["question"], one["state"], None, one["said"]) for one in given if one["question"][0] != ENGINE]


def said(answers: list[Answer]) -> list[tuple[str, str, str]]:
    return [(answer.question, answer.state, answer.said) for answer in answers]


def reference(folder: Path, lines: list[str]) -> list[list[tuple[str, str, str]]]:
    """What must be on the disk after each line, from a run that is not disturbed."""
    child = Child(folder)
    child.until_asked()
    after = []
    for line in lines:
        child.type(line)
        child.until_asked()
        after.append(said(kept(folder)))
    child.kill()
    return after


def one_run(folder: Path, lines: list[str], expected: list[list[tuple[str, str, str]]], chance: random.Random) -> str:
    """Kill one run somewhere. Gives what went wrong, or ""."""
    stop = chance.choice([chance.randrange(1, len(lines)), len(lines) - 1, len(lines) - 2])
    child = Child(folder)
    child.until_asked()
    for line in lines[:stop]:
        child.type(line)
        child.until_asked()
    child.type(lines[stop])
    time.sleep(chance.choice([0, chance.uniform(0, 0.003), chance.uniform(0, 0.03)]))
    child.kill()
    acknowledged, found = expected[stop - 1], said(kept(folder))
    if found[: len(acknowledged)] != acknowledged:
        return f"killed at line {stop}: {len(acknowledged)} answers acknowledged, on disk {found}"
    faults = [str(problem) for problem in read(folder).problems]
    if faults:
        return f"killed at line {stop}: the record is damaged: {faults}"
    finished = any((check.model_extra or {}).get("sitting") for check in read(folder).checks)
    sitting = Sitting.open(folder, content_place(own=False), date.fromisoformat(TODAY))
    offered = sitting.unfinished()
    if acknowledged and not finished and offered is None:
        return f"killed at line {stop}: the next start does not offer to go on"
    if finished and offered is not None:
        return f"killed at line {stop}: a finished check is offered again"
    if (
        offered is not None
        and said(list(sitting.resume().answers))[: len(found)] != said(list(offered.answers))[: len(found)]
    ):
        return f"killed at line {stop}: going on does not begin where it stopped"
    sitting.close()
    return ""


def run(runs: int, seed: int) -> tuple[int, list[str]]:
    """So many kills; gives how many answers a whole run keeps, and what was lost."""
    chance = random.Random(seed)
    with tempfile.TemporaryDirectory() as passing:
        day = date.fromisoformat(TODAY)
        walked = lines_through(lived_in(Path(passing) / "walked"), "yearly", day, CHOICES)
        lines = ["1", "i don't know what you mean", *walked[:3], "back", *walked[2:]]
        face.script(content_place(), "home")
        expected = reference(lived_in(Path(passing) / "reference"), lines)
        lost = []
        for number in range(runs):
            folder = lived_in(Path(passing) / f"run-{number}")
            fault = one_run(folder, lines, expected, chance)
            if fault:
                lost.append(fault)
            shutil.rmtree(folder)
    return len(expected[-1]), lost


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--runs", type=int, default=300)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args()
    answers, lost = run(chosen.runs, chosen.seed)
    print(f"{chosen.runs} kills, {answers} answers in a whole run, {len(lost)} runs with a loss")
    print("\n".join(lost[:20]))
    sys.exit(1 if lost or not answers else 0)
