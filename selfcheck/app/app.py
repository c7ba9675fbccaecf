"""The assistant in a terminal: which page is open, and the record behind it."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import PurePath
from typing import TYPE_CHECKING, Any, ClassVar

from textual import work
from textual.app import App, SystemCommand
from textual.binding import Binding, BindingType
from textual.screen import Screen

from selfcheck.app import themes
from selfcheck.app.at_home import AtHome
from selfcheck.app.screens.home import HomeScreen
from selfcheck.app.words import FaceWords
from selfcheck.errors import SelfcheckError

if TYPE_CHECKING:
    from selfcheck.app.pages import Paragraph
    from selfcheck.app.screens.sheet import Picture
    from selfcheck.app.widgets.log import Said
    from selfcheck.drawing.section import SectionPicture
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import HomeFacts, Sitting

READING = ("record",)  # choices of the start that are pages, not conversations


class SelfcheckApp(App[int]):
    """Opens with the page of the start; the record is read behind it."""

    CSS_PATH: ClassVar[list[str | PurePath]] = ["app.tcss", "screens/home.tcss"]
    TITLE = "selfcheck"
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (90, "-wide")]  # noqa: RUF012
    VERTICAL_BREAKPOINTS = [(0, "-low"), (22, "-middling"), (30, "-tall")]  # noqa: RUF012
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+c", "leave", show=False, priority=True),
        Binding("ctrl+q", "leave", show=False, priority=True),
        Binding("f1", "help", show=False),
        Binding("f7", "tank", show=False),
    ]

    def __init__(
        self,
        start: Mapping[str, Any],
        words: FaceWords,
        open_sitting: Callable[[], Sitting],
        play: Sequence[str] = (),
        play_flow: str = "",
    ) -> None:
        """`start`: the tables of the start's words. `open_sitting` reads the record, in a thread. `play`: lines of a
        prepared conversation of the flow `play_flow`."""
        super().__init__()
        self.words = words
        self.sitting: Sitting | None = None
        self.fault: Exception | None = None
        self._start = start
        self._open_sitting = open_sitting
        self._play = tuple(play)
        self._play_flow = play_flow
        self._about_to_leave = False
        self._after: Callable[[], None] | None = None
        self.at_home = AtHome(self)
        for theme in themes.themes():
            self.register_theme(theme)
        self.theme = themes.PLAIN.name if self.no_color else themes.DARK.name

    def get_default_screen(self) -> Screen[None]:
        return HomeScreen(self._start, self.words)

    @property
    def home(self) -> HomeScreen:
        """The page of the start."""
        screen = self.screen_stack[0]
        assert isinstance(screen, HomeScreen)
        return screen

    # ------------------------------------------------------------------------------------------------- the record

    def on_ready(self) -> None:
        """The first page is painted; now the rest may load."""
        self.read_record()

    @work(thread=True, exclusive=True, group="record")
    def read_record(self) -> None:
        """Open the record, or look at it again."""
        try:
            sitting = self.sitting or self._open_sitting()
            facts = sitting.home()
            picture = self._picture(sitting)
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        gc.collect()
        gc.freeze()
        gc.enable()
        self.call_from_thread(self._opened, sitting, facts, picture)

    def _opened(self, sitting: Sitting, facts: HomeFacts, picture: SectionPicture) -> None:
        from selfcheck.app import pages

        first, self.sitting = self.sitting is None, sitting
        half_done = self.home.label(facts.unfinished.flow) if facts.unfinished is not None else ""
        lines = pages.home_facts(facts, sitting, half_done, self.words)
        self.home.show_record(facts.name, lines, picture, sitting.household.units)
        if first and self._play:
            self.begin(self._play_flow)

    def picture_of(self, conversation: Conversation | None = None) -> Picture:
        """The tank as the conversation under way, or the record, has it; and the household's units."""
        assert self.sitting is not None
        return self._picture(self.sitting, conversation), self.sitting.household.units

    def _picture(self, sitting: Sitting, conversation: Conversation | None = None) -> SectionPicture:
        from selfcheck.app import picture

        household, checks, words = sitting.household, sitting.checks, self.words.picture
        if conversation is None:
            judged = sitting.judgement() if checks else None
            return picture.of_record(household, checks, judged.rules if judged is not None else None, words)
        rules = conversation.context.rule_sets.get(sitting.rules or household.rules)
        return picture.of_draft(household, checks, conversation.draft(), rules, words)

    # ------------------------------------------------------------------------------------------ from page to page

    def open_choice(self, choice: str) -> None:
        """Open what a choice of the start stands for: a page, or a conversation."""
        assert self.sitting is not None
        if choice in READING:
            self.open_page(choice)
            return
        unfinished = self.sitting.unfinished()
        if unfinished is None or unfinished.flow != choice:
            self.begin(choice)
            return
        from selfcheck.app import pages
        from selfcheck.app.screens.sheet import AskScreen

        def answered(number: int | None) -> None:
            if number in (1, 2):
                self.begin(choice, resume=number == 1)

        words = self.words
        question = words("half_done_ask", day=pages.started(unfinished, self.sitting))
        self.push_screen(AskScreen(question, [words("go_on"), words("start_again"), words("not_now")], words), answered)

    @work(thread=True, exclusive=True, group="conversation")
    def begin(self, flow: str, resume: bool = False, line: str = "") -> None:
        """Start a conversation, or take one up again. `line`: what was typed before it began."""
        assert self.sitting is not None
        try:
            conversation = self.sitting.resume() if resume else self.sitting.begin(flow)
            first = conversation.start()
            if line:
                first = [*first, *conversation.hear(line)]
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        self.call_from_thread(self.talk, conversation, first)

    def talk(self, conversation: Conversation, first: Sequence[Said]) -> None:
        """Open the page of a conversation that has begun with `first`."""
        from selfcheck.app.screens.conversation import ConversationScreen

        self._about_to_leave = False
        self.home.note("")
        screen = ConversationScreen(conversation, self.home.title_now, self.words, first, self._play)
        self._play = ()
        self.push_screen(screen)

    @work(thread=True, exclusive=True, group="conversation")
    def conclude(self, conversation: Conversation) -> None:
        """Keep what a finished conversation gave, and get its page ready."""
        from selfcheck.app import pages

        assert self.sitting is not None
        try:
            result = self.sitting.conclude(conversation)
        except SelfcheckError as error:
            self.call_from_thread(self._concluded, [(error.what, "trouble"), (error.mend, "trouble")])
            return
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        paragraphs = [] if isinstance(result, str) else pages.ending(result, self.words)
        if self.sitting.trouble:
            paragraphs = [(self.words("not_saved", trouble=self.sitting.trouble), "trouble"), pages.GAP, *paragraphs]
        self.call_from_thread(self._concluded, paragraphs)

    def _concluded(self, paragraphs: list[Paragraph]) -> None:
        def show() -> None:
            self.go_home()
            if paragraphs:
                self.open_sheet(self.home.title_now, paragraphs, self.picture_of())

        self._after = show

    def after_ending(self) -> None:
        """What follows the last words of a conversation: its page when there is one, else the start."""
        after, self._after = self._after, None
        if after is not None:
            after()

    def action_after_ending(self) -> None:
        """The same by key or click."""
        self.after_ending()

    @work(thread=True, exclusive=True, group="conversation")
    def open_page(self, name: str) -> None:
        """Work out a page one only reads, and open it."""
        from selfcheck.app import pages

        assert self.sitting is not None
        try:
            paragraphs = pages.record(self.sitting, self.words)
            picture = self.picture_of()
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        self.call_from_thread(self.open_sheet, self.words(f"{name}_title"), paragraphs, picture)

    def open_sheet(self, title: str, paragraphs: Sequence[Paragraph], picture: Picture | None = None) -> None:
        """Open a page of paragraphs."""
        from selfcheck.app.screens.sheet import SheetScreen

        self.push_screen(SheetScreen(title, paragraphs, self.words, picture))

    def go_home(self) -> None:
        """Close every page above the start, and look at the record again."""
        while len(self.screen_stack) > 1:
            self.pop_screen()
        self.read_record()

    # ------------------------------------------------------------------------------------------------------- keys

    def action_leave(self) -> None:
        """The way out: through the open conversation, so that a lid is not forgotten."""
        from selfcheck.app.screens.conversation import ConversationScreen

        talking = [screen for screen in self.screen_stack if isinstance(screen, ConversationScreen)]
        back_to = talking[-1] if talking else self.home
        while self.screen is not back_to:
            self.pop_screen()
        if talking:
            talking[-1].leave()
        elif self._about_to_leave:
            self.exit(0)
        else:
            self._about_to_leave = True
            self.home.note(self.words("ready_to_leave"))

    def action_help(self) -> None:
        """What one can do here."""
        from selfcheck.app import pages
        from selfcheck.app.screens.sheet import SheetScreen

        if not isinstance(self.screen, SheetScreen):
            self.open_sheet(self.words("help_title"), pages.help_sheet(self.words))

    def action_tank(self) -> None:
        """The tank as large as the terminal."""
        from selfcheck.app.screens.conversation import ConversationScreen
        from selfcheck.app.screens.sheet import TankScreen

        if self.sitting is None or isinstance(self.screen, TankScreen):
            return
        conversation = self.screen.conversation if isinstance(self.screen, ConversationScreen) else None
        self.push_screen(TankScreen(*self.picture_of(conversation), self.words))

    def get_system_commands(self, screen: Screen[Any]) -> Iterable[SystemCommand]:
        words = self.words
        yield SystemCommand(words("help_title"), "f1", self.action_help)
        yield SystemCommand(words("tank_title"), "f7", self.action_tank)
        for name, palette in zip(("dark_page", "light_page", "plain_page"), themes.PALETTES, strict=True):
            yield SystemCommand(words(name), words("page_colours"), lambda chosen=palette: self._turn_page(chosen))
        yield SystemCommand(words("quit"), "ctrl+c", self.action_leave)

    def _turn_page(self, name: str) -> None:
        self.theme = name

    # ------------------------------------------------------------------------------------------------------ faults

    def _failed(self, error: Exception) -> None:
        if isinstance(error, SelfcheckError) and self.sitting is not None:
            self.home.note(f"{error.what} {error.mend}", "trouble")
        else:
            self.fault = error
            self.exit(2)

    def _fatal_error(self) -> None:
        """Stop without printing what was held in memory; `run` hands the fault on."""
        self.fault = self._exception
        self._close_messages_no_wait()
