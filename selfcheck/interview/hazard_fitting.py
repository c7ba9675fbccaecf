"""Which caution fits a line: a danger near the opening has two, and a thing in the tank has one of its own."""

from __future__ import annotations

from selfcheck.interview.hazard_sentences import Rule, sentences_in
from selfcheck.interview.hazard_telling import is_question, is_told
from selfcheck.interview.hazard_words import normal
from selfcheck.interview.hazards import VERDICTS

NEAR, NEAR_ALL = "child_near", "too_near"
WEAK, OPEN, DRIVEN = "lid_broken", "lid_left_open", "driven_on"
THING_LOST = "thing_lost"
#: every danger that may be told of, those among them that only a fitting gives
ALL: dict[str, str] = {**VERDICTS, NEAR_ALL: VERDICTS[NEAR], DRIVEN: VERDICTS[WEAK]}
#: a lid that is not there at all, or not one: the tank stands open
GONE = (
    Rule(OPEN, "no_lid !>1:no_lid_other"),
    Rule(OPEN, "where_lid"),
    Rule(OPEN, "gone_from <4:lid !>3:fastener"),
    Rule(OPEN, "took !>1:off >3:lid !>4:off_words/lid_part/fastener"),
    Rule(OPEN, "fall/sank >1:in <3:lid"),
    Rule(OPEN, "board >3:near_hole"),
)
#: a vehicle that stands on the tank or drove over it
ON_IT = (
    Rule(DRIVEN, "drive >2:onto_it >2:tank_lid"),
    Rule(DRIVEN, "vehicle >5:onto_it >4:tank_lid", bare=True),
    Rule(DRIVEN, "drive >1:tank_lid <3:vehicle"),
)
#: a thing that fell into the tank or is stuck in it: no danger yet, but it tempts people to reach for it
LOST = (
    Rule(THING_LOST, "fall/sank >1:in <4:carried !>3:else"),
    Rule(THING_LOST, "fall/sank >3:tank <4:carried !>3:else"),
    Rule(THING_LOST, "let_slip >3:carried >5:in/tank !>5:else"),
    Rule(THING_LOST, "let_slip >3:carried >4:sank"),
    Rule(THING_LOST, "stuck_word <3:carried !>3:else"),
    Rule(THING_LOST, "carried >2:in_deep"),
)


def fitting(hazard: str, text: str) -> str:
    """The danger with the caution that fits.

    Near the opening there is one for who minds a child or an animal, and one for others; a lid that is gone leaves the
    tank open, and is not just a weak one; one that bears a vehicle may be whole.
    """
    if hazard not in (NEAR, WEAK):
        return hazard
    sentences = sentences_in(normal(text))
    if hazard == WEAK:
        fits = (rule for rule in (*GONE, *ON_IT) if any(any(rule.matches(one)) for one in sentences))
        return next((rule.hazard for rule in fits), WEAK)
    return NEAR if any("child" in one.found or "pet" in one.found for one in sentences) else NEAR_ALL


def lost(text: str) -> bool:
    """Whether a line tells of a thing that fell into the tank, or is stuck in it: somebody may reach for it."""
    line = normal(text)
    if is_question(line) or any(sign.isdecimal() for sign in line):
        return False
    firsts = ((rule, next(rule.matches(one), None), one) for one in sentences_in(line) for rule in LOST)
    return any(match is not None and is_told(rule, match, one, line, danger=False) for rule, match, one in firsts)
