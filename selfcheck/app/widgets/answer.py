"""The line on which a person types."""

from __future__ import annotations

from textual import events
from textual.message import Message
from textual.widgets import Input

from selfcheck.text import clean

_LONGEST = 2000


class AnswerInput(Input):
    """A one-row input. On an empty line number keys may pick a choice, and the arrow keys move among them."""

    class Number(Message):
        """A number key was pressed on an empty line while `picks` is on. `pressed`: monotonic time of the key [s]."""

        def __init__(self, number: int, pressed: float) -> None:
            super().__init__()
            self.number = number
            self.pressed = pressed

    class Move(Message):
        """An arrow key was pressed on an empty line."""

        def __init__(self, by: int) -> None:
            super().__init__()
            self.by = by

    def __init__(self, *, id: str | None = None) -> None:
        super().__init__(id=id, compact=True, max_length=_LONGEST, select_on_focus=False)
        self.set_reactive(Input.cursor_blink, False)
        self.picks = False

    async def _on_key(self, event: events.Key) -> None:
        if event.key in ("enter", "ctrl+u"):  # at once, so that keys typed ahead belong to the next line
            event.stop()
            event.prevent_default()
            line, self.value = self.value, ""
            if event.key == "enter":
                self.post_message(self.Submitted(self, line))
            return
        if not self.value:
            if self.picks and event.character and event.character in "123456789":
                event.stop()
                event.prevent_default()
                self.post_message(self.Number(int(event.character), event.time))
                return
            if event.key in ("up", "down"):
                event.stop()
                event.prevent_default()
                self.post_message(self.Move(1 if event.key == "down" else -1))
                return
        await super()._on_key(event)

    def insert_text_at_cursor(self, text: str) -> None:
        """Everything typed or pasted passes here; what could act on the terminal is made harmless first."""
        super().insert_text_at_cursor(_one_line(text))

    def replace(self, text: str, start: int, end: int) -> None:
        """What replaces a selection passes here."""
        super().replace(_one_line(text), start, end)

    def validate_placeholder(self, value: str) -> str:
        """Hints come from content files."""
        return _one_line(value)

    def validate_value(self, value: str) -> str:
        """What is set from the program passes here."""
        return _one_line(value)


def _one_line(text: str) -> str:
    return clean(text, _LONGEST).replace("\n", " ").replace("\t", " ")
