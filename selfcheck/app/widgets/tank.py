"""The tank beside the conversation, and the same in one line."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from textual.reactive import reactive

from selfcheck.app.widgets.lines import Lines, Piece, PieceLine

if TYPE_CHECKING:
    from selfcheck.drawing.section import SectionPicture

_SETTLING = 0.4  # seconds a layer takes to settle


class TankPanel(Lines):
    """The section as large as the panel is. A layer that is new or changed settles into place where motion is on."""

    settled: reactive[float] = reactive(1.0)

    def __init__(self, *, id: str | None = None) -> None:
        super().__init__(id=id)
        self._picture: SectionPicture | None = None
        self._before: SectionPicture | None = None
        self._units = "us"

    @property
    def picture(self) -> SectionPicture | None:
        """What is shown."""
        return self._picture

    def set(self, picture: SectionPicture, units: str = "us") -> None:
        """Show this picture."""
        if picture == self._picture and units == self._units:
            return
        moved = self._picture is not None and (picture.scum, picture.sludge) != (
            self._picture.scum,
            self._picture.sludge,
        )
        self._before, self._picture, self._units = self._picture, picture, units
        if moved and self.is_mounted and self.app.animation_level == "full":
            self.set_reactive(TankPanel.settled, 0.0)
            self.animate("settled", 1.0, duration=_SETTLING)
        else:
            self.set_reactive(TankPanel.settled, 1.0)
        self.changed()

    def on_resize(self) -> None:
        """The picture depends on the height too."""
        self._laid_out = None

    def watch_settled(self) -> None:
        """Paint the next step of a settling layer."""
        self._laid_out = None

    def pieces(self, width: int) -> Sequence[PieceLine]:
        if self._picture is None:
            return []
        from selfcheck.drawing.section import as_lines, between  # not needed for the first frame

        picture = self._picture
        if self._before is not None and self.settled < 1:
            picture = between(self._before, picture, self.settled)
        height = self.size.height or 20
        lines = as_lines(picture, width, height, "metric" if self._units == "metric" else "us")
        return [[Piece(span.text, span.role) for span in line] for line in lines]


class TankLine(Lines):
    """The tank in one line, for narrow terminals; no line at all while no layer is known."""

    def __init__(self, *, id: str | None = None) -> None:
        super().__init__(id=id)
        self._text = ""

    def set(self, picture: SectionPicture, units: str = "us") -> None:
        """Show this picture."""
        from selfcheck.drawing.section import as_one_line

        known = picture.scum or picture.clear or picture.sludge
        text = as_one_line(picture, "metric" if units == "metric" else "us") if known else ""
        if text != self._text:
            self._text = text
            self.changed()

    def pieces(self, width: int) -> Sequence[PieceLine]:
        return [[Piece(self._text, "muted")]] if self._text else []
