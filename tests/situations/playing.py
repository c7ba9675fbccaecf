"""A person at the conversation: answers each question as it is asked, whatever order they come in, until the end."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Any

from selfcheck.domain.judging import Case, Judgement, judge
from selfcheck.interview.context import Context
from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message
from selfcheck.interview.septic_finishing import make_check, make_household, make_pump_out
from selfcheck.interview.side_questions import Guide
from selfcheck.loading import rules, signs
from selfcheck.loading.guide import guide
from tests.content.walking import PLACE, TODAY, household, talk

HERE = Path(__file__).parent
#: more lines than any conversation takes: then the person is stuck
MOST_TURNS = 120

Says = Mapping[str, Sequence[str]]


@dataclass
class Played:
    """How it went. `said`: everything that was said, in order. `typed`: (question, line), one a turn."""

    conversation: Conversation
    typed: list[tuple[str, str]]
    asked: list[str] = field(default_factory=list)  # questions that were asked, steps of words only left out
    stuck: bool = False

    @property
    def outcome(self) -> str:
        """Id of the outcome; "left" when the person went before the end, "" when they were stuck."""
        ending = self.conversation.ending
        return "" if ending is None else "left" if ending.left else ending.outcome

    @property
    def said(self) -> str:
        """Everything that the assistant said."""
        return "\n".join(f"{one.title} {one.text}" for one in self.conversation.messages if one.kind != "said")

    def judgement(self) -> Judgement:
        """The record with this conversation in it, judged on its day."""
        conversation = self.conversation
        draft, context = conversation.draft(), conversation.context
        home, _ = make_household(draft.get("household", {}), context.household, context.household, context.today)
        pumped, _ = make_pump_out({"tank": home.tank().id, **draft.get("pump_out", {})})
        made, _ = make_check(
            {"tank": home.tank().id, **draft.get("check", {})},
            conversation.answers,
            context.today,
            datetime.combine(context.today, datetime.min.time(), UTC),
            "played",
        )
        pump_outs = [*context.pump_outs, *([pumped] if pumped else [])]
        checks = [*context.checks, made.model_copy(update={"id": made.on.isoformat()})]
        return judge(Case(home, checks, pump_outs, rules(PLACE), signs(PLACE), context.today, None))


@cache
def helper() -> Guide:
    """The guide, read once."""
    return guide(PLACE)


@cache
def people() -> dict[str, Any]:
    """The people of the situations, with what each of them types."""
    return tomllib.loads((HERE / "people.toml").read_text(encoding="utf-8"))


def home_of(name: str) -> Context:
    """The record that a person begins with."""
    if name != "metric":
        return household(name)
    known = household("known")
    return replace(known, household=known.household.model_copy(update={"units": "metric"}), units="metric")


def says_of(person: str) -> dict[str, Sequence[str]]:
    """What a person types, question by question."""
    book = people()
    return {name: (line,) for name, line in {**book["everyone"], **book[person]["says"]}.items()}


def begin(person: str, flow: str = "yearly") -> Conversation:
    """A conversation with a person who has typed nothing yet."""
    context = home_of(people()[person]["household"])
    conversation = Conversation(talk(flow), context, ask_back=helper().answer)
    conversation.start()
    return conversation


def play(
    conversation: Conversation, usual: Says, special: Says | None = None, hear: Callable[[str], None] | None = None
) -> Played:
    """Answer every question: with the `special` lines for it, one after the other, else with the usual one.

    A small question in between gets the next special line, else a yes. `hear`: takes each line instead.
    """
    left = {name: list(lines) for name, lines in (special or {}).items()}
    played = Played(conversation, [])
    hear = hear or conversation.hear
    times: dict[str, int] = {}
    while (prompt := conversation.prompt) is not None and conversation.ending is None:
        question = prompt.question
        if conversation.pending is None and prompt.kind != "say" and question not in played.asked:
            played.asked.append(question)
        times[question] = times.get(question, 0) + 1
        if len(played.typed) >= MOST_TURNS or times[question] > 12 + len((special or {}).get(question, ())):
            played.stuck = True
            break
        line = _next(conversation, question, left, usual)
        played.typed.append((question, line))
        hear(line)
    return played


def _next(conversation: Conversation, question: str, left: dict[str, list[str]], usual: Says) -> str:
    if left.get(question):
        return left[question].pop(0)
    if conversation.pending is not None:
        ids = [ident for ident, _ in conversation.pending.choices]
        return "yes" if "yes" in ids else "1"
    lines = usual.get(question)
    if lines:
        return lines[-1]
    node = conversation.node
    return "skip" if node is not None and node.kind == "note" else "I don't know"


@dataclass(frozen=True)
class Situation:
    """One situation, from `situations.toml`."""

    id: str
    title: str
    why: str
    person: str
    flow: str = "yearly"
    says: Mapping[str, Any] = field(default_factory=dict)
    expect: Mapping[str, Any] = field(default_factory=dict)

    def special(self) -> dict[str, Sequence[str]]:
        """What is typed out of the ordinary."""
        return {name: (lines,) if isinstance(lines, str) else tuple(lines) for name, lines in self.says.items()}


@cache
def situations() -> dict[str, Situation]:
    """All situations by id."""
    table = tomllib.loads((HERE / "situations.toml").read_text(encoding="utf-8"))
    return {one["id"]: Situation(**one) for one in table["situations"]}


def play_situation(situation: Situation) -> tuple[Played, list[str]]:
    """How a situation goes, and where it goes otherwise than an expert would want."""
    played = play(begin(situation.person, situation.flow), says_of(situation.person), situation.special())
    return played, surprises(situation, played)


def surprises(situation: Situation, played: Played) -> list[str]:
    """Where a situation went otherwise than expected, in words."""
    expect, found = situation.expect, []
    if played.stuck:
        found.append(f"stuck at {played.typed[-1][0]}")
    if expect.get("outcome", played.outcome) != played.outcome:
        found.append(f"the outcome is {played.outcome or 'none'}, not {expect['outcome']}")
    if "verdict" in expect and not played.stuck:
        verdict = played.judgement().verdict
        if verdict not in expect["verdict"]:
            found.append(f"the verdict is {verdict}, not {' or '.join(expect['verdict'])}")
    found += [f"nobody says {one!r}" for one in expect.get("said", ()) if not _says(one, played.said)]
    found += [f"somebody says {one!r}" for one in expect.get("never", ()) if _says(one, played.said)]
    found += [f"{one} was not asked" for one in expect.get("asked", ()) if one not in played.asked]
    found += [f"{one} was asked" for one in expect.get("not_asked", ()) if one in played.asked]
    found += [f"{one!r} is lost" for one in expect.get("kept", ()) if not _kept(one, played.conversation)]
    return found


def _says(pattern: str, said: str) -> bool:
    return re.search(pattern, said, re.IGNORECASE) is not None


def _kept(words: str, conversation: Conversation) -> bool:
    return any(words in (answer.said, answer.value) for answer in conversation.answers)


def verdict_of(played: Played) -> str:
    """The verdict, or "-" for one who left or was stuck."""
    return "-" if played.outcome in ("", "left") else played.judgement().verdict


def last(messages: Sequence[Message]) -> str:
    """The last thing that was said."""
    return messages[-1].text if messages else ""


__all__ = ["TODAY", "Played", "Situation", "begin", "last", "play", "play_situation", "says_of", "situations"]
