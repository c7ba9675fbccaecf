"""Days in the past as people type them: `last May`, `2019`, `3 years ago`, `5/4/2024`. Every reading is a span with
a middle.
"""

from __future__ import annotations

import calendar
import re
from dataclasses import dataclass
from datetime import date, timedelta
from fractions import Fraction
from typing import Literal

from selfcheck.domain.hedges import says_unknown
from selfcheck.domain.number_words import Number, Token, number_at, plain, tokens

Span = tuple[date, date]


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


_MONTHS = {
    name: number
    for number, names in enumerate(
        (
            "january jan januray janurary enero ene",
            "february feb febuary febrary feburary febrero",
            "march mar marzo",
            "april apr aprl abril abr", "may mayo", "june jun junio", "july jul julio", "august aug agust agosto",
            "september sep sept septmber setember septiembre setiembre",
            "october oct octobre octubre", "november nov novemeber noviembre", "december dec decmber diciembre dic",
        ), 1,
    )
    for name in names.split()
}  # fmt: skip
_MONTH = "(?:" + "|".join(sorted(_MONTHS, key=len, reverse=True)) + r")\b\.?"
_SEASONS = {
    "spring": 3,
    "primavera": 3,
    "summer": 6,
    "verano": 6,
    "fall": 9,
    "autumn": 9,
    "otono": 9,
    "winter": 12,
    "invierno": 12,
}
_SEASON = "(?:" + "|".join(_SEASONS) + ")"
_WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
_YEAR = r"(?:(?:19|20)\d\d)"
_UNIT_DAYS = {"day": 1.0, "week": 7.0, "month": 365.25 / 12, "year": 365.25}
_UNIT = {
    "day": "day", "days": "day", "dia": "day", "dias": "day", "week": "week", "weeks": "week", "wk": "week",
    "wks": "week", "semana": "week", "semanas": "week",
    "month": "month", "months": "month", "mo": "month", "mos": "month", "mes": "month", "meses": "month",
    "year": "year", "years": "year", "yr": "year", "yrs": "year", "yeas": "year", "yaers": "year", "ano": "year",
    "anos": "year",
}  # fmt: skip
_HALF_YEAR = re.compile(r"\b(?:a half|half a|half|medio) (?:year|yr|ano)\b")
_AGO = re.compile(
    r"\b(?:ago|back|before now|earlier|prior|since|hace|it's been|its been|been)\b|^[~#]|^(?:about|"
    r"around|roughly|maybe|over|more than|almost|nearly|at least|a good|like) #"
)
_AHEAD = re.compile(r"\bin (?:about )?#|\b(?:from now|hence|every|each|per|old|lasts?|until|within|dentro de)\b")
_ROUGH = re.compile(
    r"\b(?:about|around|arround|round|roughly|approx|approximately|circa|ca|maybe|probably|perhaps|"
    r"guess|think|or so|ish|sometime|unos|como|near|close to|believe)\b|~|\bc\. ?(?=\d)|\d ?-?ish\b"
)
_MORE = re.compile(r"\b(?:over|more than|at least|longer than|mas de|well over|beyond)\b|#\+|# ?(?:plus|or more)")
_LESS = re.compile(r"\b(?:under|less than|within|not even|menos de)\b")
_DENIED = re.compile(r"\b(?:not|wasn't|wasnt|isn't|isnt|didn't|didnt|before|after|since|until|every|by|except)\b")


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
    for read in (_numeric, _relative_word, _named, _ago):
        found = read(line, today)
        if found is not None:
            return found or None
    return None


def _day(year: int, month: int, day: int) -> Span | None:
    try:
        one = date(year, month, day)
    except ValueError:
        return None
    return (one, one) if 1900 <= year < 2100 else None


def _month(year: int, month: int) -> Span:
    return date(year, month, 1), date(year, month, calendar.monthrange(year, month)[1])


def _full_year(text: str, today: date) -> int:
    year = int(text)
    if year >= 100:
        return year
    return 2000 + year if year <= today.year % 100 + 10 else 1900 + year


def _rest_is_talk(rest: str) -> bool:
    """Whether what stands beside a date is only talk, and says neither "not" nor "before"."""
    return not re.search(r"\d", rest) and not _DENIED.search(rest)


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
            spans = [_day(int(packed[:4]), int(packed[4:6]), int(packed[6:]))]
        elif y and d:
            spans = [_day(int(y), int(m), int(d))]
        elif y or month:
            whole, part = int(y or only_year), int(m or month)
            spans = [_month(whole, part) if 1 <= part <= 12 and 1900 <= whole < 2100 else None]
        else:
            full = _full_year(year, _today)
            spans = [_day(full, int(a), int(b)), _day(full, int(b), int(a))]
        found.append(list(dict.fromkeys(span for span in spans if span)))
    if not found:
        return None
    if any(not spans for spans in found) or not _rest_is_talk(rest):
        return []
    return list(dict.fromkeys(span for spans in found for span in spans))


