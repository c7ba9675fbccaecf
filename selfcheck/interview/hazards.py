"""Danger heard in a typed line: told as happening now, not denied, not long past, not asked in advance.

A denial binds only to what it stands by: "not kidding, he fell in" and "no he fell in" are heard, "nobody fell in"
is not.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import islice
from typing import Literal

from selfcheck.interview import hazard_people, hazard_places
from selfcheck.interview.hazard_sentences import Rule, Sentence
from selfcheck.interview.hazard_telling import is_doubtful, is_question, is_told, told_as_so
from selfcheck.interview.hazard_telling_words import QUESTION
from selfcheck.interview.hazard_weighing import kinds, weight
from selfcheck.interview.hazard_words import normal

HazardVerdict = Literal["danger", "call_now"]
#: worst first: of two hazards in a line the earlier one is given
VERDICTS: dict[str, HazardVerdict] = {
    "fell_in": "danger",
    "going_in": "danger",
    "feeling_ill": "danger",
    "child_near": "danger",
    "fire": "danger",
    "struck": "danger",
    "lid_broken": "call_now",
    "lid_left_open": "call_now",
    "ground_sunk": "call_now",
    "sewage_in_house": "call_now",
    "sewage_outside": "call_now",
    "alarm_sounding": "call_now",
}
#: every rule, those of one hazard together, the worst first
RULES: tuple[Rule, ...] = (
    *hazard_people.FELL_IN, *hazard_people.GOING_IN, *hazard_people.FEELING_ILL, *hazard_people.CHILD_NEAR,
    *hazard_places.FIRE, *hazard_places.STRUCK, *hazard_places.LID, *hazard_places.LEFT_OPEN, *hazard_places.GROUND,
    *hazard_places.IN_HOUSE, *hazard_places.OUTSIDE, *hazard_places.ALARM,
)  # fmt: skip
#: a rule that matches more often in a sentence is not followed further
_MOST = 4
#: sentences that are read one by one; the rest is read as one
_SENTENCES = 16
#: from this weight on a sentence is asked about (our own choice, by lines that were left out of learning)
_LIKELY = 20
#: from this weight on, when it is understood in no other way
_POSSIBLE = -4
#: concepts that a line seldom holds without telling of a danger, once nothing else in it is understood
_CUES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(("plain_fall", "drown", "splash"), ("fell_in",)),
    **dict.fromkeys(("ill", "faint", "ache", "unwell", "gas_strong"), ("feeling_ill",)),
    **dict.fromkeys(("child", "pet"), ("child_near",)),
    **dict.fromkeys(("flames", "fire", "smoke_noun", "igniter"), ("fire",)),
    "shock": ("struck",),
    **dict.fromkeys(("broken_first", "rocks_verb", "wobbles_verb"), ("lid_broken",)),
    **dict.fromkeys(("pit_hole", "sinkhole", "sunk_first"), ("ground_sunk",)),
    "filth": ("sewage_in_house", "sewage_outside"),
    "alarm": ("alarm_sounding",),
}
_MOST_NAMED = 3
_ORDER = {hazard: place for place, hazard in enumerate(VERDICTS)}


@dataclass(frozen=True, slots=True)
class Hazard:
    """A danger told in a line. `sure`: said plainly; otherwise it is confirmed first, and counts until it is denied.

    `also`: the id of what the line tells plainly beside it, which holds whatever is said to that.
    """

    id: str
    verdict: HazardVerdict
    sure: bool
    also: str = ""


def find(text: str) -> Hazard | None:
    """The worst danger a line tells of as present; None when it tells of none. Safe on any text; bounded work."""
    line = normal(text)
    best: Hazard | None = None
    plain: Hazard | None = None
    later = line
    for part in line.split("||", _SENTENCES):
        later = later[len(part) :]
        sentence = Sentence(part)
        if not sentence.found:
            continue
        doubtful = is_doubtful(part)
        for rule in RULES:
            sure = rule.sure and not doubtful
            if rule.asked or not (_outranks(rule, best) or (sure and _outranks(rule, plain))):
                continue
            danger = VERDICTS[rule.hazard] == "danger"
            matches = islice(rule.matches(sentence), _MOST)
            if any(is_told(rule, match, sentence, line, later, danger) for match in matches):
                told = Hazard(rule.hazard, VERDICTS[rule.hazard], sure)
                best = told if _outranks(rule, best) else best
                plain = told if sure and _outranks(rule, plain) else plain
    if best is None:
        return next(iter(_weighed(line, _LIKELY)), None)
    if best.sure or plain is None:
        return best
    return replace(best, also=plain.id)


def perhaps(text: str) -> tuple[Hazard, ...]:
    """What a line may tell of that `find` leaves alone and nothing else understands, the likeliest first."""
    if find(text) is not None:
        return ()
    line = normal(text)
    sentences = [Sentence(part) for part in line.split("||", _SENTENCES)]
    found = {concept for one in sentences if told_as_so(one, line) for concept in one.found}
    named = dict.fromkeys(hazard for concept, hazards in _CUES.items() if concept in found for hazard in hazards)
    cued = (Hazard(hazard, VERDICTS[hazard], sure=False) for hazard in named)
    return tuple(dict.fromkeys((*cued, *_weighed(line, _POSSIBLE))))[:_MOST_NAMED]


def _weighed(line: str, least: int) -> tuple[Hazard, ...]:
    """The hazards that the heaviest sentence of a line speaks for, when it weighs enough."""
    sentences = [Sentence(part) for part in line.split("||", _SENTENCES)]
    told = [sentence for sentence in sentences if sentence.found and told_as_so(sentence, line)]
    heaviest = max(told, key=weight, default=None)
    if heaviest is None or weight(heaviest) < least:
        return ()
    return tuple(Hazard(kind, VERDICTS[kind], sure=False) for kind in kinds(heaviest))


def asked(text: str) -> str | None:
    """The danger that a question or a "what if" is about, so that its caution can be given; None when there is none."""
    line = normal(text)
    if not is_question(line):
        return None
    sentences = [Sentence(part) for part in line.split("||", _SENTENCES)]
    for rule in RULES:
        if any(next(rule.matches(sentence), None) is not None for sentence in sentences):
            return rule.hazard
    return None


def denied(text: str) -> str | None:
    """The danger that a line speaks of only to say that it is not so; None when it speaks of none, or asks."""
    line = normal(text)
    if "??" in line or QUESTION.match(line) or find(text) is not None:
        return None
    sentences = [Sentence(part) for part in line.split("||", _SENTENCES)]
    told = (rule for rule in RULES if not rule.asked)
    return next((rule.hazard for rule in told if any(any(rule.matches(one)) for one in sentences)), None)


def _outranks(rule: Rule, best: Hazard | None) -> bool:
    """Whether a rule can still say something worse, or the same without doubt."""
    if best is None:
        return True
    if rule.hazard == best.id:
        return rule.sure and not best.sure
    return _ORDER[rule.hazard] < _ORDER[best.id]
