"""A maker's chart as people type it off: "12 in 150 gal; 24 in 330 gal; 48 in 1,000 gal"."""

from __future__ import annotations

import re

from selfcheck.domain.charts import Chart
from selfcheck.domain.quantities import read_length, read_volume
from selfcheck.domain.units import System

_NUMBER = r"\d[\d.,/½¼¾⅛⅜⅝⅞]*(?:\s+\d/\d)?"
_LENGTH = r"inch(?:es)?|in\.?|\"|”|″|feet|foot|ft\.?|'|cm|mm|m"
_VOLUME = r"gal(?:lon)?s?\.?|lit(?:er|re)s?|l|m3|m³|cubic met(?:er|re)s?"
_ROW = re.compile(
    rf"(?P<height>{_NUMBER}\s*(?P<length>{_LENGTH})?)\s*(?:[:=]|is|holds|(?<=\s)[-–—](?=\s))?\s*"
    rf"(?P<volume>{_NUMBER}\s*(?P<amount>{_VOLUME})?)",
    re.IGNORECASE,
)
_BETWEEN = re.compile(r"\s*(?:;|\n|,(?!\d)|\band\b)\s*", re.IGNORECASE)
#: What a bare number means, by the household's units.
BARE: dict[System, tuple[str, str]] = {"us": ("in", "gal"), "metric": ("cm", "L")}


def read_chart(text: str, units: System = "us") -> tuple[list[float], list[float]] | None:
    """Heights above the floor [m] and the volumes below them [m³]; None where a line is no such pair or does not rise.

    A bare number is taken in inches and gallons, or in centimeters and liters, by the household's units.
    """
    rows = [_ROW.fullmatch(piece) for piece in _BETWEEN.split(text.strip().rstrip(".;,")) if piece]
    heights, volumes = [], []
    for row in rows:
        if row is None:
            return None
        height = read_length(row["height"] if row["length"] else f"{row['height']} {BARE[units][0]}", units)
        volume = read_volume(row["volume"] if row["amount"] else f"{row['volume']} {BARE[units][1]}", units)
        if height.metres is None or volume.cubic_metres is None:
            return None
        heights.append(height.metres)
        volumes.append(volume.cubic_metres)
    return (heights, volumes) if len(rows) > 1 and Chart.of(heights, volumes) is not None else None
