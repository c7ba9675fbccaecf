"""Danger heard in a typed line: told as happening now, not denied, not long past, not asked in advance.

A denial binds only to what it stands by: "not kidding, he fell in" and "no he fell in" are heard, "nobody fell in"
is not.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from selfcheck.interview.hazard_patterns import ASKED, LIVING_WORD, THINGS, VERDICTS, WORDINGS, HazardVerdict, Wording
from selfcheck.interview.hazard_words import normal
from selfcheck.text import words


@dataclass(frozen=True, slots=True)
class Hazard:
    """A danger told in a line. `sure`: said plainly; otherwise it is confirmed first, and counts until it is denied."""

    id: str
    verdict: HazardVerdict
    sure: bool


_ORDER = list(VERDICTS)
_PRONOUNS = words("he she they we i you someone somebody everyone alguien el ella")
_DETERMINERS = words("the my our his her their a an this that your")
_PREPOSITIONS = words("of in from at on near by with to over around into under through about like for inside")
_DENIALS = words("not never no nobody none neither nor nothing without zero sin nadie nunca ningun ninguna jamas")
_BINDING = words("think believe say said suspect that mean means creo")
_LOOKING = words(
    "see seen saw notice noticed sign signs evidence find found hear heard look looks any have had got "
    "feel let want seeing aware report"
)
_NEW_SUBJECT = words("lid cover ground sewage toilet shower husband wife son daughter dog kid water basement tub drain")
_FINITE = words("looks look is has keeps seems acts feels are have")
_ANSWERED_NO = re.compile(
    r"^[\s|?]*(?:no|none|nope|nah|negative|not|not really|not at all|no sir|no not at all|nothing|"
    r"never|ninguna?)[\s|]*$"
)

_LONG_PAST = re.compile(
    r"\b(?:last (?:year|week|month|summer|winter|spring|fall|autumn|owner|season|decade|time)|"
    r"(?:years?|months?|weeks?|decades?) (?:ago|back|earlier)|used to|long (?:time )?ago|ages ago|"
    r"back in|in (?:19|20)\d\d|"
    r"when (?:i|we|he|she) (?:was|were) (?:a |just )*(?:kid|kids|young|little|child|children|boy|girl|"
    r"growing)|previously|in the past|one time|once (?:before|when|upon|in)|before we (?:moved|bought|"
    r"owned)|"
    r"(?:previous|former|last|old|prior) owners?|as a (?:kid|child)|ano pasado|hace (?:\w+ )?(?:anos?|"
    r"mes(?:es)?)|history of|years before|winter before|childhood|it once|had once|ever since)\b"
)
_MENDED = re.compile(
    r"\b(?:replaced|fixed|repaired|patched|swapped|filled in|taken care of|mended|reparad[oa]|new "
    r"(?:lid|one|cover|riser)|(?:is|are|was|it|all|everything) (?:fine|ok|okay|good|clear|sorted) now|"
    r"stopped now|has stopped|cleared up|cleared it|snaked|unclogged|plumber (?:fixed|came and)|works "
    r"(?:fine )?now|resolved)\b"
)
_GONE = re.compile(
    r"\b(?:(?:is|has|are|it|now|all|headache|completely) gone|went away|gone (?:away|now)|no longer|"
    r"any ?more|passed now|cleared up|stopped|wore off|much better|feel(?:s|ing)? (?:fine|better|ok|"
    r"okay|good|great) now|(?:is|am|are) (?:fine|better|ok|okay) now)\b"
)
_STORY = re.compile(
    r"\b(?:(?:heard|read|saw|seen|watched|told|warned|know|knew|learned|remember|reading|hear) "
    r"(?:about|of|that|on|in|a story|an article|stories|me about|us about|me that)|(?:news|story|"
    r"stories|article|video|movie|tv|book|facebook|online|pamphlet|brochure|internet|website|guide|"
    r"youtube) .*|they say|people (?:have )?(?:died|die|get|got)) "
)
_INDEFINITE = re.compile(
    r"\b(?:a|an|some|someone|somebody|people|kids|children|they|man|how|folks|workers|lids|tanks|"
    r"septic|where|who|whose)\b"
)
_SUPPOSED = re.compile(
    r"\b(?:what if|even if|if|in case|suppose|supposing|imagine|pretend|pretending|unless|whether|so "
    r"that|so (?:no ?one|nobody|they|he|she|kids?|the kids?|nothing|people)|to keep|keeping|(?:^|"
    r"(?<=[|] )|please |i |we |must |will |should )keep|prevent|avoid|make sure|making sure|"
    r"ensure|careful|worr(?:y|ied) about|afraid of|scared of|fear of|risk of|danger of|dangers of|"
    r"chance of|chances of|odds of|possibility of|in the event|in the event of|signs? of|signs? that|"
    r"watch(?:ing)? (?:out )?for|look(?:ing)? (?:out )?for|check(?:ing|ed)? for|check(?:ed)? (?:if|"
    r"whether)|beware|"
    r"how (?:do|can|would|will|could|to) (?:i |you |we |one )?(?:know|tell|check|see|spot)|how likely|"
    r"what happens (?:when|if)|what (?:do|should|would|can) (?:i|we|you) do (?:when|if)|what to do "
    r"(?:when|if)|do i do if|"
    r"when (?:a|an|someone|somebody|people|kids|children|you|sewage|things?|it)|before (?:the|it|"
    r"someone|a|sewage|my|our)|until|would|wish|hope(?:fully)?|hoping|ever|difference between|meaning "
    r"of|what is|what are|define|como se si|que pasa si|si se|rather than|instead of|"
    r"by accident could|supposed to|insurance|cover(?:s|ed)? by|cost of|price of|cost to|how much|"
    r"could|might|may|can|should|does|do|did|dont|never let|not let|in order|rule|rules)\b(?! "
    r"be\b)"
)
_MODALS = words("could might may can should does do did would")
_QUESTION = re.compile(
    r"(?:^|\| )(?:so |ok |okay |hey |um |and |wait |hi |well |then |but |please |quick question |"
    r"question )*(?P<word>is|are|was|were|am|did|do|does|has|have|had|can|could|should|shall|will|"
    r"would|may|must|what|what's|how|when|where|who|which|whose|que|como|puedo|cuando|any|anyone|"
    r"anybody|anything)\b"
)
_WH = words("what how when where who which whose que como cuando")
_DOUBT = re.compile(
    r"\b(?:maybe|might|may be|could be|think|guess|possibly|perhaps|looks like|seems|sort of|kind of|"
    r"kinda|not sure|unsure|almost|nearly|probably|afraid|worried|earlier|yesterday|was|used)\b"
)
_FALLING = re.compile(r"\b(?:fell|fallen|falling|tumbled|slipped|toppled|plunged|slid|stumbled|tripped|cayo|caido)\b")
_SMELLS = re.compile(
    r"\b(?:smell|smells|smelled|smelling|stinks?|stinking|reeks?|odou?r|stench|whiff|scent) (?:\w+ "
    r"){0,2}(?:like|of) (?:\w+ ){0,1}$"
)
_THING_FIRST = re.compile(rf"(?:the |my |a |our |his |some )?{THINGS.pattern}")
_DONE = re.compile(r"(?:ed|ing|fell|fallen|went|gone|broke|broken|sank|sunk|stuck|cayo|hit|cut|lit|caught|left)$")


def find(text: str) -> Hazard | None:
    """The worst danger a line tells of as present; None when it tells of none. Safe on any text; bounded work."""
    line = normal(text)
    best: Hazard | None = None
    rest_of_line = line
    for sentence in line.split("||"):
        rest_of_line = rest_of_line[len(sentence) :]
        for wording in WORDINGS:
            if (
                best is not None
                and _ORDER.index(wording.hazard) >= _ORDER.index(best.id)
                and (best.sure or wording.hazard != best.id)
            ):
                continue
            for match in wording.pattern.finditer(sentence):
                if _told(wording, match, sentence, line, rest_of_line):
                    sure = not (wording.unsure or "??" in sentence or _DOUBT.search(sentence))
                    best = Hazard(wording.hazard, VERDICTS[wording.hazard], sure)
                    break
    return best


def asked(text: str) -> str | None:
    """The danger that a question or a "what if" is about, so that its caution can be given; None when there is none."""
    line = normal(text)
    if not (_QUESTION.search(line) or "??" in line or _SUPPOSED.search(line)):
        return None
    for hazard, pattern in ASKED:
        if pattern.search(line):
            return hazard
    return None


def _told(wording: Wording, match: re.Match[str], sentence: str, line: str, later: str) -> bool:
    """Whether this match tells of something that is so now."""
    head = match.start("head")
    before = sentence[:head]
    clause = before.rsplit("|", 1)[-1]
    if _denied(clause, match.group("head").split()[0]) or _ANSWERED_NO.match(
        sentence[match.end() :] + later.replace("||", "|", 1)
    ):
        return False
    if wording.hazard.startswith("sewage") and _SMELLS.search(sentence[: match.start()]):
        return False
    if wording.hazard == "fell_in" and not _somebody(match, clause, line):
        return False
    if _is_over(wording, match.group("head"), sentence, line):
        return False
    if _STORY.search(before) and _INDEFINITE.search(_STORY.split(before)[-1]):
        return False
    return not (_is_supposed(wording, match.group("head"), before, clause) or _is_asked(wording, clause, sentence))


def _denied(clause: str, first: str) -> bool:
    """Whether the last denial of the clause reaches to its end."""
    words = clause.split()
    at = max((index for index, word in enumerate(words) if word in _DENIALS), default=-1)
    if at < 0:
        return False
    gap = words[at + 1 :]
    if len(gap) > 8:
        return False
    if _BINDING & set(gap[:2]):
        return True
    looking = bool(_LOOKING & set(gap[:2]))
    if gap and gap[-1] in ("and", "then") and words[at] == "not" and (_DONE.search(first) or first in _FINITE):
        return False
    for index, word in enumerate(gap):
        after = gap[index + 1] if index + 1 < len(gap) else ""
        if word in _PRONOUNS and not (index == 0 and words[at] in ("nor", "neither")):
            return False
        if word in _DETERMINERS and index > 0 and gap[index - 1] not in _PREPOSITIONS and not looking:
            return False
        if (
            word in _NEW_SUBJECT
            and index > 0
            and after in ("is", "are", "has", "just", "keeps", "fell", "")
            and words[at] == "no"
            and not looking
        ):
            return after == ""
        if word == "and" and after in _NEW_SUBJECT:
            return False
    return True


def _somebody(match: re.Match[str], clause: str, line: str) -> bool:
    """Whether it was a living being that fell, not a tool: the nearest noun before the verb decides."""
    falling = _FALLING.search(match.group("head")) is not None
    told = match.group()[: match.start("head") - match.start()]
    if LIVING_WORD.search(told):
        return True
    words = clause.split()
    if words and words[-1] in ("and", "then"):
        if LIVING_WORD.search(clause):
            return True
        return falling and not _THING_FIRST.match(clause.strip())
    for word in reversed(words[-6:]):
        if THINGS.fullmatch(word):
            return False
        if LIVING_WORD.fullmatch(word):
            return True
        if word == "it":
            return falling and THINGS.search(line.split(match.group())[0]) is None
    return falling or match.group("head").startswith(
        (
            "stuck",
            "trapped",
            "drown",
            "can not",
            "could not",
            "swim",
            "man",
            "woman",
            "child",
            "kid",
            "person",
            "boy",
            "girl",
            "dog",
            "se ",
            "out of",
            "in",
            "inside",
            "sinking",
        )
    )


def _is_over(wording: Wording, head: str, sentence: str, line: str) -> bool:
    """Whether it is long past, or has been put right."""
    past = _LONG_PAST.search(sentence) is not None
    if wording.hazard in ("lid_broken", "ground_sunk"):
        return _MENDED.search(line) is not None
    if wording.hazard == "feeling_ill":
        lasting = re.search(
            (
                r"pass|faint|black|unconsc|unresp|collaps|conscious|cold|desmay|breath|moving|respond|wak|limp|"
                r"blue"
            ),
            head,
        )
        return past or (not lasting and _GONE.search(line) is not None)
    if wording.hazard == "fell_in":
        return past
    return past or (wording.hazard not in ("going_in", "child_near") and _MENDED.search(line) is not None)


def _subjects(words: list[str]) -> int:
    """How many subjects stand among the words: pronouns, and nouns with an article that no preposition governs."""
    count = 0
    for index, word in enumerate(words):
        before = words[index - 1] if index else ""
        if (
            (word in _PRONOUNS and (word != "you" or index == 0))
            or word == "it"
            or (word in _NEW_SUBJECT and before not in _DETERMINERS and before not in _PREPOSITIONS)
        ):
            count += before not in _PREPOSITIONS
        elif word in _DETERMINERS and before not in _PREPOSITIONS and word != "that":
            count += 1
    return count


def _is_supposed(wording: Wording, head: str, before: str, clause: str) -> bool:
    """Whether a supposition ("if", "in case", "how do I know") governs what follows."""
    for marker in _SUPPOSED.finditer(before):
        between = before[marker.end() :].replace("|", " ").split()
        word = marker.group()
        if word in _MODALS:
            if _DONE.search(head.split()[0]) or (wording.hazard == "feeling_ill" and word in ("might", "may", "could")):
                continue
            if wording.hazard == "going_in" and word in ("can", "do", "did", "does"):
                continue
            if (
                len(between) <= 1
                and "have" not in between
                and "??" not in between
                and clause.strip().endswith(word if not between else f"{word} {between[0]}")
            ):
                return True
            continue
        if VERDICTS[wording.hazard] == "danger" and not clause.strip() and "|" in before[marker.end() :].strip()[3:]:
            continue  # a new clause that starts with the act itself
        if len(between) <= 12 and _subjects(between) <= 1:
            return True
        if word.startswith("how ") and _subjects(between) <= 1:
            return True
    return False


def _is_asked(wording: Wording, clause: str, sentence: str) -> bool:
    """Whether the clause only asks whether it is so."""
    start = _QUESTION.match(clause.strip())
    if start is None:
        return False
    word = start.group("word")
    rest = clause.strip()[start.end() :].split()
    if word == "who":
        return not rest
    if word.startswith("any"):
        return "??" in sentence and _subjects(rest) == 0
    if word in _WH:
        return wording.bare and _subjects(rest) <= 1 and not _PRONOUNS & set(rest)
    if wording.bare or len(rest) > 0:
        return _subjects(rest) <= 1 and not {"that"} & set(rest)
    return False
