"""Days, months and stretches of time, and the words that make them rough: what all readings of dates share."""

from __future__ import annotations

import calendar
import re
from datetime import date

#: first and last day
Span = tuple[date, date]
ROUGH = re.compile(
    r"\b(?:about|around|arround|round|roughly|approx|approximately|circa|ca|maybe|probably|perhaps|"
    r"guess|think|or so|ish|sometime|unos|como|near|close to|believe)\b|~|\bc\. ?(?=\d)|\d ?-?ish\b"
)
_DENIED = re.compile(r"\b(?:not|wasn't|wasnt|isn't|isnt|didn't|didnt|before|after|since|until|every|by|except)\b")


def day_of(year: int, month: int, day: int) -> Span | None:
    """One day as a span; None where there is no such day, or it lies outside 1900 to 2099."""
    try:
        one = date(year, month, day)
    except ValueError:
        return None
    return (one, one) if 1900 <= year < 2100 else None


def full_year(text: str, today: date) -> int:
    """The year that digits name; of two digits, the one from 89 years back to ten years ahead of `today`."""
    year = int(text)
    if year >= 100:
        return year
    return 2000 + year if year <= today.year % 100 + 10 else 1900 + year


def rest_is_talk(rest: str) -> bool:
    """Whether what stands beside a date is only talk, and says neither "not" nor "before"."""
    return not re.search(r"\d", rest) and not _DENIED.search(rest)


def month_of(year: int, month: int) -> Span:
    """First and last day of a month, 1 to 12. ValueError for another one."""
    return date(year, month, 1), date(year, month, calendar.monthrange(year, month)[1])
