"""What may be typed behind the name of the program, and the help that tells of it."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace, RawDescriptionHelpFormatter
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from selfcheck.errors import UsageProblem

#: the commands that hand something out or take it in
HANDING = ("sheet", "report", "note", "calendar", "table", "take-in", "pack", "unpack")
COMMANDS = ("judge", "rehearse", "examine", "schema", *HANDING)


class _Parser(ArgumentParser):
    """Help that cannot be written whole raises OSError, as any other text does."""

    def print_help(self, file: Any = None) -> None:
        """Writes the help, to standard output when no `file` is given."""
        print(self.format_help(), end="", file=file or sys.stdout, flush=True)

    def nearest(self, word: str) -> str:
        """The option that a misspelt one likely is; "" for none."""
        from difflib import get_close_matches

        near = get_close_matches(word.partition("=")[0], self._option_string_actions, 1, cutoff=0.7)
        return near[0] if near else ""


def parse(command: str, args: Sequence[str]) -> Namespace:
    """What the arguments ask for. `command`: the first of them where it names one, else "".

    Raises UsageProblem with what was likely meant, and SystemExit with code 2 where nothing is near.
    """
    import shlex

    known = parser(command)
    chosen, left = known.parse_known_args(args[1:] if command else args)
    if not left:
        return chosen
    what = f"It is not clear what this asks for: {shlex.join(left)}."
    if not command and (whole := meant(args)):
        first = "The command comes first." if set(args) & set(COMMANDS) else "There is no such command."
        raise UsageProblem(first, f"Did you mean: {whole}")
    near = next((near for one in left if (near := known.nearest(one))), "")
    if near:
        raise UsageProblem(what, f"Did you mean {near}?")
    return known.error(f"{what} Type {known.prog} --help to see what may stand there.")


def meant(args: Sequence[str]) -> str:
    """The line that was likely meant, where a command stands behind its options or is misspelt; "" for none."""
    import shlex
    from difflib import get_close_matches

    for place, word in enumerate(args):
        if word in COMMANDS:
            return shlex.join(["selfcheck", word, *args[:place], *args[place + 1 :]])
    for place, word in enumerate(args):
        near = get_close_matches(word.lower(), COMMANDS, 1, cutoff=0.7)
        if near and not word.startswith("-"):
            return shlex.join(["selfcheck", near[0], *args[:place], *args[place + 1 :]])
    return ""


def parser(command: str) -> _Parser:
    """The arguments of one of the commands; those of the assistant for ""."""
    if not command:
        about = "Guides a household through the yearly check of its septic tank, and keeps the record."
        more = (
            "Other ways in, each with --help of its own:\n"
            "  selfcheck judge FOLDER            judge a record; asks nothing, writes nothing\n"
            "  selfcheck rehearse JOURNEY.toml   play a prepared conversation\n"
            "  selfcheck examine FOLDER          look for damage in a record\n"
            "  selfcheck schema [NAME]           print the form of the files\n"
            "  selfcheck sheet FOLDER            the paper sheet for outside\n"
            "  selfcheck report FOLDER --to F    a page to keep, print and hand over\n"
            "  selfcheck note FOLDER             what to say when calling a service\n"
            "  selfcheck calendar FOLDER --to F  the next dates, for a calendar\n"
            "  selfcheck table FOLDER --to F     all checks as a table; take-in brings one in\n"
            "  selfcheck pack FOLDER --to F      the whole record as one file; unpack brings it back\n"
            "A folder with the name of one of these: write ./judge."
        )
        known = _Parser("selfcheck", description=about, epilog=more, formatter_class=RawDescriptionHelpFormatter)
        known.add_argument("folder", nargs="?", type=Path, help="folder of the household; without it, your own")
        known.add_argument("--plain", action="store_true", help="line by line, for screen readers and pipes")
        known.add_argument("--rules", metavar="ID", help="judge by this set of limits")
        _content_and_day(known)
        return known
    if command in HANDING:
        from selfcheck.plain import handing

        known = _Parser(f"selfcheck {command}", description=handing.ABOUT[command])
        handing.add_arguments(known, command)
        _content_and_day(known)
        return known
    known = _Parser(f"selfcheck {command}", description=_ABOUT[command])
    if command in ("judge", "examine"):
        known.add_argument("folder", type=Path, help="folder of the household")
    if command == "judge":
        known.add_argument("--json", action="store_true", help="one JSON object instead of words")
        known.add_argument("--rules", metavar="ID", help="judge by this set of limits")
        known.add_argument("--exit-code", action="store_true", help="exit 1 when the record says call a professional")
    if command in ("judge", "examine"):
        _content_and_day(known)
    if command == "rehearse":
        known.add_argument("journey", type=Path, help="the prepared conversation")
        known.add_argument("--plain", action="store_true", help="line by line: its transcript on standard output")
        known.add_argument("--content", type=Path, metavar="DIR", help="a folder of content laid over the program's")
    if command == "schema":
        known.add_argument("name", nargs="?", help="which one; without it, all of them")
    return known


_ABOUT = {
    "judge": "Judges a record. Asks nothing and writes nothing.",
    "rehearse": "Plays a prepared conversation on a copy that is thrown away.",
    "examine": "Looks at every file of a record, and says what is wrong and how to mend it. Touches nothing.",
    "schema": "Prints the JSON Schema of a kind of file.",
}


def _content_and_day(known: ArgumentParser) -> None:
    known.add_argument("--content", type=Path, metavar="DIR", help="a folder of content laid over the program's")
    known.add_argument("--today", metavar="DATE", help="stands for the clock, as 2026-05-18")
