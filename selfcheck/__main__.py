"""The doors of the program: arguments → what they open, and the exit codes.

0 done · 1 the record says call a professional (only with `--exit-code`) · 2 used wrongly, or a folder that cannot be
used, or output that cannot be written · 130 interrupted, also by a signal that ends a program. Nobody ever sees a
traceback: it goes to a file of the user's.
"""

from __future__ import annotations

import contextlib
import gc
import os
import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.errors import SelfcheckError, UsageProblem
from selfcheck.plain import streams

if TYPE_CHECKING:
    from selfcheck.loading.place import Place
    from selfcheck.sitting import Sitting

DONE, CALL, WRONG, INTERRUPTED = 0, 1, 2, 130
#: Days that can be taken for today. Our choice: longer than any tank lasts, and no slip of a digit.
FIRST_YEAR, LAST_YEAR = 1900, 2200


def main(argv: Sequence[str] | None = None) -> int:
    """Open the door that the arguments name, and give back the exit code."""
    args = list(sys.argv[1:] if argv is None else argv)
    streams.make_forgiving()
    soon_shut = argv is None and args[:1] in (["judge"], ["examine"], ["schema"])
    if soon_shut:
        gc.disable()  # searching for what is no longer needed only takes time
    try:
        code = _open(args)
        sys.stdout.flush()
        if soon_shut:
            os._exit(code)  # nothing was opened to write, so nothing is left to tidy: a tenth of the time
        return code
    except SelfcheckError as problem:
        _say(f"{problem.what}\n{problem.mend}")
        return problem.exit_code
    except KeyboardInterrupt:
        streams.give_up_full()
        return INTERRUPTED
    except BrokenPipeError:  # a reader that has what it wants is told nothing
        streams.give_up_full()
        return WRONG
    except Exception as error:  # the last line of defence
        _say(streams.refused(error) or _after_a_fault(error))
        streams.give_up_full()
        return WRONG


def _open(args: list[str]) -> int:
    from selfcheck.plain.arguments import COMMANDS, HANDING, parse

    named = args[0] if args and args[0] in COMMANDS else ""
    chosen = parse(named, args)
    today = _day(chosen.today) if getattr(chosen, "today", None) else date.today()
    if not named:
        return _assistant(chosen.folder, chosen.plain, chosen.rules, chosen.content, today, bool(chosen.today))
    if args[0] in HANDING:
        from selfcheck.plain import handing

        handing.open_door(args[0], chosen, today)
        return DONE
    from selfcheck.plain import doors

    if args[0] == "judge":
        calls = doors.judge(chosen.folder, today, chosen.rules, chosen.content, as_json=chosen.json)
        return CALL if calls and chosen.exit_code else DONE
    if args[0] == "examine":
        return DONE if doors.examine(chosen.folder, today) else WRONG
    if args[0] == "schema":
        doors.schema(chosen.name)
        return DONE
    if _wants_plain(chosen.plain):
        from selfcheck.plain.rehearsal import rehearse

        rehearse(chosen.journey, chosen.content)
        return DONE
    from selfcheck.app.run import rehearse as rehearse_in_app

    return rehearse_in_app(chosen.journey, chosen.content)


def _assistant(
    folder: Path | None, plain: bool, rules: str | None, content: Path | None, today: date, fixed: bool
) -> int:
    begin = folder is not None and _may_begin(folder, content)

    def open_sitting(place: Place) -> Sitting:
        from selfcheck.sitting import Sitting

        return Sitting.open(folder, place, today, rules, begin=begin, fixed_day=fixed)

    if _wants_plain(plain):
        from selfcheck.plain.face import run as run_plain

        return run_plain(open_sitting, content)
    from selfcheck.app.run import run as run_app

    return run_app(open_sitting, content)


def _may_begin(folder: Path, content: Path | None) -> bool:
    """Whether a new household is begun in `folder`: False when there is one, True when the person says yes.

    Raises UsageProblem when there is none and the person does not want to begin one.
    """
    if folder.is_dir():
        from selfcheck.storage.layout import holds_record

        if holds_record(folder):
            return False
    if folder.exists() and not folder.is_dir():
        raise UsageProblem(f"{_plain(folder)} is a file, not a folder.", "Name the folder of a household.")
    # only here: none of it is needed on the way to the first question
    from selfcheck.loading.place import content_place
    from selfcheck.plain.beginning import ask_to_begin

    ask_to_begin(folder, content_place(content))
    return True


def _wants_plain(asked: bool) -> bool:
    """The line-by-line face: when asked for, for a screen reader, for a terminal that cannot draw, and for pipes."""
    if asked or os.environ.get("ACCESSIBLE") or os.environ.get("TERM", "dumb" if os.name == "posix" else "") == "dumb":
        return True
    return not (sys.stdin and sys.stdout and sys.stdin.isatty() and sys.stdout.isatty())


def _day(text: str) -> date:
    try:
        day = date.fromisoformat(text)
    except ValueError as error:
        raise UsageProblem(f'"{_plain(text)}" is no day.', "Write it as 2026-05-18.") from error
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        what = f"{day} lies outside the years {FIRST_YEAR} to {LAST_YEAR}."
        raise UsageProblem(what, "Give a day that a record can be judged on.")
    return day


def _plain(text: object) -> str:
    """Something from the command line, fit to be shown."""
    from selfcheck.text import clean

    return clean(str(text), 300)


def _say(text: str) -> None:
    from selfcheck.text import clean

    with contextlib.suppress(OSError, ValueError):
        print(clean(text), file=sys.stderr, flush=True)


def _after_a_fault(error: Exception) -> str:
    """Write the details to the user's own file, and say in plain words what happened."""
    import traceback

    from selfcheck.storage.locations import trace_file

    what = "The program made a mistake and had to stop. Every answer that was followed by a next question is saved."
    try:
        path = trace_file()
        path.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        with os.fdopen(handle, "w", encoding="utf-8", errors="replace") as file:
            traceback.print_exception(error, file=file)
    except Exception:  # the fault must not be hidden by a second one
        return f"{what}\nStart it again to go on."
    return f"{what}\nStart it again to go on. The details are in {path}."


if __name__ == "__main__":
    sys.exit(main())
