"""A toy conversation and a record in memory, with the faces of the real ones, so that a page is tested by itself."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from types import SimpleNamespace
from typing import Any

from textual.events import Paste

from selfcheck.app.after_number import NumberThenEnter
from selfcheck.app.app import SelfcheckApp
from selfcheck.app.screens.conversation import ConversationScreen
from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.app.words import FaceWords
from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.errors import RecordProblem
from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Context
from selfcheck.interview.messages import Choice, Ending, Message, Prompt, Stage
from selfcheck.loading import content, quick
from selfcheck.loading.place import content_place
from selfcheck.report.wording import VerdictPage, VerdictWords
from selfcheck.sitting import HomeFacts, Unfinished
from selfcheck.sitting.kept_record import KeptRecord
from selfcheck.sitting.verdicts import verdict_words

PLACE = content_place(own=False)
TODAY = date(2026, 6, 1)
START: dict[str, Any] = {
    "section": {"title": "Septic tank check"},
    "what_now": {
        "ask": "What would you like to do?",
        "options": {
            "yearly": "Do the yearly check",
            "trouble": "Something is wrong now",
            "learn": "Learn my system",
            "look_ahead": "Look ahead",
            "record": "See my record",
        },
    },
}
TITLES = ("find", "lift", "look", "crust", "pole", "close", "verdict")


@dataclass
class Step:
    """One question of the toy: what is said before it, its kind, choices and hint."""

    id: str
    kind: str
    ask: str
    before: Sequence[Message] = ()
    choices: Sequence[str] = ()
    hint: str = ""
    opened: bool = False


STEPS = (
    Step(
        "helper",
        "choose",
        "Who is with you at the tank?",
        [
            Message("caution", "Gas can gather under the lid. Stay back and upwind.", "CAUTION"),
            Message("say", "The lid is the risky part of this job. Two people make it safe."),
        ],
        ("Another adult stands here with me", "I am alone", "I will come back when someone can help"),
    ),
    Step("signs", "choose_several", "Which of these do you see?", (), ("Wet ground", "A lush strip", "Sunken ground")),
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
                "Lower the pole through the tee on the house side until it rests on the floor. "
                "Wait half a minute, twist it, and bring it up slowly.",
            )
        ],
        (),
        "for example 8½ in",
        True,
    ),
    Step("closed", "choose", "Is the lid on?", (), ("It is on and fastened", "Not yet"), "", True),
)


class FakeConversation:
    """Asks its steps in order, and knows just enough to be answered."""

    def __init__(self, steps: Sequence[Step] = STEPS) -> None:
        self.steps = list(steps)
        self.at = 0
        self.ending: Ending | None = None
        self.answers: list[Answer] = []
        self.heard: list[str] = []
        self.readings: dict[str, list[dict[str, Any]]] = {}
        self.leaving = False
        self.context = Context(TODAY, rule_sets=content.rules(PLACE))
        self.script = SimpleNamespace(flow=SimpleNamespace(id="yearly", records=("check",)))
        self.state = SimpleNamespace(answered=SimpleNamespace(hazards=()))

    @property
    def prompt(self) -> Prompt | None:
        if self.ending is not None:
            return None
        step = self.steps[self.at]
        now = min(self.at + 1, len(TITLES) - 1)
        stages = tuple(
            Stage(title, title, "done" if index < now else "now" if index == now else "ahead")
            for index, title in enumerate(TITLES)
        )
        choices = tuple(Choice(number, str(number), label) for number, label in enumerate(step.choices, start=1))
        return Prompt(step.id, step.kind, step.ask, choices, step.hint, "", stages, step.opened, True, self.at > 0)

    def start(self) -> list[Message]:
        return self._asking()

    def _asking(self) -> list[Message]:
        step = self.steps[self.at]
        return [*step.before, Message("ask", step.ask)]

    def hear(self, line: str) -> list[Message]:
        self.heard.append(line)
        said = Message("said", line)
        if self.ending is not None:
            return [said, Message("note", "It is over.")]
        if line.strip() == "quit":
            return [said, *self.do("leave")]
        step = self.steps[self.at]
        if step.kind == "length":
            try:
                inches = float(line.split()[0])
            except (ValueError, IndexError):
                return [said, Message("trouble", "I need a length here, such as 6 in."), self._asking()[-1]]
            self.readings["scum_total" if step.id == "scum" else step.id] = [{"m": inches * 0.0254, "said": line}]
            return [said, Message("echo", f"{inches:g} in, give or take half an inch."), *self._next()]
        return [said, *self._next()]

    def _next(self) -> list[Message]:
        if self.leaving:
            self.ending = Ending("left", True)
            return [Message("say", "Kept. Come back any time.")]
        if self.at == len(self.steps) - 1:
            self.ending = Ending("done", False)
            return [Message("say", "That is all. Thanks for the careful work.")]
        self.at += 1
        return self._asking()

    def do(self, command: str) -> list[Message]:
        if command in ("leave", "quit"):
            if self.steps[self.at].opened and self.at < len(self.steps) - 1:
                self.leaving, self.at = True, len(self.steps) - 1
                return self._asking()
            self.ending = Ending("left", True)
            return [Message("say", "Kept. Come back any time.")]
        if command == "back":
            self.at = max(0, self.at - 1)
            return self._asking()
        text = f"Here is the {command} of it: a rocking lid can drop a person in."
        return [Message("help", text, command, "own guide, 2024"), self._asking()[-1]]

    def draft(self) -> dict[str, Any]:
        return {"check": {"seen": {"readings": self.readings}}}


PAGE = VerdictPage(
    verdict="call_soon",
    headline="Have the tank pumped soon.",
    do="Call a pump-out service and read it the note.",
    by="By July 1, 2026.",
    sure="Fairly sure.",
    because=("both readings agree", "the crust has room"),
    kind="",
    seen=("Both tees are in place.",),
    why=(
        "The sludge ends 10 in below the outlet edge. The rule asks for 12 in or more.",
        "Source: a guide for owners.",
    ),
    rule_rows=("Owners' guide: over, 81% sure.", "County code: not yet; due around 2029."),
    when_next=("Look again by July 1, 2026.",),
    not_checked=("the inside of the second compartment",),
    questionable=(),
    would_change=("A second sludge reading below 8 in.",),
    always=("This is not an inspection. Local code and licensed practice come first.",),
    rules=(),
)
FACTS = HomeFacts(
    "Juniper Lane", date(2026, 5, 18), "Carry on. The tank can wait.", "Look again by May 18, 2027.", None, ()
)
HALF_DONE = Unfinished("yearly", "2026-05-03T10:00:00Z", (Answer("helper", "value", "1"),), ())


def check(day: date, sludge: float, scum: float) -> Check:
    readings = {
        "liquid_depth": [{"m": 1.22, "said": "48 in"}],
        "sludge": [{"m": sludge, "said": "8 in"}],
        "scum_total": [{"m": scum, "said": "6 in"}],
    }
    return Check.model_validate({"id": day.isoformat(), "on": day, "seen": {"readings": readings}})


def household(units: str = "us") -> Household:
    tank = {
        "id": "main",
        "shape": {"kind": "box", "length_m": 2.44, "width_m": 1.27},
        "liquid_depth_m": 1.22,
        "outlet_bottom_below_surface_m": 0.43,
        "outlet_top_above_surface_m": 0.15,
    }
    return Household.model_validate({"name": "Juniper Lane", "units": units, "bedrooms": 3, "tanks": [tank]})


@dataclass
class FakeJudgement:
    rules: Any


@dataclass
class FakeSitting:
    """A record in memory that keeps nothing."""

    household: Household = field(default_factory=household)
    checks: tuple[Check, ...] = (check(date(2025, 5, 20), 0.15, 0.1), check(date(2026, 5, 18), 0.2159, 0.1524))
    pump_outs: tuple[PumpOut, ...] = (PumpOut(on=date(2024, 4, 12)),)
    mended_pump_outs: tuple[PumpOut, ...] = ()
    problems: tuple[RecordProblem, ...] = ()
    read_only: str = ""
    trouble: str = ""
    demonstration: bool = False
    rules: str | None = None
    folder: Path = Path("juniper")
    place: Any = PLACE
    today: date = TODAY
    steps: Sequence[Step] = STEPS
    facts: HomeFacts = FACTS
    page: VerdictPage = PAGE
    begun: list[str] = field(default_factory=list)
    talks: list[FakeConversation] = field(default_factory=list)
    concluded: list[FakeConversation] = field(default_factory=list)

    def home(self) -> HomeFacts:
        return self.facts

    def unfinished(self) -> Unfinished | None:
        return self.facts.unfinished

    def begin(self, flow: str) -> FakeConversation:
        self.begun.append(flow)
        self.talks.append(FakeConversation(self.steps))
        return self.talks[-1]

    def resume(self) -> FakeConversation:
        self.begun.append("resume")
        self.talks.append(FakeConversation(self.steps))
        return self.talks[-1]

    def discard(self) -> None:
        self.facts = replace(self.facts, unfinished=None)

    def conclude(self, conversation: FakeConversation) -> VerdictPage | str:
        self.concluded.append(conversation)
        return self.page

    def verdict(self) -> VerdictPage:
        return self.page

    def verdict_then(self, check: Check) -> VerdictPage:
        return self.page

    def verdict_words(self) -> VerdictWords:
        return verdict_words(PLACE)

    def judgement(self) -> FakeJudgement:
        return FakeJudgement(content.rules(PLACE)["us-epa-homeowner"])

    def ask_back(self, line: str) -> None:
        return None

    def command_in(self, text: str) -> str:
        return KeptRecord.command_in(self, text)  # type: ignore[arg-type]

    def ask_near(self, line: str) -> tuple[()]:
        return ()


def face_words() -> FaceWords:
    return FaceWords(quick.words(PLACE, "screen"))


def app_of(sitting: Any, **more: Any) -> SelfcheckApp:
    """The app over a sitting that is there already."""
    return SelfcheckApp(START, face_words(), lambda: sitting, **more)


@asynccontextmanager
async def running(app: SelfcheckApp, size: tuple[int, int]) -> Iterator[Any]:  # type: ignore[misc]
    """The app under a pilot that can `settle`: all work done, all painted."""
    app.animation_level = "none"
    ConversationScreen.BREATH = NumberThenEnter.SOON = 0.0  # a test reads as fast as it types
    async with app.run_test(size=size, notifications=True, tooltips=True) as pilot:

        async def settle() -> None:
            await pilot.pause()
            while any(not worker.is_finished for worker in app.workers):
                await app.workers.wait_for_complete()
                await pilot.pause()

        async def say(*lines: str) -> None:
            """Type these lines, each with an enter."""
            for line in lines:
                app.screen.query_one(AnswerInput).post_message(Paste(line))
                await pilot.press("enter")

        pilot.settle = settle
        pilot.say = say
        await settle()
        yield pilot


def painted(app: SelfcheckApp) -> list[str]:
    """What stands on the screen, line by line."""
    return [strip.text.rstrip() for strip in app.screen._compositor.render_strips()]


def sent(app: SelfcheckApp) -> str:
    """What the terminal is sent for the whole screen."""
    return "".join(strip.render(app.console) for strip in app.screen._compositor.render_strips())
