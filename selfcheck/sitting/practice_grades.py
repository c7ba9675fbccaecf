"""A look at a pretend tank, graded: each reading, what was named as wrong, and the verdict, against the truth."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from selfcheck.domain.agreement import AGREE_WITHIN_M
from selfcheck.domain.check import Check, Readings
from selfcheck.domain.findings import rank
from selfcheck.domain.judging import judge
from selfcheck.domain.showing import show_length, show_length_error
from selfcheck.loading.content import rules as all_rules
from selfcheck.loading.content import signs as all_signs
from selfcheck.practice.grading import (
    ROUNDED_M,
    ReadingGrade,
    TrueVerdict,
    drawn_in,
    grade_readings,
    near,
    true_verdict,
)
from selfcheck.practice.tank import SOUND, PracticeTank, Truth
from selfcheck.sitting.steps import Drawn, Go, Page, Part, Way
from selfcheck.sitting.verdicts import case_of
from selfcheck.storage.folder import Folder

if TYPE_CHECKING:
    from collections.abc import Sequence

    from selfcheck.domain.verdict import Judgement
    from selfcheck.drawing.lengths import Units
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.practice.readings import Look
    from selfcheck.sitting.practice_pages import PracticePages

#: what may be named as wrong → the fields of a check that it stands for
GROUPS = {
    "level": ("level",), "tees": ("inlet_tee", "outlet_tee"), "wall": ("wall",), "lid": ("lid", "under_lid"),
    "inside": ("smell", "surface", "inflow", "roots"), "outside": ("yard", "house"),
}  # fmt: skip
SCUM = ("scum_total", "scum_above", "scum_below")
#: what is as it should be beside what a sound tank shows
FINE = {"smell": ("none", "earthy"), "surface": ("brown", "no_crust")}


def graded(pages: PracticePages, tank: PracticeTank, looked: Look, talk: Conversation) -> Page:
    """The page with the grades. `looked`: what was to be read; `talk`: what was said to it."""
    words, place, check = pages.words, pages.sitting.place, looked.check
    truth = tank.truth(check.on)
    rules = all_rules(place)[tank.household.rules]
    true = true_verdict(tank, truth, rules, all_signs(place))
    typed = typed_check(check, talk)
    found = judge(case_of(place, Folder(tank.household, (typed,), tank.pump_outs, ()), check.on))
    parts = (
        Part(_readings(pages, check, typed, truth), words("grade", "readings"), "items"),
        Part(_strips(pages, tank, looked, truth), words("grade", "strips"), "items"),
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
    by_kind = _by_kind(grade_readings(truth, typed.seen.readings))
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


def _strips(pages: PracticePages, tank: PracticeTank, looked: Look, truth: Truth) -> tuple[str, ...]:
    """Why each strip differs from what is in the tank, and what an expert takes from all of them."""
    from selfcheck.domain.layers import layers

    words, units, readings = pages.words, pages.units, looked.check.seen.readings
    lines = []
    for grades in _by_kind(grade_readings(truth, readings)).values():
        errors = drawn_in(looked, truth).get(grades[0].kind, [])
        names = ("first", "second") if grades[0].kind == "sludge" else (grades[0].kind,)
        for name, grade, causes in zip(names, grades, errors, strict=False):
            label = words("look", name)
            if not causes or abs(grade.off_m) < ROUNDED_M:
                lines.append(words("grade", "strip_true", name=label))
                continue
            said = [words("error", f"{one.cause}_{_way(one.off_m)}", by=_size(one.off_m, units)) for one in causes]
            strip = words("grade", f"strip_{_way(grade.off_m)}", name=label, by=_size(grade.off_m, units))
            lines.append(" ".join([strip, *said]))
    found = layers(tank.household.tank(), tank.vessel, readings)
    taken = {
        name: show_length_error(layer.value, layer.error, units)
        for name, layer in (("sludge", found.sludge), ("scum", found.scum))
        if layer is not None
    }
    lines += [words("grade", "expert", **taken), words("grade", "nobody_sees")] if len(taken) == 2 else []
    if len(readings.sludge) > 1 and abs(readings.sludge[0].m - readings.sludge[1].m) > AGREE_WITHIN_M:
        lines.append(words("grade", "apart", by=_size(readings.sludge[0].m - readings.sludge[1].m, units)))
    return tuple(lines)


def _by_kind(grades: Sequence[ReadingGrade]) -> dict[str, list[ReadingGrade]]:
    found: dict[str, list[ReadingGrade]] = {}
    for one in grades:
        if one.kind in ("sludge", *SCUM):
            found.setdefault(one.kind, []).append(one)
    return found


def _way(off_m: float) -> str:
    return "high" if off_m > 0 else "low"


def _size(off_m: float, units: Units) -> str:
    return show_length(abs(off_m), units)


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
