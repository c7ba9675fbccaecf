"""Named conditions and fills of the search for the tank: strips, steps, depths, and whether two tapes can meet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import tank_of

if TYPE_CHECKING:
    from selfcheck.domain.locate import Search, TopDepth

INCH = 0.0254
#: A pipe of each size, in metres across: the middle of its class of the code.
PIPES = {"small": 2.0 * INCH, "usual": 4.0 * INCH, "large": 8.0 * INCH}
#: So many stretches are told in one breath (our choice); the page has them all.
TOLD = 3
TEN_FEET = 3.048


@predicate("place_known", reads=("find_known", "find_paper", "find_found"))
def place_known(answered: Answered, context: Context) -> bool:
    """The spot is known, so that it can be taped."""
    return (
        answered.chosen("find_known", "in_sight", "covered")
        or answered.chosen("find_paper", "shows_it")
        or answered.chosen("find_found", "found")
    )


@predicate("search_wanted", reads=("find_known", "find_paper"))
def search_wanted(answered: Answered, context: Context) -> bool:
    """Neither sight nor paper tells the spot."""
    return not answered.chosen("find_known", "in_sight", "covered") and not answered.chosen("find_paper", "shows_it")


@predicate("pipe_depth_known", reads=("pipe_depth",))
def pipe_depth_known(answered: Answered, context: Context) -> bool:
    """How deep the pipe leaves the house was told."""
    return answered.number("pipe_depth") is not None


@predicate("first_corner_named", reads=("corner_a",))
def first_corner_named(answered: Answered, context: Context) -> bool:
    """There is a corner to tape from."""
    return isinstance(answered.value("corner_a"), str)


@predicate("both_corners_named", reads=("corner_a", "corner_b"))
def both_corners_named(answered: Answered, context: Context) -> bool:
    """There are two corners to tape from."""
    return isinstance(answered.value("corner_a"), str) and isinstance(answered.value("corner_b"), str)


@predicate("both_tapes_read", reads=("from_a", "from_b"))
def both_tapes_read(answered: Answered, context: Context) -> bool:
    """Both tapes were read, so that the corners' distance and the side settle the spot."""
    return answered.number("from_a") is not None and answered.number("from_b") is not None


@predicate("corner_is_a_length", reads=("corner_a", "corner_b"))
def corner_is_a_length(answered: Answered, context: Context) -> bool:
    """The corner named last has no name that people could find it by, only a figure."""
    from selfcheck.domain.quantities import read_length

    name = answered.value("corner_b") if "corner_b" in answered else answered.value("corner_a")
    if not isinstance(name, str):
        return False
    return not any(sign.isalpha() for sign in name) or read_length(name, context.units).status in ("value", "ask")


@predicate("corners_alike", reads=("corner_a", "corner_b"))
def corners_alike(answered: Answered, context: Context) -> bool:
    """Both corners have one name."""
    one, other = answered.value("corner_a"), answered.value("corner_b")
    return isinstance(one, str) and isinstance(other, str) and one.strip().casefold() == other.strip().casefold()


@predicate("tapes_do_not_meet", reads=("from_a", "from_b", "corners_apart"))
def tapes_do_not_meet(answered: Answered, context: Context) -> bool:
    """No place has these two distances from corners that far apart."""
    from selfcheck.domain.locate import fix

    told = [answered.number(name) for name in ("corners_apart", "from_a", "from_b")]
    apart, from_a, from_b = told
    if apart is None or from_a is None or from_b is None:
        return False
    return apart <= 0 or fix(apart, from_a, from_b) is None


@fill("find_order")
def find_order(answered: Answered, context: Context) -> str | None:
    """The first stretches to search, likeliest first."""
    strips = search_of(answered, context).strips[:TOLD]
    return "; ".join(f"{_short(one.near, context)} to {_short(one.far, context)}" for one in strips)


@fill("find_lines")
def find_lines(answered: Answered, context: Context) -> str | None:
    """The most that lines walked across may be apart."""
    return _step(search_of(answered, context).line_step, context)


