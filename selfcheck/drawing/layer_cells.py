"""Layers in rows of characters: full rows in a texture, the row at an edge in eighths."""

from __future__ import annotations

from selfcheck.drawing.section_picture import Band
from selfcheck.drawing.spans import Role

SCUM, SLUDGE = "░", "▓"
_EIGHTHS = " ▁▂▃▄▅▆▇"
_UPPER_EIGHTH, _UPPER_HALF = "▔", "▀"


def scum_cell(band: Band | None, low: float, top: float) -> tuple[str, Role] | None:
    """The character of the crust on a row from `low` to `top`, or None where there is no crust to show."""
    if band is None or band.thickness <= 0:
        return None
    step = top - low
    covered = (min(top, band.top) - max(low, band.bottom)) / step
    upper_edge_here, lower_edge_here = low <= band.top < top, low <= band.bottom < top
    if upper_edge_here and lower_edge_here:
        return _EIGHTHS[max(1, min(7, round(covered * 8)))], "scum_edge"
    if covered >= 15 / 16:
        return SCUM, "scum"
    if covered < 1 / 16:
        thin = band.thickness < step / 8 and lower_edge_here
        return (_UPPER_EIGHTH, "scum_edge") if thin else None
    if upper_edge_here:
        return _EIGHTHS[max(1, min(7, round(covered * 8)))], "scum_edge"
    if covered >= 3 / 4:
        return SCUM, "scum"
    return (_UPPER_HALF if covered >= 5 / 16 else _UPPER_EIGHTH), "scum_edge"


def sludge_cell(band: Band | None, low: float, top: float) -> tuple[str, Role] | None:
    """The character of the sludge on a row from `low` to `top`, or None where there is none to show."""
    if band is None or band.thickness <= 0 or band.top <= low:
        return None
    eighths = round(min(1.0, (band.top - low) / (top - low)) * 8)
    if eighths >= 8:
        return SLUDGE, "sludge"
    if eighths < 1 and band.bottom < low:
        return None
    return _EIGHTHS[max(1, eighths)], "sludge_edge"
