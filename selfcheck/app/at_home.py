"""What is typed at the start: danger first, then a choice in words, a question, or a way out."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting import Sitting

HOME, NODE, TROUBLE = "home", "what_now", "trouble"


class AtHome:
    """The conversation of the start. Nothing of it is kept: it only finds out what is wanted."""

    def __init__(self, app: SelfcheckApp) -> None:
        self._app = app
        self._talk: Conversation | None = None

    def hear(self, line: str) -> list[tuple[str, str]]:
        """Do what the line asks for; gives what is said to it where that opens nothing, as texts and parts."""
        from selfcheck.interview.hazards import find

        sitting = self._app.sitting
        assert sitting is not None
        if find(line) is not None:
            self._app.begin(TROUBLE, line=line)
            return []
        talk = self._talk or _begin(sitting)
        messages = talk.hear(line)
        self._talk = talk
        picked = [one.value for one in talk.answers if one.question == NODE and one.state == "value"]
        if picked:
            self._talk = None
            self._app.open_choice(str(picked[-1]))
            return []
        if talk.ending is not None:
            self._app.exit(0)
        return [(message.text, "text") for message in messages if message.kind not in ("said", "ask")]


def _begin(sitting: Sitting) -> Conversation:
    from selfcheck.interview.context import Context
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.loading.conversations import script

    context = Context(today=sitting.today, household=sitting.household, units=sitting.household.units)
    asked = script(sitting.place, HOME)
    talk = Conversation(asked, context, ask_back=sitting.ask_back, ask_near=sitting.ask_near)
    talk.start()
    return talk
