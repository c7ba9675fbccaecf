"""Tank volume by number of bedrooms, where nobody knows the tank's size."""

from __future__ import annotations

from typing import NamedTuple

from selfcheck.domain.conversions import GALLON

#: US gallons by bedrooms. Source `upc` (read in a reprint); it ends at six bedrooms.
UPC = {1: 750, 2: 750, 3: 1000, 4: 1200, 5: 1500, 6: 1500}
#: US gallons by bedrooms. Source `ipsdc-sizing`: from memory, used only past the end of the other.
IPSDC_FROM_MEMORY = {7: 1875, 8: 2100}

#: One standard deviation of the true volume about the table's, as a share. Our choice: the tables of different codes
#: differ by up to half for the same house, and older tanks are smaller.
ERROR_BY_BEDROOMS = 0.25
ERROR_PAST_THE_TABLES = 0.35


class Sized(NamedTuple):
    """A volume read from a table [m³], the source id of the table, and one standard deviation of it as a share.

    Sources: `upc` (read in a reprint) or `ipsdc-sizing` (from memory); the deviation is our choice.
    """

    volume_m3: float
    table: str
    relative_error: float


def volume_by_bedrooms(bedrooms: int) -> Sized:
    """The least tank [m³] that a plumbing code asks for with so many bedrooms.

    One to six: source `upc`, read in a reprint. Seven and eight: source `ipsdc-sizing`, from memory. No bedroom counts
    as one. More than eight lie past the tables: the last line stands in, with a wider error. Nothing is raised.
    """
    rooms = max(bedrooms, 1)
    if rooms in UPC:
        return Sized(UPC[rooms] * GALLON, "upc", ERROR_BY_BEDROOMS)
    if rooms in IPSDC_FROM_MEMORY:
        return Sized(IPSDC_FROM_MEMORY[rooms] * GALLON, "ipsdc-sizing", ERROR_BY_BEDROOMS)
    return Sized(IPSDC_FROM_MEMORY[8] * GALLON, "ipsdc-sizing", ERROR_PAST_THE_TABLES)
