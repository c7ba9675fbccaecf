"""What an amount may stand for: the units that fit it, its middle and error, and how it is named when it is asked."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from selfcheck.domain.amounts import Amount
from selfcheck.domain.hedges import Hedge
from selfcheck.domain.units import (
    CENTIMETRE,
    CUBIC_METRE,
    FOOT,
    GALLON,
    INCH,
    LITRE,
    METRE,
    MILLIMETRE,
    System,
    Unit,
    to_si,
)

#: one standard deviation of reading a mark on a pole or tape: a quarter inch (our choice)
MARK_ERROR = 0.25 * 0.0254


#: "about": half an inch or a twentieth, whichever is more (our choice)
ABOUT_ERROR, ABOUT_SHARE = 0.5 * 0.0254, 0.05


#: no length in this job is longer (our choice)
LONGEST_M = 30.0


#: no tank in this job holds more, or less when its size is told (our choice)
LARGEST_M3, SMALLEST_M3 = 200.0, 0.4


_US_GUESSES = (INCH, CENTIMETRE, FOOT, METRE, MILLIMETRE)


_METRIC_GUESSES = (CENTIMETRE, INCH, METRE, MILLIMETRE)


def lengths_of(amount: Amount, units: System, least: float | None, most: float | None, alone: bool) -> Sequence[Amount]:
    """The lengths an amount may stand for; with no unit, one for each unit that fits the range."""
    if amount.unit is not None:
        if amount.other is None:
            return [amount]
        whole, small = amount, replace(amount, low=amount.other, high=amount.other)
        if amount.unit.system == "us" or amount.unit is MILLIMETRE:
            return [
                one
                for one in (whole, small)
                if (one is whole and one.high <= 12) or (one is small and amount.unit is not MILLIMETRE)
            ]
        return [small] if amount.unit is METRE else [whole, small]
    if amount.high == 0:
        return [replace(amount, unit=INCH if units == "us" else CENTIMETRE)]
    low = least if least is not None else 0.0
    high = most if most is not None else LONGEST_M
    guesses: tuple[Unit, ...] = _US_GUESSES if units == "us" else _METRIC_GUESSES
    if least is None and most is None:
        guesses = guesses[:2]
    value = amount.other if amount.other is not None and units == "metric" else None
    made = [_in_unit(amount, unit) for unit in guesses]
    if value is not None:
        made += [_in_unit(replace(amount, low=value, high=value), unit) for unit in (METRE, CENTIMETRE)]
    fitting = [one for one in made if low * 0.999 <= one.low and one.high <= high * 1.001]
    if len(fitting) > 1:
        fitting = [one for one in fitting if one.unit is not MILLIMETRE]
    return fitting if fitting or not alone else [one for one in made[:2] if one.high <= LONGEST_M]


def _in_unit(amount: Amount, unit: Unit) -> Amount:
    spread = None if amount.spread is None else to_si(amount.spread, unit)
    return replace(
        amount,
        low=to_si(amount.low, unit),
        high=to_si(amount.high, unit),
        unit=unit,
        finest=unit,
        other=None,
        spread=spread,
    )


def volumes_of(amount: Amount, units: System, least: float | None, most: float | None) -> Sequence[Amount]:
    """The volumes an amount may stand for, `least` and `most` in m³; with no unit, one for each unit that fits."""
    if amount.unit is not None:
        made = (
            [amount]
            if amount.other is None
            else [amount, replace(amount, low=amount.other, high=amount.other, other=None)]
        )
        return [one for one in made if one.high >= SMALLEST_M3] or made[:1]
    low = least if least is not None else 0.8
    high = most if most is not None else 40.0
    if amount.high == 0:
        return [replace(amount, unit=GALLON if units == "us" else LITRE)]
    guesses = (GALLON, LITRE, CUBIC_METRE) if units == "us" else (LITRE, CUBIC_METRE, GALLON)
    made = [_in_unit(amount, unit) for unit in guesses]
    fitting = [one for one in made if low <= one.low and one.high <= high]
    own = [one for one in fitting if one.unit is not None and one.unit.system == units]
    if len(own) == 1 and least is None and most is None:
        return own
    return fitting or [one for one in made if one.high <= LARGEST_M3][:2]


def length_of(amount: Amount, mood: Hedge) -> tuple[float, float]:
    """Middle (m) and standard error (m) of an amount with a unit, with what the words around it add."""
    finest = amount.finest or amount.unit
    middle = float(amount.middle)
    error = max(MARK_ERROR, float(amount.high - amount.low) / 2)
    if mood.below_one:
        return middle / 2, max(MARK_ERROR, middle / 2)
    if mood.shift:
        step = _step(finest, mood)
        middle, error = max(0.0, middle + mood.shift * step), max(error, step)
    if mood.about or amount.loose:
        error = math.hypot(error, max(ABOUT_ERROR, ABOUT_SHARE * middle))
    if amount.spread is not None:
        error = max(float(amount.spread), 1e-4)
    return middle, error


def _step(unit: Unit | None, mood: Hedge) -> float:
    """How far "just under" lies from the figure (our choice): a quarter inch, half an inch from a whole foot, 1 cm
    from a metre.
    """
    if mood.hair:
        return 0.125 * 0.0254
    if unit is FOOT:
        return 0.5 * 0.0254
    if unit is METRE:
        return 0.01
    return 0.005 if unit is CENTIMETRE else 0.001 if unit is MILLIMETRE else 0.25 * 0.0254


_GLYPHS = {Fraction(1, 4): "¼", Fraction(1, 2): "½", Fraction(3, 4): "¾"}


def label_of(amount: Amount) -> str:
    """The amount in the unit it was said in: `14 in`, `6–8 cm`, `1½ ft`."""
    unit = amount.unit
    assert unit is not None
    parts = [_figure(value / unit.size) for value in dict.fromkeys((amount.low, amount.high))]
    return f"{'–'.join(parts)} {unit.symbol}"


def _figure(value: Fraction) -> str:
    whole, part = divmod(value, 1)
    if part in _GLYPHS:
        return f"{whole or ''}{_GLYPHS[part]}"
    return re.sub(r"\.?0+$", "", f"{float(value):,.2f}") if part else f"{whole:,}"
