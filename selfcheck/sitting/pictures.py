"""Pictures of the record for both faces: each as terminal lines and as words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from selfcheck.loading.conversations import texts
from selfcheck.sitting.steps import Drawn

if TYPE_CHECKING:
    from selfcheck.domain.check import Check
    from selfcheck.loading.place import Place
    from selfcheck.sitting.table import Sitting


def history(sitting: Sitting) -> Drawn | None:
    """Both layers over the years with what is likely from here on; None when nothing is on record."""
    from selfcheck.drawing.history import as_lines, as_words, describe

    if not (sitting.checks or sitting.pump_outs):
        return None
    units = sitting.household.units
    picture = describe(sitting.judgement(), sitting.checks, sitting.pump_outs, words_of(sitting.place, "history"))
    return Drawn(lambda width, height: as_lines(picture, width, height, units), tuple(as_words(picture, units)), True)


def cloth(sitting: Sitting, check: Check) -> Drawn | None:
    """The cloth on the pole as it was read at one check; None when it was not read."""
    from selfcheck.drawing.cloth import as_lines, as_words, describe

    if not check.seen.readings.sludge:
        return None
    units = sitting.household.units
    picture = describe(check.seen.readings, words_of(sitting.place, "cloth"))
    return Drawn(lambda width, height: as_lines(picture, width, height, units), tuple(as_words(picture, units)))


def words_of(place: Place, picture: str) -> Mapping[str, str]:
    """The words of one picture."""
    table: Mapping[str, str] = texts(place, "pictures")[picture]
    return table
