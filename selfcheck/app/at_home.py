"""What is typed at the start: danger first, then a choice in words, a question, or a way out."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.interview.dialogue import Conversation

NODE, TROUBLE = "what_now", "trouble"


class AtHome:
    """The conversation of the start. Nothing of it is kept: it only finds out what is wanted."""

    def __init__(self, app: SelfcheckApp) -> None:
        self._app = app
        self._talk: Conversation | None = None

    def hear(self, line: str) -> list[tuple[str, str]]:
        """Do what the line asks for; gives what is said to it where that opens nothing, as texts and parts."""
        from selfcheck.interview.hazards import find
        from selfcheck.sitting.at_start import start_talk

        sitting = self._app.sitting
        assert sitting is not None
        if find(line) is not None:
            self._app.at_talk.begin(TROUBLE, line=line)
            return []
        talk = self._talk
        if talk is None:
            talk = start_talk(sitting)
            talk.start()
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
