"""People who slip: a wrong unit, two numbers swapped, an answer taken back, a digit too many; and how they mend it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from random import Random

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.nodes import Node
from selfcheck.interview.understanding import CHOICES, exact, loose
from tests.situations.playing import Played, begin, play, says_of

MEASURED = ("scum_total", "wet_line", "sludge_1", "sludge_2")
CHOSEN = ("surface", "smell", "alarm")
WRONG = {"surface": "black", "smell": "paint", "alarm": "quiet"}
SLIPS = ("wrong unit", "swapped", "taken back", "digit too many", "wrong answer", "changed twice")
BACK = ("scratch that", "back", "oops", "undo", "no wait", "that was wrong", "go back", "I typed it wrong", "mistake")
UNIT = (
    "I meant inches",
    "inches, not cm",
    "sorry, inches",
    "that was inches",
    "it was in inches",
    "no, inches",
    "not cm, inches",
    "I mean inches",
)
SWAPPED = (
    "I swapped the crust and the sludge",
    "swap them",
    "mixed up crust and sludge",
    "I got them backwards",
    "those two are the other way around",
    "crust and sludge are swapped",
    "oh no, wrong way round",
)
ANEW = (
    "no, it was {}",
    "sorry, {}",
    "I meant {}",
    "actually it was {}",
    "no, make that {}",
    "wait, {}",
    "it should be {}",
)
STYLES = ("helpful", "terse", "contradicting")
PERSONS = ("homeowner", "teacher", "buyer")
#: what may be lost by a slip. Our choice.
MOST_MORE_TURNS = 2


@dataclass(frozen=True)
class Slip:
    """One slip of one person, and how it went. `more`: turns beyond those of the same talk without it."""

    kind: str
    style: str
    person: str
    question: str
    mended: bool
    more: int
    typed: tuple[str, ...] = ()

    @property
    def recovered(self) -> bool:
        """Whether all the answers are as meant, at little cost."""
        return self.mended and self.more <= MOST_MORE_TURNS


def slip(seed: int) -> Slip:
    """One slip, drawn from a number."""
    chance = Random(seed)
    kind, style, person = chance.choice(SLIPS), chance.choice(STYLES), chance.choice(PERSONS)
    usual = {name: list(lines) for name, lines in says_of(person).items()}
    for question in MEASURED:
        whole = {"scum_total": (2, 7), "wet_line": (44, 52), "sludge_1": (4, 9)}.get(question)
        usual[question] = [f"{chance.randint(*whole)} in"] if whole else list(usual["sludge_1"])
    while usual["scum_total"] == usual["sludge_1"]:
        usual["scum_total"] = [f"{chance.randint(2, 7)} in"]
    without = _played(person, style, usual)
    question = chance.choice(CHOSEN if kind in ("wrong answer", "changed twice") else MEASURED)
    question = "scum_total" if kind == "swapped" else question
    person_at_it = _Slipping(kind, style, question, usual, chance)
    with_slip = _played(person, style, usual, person_at_it)
    mended = not with_slip.stuck and _values(with_slip) == _values(without)
    more = len(person_at_it.typed) - len(without.typed)
    return Slip(kind, style, person, question, mended, more, tuple(person_at_it.typed))


def _values(played: Played) -> dict[str, object]:
    return {name: answer.value for name, answer in played.conversation.state.answered.items()}


def _played(person: str, style: str, usual: Mapping[str, Sequence[str]], slipping: _Slipping | None = None) -> Played:
    conversation = begin(person)
    hear: Callable[[str], object] = conversation.hear
    if slipping is not None:
        slipping.conversation = conversation
        hear = slipping.hear
    if style != "terse":
        return play(conversation, usual, hear=lambda line: _quiet(hear(line)))
    return play(conversation, usual, hear=lambda line: _quiet(hear(_short(conversation, line))))


def _quiet(said: object) -> None:
    """Nothing is done with what is said."""


def _short(conversation: Conversation, line: str) -> str:
    """The number of the option that a line means, for people who type as little as they can."""
    node = conversation.node
    if conversation.pending is not None or node is None or node.kind not in CHOICES:
        return line
    return _number(conversation, node, line)


def _number(conversation: Conversation, node: Node, line: str) -> str:
    reading = exact(conversation.script, node, line).answer or loose(conversation.script, node, line).answer
    if reading is None or not isinstance(reading.value, str):
        return line
    return str(node.options.index(reading.value) + 1)


class _Slipping:
    """Types like the person, but slips once at `question` and mends it as people do."""

    def __init__(
        self, kind: str, style: str, question: str, usual: Mapping[str, Sequence[str]], chance: Random
    ) -> None:
        self.kind, self.style, self.question, self.usual, self.chance = kind, style, question, usual, chance
        self.conversation: Conversation
        self.typed: list[str] = []
        self._slipped = False

    def hear(self, line: str) -> None:
        """One line of the person's, or what slips out instead, with the mending of it."""
        prompt = self.conversation.prompt
        question = prompt.question if prompt is not None else ""
        if self.kind == "swapped" and question in ("scum_total", "sludge_1") and not self._slipped:
            other = "sludge_1" if question == "scum_total" else "scum_total"
            self._type(self.usual[other][0])
            if question == "sludge_1":
                self._slipped = True
                self._type(self._pick(*SWAPPED))
                self._stand_by_it()
            return
        if question != self.question or self._slipped or self.kind == "swapped":
            self._type(line)
            return
        self._slipped = True
        if self.kind == "changed twice":
            wrong = WRONG.get(question) or f"{self.chance.randint(10, 16)} in"
            for typed in (line, self._pick(*ANEW).format(wrong), self._pick(*ANEW).format(self.usual[question][0])):
                self._type(typed)
                self._stand_by_it()
            return
        self._type(self._wrong(line, question))
        for mending in self._mending(self.usual[question][0]):
            self._type(mending)
        self._stand_by_it()

    def _wrong(self, line: str, question: str) -> str:
        if self.kind == "wrong answer":
            return WRONG[question]
        if self.kind == "wrong unit":
            return line.replace("in", "cm")
        return line.replace(" ", "0 ", 1) if self.kind == "digit too many" else f"{self.chance.randint(10, 16)} in"

    def _mending(self, right: str) -> list[str]:
        """What is typed once the slip is seen: at a doubt of the program, or at the next question."""
        if self.conversation.pending is not None:
            return self._pick([right], ["no", right])
        again = [self._pick(*BACK), right]
        anew = [self._pick(*ANEW).format(right)]
        if self.kind == "wrong unit":
            return self._pick([self._pick(*UNIT)], anew, again)
        return again if self.kind == "taken back" or self.style == "terse" else self._pick(anew, again)

    def _pick(self, *ways):  # type: ignore[no-untyped-def]
        return self.chance.choice(ways)

    def _stand_by_it(self) -> None:
        """Whatever small question stands in between is answered with a yes."""
        for _ in range(2):
            if self.conversation.pending is not None:
                self._type("yes")

    def _type(self, line: str) -> None:
        self.typed.append(line)
        self.conversation.hear(line)
