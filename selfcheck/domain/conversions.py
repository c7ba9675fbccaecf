"""The few exact sizes that published figures are written in, in SI."""

from __future__ import annotations

INCH = 0.0254  # metres
FOOT = 0.3048  # metres
MILLIMETRE = 0.001  # metres
GALLON = 231 * INCH**3  # cubic metres in a US gallon
