"""Whether a telling is of something that is so now: not denied, not long past or put right, not asked, not supposed."""

from __future__ import annotations

import re
from functools import lru_cache

from selfcheck.interview.hazard_concepts import LEXICON
from selfcheck.interview.hazard_sentences import LIVING, Match, Rule, Sentence
from selfcheck.interview.hazard_telling_words import (
    ACTED,
    AGAIN_ASKED,
    AHEAD,
    ANSWERED_NO,
    AT_OTHER_PLACE,
    BINDING,
    DAY_PAST,
    DENIALS,
    DETERMINERS,
    DOERS,
    DONE,
    DOUBT,
    ELSEWHERE,
    EMPHATIC,
    FICTION,
    FINITE,
    GONE,
    HAD,
    INDEFINITE,
    LACKS,
    LASTING,
    LONG_PAST,
    LOOKING,
    MENDED,
    MENDERS,
    MODALS,
    NEW_SUBJECT,
    NOT_ANY,
    OF_ANY,
    OFFERS,
    OLD_LID,
    PLAINLY,
    PREPOSITIONS,
    PRONOUNS,
    QUESTION,
    STORY,
    SUPPOSED,
    WH,
)

#: words before a telling that are looked at
_FAR = 30


def is_told(rule: Rule, match: Match, sentence: Sentence, line: str, *, danger: bool) -> bool:
    """Whether this match tells of something that is so now.

    `danger`: of something of the worst kind, where doubt counts as a telling.
    """
    start, end = match.head
    before = "".join(f"{word} " for word in sentence.words[max(0, start - _FAR) : start])
    clause = before.rsplit("|", 1)[-1]
    head = " ".join(sentence.words[start:end])
    last = max((stop for _, stop in (match.head, *match.slots)))
    after = " ".join(sentence.words[last:])
    if _denied(clause, head.split()[0]) or _denied_between(sentence, match):
        return False
    if ANSWERED_NO.match(f"{after} {sentence.later.replace('||', '|', 1)}"):
        return False
    if _is_over(rule.hazard, head, before, sentence.text, line, f"{head} {after} {sentence.later}"):
        return False
    if _holds(FICTION, sentence.text) or (not danger and _holds(ELSEWHERE, line)):
        return False
    if rule.hazard == "feeling_ill" and AT_OTHER_PLACE.match(after):
        return False
    story = STORY.search(before)
    if story is not None and INDEFINITE.search(before[story.start() :]):
        return False
    return not (
        _is_supposed(rule.hazard, danger, head, before, clause) or _is_asked(rule.bare, clause, head, sentence.text)
    )


def told_as_so(sentence: Sentence, line: str) -> bool:
    """Whether nothing in a sentence asks, supposes, denies or looks back, and nothing in the line says it is put right.

    Stricter than `is_told`, which looks at what stands around one match.
    """
    text = sentence.text
    spans = (span for concept in LACKS for span in sentence.found.get(concept, ()))
    told = {place for start, end in spans for place in range(start, end)}
    if any(word in DENIALS and place not in told for place, word in enumerate(sentence.words)):
        return False
    if (
        "??" in text
        or sentence.words[:1] == ["why"]
        or QUESTION.search(text)
        or STORY.search(text)
        or FICTION.search(line)
        or ELSEWHERE.search(line)
    ):
        return False
    if any(pattern.search(line) for pattern in (LONG_PAST, DAY_PAST, MENDED)):
        return False
    if ANSWERED_NO.match(sentence.later):
        return False
    return all(
        marker.group() in EMPHATIC or PLAINLY & set(text[marker.end() :].split()[:1])
        for marker in SUPPOSED.finditer(text)
    )


def _denied_between(sentence: Sentence, match: Match) -> bool:
    """Whether "not" or "no" stands between the head and what belongs to it, and belongs to none of these itself."""
    _, end = match.head
    own = {place for low, high in match.slots for place in range(low, high)}
    last = max((low for low, _ in match.slots), default=end)
    return any(sentence.words[place] in DENIALS and place not in own for place in range(end, last))


def _is_living(word: str) -> bool:
    return bool(LIVING & set(LEXICON.of(word)))


