"""How far something long has come: told by whoever does it, read by the face that waits for it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass


@dataclass
class Progress:
    """So many `of` a whole are done; `of` is 0 while nothing has been told."""

    done: int = 0
    of: int = 0


_followed: ContextVar[Progress | None] = ContextVar("_followed", default=None)


@contextmanager
def followed() -> Iterator[Progress]:
    """What is told in this thread while the block runs."""
    progress = Progress()
    token = _followed.set(progress)
    try:
        yield progress
    finally:
        _followed.reset(token)


def tell(done: int, of: int) -> None:
    """So many of a whole are done. Costs next to nothing when nobody follows."""
    progress = _followed.get()
    if progress is not None:
        progress.done, progress.of = done, of
