"""Pages one only reads: the verdict, the record, help. And the tank as large as the terminal."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import ClassVar

from textual import events, on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.screen import ModalScreen, Screen

from selfcheck.app.widgets.choices import Choices, Option
from selfcheck.app.widgets.keys import KeyHint, KeyRow
from selfcheck.app.widgets.lines import Block
from selfcheck.app.widgets.rule import Across
from selfcheck.app.widgets.stage import StageLine
from selfcheck.app.widgets.tank import TankLine, TankPanel
from selfcheck.app.words import FaceWords
from selfcheck.drawing.section import SectionPicture, as_words

Paragraphs = Sequence[tuple[str, str]]
Picture = tuple[SectionPicture, str]


class SheetScreen(Screen[None]):
    """A page of paragraphs, with the tank beside it where that helps. Enter, escape or q closes it."""

    CSS_PATH = "sheet.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,enter,q", "shut", show=False)]

    def __init__(self, title: str, paragraphs: Paragraphs, words: FaceWords, picture: Picture | None = None) -> None:
        super().__init__()
        self._title = title
        self._paragraphs = paragraphs
        self._words = words
        self._picture = picture

    def compose(self) -> ComposeResult:
        words = self._words
        yield StageLine(words("lid_open"), id="title")
        with Horizontal(id="body"):
            with VerticalScroll(id="read"):
                if self._picture is not None:
                    yield TankLine(id="tank-line")
                yield Block(id="paragraphs")
            if self._picture is not None:
                yield TankPanel(id="tank")
        yield Across(id="rule")
        yield KeyRow([KeyHint("enter", words("close"), "shut"), KeyHint("↑ ↓", words("more"), "shut")], id="keys")

    def on_mount(self) -> None:
        """Fill in the page."""
        self.query_one(StageLine).set(self._title)
        self.query_one("#paragraphs", Block).set(self._paragraphs)
        if self._picture is not None:
            picture, units = self._picture
            self.query_one(TankPanel).set(picture, units)
            self.query_one(TankLine).set(picture, units)
        self.query_one("#read").focus()

    def action_shut(self) -> None:
        """Back to the page before."""
        self.dismiss(None)


class TankScreen(Screen[None]):
    """The tank as large as there is room for, with the same in words where there is not."""

    CSS_PATH = "sheet.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,enter,q,f7", "shut", show=False)]

    def __init__(self, picture: SectionPicture, units: str, words: FaceWords) -> None:
        super().__init__()
        self._picture = picture
        self._units = units
        self._words = words

    def compose(self) -> ComposeResult:
        yield StageLine(self._words("lid_open"), id="title")
        yield TankPanel(id="whole")
        yield Block(id="spoken", classes="page")
        yield Across(id="rule")
        yield KeyRow([KeyHint("enter", self._words("close"), "shut")], id="keys")

    def on_mount(self) -> None:
        """Show the tank; in words too where the terminal is too narrow for labels beside it."""
        self.query_one(StageLine).set(self._words("tank_title"))
        self.query_one(TankPanel).set(self._picture, self._units)
        self._speak(self.app.size.width)

    def on_resize(self, event: events.Resize) -> None:
        self._speak(event.size.width)

    def _speak(self, width: int) -> None:
        narrow = width < 40
        spoken = as_words(self._picture, "metric" if self._units == "metric" else "us") if narrow else []
        block = self.query_one("#spoken", Block)
        block.display = narrow
        block.set([(line, "text") for line in spoken])

    def action_shut(self) -> None:
        """Back to the page before."""
        self.dismiss(None)


class AskScreen(ModalScreen[int]):
    """One question of the program's own with two or three choices; gives the number, 0 for none of them."""

    CSS_PATH = "sheet.tcss"

    def __init__(self, question: str, labels: Sequence[str], words: FaceWords) -> None:
        super().__init__()
        self._question = question
        self._options = [Option(number, label) for number, label in enumerate(labels, start=1)]
        self._words = words

    def compose(self) -> ComposeResult:
        with Vertical():
            yield Block(id="question")
            yield Choices(more=self._words("more"), id="choices")

    def on_mount(self) -> None:
        """Show question and choices."""
        self.query_one("#question", Block).set([(self._question, "strong")])
        self.query_one(Choices).set(self._options)

    def on_key(self, event: events.Key) -> None:
        """Numbers and arrows pick, enter takes what is highlighted, escape none."""
        choices = self.query_one(Choices)
        moves: dict[str, Callable[[], None]] = {"up": lambda: choices.move(-1), "down": lambda: choices.move(1)}
        if event.key in moves:
            moves[event.key]()
        elif event.key == "enter" and choices.highlighted is not None:
            self.dismiss(choices.highlighted)
        elif event.key == "escape":
            self.dismiss(0)
        elif event.character and event.character.isdigit() and choices.has(int(event.character)):
            self.dismiss(int(event.character))
        else:
            return
        event.stop()

    @on(Choices.Picked)
    def _picked(self, event: Choices.Picked) -> None:
        self.dismiss(event.number)
