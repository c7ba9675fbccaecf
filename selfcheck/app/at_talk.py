"""Conversations in the app: begun, held on a page of their own, concluded, and what follows their last words."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING

from selfcheck.app.screens.conversation import ConversationScreen
from selfcheck.domain import units
from selfcheck.errors import SelfcheckError

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.app.at_desk import Origin
    from selfcheck.app.pages import Paragraph
    from selfcheck.app.widgets.log import Said
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.steps import EndingPage


class AtTalk:
    """What the app does with conversations. `play`: the lines of a prepared one, for the first that is opened."""

    def __init__(self, app: SelfcheckApp, play: Sequence[str]) -> None:
        self._app = app
        self._play = tuple(play)
        self._after: Callable[[], None] | None = None

    def begin(self, flow: str, resume: bool = False, line: str = "") -> None:
        """Start a conversation, or take one up again. `line`: what was typed before it began."""
        self._away(partial(self._begin, flow, resume, line))

    def open(self, conversation: Conversation, first: Sequence[Said], origin: Origin | None = None) -> None:
        """Open the page of a conversation that has begun with `first`. `origin`: the page it goes back to.

        What reads amounts is loaded while the first question is read, for the first one that is typed.
        """
        app = self._app
        app.stay()
        title = origin.screen.desk.page.title if origin is not None else app.home.title_of(conversation.script.flow.id)
        screen = ConversationScreen(conversation, title, app.words, first, self._play, origin)
        self._play = ()
        app.push_screen(screen)
        screen.call_after_refresh(partial(app.run_worker, units.warm, thread=True, exclusive=True, group="amounts"))

    def conclude(self, conversation: Conversation, origin: Origin | None = None) -> None:
        """Keep what a finished conversation gave, and get its page ready."""
        self._away(partial(self._conclude, conversation, origin))

    def then(self, act: Callable[[], None]) -> None:
        """What to do when the last words of a conversation have been read."""
        self._after = act

    def go_on(self) -> None:
        """What follows the last words of a conversation: its page when there is one, else the start."""
        after, self._after = self._after, None
        if after is not None:
            after()

    def _away(self, act: Callable[[], None]) -> None:
        """Do what may take long away from the screen."""
        self._app.run_worker(act, thread=True, exclusive=True, group="conversation")

    def _begin(self, flow: str, resume: bool, line: str) -> None:
        app = self._app
        assert app.sitting is not None
        try:
            conversation = app.sitting.resume() if resume else app.sitting.begin(flow)
            first = conversation.start()
            if line:
                first = [*first, *conversation.hear(line)]
        except Exception as error:
            app.call_from_thread(app.failed, error)
            return
        app.call_from_thread(self.open, conversation, first)

    def _conclude(self, conversation: Conversation, origin: Origin | None) -> None:
        app = self._app
        assert app.sitting is not None
        try:
            result = app.sitting.conclude(conversation)
        except SelfcheckError as error:
            app.call_from_thread(self._concluded, [(error.what, "trouble"), (error.mend, "trouble")], None, origin)
            return
        except Exception as error:
            app.call_from_thread(app.failed, error)
            return
        trouble = app.sitting.trouble
        lines = [(app.words("not_saved", trouble=trouble), "trouble")] if trouble else []
        app.call_from_thread(self._concluded, lines, None if isinstance(result, str) else result, origin)

    def _concluded(self, lines: list[Paragraph], page: EndingPage | None, origin: Origin | None) -> None:
        app = self._app

        def show() -> None:
            if origin is not None:
                app.at_desk.back(origin)
            else:
                app.go_home()
            if page is not None:
                app.at_desk.open_ending(page, lines)
            elif lines:
                app.open_sheet(app.home.title_now, lines, app.picture_of())

        self.then(show)
