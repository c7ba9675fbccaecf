"""A look at a pretend tank, graded: each reading, what was named as wrong, and the verdict, against the truth."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from selfcheck.domain.check import Check, Readings
from selfcheck.domain.findings import rank
from selfcheck.domain.showing import show_length
from selfcheck.loading.content import rules as all_rules
from selfcheck.loading.content import signs as all_signs
from selfcheck.practice.grading import ReadingGrade, TrueVerdict, grade_readings, near, true_verdict
from selfcheck.practice.tank import SOUND, PracticeTank, Truth
from selfcheck.sitting.desk import Drawn, Go, Page, Part, Way
from selfcheck.sitting.verdicts import judged

if TYPE_CHECKING:
    from selfcheck.domain.verdict import Judgement
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.practice_pages import PracticePages

#: what may be named as wrong → the fields of a check that it stands for
GROUPS = {
    "level": ("level",), "tees": ("inlet_tee", "outlet_tee"), "wall": ("wall",), "lid": ("lid", "under_lid"),
    "inside": ("smell", "surface", "inflow", "roots"), "outside": ("yard", "house"),
}  # fmt: skip
#: what is as it should be beside what a sound tank shows
FINE = {"smell": ("none", "earthy"), "surface": ("brown", "no_crust")}


def graded(pages: PracticePages, tank: PracticeTank, check: Check, talk: Conversation) -> Page:
    """The page with the grades. `check`: what was to be read; `talk`: what was said to it."""
    words, place = pages.words, pages.sitting.place
    truth = tank.truth(check.on)
    rules = all_rules(place)[tank.household.rules]
    true = true_verdict(tank, truth, rules, all_signs(place))
    typed = typed_check(check, talk)
    found = judged(place, tank.household, [typed], tank.pump_outs, check.on)
    parts = (
        Part(_readings(pages, check, typed, truth), words("grade", "readings"), "items"),
        Part((_signs(pages, truth, talk),), words("grade", "signs"), "items"),
        Part(_verdict(pages, found, true, talk), words("grade", "verdict"), "items"),
        Part(_why(pages, found), words("grade", "why"), "items"),
    )
    ways = (
        Way(words("grade", "truth"), lambda: Go(partial(_truth, pages, tank, truth)), ("truth", "see")),
        Way(words("story", "another"), pages.another, ("another",)),
    )
    return Page(words("grade", "title"), parts, ways)


def typed_check(check: Check, talk: Conversation) -> Check:
    """The look with the lengths as they were typed in place of those that were drawn."""
    from selfcheck.sitting.practice_pages import scum_way

    typed = talk.draft().get("check", {}).get("seen", {}).get("readings", {})
    readings = {"liquid_depth": check.seen.readings.liquid_depth, "sludge": typed.get("sludge", [])}
    crust = talk.state.answered.number("pretend_crust")
    if crust is not None:
        readings[scum_way(check)] = [{"m": crust}]
    seen = check.seen.model_copy(update={"readings": Readings.model_validate(readings)})
    return check.model_copy(update={"seen": seen})


def wrong(truth: Truth) -> set[str]:
    """The groups in which something is truly wrong."""
    return {
        group
        for group, fields in GROUPS.items()
        if any(truth.signs[name] not in (SOUND[name], *FINE.get(name, ())) for name in fields)
    }


def _readings(pages: PracticePages, check: Check, typed: Check, truth: Truth) -> tuple[str, ...]:
    words, units = pages.words, pages.units
    by_kind: dict[str, list[ReadingGrade]] = {}
    for one in grade_readings(truth, typed.seen.readings):
        by_kind.setdefault(one.kind, []).append(one)
    lines = []
    for kind in ("sludge", "scum_total", "scum_above", "scum_below"):
        shown = getattr(check.seen.readings, kind)[:2]
        names = ("first", "second") if kind == "sludge" else (kind,)
        for at, (name, strip) in enumerate(zip(names, shown, strict=False)):
            label = words("look", name)
            mine = by_kind.get(kind, [])
            if at >= len(mine):
                lines.append(words("grade", "left_out", name=label))
                continue
            off = abs(mine[at].read_m - strip.m)
            how = "good" if off <= 0.0254 * 0.75 else "fair" if off <= 0.0254 * 1.5 else "off"
            read, drawn, true = (show_length(size, units) for size in (mine[at].read_m, strip.m, mine[at].true_m))
            lines.append(
                words("grade", "reading", name=label, read=read, shown=drawn, true=true, how=words("grade", how))
            )
    return tuple(lines)


def _signs(pages: PracticePages, truth: Truth, talk: Conversation) -> str:
    words = pages.words
    picked = talk.state.answered.value("pretend_signs")
    named = set(picked) if isinstance(picked, tuple) else set()
    truly = wrong(truth)
    if named == truly:
        return words("grade", "signs_right" if truly else "signs_none")
    said = []
    for name, groups in (("signs_missed", truly - named), ("signs_extra", named - truly)):
        if groups:
            listed = ", ".join(words("grade", group) for group in GROUPS if group in groups)
            said.append(words("grade", name, names=listed))
    return " ".join(said)


def _verdict(pages: PracticePages, found: Judgement, true: TrueVerdict, talk: Conversation) -> tuple[str, ...]:
    words, told = pages.words, pages.sitting.verdict_words()
    mine = str(talk.state.answered.value("pretend_verdict"))
    lines = [
        words("grade", "yours", verdict=told.say("headline", mine)),
        words("grade", "called_for", verdict=told.say("headline", true.verdict)),
    ]
    errors = {one.limit: one.error for one in found.standings if one.error is not None}
    close = near(true, errors)
    if mine == true.verdict:
        lines.append(words("grade", "match"))
    elif true.verdict == "cannot_tell":
        lines.append(words("grade", "nobody_can"))
    elif mine == "cannot_tell" and close:
        lines.append(words("grade", "unknown"))
    elif rank(mine) < rank(true.verdict):  # type: ignore[arg-type]
        lines.append(words("grade", "milder"))
    else:
        lines.append(words("grade", "stricter"))
    lines += [words("grade", "close")] if close else []
    return (*lines, words("grade", "by_program", verdict=told.say("headline", found.verdict)))


def _why(pages: PracticePages, found: Judgement) -> tuple[str, ...]:
    from selfcheck.report.wording import verdict_screen

    return verdict_screen(found, pages.sitting.verdict_words(), pages.units).why


def _truth(pages: PracticePages, tank: PracticeTank, truth: Truth) -> Page:
    """The tank as it is built and filled, drawn and told."""
    from selfcheck.domain.layers import layers
    from selfcheck.drawing.section import as_lines, as_words, describe
    from selfcheck.drawing.section_picture import SectionWords
    from selfcheck.sitting.pictures import words_of

    exact = {"sludge": truth.sludge, "scum_total": truth.scum, "liquid_depth": truth.liquid_depth}
    readings = Readings.model_validate({name: [{"m": value}] for name, value in exact.items()})
    outlet = {"outlet_bottom_below_surface_m": truth.outlet_below, "outlet_top_above_surface_m": truth.outlet_top}
    found = layers(tank.tank.model_copy(update=outlet), tank.vessel, readings)
    known = {name: word for name, word in words_of(pages.sitting.place, "section").items() if name != "title"}
    picture = describe(tank.vessel, found, (), None, SectionWords(**known))
    units = pages.units
    drawn = Drawn(lambda width, height: as_lines(picture, width, height, units), tuple(as_words(picture, units)))
    return Page(pages.words("grade", "truth_title"), (Part(drawn.words, kind="items"),), drawn=drawn)
