"""What may be typed behind the name of the program, and the help that tells of it."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, RawDescriptionHelpFormatter
from pathlib import Path
from typing import Any

#: the commands that hand something out or take it in
HANDING = ("sheet", "report", "note", "calendar", "table", "take-in", "pack", "unpack")
COMMANDS = ("judge", "rehearse", "examine", "schema", *HANDING)


class _Parser(ArgumentParser):
    """Help that cannot be written whole raises OSError, as any other text does."""

    def print_help(self, file: Any = None) -> None:
        """Writes the help, to standard output when no `file` is given."""
        print(self.format_help(), end="", file=file or sys.stdout, flush=True)


def parser(command: str) -> ArgumentParser:
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