def _denied(clause: str, first: str) -> bool:
    """Whether the last denial of the clause reaches to its end."""
    words = clause.split()
    at = max((index for index, word in enumerate(words) if word in DENIALS), default=-1)
    if at < 0:
        return False
    gap = words[at + 1 :]
    if len(gap) > 8:
        return False
    if BINDING & set(gap[:2]):
        return True
    looking = bool(LOOKING & set(gap[:2]))
    if gap and gap[-1] in ("and", "then") and words[at] == "not" and (DONE.search(first) or first in FINITE):
        return False
    for index, word in enumerate(gap):
        after = gap[index + 1] if index + 1 < len(gap) else ""
        if word in PRONOUNS and not (index == 0 and words[at] in ("nor", "neither")):
            return False
        if word in DETERMINERS and index > 0 and gap[index - 1] not in PREPOSITIONS and not looking:
            if word in NOT_ANY and ACTED.search(gap[index - 1]) and not _is_living(after):
                continue
            return False
        if (
            word in NEW_SUBJECT
            and index > 0
            and after in ("is", "are", "has", "just", "keeps", "fell", "")
            and words[at] == "no"
            and not looking
        ):
            return after == ""
        if word == "and" and (after in NEW_SUBJECT or after in ("it", "now", "there", "this")):
            return False
    return True


@lru_cache(maxsize=64)
def _holds(pattern: re.Pattern[str], text: str) -> bool:
    return pattern.search(text) is not None


def _is_over(hazard: str, head: str, before: str, sentence: str, line: str, since: str) -> bool:
    """Whether it is long past, or has been put right. `since`: what follows from the head on."""
    past = _holds(LONG_PAST, sentence)
    if hazard in ("lid_broken", "ground_sunk"):
        return _holds(MENDED, line) or (past and OLD_LID.search(line) is not None) or "used to" in before
    if hazard == "feeling_ill":
        if past or LASTING.search(head) is not None:
            return past
        return GONE.search(since) is not None or (HAD.search(before) is not None and _holds(DAY_PAST, sentence))
    if hazard == "fell_in":
        return past
    return past or (hazard not in ("going_in", "child_near") and _holds(MENDED, line))


def _subjects(words: list[str]) -> int:
    """How many subjects stand among the words: pronouns, and nouns with an article that no preposition governs."""
    count = 0
    for index, word in enumerate(words):
        before = words[index - 1] if index else ""
        if (
            (word in PRONOUNS and (word != "you" or index == 0))
            or word == "it"
            or (word in NEW_SUBJECT and before not in DETERMINERS and before not in PREPOSITIONS)
        ):
            count += before not in PREPOSITIONS
        elif word in DETERMINERS and before not in PREPOSITIONS and word != "that":
            count += 1
    return count


def _is_supposed(hazard: str, danger: bool, head: str, before: str, clause: str) -> bool:
    """Whether a supposition ("if", "in case", "how do I know") governs what follows."""
    if AHEAD.match(clause):
        return True
    for marker in SUPPOSED.finditer(before):
        if marker.group() in MODALS and PLAINLY & {head.split()[0], *before[marker.end() :].split()[:1]}:
            continue
        between = before[marker.end() :].replace("|", " ").split()
        word = marker.group()
        kept = next((one for one in (*between, *head.split()) if one not in ("almost", "nearly", "just")), "")
        if word.endswith("keep") and kept.endswith("ing"):
            continue  # "I keep blacking out"
        if word in EMPHATIC and not between and not clause.startswith(word):
            continue  # "he did fall in"
        if hazard == "going_in" and word in OFFERS and DOERS & set(before[: marker.start()].split()[-1:]):
            continue  # "I could just climb in": an offer
        if word in MODALS:
            if DONE.search(head.split()[0]) or (hazard == "feeling_ill" and word in ("might", "may", "could")):
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


def _is_asked(bare: bool, clause: str, head: str, sentence: str) -> bool:
    """Whether the clause only asks whether it is so."""
    clause = AGAIN_ASKED.split(clause)[-1]
    start = QUESTION.match(clause.strip())
    if start is None:
        return False
    word = start.group("word")
    rest = clause.strip()[start.end() :].split()
    if (rest or head.split())[0] == "not" and "??" not in sentence:
        return False  # "can not reach it so I am going in": the "I" is left out
    if word == "who":
        return not rest or rest[0] in MENDERS
    if word == "when" and rest[:1] and rest[0] in OF_ANY:
        return True
    if word.startswith("any"):
        return _subjects(rest) == 0 and ("??" in sentence or len(sentence.split()) <= 4)
    if word in WH:
        return bare and _subjects(rest) <= 1 and not PRONOUNS & set(rest)
    if bare or len(rest) > 0:
        return _subjects(rest) <= 1 and not {"that"} & set(rest)
    return False


def is_doubtful(sentence: str) -> bool:
    """Whether the teller is not sure, or asks."""
    return "??" in sentence or DOUBT.search(sentence) is not None


def is_question(line: str) -> bool:
    """Whether a line asks, or supposes."""
    return bool(QUESTION.search(line) or "??" in line or SUPPOSED.search(line))
