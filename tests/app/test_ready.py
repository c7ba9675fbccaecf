"""What reads amounts is loaded once a first question stands there, and in nobody's way."""

from __future__ import annotations

import threading
from unittest.mock import patch

from selfcheck.domain import units
from tests.app.fakes import FakeSitting, app_of, painted, running


async def test_amounts_are_made_ready_in_a_thread_once_a_question_stands_there() -> None:
    loaded: list[threading.Thread] = []
    app = app_of(FakeSitting())
    with patch.object(units, "warm", lambda: loaded.append(threading.current_thread())):
        async with running(app, (80, 24)) as pilot:
            await pilot.settle()
            assert "Juniper Lane" in "\n".join(painted(app))
            assert not loaded
            await pilot.press("1")
            await pilot.settle()
    assert loaded
    assert threading.main_thread() not in loaded
