"""The doors that ask nothing: judge a record, examine it, print the forms of its files."""

from __future__ import annotations

import json
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.loading.place import content_place
from selfcheck.sitting.verdicts import case_of, verdict_words
from selfcheck.storage.folder import read

if TYPE_CHECKING:
    from selfcheck.plain.phrases import Words


def judge(folder: Path, today: date, rules: str | None, content: Path | None, *, as_json: bool) -> bool:
    """Judge the record in `folder` and print the judgement. Writes nothing. True: it says to call a professional.

    Raises FolderProblem when the folder cannot be used, UsageProblem for a rule set that is not there.
    """
    from selfcheck.domain import judging

    place = content_place(content)
    record = read(folder)
    judgement = judging.judge(case_of(place, record, today, rules))
    told = verdict_words(place)
    if as_json:
        from selfcheck.report.summary import judgement_json

        shown = judgement_json(judgement, told)
        shown["problems"] = [str(problem) for problem in record.problems]
        print(json.dumps(shown, indent=2, allow_nan=False))  # in ASCII, so that no sign does anything to a terminal
        return judgement.call_professional
    from selfcheck.plain import pages
    from selfcheck.plain.phrases import Words
    from selfcheck.plain.speaking import Speaker
    from selfcheck.report.wording import verdict_screen

    out = Speaker(sys.stdout)
    if record.problems and judgement.verdict != "danger":  # what to do in danger comes first; it is named below
        from selfcheck.loading.conversations import texts
        from selfcheck.report.unread import unread_line

        out.say(unread_line(record.problems, texts(place, "unread")))
    pages.verdict(verdict_screen(judgement, told, record.household.units), out, Words(place))
    for problem in record.problems:
        out.say(str(problem))
    return judgement.call_professional


def examine(folder: Path, today: date, content: Path | None = None) -> bool:
    """Print what is wrong with the files of a record and how to mend it. True: nothing is. Raises FolderProblem."""
    from selfcheck.plain.phrases import Words
    from selfcheck.plain.speaking import Speaker
    from selfcheck.storage import examine as examining

    found = examining.examine(folder, today)
    out, words = Speaker(sys.stdout), Words(content_place(content))
    for problem in found.problems:
        out.say(str(problem), indent="  ", first="- ")
    for note in found.notes:
        out.say(note, indent="  ", first="- ")
    out.gap()
    if found.problems:
        out.say(_counted(words, "faulty", len(found.problems)))
    else:
        counts = {name: _counted(words, name, getattr(found, name)) for name in ("checks", "pump_outs")}
        out.say(words("examine", "fine", **counts, open=found.open_checks))
    return not found.problems


def _counted(words: Words, name: str, count: int) -> str:
    """So many of them, one of them in words of its own."""
    return words("examine", f"{name}_one") if count == 1 else words("examine", name, count=count)


def schema(name: str | None) -> None:
    """Print the JSON Schema of one kind of file, or of all. Raises UsageProblem for a name that is none."""
    from selfcheck.storage import schemas

    print(json.dumps(schemas.schema(name) if name else schemas.all_schemas(), indent=2))
