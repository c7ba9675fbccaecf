"""Counts, numbers, volumes, and yes or no."""

import pytest

from selfcheck.domain.quantities import read_count, read_number, read_volume, read_yes_no

GALLON = 0.003785411784


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("three", 3),
        ("4", 4),
        ("2 adults and 2 kids", 4),
        ("2 adults, 1 child", 3),
        ("just me", 1),
        ("only me", 1),
        ("a family of five", 5),
        ("me and my wife", 2),
        ("me, my wife and 3 kids", 5),
        ("the two of us", 2),
        ("four people and a dog", 4),
        ("a couple", 2),
        ("there are 4 of us", 4),
        ("2 or 3", 3),
        ("none", 0),
        ("nobody", 0),
        ("somos cuatro", 4),
        ("a mom and 3 kids", 4),
        ("2 + 2", 4),
    ],
)
def test_counts(text: str, count: int) -> None:
    reading = read_count(text)
    assert (reading.status, reading.value) == ("value", count)


def test_counts_that_are_none() -> None:
    assert read_count("2 or 3").low == 2
    assert read_count("4.5").status == "ask"
    assert read_count("husband and 2 kids").status == "ask"
    assert read_count("not sure").status == "none"
    for text in ("-2", "hello", "9**9", "1000000", "4 in", "x" * 500):
        assert read_count(text).status == "unclear"


def test_numbers() -> None:
    assert read_number("4.5").value == 4.5
    assert read_number("three and a half").value == 3.5
    ranged = read_number("2-3")
    assert (ranged.value, ranged.error) == (2.5, 0.5)
    assert read_number("1,250").value == 1250
    assert read_number("idk").status == "none"
    assert read_number("-4").status == "unclear"
    assert read_number("brown").status == "unclear"


@pytest.mark.parametrize(
    ("text", "cubic_metres"),
    [
        ("1000 gal", 1000 * GALLON),
        ("1,000 gallons", 1000 * GALLON),
        ("1k gallons", 1000 * GALLON),
        ("1.5k gal", 1500 * GALLON),
        ("a thousand gallons", 1000 * GALLON),
        ("twelve hundred gallons", 1200 * GALLON),
        ("between 1000 and 1200 gallons", 1100 * GALLON),
        ("3.8 m3", 3.8),
        ("3.8m³", 3.8),
        ("3800 litres", 3.8),
        ("3,800 L", 3.8),
        ("3.800 litros", 3.8),
        ("3 cubic metres", 3.0),
        ("130 cubic feet", 130 * 0.028316846592),
        ("1 000 gallons", 1000 * GALLON),
        ("1'200 L", 1.2),
        ("1.000-1.200 litros", 1.1),
        ("1000 imperial gallons", 4.54609),
        ("1 000 imp. gal", 4.54609),
        ("imperial, 1000 gal", 4.54609),
        ("1000 gal (UK)", 4.54609),
        ("1500", 1500 * GALLON),
        ("3.8", 3.8),
    ],
)
def test_volumes(text: str, cubic_metres: float) -> None:
    reading = read_volume(text)
    assert (reading.status, reading.cubic_metres) == ("value", pytest.approx(cubic_metres, rel=1e-9))


def test_volumes_that_are_none() -> None:
    assert read_volume("not sure").status == "none"
    for text in ("12 in", "5000 pounds", "brown", "-500 gal", "9**9"):
        assert read_volume(text).status == "unclear"
    assert read_volume("1000 gal or 750 gal and 1200 gal").status == "ask"
    assert read_volume("1500", "metric").cubic_metres == pytest.approx(1.5)


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("yep", "yes"),
        ("YES!", "yes"),
        ("done", "yes"),
        ("I did", "yes"),
        ("sí", "yes"),
        ("yes it's done", "yes"),
        ("yeah sure", "yes"),
        ("ok", "yes"),
        ("nope", "no"),
        ("not yet", "no"),
        ("no, not really", "no"),
        ("no it isn't", "no"),
        ("haven't yet", "no"),
        ("I didn't", "no"),
        ("nobody", "no"),
        ("not sure", "unknown"),
        ("idk", "unknown"),
        ("I don't know", "unknown"),
        ("maybe", None),
        ("yes and no", None),
        ("yesterday", None),
        ("it did not move", None),
        ("nine", None),
        ("noon", None),
        ("", None),
        ("yex", None),
        ("notdone", None),
    ],
)
def test_yes_or_no_in_exact_words(text: str, answer: str | None) -> None:
    assert read_yes_no(text) == answer
