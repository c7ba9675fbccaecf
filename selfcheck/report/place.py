"""The page after a search for the tank: its place in words, or the plan for going on with the search."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil

from selfcheck.domain.conversions import FOOT, INCH
from selfcheck.domain.locate import Search, TopDepth, step_down
from selfcheck.domain.showing import show_length
from selfcheck.domain.sources import Source
from selfcheck.interview.septic_find import about, at_most, under_grass
from selfcheck.report.finding_text import Units
from selfcheck.report.parts import PageWords, Part, PartedPage, part


@dataclass(frozen=True, slots=True)
class Plan:
    """The search: strips and steps, and how deep the tank's top may lie at some distances, where that can be told.

    `depths`: distance from the wall [m] and the depth there. `marked`: the ground was marked for buried lines.
    """

    search: Search
    depths: tuple[tuple[float, TopDepth], ...]
    marked: bool


def place_page(
    sketch: Sequence[str],
    drawn: Sequence[str],
    plan: Plan | None,
    words: PageWords,
    sources: Mapping[str, Source],
    units: Units,
) -> PartedPage:
    """The page. `sketch`: the place in words, empty where it is not known; `drawn`: the same as a picture's lines.

    `plan`: how to go on where it is not known. ContentProblem: words missing.
    """
    if plan is None:
        where = part(words("title", "place"), list(sketch))
        keep = part(words("title", "keep"), [words("keep", "shut"), words("keep", "copy")])
        return PartedPage(words("headline", "known" if sketch else "open"), (*where, *keep), drawn=tuple(drawn))
    parts = (
        *part(words("title", "first"), [words("first", "marked" if plan.marked else "call"), words("first", "ground")]),
        *_strips(plan.search, words, units),
        *_depths(plan, words, units),
        *part(words("title", "sources"), _sources(words, sources)),
    )
    return PartedPage(words("headline", "search"), parts)


def _strips(search: Search, words: PageWords, units: Units) -> tuple[Part, ...]:
    lines = [
        words(
            "strips",
            "row",
            near=_ground(one.near, units),
            far=_ground(one.far, units),
            width=_wide(one.half_width, units),
        )
        for one in search.strips
    ]
    lines.append(words("strips", "lines", step=_step(search.line_step, units)))
    lines.append(words("strips", "points", step=_step(search.point_step, units)))
    return part(words("title", "strips"), lines)


def _depths(plan: Plan, words: PageWords, units: Units) -> tuple[Part, ...]:
    if not plan.depths:
        return part(words("title", "depths"), [words("depths", "not_known")])
    lines = [
        words(
            "depths",
            "shallow" if under_grass(depth, units) else "row",
            far=_ground(far, units),
            likely=show_length(about(depth.likely, units), units),
            least=show_length(about(depth.least, units), units),
            most=show_length(at_most(depth, units), units),
        )
        for far, depth in plan.depths
    ]
    return part(words("title", "depths"), [*lines, words("depths", "level")])


def _sources(words: PageWords, sources: Mapping[str, Source]) -> list[str]:
    named = [sources[ident] for ident in ("ihs-california", "ipc-704-1", "mn-7080-1920") if ident in sources]
    return [*(words.source_line(one) for one in named), words("title", "choice")]


def _step(metres: float, units: Units) -> str:
    return show_length(step_down(metres, INCH if units == "us" else 0.01), units)


def _wide(metres: float, units: Units) -> str:
    """A width rounded up, so that what is told can still not miss."""
    return _ground(ceil(metres / FOOT) * FOOT if units == "us" else ceil(10.0 * metres) / 10.0, units)


def _ground(metres: float, units: Units) -> str:
    """A distance along the ground: whole feet, or tenths of a metre, with the other beside it."""
    feet, metric = f"{metres / FOOT:.0f} ft", f"{metres:.1f} m"
    return f"{feet} ({metric})" if units == "us" else f"{metric} ({feet})"