def _back(today: date, count: float, unit: str) -> date:
    """The day `count` units before today (after it when negative)."""
    if unit in ("year", "month") and float(count).is_integer():
        months = today.year * 12 + today.month - 1 - int(count) * (12 if unit == "year" else 1)
        year, month = divmod(months, 12)
        return date(year, month + 1, min(today.day, calendar.monthrange(year, month + 1)[1]))
    return today - timedelta(days=round(count * _UNIT_DAYS[unit]))


def _relative_word(line: str, today: date) -> list[Span] | None:
    """Days and stretches named from today: `yesterday`, `last week`, `this year`, `last Friday`."""
    talk = (
        r"(?:(?:it was|was|they came|just|earlier|early|late|only|done|pumped|emptied|checked|right|"
        r"sometime|i did it|we did it|in|on|about|around|i think|,) )*"
    )
    tail = r"(?: (?:morning|afternoon|evening|night|actually|i think|or so|sometime))*"
    match = re.fullmatch(
        rf"{talk}(today|now|just now|right now|this morning|this afternoon|this evening|tonight|hoy|ahora|"
        rf"yesterday|yesterdays?|last night|ayer|(?:the )?day before yesterday|anteayer|tomorrow|manana|"
        rf"(?:last|this|next|past|previous|the past|the last|the other|el ultimo|este|esta) (?:day|week|"
        rf"month|year|weekend|decade|{'|'.join(_WEEKDAYS)})|(?:el )?(?:ano|mes) pasado|(?:la )?semana "
        rf"pasada|este ano|este mes|"
        rf"{'|'.join(_WEEKDAYS)}){tail}",
        line,
    )
    if match is None:
        return None
    said = match.group(1)
    one = timedelta(days=1)
    if said in ("today", "now", "just now", "right now", "tonight", "hoy", "ahora") or (
        said.startswith("this ") and said.split()[1] in ("morning", "afternoon", "evening")
    ):
        return [(today, today)]
    if said in ("yesterday", "yesterdays", "last night", "ayer"):
        return [(today - one, today - one)]
    if "before yesterday" in said or said == "anteayer":
        return [(today - 2 * one, today - 2 * one)]
    if said in ("tomorrow", "manana"):
        return [(today + one, today + one)]
    which, thing = said.rsplit(" ", 1) if " " in said else ("", said)
    if thing == "pasado" or thing == "pasada":
        which, thing = "last", said.split()[-2]
    thing = {"ano": "year", "mes": "month", "semana": "week"}.get(thing, thing)
    if thing in _WEEKDAYS:
        back = (today.weekday() - _WEEKDAYS.index(thing)) % 7
        if which == "next":
            day = today + timedelta(days=7 - back if back else 7)
        else:
            day = today - timedelta(days=back or (0 if which == "this" or not which else 7))
        return [(day, day)]
    now = which in ("this", "este", "esta")
    move = 0 if now else 1 if which == "next" else -1
    if thing == "other day" or which == "the other":
        return [(today - timedelta(days=10), today - one)]
    if thing == "year":
        return [(date(today.year + move, 1, 1), today if now else date(today.year + move, 12, 31))]
    if thing == "month":
        first = _back(date(today.year, today.month, 1), -move, "month")
        return [(first, today if now else _month(first.year, first.month)[1])]
    if thing in ("week", "weekend"):
        monday = today - timedelta(days=today.weekday()) + timedelta(weeks=move)
        if thing == "weekend":
            return [(monday + timedelta(days=5), monday + timedelta(days=6))]
        return [(monday, today if now else monday + timedelta(days=6))]
    return [] if thing != "decade" else [(_back(today, 10, "year"), today)]


