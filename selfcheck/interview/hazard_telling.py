"""Whether a telling is of something that is so now: not denied, not long past or put right, not asked, not supposed."""

from __future__ import annotations

import re
from functools import lru_cache

from selfcheck.interview.hazard_sentences import Match, Rule, Sentence
from selfcheck.text import words

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
    r"\b(?:last (?:christmas|xmas|thanksgiving|easter|"
    r"year|week|month|summer|winter|spring|fall|autumn|owner|season|decade|time)|"
    r"(?:years?|months?|weeks?|decades?) (?:ago|back|earlier)|used to|long (?:time )?ago|ages ago|"
    r"back in|in (?:19|20)\d\d|"
    r"when (?:i|we|he|she) (?:was|were) (?:a |just )*(?:kid|kids|young|little|child|children|boy|girl|"
    r"growing)|previously|(?:old|last|other|first) house|"
    r"when (?:my|the|our) \w+ (?:was|were) (?:little|small|young|a baby|a kid|a child)|"
    r"in the past|one time|once (?:before|when|upon|in)|before we (?:moved|bought|"
    r"owned)|"
    r"(?:previous|former|last|old|prior) owners?|as a (?:kid|child)|ano pasado|hace (?:\w+ )?(?:anos?|"
    r"mes(?:es)?)|history of|years before|winter before|childhood|it once|had once|ever since)\b"
)
_MENDED = re.compile(
    r"\b(?:filled(?! with)|replaced|fixed|repaired|patched|swapped|filled in|taken care of|mended|reparad[oa]|new "
    r"(?:lid|one|cover|riser)|(?:is|are|was|it|all|everything) (?:fine|ok|okay|good|clear|sorted) now|"
    r"stopped now|has stopped|cleared up|cleared it|snaked|unclogged|plumber (?:fixed|came and)|works "
    r"(?:fine )?now|resolved)\b"
)
_OLD_LID = re.compile(r"\b(?:old|previous|original|former) (?:lid|cover)\b")
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
    r"\b(?:till|how (?:do|can|would|could|to) (?:i |you |we )?(?:stop|prevent|avoid|fix)|"
    r"why (?:can|should|must|would|not|no)|"
    r"what if|even if|if|in case|suppose|supposing|imagine|pretend|pretending|unless|whether|so "
    r"that|so (?:no ?one|nobody|nothing)|"
    r"so (?:they|he|she|kids?|the kids?|people) (?:can|could|do|does|will|would|might|may|should)|"
    r"to keep|keeping|(?:^|"
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
#: "can smell", "does not": what the modal stands by is told, not supposed
_PLAINLY = words("hardly barely not smell see hear feel taste no")
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
_LASTING = re.compile(
    r"pass|faint|black|unconsc|unresp|collaps|conscious|cold|desmay|breath|moving|respond|wak|limp|blue|down|ground|help"
)
_DONE = re.compile(r"(?:ed|ing|fell|fallen|went|gone|broke|broken|sank|sunk|stuck|cayo|hit|cut|lit|caught|left)$")


#: words before a telling that are looked at
_FAR = 30


def is_told(rule: Rule, match: Match, sentence: Sentence, line: str, later: str, danger: bool) -> bool:
    """Whether this match tells of something that is so now. `later`: what follows the sentence; `danger`: of the worst
    kind, where doubt counts as a telling.
    """
    start, end = match.head
    before = "".join(f"{word} " for word in sentence.words[max(0, start - _FAR) : start])
    clause = before.rsplit("|", 1)[-1]
    head = " ".join(sentence.words[start:end])
    last = max((stop for _, stop in (match.head, *match.slots)))
    after = " ".join(sentence.words[last:])
    if _denied(clause, head.split()[0]) or _denied_between(sentence, match):
        return False
    if _ANSWERED_NO.match(f"{after} {later.replace('||', '|', 1)}"):
        return False
    if _is_over(rule.hazard, head, sentence.text, line):
        return False
    story = _STORY.search(before)
    if story is not None and _INDEFINITE.search(before[story.start() :]):
        return False
    return not (_is_supposed(rule.hazard, danger, head, before, clause) or _is_asked(rule.bare, clause, sentence.text))


def _denied_between(sentence: Sentence, match: Match) -> bool:
    """Whether "not" or "no" stands between the head and what belongs to it."""
    start, end = match.head
    for low, high in match.slots:
        between = sentence.words[end:low] if low >= end else sentence.words[high:start]
        if low >= end and _DENIALS & set(between):
            return True
    return False


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
        if word == "and" and (after in _NEW_SUBJECT or after in ("it", "now", "there", "this")):
            return False
    return True


@lru_cache(maxsize=64)
def _holds(pattern: re.Pattern[str], text: str) -> bool:
    return pattern.search(text) is not None


def _is_over(hazard: str, head: str, sentence: str, line: str) -> bool:
    """Whether it is long past, or has been put right."""
    past = _holds(_LONG_PAST, sentence)
    if hazard in ("lid_broken", "ground_sunk"):
        return _holds(_MENDED, line) or (past and _OLD_LID.search(line) is not None)
    if hazard == "feeling_ill":
        return past or (_LASTING.search(head) is None and _holds(_GONE, line))
    if hazard == "fell_in":
        return past
    return past or (hazard not in ("going_in", "child_near") and _holds(_MENDED, line))


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


def _is_supposed(hazard: str, danger: bool, head: str, before: str, clause: str) -> bool:
    """Whether a supposition ("if", "in case", "how do I know") governs what follows."""
    for marker in _SUPPOSED.finditer(before):
        if marker.group() in _MODALS and head.split()[0] in _PLAINLY:
            continue
        between = before[marker.end() :].replace("|", " ").split()
        word = marker.group()
        if word.endswith("keep") and not between and head.split()[0].endswith("ing"):
            continue  # "I keep blacking out"
        if word in _MODALS:
            if _DONE.search(head.split()[0]) or (hazard == "feeling_ill" and word in ("might", "may", "could")):
                continue
            if hazard == "going_in" and word in ("can", "do", "did", "does"):
                if len(between) == 1 and between[0] in ("i", "we", "you") and word != "did":
                    return True
                continue
            if (
                len(between) <= 1
                and "have" not in between
                and "??" not in between
                and clause.strip().endswith(word if not between else f"{word} {between[0]}")
            ):
                return True
            continue
        if danger and not clause.strip() and "|" in before[marker.end() :].strip()[3:]:
            continue  # a new clause that starts with the act itself
        if len(between) <= 12 and _subjects(between) <= 1:
            return True
        if word.startswith("how ") and _subjects(between) <= 1:
            return True
    return False


def _is_asked(bare: bool, clause: str, sentence: str) -> bool:
    """Whether the clause only asks whether it is so."""
    start = _QUESTION.match(clause.strip())
    if start is None:
        return False
    word = start.group("word")
    rest = clause.strip()[start.end() :].split()
    if word == "who":
        return not rest or (bare and rest[0] in _MODALS)
    if word.startswith("any"):
        return _subjects(rest) == 0 and ("??" in sentence or len(sentence.split()) <= 4)
    if word in _WH:
        return bare and _subjects(rest) <= 1 and not _PRONOUNS & set(rest)
    if bare or len(rest) > 0:
        return _subjects(rest) <= 1 and not {"that"} & set(rest)
    return False


def is_doubtful(sentence: str) -> bool:
    """Whether the teller is not sure, or asks."""
    return "??" in sentence or _DOUBT.search(sentence) is not None


def is_question(line: str) -> bool:
    """Whether a line asks, or supposes."""
    return bool(_QUESTION.search(line) or "??" in line or _SUPPOSED.search(line))
