"""Pages one only reads: the verdict, the record, help. And the tank as large as the terminal."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, ClassVar

from textual import events
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, VerticalScroll
from textual.screen import Screen

from selfcheck.app.widgets.drawn import DrawnPanel
from selfcheck.app.widgets.keys import KeyHint, KeyRow
from selfcheck.app.widgets.lines import Across, Block
from selfcheck.app.widgets.stage import StageLine
from selfcheck.app.widgets.tank import TankLine, TankPanel
from selfcheck.app.words import FaceWords
from selfcheck.drawing.section import SectionPicture, as_words

if TYPE_CHECKING:
    from selfcheck.sitting.steps import Drawn

Paragraphs = Sequence[tuple[str, str]]
Picture = tuple[SectionPicture, str]
#: cells below which a picture has no room for its labels
NARROWEST = 40


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
        yield KeyRow((), id="keys")

    def on_mount(self) -> None:
        """Fill in the page."""
        self.query_one(StageLine).set(self._title)
        self.query_one("#paragraphs", Block).set(self._paragraphs)
        if self._picture is not None:
            picture, units = self._picture
            self.query_one(TankPanel).set(picture, units)
            self.query_one(TankLine).set(picture, units)
        read = self.query_one("#read")
        for moving in ("scroll_y", "virtual_size", "size"):
            self.watch(read, moving, self._moved)
        read.focus()

    def _moved(self) -> None:
        """Heights change one after the other: how far there is to read is known once all of them have."""
        self.call_after_refresh(self._tell_of_more)

    def _tell_of_more(self) -> None:
        read = self.query_one("#read")
        more = [KeyHint("↑ ↓", self._words("more"), "more")] if read.scroll_y < read.max_scroll_y else []
        self.query_one("#keys", KeyRow).set([KeyHint("enter", self._words("close"), "shut"), *more])

    def action_more(self) -> None:
        """Read on."""
        self.query_one("#read").scroll_page_down(animate=False)

    def action_shut(self) -> None:
        """Back to the page before."""
        self.dismiss(None)


class WholeScreen(Screen[None]):
    """A picture as large as there is room for, with the same in words where there is not."""

    CSS_PATH = "sheet.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,enter,q,f7", "shut", show=False)]

    def __init__(self, title: str, panel: TankPanel | DrawnPanel, spoken: Sequence[str], words: FaceWords) -> None:
        super().__init__()
        self._title = title
        self._panel = panel
        self._spoken = tuple(spoken)
        self._words = words

    def compose(self) -> ComposeResult:
        yield StageLine(self._words("lid_open"), id="title")
        yield self._panel
        yield Block(id="spoken", classes="page")
        yield Across(id="rule")
        yield KeyRow([KeyHint("enter", self._words("close"), "shut")], id="keys")

    def on_mount(self) -> None:
        """Show the picture; in words too where the terminal is too narrow for it."""
        self.query_one(StageLine).set(self._title)
        self._speak(self.app.size.width)

    def on_resize(self, event: events.Resize) -> None:
        self._speak(event.size.width)

    def _speak(self, width: int) -> None:
        block = self.query_one("#spoken", Block)
        block.display = width < NARROWEST
        block.set([(line, "text") for line in self._spoken])

    def action_shut(self) -> None:
        """Back to the page before."""
        self.dismiss(None)


class TankScreen(WholeScreen):
    """The tank."""

    def __init__(self, picture: SectionPicture, units: str, words: FaceWords) -> None:
        spoken = as_words(picture, "metric" if units == "metric" else "us")
        super().__init__(words("tank_title"), TankPanel(id="whole"), spoken, words)
        self._picture = picture, units

    def on_mount(self) -> None:
        self.query_one(TankPanel).set(*self._picture)


class PictureScreen(WholeScreen):
    """A picture of the record."""

    def __init__(self, title: str, drawn: Drawn, words: FaceWords) -> None:
        super().__init__(title, DrawnPanel(id="whole"), drawn.words, words)
        self._drawn = drawn

    def on_mount(self) -> None:
        self.query_one(DrawnPanel).set(self._drawn)
