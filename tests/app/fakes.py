"""A short toy conversation and record with the same faces as the real ones, so that a page can be tested by itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import RecordProblem

START: dict[str, Any] = {
    "section": {"title": "Septic tank check"},
    "what_now": {
        "ask": "What would you like to do?",
        "options": {
            "yearly": "Do the yearly check",
            "trouble": "Something is wrong now",
            "learn": "Learn my system",
            "after_pump_out": "Check after a pump-out",
            "look_ahead": "Look ahead",
            "practice": "Practice on a made-up tank",
            "record": "See my record",
        },
    },
}


@dataclass
class Message:
    kind: str
    text: str
    title: str = ""
    source: str = ""


@dataclass(frozen=True)
class Choice:
    number: int
    id: str
    label: str


@dataclass(frozen=True)
class Stage:
    id: str
    title: str
    state: str


@dataclass(frozen=True)
class Prompt:
    question: str
    kind: str
    text: str
    choices: tuple[Choice, ...] = ()
    hint: str = ""
    stage: str = ""
    stages: tuple[Stage, ...] = ()
    may_stand_open: bool = False
    unknown_allowed: bool = True
    can_go_back: bool = True


@dataclass(frozen=True)
class Ending:
    outcome: str
    left: bool


@dataclass(frozen=True)
class Answer:
    question: str
    value: str


@dataclass
class Step:
    """One question of the toy: what is said before it, its kind and choices."""

    id: str
    kind: str
    ask: str
    before: Sequence[Message] = ()
    choices: Sequence[str] = ()
    hint: str = ""
    opened: bool = False


TITLES = ("find", "lift", "look", "crust", "pole", "close", "verdict")
STEPS = [
    Step(
        "second_adult",
        "choose",
        "Who is with you at the tank?",
        [
            Message("caution", "Gas can gather under the lid. Stay back and upwind.", "CAUTION"),
            Message("say", "The lid is the risky part of this job. Two people make it safe."),
        ],
        ("Another adult stands here with me", "I am alone", "I will come back when someone can help"),
    ),
    Step(
        "lid",
        "choose",
        "Push the lid with the pole. What did it do?",
        (),
        ("It did not move", "It rocked", "I see a crack in it"),
    ),
    Step(
        "scum",
        "length",
        "How thick is the crust?",
        [Message("say", "The crust is the layer that floats on top. Push the pole through it until it gives.")],
        (),
        "for example 6 in",
        True,
    ),
    Step(
        "sludge",
        "length",
        "How high up the cloth does the dark stain reach?",
        [
            Message(
                "say",
                "Lower the pole through the tee on the house side until it rests on the floor."
                " Wait half a minute, twist it, and bring it up slowly.",
            )
        ],
        (),
        "for example 8½ in",
        True,
    ),
    Step(
        "closed",
        "choose",
        "Is the lid back on, with nobody near it?",
        (),
        ("It is on and fastened", "Not yet"),
        "",
        True,
    ),
]


class FakeConversation:
    def __init__(self, steps: Sequence[Step] = tuple(STEPS)) -> None:
        self.steps = list(steps)
        self.at = 0
        self.ending: Ending | None = None
        self.answers: list[Answer] = []
        self.messages: list[Message] = []
        self.readings: dict[str, list[dict[str, Any]]] = {}
        self.leaving = False

    @property
    def prompt(self) -> Prompt | None:
        if self.ending is not None:
            return None
        step = self.steps[self.at]
        now = min(self.at + 1, len(TITLES) - 1)
        states = ["done" if index < now else "now" if index == now else "ahead" for index in range(len(TITLES))]
        stages = tuple(Stage(title, title, state) for title, state in zip(TITLES, states, strict=True))
        choices = tuple(Choice(number, str(number), label) for number, label in enumerate(step.choices, start=1))
        return Prompt(step.id, step.kind, step.ask, choices, step.hint, "", stages, step.opened, True, self.at > 0)

    def start(self) -> list[Message]:
        return self._say(self._asking())

    def _asking(self) -> list[Message]:
        step = self.steps[self.at]
        return [*step.before, Message("ask", step.ask)]

    def _say(self, messages: list[Message]) -> list[Message]:
        self.messages.extend(messages)
        return messages

    def hear(self, line: str) -> list[Message]:
        step = self.steps[self.at]
        said = line
        if step.choices and line.isdigit() and 1 <= int(line) <= len(step.choices):
            said = step.choices[int(line) - 1]
        out = [Message("said", said)]
        if line.strip() == "quit":
            return self._say(out + self.do("leave"))
        if step.kind == "length":
            try:
                inches = float(line.split()[0])
            except (ValueError, IndexError):
                return self._say([*out, Message("trouble", "I need a length here, such as 6 in.")])
            self.readings["scum_total" if step.id == "scum" else step.id] = [{"m": inches * 0.0254, "said": line}]
            out.append(Message("echo", f"{inches:g} in, give or take half an inch."))
        self.answers.append(Answer(step.id, line))
        if self.leaving:
            self.ending = Ending("left", True)
            return self._say([*out, Message("say", "Kept. Come back any time.")])
        self.at += 1
        if self.at == len(self.steps):
            self.at -= 1
            self.ending = Ending("done", False)
            return self._say([*out, Message("say", "That is all. Thanks for the careful work.")])
        return self._say(out + self._asking())

    def do(self, command: str) -> list[Message]:
        if command in ("leave", "quit"):
            if self.steps[self.at].opened and self.at < len(self.steps) - 1:
                self.leaving, self.at = True, len(self.steps) - 1
                return self._say(self._asking())
            self.ending = Ending("left", True)
            return self._say([Message("say", "Kept. Come back any time.")])
        if command == "back":
            self.at = max(0, self.at - 1)
            return self._say(self._asking())
        text = f"Here is the {command} of it: a rocking lid can drop a person in."
        return self._say([Message("help", text, command, "own guide, 2024"), self._asking()[-1]])

    def draft(self) -> dict[str, Any]:
        return {"check": {"seen": {"readings": self.readings}}, "household": {}, "pump_out": {}}


@dataclass
class FakePage:
    headline: str = "Carry on. The tank has room."
    do: str = "Nothing needs doing before the next check."
    by: str = "Look again by May 2027."
    sure: str = "Fairly sure."
    because: tuple[str, ...] = ("The sludge lies well below the outlet.", "The crust has room above the outlet edge.")
    seen: tuple[str, ...] = ("Both tees are in place.",)
    not_checked: tuple[str, ...] = ("The inside of the second compartment.",)
    would_change: tuple[str, ...] = ("A second sludge reading above 12 in.",)
    rule_rows: tuple[str, ...] = ("Agency guide 2002: room left.",)
    when_next: str = "May 2027"


@dataclass
class FakeUnfinished:
    flow: str = "yearly"
    started: str = "2026-05-03T10:00:00Z"
    answers: tuple[str, ...] = ("a", "b", "c", "d")


@dataclass
class FakeFacts:
    name: str = "Juniper Lane"
    last_check: date | None = date(2026, 5, 18)
    verdict_line: str = "Carry on."
    look_again: date | None = date(2027, 5, 18)
    unfinished: FakeUnfinished | None = None
    problems: tuple[RecordProblem, ...] = ()


def check(day: date, sludge: float, scum: float) -> Check:
    readings = {
        "liquid_depth": [{"m": 1.22, "said": "48 in"}],
        "sludge": [{"m": sludge, "said": "8 in"}],
        "scum_total": [{"m": scum, "said": "6 in"}],
    }
    return Check.model_validate({"id": day.isoformat(), "on": day, "seen": {"readings": readings}})


def household(units: str = "us") -> Household:
    tank = {
        "id": "main", "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27}, "liquid_depth_m": 1.22,
        "outlet_bottom_below_surface_m": 0.43, "outlet_top_above_surface_m": 0.15,
    }  # fmt: skip
    return Household.model_validate({"name": "Juniper Lane", "units": units, "bedrooms": 3, "tanks": [tank]})


@dataclass
class FakeSitting:
    household: Household = field(default_factory=household)
    checks: list[Check] = field(
        default_factory=lambda: [check(date(2025, 5, 20), 0.15, 0.1), check(date(2026, 5, 18), 0.2159, 0.1524)]
    )
    pump_outs: list[PumpOut] = field(default_factory=lambda: [PumpOut(on=date(2024, 4, 12))])
    problems: tuple[RecordProblem, ...] = ()
    read_only: str = ""
    trouble: str = ""
    demonstration: bool = False
    steps: Sequence[Step] = tuple(STEPS)
    facts: FakeFacts = field(default_factory=FakeFacts)
    half_done: FakeUnfinished | None = None
    concluded: list[FakeConversation] = field(default_factory=list)
    result: FakePage | str = field(default_factory=FakePage)

    def home(self) -> FakeFacts:
        return self.facts

    def unfinished(self) -> FakeUnfinished | None:
        return self.half_done

    def begin(self, flow: str) -> FakeConversation:
        return FakeConversation(self.steps)

    def resume(self) -> FakeConversation:
        return FakeConversation(self.steps)

    def discard(self) -> None:
        self.half_done = None

    def conclude(self, conversation: FakeConversation) -> FakePage | str:
        self.concluded.append(conversation)
        return self.result

    def verdict(self) -> FakePage:
        return FakePage()
