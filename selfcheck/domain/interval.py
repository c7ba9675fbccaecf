"""The published table of pumping intervals as a formula, for a second opinion beside the forecast.

The table (source: interval-table, read in two reprints that agree) rests on at least 24 hours of retention and on half
of the retained solids being digested. Its cells are what is left of the tank for solids, `V/N − q`, over what a person
adds in a year, `a`. Both constants are fitted to the table, not printed with it: `q` = 50 gallons a person and day, `a`
= 76.8 gallons a person and year.
"""

from __future__ import annotations

from selfcheck.domain.conversions import GALLON
from selfcheck.domain.household import Disposal

DAILY_FLOW_M3 = 50.0 * GALLON  #: fitted
SOLIDS_M3 = 76.8 * GALLON  #: fitted
#: The interval is this much shorter with a disposal used daily (source: interval-table); sometimes: half of it (our
#: choice).
SHORTER: dict[Disposal | None, float] = {"none": 0.0, None: 0.0, "sometimes": 0.1, "daily": 0.2}


def table_interval_years(tank_m3: float, people: float, disposal: Disposal | None = "none") -> float:
    """Years between pump-outs by the published table: `(V/N − q)/a`, for a tank volume [m³] and people at home all
    year.

    Source: interval-table, read in two reprints; `q` and `a` are fitted to it. Within 0.1 year of every printed cell
    for 500 to 2,500 gallons and 1 to 10 people. 0 when the tank cannot hold a day's flow. Raises ValueError for no
    people or a negative volume.
    """
    if people <= 0 or tank_m3 < 0:
        raise ValueError("people must be above 0 and the volume not below 0")
    return max((tank_m3 / people - DAILY_FLOW_M3) / SOLIDS_M3, 0.0) * (1.0 - SHORTER[disposal])
