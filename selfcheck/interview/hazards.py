"""Danger heard in a typed line: told as happening now, not denied, not long past, not asked in advance.

A denial binds only to what it stands by: "not kidding, he fell in" and "no he fell in" are heard, "nobody fell in"
is not.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import islice
from typing import Literal

from selfcheck.interview import hazard_people, hazard_places
from selfcheck.interview.hazard_sentences import Rule, Sentence, sentences_in
from selfcheck.interview.hazard_telling import is_doubtful, is_question, is_told, told_as_so
from selfcheck.interview.hazard_telling_words import ANSWERED_NO, QUESTION
from selfcheck.interview.hazard_weighing import Weighed, weigh
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
#: clauses that are weighed one by one; the rest is weighed as one
_CLAUSES = 32
#: natural logarithms of the odds that a line tells of danger (our own choices, by lines left out of learning): from
#: the first on it is asked about though no rule knows it, from the second on when it is understood in no other way;
#: under the others it is not taken for danger though a rule does, one that is not sure and one that is
_LIKELY, _POSSIBLE = 0.25, -0.25
_UNLIKELY, _HARDLY = -1.0, -2.5
#: under this a cue is not asked about, though nothing else in its line is understood
_HARDLY_A_CUE = -4.0
#: from here on a line speaks plainly for a danger to life, and under the same with a minus for none
_LIFE = 1.5
#: a question has to weigh this much more
_ASKS = 2.0
#: concepts that a line seldom holds without telling of a danger, once nothing else in it is understood
CUES: dict[str, tuple[str, ...]] = {
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
#: so many hazards are named at the most, where a line may tell of several
_MOST_NAMED = 3
#: place of each hazard, the worst first
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


class _Line:
    """A line as it is read: its sentences, and what it weighs as a whole."""

    def __init__(self, text: str) -> None:
        self.text = normal(text)
        self.sentences = sentences_in(self.text)

    @cached_property
    def weighed(self) -> Weighed:
        return weigh(self.sentences)


def find(text: str) -> Hazard | None:
    """The worst danger a line tells of as present; None when it tells of none. Safe on any text; bounded work."""
    return _found(_Line(text))


def perhaps(text: str) -> tuple[Hazard, ...]:
    """What a line may tell of that `find` leaves alone and nothing else understands, the likeliest first."""
    line = _Line(text)
    if _found(line) is not None:
        return ()
    plain = [sentence for sentence in line.sentences if told_as_so(sentence, line.text)]
    doubted = _by_rules(line, plain)
    ruled = (doubted.id,) if doubted is not None else ()
    named = dict.fromkeys((*ruled, *_cued(line, plain), *_spoken_for(line, _POSSIBLE)))
    return tuple(map(_in_doubt, islice(named, _MOST_NAMED)))


def asked(text: str) -> str | None:
    """The danger that a question or a "what if" is about, so that its caution can be given; None when there is none."""
    line = _Line(text)
    return _first_of(RULES, line) if is_question(line.text) else None


def denied(text: str) -> str | None:
    """The danger that a line speaks of only to say that it is not so; None when it speaks of none, or asks."""
    line = _Line(text)
    asks = "??" in line.text or QUESTION.match(line.text)
    if asks or _found(line) is not None or _by_rules(line, line.sentences) is not None:
        return None
    return _first_of([rule for rule in RULES if not rule.asked], line)


def _found(line: _Line) -> Hazard | None:
    told = _by_rules(line, line.sentences)
    if told is None:
        return next(map(_in_doubt, _spoken_for(line, _LIKELY)), None)
    return None if _is_unlikely(told, line) else _or_worse(told, line.weighed)


def _in_doubt(hazard: str) -> Hazard:
    """A hazard that is asked about first."""
    return Hazard(hazard, VERDICTS[hazard], sure=False)


def _first_of(rules: Iterable[Rule], line: _Line) -> str | None:
    """The hazard of the first of these rules that a line matches, told as so or not."""
    return next((rule.hazard for rule in rules if any(any(rule.matches(one)) for one in line.sentences)), None)


def _by_rules(line: _Line, sentences: Iterable[Sentence]) -> Hazard | None:
    """The worst danger that a rule knows in these sentences of a line, and beside it what is told more plainly."""
    best: Hazard | None = None
    plain: Hazard | None = None
    for sentence in sentences:
        if not sentence.found:
            continue
        doubtful = is_doubtful(sentence.text)
        for rule in RULES:
            sure = rule.sure and not doubtful
            if rule.asked or not (_outranks(rule, best) or (sure and _outranks(rule, plain))):
                continue
            danger = VERDICTS[rule.hazard] == "danger"
            matches = islice(rule.matches(sentence), _MOST)
            if any(is_told(rule, match, sentence, line.text, danger=danger) for match in matches):
                told = Hazard(rule.hazard, VERDICTS[rule.hazard], sure)
                best = told if _outranks(rule, best) else best
                plain = told if sure and _outranks(rule, plain) else plain
    return replace(best, also=plain.id) if best is not None and not best.sure and plain is not None else best


def _is_unlikely(told: Hazard, line: _Line) -> bool:
    """Whether neither the line nor a clause of it weighs as danger, so that a rule took it for one by mistake."""
    least = _HARDLY if told.sure else _UNLIKELY
    if line.weighed.danger >= least:
        return False
    clauses = [part for part in line.text.split("|", _CLAUSES) if part.strip()]
    return len(clauses) < 2 or all(weigh([Sentence(part)]).danger < least for part in clauses)


def _or_worse(told: Hazard, weighed: Weighed) -> Hazard:
    """What a rule knows; where the whole line speaks for a danger to life, that is asked first."""
    if told.verdict == "danger" or weighed.life < _LIFE:
        return told
    return replace(_in_doubt(_kinds(weighed)[0]), also=told.id if told.sure else told.also)


def _cued(line: _Line, plain: Iterable[Sentence]) -> list[str]:
    """The hazards that a concept in these sentences may tell of, unless the line speaks against any danger."""
    if line.weighed.danger < _HARDLY_A_CUE:
        return []
    held = {concept for sentence in plain for concept in sentence.found}
    return [hazard for concept, hazards in CUES.items() if concept in held for hazard in hazards]


def _spoken_for(line: _Line, least: float) -> list[str]:
    """The hazards that a line or a sentence of it speaks for, when it weighs enough; what a no answers is left out."""
    told = [sentence for sentence in line.sentences if not ANSWERED_NO.match(sentence.later)]
    if not any(sentence.found for sentence in told):
        return []
    whole = line.weighed if len(told) == len(line.sentences) else weigh(told)
    each = [([sentence], weigh([sentence])) for sentence in told if sentence.found and len(told) > 1]
    parts = [(weighed, weighed.danger - _ASKS * _any_asks(part)) for part, weighed in ((told, whole), *each)]
    heaviest, speaks = max(parts, key=lambda part: part[1])
    return _kinds(heaviest) if speaks >= least else []


def _any_asks(sentences: Iterable[Sentence]) -> bool:
    return any("??" in sentence.text or QUESTION.match(sentence.text) for sentence in sentences)


def _kinds(weighed: Weighed) -> list[str]:
    """The likeliest hazards; where the line speaks plainly for one to life, or for none, just of those."""
    plainly = {"danger": weighed.life > _LIFE, "call_now": weighed.life < -_LIFE}
    among = [hazard for hazard, verdict in VERDICTS.items() if plainly[verdict]]
    return weighed.likely(among or VERDICTS)


def _outranks(rule: Rule, best: Hazard | None) -> bool:
    """Whether a rule can still say something worse, or the same without doubt."""
    if best is None:
        return True
    if rule.hazard == best.id:
        return rule.sure and not best.sure
    return _ORDER[rule.hazard] < _ORDER[best.id]
