"""A word to whoever waits."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache

from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.progress import followed

#: seconds after which it is said that something is being worked out, and between two words on how far that has come.
#: Our choice.
PATIENCE, AGAIN = 0.8, 3.0


@contextmanager
def patience(out: Speaker, said: str, words: Words) -> Iterator[None]:
    """Says `said` when what is done inside takes longer than one likes to wait, and then how far it has come."""
    over = threading.Event()
    with followed() as progress:

        def say() -> None:
            if over.wait(PATIENCE):
                return
            out.say(said)
            out.flush()
            while not over.wait(AGAIN):
                if progress.of:
                    out.say(words("menu", "so_far", done=f"{progress.done:,}", of=f"{progress.of:,}"))
                    out.flush()

        waiting = threading.Thread(target=say, daemon=True)
        waiting.start()
        try:
            yield
        finally:
            over.set()
            waiting.join()


@cache
def get_ready() -> None:
    """Load what reads amounts while the person reads the first question; once, in a thread of its own."""
    from selfcheck.domain import units

    threading.Thread(target=units.warm, daemon=True).start()
