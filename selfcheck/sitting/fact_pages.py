"""What is known of the house and the tank, each fact to be put right by the question that asks for it."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache, partial
from typing import TYPE_CHECKING, Any, NamedTuple

from selfcheck.domain.shapes import vessel
from selfcheck.domain.showing import show_length, show_volume
from selfcheck.interview.collect import on_record
from selfcheck.interview.context import Context
from selfcheck.interview.recorded import recorded_answer
from selfcheck.interview.showing import show_answer
from selfcheck.loading.conversations import script
from selfcheck.sitting.desk import Back, Go, Page, Part, Stay, Step, Talk, Way
from selfcheck.sitting.small_talks import asking

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script
    from selfcheck.sitting.record_pages import RecordPages


class Fact(NamedTuple):
    """Questions that are asked together, the first of them naming the fact; and the conversation they are from."""

    questions: tuple[str, ...]
    flow: str = "learn"
    joined: str = "and"  # the phrase by which the second answer stands behind the first


HOUSE = (
    Fact(("people", "people_since"), "yearly", "people_now"), Fact(("learn_months",)), Fact(("learn_disposal",)),
    Fact(("learn_bedrooms",)),
)  # fmt: skip
SIZE = "learn_size"
TANK = (
    Fact((SIZE,)), Fact(("learn_depth",)), Fact(("learn_material",)), Fact(("learn_compartments",)),
    Fact(("learn_filter",)),
)  # fmt: skip
PLACE = (
    Fact(("corner_a", "from_a")), Fact(("corner_b", "from_b")), Fact(("corners_apart",)), Fact(("side",)),
    Fact(("learn_lid_material",)),
)  # fmt: skip
NAME_CAP = 80


class FactPages:
    """The facts in four pages: the house, the tank, where the lid is, and how things are written."""

    def __init__(self, record: RecordPages) -> None:
        self._record = record
        self._sitting = record.sitting
        self._words = record.words
        self._script = cache(partial(script, record.sitting.place))

    def root(self) -> Page:
        """All facts to read, and the ways to change them."""
        words, household = self._words, self._sitting.household
        groups = (("house", HOUSE), ("tank", TANK), ("place", PLACE))
        parts = [Part(self._lines(facts), words("facts", name), "items") for name, facts in groups]
        shape = self._row(words("facts", "shape"), self._shape())
        parts[1] = Part((*parts[1].lines, shape), parts[1].title, "items")
        ways = [Way(words("facts", name), partial(Go, partial(self._group, name, facts))) for name, facts in groups]
        named = self._row(words("facts", "name"), household.name or words("facts", "not_known"))
        units = self._row(words("facts", "units"), words("facts", f"units_{household.units}"))
        ways += [Way(named, lambda: Go(self._name)), Way(units, lambda: Go(self._units))]
        return Page(words("facts", "title"), tuple(parts), tuple(ways), ask=words("facts", "ask"))

    def _group(self, name: str, facts: Sequence[Fact]) -> Page:
        ways = tuple(Way(line, partial(self._ask, fact)) for fact, line in zip(facts, self._lines(facts), strict=True))
        return Page(self._words("facts", name), ways=ways, ask=self._words("facts", "ask"))

    def _lines(self, facts: Sequence[Fact]) -> tuple[str, ...]:
        return tuple(self._row(*self._told(fact)) for fact in facts)

    def _row(self, name: str, value: str) -> str:
        return self._words("facts", "row", name=name, value=value)

    def _told(self, fact: Fact) -> tuple[str, str]:
        """Name and value of a fact as it is on record."""
        asked = self._script(fact.flow)
        first, *rest = [self._value(asked, question) for question in fact.questions]
        if not first and fact.questions == (SIZE,):
            first = self._worked_out_size()
        then = [self._words("facts", fact.joined, then=value) for value in rest if value]
        return asked.name_of(fact.questions[0]), (first or self._words("facts", "not_known")) + "".join(then)

    def _value(self, asked: Script, question: str) -> str:
        household = self._sitting.household
        node = asked.nodes[question]
        answer = recorded_answer(node, on_record(Context(self._sitting.today, household), node.writes))
        return show_answer(asked, answer, household.units) if answer is not None else ""

    def _worked_out_size(self) -> str:
        """The size that the form, or the number of bedrooms, gives; empty where neither is known."""
        household = self._sitting.household
        body = vessel(household.tank(), household.bedrooms)
        if body.basis not in ("shape", "bedrooms"):
            return ""
        return self._words("facts", f"size_from_{body.basis}", size=show_volume(body.full_m3, household.units))

    def _shape(self) -> str:
        shape, units = self._sitting.household.tank().shape, self._sitting.household.units
        unknown = self._words("facts", "not_known")
        sizes = {
            name.removesuffix("_m"): unknown if value is None else show_length(value, units)
            for name, value in shape.model_dump().items()
            if name.endswith("_m") and not isinstance(value, list)
        }
        return self._words("facts", f"shape_{shape.kind}", **sizes)

    def _ask(self, fact: Fact) -> Step:
        talk = self._sitting.small_talk(asking(self._sitting.place, fact.flow, fact.questions))
        return Talk(talk, partial(self._kept, fact, self._told(fact)[1]))

    def _kept(self, fact: Fact, old: str, talk: Conversation) -> Step:
        words = self._words
        draft: dict[str, Any] = talk.draft().get("household", {})
        if talk.ending is None or talk.ending.left or talk.state.answered.hazards or not draft:
            return Stay(words("facts", "same"))
        self._sitting.keep_household(draft)
        name, value = self._told(fact)
        return self._record.stay(
            words("facts", "same") if value == old else words("facts", "kept", name=name, value=value, old=old)
        )

    def _name(self) -> Page:
        ask = self._words("facts", "ask_name")
        return Page(self._words("facts", "name"), hear=lambda line: self._set("name", line[:NAME_CAP]), ask=ask)

    def _units(self) -> Page:
        words = self._words
        ways = tuple(
            Way(words("facts", f"units_{units}"), partial(self._set, "units", units)) for units in ("us", "metric")
        )
        return Page(words("facts", "units"), ways=ways, ask=words("facts", "ask_units"))

    def _set(self, name: str, value: str) -> Step:
        words, sitting = self._words, self._sitting
        whole = sitting.household.model_dump(mode="json", by_alias=True)
        old, shown = str(whole[name]), value
        sitting.keep_household({**whole, name: value})
        if name == "units":
            old, shown = words("facts", f"units_{old}"), words("facts", f"units_{value}")
        old = old or words("facts", "not_known")
        kept = (
            words("facts", "same")
            if old == shown
            else words("facts", "kept", name=words("facts", name), value=shown, old=old)
        )
        return Back(1, sitting.trouble or kept)
