"""Every page at three sizes, as text. Run with SELFCHECK_SNAPSHOTS=write to take new pictures, then read them."""

from __future__ import annotations

import os
from collections.abc import AsyncIterator
from dataclasses import replace
from pathlib import Path

import pytest

from tests.app.fakes import FACTS, HALF_DONE, FakeSitting, app_of, painted, running

FOLDER = Path(__file__).parent / "snapshots"
SIZES = ((60, 20), (80, 24), (120, 40))
#: from page to page: what is pressed or said, and the name of the page that is open then
WALK: tuple[tuple[tuple[str, ...], str], ...] = (
    ((), "home"),
    (("f1",), "help"),
    (("enter", "5"), "record"),
    (("1",), "list"),
    (("1",), "check"),
    (("escape", "escape", "escape", "1"), "caution"),
    (("1", "1", "3"), "several"),
    (("enter", "say 6 in"), "length"),
    (("f2",), "why"),
    (("f7",), "tank"),
    (("enter", "say rather a lot"), "trouble"),
    (("say 8.5 in", "down"), "closing"),
    (("enter",), "ending"),
    (("enter",), "verdict"),
)


async def walk(size: tuple[int, int]) -> AsyncIterator[tuple[str, list[str]]]:
    """Each page of the walk, by name, as it is painted."""
    app = app_of(FakeSitting())
    async with running(app, size) as pilot:
        for keys, name in WALK:
            for key in keys:
                await (pilot.say(key[4:]) if key.startswith("say ") else pilot.press(key))
                await pilot.settle()
            yield name, painted(app)
    app = app_of(FakeSitting(facts=replace(FACTS, unfinished=HALF_DONE)))
    async with running(app, size) as pilot:
        await pilot.press("1")
        await pilot.settle()
        yield "half_done", painted(app)


@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
async def test_pages_look_as_they_did(size: tuple[int, int]) -> None:
    other = []
    async for name, lines in walk(size):
        seen = "\n".join(lines) + "\n"
        file = FOLDER / f"{name}-{size[0]}x{size[1]}.txt"
        if os.environ.get("SELFCHECK_SNAPSHOTS") == "write":
            FOLDER.mkdir(exist_ok=True)
            file.write_text(seen, encoding="utf-8")
        if seen != file.read_text(encoding="utf-8"):
            other.append(f"{file.name}\n{seen}")
    assert not other, "\n".join(other)


async def test_a_very_small_terminal_stops_nothing() -> None:
    async for name, lines in walk((40, 12)):
        assert len(lines) == 12, name
        assert all(len(line) <= 40 for line in lines), name
        assert any(line.strip() for line in lines), name
