"""Fills with the marks for pole and stick, from the rule set turned round for this tank."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate
from selfcheck.interview.septic_record import household_of, rules_of, tank_of

if TYPE_CHECKING:
    from selfcheck.domain.household import Tank
    from selfcheck.domain.limits import RuleSet
    from selfcheck.domain.marks import Marks
    from selfcheck.domain.shapes import Vessel


@predicate("marks_known", reads=("which_tank",))
def marks_known(answered: Answered, context: Context) -> bool:
    """The tank is known well enough to say where a reading turns the verdict."""
    return _known(answered, context) is not None


@fill("mark_wet_line")
def mark_wet_line(answered: Answered, context: Context) -> str | None:
    """Where a full tank wets the pole."""
    found = _marks(answered, context)
    return None if found is None else _shown(found.wet_line_m, context)


@fill("mark_sludge")
def mark_sludge(answered: Answered, context: Context) -> str | None:
    """The height on the pole above which a stain says book it."""
    found = _marks(answered, context)
    return None if found is None else _shown(found.book_sludge_m, context)


@fill("mark_outlet_edge")
def mark_outlet_edge(answered: Answered, context: Context) -> str | None:
    """How far the outlet's lower edge lies below the water, where it was measured."""
    found = _marks(answered, context)
    return None if found is None or found.outlet_assumed else _shown(found.outlet_edge_m, context)


@fill("mark_outlet_guess")
def mark_outlet_guess(answered: Answered, context: Context) -> str | None:
    """The same, where a usual depth stands in for it."""
    found = _marks(answered, context)
    return None if found is None or not found.outlet_assumed else _shown(found.outlet_edge_m, context)


@fill("mark_scum")
def mark_scum(answered: Answered, context: Context) -> str | None:
    """How far below the water the crust's underside may reach."""
    found = _marks(answered, context)
    return None if found is None else _shown(found.book_scum_m, context)


@fill("mark_rule")
def mark_rule(answered: Answered, context: Context) -> str | None:
    """The rule set that the marks are made by."""
    known = rules_of(context)
    return known.title if known is not None else None


def _known(answered: Answered, context: Context) -> tuple[RuleSet, Tank, Vessel] | None:
    from selfcheck.domain.shapes import vessel

    household = household_of(context)
    rules, tank = rules_of(context), tank_of(context, answered)
    inside = vessel(tank, household.bedrooms)
    if rules is None or not inside.depth_known or inside.basis not in ("shape", "volume"):
        return None
    return rules, tank, inside


def _marks(answered: Answered, context: Context) -> Marks | None:
    from selfcheck.domain.marks import marks

    known = _known(answered, context)
    return marks(*known, context.units) if known is not None else None


def _shown(metres: float | None, context: Context) -> str | None:
    from selfcheck.domain.showing import show_length

    return None if metres is None or metres <= 0 else show_length(metres, context.units)
