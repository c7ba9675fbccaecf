"""Pages with numbered ways on, line by line."""

from __future__ import annotations

from collections.abc import Callable

from selfcheck.plain import pages
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.waiting import patience
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.steps import Danger, Page, Part, Stay, Step, Talk


class DeskFace:
    """Shows the pages of a desk and takes in what is typed.

    `line` gives one line; `converse` holds a conversation; `danger` takes up a line that tells of one.
    """

    def __init__(
        self,
        out: Speaker,
        words: Words,
        line: Callable[[], str],
        converse: Callable[[Desk, Talk], None],
        danger: Callable[[str], None],
    ) -> None:
        self._out = out
        self._words = words
        self._line = line
        self._converse = converse
        self._danger = danger

    def run(self, desk: Desk) -> None:
        """Until the first page is left."""
        shown: object = None
        told_of_enter = False
        while not desk.over:
            with patience(self._out, desk.phrases("working"), self._words):
                page = desk.page
            if desk.said.text:
                self._out.gap()
                self._out.say(desk.said.text)
                if desk.said.source:
                    self._out.say(self._words("talk", "source", source=desk.said.source), indent="  ")
            if (page.title, page.parts, page.verdict) != shown:
                self._show(page)
            shown = (page.title, page.parts, page.verdict)
            self._ask(page)
            if not told_of_enter:
                self._out.say(f"({self._words('menu', 'enter_back')})")
                told_of_enter = True
            line = self._line()
            if not line.strip():
                desk.back()
                continue
            with patience(self._out, desk.phrases("working"), self._words):
                step: Step = desk.hear(line)
            if isinstance(step, Talk):
                self._converse(desk, step)
                shown = None
            elif isinstance(step, Danger):
                self._danger(step.line)
            elif isinstance(step, Stay) and step.again:
                shown = None

    def _show(self, page: Page) -> None:
        self._out.gap()
        self._out.say(page.title)
        if page.verdict is not None:
            pages.show(page.verdict, self._out, self._words)
        for part in page.parts:
            if part.lines:
                self._part(part)
        told = {line for part in page.parts for line in part.lines}
        for line in page.drawn.words if page.drawn is not None else ():
            if line not in told:
                self._out.say(line, indent="  ", first="- ")

    def _part(self, part: Part) -> None:
        self._out.gap()
        if part.title:
            self._out.say(f"{part.title}:")
        for line in part.lines:
            if part.kind == "fixed":
                self._out.line(line)
            elif part.kind == "items":
                self._out.say(line, indent="  ", first="- ")
            else:
                self._out.say(line)

    def _ask(self, page: Page) -> None:
        self._out.gap()
        if page.ask:
            self._out.say(page.ask)
        for number, way in enumerate(page.ways, 1):
            self._out.choice(number, way.label)
        if page.hint:
            self._out.say(f"({page.hint})")
