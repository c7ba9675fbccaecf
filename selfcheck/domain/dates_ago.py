"""Days named from today: `yesterday`, `last week`, `3 years ago`."""

from __future__ import annotations

import calendar
import re
from datetime import date, timedelta
from fractions import Fraction

from selfcheck.domain.number_words import Number, Token, number_at, tokens
from selfcheck.domain.spans import ROUGH, Span, month_of

_WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]


_UNIT_DAYS = {"day": 1.0, "week": 7.0, "month": 365.25 / 12, "year": 365.25}


_UNIT = {
    "day": "day", "days": "day", "dia": "day", "dias": "day", "week": "week", "weeks": "week", "wk": "week",
    "wks": "week", "semana": "week", "semanas": "week",
    "month": "month", "months": "month", "mo": "month", "mos": "month", "mes": "month", "meses": "month",
    "year": "year", "years": "year", "yr": "year", "yrs": "year", "yeas": "year", "yaers": "year", "ano": "year",
    "anos": "year",
}  # fmt: skip


_AGO = re.compile(
    r"\b(?:ago|back|before now|earlier|prior|since|hace|it's been|its been|been)\b|^[~#]|^(?:about|"
    r"around|roughly|maybe|over|more than|almost|nearly|at least|a good|like) #"
)


_AHEAD = re.compile(r"\bin (?:about )?#|\b(?:from now|hence|every|each|per|old|lasts?|until|within|dentro de)\b")


_MORE = re.compile(r"\b(?:over|more than|at least|longer than|mas de|well over|beyond)\b|#\+|# ?(?:plus|or more)")


_LESS = re.compile(r"\b(?:under|less than|within|not even|menos de)\b")


def _back(today: date, count: float, unit: str) -> date:
    """The day `count` units before today (after it when negative)."""
    if unit in ("year", "month") and float(count).is_integer():
        months = today.year * 12 + today.month - 1 - int(count) * (12 if unit == "year" else 1)
        year, month = divmod(months, 12)
        return date(year, month + 1, min(today.day, calendar.monthrange(year, month + 1)[1]))
    return today - timedelta(days=round(count * _UNIT_DAYS[unit]))


def relative_word(line: str, today: date) -> list[Span] | None:
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
        return [(first, today if now else month_of(first.year, first.month)[1])]
    if thing in ("week", "weekend"):
        monday = today - timedelta(days=today.weekday()) + timedelta(weeks=move)
        if thing == "weekend":
            return [(monday + timedelta(days=5), monday + timedelta(days=6))]
        return [(monday, today if now else monday + timedelta(days=6))]
    return [] if thing != "decade" else [(_back(today, 10, "year"), today)]


def ago(line: str, today: date) -> list[Span] | None:
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
    return [_around(today, count, unit, bool(number.loose or ROUGH.search(skeleton)))]


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
