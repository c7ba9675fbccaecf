"""Prepared conversations: a person, a household, and what is typed, line by line."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

from selfcheck.errors import ContentProblem, UsageProblem
from selfcheck.interview.nodes import STRICT
from selfcheck.loading.files import read_toml
from selfcheck.loading.place import Place


@dataclass(frozen=True, slots=True)
class Turn:
    """One line that is typed. `expect_question`: id of the question it answers. `expect`: a pattern in the replies."""

    type: str
    expect_question: str = ""
    expect: str = ""

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class Expected:
    """How the conversation should come out: verdicts that are right, and what else is looked for."""

    verdict: str | tuple[str, ...] = ()
    outcome: str | tuple[str, ...] = ()
    behaviour: str | tuple[str, ...] = ()

    __pydantic_config__ = STRICT

    @property
    def verdicts(self) -> tuple[str, ...]:
        """The verdicts that are right; none named: any."""
        return (self.verdict,) if isinstance(self.verdict, str) else self.verdict

    @property
    def outcomes(self) -> tuple[str, ...]:
        """The outcomes that are right; none named: any."""
        return (self.outcome,) if isinstance(self.outcome, str) else self.outcome


@dataclass(frozen=True, slots=True)
class Journey:
    """A prepared conversation.

    `household`: "demo", "none", the path of a folder (seen from the journey's own), or a table as in `household.json`.
    `checks` and `pump_outs` belong to a household that is given as a table. Either `turns` or plain `lines`.
    """

    title: str
    person: str = ""
    why: str = ""
    household: str | dict[str, Any] = "none"
    checks: tuple[dict[str, Any], ...] = ()
    pump_outs: tuple[dict[str, Any], ...] = ()
    today: date | None = None
    rules: str = ""
    flow: str = "yearly"
    turns: tuple[Turn, ...] = ()
    lines: tuple[str, ...] = ()
    expect: Expected = field(default_factory=Expected)
    folder: str = ""  # where the journey lies; set when it is read

    __pydantic_config__ = STRICT

    @property
    def typed(self) -> tuple[Turn, ...]:
        """What is typed, turn by turn."""
        return self.turns or tuple(Turn(line) for line in self.lines)


def load(path: Path) -> Journey:
    """One journey. Raises UsageProblem when there is no such file, ContentProblem with the key when it is wrong."""
    if not path.is_file():
        raise UsageProblem(f"There is no journey {path}.", "Name a file that holds a prepared conversation.")
    journey = read_toml(Place((path.resolve().parent,)), path.name, Journey, "journey", needs_first_line=True)
    if journey.folder:
        raise ContentProblem(path.name, "", "folder", "this is set by the program; take the key out.")
    if bool(journey.turns) == bool(journey.lines):
        raise ContentProblem(path.name, "", "turns", "a journey has either turns or lines.")
    if not isinstance(journey.household, dict) and (journey.checks or journey.pump_outs):
        raise ContentProblem(path.name, "", "checks", "checks and pump-outs go with a household given as a table.")
    from dataclasses import replace

    return replace(journey, folder=str(path.resolve().parent))
