"""Lines as people type them, written without a look at the grammar: never silently wrong, and nearly always right."""

import tomllib
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from selfcheck.domain.quantities import read_count, read_date, read_length, read_yes_no

LINES = tomllib.loads((Path(__file__).parent / "typed.toml").read_text(encoding="utf-8"))
TODAY = date(2026, 5, 18)
#: a quarter of an inch for "nearly" and "a bit over", less than any misreading
TOLERANCE_M = 0.0045
STATUSES = ("ask", "unclear", "none")


def _length(text: str) -> tuple[str, Callable[[str], bool]]:
    reading = read_length(text)

    def fits(wanted: str) -> bool:
        metres = float(wanted[1:]) if wanted.startswith("m") else float(wanted) * 0.0254
        return reading.metres is not None and abs(reading.metres - metres) < TOLERANCE_M

    return reading.status, fits


def _date(text: str) -> tuple[str, Callable[[str], bool]]:
    reading = read_date(text, TODAY)

    def fits(wanted: str) -> bool:
        if wanted == "future":
            return reading.future
        if reading.earliest is None or reading.latest is None or reading.day is None:
            return False
        if wanted.startswith("?"):
            middle = date.fromisoformat(wanted[1:])
            slack = max(20, (TODAY - middle).days // 8)
            return reading.earliest <= middle <= reading.latest and abs((reading.day - middle).days) <= slack
        return f"{reading.earliest}..{reading.latest}" == wanted

    return reading.status, fits


def _count(text: str) -> tuple[str, Callable[[str], bool]]:
    reading = read_count(text)
    return reading.status, lambda wanted: reading.value == int(wanted)


def _yes_no(text: str) -> tuple[str, Callable[[str], bool]]:
    reading = read_yes_no(text)
    return "value", lambda wanted: str(reading) == wanted


READERS = {"lengths": _length, "dates": _date, "counts": _count, "yes_no": _yes_no}


@pytest.mark.parametrize("kind", READERS)
def test_lines_as_people_type_them(kind: str) -> None:
    silently_wrong, missed = [], []
    for text, wanted in LINES[kind].items():
        status, fits = READERS[kind](text)
        expected = wanted.split("|")
        if status in expected or (status == "value" and any(fits(one) for one in expected if one not in STATUSES)):
            continue
        (silently_wrong if status == "value" else missed).append(text)
    assert silently_wrong == []
    assert len(missed) <= 0.02 * len(LINES[kind]), missed
