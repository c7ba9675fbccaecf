"""Pages with ways on: opening them, the conversations they begin, and the few that are the face's own."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import TYPE_CHECKING, NamedTuple

from selfcheck.app.screens.desk import DeskScreen
from selfcheck.interview.showing import at_start
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.steps import Back, Page, Part, Step, Talk, Way

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import Sitting, Unfinished
    from selfcheck.sitting.steps import EndingPage


class Origin(NamedTuple):
    """Where a conversation was begun, and as what."""

    screen: DeskScreen
    talk: Talk


class AtDesk:
    """What the app does with desks."""

    def __init__(self, app: SelfcheckApp) -> None:
        self._app = app

    def open(self, desk: Desk, closed: Callable[[], None] | None = None) -> DeskScreen:
        """Open a desk. `closed` is called when its first page is left; without it the record is looked at again."""
        screen = DeskScreen(desk, self._app.words, self._app.picture_of() if desk.own_tank else None)

        def shut(_: None) -> None:
            if closed is not None:
                closed()
            else:
                self._app.read_record()

        self._app.push_screen(screen, shut)
        return screen

    def open_ending(self, page: EndingPage, lines: Sequence[tuple[str, str]]) -> None:
        """Open the page that a conversation ended in, with what helps to act on it. `lines` are said above it."""
        from selfcheck.sitting.opening import verdict_desk

        assert self._app.sitting is not None
        first = tuple(Part((text,), kind="trouble") for text, _ in lines)
        self.open(verdict_desk(self._app.sitting, page, first))

    def hold(self, talk: Talk, screen: DeskScreen) -> None:
        """Begin a conversation for a page."""
        from selfcheck.app.widgets.log import Own

        before = [Own("say", line) for line in talk.before]
        self._app.at_talk.open(talk.conversation, [*before, *talk.conversation.start()], Origin(screen, talk))

    def ended(self, origin: Origin, conversation: Conversation) -> bool:
        """A conversation of a page has ended. True: that is seen to here; False: it is kept as every other."""
        if origin.talk.then is None:
            return False
        back = partial(self.back, origin)
        ending = conversation.ending
        if conversation.state.answered.hazards and ending is not None and not ending.left:
            self._app.at_talk.then(back)  # the caution is read first
        else:
            self._app.call_later(back)
        return True

    def back(self, origin: Origin) -> None:
        """Back to the page that began a conversation."""
        while self._app.screen is not origin.screen:
            self._app.pop_screen()
        origin.screen.go_on(origin.talk)

    def offer(self, unfinished: Unfinished) -> None:
        """Offer to go on with what was left open; any line may be typed there too."""
        from selfcheck.app import pages

        app, words = self._app, self._app.words
        assert app.sitting is not None
        picked: list[bool] = []

        def pick(resume: bool) -> Step:
            picked.append(resume)
            return Back()

        def closed() -> None:
            if picked:
                app.at_talk.begin(unfinished.flow, resume=picked[0])

        question = words("half_done_ask", day=pages.started(unfinished, app.sitting))
        ways = [Way(words("go_on"), partial(pick, True)), Way(words("start_again"), partial(pick, False))]
        if unfinished.lid_off:  # first it is asked where the lid is, which begins what is gone on with
            question, ways = words("half_done_lid"), ways[:1]
        page = Page(app.home.label(unfinished.flow), ways=tuple(ways), ask=question)
        self.open(self._desk(page, app.sitting), closed)

    def offer_colours(self, colours: Mapping[str, str]) -> None:
        """Let the person choose among the colours of the page; each is shown at once."""
        app, words = self._app, self._app.words
        if app.sitting is None or (
            isinstance(app.screen, DeskScreen) and app.screen.desk.page.title == words("colours_title")
        ):
            return

        def turn(theme: str) -> Step:
            app.call_from_thread(setattr, app, "theme", theme)
            return Back()

        ways = tuple(Way(label, partial(turn, theme)) for label, theme in colours.items())
        page = Page(words("colours_title"), ways=ways)
        self.open(self._desk(page, app.sitting), lambda: None).colours = True

    def help(self) -> None:
        """What one can do in the place where one stands."""
        from selfcheck.app import pages

        app = self._app
        if here := self._here():
            app.open_sheet(app.words("help_title"), pages.help_sheet(app.words, here))

    def offer_commands(self) -> None:
        """Everything that a key does in the place where one stands, to be picked by number or by words."""
        from selfcheck.app.pages import COLOURS_KEY, COMMANDS_KEY, KEYS

        app, words, here = self._app, self._app.words, self._here()
        own = isinstance(app.screen, DeskScreen) and app.screen.desk.page.title == words("commands_title")
        if app.sitting is None or not here or own:
            return
        picked: list[str] = []

        def pick(key: str) -> Step:
            picked.append(key)
            return Back()

        def closed() -> None:
            if picked and picked[-1] == COLOURS_KEY:
                app.action_colours()
            elif picked:
                app.simulate_key(picked[-1])

        keys = [(key, name) for key, name in KEYS[here] if key != COMMANDS_KEY]
        ways = tuple(Way(f"{at_start(words(name))} ({key})", partial(pick, key), (words(name),)) for key, name in keys)
        ways = (*ways, Way(words("colours_title"), partial(pick, COLOURS_KEY)))
        self.open(self._desk(Page(words("commands_title"), ways=ways), app.sitting), closed)

    def _here(self) -> str:
        """The place where one stands, one of `pages.KEYS`; "" on a sheet that is only read."""
        from selfcheck.app.screens.conversation import ConversationScreen
        from selfcheck.app.screens.sheet import SheetScreen

        screen = self._app.screen
        if isinstance(screen, SheetScreen):
            return ""
        talking, among_pages = isinstance(screen, ConversationScreen), isinstance(screen, DeskScreen)
        return "talk" if talking else "pages" if among_pages else "start"

    def picture(self) -> None:
        """The picture of the page, or the tank, as large as the terminal."""
        from selfcheck.app.screens.conversation import ConversationScreen
        from selfcheck.app.screens.sheet import PictureScreen, TankScreen, WholeScreen

        app = self._app
        screen = app.screen
        if app.sitting is None or isinstance(screen, WholeScreen):
            return
        if isinstance(screen, (ConversationScreen, DeskScreen)) and screen.drawn is not None:
            title = screen.heading if isinstance(screen, ConversationScreen) else screen.desk.page.title
            app.push_screen(PictureScreen(title, screen.drawn, app.words))
            return
        conversation = screen.conversation if isinstance(screen, ConversationScreen) else None
        app.push_screen(TankScreen(*app.picture_of(conversation), app.words))

    def _desk(self, page: Page, sitting: Sitting) -> Desk:
        """A desk of one page of the face's own."""
        return Desk(lambda: page, self._phrases, sitting.ask_back, sitting.ask_near, sitting.command_in)

    def _phrases(self, name: str, **fills: str) -> str:
        own = {"back": "not_now", "to_start": "not_now", "help": "help_pages", "change": "help_pages"}
        return self._app.words(own.get(name, name), **fills)
