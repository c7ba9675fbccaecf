"""A conversation that never ends and has a past of as many messages as are asked for."""

from __future__ import annotations

import sys
from typing import Any

from selfcheck.interview.messages import Message
from tests.app.fakes import FakeConversation, FakeSitting, Step, app_of


def question(number: int) -> str:
    """A question in letters that differ everywhere from the one before, so that all of it is painted anew."""
    letters = "abcdefghijklm" if number % 2 else "nopqrstuvwxyz"
    return "".join(letters[number // 2 // 13**place % 13] for place in range(3)) * 5


class Endless(FakeConversation):
    """Always asks the next question, by number."""

    asked = 0

    def _asking(self) -> list[Message]:
        self.asked += 1
        return [
            Message("say", "Lower the pole until it rests on the floor. Wait half a minute, and bring it up slowly."),
            Message("ask", question(self.asked)),
        ]

    def _next(self) -> list[Message]:
        return self._asking()

    def before(self, count: int) -> list[Any]:
        """`count` messages of turns that are over."""
        said: list[Any] = []
        while len(said) < count:
            said += [Message("said", "6 in"), Message("echo", "6 in, give or take half an inch."), *self._asking()]
        self.asked = 0
        return said


class EndlessSitting(FakeSitting):
    """Begins the conversation with its past."""

    count = 0

    def begin(self, flow: str) -> FakeConversation:
        talk = Endless((Step("depth", "length", "?"),))
        past = talk.before(self.count)
        talk.start = lambda: [*past, *talk._asking()]  # type: ignore[method-assign]
        return talk


if __name__ == "__main__":
    sitting = EndlessSitting()
    sitting.count = int(sys.argv[1])
    app_of(sitting).run()
