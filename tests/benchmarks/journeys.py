"""`python -m tests.benchmarks.journeys [HOW MANY]`: every prepared journey and situation, and slips drawn at random.

So many slips are drawn, 500 where it is not said; with 0 none.
"""

from __future__ import annotations

import io
import sys
from collections import defaultdict
from pathlib import Path
from statistics import median

from selfcheck.loading.journeys import load
from selfcheck.plain.rehearsal import play
from tests.content.walking import PLACE
from tests.situations.playing import Played, Situation, people, play_situation, situations, verdict_of
from tests.situations.slipping import Slip, slip

JOURNEYS = Path(__file__).parents[1] / "journeys"
#: outcomes of a yearly check that was carried through to a reading
CARRIED_THROUGH = "judged"


def run(slips: int = 500) -> None:
    """Prints one line a journey, one a situation, and a table of the slips."""
    wrong = sum(_journey(path) for path in sorted(JOURNEYS.glob("*.toml")))
    counts: dict[str, list[Played]] = defaultdict(list)
    for name, situation in situations().items():
        played, found = play_situation(situation)
        if situation.flow == "yearly" and played.outcome == CARRIED_THROUGH:
            counts["first checks" if home_of(situation) == "new" else "facts on record"].append(played)
        figures = f"{verdict_of(played):12} {played.outcome:16} {len(played.asked):3} asked {len(played.typed):3} typed"
        print(f"{name:24} {situation.person:10} {figures}  {'; '.join(found) or 'as wanted'}")
        wrong += bool(found)
    print(f"{len(list(JOURNEYS.glob('*.toml'))) + len(situations())} in all, {wrong} otherwise than wanted.")
    _questions({"all": [one for some in counts.values() for one in some], **counts})
    if slips > 0:
        _slips([slip(seed) for seed in range(slips)])


def home_of(situation: Situation) -> str:
    """The record that the person of a situation begins with."""
    return str(people()[situation.person]["household"])


def _questions(carried_through: dict[str, list[Played]]) -> None:
    print("Questions of a yearly check that was carried through, and those beyond the gate:")
    for name, some in carried_through.items():
        beyond = [sum(not one.conversation.script.nodes[name].gate for name in one.asked) for one in some]
        asked = [len(one.asked) for one in some]
        print(
            f"{name:16} median {median(asked):g}, most {max(asked)}; beyond the gate {median(beyond):g}, {max(beyond)}"
        )


def _journey(path: Path) -> bool:
    journey = load(path)
    played = play(journey, PLACE, io.StringIO())
    verdict = played.page.verdict if played.page is not None else "-"
    said = "; ".join(played.surprises) or "as wanted"
    print(f"{path.stem:24} {'':10} {verdict:12} {played.outcome:16} {'':9} {len(journey.typed):3} typed  {said}")
    return bool(played.surprises)


def _slips(slips: list[Slip]) -> None:
    by_kind: dict[tuple[str, str], list[Slip]] = defaultdict(list)
    for one in slips:
        by_kind[one.kind, one.style].append(one)
    for (kind, style), some in sorted(by_kind.items()):
        mended = sum(one.recovered for one in some)
        more = median(one.more for one in some)
        print(f"{kind:16} {style:14} {mended:4} of {len(some):4} mended, {more:g} turns more")
    print(f"Slips mended in at most two turns more: {sum(one.recovered for one in slips) / len(slips):.1%}")


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 500)
