"""The words every computation shares: verdict ladder, sureness, findings."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from types import MappingProxyType
from typing import Literal, NamedTuple

Verdict = Literal["carry_on", "cannot_tell", "call_soon", "call_now", "danger"]
#: mildest first
LADDER: tuple[Verdict, ...] = ("carry_on", "cannot_tell", "call_soon", "call_now", "danger")
Sureness = Literal["sure", "fairly_sure", "not_very_sure", "cannot_tell"]
#: named numbers and values that words are filled with, SI
Facts = dict[str, "float | str | date | None"]
CannotTell = Literal["readings_clash", "too_close", "not_seen", "outside_guide", "unread"]


def rank(verdict: Verdict) -> int:
    """Place on the ladder, 0 the mildest."""
    return LADDER.index(verdict)


def worst(verdicts: list[Verdict]) -> Verdict:
    """The most urgent of them; `carry_on` when there are none."""
    return max(verdicts, key=rank, default="carry_on")


class Finding(NamedTuple):
    """One thing that speaks for a verdict.

    `id`: stable name, also the key of its words in the content. `facts`: named numbers and values for those words, SI.
    `uses`: paths of the answers it rests on ("seen.smell", "seen.readings.sludge", "household.tanks.0.liquid_depth_m").
    `source`: id in `content/sources.toml`. `chance_over`: probability that a limit is crossed, for limits only.
    """

    id: str
    verdict: Verdict
    source: str = ""
    facts: Mapping[str, float | str | date | None] = MappingProxyType({})
    uses: tuple[str, ...] = ()
    chance_over: float | None = None
    kind: CannotTell | None = None


class Dates(NamedTuple):
    """10, 50 and 90 % dates of a crossing; None where it lies beyond the horizon of the forecast."""

    p10: date | None
    p50: date | None
    p90: date | None
