"""Words of danger typed in haste are made whole; everyday words are left as they are."""

import pytest

from selfcheck.interview.hazard_lookalikes import LOOKALIKES
from selfcheck.interview.hazard_spelling import mended


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("dizzi", "dizzy"),
        ("unconshus", "unconscious"),
        ("colapsed", "collapsed"),
        ("sewege", "sewage"),
        ("craked", "cracked"),
        ("crakced", "cracked"),
        ("rockin", "rocking"),
        ("fellin", "fell in"),
        ("toliet", "toilet"),
        ("overflwing", "overflowing"),
        ("electricuted", "electrocuted"),
        ("hes", "he is"),
        ("ollapsed", "collapsed"),
        ("xverflowing", "overflowing"),
        ("nobpdy", "nobody"),
        ("bkoren", "broken"),
    ],
)
def test_slips_are_mended(typed: str, meant: str) -> None:
    assert mended(typed) == meant


@pytest.mark.parametrize("word", ["tracked", "cranked", "locking", "baking", "nobody", "never", "not", "without", "ok"])
def test_other_words_are_left_alone(word: str) -> None:
    assert mended(word) == word


def test_lookalikes_are_never_mended() -> None:
    assert all(mended(word) == word for word in LOOKALIKES)
