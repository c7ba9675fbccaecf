"""The invented household, closed and open."""

from pathlib import Path

import pytest

from selfcheck.sitting import Sitting
from tests.sitting.desks import demo, opened


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return demo(tmp_path / "home")


@pytest.fixture
def sitting(home: Path) -> Sitting:
    return opened(home)
