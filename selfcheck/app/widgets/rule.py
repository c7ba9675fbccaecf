"""A quiet line across the page, and the mark before the line one types on."""

from __future__ import annotations

from collections.abc import Sequence

from selfcheck.app.widgets.lines import Lines, Piece, PieceLine


class Across(Lines):
    """A thin line over the whole width."""

    def pieces(self, width: int) -> Sequence[PieceLine]:
        return [[Piece("─" * width, "line")]]


class Mark(Lines):
    """The `›` before what a person says."""

    def pieces(self, width: int) -> Sequence[PieceLine]:
        return [[Piece("›", "mark")]]
