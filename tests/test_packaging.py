"""The wheel carries everything: content and the demonstration household travel inside it."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder into which the freshly built wheel was unpacked, as an installer would."""
    place = tmp_path_factory.mktemp("wheel")
    build = "from hatchling.build import build_wheel; import sys; print(build_wheel(sys.argv[1]))"
    run = subprocess.run(
        [sys.executable, "-c", build, str(place)], cwd=ROOT, capture_output=True, text=True, check=True
    )
    wheel = place / run.stdout.strip().splitlines()[-1]
    target = place / "site"
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(target)
    return target


def _run(installed: Path, *arguments: str, folder: Path) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "PYTHONPATH": str(installed), "HOME": str(folder), "TERM": "dumb"}
    return subprocess.run(
        [sys.executable, "-m", "selfcheck", *arguments],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        input="quit\n",
        timeout=60,
        check=False,
    )


def test_the_wheel_holds_content_and_demonstration(installed: Path) -> None:
    assert (installed / "selfcheck" / "_content" / "flows" / "yearly.toml").is_file()
    assert (installed / "selfcheck" / "_demo_household" / "household.json").is_file()


def test_it_judges_from_another_folder(installed: Path, tmp_path: Path) -> None:
    demo = installed / "selfcheck" / "_demo_household"
    run = _run(installed, "judge", str(demo), "--json", "--today", "2026-06-01", folder=tmp_path)
    assert run.returncode == 0, run.stderr
    assert json.loads(run.stdout)["check"] == "2026-05-16"


def test_it_talks_from_another_folder(installed: Path, tmp_path: Path) -> None:
    demo = installed / "selfcheck" / "_demo_household"
    run = _run(installed, str(demo), "--plain", folder=tmp_path)
    assert run.returncode == 0, run.stderr
    assert "Juniper Lane" in run.stdout
