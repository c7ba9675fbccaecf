"""Several readings of one length → the one that counts, and whether they agree."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Literal

from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.conversions import INCH

Agreement = Literal["none", "one", "agree", "third_wanted", "median", "clash"]

# Our choice of figures: readings a pole and cloth can be trusted to repeat, and the scatter that no middle can mend.
AGREE_WITHIN_M = 1 * INCH
SCATTER_M = 3 * INCH
ROUNDING_M = 0.0005  # lengths are kept to the millimetre or finer, so an inch apart may come out a hair more

#: Standard error of the reading that counts as a share of one reading's: of two, that of their mean, over which the
#: higher one only adds to the careful side; of three, that of a median of three normal errors. More are taken as three.
#: By their number alone, whether or not they agree, so that a worse reading never looks surer.
REPEATED = {1: 1.0, 2: 0.7071, 3: 0.6698}


def sludge_that_counts(readings: Sequence[Reading]) -> tuple[Reading | None, Agreement]:
    """The sludge reading that counts, and how the readings agree.

    Two within an inch agree, and the higher one counts. Two further apart want a third; until then the higher one
    stands in. Of three or more the median counts (of the two middle ones the higher), unless they scatter over more
    than three inches and none lies within an inch of the median: then they clash and the highest stands in. So one wild
    reading beside two that agree is outvoted, and three that all differ settle nothing.
    """
    ordered = sorted(readings, key=height)
    if not ordered:
        return None, "none"
    highest = ordered[-1]
    if len(ordered) == 1:
        return highest, "one"
    scatter = highest.m - ordered[0].m
    if len(ordered) == 2:
        return highest, "agree" if near(ordered) else "third_wanted"
    middle = len(ordered) // 2
    median = ordered[middle]
    beside = (ordered[middle - 1], *ordered[middle + 1 : middle + 2])
    backed = any(abs(other.m - median.m) <= AGREE_WITHIN_M + ROUNDING_M for other in beside)
    if scatter > SCATTER_M + ROUNDING_M and not backed:
        return highest, "clash"
    return median, "median"


def deciding(readings: Readings) -> Readings:
    """The same with the one sludge reading that decides in the place of each: as often read, and so as well known.

    Three or more: the median, of two middle ones the higher. Two: the higher, but counted at most an inch above the
    lower; beyond that the two contradict each other, which is a finding of its own.
    """
    ordered = sorted(readings.sludge, key=height)
    if len(ordered) > 2:
        return with_sludge(readings, [ordered[len(ordered) // 2]] * len(ordered))
    if len(ordered) == 2 and not near(ordered):
        low, high = ordered
        capped = high.model_copy(update={"m": min(high.m, low.m + AGREE_WITHIN_M)})
        return with_sludge(readings, [capped, capped])
    return with_sludge(readings, ordered[-1:] * len(ordered))


def with_sludge(readings: Readings, sludge: list[Reading]) -> Readings:
    """The same readings with other sludge readings."""
    return readings.model_copy(update={"sludge": sludge})


def one_of(
    readings: Sequence[Reading], careful: Callable[[Iterable[float]], float], least_error_m: float
) -> tuple[float, float] | None:
    """Value and standard error [m] from any number of readings of another length; None when there is none.

    Two: the careful one (`min` or `max`); more: the median. Readings over an inch apart widen the error by half of what
    lies between them.
    """
    if not readings:
        return None
    heights = sorted(reading.m for reading in readings)
    value = heights[len(heights) // 2] if len(heights) > 2 else careful(heights)
    error = max(least_error_m, *(reading.error_m or 0.0 for reading in readings))
    apart = heights[-1] - heights[0]
    if apart > AGREE_WITHIN_M + ROUNDING_M:
        error = max(error, apart / 2)
    return value, error


def near(ordered: Sequence[Reading]) -> bool:
    """Whether readings in rising order lie within an inch of each other."""
    return ordered[-1].m - ordered[0].m <= AGREE_WITHIN_M + ROUNDING_M


def height(reading: Reading) -> float:
    """What a reading tells [m], to put readings in order."""
    return reading.m
