"""Counts, plain numbers, and yes or no, as people type them. Nothing here is matched by likeness."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from selfcheck.domain.amount_grammar import Line, read_line
from selfcheck.domain.amount_links import link
from selfcheck.domain.hedges import says_none, says_unknown
from selfcheck.domain.number_words import plain


@dataclass(frozen=True, slots=True)
class CountReading:
    """A whole count, 0 to 1000. `low` and `high` differ for "2 or 3", whose value is the higher (the careful side)."""

    status: Literal["value", "ask", "none", "unclear"]
    value: int | None = None
    low: int | None = None
    high: int | None = None
    said: str = ""


@dataclass(frozen=True, slots=True)
class NumberReading:
    """A plain number and its standard error, for questions that count something other than lengths."""

    status: Literal["value", "ask", "none", "unclear"]
    value: float | None = None
    error: float | None = None
    said: str = ""


_PEOPLE = (
    r"(?:people|persons?|adults?|grown ?ups?|kids?|child(?:ren)?|children|teens?|teenagers?|bab(?:y|"
    r"ies)|toddlers?|infants?|residents?|occupants?|boys?|girls?|sons?|daughters?|parents?|"
    r"grandparents?|grandkids?|roommates?|tenants?|guests?|lodgers?|personas?|ninos?|adultos?|hijos?|"
    r"of us|old folks|mom|mum|dad|mother|father|grandma|grandpa)"
)
_ALONE = re.compile(
    r"(?:it'?s |its )?(?:just|only|solo|myself|me)(?: for)?(?: me| myself| yo| the one of us)?(?: "
    r"(?:here|now|alone|living here|at home|and my (?:dog|dogs|cat|cats|pets?)|in the house))*|"
    r"i live (?:alone|by myself|on my own)|(?:solo )?yo|vivo sol[oa]|by myself|on my own"
)
_TWO = re.compile(
    r"(?:(?:it'?s |its )?(?:just |only )?)?(?:(?:me|myself|i) (?:and|&|n|plus) (?:my |the )?(?:wife|"
    r"husband|partner|spouse|girlfriend|boyfriend|son|daughter|mom|mum|dad|mother|father|sister|"
    r"brother|roommate|hubby|him|her)|"
    r"(?:my )?(?:wife|husband|partner|spouse) (?:and|&|n) (?:me|i|myself)|the two of us|(?:a|one) "
    r"couple|both of us|us two|we two)(?: (?:here|now|living here|at home|in the house))*"
)
_MINUS = re.compile(r"\b(?:minus|negative|not|n't|isn't|aren't|used to|will be|going to be|soon|last year|ago)\b")
_NOISE = re.compile(r"# ?(?:dogs?|cats?|pets?|horses?|chickens?|cows?|cars?|fish|bathrooms?|baths?)\b")
_WEEK = re.compile(
    r"# (?:years?|yrs?|months?|weeks?|days?|in(?! (?:total|the|our|my|all|this|here))|ft|feet|gallons?|%|percent)\b"
)


_ME = re.compile(
    r"^(?:(?:it'?s |its )?(?:just |only )?(?:me|myself|i))\b(?! think| guess| have| would| don)|"
    r"\b(?:and|plus|&) (?:me|myself|i)\b"
)
#: people named without a number
_ONE_MORE = re.compile(
    r"(?<!# )\b(?:wife|husband|partner|spouse|girlfriend|boyfriend|hubby|mom|mum|mother|dad|father|grandma|grandpa|"
    r"grandmother|grandfather|son|daughter|brother|sister|aunt|uncle|cousin|roommate|baby)\b"
)
_NOBODY = re.compile(
    r"(?:no ?one|nobody|nadie)(?: (?:lives?|living|is|stays|here|there|now|right now|at all|in the house|at home))*"
)


def read_count(text: str) -> CountReading:
    """Read how many: `three`, `2 adults and 2 kids` (4), `just me` (1), `a family of five`. Pets do not count.

    A part of one ("4.5") and two unlinked numbers are `ask`; negative or over 1000 is `unclear`.
    """
    said = text.strip()[:80]
    flat = plain(text)
    if flat is None:
        return CountReading("unclear", said=said)
    bare = " ".join(re.sub(r"[.,;:!?]", " ", flat).split())
    if _ALONE.fullmatch(bare):
        return CountReading("value", 1, 1, 1, said)
    if _TWO.fullmatch(bare):
        return CountReading("value", 2, 2, 2, said)
    if _NOBODY.fullmatch(bare):
        return CountReading("value", 0, 0, 0, said)
    if bare.startswith(("no one", "noone")):
        return CountReading("unclear", said=said)
    line = _people(link(read_line(_counted(flat), "length")))
    if not line.amounts:
        if says_none(line.skeleton):
            return CountReading("value", 0, 0, 0, said)
        empty = not bare or says_unknown(line.skeleton)
        return CountReading("none" if empty else "unclear", said=said)
    if line.broken or _MINUS.search(line.skeleton) or any(amount.unit for amount in line.amounts):
        return CountReading("unclear", said=said)
    if _WEEK.search(line.skeleton):
        return CountReading("unclear", said=said)
    if len(line.amounts) > 1 and not _adds_up(line.skeleton):
        return CountReading("ask", said=said)
    low = sum((amount.low for amount in line.amounts), Fraction(0))
    high = sum((amount.high for amount in line.amounts), Fraction(0))
    others = len(_ONE_MORE.findall(line.skeleton))
    if others and not _ME.search(line.skeleton):
        return CountReading("ask", said=said)
    if _ME.search(line.skeleton) and re.search(rf"# ?(?:\w+ )?{_PEOPLE}", line.skeleton):
        low, high = low + 1 + others, high + 1 + others
    if low.denominator != 1 or high.denominator != 1:
        return CountReading("ask", said=said)
    if high > 1000:
        return CountReading("unclear", said=said)
    return CountReading("value", int(high), int(low), int(high), said)


def _counted(flat: str) -> str:
    """Words that stand for one person in a sum, as a number."""
    return re.sub(rf"\b(?:a|an) (?={_PEOPLE}\b)", "1 ", flat)


def _people(line: Line) -> Line:
    """Drop pets and the like from the sum."""
    match = _NOISE.search(line.skeleton)
    if match is None or len(line.amounts) < 2:
        return line
    index = line.skeleton[: match.start()].count("#")
    amounts = (*line.amounts[:index], *line.amounts[index + 1 :])
    return _people(Line(amounts, f"{line.skeleton[: match.start()]}{line.skeleton[match.end() :]}", line.broken))


def _adds_up(skeleton: str) -> bool:
    """Whether the numbers are parts of one sum: each has people after it, or `and` and `+` stand between."""
    return len(re.findall(rf"# ?(?:\w+ )?{_PEOPLE}\b", skeleton)) == skeleton.count("#") or (
        re.search(rf"# ?{_PEOPLE}", skeleton) is not None
        and re.search(r"# \w+ (?:and|plus|&|\+|,) #", skeleton) is not None
    ) or re.fullmatch(r"# (?:(?:\+|plus) #)+", skeleton) is not None  # fmt: skip


def read_number(text: str) -> NumberReading:
    """Read a plain number, whole or not, possibly a range: `4.5`, `three and a half`, `2-3`. Units are not looked
    at.
    """
    said = text.strip()[:80]
    line = link(read_line(text, "length"))
    if not line.amounts:
        if says_none(line.skeleton) and not line.broken:
            return NumberReading("value", 0.0, 0.0, said)
        empty = not line.broken and (not line.skeleton.strip(" .") or says_unknown(line.skeleton))
        return NumberReading("none" if empty else "unclear", said=said)
    if line.broken or _MINUS.search(line.skeleton) or any(amount.unit for amount in line.amounts):
        return NumberReading("unclear", said=said)
    amount = line.amounts[0]
    if len(line.amounts) > 1 or (amount.other is not None and "." in text):
        return NumberReading("ask", said=said)
    rough = (
        re.search(r"\b(?:about|around|roughly|approx|maybe|or so|ish)\b|~", line.skeleton) is not None or amount.loose
    )
    error = max(float(amount.high - amount.low) / 2, 0.1 * float(amount.middle) if rough else 0.0)
    return NumberReading("value", float(amount.middle), error, said)
