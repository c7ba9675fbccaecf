"""Processor milliseconds of a forecast with twenty checks and of its dates, beside a dense grid with numpy and scipy.

python -m tests.benchmarks.forecast_speed
"""

from __future__ import annotations

from statistics import median
from time import process_time

from selfcheck.domain.check import PumpOut
from selfcheck.domain.forecast import forecast
from selfcheck.domain.shapes import vessel
from tests.domain.test_forecast import EPA, HOUSE, PUMPED, TANK, checks, reference


def main() -> None:
    """Print medians of several runs."""
    many, inside = checks(20), vessel(TANK)
    pump_outs = [PumpOut(on=PUMPED, sludge_left_m=0.0)]
    learn, dates = [], []
    for _ in range(40):
        start = process_time()
        found = forecast(HOUSE, TANK, inside, many, pump_outs, many[-1].on)
        learned = process_time()
        found.due(EPA)
        learn.append(1000 * (learned - start))
        dates.append(1000 * (process_time() - learned))
    start = process_time()
    reference(*found.evidence, found.posterior.pivot, EPA, 3)
    floor = 1000 * (process_time() - start)
    ours = median(learn) + median(dates)
    print(f"forecast {median(learn):.1f} ms, dates {median(dates):.1f} ms")
    print(f"numpy and scipy {floor:.0f} ms: {floor / ours:.0f} x")


if __name__ == "__main__":
    main()
