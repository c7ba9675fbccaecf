"""The next dates as a calendar file (RFC 5545): when to look again, and when a pump-out is likely due.

The file follows from the record and the day alone. An event keeps its name (UID) for ever, also when the house is given
another; its number (SEQUENCE) rises with every entry of the record and with every day since the last, so that what is
taken in later replaces what was taken in before. An event that may have been handed out and holds no longer is in the
file as CANCELLED, so that a calendar takes it out (RFC 5545, section 3.8.1.11).
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from selfcheck.domain.check import Check, PumpOut
from selfcheck.domain.household import Household
from selfcheck.domain.showing import show_day
from selfcheck.domain.verdict import Judgement
from selfcheck.text import clean

Tables = Mapping[str, Any]
#: A line holds no more octets than this; longer ones are folded (RFC 5545, section 3.1).
LINE_OCTETS = 75
KINDS = ("look", "call", "window")
#: Days that one entry of the record outweighs in SEQUENCE.
_ENTRY = 10_000


def calendar(
    judgement: Judgement,
    checks: Sequence[Check],
    pump_outs: Sequence[PumpOut],
    words: Tables,
    earlier: Sequence[Household | None] = (),
    unread: str = "",
    gone: int = 0,
) -> str:
    """The calendar of every tank of the judged household. `words`: the tables of `calendar`.

    `earlier`: the versions of the household's facts that came before this one, oldest first. `unread`: which parts of
    the record could not be read, said at each date. `gone`: how many changes of the record cannot be told from the
    rest. Days are whole days without a time zone.
    """
    stamp = _stamp(checks, pump_outs)
    entries = len(checks) + len(pump_outs) + len(earlier) + gone
    sequence = entries * _ENTRY + min(max((judgement.today - stamp.date()).days, 0), _ENTRY - 1)
    handed_out_before = sequence > _ENTRY  # on the day of the first entry there is nothing to take back
    name = _name_of([*earlier, judgement.household])
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//selfcheck//record//EN",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
    ]
    tanks = [judgement, *judgement.others]
    for one in tanks:
        tank = clean(one.tank.id, 60) if len(tanks) > 1 else ""
        dates = {kind: (first, last, about) for kind, first, last, about in _events(one, words["event"])}
        for kind in KINDS:
            if kind not in dates and not handed_out_before:
                continue
            first, last, about = dates.get(kind, (judgement.today, judgement.today, words["event"]["cancelled"]))
            title = words["event"][kind]
            if tank:
                title = words["event"]["tank"].format(title=title, tank=tank)
            lines += [
                "BEGIN:VEVENT",
                f"UID:{_uid(name, one.tank.id, kind)}",
                f"DTSTAMP:{stamp:%Y%m%dT%H%M%SZ}",
                f"SEQUENCE:{sequence}",
                f"STATUS:{'CONFIRMED' if kind in dates else 'CANCELLED'}",
                f"DTSTART;VALUE=DATE:{first:%Y%m%d}",
                f"DTEND;VALUE=DATE:{last + timedelta(days=1):%Y%m%d}",
                f"SUMMARY:{_text(title)}",
                f"DESCRIPTION:{_text(f'{unread} {about}'.strip())}",
                "TRANSP:TRANSPARENT",
                "END:VEVENT",
            ]
    lines.append("END:VCALENDAR")
    return "".join(f"{piece}\r\n" for line in lines for piece in _folded(line))


def _events(judgement: Judgement, words: Tables) -> Iterable[tuple[str, date, date, str]]:
    """(kind, first day, last day, what it is about) of each event that there is."""
    units, today = judgement.household.units, judgement.today
    late = judgement.look_again <= today and not judgement.call_professional
    look = max(today, judgement.act_by or today) if late else max(judgement.look_again, today)
    yield "look", look, look, words["look_about"].format(day=show_day(look, units))
    if judgement.call_professional and judgement.act_by is not None:
        yield "call", judgement.act_by, judgement.act_by, words["call_about"]
    due = judgement.due
    if due.p50 is not None and due.p50 >= today:
        first = max(due.p10 or due.p50, today)
        yield "window", first, due.p50, words["window_about"].format(rule=judgement.rules.title)


def _stamp(checks: Sequence[Check], pump_outs: Sequence[PumpOut]) -> datetime:
    """The time of the newest entry of the record."""
    times = [one.recorded_at or datetime.combine(one.on, time()) for one in checks]
    times += [datetime.combine(one.on, time()) for one in pump_outs]
    aware = [one.astimezone(UTC) if one.tzinfo else one.replace(tzinfo=UTC) for one in times]
    return max(aware, default=datetime(2000, 1, 1, tzinfo=UTC))


def _name_of(versions: Sequence[Household | None]) -> str:
    """What tells this household from others: of its oldest version that has anything to tell."""
    for one in versions:
        if one is not None and one.name:
            return one.name
        if one is not None and one.occupancy:
            return one.occupancy[0].from_.isoformat()
    return ""


def _uid(name: str, tank: str, kind: str) -> str:
    """The same for the same household, tank and kind, and telling nothing of them."""
    told = "\n".join((name, tank, kind))
    return f"{hashlib.sha256(told.encode(errors='replace')).hexdigest()[:24]}-{kind}@selfcheck"


def _text(words: str) -> str:
    """Text as a value: backslash, semicolon, comma and line ends escaped."""
    escaped = clean(words).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,")
    return escaped.replace("\n", "\\n").replace("\t", " ")


def _folded(line: str) -> Iterable[str]:
    """The line in pieces of at most 75 octets, no letter torn; each piece but the first begins with a space."""
    piece = ""
    for letter in line:
        if len((piece + letter).encode()) > LINE_OCTETS:
            yield piece
            piece = " "
        piece += letter
    yield piece
