"""Open the assistant in the terminal."""

from __future__ import annotations

import gc
from datetime import date
from pathlib import Path


def run(
    folder: Path | None,
    today: date,
    *,
    rules: str | None = None,
    content: Path | None = None,
    begin: bool = False,
    fixed_day: bool = False,
) -> int:
    """Run until the person leaves; the exit code.

    The arguments are those of `Sitting.open`. What went wrong is raised after the terminal is itself again.
    """
    gc.disable()  # nothing that is made while starting is thrown away; switched on again when the record is open
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.loading import quick
    from selfcheck.loading.place import content_place

    place = content_place(content)

    def open_sitting():  # type: ignore[no-untyped-def]
        from selfcheck.sitting import Sitting

        return Sitting.open(folder, place, today, rules)

    app = SelfcheckApp(quick.home(place), open_sitting)
    return finish(app)


def finish(app) -> int:  # type: ignore[no-untyped-def]
    """Run the app and hand on what went wrong in it."""
    code = app.run()
    if app.fault is not None:
        raise app.fault
    return code or 0
