"""The assistant in a terminal: which page is open, and the record behind it."""

from __future__ import annotations

import gc
from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from pathlib import PurePath
from typing import TYPE_CHECKING, Any, ClassVar

from textual import work
from textual.binding import Binding, BindingType
from textual.screen import Screen

from selfcheck.app import themes
from selfcheck.app.after_number import NumberThenEnter
from selfcheck.app.at_home import TROUBLE, AtHome
from selfcheck.app.screens.home import HomeScreen
from selfcheck.app.words import FaceWords, waiting
from selfcheck.errors import SelfcheckError
from selfcheck.progress import Progress, followed

if TYPE_CHECKING:
    from selfcheck.app.at_desk import AtDesk
    from selfcheck.app.at_talk import AtTalk
    from selfcheck.app.pages import Paragraph
    from selfcheck.app.screens.desk import DeskScreen
    from selfcheck.app.screens.sheet import Picture
    from selfcheck.drawing.section import SectionPicture
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import HomeFacts, Sitting
    from selfcheck.sitting.desk import Desk


#: seconds after which it is said that the record is being read; our choice
PATIENCE = 0.5


class SelfcheckApp(NumberThenEnter):
    """Opens with the page of the start; the record is read behind it."""

    CSS_PATH: ClassVar[list[str | PurePath]] = ["app.tcss", "screens/home.tcss"]
    TITLE = "selfcheck"
    ENABLE_COMMAND_PALETTE = False
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (90, "-wide")]  # noqa: RUF012
    VERTICAL_BREAKPOINTS = [(0, "-low"), (22, "-middling"), (30, "-tall")]  # noqa: RUF012
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+c", "leave", show=False, priority=True),
        Binding("ctrl+q", "leave", show=False, priority=True),
        Binding("f1", "help", show=False),
        Binding("f7", "tank", show=False),
        Binding("ctrl+p", "commands", show=False),
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
        self._progress = Progress()
        self._about_to_leave = False
        self.at_home = AtHome(self)
        for theme in themes.themes():
            self.register_theme(theme)
        self.theme = themes.PLAIN.name if self.no_color else themes.DARK.name

    def get_default_screen(self) -> Screen[None]:
        return HomeScreen(self._start, self.words)

    @cached_property
    def at_desk(self) -> AtDesk:
        """What opens pages with ways on; not needed for the first frame."""
        from selfcheck.app.at_desk import AtDesk

        return AtDesk(self)

    @cached_property
    def at_talk(self) -> AtTalk:
        """What begins, holds and concludes conversations."""
        from selfcheck.app.at_talk import AtTalk

        return AtTalk(self, self._play)

    @property
    def home(self) -> HomeScreen:
        """The page of the start."""
        screen = self.screen_stack[0]
        assert isinstance(screen, HomeScreen)
        return screen

    # ------------------------------------------------------------------------------------------------- the record

    def on_ready(self) -> None:
        """The first page is painted; now the rest may load. What takes long is said to be under way."""
        self.set_timer(PATIENCE, self._still_opening)
        self.read_record()

    def _still_opening(self) -> None:
        if self.sitting is None and self.fault is None:
            self.home.note(waiting(self.words("opening"), self._progress, self.words))
            self.set_timer(PATIENCE, self._still_opening)

    @work(thread=True, exclusive=True, group="record")
    def read_record(self) -> None:
        """Open the record, or look at it again. What comes next is loaded once the start shows it."""
        from selfcheck.app import picture

        first = self.sitting is None
        try:
            with followed() as self._progress:
                sitting = self.sitting or self._open_sitting()
            facts = sitting.home()
            drawn = picture.of(sitting, None, self.words.picture)
        except Exception as error:
            self.call_from_thread(self.failed, error)
            return
        self.call_from_thread(self._opened, sitting, facts, drawn)
        if first:
            self._get_ready()

    def _get_ready(self) -> None:
        """Load what may be asked for next. What is held by then stays, so it is never searched for rubbish."""
        from selfcheck.sitting.opening import get_ready

        try:
            get_ready()
        finally:
            gc.freeze()
            gc.enable()

    def _opened(self, sitting: Sitting, facts: HomeFacts, picture: SectionPicture) -> None:
        from selfcheck.app import pages

        first, self.sitting = self.sitting is None, sitting
        half_done = self.home.short(facts.unfinished.flow) if facts.unfinished is not None else ""
        lines = pages.home_facts(facts, sitting, half_done, self.words)
        self.home.show_record(facts.name, lines, picture, sitting.household.units)
        if first and self._play:
            self.at_talk.begin(self._play_flow)
        elif first and facts.danger_on is not None:
            from selfcheck.sitting.over import over_desk

            self.open_desk(over_desk(sitting))

    def picture_of(self, conversation: Conversation | None = None) -> Picture:
        """The tank as the conversation under way, or the record, has it; and the household's units."""
        from selfcheck.app import picture

        assert self.sitting is not None
        return picture.of(self.sitting, conversation, self.words.picture), self.sitting.household.units

    # ------------------------------------------------------------------------------------------ from page to page

    def open_choice(self, choice: str) -> None:
        """Open what a choice of the start stands for: a page, or a conversation."""
        assert self.sitting is not None
        from selfcheck.sitting.opening import desk

        pages = desk(self.sitting, choice)
        if pages is not None:
            self.open_desk(pages)
            return
        unfinished = self.sitting.unfinished()
        if unfinished is not None and unfinished.flow == choice:
            self.at_desk.offer(unfinished)
        else:
            self.at_talk.begin(choice)

    def open_desk(self, desk: Desk, closed: Callable[[], None] | None = None) -> DeskScreen:
        """Open pages with ways on. `closed` is called when they are left; else the start looks at the record again."""
        return self.at_desk.open(desk, closed)

    def in_danger(self, line: str) -> None:
        """A line that tells of danger was typed outside of any conversation: what to do is said before all else."""
        while len(self.screen_stack) > 1:
            self.pop_screen()
        self.at_talk.begin(TROUBLE, line=line)

    def action_after_ending(self) -> None:
        """Go on, by key or click, from the last words of a conversation."""
        self.at_talk.go_on()

    def open_sheet(self, title: str, paragraphs: Sequence[Paragraph], picture: Picture | None = None) -> None:
        """Open a page of paragraphs."""
        from selfcheck.app.screens.sheet import SheetScreen

        self.push_screen(SheetScreen(title, paragraphs, self.words, picture))

    def stay(self) -> None:
        """They go on: a first step out no longer counts."""
        self._about_to_leave = False
        self.home.note("")

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
        self.at_desk.help()

    def action_tank(self) -> None:
        """The picture of this page, or the tank, as large as the terminal."""
        self.at_desk.picture()

    def action_commands(self) -> None:
        """Everything that a key does here, to be picked."""
        self.at_desk.offer_commands()

    def action_colours(self) -> None:
        """Choose the colours of the page."""
        self.at_desk.offer_colours({self.words(name): chosen for name, chosen in themes.CHOICES})

    # ------------------------------------------------------------------------------------------------------ faults

    def failed(self, error: Exception) -> None:
        if isinstance(error, SelfcheckError) and self.sitting is not None:
            self.home.note(f"{error.what} {error.mend}", "trouble")
        else:
            self.fault = error
            self.exit(2)

    def _fatal_error(self) -> None:
        """Stop without printing what was held in memory; `run` hands the fault on."""
        self.fault = self._exception
        self._close_messages_no_wait()
