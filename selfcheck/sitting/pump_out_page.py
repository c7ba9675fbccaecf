"""One pump-out whole: what was done and found, what that means, and each part of it to be mended."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING, Any, NamedTuple

from selfcheck.domain.check import PumpOut, standing
from selfcheck.domain.showing import show_length
from selfcheck.interview.septic_told import place_of, put_back, with_first
from selfcheck.loading.conversations import script
from selfcheck.sitting.small_talks import asking
from selfcheck.sitting.steps import Back, Go, Page, Part, Stay, Step, Talk, Way
from selfcheck.storage.taking_out import TAKEN_IN
from selfcheck.storage.writing import write_pump_out

if TYPE_CHECKING:
    from selfcheck.domain.after_pumping import SeenEmpty, YesNo
    from selfcheck.interview.dialogue import Conversation
    from selfcheck.sitting.record_pages import RecordPages

FLOW = "after_pump_out"
NOTE_CAP = 500  # signs of a note


class Told(NamedTuple):
    """The questions that tell one thing of a pump-out, and the fields that it is kept in."""

    questions: tuple[str, ...]
    fields: tuple[str, ...]


TOLD = (
    Told(("pumped_on",), ("on", "within_days")),
    Told(("through",), ("through",)),
    Told(("compartments",), ("parts",)),
    Told(("left", "left_depth"), ("sludge_left_m",)),
    Told(("backflow",), ("backflow",)),
    Told(("pumped_divider",), ("divider",)),
    Told(("pumped_filter",), ("filter_cleaned",)),
    Told(("pumped_by",), ("by",)),
)


def pump_out_page(record: RecordPages, ident: str, stands: bool = True) -> Page:
    """The pump-out of that id, or the one that mends it by now; with `stands` False the old one as it was."""
    words, one = record.words, _found(record, ident, stands)
    told = [_line(record, one, about) for about in _told_of(record, one)]
    told += [words("pump_out", "note", note=one.note)] if one.note else []
    told += [words("pump_out", "tank", tank=one.tank)] if len(record.sitting.household.tanks) > 1 else []
    parts = [Part(tuple(told), kind="items")]
    about = [] if stands else [words("pump_out", "mended")]
    about += [words("pump_out", "mends")] if one.replaces else []
    parts += [Part(tuple(about), kind="muted")] if about else []
    ways: tuple[Way, ...] = ()
    if stands:
        parts += _meaning(record, one)
        ways = (Way(words("check", "mend"), lambda: Go(partial(_mend, record, ident)), ("mend", "correct", "change")),)
    return Page(words("pump_out", "title", day=record.day_of(one)), tuple(parts), ways)


def _found(record: RecordPages, ident: str, stands: bool) -> PumpOut:
    sitting = record.sitting
    everything = (*sitting.pump_outs, *sitting.mended_pump_outs)
    one = next(one for one in everything if one.id == ident)
    while stands and one not in sitting.pump_outs:
        one = next(other for other in everything if other.replaces == one.id)
    return one


def _told_of(record: RecordPages, one: PumpOut) -> list[Told]:
    """What a pump-out tells of; the wall between compartments only where the tank has more than one."""
    parted = one.parts in ("both", "one_of_two") or (record.sitting.household.tank(one.tank).compartments or 1) > 1
    return [about for about in TOLD if about.fields != ("divider",) or parted or one.divider is not None]


def _line(record: RecordPages, one: PumpOut, about: Told) -> str:
    """One thing of a pump-out in words; that it is not known where it is not."""
    words, field = record.words, about.fields[0]
    value = getattr(one, field)
    if field == "on":
        return words("pump_out", "on", day=record.day_of(one))
    if field == "by" and value:
        return words("pump_out", "by", by=value)
    if field == "sludge_left_m" and value is not None:
        return words("pump_out", "left", length=show_length(value, record.sitting.household.units))
    if value is None or value == "":
        name = script(record.sitting.place, FLOW).name_of(about.questions[0])
        return words("facts", "row", name=name, value=words("facts", "not_known"))
    return words("pump_out", f"{field}_{value}".lower())


def _meaning(record: RecordPages, one: PumpOut) -> list[Part]:
    """What was found in the empty tank means, as the page right after the pump-out said it."""
    from selfcheck.report.pumped import found_lines
    from selfcheck.sitting.endings import page_words

    lines = found_lines(_seen(record, one), page_words(record.sitting, "pumped_page"))
    return [Part(tuple(lines), record.words("pump_out", "means"), "items")] if lines else []


def _seen(record: RecordPages, one: PumpOut) -> SeenEmpty:
    """What the record says of the empty tank: the pump-out, and what a check of that day and tank saw of its parts."""
    from selfcheck.domain.pump_visit import told_at

    same_day = [check for check in record.sitting.checks if (check.on, check.tank) == (one.on, one.tank)]
    parts: dict[str, Any] = {}
    for check in standing(same_day):
        told = {name: getattr(check.seen, name) for name in ("inlet_tee", "outlet_tee", "wall")}
        parts.update({name: value for name, value in told.items() if value is not None})
    all_out: YesNo = None if one.sludge_left_m is None else "no" if one.sludge_left_m else "yes"
    return replace(told_at(one), all_out=all_out, **parts)


def _mend(record: RecordPages, ident: str) -> Page:
    """Each thing that was told of it, to be told anew."""
    words, one = record.words, _found(record, ident, True)
    ways = [Way(_line(record, one, about), partial(_ask, record, ident, about)) for about in _told_of(record, one)]
    note = words("pump_out", "note", note=one.note or words("facts", "not_known"))
    ways.append(Way(note, lambda: Go(partial(_note, record, ident))))
    title = words("pump_out", "title", day=record.day_of(one))
    return Page(title, (Part((words("pump_out", "old_stays"),), kind="muted"),), tuple(ways), ask=words("facts", "ask"))


def _ask(record: RecordPages, ident: str, about: Told) -> Step:
    sitting = record.sitting
    place = place_of(sitting.household, _found(record, ident, True).tank)
    talk = sitting.small_talk(asking(sitting.place, FLOW, about.questions), with_first(sitting.household, place))
    return Talk(talk, lambda talk: record.or_told(talk, _kept(record, ident, about, place, talk)))


def _kept(record: RecordPages, ident: str, about: Told, place: int, talk: Conversation) -> Step:
    told = talk.state.answered.get(about.questions[0])
    if talk.ending is None or talk.ending.left or talk.state.answered.danger or told is None or told.state == "skipped":
        return Stay(record.words("facts", "same"))
    fields = PumpOut.model_fields
    changed = {name: None if fields[name].is_required() else fields[name].default for name in about.fields}
    whole = talk.draft()
    draft = whole.get("pump_out", {})
    changed |= {name: value for name, value in draft.items() if name in changed and value is not None}
    if changed.get("on", True) is None:  # a pump-out without a day cannot be kept
        return Stay(record.words("facts", "same"))
    said = _put_right(record, ident, changed)
    if "household" in whole:  # what the question tells of the tank itself
        record.sitting.keep_household(put_back(whole["household"], place))
    return Stay(said)


def _note(record: RecordPages, ident: str) -> Page:
    def hear(line: str) -> Step:
        return Back(1, _put_right(record, ident, {"note": line[:NOTE_CAP]}))

    return Page(record.words("pump_out", "mend_note"), hear=hear, ask=record.words("pump_out", "ask_note"))


def _put_right(record: RecordPages, ident: str, changed: dict[str, Any]) -> str:
    """Write the pump-out anew with what was changed, and say so. The one before stays on disk, and is in the list."""
    words, old = record.words, _found(record, ident, True)
    kept = {name: value for name, value in old.model_dump().items() if name != TAKEN_IN}
    mended = PumpOut.model_validate({**kept, **changed, "id": "", "replaces": old.id})
    if all(getattr(mended, name) == getattr(old, name) for name in changed):
        return words("facts", "same")
    record.sitting.change_files(lambda folder: write_pump_out(folder, mended))
    return words("pump_out", "kept")
