"""Where things are kept when nobody says otherwise. Asking for a place never makes it."""

from __future__ import annotations

from pathlib import Path

PROGRAM = "selfcheck"


def default_household() -> Path:
    """The folder of the household of this user, in the user data folder of the system."""
    return _data() / "household"


def working_copies() -> Path:
    """Where copies of demonstration households are kept, so that the originals stay as they are."""
    return _data() / "demonstrations"


def papers() -> Path:
    """Where files for a person go: sheets to print, pages to hand over. A folder of its own among the documents."""
    from platformdirs import user_documents_path

    return user_documents_path() / "septic-tank-papers"


def trace_file() -> Path:
    """The file of this user that takes the details of a fault in the program."""
    from platformdirs import user_state_path

    return user_state_path(PROGRAM, appauthor=False) / "trace.txt"


def _data() -> Path:
    from platformdirs import user_data_path

    return user_data_path(PROGRAM, appauthor=False)
