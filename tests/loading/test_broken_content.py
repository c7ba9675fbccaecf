"""Broken content is refused with one error that names the file, the thing, the key and what is wrong."""

import re
import tomllib
from pathlib import Path

import pytest

from selfcheck.errors import ContentProblem
from selfcheck.loading import Place, script
from selfcheck.loading.all_checks import check_unused
from selfcheck.loading.place import packaged

FOLDER = Path(__file__).parent.parent / "broken_content"
EXPECTED: dict[str, list[str]] = tomllib.loads((FOLDER / "expected.toml").read_text(encoding="utf-8"))
GOOD = FOLDER / "good"


def load(*folders: Path) -> None:
    place = Place((*folders, packaged()))
    check_unused([script(place, "bike")], place, "en")


def test_the_good_content_is_good() -> None:
    load(GOOD)


def test_every_folder_is_tried() -> None:
    assert {path.name for path in (FOLDER / "cases").iterdir()} == set(EXPECTED)


@pytest.mark.parametrize("name", EXPECTED)
def test_it_says_what_is_wrong_and_where(name: str) -> None:
    with pytest.raises(ContentProblem) as told:
        load(FOLDER / "cases" / name, GOOD)
    for piece in EXPECTED[name]:
        assert piece in str(told.value), piece


@pytest.mark.parametrize("name", EXPECTED)
def test_it_says_so_in_plain_words(name: str) -> None:
    with pytest.raises(ContentProblem) as told:
        load(FOLDER / "cases" / name, GOOD)
    assert told.value.mend.endswith(".")
    assert told.value.what.endswith((".", "?"))
    assert not re.search(r"pydantic|validation|traceback|exception|NoneType|_type|\bdict\b", str(told.value), re.I)
    assert "\n" not in str(told.value)
