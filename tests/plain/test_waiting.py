"""While a person reads the first question, what reads amounts is loaded."""

from __future__ import annotations

import io
import threading
from datetime import date
from pathlib import Path
from unittest.mock import patch

import pytest

from selfcheck.domain import units
from selfcheck.loading.place import content_place
from selfcheck.plain import talking, waiting
from selfcheck.plain.face import Face
from selfcheck.plain.listening import Listener
from selfcheck.plain.speaking import Speaker
from selfcheck.plain.talking import Gone
from selfcheck.sitting import Sitting


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


@pytest.mark.parametrize("typed", [Terminal(""), io.StringIO("")], ids=["terminal", "pipe"])
def test_only_after_the_first_question_and_only_for_a_person(tmp_path: Path, typed: io.StringIO) -> None:
    out = io.StringIO()
    said: list[str] = []
    sitting = Sitting.open(tmp_path / "home", content_place(own=False), date(2026, 6, 1), begin=True)
    with patch.object(talking, "get_ready", lambda: said.append(out.getvalue())), pytest.raises(Gone):
        Face(sitting, Speaker(out, 78), Listener(typed)).run()
    sitting.close()
    assert bool(said) == typed.isatty()
    assert all(one.endswith("> ") for one in said)


def test_it_is_loaded_once_in_a_thread() -> None:
    done = threading.Event()
    loaded: list[threading.Thread] = []

    def warm() -> None:
        loaded.append(threading.current_thread())
        done.set()

    waiting.get_ready.cache_clear()
    with patch.object(units, "warm", warm):
        waiting.get_ready()
        waiting.get_ready()
        assert done.wait(10)
    waiting.get_ready.cache_clear()
    assert len(loaded) == 1
    assert loaded[0] is not threading.main_thread()