def _named(line: str, today: date) -> list[Span] | None:
    """Dates with a year or the name of a month, a season or a decade."""
    line = re.sub(r"(?<!\w)'(\d\d)(?!\d|s)", lambda two: str(_full_year(two.group(1), today)), line)
    line = re.sub(r"(\d)(?:st|nd|rd|th)\b", r"\1", line)
    line = re.sub(
        rf"\b({_MONTH}) (?:of |de |del )?(\d\d)$",
        lambda two: two.group() if int(two.group(2)) <= 31 else f"{two.group(1)} {_full_year(two.group(2), today)}",
        line,
    )
    pieces: list[Span] = []
    rest = line
    decade = re.search(
        r"\b(early |mid |mid-|late |the )*(?:(19|20)?(\d)0'?s|(nineties|eighties|seventies|sixties))\b", rest
    )
    if decade:
        start = {"nineties": 1990, "eighties": 1980, "seventies": 1970, "sixties": 1960}.get(decade.group(4) or "", 0)
        if not start:
            tens = 10 * int(decade.group(3))
            start = int(decade.group(2) or ("20" if tens <= 20 else "19")) * 100 + tens
        early, late = "early" in decade.group(), "late" in decade.group()
        mid = "mid" in decade.group()
        low = start + (6 if late else 3 if mid else 0)
        high = start + (3 if early else 6 if mid else 9)
        pieces.append((date(low, 1, 1), date(high, 12, 31)))
        rest = rest.replace(decade.group(), " ", 1)
    forms = (
        (rf"\b({_MONTH}) (?:the )?(\d{{1,2}})(?:,? ?(?:of |in )?({_YEAR}))?(?!\d)", "mdy"),
        (rf"\b(?:the )?(\d{{1,2}}) (?:of |de )?({_MONTH})(?:,? ?(?:of |de |del |in )?({_YEAR}))?(?!\d)", "dmy"),
        (
            (
                rf"\b(?:(last|this|next|past|in|the|early|mid|late|end of|beginning of|start of|back in) "
                rf")*({_MONTH}),? ?(?:of |de |del |in )?({_YEAR})?(?!\d)"
            ),
            "my",
        ),
        (
            (
                rf"\b(?:(last|this|next|past|in|the|early|mid|late|back in) )*({_SEASON})(?:,? ?(?:of |de |del |in "
                rf")?({_YEAR}))?"
            ),
            "sy",
        ),
        (rf"\b(?:(early|mid|mid-|middle of|late|end of|beginning of|start of)[ -]?(?:in )?)?({_YEAR})\b(?!s)", "y"),
    )
    for pattern, form in forms:
        for match in re.finditer(pattern, rest):
            span = _form(form, match, today)
            if span is None:
                return []
            pieces.append(span)
        rest = re.sub(pattern, " ~~ ", rest)
    holiday = re.search(
        r"\b(?:christmas|xmas|thanksgiving|new year'?s?|easter|labor day|memorial day|halloween)\b", rest
    )
    if not pieces and holiday:
        month = {"c": 12, "x": 12, "t": 11, "n": 1, "e": 4, "l": 9, "m": 5, "h": 10}[holiday.group()[0]]
        year = today.year if month < today.month else today.year - 1
        pieces.append(_month(year, month))
        rest = rest.replace(holiday.group(), " ", 1)
    if not pieces:
        return None
    words = rest.replace("~~", " ")
    if len(pieces) > 1:
        join = re.search(
            r"(?:~~ (?:-|to|or|through|o|a|hasta)|(?:between|from|entre) ~~ (?:and|y|to)) ~~", " ".join(rest.split())
        ) or re.search(r"\d{4} ?(?:-|to|or) ?\d{4}|between \d{4} and \d{4}", line)
        if join and not re.search(r"\d", words) and not re.search(r"\b(?:not|every)\b", words):
            return [(min(first for first, _ in pieces), max(last for _, last in pieces))]
        return list(dict.fromkeys(pieces)) if not re.search(r"\d", words) else []
    if not _rest_is_talk(words):
        return []
    first, last = pieces[0]
    if _ROUGH.search(line) and (last - first).days > 300:
        return [(date(first.year - 1, 1, 1), date(last.year + 1, 12, 31))]
    if _ROUGH.search(line) and last > first:
        return [(first - timedelta(days=30), last + timedelta(days=30))]
    return [(first, last)]


def _form(form: str, match: re.Match[str], today: date) -> Span | None:
    """The span of one match of `_named`; None for a day that does not exist."""
    which, second, year_text = match.group(1), match.group(2), match.group(3) if form != "y" else None
    if form in ("mdy", "dmy"):
        name, number = (which, second) if form == "mdy" else (second, which)
        month = _MONTHS[name.rstrip(".")]
        if year_text:
            return _day(int(year_text), month, int(number))
        span = _day(today.year, month, int(number)) or _day(today.year - 1, month, int(number))
        if span and span[0] > today:
            return _day(today.year - 1, month, int(number))
        return span
    if form == "y":
        year = int(second)
        if which in ("early", "beginning of", "start of"):
            return date(year, 1, 1), date(year, 4, 30)
        if which and which.startswith("mid"):
            return date(year, 5, 1), date(year, 8, 31)
        return (date(year, 9, 1) if which in ("late", "end of") else date(year, 1, 1)), date(year, 12, 31)
    if form == "my":
        month = _MONTHS[second.rstrip(".")]
        if year_text:
            return _month(int(year_text), month)
        year = today.year if month < today.month or (month == today.month and which != "last") else today.year - 1
        if which == "next":
            year = today.year + (month <= today.month)
        first, last = _month(year, month)
        return first, min(last, today) if first <= today else last
    start = _SEASONS[second]
    if year_text:
        year = int(year_text)
        if start == 12:
            return date(year - 1, 12, 1), date(year + 1, 2, 28)
        return date(year, start, 1), _month(year, start + 2)[1]
    year = today.year if date(today.year, start, 1) <= today else today.year - 1
    if which == "last" and _season_end(year, start) >= today:
        year -= 1
    if which == "next":
        year = today.year if date(today.year, start, 1) > today else today.year + 1
        return date(year, start, 1), _season_end(year, start)
    return date(year, start, 1), min(today, _season_end(year, start))


