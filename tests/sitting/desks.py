"""Pages driven by typed lines, conversations among them, as both faces do it."""

from __future__ import annotations

import shutil
from datetime import date
from pathlib import Path

from selfcheck.loading.place import content_place
from selfcheck.sitting import Sitting
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.steps import Danger, Step, Talk
from selfcheck.storage.working_copy import demo_household

TODAY = date(2026, 6, 1)
PLACE = content_place(own=False)


def demo(folder: Path) -> Path:
    """A copy of the invented household."""
    return Path(shutil.copytree(demo_household(), folder))


def lived_in(folder: Path) -> Path:
    """A copy of the invented household that is not marked as invented."""
    file = demo(folder) / "household.json"
    file.write_text(file.read_text(encoding="utf-8").replace('"demonstration": true', '"demonstration": false'))
    return folder


def opened(folder: Path, begin: bool = False) -> Sitting:
    return Sitting.open(folder, PLACE, TODAY, in_place=True, begin=begin, fixed_day=True)


class Driven:
    """A desk and the conversation that is open on it, if one is."""

    def __init__(self, desk: Desk) -> None:
        self.desk = desk
        self.talk: Talk | None = None
        self.heard: list[str] = []
        self.danger = ""

    def say(self, *lines: str) -> Driven:
        for line in lines:
            if self.talk is None:
                self._took(self.desk.hear(line))
                continue
            self.heard += [message.text for message in self.talk.conversation.hear(line)]
            if self.talk.conversation.ending is not None:
                talk, self.talk = self.talk, None
                self._took(self.desk.ended(talk))
        return self

    def _took(self, step: Step) -> None:
        if isinstance(step, Talk):
            self.talk = step
            self.heard = [message.text for message in step.conversation.start()]
        elif isinstance(step, Danger):
            self.danger = step.line

    @property
    def title(self) -> str:
        return self.desk.page.title

    @property
    def text(self) -> str:
        """All that stands on the page."""
        page = self.desk.page
        parts = [line for part in page.parts for line in (part.title, *part.lines)]
        return "\n".join([page.title, *parts, page.ask, *(way.label for way in page.ways), self.desk.said.text])
