"""Units people use for lengths and volumes, each with its exact size in SI.

The sizes are definitions (international yard of 1959; US gallon of 231 cubic inches; imperial gallon of 4.54609 L),
so they are kept as exact fractions. What a person types is converted by pint, from a registry of these few units.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Literal, NamedTuple

if TYPE_CHECKING:
    from pint import UnitRegistry

System = Literal["us", "metric"]
Dimension = Literal["length", "volume"]


class Unit(NamedTuple):
    """A unit: its symbol, what it measures, its size (m or m³), the system it belongs to, and what pint calls it."""

    symbol: str
    dimension: Dimension
    size: Fraction
    system: System
    name: str


def _length(symbol: str, size: str, system: System, name: str) -> Unit:
    return Unit(symbol, "length", Fraction(size), system, name)


def _volume(symbol: str, size: str, system: System, name: str) -> Unit:
    return Unit(symbol, "volume", Fraction(size), system, name)


INCH = _length("in", "0.0254", "us", "inch")
FOOT = _length("ft", "0.3048", "us", "foot")
YARD = _length("yd", "0.9144", "us", "yard")
MILLIMETRE = _length("mm", "0.001", "metric", "millimetre")
CENTIMETRE = _length("cm", "0.01", "metric", "centimetre")
DECIMETRE = _length("dm", "0.1", "metric", "decimetre")
METRE = _length("m", "1", "metric", "metre")
GALLON = _volume("gal", "0.003785411784", "us", "gallon")
IMPERIAL_GALLON = _volume("imp gal", "0.00454609", "us", "imperial_gallon")
CUBIC_FOOT = _volume("ft³", "0.028316846592", "us", "foot ** 3")
CUBIC_YARD = _volume("yd³", "0.764554857984", "us", "yard ** 3")
LITRE = _volume("L", "0.001", "metric", "litre")
CUBIC_METRE = _volume("m³", "1", "metric", "metre ** 3")
UNITS = (
    INCH, FOOT, YARD, MILLIMETRE, CENTIMETRE, DECIMETRE, METRE,
    GALLON, IMPERIAL_GALLON, CUBIC_FOOT, CUBIC_YARD, LITRE, CUBIC_METRE,
)  # fmt: skip

#: the same definitions as pint reads them
_DEFINITIONS = (
    "metre = [length]",
    "decimetre = 0.1 * metre",
    "centimetre = 0.01 * metre",
    "millimetre = 0.001 * metre",
    "yard = 0.9144 * metre",
    "foot = yard / 3",
    "inch = foot / 12",
    "litre = decimetre ** 3",
    "gallon = 231 * inch ** 3",
    "imperial_gallon = 4.54609 * litre",
)
_BASE = {"length": "metre", "volume": "metre ** 3"}

_SPELLINGS: dict[Unit, str] = {
    INCH: '" in ins inch inches inchs inche inc inces inchez iches incehs ich inchies pulgada pulgadas pulg',
    FOOT: "' ft fts foot feet feets foots feat foet pie pies",
    YARD: "yd yds yard yards",
    MILLIMETRE: "mm mms mil millimetre millimetres millimeter millimeters milimeter milimeters milimetro milimetros",
    CENTIMETRE: "cm cms centimetre centimetres centimeter centimeters centimetrs centimters centemeters centimetro "
    "centimetros centi centis",
    DECIMETRE: "dm decimetre decimetres decimeter decimeters decimetro decimetros",
    METRE: "m mt mts mtr mtrs metre metres meter meters metro metros",
    GALLON: "gal gals gallon gallons galon galons galones gallns gallen gallens gl",
    LITRE: "l lt ltr ltrs litre litres liter liters litro litros",
    CUBIC_METRE: "cbm",
}
BY_WORD: dict[str, Unit] = {word: unit for unit, words in _SPELLINGS.items() for word in words.split()}
CUBED: dict[Unit, Unit] = {FOOT: CUBIC_FOOT, YARD: CUBIC_YARD, METRE: CUBIC_METRE, DECIMETRE: LITRE}
_LONG = tuple(word for word in BY_WORD if len(word) >= 6)


@lru_cache(maxsize=1)
def _registry() -> UnitRegistry[Fraction]:
    from pint import UnitRegistry

    registry: UnitRegistry[Fraction] = UnitRegistry(None, non_int_type=Fraction)
    for definition in _DEFINITIONS:
        registry.define(definition)
    return registry


def warm() -> None:
    """Load pint and its registry, so that the first amount somebody types is not kept waiting. Safe in a thread."""
    to_si(Fraction(1), INCH)


@lru_cache(maxsize=1024)
def to_si(value: Fraction, unit: Unit) -> Fraction:
    """So many of a unit in metres or cubic metres, exactly. Takes numbers that the grammar has checked, never text."""
    quantity = _registry().Quantity(value, unit.name).to(_BASE[unit.dimension])
    return Fraction(quantity.magnitude)


def unit_of(word: str) -> Unit | None:
    """The unit a word names, also with one slip of the keys in a word of six letters or more; None when it names
    none.
    """
    found = BY_WORD.get(word)
    if found is not None or not 5 <= len(word) <= 13:
        return found
    for known in _LONG:
        if one_slip(word, known):
            return BY_WORD[known]
    return None


def one_slip(word: str, known: str) -> bool:
    """Whether one letter added, left out, changed, or two neighbours swapped, turns `word` into `known`."""
    if abs(len(word) - len(known)) > 1 or word[0] != known[0]:
        return False
    at = 0
    while at < len(word) and at < len(known) and word[at] == known[at]:
        at += 1
    if len(word) == len(known):
        swapped = word[at : at + 2][::-1] == known[at : at + 2] and word[at + 2 :] == known[at + 2 :]
        return swapped or word[at + 1 :] == known[at + 1 :]
    longer, shorter = (word, known) if len(word) > len(known) else (known, word)
    return longer[at + 1 :] == shorter[at:]
