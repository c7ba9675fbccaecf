"""Every run of the tests is the same run: generated examples are drawn from a fixed seed."""

from __future__ import annotations

import os
import sys

from hypothesis import HealthCheck, settings

settings.register_profile(
    "repeatable", derandomize=True, deadline=None, database=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("repeatable")


def pytest_configure() -> None:
    """Programs that tests start find their modules compiled, as at home, wherever that is switched off."""
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
    sys.dont_write_bytecode = False
