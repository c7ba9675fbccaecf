"""Pages with numbered ways on: the record, papers, a verdict with what helps to act on it."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, ClassVar

from textual import on, work
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, VerticalScroll
from textual.widgets import Input

from selfcheck.app import pages
from selfcheck.app.screens.choosing import ChoosingScreen
from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.app.widgets.choices import Choices, Option
from selfcheck.app.widgets.drawn import DrawnPanel
from selfcheck.app.widgets.keys import KeyHint, KeyRow
from selfcheck.app.widgets.lines import Across, Block, Mark
from selfcheck.app.widgets.stage import StageLine
from selfcheck.app.widgets.tank import TankLine, TankPanel
from selfcheck.app.words import FaceWords, waiting
from selfcheck.interview import hazards
from selfcheck.progress import Progress, followed
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.steps import Danger, Drawn, Page, Step, Talk

if TYPE_CHECKING:
    from selfcheck.app.screens.sheet import Picture

#: seconds after which it is said that something is being worked out, and how far it has come; our choice
PATIENCE, AGAIN = 0.4, 0.3


class DeskScreen(ChoosingScreen):
    """Shows the pages of a desk one after the other, and passes on what a person picks or types."""

    CSS_PATH = "desk.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape", "back", show=False),
        Binding("pageup", "scroll(-1)", show=False),
        Binding("pagedown", "scroll(1)", show=False),
    ]

    def __init__(self, desk: Desk, words: FaceWords, tank: Picture | None = None) -> None:
        """`tank`: the household's tank, shown beside pages that have no picture of their own."""
        super().__init__()
        self.desk = desk
        self._words = words
        self._tank = tank
        self._busy = False
        self._ahead: list[str] = []  # lines that were typed while something was being worked out; heard right after
        self._progress = Progress()
        self.colours = False  # it is the page that turns the colours
        self.page: Page | None = None

    def compose(self) -> ComposeResult:
        words = self._words
        yield StageLine(words("lid_open"), id="title")
        yield TankLine(id="tank-line")
        with Horizontal(id="body"):
            with VerticalScroll(id="read", can_focus=False):
                yield DrawnPanel(id="inside")
                yield Block(id="paragraphs")
                yield DrawnPanel(id="below")
            yield DrawnPanel(id="beside")
            yield TankPanel(id="tank")
        yield Across(id="rule")
        yield Block(id="said")
        yield Choices(more=words("more"), id="choices")
        with Horizontal(id="line"):
            yield Mark(id="mark")
            yield AnswerInput(id="answer")
        yield KeyRow(self._hints(False), id="keys")

    def on_mount(self) -> None:
        """Make the first page."""
        self.query_one(AnswerInput).picks = True
        self.query_one("#said", Block).display = False
        read = self.query_one("#read")
        for moving in ("scroll_y", "virtual_size", "size"):
            self.watch(read, moving, self._moved)
        self._go(lambda: None)

    @property
    def drawn(self) -> Drawn | None:
        """The picture of the page in view, where it has one of its own."""
        return self.page.drawn if self.page is not None else None

    def _hints(self, more: bool) -> list[KeyHint]:
        """The keys of this page; the one to read on where there is more."""
        words = self._words
        return [
            KeyHint("esc", words("back"), "back"),
            *([KeyHint("pgdn", words("more"), "scroll(1)")] if more else []),
            KeyHint("f7", words("picture"), "app.tank"),
            KeyHint("f1", words("help"), "app.help"),
        ]

    def _moved(self) -> None:
        """Heights change one after the other: how far there is to read is known once all of them have."""
        self.call_after_refresh(self._tell_of_more)

    def _tell_of_more(self) -> None:
        read = self.query_one("#read")
        self.query_one(KeyRow).set(self._hints(read.scroll_y < read.max_scroll_y))

    def go_on(self, talk: Talk) -> None:
        """A conversation that one of the pages began has come to its end."""
        self._go(lambda: self.desk.ended(talk))

    def action_back(self) -> None:
        """One page back, or away."""
        self._go(self.desk.back)

    def action_scroll(self, by: int) -> None:
        """Read on, or back."""
        read = self.query_one("#read")
        read.scroll_relative(y=by * max(1, read.size.height - 2), animate=False)

    def _go(self, act: Callable[[], Step | None]) -> None:
        if self._busy:
            return
        self._busy = True
        self.set_timer(PATIENCE, self._still_busy)
        self._act(act)

    def _still_busy(self) -> None:
        if self._busy:
            self._say([(waiting(self.desk.phrases("working"), self._progress, self._words), "muted")])
            self.set_timer(AGAIN, self._still_busy)

    @work(thread=True, group="desk")
    def _act(self, act: Callable[[], Step | None]) -> None:
        """Do what was picked, and make the page that follows, away from the screen: it may take long."""
        try:
            with followed() as self._progress:
                step = act()
                page = None if self.desk.over or isinstance(step, (Talk, Danger)) else self.desk.page
                if page is not None and self._tank is not None:
                    self._tank = self.selfcheck.picture_of()  # the record may have changed
        except Exception as error:
            self.app.call_from_thread(self._faulty, error)
            return
        self.app.call_from_thread(self._done, step, page)

    def _faulty(self, error: Exception) -> None:
        self._busy = False
        self.selfcheck.failed(error)

    def _done(self, step: Step | None, page: Page | None) -> None:
        self._busy = False
        told = next((line for line in self._ahead if hazards.find(line) is not None), "")
        if isinstance(step, Danger):
            self.selfcheck.in_danger(step.line)
        elif page is None and told:
            self.selfcheck.in_danger(told)
        elif isinstance(step, Talk):
            self.selfcheck.at_desk.hold(step, self)
        elif page is None:
            self.dismiss(None)
        else:
            self._show(page)
            if self._ahead:
                line = self._ahead.pop(0)
                self._go(lambda: self.desk.hear(line))

    def _show(self, page: Page) -> None:
        moved = self.page is None or page.title != self.page.title
        self.page = page
        self.query_one(StageLine).set(page.title)
        self.query_one("#paragraphs", Block).set(pages.of_desk(page, self._words))
        ask = [(page.ask, "strong")] if page.ask else []
        said = self.desk.said
        lines = [(said.text, {"trouble": "trouble", "help": "help"}.get(said.kind, "text"))] if said.text else []
        source = [(said.source, "muted")] if said.source else []
        self._say([*lines, *source, *ask])
        self.query_one(Choices).set([Option(number, way.label) for number, way in enumerate(page.ways, 1)])
        answer = self.query_one(AnswerInput)
        answer.placeholder = page.hint or self._words("answer_here")
        answer.picks = page.picks
        self._show_pictures(page)
        if moved:
            self.query_one("#read").scroll_home(animate=False)

    def _show_pictures(self, page: Page) -> None:
        drawn = page.drawn
        for panel in self.query(DrawnPanel):
            panel.set(drawn)
        self.set_class(drawn is not None and drawn.spread, "-spread")
        self.set_class(drawn is not None and not drawn.spread, "-drawn")
        self.set_class(drawn is None and self._tank is not None, "-tank")
        if self._tank is not None and drawn is None:
            self.query_one(TankPanel).set(*self._tank)
            self.query_one(TankLine).set(*self._tank)

    def _say(self, lines: list[tuple[str, str]]) -> None:
        block = self.query_one("#said", Block)
        block.display = bool(lines)
        block.set([(part, kind) for text, kind in lines for part in text.split("\n")])

    def pick(self, number: int) -> None:
        """While a page is being made the number is typed on the line: what it picks there is not to be seen yet."""
        if self._busy:
            self.query_one(AnswerInput).insert_text_at_cursor(str(number))
        elif self.query_one(Choices).has(number):
            self._go(lambda: self.desk.pick(number))

    @on(Input.Submitted)
    def _submitted(self, event: Input.Submitted) -> None:
        event.stop()
        line, highlighted = event.value, self.query_one(Choices).highlighted
        if line.strip() and self._busy:
            self._ahead.append(line)
        elif line.strip():
            self._go(lambda: self.desk.hear(line))
        elif highlighted is not None:
            self.pick(highlighted)
        elif self.page is not None and self.page.hear is None:
            self.action_back()
