"""The page that a conversation ends in, where it has one of its own."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import TYPE_CHECKING, Any

from selfcheck.interview.answers import Answer

if TYPE_CHECKING:
    from selfcheck.domain.after_pumping import SeenEmpty
    from selfcheck.domain.verdict import Judgement
    from selfcheck.domain.what_if import Change
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.report.ahead import Water
    from selfcheck.report.parts import PageWords, PartedPage
    from selfcheck.report.place import Plan
    from selfcheck.sitting.table import Sitting

LANGUAGE = "en"
SKETCH = (56, 18)  # cells and lines of the sketch: it fits the narrowest terminal


def page_of(sitting: Sitting, conversation: Conversation) -> PartedPage | None:
    """The page of this conversation; None where the verdict, or nothing, follows.

    After a hazard the verdict follows, or a page that has it on top; after a danger nothing else does.
    """
    ending, flow = conversation.ending, conversation.script.flow.id
    make = _PAGES.get(flow)
    if make is None or ending is None or ending.left or ending.outcome == "danger":
        return None
    if conversation.state.answered.hazards and flow not in _VERDICT_ON_TOP:
        return None
    return make(sitting, conversation)


def ahead(sitting: Sitting, change: Change | None = None, water: Water | None = None) -> PartedPage:
    """What lies ahead; with a comparison for a change, or with what was learned of the water."""
    from selfcheck.domain.what_if import compare, each_limit
    from selfcheck.report.ahead import ahead_page, nothing_ahead

    case, judgement, words = sitting.case(), sitting.judgement(), sitting.verdict_words()
    verdict = sitting.verdict()
    if not (sitting.checks or sitting.pump_outs):
        return nothing_ahead(judgement, page_words(sitting, "ahead_page"), words.sources, water, verdict.always)
    return ahead_page(
        judgement,
        each_limit(case, judgement),
        page_words(sitting, "ahead_page"),
        words.sources,
        compared=compare(case, change) if change is not None else None,
        water=water,
        rule_rows=verdict.rule_rows,
        always=verdict.always,
    )


def page_words(sitting: Sitting, name: str) -> PageWords:
    """The words of one kind of page."""
    from selfcheck.loading.conversations import texts
    from selfcheck.report.parts import PageWords

    return PageWords(f"{LANGUAGE}/words/{name}.toml", texts(sitting.place, name, LANGUAGE))


def _ahead(sitting: Sitting, conversation: Conversation) -> PartedPage:
    told = _told(conversation)
    wish = told["ahead_what"].value if "ahead_what" in told else None
    change = _change(told) if wish == "what_if" else None
    return ahead(sitting, change, _water(sitting, told) if wish == "water" else None)


def _told(conversation: Conversation) -> dict[str, Answer]:
    return {answer.question: answer for answer in conversation.answers if answer.state == "value"}


def _change(told: dict[str, Answer]) -> Change:
    """What was tried; a change whose figure is not known is left out."""
    from selfcheck.domain.what_if import Change

    picked = told["if_what"].value if "if_what" in told else ()
    picked = picked if isinstance(picked, tuple) else ()

    def of(option: str) -> Any:
        answer = told.get(f"if_{option}")
        return answer.value if answer is not None and option in picked else None

    return Change(
        people=of("people"),
        months_per_year=of("months"),
        disposal=of("disposal"),
        tank_m3=of("size"),
        rules=of("rules"),
        residue_m=of("residue"),
    )


def _water(sitting: Sitting, told: dict[str, Answer]) -> Water:
    from selfcheck.domain.flow import flow, leak
    from selfcheck.report.ahead import Water

    judgement = sitting.judgement()
    meter, toilet = told.get("leak_meter"), told.get("leak_toilet")
    leaks = leak(
        meter_turns=meter is not None and meter.value == "turns",
        toilet_runs=toilet is not None and toilet.value == "runs_on",
    )
    people = judgement.forecast.people.people[-1]
    return Water(flow(people, sitting.household.meter, sitting.today), judgement.detention_days, leaks)


def _pumped(sitting: Sitting, conversation: Conversation) -> PartedPage:
    """What was seen in the empty tank, and what is left in it costs, with the verdict of the record on top."""
    from selfcheck.domain.after_pumping import residue
    from selfcheck.report.pumped import Pumped, pumped_page
    from selfcheck.report.wording import verdict_screen
    from selfcheck.text import clean

    draft = conversation.draft()
    pump_out = draft.get("pump_out", {})
    told = pump_out.get("on")
    on = date.fromisoformat(told) if isinstance(told, str) else None
    seen = _seen_empty(conversation, pump_out, draft.get("check", {}).get("seen", {}))
    judgement = _of_tank(sitting, conversation)
    left = None
    if seen.left_m is not None:
        day = max(on or sitting.today, sitting.today)
        left = residue(judgement.forecast, judgement.rules.limits, seen.left_m, day)
    words = sitting.verdict_words()
    wide = pump_out.get("within_days")
    verdict, about = sitting.verdict(), sitting.judgement()
    if about.others and about.verdict == judgement.verdict:
        verdict, about = verdict_screen(judgement, words, sitting.household.units), judgement
    tank = clean(about.tank.id, 60) if sitting.judgement().others else ""
    pumped = Pumped(on, seen, left, wide if isinstance(wide, int) else None, tank)
    return pumped_page(pumped, verdict, page_words(sitting, "pumped_page"), words, sitting.household.units)


def _of_tank(sitting: Sitting, conversation: Conversation) -> Judgement:
    """The judgement of the tank that the conversation was about."""
    from selfcheck.sitting.several_tanks import tank_told_of

    about, whole = tank_told_of(conversation), sitting.judgement()
    return next((one for one in (whole, *whole.others) if one.tank.id == about.id), whole)


def _seen_empty(conversation: Conversation, pump_out: Mapping[str, Any], check: Mapping[str, Any]) -> SeenEmpty:
    """What the answers say of the empty tank; "unknown" where it was asked and could not be told."""
    from selfcheck.domain.after_pumping import SeenEmpty

    answers = {answer.question: answer for answer in conversation.answers}

    def told(question: str, values: Mapping[str, str]) -> Any:
        answer = answers.get(question)
        if answer is None:
            return None
        return values.get(str(answer.value)) if answer.state == "value" else "unknown"

    depth = pump_out.get("sludge_left_m")
    looked = answers.get("pumped_parts")
    untold = "unknown" if looked is not None and looked.state != "value" else None

    def part(name: str) -> Any:
        return check.get(name) or untold

    return SeenEmpty(
        all_out=told("left", {"nothing": "yes", "film": "yes", "more": "no"}),
        both_compartments=told("compartments", {"both": "yes", "one_of_two": "no"}),
        through_manhole=told("through", {"manhole": "yes", "small_pipe": "no"}),
        inlet_tee=part("inlet_tee"),
        outlet_tee=part("outlet_tee"),
        wall=part("wall"),
        divider=told("pumped_divider", {"sound": "sound", "damaged": "damaged", "missing": "missing"}),
        filter_cleaned=told("pumped_filter", {"cleaned": "yes", "not_cleaned": "no"}),
        backflow=told("backflow", {"none": "none", "slight": "slight", "strong": "strong"}),
        left_m=float(depth) if isinstance(depth, (int, float)) else None,
    )


def _place(sitting: Sitting, conversation: Conversation) -> PartedPage:
    """The place of the lid in words and as a sketch, or how to go on with the search."""
    from selfcheck.drawing.sketch import as_lines, as_words, describe
    from selfcheck.loading.conversations import texts
    from selfcheck.report.place import place_page
    from selfcheck.sitting.several_tanks import tank_told_of

    units, words = sitting.household.units, page_words(sitting, "place_page")
    sources = sitting.verdict_words().sources
    if conversation.ending is not None and conversation.ending.outcome != "tank_found":
        return place_page((), (), _plan(conversation), words, sources, units)
    lid = sitting.household.tank(tank_told_of(conversation).id).place
    picture = describe(lid, texts(sitting.place, "pictures", LANGUAGE)["sketch"])
    told = as_words(picture, units) if picture.from_first is not None or picture.from_second is not None else []
    drawn = ["".join(span.text for span in line).rstrip() for line in as_lines(picture, *SKETCH, units)]
    return place_page(told, drawn if picture.lid is not None else [], None, words, sources, units)


def _plan(conversation: Conversation) -> Plan:
    from selfcheck.domain.locate import LIKELY
    from selfcheck.interview.context import Answered
    from selfcheck.interview.septic_find import search_of, top_at
    from selfcheck.report.place import Plan

    answered = Answered()
    answered.update({answer.question: answer for answer in conversation.answers})
    found = search_of(answered, conversation.context)
    distances = sorted({LIKELY[0], LIKELY[1], *(strip.far for strip in found.strips)})
    depths = [(far, top_at(answered, far)) for far in distances]
    return Plan(
        found,
        tuple((far, depth) for far, depth in depths if depth is not None),
        answered.chosen("find_call", "marked"),
    )


_VERDICT_ON_TOP = ("after_pump_out",)
_PAGES: dict[str, Callable[[Sitting, Conversation], PartedPage]] = {
    "look_ahead": _ahead,
    "after_pump_out": _pumped,
    "find_tank": _place,
}
