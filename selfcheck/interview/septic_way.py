"""Conditions on the way through a check: which way in was chosen, and how far the tank was opened."""

from __future__ import annotations

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import fill
from selfcheck.interview.predicates import predicate

BEFORE_GOING_OUT = ("way_in", "house_signs", "yard_signs", "alarm")


@predicate("on_paper", reads=("way_in", "ready"))
def on_paper(answered: Answered, context: Context) -> bool:
    """The check was done outside and stands on a filled-in sheet."""
    return answered.chosen("way_in", "sheet") or answered.chosen("ready", "sheet_filled")


@predicate("going_out", reads=BEFORE_GOING_OUT)
def going_out(answered: Answered, context: Context) -> bool:
    """The check is to be done outside, and nothing was told that must be seen by a professional first."""
    return answered.chosen("way_in", "guided", "hidden") and not _wants_a_call_today(answered)


@predicate("lid_hidden", reads=(*BEFORE_GOING_OUT, "ready"))
def lid_hidden(answered: Answered, context: Context) -> bool:
    """The lid has to be found or bared first. After a break, only where the household stands at that moment counts."""
    if not going_out(answered, context):
        return False
    return answered.chosen("ready", "lid_hidden") if answered.resumed else answered.chosen("way_in", "hidden")


@predicate("gate_wanted", reads=(*BEFORE_GOING_OUT, "ready", "search", "utility_call", "bared"))
def gate_wanted(answered: Answered, context: Context) -> bool:
    """The lid is in sight or bared, and the household means to go on."""
    if lid_hidden(answered, context):
        return answered.chosen("search", "found_bare") or answered.was_chosen("bared", "clear")
    if answered.resumed:
        return going_out(answered, context) and answered.chosen("ready", "go_out")
    return going_out(answered, context)


@predicate("tank_uncovered", reads=("way_in", "ready", "lid_off"))
def tank_uncovered(answered: Answered, context: Context) -> bool:
    """Somebody stood at the opening, today or when the sheet was filled in."""
    return on_paper(answered, context) or "lid_off" in answered or "lid_off" in answered.before


@predicate("opened_today", reads=("lid_off",))
def opened_today(answered: Answered, context: Context) -> bool:
    """The step that opens the tank was reached in this conversation, whether or not it is shut again."""
    return answered.open or "lid_off" in answered or "lid_off" in answered.before


@predicate("tank_seen", reads=("way_in", "ready", "lid_off", "level"))
def tank_seen(answered: Answered, context: Context) -> bool:
    """The lid came off, so that there is something to tell of the inside."""
    return tank_uncovered(answered, context) and "level" in answered and not answered.chosen("level", "stayed_shut")


@predicate("lid_told", reads=("gate_lid",))
def lid_told(answered: Answered, context: Context) -> bool:
    """How the lid is was told at the gate, or as a danger."""
    told = answered.was_chosen("gate_lid", "firm_light", "firm_heavy", "rocked", "cracked")
    return told or "lid_broken" in answered.hazards or "lid_left_open" in answered.hazards


@predicate("left_open_told", reads=())
def left_open_told(answered: Answered, context: Context) -> bool:
    """The tank was told to stand open, with no lid that can be put on it."""
    return "lid_left_open" in answered.hazards


@predicate("weak_lid_told", reads=())
def weak_lid_told(answered: Answered, context: Context) -> bool:
    """The lid was told to be one that may break: it is not to be moved."""
    return "lid_broken" in answered.hazards


@predicate("one_drain_only", reads=("trouble_house", "trouble_yard", "trouble_where"))
def one_drain_only(answered: Answered, context: Context) -> bool:
    """One slow drain is all there is."""
    elsewhere = answered.chosen("trouble_where", "yard", "alarm")
    return answered.value("trouble_house") == ("slow_one_drain",) and not elsewhere


@fill("at_the_tank")
def at_the_tank(answered: Answered, context: Context) -> str | None:
    """Nothing, for a sentence that is for who stands outside; left out for who copies a sheet."""
    return None if on_paper(answered, context) else ""


@fill("from_paper")
def from_paper(answered: Answered, context: Context) -> str | None:
    """Nothing, for a sentence that is for who copies a sheet; left out for everybody else."""
    return "" if on_paper(answered, context) else None


def _wants_a_call_today(answered: Answered) -> bool:
    return (
        answered.chosen("alarm", "sounding")
        or answered.chosen("house_signs", "sewage_backup")
        or answered.chosen("yard_signs", "wet_smelly", "sunken_ground")
    )
