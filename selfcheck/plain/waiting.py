"""A word to whoever waits."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache

from selfcheck.plain.speaking import Speaker

#: seconds after which it is said that something is being worked out. Our choice.
PATIENCE = 0.8


@contextmanager
def patience(out: Speaker, words: str) -> Iterator[None]:
    """Says `words` when what is done inside takes longer than one likes to wait."""

    def say() -> None:
        out.say(words)
        out.flush()

    timer = threading.Timer(PATIENCE, say)
    timer.daemon = True
    timer.start()
    try:
        yield
    finally:
        timer.cancel()


@cache
def get_ready() -> None:
    """Load what reads amounts while the person reads the first question; once, in a thread of its own."""
    from selfcheck.domain import units

    threading.Thread(target=units.warm, daemon=True).start()
