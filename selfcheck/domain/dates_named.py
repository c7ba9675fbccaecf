"""Dates with a year or the name of a month, a season or a decade."""

from __future__ import annotations

import re
from datetime import date, timedelta

from selfcheck.domain.spans import ROUGH, Span, day_of, full_year, month_of, rest_is_talk

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


_YEAR = r"(?:(?:19|20)\d\d)"


def named(line: str, today: date) -> list[Span] | None:
    """Dates with a year or the name of a month, a season or a decade."""
    line = re.sub(r"(?<!\w)'(\d\d)(?!\d|s)", lambda two: str(full_year(two.group(1), today)), line)
    line = re.sub(r"(\d)(?:st|nd|rd|th)\b", r"\1", line)
    line = re.sub(
        rf"\b({_MONTH}) (?:of |de |del )?(\d\d)$",
        lambda two: two.group() if int(two.group(2)) <= 31 else f"{two.group(1)} {full_year(two.group(2), today)}",
        line,
    )
    line = re.sub(rf"\b({_MONTH} \d{{1,2}}), ?(\d\d)$", lambda two: f"{two[1]}, {full_year(two[2], today)}", line)
    line = re.sub(rf"\b({_MONTH}) of (\d\d)$", lambda two: f"{two[1]} {full_year(two[2], today)}", line)
    line = re.sub(r"^((?:back )?in )(\d\d)$|^()([3-9]\d)$", lambda two: str(full_year(two[2] or two[4], today)), line)
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
        pieces.append(month_of(year, month))
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
    if not rest_is_talk(words):
        return []
    first, last = pieces[0]
    if ROUGH.search(line) and (last - first).days > 300:
        return [(date(first.year - 1, 1, 1), date(last.year + 1, 12, 31))]
    if ROUGH.search(line) and last > first:
        return [(first - timedelta(days=30), last + timedelta(days=30))]
    return [(first, last)]


def _form(form: str, match: re.Match[str], today: date) -> Span | None:
    """The span of one match of `named`; None for a day that does not exist."""
    which, second, year_text = match.group(1), match.group(2), match.group(3) if form != "y" else None
    if form in ("mdy", "dmy"):
        name, number = (which, second) if form == "mdy" else (second, which)
        month = _MONTHS[name.rstrip(".")]
        if year_text:
            return day_of(int(year_text), month, int(number))
        span = day_of(today.year, month, int(number)) or day_of(today.year - 1, month, int(number))
        if span and span[0] > today:
            return day_of(today.year - 1, month, int(number))
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
            return month_of(int(year_text), month)
        year = today.year if month < today.month or (month == today.month and which != "last") else today.year - 1
        if which == "next":
            year = today.year + (month <= today.month)
        first, last = month_of(year, month)
        return first, min(last, today) if first <= today else last
    start = _SEASONS[second]
    if year_text:
        year = int(year_text)
        if start == 12:
            return date(year - 1, 12, 1), date(year + 1, 2, 28)
        return date(year, start, 1), month_of(year, start + 2)[1]
    year = today.year if date(today.year, start, 1) <= today else today.year - 1
    if which == "last" and _season_end(year, start) >= today:
        year -= 1
    if which == "next":
        year = today.year if date(today.year, start, 1) > today else today.year + 1
        return date(year, start, 1), _season_end(year, start)
    return date(year, start, 1), min(today, _season_end(year, start))


def _season_end(year: int, start: int) -> date:
    return month_of(year + 1, 2)[1] if start == 12 else month_of(year, start + 2)[1]
