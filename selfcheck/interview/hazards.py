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
from selfcheck.interview.hazard_telling_words import ANSWERED_NO, QUESTION
from selfcheck.interview.hazard_weighing import Terms, likely, terms, weight
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
_CLAUSES = 32
#: natural logarithms of the odds that a line tells of danger (our own choices, by lines left out of learning): from
#: the first on it is asked about though no rule knows it, from the second on when it is understood in no other way;
#: under the others it is not taken for danger though a rule does, one that is not sure and one that is
_LIKELY, _POSSIBLE = 0.75, 0.5
_UNLIKELY, _HARDLY = -1.0, -2.5
#: under this a cue is not asked about, though nothing else in its line is understood
_HARDLY_A_CUE = -3.5
#: from here on a line speaks plainly for a danger to life, and under the same with a minus for none
_LIFE = 1.5
#: a question has to weigh this much more
_ASKS = 2.0
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
    sentences = _sentences(line)
    told = _by_rules(line, sentences)
    if told is None:
        return next(iter(_weighed(line, sentences, _LIKELY)), None)
    return None if _is_unlikely(told, line, sentences) else _or_worse(told, sentences)


def perhaps(text: str) -> tuple[Hazard, ...]:
    """What a line may tell of that `find` leaves alone and nothing else understands, the likeliest first."""
    if find(text) is not None:
        return ()
    line = normal(text)
    sentences = _sentences(line)
    plain = [sentence for sentence in sentences if told_as_so(sentence, line)]
    found = {concept for sentence in plain for concept in sentence.found}
    if weight(terms(sentences)).danger < _HARDLY_A_CUE:
        found = set()
    named = dict.fromkeys(hazard for concept, hazards in _CUES.items() if concept in found for hazard in hazards)
    cued = (Hazard(hazard, VERDICTS[hazard], sure=False) for hazard in named)
    doubted = _by_rules(line, plain)
    ruled = (Hazard(doubted.id, doubted.verdict, sure=False),) if doubted is not None else ()
    return tuple(dict.fromkeys((*ruled, *cued, *_weighed(line, sentences, _POSSIBLE))))[:_MOST_NAMED]


def _sentences(line: str) -> list[Sentence]:
    return [Sentence(part) for part in line.split("||", _SENTENCES) if part.strip()]


def _by_rules(line: str, sentences: list[Sentence]) -> Hazard | None:
    """The worst danger that a rule knows, and beside it what is told more plainly."""
    best: Hazard | None = None
    plain: Hazard | None = None
    later = line
    for sentence in sentences:
        later = later[later.index(sentence.text) + len(sentence.text) :]
        if not sentence.found:
            continue
        doubtful = is_doubtful(sentence.text)
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
    return replace(best, also=plain.id) if best is not None and not best.sure and plain is not None else best


def _is_unlikely(told: Hazard, line: str, sentences: list[Sentence]) -> bool:
    """Whether neither the line nor a clause of it weighs as danger, so that a rule took it for one by mistake."""
    least = _HARDLY if told.sure else _UNLIKELY
    if weight(terms(sentences)).danger >= least:
        return False
    clauses = [part for part in line.split("|", _CLAUSES) if part.strip()]
    return len(clauses) < 2 or all(weight(terms([Sentence(part)])).danger < least for part in clauses)


def _or_worse(told: Hazard, sentences: list[Sentence]) -> Hazard:
    """What a rule knows; where the whole line speaks for a danger to life, that is asked first."""
    found = terms(sentences)
    if told.verdict == "danger" or weight(found).life < _LIFE:
        return told
    return Hazard(_kinds(found)[0], "danger", sure=False, also=told.id if told.sure else told.also)


def _kinds(found: Terms) -> list[str]:
    """The likeliest hazards; where the line speaks plainly for one to life, or for none, just of those."""
    life = weight(found).life
    plainly = {"danger": life > _LIFE, "call_now": life < -_LIFE}
    among = [hazard for hazard, verdict in VERDICTS.items() if plainly[verdict]]
    return likely(found, among or VERDICTS)


def _weighed(line: str, sentences: list[Sentence], least: float) -> tuple[Hazard, ...]:
    """The hazards that a line or a sentence of it speaks for, when it weighs enough; what a no answers is left out."""
    told = [sentence for sentence in sentences if not ANSWERED_NO.match(line.partition(sentence.text)[2])]
    if not any(sentence.found for sentence in told):
        return ()
    each = [[sentence] for sentence in told if sentence.found and len(told) > 1]
    found, heaviest = max(((terms(part), _speaks(part)) for part in (told, *each)), key=lambda one: one[1])
    if heaviest < least:
        return ()
    return tuple(Hazard(kind, VERDICTS[kind], sure=False) for kind in _kinds(found))


def _speaks(sentences: list[Sentence]) -> float:
    """How much sentences speak for danger; one that asks has to say more."""
    asks = any("??" in sentence.text or QUESTION.match(sentence.text) for sentence in sentences)
    return weight(terms(sentences)).danger - _ASKS * asks


def asked(text: str) -> str | None:
    """The danger that a question or a "what if" is about, so that its caution can be given; None when there is none."""
    line = normal(text)
    if not is_question(line):
        return None
    sentences = _sentences(line)
    for rule in RULES:
        if any(next(rule.matches(sentence), None) is not None for sentence in sentences):
            return rule.hazard
    return None


def denied(text: str) -> str | None:
    """The danger that a line speaks of only to say that it is not so; None when it speaks of none, or asks."""
    line = normal(text)
    sentences = _sentences(line)
    if "??" in line or QUESTION.match(line) or find(text) is not None or _by_rules(line, sentences) is not None:
        return None
    told = (rule for rule in RULES if not rule.asked)
    return next((rule.hazard for rule in told if any(any(rule.matches(one)) for one in sentences)), None)


def _outranks(rule: Rule, best: Hazard | None) -> bool:
    """Whether a rule can still say something worse, or the same without doubt."""
    if best is None:
        return True
    if rule.hazard == best.id:
        return rule.sure and not best.sure
    return _ORDER[rule.hazard] < _ORDER[best.id]
