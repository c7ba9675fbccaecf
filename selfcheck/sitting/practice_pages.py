"""Practice: a pretend tank of a number, read, judged and graded. Nothing of it touches the record.

A danger that is told meanwhile is one at the household's own tank, and is kept and shown as anywhere else.
"""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from selfcheck.domain.showing import show_day, show_length
from selfcheck.loading.content import rules as all_rules
from selfcheck.loading.conversations import script
from selfcheck.practice.dice import Dice
from selfcheck.practice.readings import look
from selfcheck.practice.tank import PracticeTank, draw
from selfcheck.sitting.desk import Desk
from selfcheck.sitting.endings import page_words
from selfcheck.sitting.steps import Drawn, Go, Page, Part, Stay, Step, Talk, Way

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.drawing.ruled import Strip
    from selfcheck.practice.readings import Look
    from selfcheck.sitting.table import Sitting

#: The day on which every pretend tank is first looked at, so that a number means the same tank on any day.
FIRST_DAY = date(2026, 6, 1)
MOST_NUMBER = 9999
MOST_YEARS = 30
YEAR = timedelta(days=365.25)
#: what pretend tanks do not have
NOT_TOLD = ("filter", "alarm", "people_hurt")
#: ways of reading the crust, of which a look has one
SCUM = ("scum_total", "scum_above", "scum_below")


