"""The Enter behind a number key that picked by itself: it belongs to the number, and closes no page."""

from __future__ import annotations

from typing import ClassVar

from textual import events
from textual.app import App

from selfcheck.app.screens.choosing import ChoosingScreen


class NumberThenEnter(App[int]):
    """Looks at every key before the page that is open does."""

    #: an Enter so soon after the number was meant for it [s]; our choice, longer than a slow hand takes from the one
    #: key to the other, and too short to have read the page that opened
    SOON: ClassVar[float] = 1.5
    _picked_at = float("-inf")
    _typing = False

    async def on_event(self, event: events.Event) -> None:
        """Such an Enter goes nowhere."""
        if isinstance(event, events.Key) and not event.is_forwarded:
            for_the_number = event.key == "enter" and event.time - self._picked_at < self.SOON
            self._remember(event)
            if for_the_number:
                return
        await super().on_event(event)

    def _remember(self, key: events.Key) -> None:
        """Notes when a number picked by itself, and whether more than a number is being typed."""
        sign = key.character or ""
        number = int(sign) if sign.isascii() and sign.isdecimal() and not self._typing else 0
        page = self.screen
        picking = number > 0 and isinstance(page, ChoosingScreen) and page.picks_at_once(number)
        self._picked_at = key.time if picking else float("-inf")
        self._typing = sign != "" and sign.isprintable() and not picking
