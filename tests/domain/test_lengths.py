"""Lengths as people type them: the right value, or a question, and never silently a wrong one."""

import subprocess
import sys
import time
import tomllib
from fractions import Fraction
from pathlib import Path

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.domain.quantities import ABOUT_ERROR, MARK_ERROR, read_length, read_volume
from selfcheck.domain.units import UNITS, to_si

LINES = tomllib.loads((Path(__file__).parent / "lengths.toml").read_text(encoding="utf-8"))
INCH = 0.0254


@pytest.mark.parametrize(("text", "inches"), LINES["inches"].items())
def test_inches_and_feet(text: str, inches: float) -> None:
    reading = read_length(text)
    assert reading.status == "value"
    assert reading.metres == pytest.approx(inches * INCH, abs=1e-9)
    assert reading.error_m is not None
    assert reading.error_m > 0


@pytest.mark.parametrize(("text", "metres"), LINES["metres"].items())
@pytest.mark.parametrize("units", ["us", "metric"])
def test_metric(text: str, metres: float, units: str) -> None:
    reading = read_length(text, units)  # type: ignore[arg-type]
    assert (reading.status, reading.metres) == ("value", pytest.approx(metres, abs=1e-9))


@pytest.mark.parametrize("status", ["ask", "none", "unclear"])
def test_lines_without_one_sure_value(status: str) -> None:
    wrong = {text: read_length(text) for text in LINES["other"][status] if read_length(text).status != status}
    assert wrong == {}
    assert all(read_length(text).metres is None for text in LINES["other"][status])


def test_what_is_asked_is_named() -> None:
    assert read_length("14").meanings == (("14 in", pytest.approx(0.3556)), ("14 cm", pytest.approx(0.14)))
    assert read_length("14", "metric").meanings[0][0] == "14 cm"
    assert [label for label, _ in read_length("8 in and 8.5 in").meanings] == ["8 in", "8½ in"]
    assert len(read_length("6-8").errors_m) == 2


def test_the_range_of_the_question_settles_the_unit() -> None:
    assert read_length("8", least=1.0, most=6.0).metres == pytest.approx(8 * 0.3048)
    assert read_length("120", "metric", least=0.3, most=3.0).metres == pytest.approx(1.2)
    assert read_length("48", least=0.3, most=3.0).status == "ask"
    assert read_length("1.2", least=0.3, most=3.0).status == "ask"
    assert read_length("70", least=0.0, most=1.5).metres == pytest.approx(0.7)
    assert read_length("900", least=0.3, most=0.5).status == "ask"


def test_errors_follow_the_words() -> None:
    assert read_length("8 in").error_m == pytest.approx(MARK_ERROR)
    assert read_length("6-8 in").error_m == pytest.approx(INCH)
    assert read_length("14 in ± 2").error_m == pytest.approx(2 * INCH)
    about = read_length("about 8 in").error_m
    assert about is not None
    assert about > ABOUT_ERROR


def test_every_unit_agrees_with_pint() -> None:
    registry = pint.UnitRegistry()
    names = {
        "in": "inch",
        "ft": "foot",
        "yd": "yard",
        "gal": "gallon",
        "imp gal": "imperial_gallon",
        "L": "litre",
        "ft³": "foot**3",
        "yd³": "yard**3",
        "m³": "m**3",
    }
    for unit in UNITS:
        wanted = registry.Quantity(1, names.get(unit.symbol, unit.symbol)).to(
            "m" if unit.dimension == "length" else "m**3"
        )
        assert float(unit.size) == pytest.approx(wanted.magnitude, rel=1e-12)


@pytest.mark.parametrize(
    "hostile",
    [
        "9**9**9**9",
        "a" * 5000,
        "1" * 5000,
        "8 in\x00",
        "8\u202e in",
        "½" * 80,
        "1/2 " * 20,
        "a foot and " * 7,
        "(" * 80,
        "-" * 80,
        "about " * 13,
        "ﷺ" * 80,
        "8 in " * 16,
        "\ud800",
        "one hundred " * 6,
        "# # # #",
    ],
)
def test_hostile_text_is_answered_at_once(hostile: str) -> None:
    start = time.perf_counter()
    assert read_length(hostile).status in ("ask", "unclear", "none", "value")
    read_volume(hostile)
    assert time.perf_counter() - start < 2  # a catastrophic pattern would take minutes


def test_hidden_characters_give_no_value() -> None:
    for text in ("8\u202e in", "1\u200b4 in", "8 in\x00", "1\U000e00314 in"):
        assert read_length(text).status == "unclear"


@given(st.text(max_size=90))
def test_any_text_gets_a_reading(text: str) -> None:
    reading = read_length(text)
    assert (reading.metres is not None) == (reading.status == "value")
    assert reading.metres is None or 0 <= reading.metres <= 30
    assert bool(reading.meanings) == (reading.status == "ask")


@given(st.integers(1, 99), st.integers(1, 99), st.sampled_from([("in", INCH), ("cm", 0.01), ("feet", 0.3048)]))
def test_two_unlinked_lengths_are_never_one(first: int, second: int, unit: tuple[str, float]) -> None:
    reading = read_length(f"{first} {unit[0]} and {second} {unit[0]}")
    if first == second and first * unit[1] <= 30:
        assert reading.metres == pytest.approx(first * unit[1])
    else:
        assert reading.status in ("ask", "unclear")


def test_the_small_registry_holds_the_same_units() -> None:
    for unit in UNITS:
        assert to_si(Fraction(1), unit) == unit.size
        assert to_si(Fraction(3, 8), unit) == Fraction(3, 8) * unit.size


def test_the_units_library_is_loaded_by_the_first_amount_and_not_before() -> None:
    program = (
        "import sys; from selfcheck.domain.quantities import read_length, show_length\n"
        "read_length('brown'); show_length(0.2); print('pint' in sys.modules)\n"
        "read_length('8 in'); print('pint' in sys.modules)"
    )
    run = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert run.stdout.split() == ["False", "True"]
