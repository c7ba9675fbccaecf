"""One household at the table: what both faces do with it, from opening its folder to the verdict."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from selfcheck.sitting.table import HomeFacts, Sitting, Unfinished

__all__ = ["HomeFacts", "Sitting", "Unfinished"]


def __getattr__(name: str) -> object:
    """Load the table when it is first asked for: a command that only judges does without it."""
    if name in __all__:
        from selfcheck.sitting import table

        return getattr(table, name)
    raise AttributeError(name)
