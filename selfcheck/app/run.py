"""Open the assistant in the terminal."""

from __future__ import annotations

import asyncio
import contextlib
import gc
import os
import signal
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.loading.place import Place
    from selfcheck.sitting import Sitting

#: the exit code after a signal that ends a program, the same as line by line
INTERRUPTED = 130


def run(open_sitting: Callable[[Place], Sitting], content: Path | None = None) -> int:
    """Run until the person leaves; the exit code. `open_sitting` reads the record; `content`: an educator's own folder.

    What went wrong is raised after the terminal is itself again.
    """
    gc.disable()  # nothing that is made while starting is thrown away; switched on again when the record is open
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.app.words import FaceWords
    from selfcheck.loading import quick
    from selfcheck.loading.place import content_place

    place = content_place(content)
    app = SelfcheckApp(quick.home(place), FaceWords(quick.words(place, "screen")), lambda: open_sitting(place))
    try:
        return _finish(app)
    finally:
        if app.sitting is not None:
            app.sitting.close()


def rehearse(journey: Path, content: Path | None = None) -> int:
    """Play a prepared conversation on a household that is gone afterwards: each enter gives its next line."""
    from selfcheck.app.app import SelfcheckApp
    from selfcheck.app.words import FaceWords
    from selfcheck.loading import quick
    from selfcheck.loading.journeys import load
    from selfcheck.loading.place import content_place
    from selfcheck.sitting.rehearsing import sitting_for

    place = content_place(content)
    prepared = load(journey)
    with sitting_for(prepared, place) as sitting:
        lines = [turn.type for turn in prepared.typed]
        words = FaceWords(quick.words(place, "screen"))
        return _finish(SelfcheckApp(quick.home(place), words, lambda: sitting, lines, prepared.flow))


def _finish(app: SelfcheckApp) -> int:
    code = asyncio.run(_until_left(app))
    if app.fault is not None:
        raise app.fault
    return code or 0


async def _until_left(app: SelfcheckApp) -> int | None:
    """Run the app. A signal that ends a program closes it as leaving does, so that the terminal is itself again."""
    loop = asyncio.get_running_loop()
    for name in ("SIGTERM", "SIGHUP"):
        with contextlib.suppress(AttributeError, NotImplementedError):  # a system without that signal
            loop.add_signal_handler(getattr(signal, name), _close, app)
    return await app.run_async()


def _close(app: SelfcheckApp) -> None:
    """Leave at once: every answer is saved already. Where the terminal has gone, nothing is left to put right."""
    if not os.isatty(sys.__stdout__.fileno() if sys.__stdout__ else 1):
        os._exit(INTERRUPTED)
    app.exit(INTERRUPTED)