@fill("find_points")
def find_points(answered: Answered, context: Context) -> str | None:
    """The most that single points may be apart."""
    return _step(search_of(answered, context).point_step, context)


@fill("find_fall")
def find_fall(answered: Answered, context: Context) -> str | None:
    """By how much the pipe falls in ten feet, or in a metre."""
    return _shown(slope_of(answered) * (TEN_FEET if context.units == "us" else 1.0), context)


@fill("find_per")
def find_per(answered: Answered, context: Context) -> str | None:
    """The stretch that the fall is told for."""
    return "10 ft" if context.units == "us" else "1 m"


@fill("find_far")
def find_far(answered: Answered, context: Context) -> str | None:
    """The middle of where tanks most often lie."""
    return _shown(_likely(), context)


@fill("find_top")
def find_top(answered: Answered, context: Context) -> str | None:
    """How deep the tank's top is likely to lie there."""
    depth = top_at(answered, _likely())
    return None if depth is None else _shown(about(depth.likely, context.units), context)


@fill("find_least")
def find_least(answered: Answered, context: Context) -> str | None:
    """As shallow as it may lie there."""
    depth = top_at(answered, _likely())
    return None if depth is None else _shown(about(depth.least, context.units), context)


@fill("find_most")
def find_most(answered: Answered, context: Context) -> str | None:
    """As deep as it may lie there."""
    depth = top_at(answered, _likely())
    return None if depth is None else _shown(at_most(depth, context.units), context)


@predicate("top_under_grass", reads=("pipe_depth", "pipe_size"))
def top_under_grass(answered: Answered, context: Context) -> bool:
    """The top is likely to lie right at the ground there."""
    depth = top_at(answered, _likely())
    return depth is not None and under_grass(depth, context.units)


def search_of(answered: Answered, context: Context) -> Search:
    """Where to search for this household's tank: by its width where that is on record."""
    from selfcheck.domain.household import Box
    from selfcheck.domain.locate import search

    shape = tank_of(context, answered).shape
    sides = [side for side in (shape.length_m, shape.width_m) if side] if isinstance(shape, Box) else []
    return search(min(sides) if len(sides) == 2 else None)


def slope_of(answered: Answered) -> float:
    """The fall of the pipe by its size, or the usual one."""
    from selfcheck.domain.locate import fall

    size = answered.value("pipe_size")
    return fall(PIPES.get(size) if isinstance(size, str) else None)


def top_at(answered: Answered, distance_m: float) -> TopDepth | None:
    """How deep the tank's top may lie at a distance from the house; None where the pipe's depth is not known."""
    from selfcheck.domain.locate import pipe_depth, top_depth

    leaves = answered.number("pipe_depth")
    return None if leaves is None else top_depth(pipe_depth(leaves, distance_m, slope_of(answered)))


def about(metres: float, units: str) -> float:
    """A reckoned depth to the nearest inch or two centimetres: it is not known any better (our choice)."""
    grain = INCH if units == "us" else 0.02
    return round(metres / grain) * grain


def under_grass(depth: TopDepth, units: str) -> bool:
    """Whether the likely depth is nothing that could be told."""
    return about(depth.likely, units) <= 0


def at_most(depth: TopDepth, units: str) -> float:
    """As deep as the top may lie, and no less than can be told."""
    return max(about(depth.most, units), INCH if units == "us" else 0.02)


def _step(metres: float, context: Context) -> str:
    from selfcheck.domain.locate import step_down

    return _shown(step_down(metres, INCH if context.units == "us" else 0.01), context)


def _likely() -> float:
    from selfcheck.domain.locate import LIKELY

    return sum(LIKELY) / 2.0


def _shown(metres: float, context: Context) -> str:
    from selfcheck.domain.showing import show_length

    return show_length(metres, context.units)


def _short(metres: float, context: Context) -> str:
    """A distance along the ground in one unit: whole feet, or tenths of a metre."""
    return f"{metres / 0.3048:.0f} ft" if context.units == "us" else f"{metres:.1f} m"
