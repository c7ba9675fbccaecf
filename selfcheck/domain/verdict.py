"""What a judgement is asked of and what it holds. The ladder of verdicts itself stands in `findings`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal, NamedTuple

from selfcheck.domain.check import Check, PumpOut, Readings
from selfcheck.domain.findings import CannotTell, Dates, Finding, Sureness, Verdict, rank
from selfcheck.domain.forecast import Forecast
from selfcheck.domain.household import Household, Tank
from selfcheck.domain.layers import Layers
from selfcheck.domain.limits import Call, RuleSet, Standing
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.signs import Sign
from selfcheck.domain.unjudged import Unread
from selfcheck.domain.weighing import Scene

DEFAULT_RULES = "us-epa-homeowner"

#: Days in which a call that is not for today should be made, where the finding names none. Our choice.
SOON_DAYS = 30
#: The same where a limit is too close to call. Our choice.
CLOSE_DAYS = 60
#: Days in which the next step of a "cannot tell" should be done. Our choice.
NEXT_STEP_DAYS = 14


@dataclass(frozen=True, slots=True)
class Case:
    """All that a judgement rests on: one household's record, the rules, and the day it is judged on.

    `rules`: id of the rule set that decides, when it is not the household's own. Checks and pump-outs may be in any
    order and may hold corrections and entries of other tanks. `unread`: parts of the record that could not be read.
    `shared`: ids of checks that were written under the id of another one, so that nobody knows which of them holds.
    """

    household: Household
    checks: Sequence[Check]
    pump_outs: Sequence[PumpOut]
    rule_sets: Mapping[str, RuleSet]
    signs: Sequence[Sign]
    today: date
    rules: str | None = None
    unread: Sequence[Unread] = ()
    shared: Sequence[str] = ()


class RuleRow(NamedTuple):
    """One rule set against this tank. `chance_over` is None where it cannot be told; `by`: what the chance rests on.

    `no_figure`: one of its limits goes by a table that does not reach this tank, so that `due` rests on the others.
    """

    rule_set: RuleSet
    chance_over: float | None
    call: Call
    due: Dates
    standings: tuple[Standing, ...] = ()
    by: Literal["readings", "forecast"] = "readings"
    no_figure: bool = False

    @property
    def over(self) -> bool:
        """Whether it is more likely over than not."""
        return self.chance_over is not None and self.chance_over >= 0.5


class Change(NamedTuple):
    """The smallest change that would lead to another verdict.

    `what`: `sludge` or `scum` (thickness from `now_m` to `then_m`, in the compartment of that number), `answer` (field
    `name` answered as healthy), or `mended` (the finding `name` gone). `verdict`: what it would then be; `left`: id of
    what then decides.
    """

    what: Literal["sludge", "scum", "answer", "mended"]
    verdict: Verdict
    name: str = ""
    now_m: float | None = None
    then_m: float | None = None
    left: str = ""
    compartment: int = 1


class Judgement(NamedTuple):
    """One verdict with all that led to it. Ids and numbers only; words are added by the report.

    `findings`: most urgent first. `because`: ids of what the sureness rests on. `kind`: for `cannot_tell`, which kind.
    `layers`: of the last check that still describes the tank, else None. `standings`: the deciding rule set's limits.
    `look_again`: the day to measure again and why. `detention_days`: how long water rests in the clear zone.
    `missing`: ids of what was not checked; `questionable`: ids of what does not fit. `rests_on_record`: the verdict
    leans on earlier checks or the forecast. `pumped_since`: the layers of the check are gone. `better`: ids of
    better readings that could change the verdict (see `better_reading`). `scene`, `readings`: as they were weighed,
    with no crust where none was seen. `others`: other tanks.
    """

    verdict: Verdict
    today: date
    act_by: date | None
    sure: Sureness
    because: tuple[str, ...]
    findings: tuple[Finding, ...]
    household: Household
    tank: Tank
    vessel: Vessel
    check: Check | None
    rules: RuleSet
    layers: Layers | None
    second_layers: Layers | None
    standings: tuple[Standing, ...]
    by_rule_set: tuple[RuleRow, ...]
    forecast: Forecast
    due: Dates
    look_again: date
    look_reason: str
    detention_days: float | None = None
    missing: tuple[str, ...] = ()
    questionable: tuple[str, ...] = ()
    kind: CannotTell | None = None
    rests_on_record: bool = False
    pumped_since: bool = False
    would_change: Change | None = None
    better: tuple[str, ...] = ()
    scene: Scene | None = None
    readings: Readings | None = None
    others: tuple[Judgement, ...] = ()

    @property
    def call_professional(self) -> bool:
        """True for the three verdicts that end in a call."""
        return rank(self.verdict) >= rank("call_soon")

    @property
    def deciding(self) -> tuple[Finding, ...]:
        """The findings that carry the verdict."""
        return tuple(finding for finding in self.findings if finding.verdict == self.verdict)