class PracticePages:
    """The pages of practice for whoever sits at the table; only their units are taken from the household."""

    def __init__(self, sitting: Sitting) -> None:
        self.sitting = sitting
        self.units = sitting.household.units
        self.words = page_words(sitting, "practice")
        self.seen_words = page_words(sitting, "record")
        self._tries = 0

    def desk(self) -> Desk:
        """A desk that begins with the choice of a tank."""
        phrases = page_words(self.sitting, "record")
        return Desk(
            self.start,
            lambda name, **fills: phrases("desk", name, **fills),
            self.sitting.ask_back,
            self.sitting.ask_near,
            self.sitting.command_in,
            own_tank=False,
        )

    def start(self) -> Page:
        """Which tank is taken."""
        words = self.words
        ways = (
            Way(words("start", "by_number"), lambda: Go(self._number), ("number",)),
            Way(words("start", "any"), self._any, ("any",)),
        )
        return Page(words("start", "title"), (Part((words("start", "about"),)),), ways)

    def _number(self) -> Page:
        def hear(line: str) -> Step:
            number = whole_number(line, MOST_NUMBER)
            if number is None:
                return Stay(self.words("start", "number_odd", most=str(MOST_NUMBER)), "trouble")
            return self._take(number, replace=True)

        return Page(self.words("start", "title"), hear=hear, ask=self.words("start", "ask_number"))

    def _any(self) -> Step:
        self._tries += 1
        return self._take(Dice(self.sitting.today.toordinal() * 100 + self._tries).one_of(range(1, MOST_NUMBER + 1)))

    def another(self) -> Step:
        """Any other tank in the place of this one and of its grades."""
        step = self._any()
        assert isinstance(step, Go)
        return Go(step.page, replace=True)

    def _take(self, number: int, replace: bool = False) -> Step:
        tank = draw(number, FIRST_DAY)
        return Go(partial(self.story, tank, FIRST_DAY), replace)

    def story(self, tank: PracticeTank, day: date) -> Page:
        """The house and its tank as of a day, and what one may do."""
        words, told = self.words, tank.household.occupancy
        lived = [one for one in told if one.from_ <= day] or told[:1]
        lines = [
            words(
                "story", "house", people=f"{one.people:g}", day=self.day(one.from_), months=f"{one.months_per_year:g}"
            )
            for one in lived
        ]
        record = tank.household.tank()
        lines += [
            words("story", f"grinder_{lived[-1].disposal}"),
            words(
                "story",
                "tank",
                material=words("story", record.material or "concrete"),
                form=words("story", record.shape.kind),
                depth=show_length(record.liquid_depth_m or tank.vessel.liquid_depth_m, self.units),
            ),
            words("story", "pumped", day=self.day(max(one.on for one in tank.pump_outs if one.on <= day))),
            words("story", "now", day=self.day(day)),
            words("story", "rule", rule=all_rules(self.sitting.place)[tank.household.rules].title),
        ]
        ways = [Way(words("story", "read"), partial(self._look, tank, day), ("read", "look"))]
        if _years_left(day):
            ways.append(Way(words("story", "year"), partial(self._pass, tank, day), ("year", "wait")))
            ways.append(Way(words("story", "years"), lambda: Go(partial(self._years, tank, day)), ("years",)))
            ways.append(Way(words("story", "pump"), partial(self._pass, tank.pumped(day).mended(day), day), ("pump",)))
        title = words("story", "title", number=str(tank.seed), years=str(MOST_YEARS - _years_left(day)))
        return Page(title, (Part(tuple(lines), kind="items"),), tuple(ways))

    def day(self, day: date) -> str:
        """A day as the household writes it."""
        return show_day(day, self.units)

    def _pass(self, tank: PracticeTank, day: date, years: int = 1) -> Step:
        return Go(partial(self.story, tank, day + years * YEAR), replace=True)

    def _years(self, tank: PracticeTank, day: date) -> Page:
        """How many years pass."""
        words, most = self.words, _years_left(day)

        def hear(line: str) -> Step:
            said = whole_number(line, most)
            if said is None:
                return Stay(words("story", "years_odd", most=str(most)), "trouble")
            return self._pass(tank, day, said)

        return Page(words("story", "years"), hear=hear, ask=words("story", "ask_years", most=str(most)))

    def _look(self, tank: PracticeTank, day: date) -> Step:
        """One look: what is drawn and told, and the conversation that takes the readings in."""
        looked = look(tank.truth(day), Dice(tank.seed * 100 + (day - FIRST_DAY).days), slips=False)
        seen = looked.check
        strips = self._strips(seen)
        talk = self.sitting.small_talk(script(self.sitting.place, "practice_read"))
        before = (
            self.words("look", "seen", seen=_sentence("; ".join(self.signs(seen)))),
            self.words("look", "depth", depth=show_length(seen.seen.readings.liquid_depth[0].m, self.units)),
        )
        return Talk(talk, partial(self._grade, tank, looked), self._drawn(strips), before)

    def signs(self, check: Check) -> list[str]:
        """What is to be seen at a look, thing by thing; nothing of what this tank does not have."""
        from selfcheck.sitting.check_page import signs

        told = check.seen.model_copy(update=dict.fromkeys(NOT_TOLD))
        seen = signs(self.seen_words, check.model_copy(update={"seen": told}))
        return list(seen)

    def _strips(self, check: Check) -> list[Strip]:
        from selfcheck.drawing.ruled import Strip

        words, readings = self.words, check.seen.readings
        strips = [
            Strip(words("look", name), reading.m, "sludge")
            for name, reading in zip(("first", "second"), readings.sludge, strict=False)
        ]
        way = scum_way(check)
        return [*strips, Strip(words("look", way), getattr(readings, way)[0].m, "scum")]

    def _drawn(self, strips: list[Strip]) -> Drawn:
        from selfcheck.drawing.ruled import as_lines, as_words

        units, words = self.units, dict(self.words.of("look"))
        return Drawn(
            lambda width, height: as_lines(strips, width, height, units), tuple(as_words(strips, words, units))
        )

    def _grade(self, tank: PracticeTank, looked: Look, talk: object) -> Step:
        from selfcheck.interview.dialogue import Conversation
        from selfcheck.sitting.practice_grades import graded
        from selfcheck.sitting.record_pages import RecordPages

        assert isinstance(talk, Conversation)
        if talk.state.answered.hazards:
            return RecordPages(self.sitting).or_told(talk, Stay())
        if talk.ending is None or talk.ending.left:
            return Stay()
        return Go(partial(graded, self, tank, looked, talk))


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def whole_number(line: str, most: int) -> int | None:
    """The number from 1 to `most` that a line is; None for anything else."""
    number = line.strip().rstrip(".")
    if not (number.isascii() and number.isdecimal() and 1 <= int(number[:6]) <= most):
        return None
    return int(number)


def _years_left(day: date) -> int:
    return MOST_YEARS - round((day - FIRST_DAY) / YEAR)


def scum_way(check: Check) -> str:
    """The one way in which the crust was read at a look."""
    return next(name for name in SCUM if getattr(check.seen.readings, name))
