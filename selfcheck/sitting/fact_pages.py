"""What is known of the house and the tank, each fact to be put right by the question that asks for it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache, partial
from typing import TYPE_CHECKING, Any, NamedTuple

from selfcheck.domain.household import Household, Table, Tank
from selfcheck.domain.shapes import vessel
from selfcheck.domain.showing import show_length, show_volume
from selfcheck.interview.collect import error_of, on_record
from selfcheck.interview.context import Context
from selfcheck.interview.recorded import recorded_answer
from selfcheck.interview.septic_record import ORDINALS, tanks_in_order
from selfcheck.interview.septic_told import put_back, with_first
from selfcheck.interview.showing import show_answer, show_within
from selfcheck.loading.conversations import script
from selfcheck.sitting.chart import with_chart
from selfcheck.sitting.desk import words_of
from selfcheck.sitting.small_talks import asking
from selfcheck.sitting.steps import Back, Go, Page, Part, Stay, Step, Talk, Way
from selfcheck.sitting.water import with_meter

if TYPE_CHECKING:
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.interview.script import Script
    from selfcheck.sitting.record_pages import RecordPages


class Fact(NamedTuple):
    """Questions that are asked together, the first of them naming the fact; and the conversation they are from."""

    questions: tuple[str, ...]
    flow: str = "learn"
    joined: str = "and"  # the phrase by which the second answer stands behind the first


#: questions whose fact is told in a way of its own
SIZE, FORM, RULE, METER = "learn_size", "tank_form", "rule_pick", "meter_unit"
HOUSE = (
    Fact(("people", "people_since"), "yearly", "people_now"), Fact(("learn_months",)), Fact(("learn_disposal",)),
    Fact(("learn_bedrooms",)), Fact(("region",), "look_ahead"), Fact((RULE,), "look_ahead"),
    Fact((METER, "meter_now", "meter_before", "meter_before_on"), "look_ahead"),
)  # fmt: skip
FORMS = (
    FORM, "box_length", "box_width", "upright_across", "drum_across", "drum_length", "drum_ends", "oval_width",
    "oval_height", "oval_length", "chart_rows",
)  # fmt: skip
TANK = (
    Fact((SIZE,)), Fact(FORMS, "tank_facts"), Fact(("learn_depth",)), Fact(("learn_material",)),
    Fact(("learn_compartments", "learn_first_share")), Fact(("learn_filter",)), Fact(("outlet_edge",), "tank_facts"),
    Fact(("inlet_side",), "tank_facts"),
)  # fmt: skip
PLACE = (
    Fact(("corner_a", "from_a")), Fact(("corner_b", "from_b")), Fact(("corners_apart",)), Fact(("side",)),
    Fact(("learn_lid_material",)), Fact(("truck_far",), "find_tank"),
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
        parts = [Part(self._lines(HOUSE), words("facts", "house"), "items")]
        ways = [Way(words("facts", "house"), lambda: Go(partial(self._group, words("facts", "house"), HOUSE)))]
        for place in range(max(len(household.tanks), 1)):
            for name, facts in (("tank", TANK), ("place", PLACE)):
                title = self._title(name, place)
                parts.append(Part(self._lines(facts, place), title, "items"))
                ways.append(Way(title, partial(Go, partial(self._group, title, facts, place))))
        named = self._row(words("facts", "name"), household.name or words("facts", "not_known"))
        units = self._row(words("facts", "units"), words("facts", f"units_{household.units}"))
        ways += [Way(words("facts", "add_tank"), self._add_tank)] if 0 < len(household.tanks) < len(ORDINALS) else []
        ways += [Way(named, lambda: Go(self._name)), Way(units, lambda: Go(self._units))]
        told = [(one, 0) for one in HOUSE]
        told += [(one, place) for place in range(max(len(household.tanks), 1)) for one in (*TANK, *PLACE)]
        finds = partial(self._named, told)
        return Page(words("facts", "title"), tuple(parts), tuple(ways), ask=words("facts", "ask"), finds=finds)

    def _named(self, told: Sequence[tuple[Fact, int]], line: str) -> Step | None:
        """The question of the fact that a line names, by all of its name or else by words that only one has."""
        typed, names = words_of(line), [words_of(self._name_of(fact).casefold()) for fact, _ in told]
        same = [one for one, name in zip(told, names, strict=True) if typed == name]
        fits = same or [one for one, name in zip(told, names, strict=True) if typed and typed <= name]
        return self._ask(*fits[0]) if len(fits) == 1 else None

    def _title(self, name: str, place: int) -> str:
        """The title of a page about a tank; with several on record it names the tank."""
        tanks = self._sitting.household.tanks
        title = self._words("facts", name)
        return title if len(tanks) < 2 else self._words("facts", "of_tank", title=title, tank=tanks[place].id)

    def _group(self, title: str, facts: Sequence[Fact], place: int = 0) -> Page:
        told = zip(facts, self._lines(facts, place), strict=True)
        ways = tuple(Way(line, partial(self._ask, fact, place)) for fact, line in told)
        finds = partial(self._named, [(fact, place) for fact in facts])
        return Page(title, ways=ways, ask=self._words("facts", "ask"), finds=finds)

    def _lines(self, facts: Sequence[Fact], place: int = 0) -> tuple[str, ...]:
        return tuple(self._row(*self._told(fact, place)) for fact in facts)

    def _add_tank(self) -> Step:
        """One more tank behind the last one, of which nothing is known yet."""
        household = self._sitting.household
        known = {one.id for one in household.tanks}
        ident = next(name for name in (f"tank-{number}" for number in range(2, 99)) if name not in known)
        fresh = Tank(id=ident, follows=tanks_in_order(household)[-1].id)
        self._sitting.keep_household(
            household.model_copy(update={"tanks": [*household.tanks, fresh]}).model_dump(mode="json", by_alias=True)
        )
        return self._record.stay(self._words("facts", "tank_added", tank=ident))

    def _row(self, name: str, value: str) -> str:
        return self._words("facts", "row", name=name, value=value)

    def _name_of(self, fact: Fact) -> str:
        about = fact.questions[0]
        return self._words("facts", "water_meter") if about == METER else self._script(fact.flow).name_of(about)

    def _told(self, fact: Fact, place: int = 0) -> tuple[str, str]:
        """Name and value of a fact as it is on record."""
        asked, name = self._script(fact.flow), self._name_of(fact)
        about = fact.questions[0]
        own = {FORM: self._shape, RULE: self._rule, METER: self._meter}.get(about)
        if own is not None:
            return name, own(place)
        standing = [question for question in fact.questions if self._called_for(asked, question, about, place)]
        first, *rest = [self._value(asked, one, place, behind=one != about) for one in standing]
        if not first and fact.questions == (SIZE,):
            first = self._worked_out_size(place)
        then = [self._words("facts", fact.joined, then=value) for value in rest if value]
        return name, (first or self._words("facts", "not_known")) + "".join(then)

    def _called_for(self, asked: Script, question: str, about: str, place: int) -> bool:
        """Whether what is on record for the first question calls for this one, where it hangs on the first."""
        node = asked.nodes[about]
        first = recorded_answer(node, on_record(Context(self._sitting.today, self._of(place)), node.writes))
        hangs = [one for one in asked.nodes[question].when if one.question == about]
        return not hangs or (first is not None and all(str(first.value) in one.is_ for one in hangs))

    def _value(self, asked: Script, question: str, place: int, *, behind: bool = False) -> str:
        """An answer that is on record, empty where none is. `behind`: it is told behind another one."""
        household = self._of(place)
        node = asked.nodes[question]
        known = Context(self._sitting.today, household)
        answer = recorded_answer(node, on_record(known, node.writes))
        wide = on_record(known, node.width_writes) if node.width_writes else None
        if answer is not None and isinstance(wide, (int, float)):
            answer = replace(answer, error=error_of(wide))
        if answer is None:
            return ""
        return (show_within if behind else show_answer)(asked, answer, household.units)

    def _of(self, place: int) -> Household:
        """The household with the tank at a place ahead of the others, where questions look for it."""
        household = self._sitting.household
        return with_first(household, place) if place else household

    def _worked_out_size(self, place: int) -> str:
        """The size that the form, or the number of bedrooms, gives; empty where neither is known."""
        from selfcheck.loading.content import sources

        household = self._of(place)
        body = vessel(household.tank(), household.bedrooms)
        if body.basis not in ("shape", "bedrooms"):
            return ""
        table = sources(self._sitting.place).get(body.table)
        size, named = show_volume(body.full_m3, household.units), table.title if table is not None else ""
        return self._words("facts", f"size_from_{body.basis}", size=size, table=named)

    def _shape(self, place: int) -> str:
        shape, units = self._of(place).tank().shape, self._sitting.household.units
        unknown = self._words("facts", "not_known")
        if isinstance(shape, Table) and shape.heights_m and shape.volumes_m3:
            height, volume = show_length(max(shape.heights_m), units), show_volume(max(shape.volumes_m3), units)
            lines = str(len(shape.heights_m))
            return self._words("facts", "shape_table", lines=lines, height=height, volume=volume)
        sizes = {
            name.removesuffix("_m"): unknown if value is None else show_length(value, units)
            for name, value in shape.model_dump().items()
            if name.endswith("_m") and not isinstance(value, list)
        }
        return self._words("facts", f"shape_{shape.kind}", **sizes)

    def _rule(self, place: int) -> str:
        """The rule set that the household goes by."""
        from selfcheck.loading.content import rules

        known = rules(self._sitting.place).get(self._sitting.household.rules)
        return known.title if known is not None else self._words("facts", "not_known")

    def _meter(self, place: int) -> str:
        """The last reading of the water meter."""
        household = self._sitting.household
        if not household.meter:
            return self._words("facts", "not_known")
        last = max(household.meter, key=lambda one: one.on)
        size = show_volume(last.m3, household.units)
        return self._words("facts", "meter", size=size, day=self._record.day(last.on))

    def _ask(self, fact: Fact, place: int) -> Step:
        asked = asking(self._sitting.place, fact.flow, fact.questions)
        talk = self._sitting.small_talk(asked, self._of(place))
        kept = partial(self._kept, fact, place, self._told(fact, place)[1])
        return Talk(talk, lambda talk: self._record.or_told(talk, kept(talk)))

    def _kept(self, fact: Fact, place: int, old: str, talk: Conversation) -> Step:
        words = self._words
        draft: dict[str, Any] = with_chart(with_meter(talk.draft(), self._sitting, talk), talk).get("household", {})
        if talk.ending is None or talk.ending.left or talk.state.answered.danger or not draft:
            return Stay(words("facts", "same"))
        self._sitting.keep_household(put_back(draft, place) if place else draft)
        name, value = self._told(fact, place)
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
