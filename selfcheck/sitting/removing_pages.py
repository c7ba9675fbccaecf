"""Delete everything: asked twice, moved beside the folder, and brought back as long as it lies there."""

from __future__ import annotations

from datetime import date
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from selfcheck.sitting.steps import Back, Go, Page, Part, Stay, Step, Way
from selfcheck.storage.removing import bring_back, ours, take_away, taken_away

if TYPE_CHECKING:
    from selfcheck.sitting.record_pages import RecordPages


class RemovingPages:
    """The ways to take the whole record away and to bring it back."""

    def __init__(self, record: RecordPages) -> None:
        self._record = record
        self._sitting = record.sitting
        self._words = record.words

    def ways(self) -> tuple[Way, ...]:
        """What the first page of the record offers: to take it away while there is one, to bring it back after that."""
        folder, words = self._sitting.folder, self._words
        if ours(folder):
            return (Way(words("record", "remove"), lambda: Go(self._first), ("delete", "remove", "take away")),)
        away = taken_away(folder)
        if away is None:
            return ()
        path, day = away
        label = words("remove", "back", day=self._record.day(day))
        return (Way(label, lambda: self._bring_back(path, day), ("undo", "bring back"), slow=True),)

    def _first(self) -> Page:
        words, sitting = self._words, self._sitting
        counts = words("remove", "counts", checks=str(len(sitting.checks)), pump_outs=str(len(sitting.pump_outs)))
        beside = words("remove", "where", folder=str(sitting.folder.absolute().parent))
        parts = (
            Part((words("remove", "what"),), kind="strong"),
            Part((counts, words("remove", "only"), beside, words("remove", "undo")), kind="items"),
        )
        return Page(
            words("remove", "title"), parts, (Way(words("remove", "first"), lambda: Go(self._second, replace=True)),)
        )

    def _second(self) -> Page:
        words = self._words
        typed = words("remove", "words")

        def hear(line: str) -> Step:
            if " ".join(line.split()).rstrip(".").casefold() != typed:
                return Back(1, words("remove", "not_typed"))
            return self._take_away()

        return Page(words("remove", "second_title"), hear=hear, ask=words("remove", "second", words=typed))

    def _take_away(self) -> Step:
        away = self._sitting.change_files(partial(take_away, today=self._sitting.today))
        return Back(1, self._words("remove", "done", folder=str(away)))

    def _bring_back(self, away: Path, day: date) -> Step:
        self._sitting.change_files(partial(bring_back, away))
        return Stay(self._words("remove", "brought"))
