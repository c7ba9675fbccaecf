"""The first page: the tank as last seen, when to look again, what is half done, and what one may do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from textual import on
from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from selfcheck.app.screens.choosing import ChoosingScreen
from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.app.widgets.choices import Choices, Option
from selfcheck.app.widgets.keys import KeyHint, KeyRow
from selfcheck.app.widgets.lines import Across, Block, Mark
from selfcheck.app.widgets.stage import StageLine
from selfcheck.app.widgets.tank import TankLine, TankPanel
from selfcheck.app.words import FaceWords

if TYPE_CHECKING:
    from selfcheck.drawing.section import SectionPicture

NODE = "what_now"


class HomeScreen(ChoosingScreen):
    """Painted from the few words of the start alone; the record follows when it has been read."""

    def __init__(self, start: Mapping[str, Any], words: FaceWords) -> None:
        super().__init__()
        self._words = words
        table = start.get(NODE, {})
        self._ask = str(table.get("ask", ""))
        self._name = ""
        self._title = str(start.get("section", {}).get("title", ""))
        options = table.get("options", {})
        self.option_ids = tuple(options)
        self._options = [Option(number, str(label)) for number, label in enumerate(options.values(), start=1)]
        self._waiting: int | str | None = None

    def compose(self) -> ComposeResult:
        words = self._words
        yield StageLine(words("lid_open"), id="stage")
        yield TankLine(id="tank-line")
        with Horizontal(id="body"):
            with Vertical(id="left"):
                yield Block(id="facts")
                yield Block(id="ask")
                yield Choices(more=words("more"), id="choices")
                yield Block(id="note")
            yield TankPanel(id="tank")
        yield Across(id="rule")
        with Horizontal(id="line"):
            yield Mark(id="mark")
            yield AnswerInput(id="answer")
        yield KeyRow(
            [
                KeyHint("f7", words("tank"), "app.tank"),
                KeyHint("f1", words("help"), "app.help"),
                KeyHint("ctrl+c", words("quit"), "app.leave"),
            ],
            id="keys",
        )

    def on_mount(self) -> None:
        """Everything that is known without the record."""
        self.query_one(StageLine).set(self._title)
        self.query_one("#ask", Block).set([(self._ask, "strong")] if self._ask else [])
        self.query_one(Choices).set(self._options)
        self.query_one(AnswerInput).picks = True

    def show_record(self, name: str, facts: list[tuple[str, str]], picture: SectionPicture, units: str) -> None:
        """Fill in what the record says, then do what was asked for while it was being read."""
        self._name, self._title = name, name or self._title
        self.query_one(StageLine).set(self._title)
        self.query_one("#facts", Block).set(facts)
        self.query_one(TankPanel).set(picture, units)
        self.query_one(TankLine).set(picture, units)
        waiting, self._waiting = self._waiting, None
        self.note("")
        if isinstance(waiting, int):
            self.pick(waiting)
        elif waiting is not None:
            self.say(waiting)

    @property
    def title_now(self) -> str:
        """The household's name, or the page's own title before it is known."""
        return self._title

    def title_of(self, option: str) -> str:
        """The household's name, or what was chosen where it has none."""
        return self._name or self.short(option)

    def short(self, option: str) -> str:
        """What one of the choices is called in a sentence: its words as far as a colon."""
        return self.label(option).partition(":")[0].rstrip("?.")

    def label(self, option: str) -> str:
        """The words of one of the choices."""
        labels = dict(zip(self.option_ids, self._options, strict=True))
        return labels[option].label if option in labels else option

    def note(self, text: str, part: str = "muted") -> None:
        """A line of the program's own under the choices."""
        self.say_back([(text, part)] if text else [])

    def say_back(self, paragraphs: Sequence[tuple[str, str]]) -> None:
        """What is said to a line that was typed here."""
        self.query_one("#note", Block).set(paragraphs)

    def pick(self, number: int) -> None:
        """Open what the choice of that number stands for; kept until the record is there."""
        if not 1 <= number <= len(self.option_ids):
            return
        if self.selfcheck.sitting is None:
            self._waiting = number
            self.note(self._words("opening"))
            return
        self.selfcheck.open_choice(self.option_ids[number - 1])

    def say(self, line: str) -> None:
        """A typed line: heard as in every conversation, danger words first; kept until the record is there."""
        if self.selfcheck.sitting is None:
            self._waiting = line
            self.note(self._words("opening"))
            return
        self.say_back(self.selfcheck.at_home.hear(line))

    @on(Input.Submitted)
    def _submitted(self, event: Input.Submitted) -> None:
        event.stop()
        line = event.value.strip()
        highlighted = self.query_one(Choices).highlighted
        if line:
            self.say(line)
        elif highlighted is not None:
            self.pick(highlighted)