def _season_end(year: int, start: int) -> date:
    return _month(year + 1, 2)[1] if start == 12 else _month(year, start + 2)[1]


def _ago(line: str, today: date) -> list[Span] | None:
    """So many days, weeks, months or years back; `in 3 years` lies ahead."""
    parts = tokens(line.replace("'", " ") if "'s" not in line else line)
    marks: list[tuple[Number, str]] = []
    words: list[str] = []
    at = 0
    while at < len(parts):
        number, end = None, at
        text = parts[at].text
        if text in ("few", "several"):
            number, end = Number(Fraction(3 if text == "few" else 5), loose=True), at + 1
        elif (
            text in ("a", "an", "un", "una")
            and at + 1 < len(parts)
            and parts[at + 1].text in (*_UNIT, "decade", "decada")
        ):
            number, end = Number(Fraction(1)), at + 1
        else:
            read = number_at(parts, at)
            if read is not None:
                number, end = read
        unit_word = parts[end].text if number is not None and end < len(parts) else ""
        if unit_word in ("decade", "decades", "decada", "decadas") and number is not None:
            number, unit_word = Number(number.value * 10, loose=True), "years"
        if number is not None and unit_word in _UNIT:
            after = _half_after(parts, end + 1)
            if after:
                number = Number(number.value + Fraction(1, 2), loose=number.loose)
            marks.append((number, _UNIT[unit_word]))
            words.append("#")
            at = end + 1 + after
        else:
            words.append(text if number is None else "?number")
            at = max(end, at + 1)
    skeleton = " ".join(words)
    if len(marks) == 2 and re.search(r"# (?:,|and|y) #", skeleton) and {unit for _, unit in marks} == {"year", "month"}:
        total = sum(number.value * (12 if unit == "year" else 1) for number, unit in marks)
        marks, skeleton = [(Number(Fraction(total)), "month")], re.sub(r"# (?:,|and|y) #", "#", skeleton)
    between = re.search(r"\?number (?:-|to|or|a|o) #", skeleton)
    if len(marks) == 1 and between:
        return _between(line, parts, marks[0], today)
    if len(marks) != 1 or "?number" in skeleton:
        return [] if marks else None
    number, unit = marks[0]
    count = float(number.value)
    if count * _UNIT_DAYS[unit] > 365.25 * 120:
        return []
    if _AHEAD.search(skeleton):
        ahead = re.search(r"\b(?:in (?:about )?#|# from now|# hence|dentro de #)", skeleton)
        return [_around(today, -count, unit)] if ahead else []
    if not _AGO.search(skeleton) or re.search(r"\b(?:not|wasn't|isn't)\b(?! even)", skeleton):
        return []
    if _MORE.search(skeleton):
        return [(_back(today, count * 1.5, unit), _back(today, count, unit))]
    if _LESS.search(skeleton):
        return [(_back(today, count, unit), today)]
    return [_around(today, count, unit, bool(number.loose or _ROUGH.search(skeleton)))]


def _half_after(parts: list[Token], at: int) -> int:
    """Number of tokens of "and a half" after a unit, or 0."""
    words = [part.text for part in parts[at : at + 3]]
    if words[:3] == ["and", "a", "half"]:
        return 3
    return 2 if words[:2] in (["and", "half"], ["y", "medio"], ["y", "media"]) else 0


def _between(line: str, parts: list[Token], mark: tuple[Number, str], today: date) -> list[Span]:
    numbers = [int(found) for found in re.findall(r"\d+", line)]
    if len(numbers) != 2 or max(numbers) > 120:
        return []
    low, high = sorted(numbers)
    return [(_around(today, high, mark[1])[0], _around(today, low, mark[1])[1])]


def _around(today: date, count: float, unit: str, rough: bool = False) -> Span:
    """The stretch that "3 years ago" covers: half a unit to either side, a whole one when it is rough; days are
    exact.
    """
    middle = _back(today, count, unit)
    if unit == "day" and not rough:
        return middle, middle
    half = timedelta(days=round(_UNIT_DAYS[unit] * (1 if rough else 0.5)))
    if count < 0:
        return max(middle - half, today + timedelta(days=1)), middle + half
    width = min(half, max(today - middle, timedelta(0)))
    return middle - width, middle + width
