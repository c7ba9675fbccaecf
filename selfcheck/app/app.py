"""The assistant in a terminal: which page is open, and the record behind it."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import date
from pathlib import PurePath
from typing import TYPE_CHECKING, Any, ClassVar

from textual import work
from textual.app import App, SystemCommand
from textual.binding import Binding, BindingType
from textual.screen import Screen

from selfcheck.app import themes
from selfcheck.app.screens.home import HomeScreen
from selfcheck.app.words import FaceWords
from selfcheck.errors import SelfcheckError

if TYPE_CHECKING:
    from selfcheck.app.screens.sheet import Picture
    from selfcheck.app.widgets.log import Said
    from selfcheck.drawing.section import SectionPicture
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import HomeFacts, Sitting, Unfinished

READING = ("record", "look_ahead")  # choices of the start that are pages, not conversations


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
        open_sitting: Callable[[], Sitting],
        play: Sequence[str] = (),
        play_flow: str = "",
    ) -> None:
        """`start`: the tables of the start's words. `open_sitting` reads the record, in a thread. `play`: lines of a
        prepared conversation of the flow `play_flow`."""
        super().__init__()
        self.words = FaceWords.from_table(start.get("face", {}))
        self.sitting: Sitting | None = None
        self.fault: Exception | None = None
        self._start = start
        self._open_sitting = open_sitting
        self._play = tuple(play)
        self._play_flow = play_flow
        self._about_to_leave = False
        self._after: Callable[[], None] | None = None
        for theme in themes.themes():
            self.register_theme(theme)
        self.theme = themes.PLAIN.name if self.no_color else themes.DARK.name

    def get_default_screen(self) -> Screen[None]:
        return HomeScreen(self._start, self.words)

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
        first, self.sitting = self.sitting is None, sitting
        self.home.show_record(facts.name, self._facts(facts), picture, sitting.household.units)
        if first and self._play:
            self.begin(self._play_flow)

    def _facts(self, facts: HomeFacts) -> list[tuple[str, str]]:
        words = self.words
        assert self.sitting is not None
        lines: list[tuple[str, str]] = []
        if facts.verdict_line:
            lines.append((facts.verdict_line, "strong"))
        units = self.sitting.household.units
        from selfcheck.domain.showing import show_day

        if facts.last_check:
            lines.append((f"{words.last_seen}: {show_day(facts.last_check, units)}", "text"))
        else:
            lines.append((words.never_seen, "text"))
        if facts.look_again:
            lines.append((f"{words.look_again}: {show_day(facts.look_again, units)}", "text"))
        if facts.unfinished is not None:
            lines.append((f"{words.half_done}: {self._half_done(facts.unfinished, words.half_done_line)}", "open"))
        lines += [(f"{problem.what} {problem.mend}", "trouble") for problem in facts.problems]
        if self.sitting.read_only:
            lines.append((self.sitting.read_only, "trouble"))
        if self.sitting.demonstration:
            lines.append((words.demonstration, "muted"))
        return lines

    def _half_done(self, unfinished: Unfinished, form: str) -> str:
        from selfcheck.domain.showing import show_day

        title = self.home.label(unfinished.flow)
        assert self.sitting is not None
        try:
            day = show_day(date.fromisoformat(unfinished.started[:10]), self.sitting.household.units)
        except ValueError:
            day = unfinished.started
        return form.format(title=title, count=len(unfinished.answers), day=day)

    @property
    def home(self) -> HomeScreen:
        """The page of the start."""
        screen = self.screen_stack[0]
        assert isinstance(screen, HomeScreen)
        return screen

    def picture_of(self, conversation: Conversation | None = None) -> tuple[SectionPicture, str]:
        """The tank as the conversation under way, or the record, has it; and the household's units."""
        assert self.sitting is not None
        return self._picture(self.sitting, conversation), self.sitting.household.units

    def _picture(self, sitting: Sitting, conversation: Conversation | None = None) -> SectionPicture:
        from selfcheck.app.picture import picture_of

        draft = conversation.draft() if conversation is not None else None
        return picture_of(sitting.household, list(sitting.checks), draft)

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
        from selfcheck.app.screens.sheet import AskScreen

        def answered(number: int | None) -> None:
            if number == 1:
                self.begin(choice, resume=True)
            elif number == 2 and self.sitting is not None:
                self.sitting.discard()
                self.begin(choice)

        words = self.words
        question = self._half_done(unfinished, words.half_done_ask)
        ask = AskScreen(question, (words.go_on, words.start_again, words.not_now), words)
        self.push_screen(ask, answered)

    @work(thread=True, exclusive=True, group="conversation")
    def begin(self, flow: str, resume: bool = False) -> None:
        """Start a conversation, or take one up again."""
        assert self.sitting is not None
        try:
            conversation = self.sitting.resume() if resume else self.sitting.begin(flow)
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        self.call_from_thread(self._talk, conversation)

    def _talk(self, conversation: Conversation, first: Sequence[Said] = ()) -> None:
        from selfcheck.app.screens.conversation import ConversationScreen

        assert self.sitting is not None
        self._about_to_leave = False
        self.home.note("")
        screen = ConversationScreen(conversation, self.sitting.home().name, self.words, first, self._play)
        self._play = ()
        self.push_screen(screen)

    @work(thread=True, exclusive=True, group="conversation")
    def conclude(self, conversation: Conversation) -> None:
        """Keep what a finished conversation gave, and get its page ready."""
        from selfcheck.app import pages

        assert self.sitting is not None
        try:
            result = self.sitting.conclude(conversation)
            if isinstance(result, str):
                paragraphs = [(result, "text")] if result else []
            else:
                paragraphs = pages.verdict(result, self.words)
            if self.sitting.trouble:
                paragraphs = [(self.sitting.trouble, "trouble"), ("", "text"), *paragraphs]
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        self.call_from_thread(self._concluded, paragraphs)

    def _concluded(self, paragraphs: list[tuple[str, str]]) -> None:
        def show() -> None:
            from selfcheck.app.screens.sheet import SheetScreen

            picture = self.picture_of()
            self.go_home()
            if paragraphs:
                self.push_screen(SheetScreen(self.home.title_now, paragraphs, self.words, picture))

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
        sitting = self.sitting
        try:
            if name == "record":
                title = self.words.record_title
                paragraphs = pages.record(sitting.checks, sitting.pump_outs, sitting.problems, self.words)
            else:
                title = self.words.when_next
                paragraphs = pages.verdict(sitting.verdict(), self.words)
            picture = self.picture_of()
        except Exception as error:
            self.call_from_thread(self._failed, error)
            return
        self.call_from_thread(self._open_sheet, title, paragraphs, picture)

    def _open_sheet(self, title: str, paragraphs: Sequence[tuple[str, str]], picture: Picture | None = None) -> None:
        from selfcheck.app.screens.sheet import SheetScreen

        self.push_screen(SheetScreen(title, paragraphs, self.words, picture))

    def hear_at_home(self, line: str) -> None:
        """A line typed at the start: a choice in words, danger, or a way out."""
        assert self.sitting is not None
        if line.strip().casefold() == self.words.quit:
            self.exit(0)
            return
        try:
            conversation = self.sitting.begin("home")
            conversation.start()
            messages = conversation.hear(line)
        except Exception as error:
            self._failed(error)
            return
        chosen = [answer.value for answer in conversation.answers if answer.question == "what_now"]
        if chosen and isinstance(chosen[0], str):
            self.open_choice(chosen[0])
        else:
            self._talk(conversation, messages)

    def go_home(self) -> None:
        """Close every page above the start, and look at the record again."""
        while len(self.screen_stack) > 1:
            self.pop_screen()
        self.read_record()

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, SelfcheckError):
            raise error
        if self.sitting is None:
            self.fault = error
            self.exit(error.exit_code)
        else:
            self.home.note(f"{error.what} {error.mend}", "trouble")

    def action_leave(self) -> None:
        """The way out: through the open conversation, so that a lid is not forgotten."""
        from selfcheck.app.screens.conversation import ConversationScreen

        talking = [screen for screen in self.screen_stack if isinstance(screen, ConversationScreen)]
        if talking:
            while self.screen is not talking[-1]:
                self.pop_screen()
            talking[-1].leave()
        elif self._about_to_leave:
            self.exit(0)
        else:
            while len(self.screen_stack) > 1:
                self.pop_screen()
            self._about_to_leave = True
            self.home.note(self.words.ready_to_leave)

    def action_help(self) -> None:
        """What one can do here."""
        from selfcheck.app import pages
        from selfcheck.app.screens.sheet import SheetScreen

        if not isinstance(self.screen, SheetScreen):
            self._open_sheet(self.words.help_title, pages.help_sheet(self.words))

    def action_tank(self) -> None:
        """The tank as large as the terminal."""
        from selfcheck.app.screens.conversation import ConversationScreen
        from selfcheck.app.screens.sheet import TankScreen

        if self.sitting is None or isinstance(self.screen, TankScreen):
            return
        conversation = self.screen.conversation if isinstance(self.screen, ConversationScreen) else None
        picture, units = self.picture_of(conversation)
        self.push_screen(TankScreen(picture, units, self.words))

    def get_system_commands(self, screen: Screen[Any]) -> Iterable[SystemCommand]:
        words = self.words
        yield SystemCommand(words.help_title, "f1", self.action_help)
        yield SystemCommand(words.tank_title, "f7", self.action_tank)
        names = (words.dark_page, words.light_page, words.plain_page)
        for title, palette in zip(names, themes.PALETTES.values(), strict=True):
            yield SystemCommand(title, words.page_colours, lambda name=palette.name: self._turn_page(name))
        yield SystemCommand(words.quit, "ctrl+c", self.action_leave)

    def _turn_page(self, name: str) -> None:
        self.theme = name

    def _fatal_error(self) -> None:
        """Stop without printing what was held in memory; `run` hands the fault on."""
        self.fault = self._exception
        self._close_messages_no_wait()
