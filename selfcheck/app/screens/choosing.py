"""What every page with numbered choices and a line to type on has in common."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.screen import Screen

from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.app.widgets.choices import Choices

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp


class ChoosingScreen(Screen[None]):
    """A choice is picked by its number key or by a click; the arrow keys move among them."""

    AUTO_FOCUS = "AnswerInput"

    @property
    def selfcheck(self) -> SelfcheckApp:
        """The program this page belongs to."""
        from selfcheck.app.app import SelfcheckApp

        assert isinstance(self.app, SelfcheckApp)
        return self.app

    def pick(self, number: int) -> None:
        """Do what the choice of that number stands for; a number that no choice has does nothing."""
        raise NotImplementedError

    def heeds(self, key: AnswerInput.Number) -> bool:
        """Whether a number key may pick by itself at this moment."""
        return True

    def picks_at_once(self, number: int) -> bool:
        """Whether that number key would pick a choice with no Enter behind it."""
        answer, choices = self.query_one(AnswerInput), self.query_one(Choices)
        free = answer.has_focus and answer.picks and not answer.value
        return free and choices.has(number) and not choices.several

    @on(AnswerInput.Number)
    def _number(self, event: AnswerInput.Number) -> None:
        if self.heeds(event):
            self.pick(event.number)

    @on(Choices.Picked)
    def _picked(self, event: Choices.Picked) -> None:
        self.pick(event.number)

    @on(AnswerInput.Move)
    def _move(self, event: AnswerInput.Move) -> None:
        self.query_one(Choices).move(event.by)
