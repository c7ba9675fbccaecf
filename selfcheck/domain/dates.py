"""Days in the past as people type them: `last May`, `2019`, `3 years ago`, `5/4/2024`. Every reading is a span with
a middle.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from selfcheck.domain.dates_ago import ago, relative_word
from selfcheck.domain.dates_named import named
from selfcheck.domain.hedges import says_unknown
from selfcheck.domain.number_words import plain
from selfcheck.domain.spans import Span, day_of, full_year, month_of, rest_is_talk


@dataclass(frozen=True, slots=True)
class DateReading:
    """What a line says of a day. `day` is the middle of `earliest`…`latest`.

    `meanings`: for `ask`, each as (ISO label, day). `future`: the whole span lies after
    today. `never`: it has not happened.
    """

    status: Literal["value", "ask", "none", "unclear"]
    day: date | None = None
    earliest: date | None = None
    latest: date | None = None
    said: str = ""
    meanings: tuple[tuple[str, date], ...] = ()
    future: bool = False
    never: bool = False


_HALF_YEAR = re.compile(r"\b(?:a half|half a|half|medio) (?:year|yr|ano)\b")


def read_date(text: str, today: date) -> DateReading:
    """Read a day or a stretch of time; `today` is the day it is said.

    Status `value` with span and middle; `ask` when day and month may be swapped or two dates stand in the line;
    `none` when not
    known or nothing typed, with `never` set when it has not happened; `unclear` otherwise. Years 1900 to 2099.
    """
    said = text.strip()[:80]
    line = plain(text)
    if line is None:
        return DateReading("unclear", said=said)
    bare = " ".join(re.sub(r"[!?;:\"()]", " ", line).split()).strip(" .,")
    if re.fullmatch(
        (
            r"(?:(?:i|we|it|it's|its|has|have|was|he|they|as far as i know|to my knowledge) )*(?:never|nunca|"
            r"has never been|never been|never has|never have|hasn't(?: ever)? been|not once|not yet|no never|"
            r"still waiting)"
            r"(?: (?:been |was |were |got |had it )?(?:pumped|done|emptied|cleaned|checked|opened|looked|"
            r"measured|ever|at all|before|it|out|that i know(?: of)?|afaik|as far as i know))*"
        ),
        bare.replace(",", ""),
    ):
        return DateReading("none", said=said, never=True)
    if (
        not bare
        or says_unknown(bare.replace("-", " "))
        or re.fullmatch(r"(?:no one|nobody) (?:knows|remembers)|before (?:my|our) time|ages ago|long ago", bare)
    ):
        return DateReading("none", said=said)
    spans = _spans(bare, today)
    if spans is None:
        return DateReading("unclear", said=said)
    if len(spans) > 1:
        meanings = tuple((_iso(span), _middle(span)) for span in spans[:4])
        return DateReading("ask", said=said, meanings=meanings)
    first, last = spans[0]
    return DateReading("value", _middle((first, last)), first, last, said, future=first > today)


def _middle(span: Span) -> date:
    return span[0] + (span[1] - span[0]) // 2


def _iso(span: Span) -> str:
    first, last = span
    if first == last:
        return first.isoformat()
    if first.day == 1 and (last + timedelta(days=1)).day == 1 and (first.year, first.month) == (last.year, last.month):
        return first.isoformat()[:7]
    return f"{first.isoformat()}/{last.isoformat()}"


def _spans(line: str, today: date) -> list[Span] | None:
    """The spans a line may mean: one when it is certain, more when it must be asked, None when it says no date."""
    line = _HALF_YEAR.sub("6 months", line)
    line = re.sub(r"\b((?:19|20)\d\d) ?-?ish\b", r"about \1", line)
    line = re.sub(r"^like (?=\d)", "about ", line)
    line = re.sub(r"\b(\d+) ?\+ (?=y)|\b(\d+) ?\+(?=y)", r"over \1\2 ", line)
    line = re.sub(r"\b(?:the )?year before last\b", str(today.year - 2), line)
    line = re.sub(r"\b(of|in|early|late|mid) (last|this) year\b", lambda one: _year_said(one, today), line)
    for read in (_numeric, relative_word, named, ago):
        found = read(line, today)
        if found is not None:
            return found or None
    return None


def _year_said(said: re.Match[str], today: date) -> str:
    """The part of a year that is named from today: "the end of last year"."""
    return f"{said.group(1)} {today.year - (said.group(2) == 'last')}"


def _numeric(line: str, _today: date) -> list[Span] | None:
    """Dates in digits: `2019-05-04`, `5/4/2024`, `5/2024`, `20240504`."""
    found: list[list[Span]] = []
    pattern = (
        r"(?<![\d/.-])(?:(\d{4})[-/.](\d{1,2})(?:[-/.](\d{1,2}))?|(\d{1,2}) ?[-/.] ?(\d{1,2}) ?[-/.] "
        r"?(\d{4}|\d\d)|(\d{1,2})[-/.](\d{4})|((?:19|20)\d{6}))(?![\d/-])"
    )
    rest = re.sub(pattern, " ", line)
    for match in re.finditer(pattern, line):
        y, m, d, a, b, year, month, only_year, packed = match.groups()
        spans: list[Span | None] = []
        if packed:
            spans = [day_of(int(packed[:4]), int(packed[4:6]), int(packed[6:]))]
        elif y and d:
            spans = [day_of(int(y), int(m), int(d))]
        elif y or month:
            whole, part = int(y or only_year), int(m or month)
            spans = [month_of(whole, part) if 1 <= part <= 12 and 1900 <= whole < 2100 else None]
        else:
            full = full_year(year, _today)
            spans = [day_of(full, int(a), int(b)), day_of(full, int(b), int(a))]
        found.append(list(dict.fromkeys(span for span in spans if span)))
    if not found:
        return None
    if any(not spans for spans in found) or not rest_is_talk(rest):
        return []
    return list(dict.fromkeys(span for spans in found for span in spans))
