"""The part of the page that looks ahead which sets a change that is tried beside the record as it is."""

from __future__ import annotations

from selfcheck.domain.showing import show_length, show_volume
from selfcheck.domain.what_if import Change, Compared
from selfcheck.report.ahead_days import Telling
from selfcheck.report.parts import Part, part


def change_headline(tell: Telling, compared: Compared) -> str:
    """The headline of a change that was tried: the date it leads to, then the one that stands."""
    old, new = (tell.around(side.due.p50) for side in (compared.now, compared.then))
    months = compared.months_later
    if old == new or (months is not None and abs(months) < 1.0):
        return tell.words("headline", "change_same", day=old)
    return tell.words("headline", "change_empty" if compared.change.starts_empty else "change", old=old, new=new)


def comparison(tell: Telling, compared: Compared) -> tuple[Part, ...]:
    """What was changed, each date beside the one that stands, and how much later or sooner it comes."""
    say, now, then = tell.words, compared.now, compared.then
    lines = [_changed(tell, name, value) for name, value in _told(compared.change)]
    if compared.change.starts_empty:
        lines.append(say("what_if", "from_empty"))
    if compared.change.nothing:
        return part(say("title", "what_if"), [say("what_if", "nothing")])
    if then.no_figure:
        lines.append(say("what_if", "no_figure", title=then.rules.title))
    rows = (
        ("early", now.due.p10, then.due.p10),
        ("middle", now.due.p50, then.due.p50),
        ("late", now.due.p90, then.due.p90),
    )
    lines += [say("what_if", name, old=tell.when(old), new=tell.when(new)) for name, old, new in rows]
    looks = [say("what_if", "look_now") if tell.reached(day) else tell.when(day) for day in (now.look, then.look)]
    lines.append(say("what_if", "look", old=looks[0], new=looks[1]))
    months = compared.months_later
    if months is not None and not (tell.reached(now.due.p50) and tell.reached(then.due.p50)):
        name = "same" if abs(months) < 1.0 else "later" if months > 0 else "sooner"
        lines.append(say("what_if", name, span=tell.span(abs(months))))
    lines.append(say("what_if", "not_kept"))
    return part(say("title", "what_if"), lines)


def _changed(tell: Telling, name: str, value: object) -> str:
    if name == "disposal":
        return tell.words("change", f"disposal_{value}")
    if name == "rules":
        titles = {row.rule_set.id: row.rule_set.title for row in tell.judgement.by_rule_set}
        return tell.words("change", "rules", value=titles.get(str(value), str(value)))
    number = float(value) if isinstance(value, (int, float)) else 0.0
    if name == "tank_m3":
        return tell.words("change", name, value=show_volume(number, tell.units))
    if name == "residue_m":
        return tell.words("change", name, value=show_length(number, tell.units))
    return tell.words("change", f"{name}_one" if number == 1 else name, value=f"{number:g}")


def _told(change: Change) -> list[tuple[str, object]]:
    names = ("people", "months_per_year", "disposal", "tank_m3", "rules", "residue_m")
    return [(name, value) for name in names if (value := getattr(change, name)) is not None]
