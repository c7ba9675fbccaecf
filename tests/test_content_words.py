"""A misspelt place in somebody's words is told with file, table and key, wherever the words are used."""

from __future__ import annotations

import copy
import io
import json
import re
import shutil
import sys
from pathlib import Path

import pytest

from selfcheck.__main__ import main
from selfcheck.app.words import FaceWords
from selfcheck.content_words import Phrase, filled, placed
from selfcheck.drawing.words import say
from selfcheck.errors import ContentProblem
from selfcheck.loading import quick
from selfcheck.loading.conversations import texts
from selfcheck.loading.place import Place, content_place, packaged
from selfcheck.plain.phrases import Words
from selfcheck.report.parts import PageWords
from selfcheck.sitting.verdicts import verdict_words
from selfcheck.storage.working_copy import demo_household

DAY = "2026-06-01"


def test_places_are_filled_and_what_is_put_in_is_left_as_it_is() -> None:
    assert filled("{a} and {b}", {"a": "{b}", "b": 2, "c": 3}) == "{b} and 2"
    assert filled("no place, 100 %", {}) == "no place, 100 %"
    assert filled("{{kept}} {a}", {"a": "x"}) == "{kept} x"


@pytest.mark.parametrize("text", ["{zzzday}", "{}", "{0}", "{day.year}", "{day!r}", "{day:>9}", "{day[0]}"])
def test_a_place_that_nothing_fills_is_named(text: str) -> None:
    words = placed({"by": {"deep": {"on": [f"on {text}"]}}}, "words/x.toml")
    with pytest.raises(ContentProblem, match=re.escape("words/x.toml · by · deep.on: no such place {")):
        str(words["by"]["deep"]["on"][0]).format(day="today")


@pytest.mark.parametrize("text", ["{day", "day}", "{", "}"])
def test_a_lone_brace_is_named(text: str) -> None:
    with pytest.raises(ContentProblem, match=r"words/x.toml · by · on: a . or . stands alone"):
        Phrase(text, "words/x.toml", "by", "on").format_map({"day": "today"})


def test_words_stay_plain_data() -> None:
    raw = {"by": {"on": "{day}", "list": ["a", "{b}"], "plain": "x"}}
    words = placed(raw, "words/x.toml")
    assert words == raw
    assert json.loads(json.dumps(words)) == raw
    assert copy.deepcopy(words["by"]["on"]) == "{day}"
    with pytest.raises(ContentProblem, match=r"words/x.toml · by · off: these words are missing"):
        words["by"]["off"]
    assert words["by"].get("off") is None


def overlay(folder: Path, name: str, old: str, new: str) -> Place:
    """The program's content with one word file that differs by one line."""
    words = folder / "content" / "en" / "words"
    words.mkdir(parents=True)
    text = (packaged() / "en" / "words" / f"{name}.toml").read_text("utf-8")
    assert old in text
    words.joinpath(f"{name}.toml").write_text(text.replace(old, new), "utf-8")
    return content_place(folder / "content", own=False)


def test_every_face_and_page_tells_it(tmp_path: Path) -> None:
    place = overlay(tmp_path / "a", "screen", "Last check: {day}", "Last check: {zzzday}")
    with pytest.raises(ContentProblem, match=r"screen.toml · screen · last_check: no such place \{zzzday\}"):
        FaceWords(quick.words(place, "screen"))("last_check", day="today")
    place = overlay(tmp_path / "b", "plain", "Last check: {day}", "Last check: {zzzday}")
    with pytest.raises(ContentProblem, match=r"plain.toml · menu · last_check: no such place \{zzzday\}"):
        Words(place)("menu", "last_check", day="today")
    place = overlay(tmp_path / "c", "pictures", "stain up to {length}", "stain up to {zzzlength}")
    tables = texts(place, "pictures")
    table = next(name for name, one in tables.items() if "stain" in one)
    with pytest.raises(ContentProblem, match=rf"pictures.toml · {table} · stain: no such place"):
        say(tables[table], "stain", length="1 in")
    with pytest.raises(ContentProblem, match=rf"pictures.toml · {table} · stain: no such place"):
        PageWords("words/pictures.toml", tables)(table, "stain", length="1 in")


def test_words_of_findings_and_verdicts_tell_it(tmp_path: Path) -> None:
    text = (packaged() / "en" / "words" / "verdicts.toml").read_text("utf-8")
    first = re.search(r"\{([a-z0-9_]+)\}", text.partition("[by]")[2])
    assert first is not None
    words = verdict_words(overlay(tmp_path, "verdicts", first[0], "{zzz}"))
    by = next(name for name, one in words.verdicts["by"].items() if "{zzz}" in one)
    with pytest.raises(ContentProblem, match=rf"verdicts.toml · by · {by}: no such place \{{zzz\}}"):
        words.say("by", by).format(day="today")


@pytest.mark.parametrize(
    ("name", "arguments"),
    [
        ("verdicts", ["judge"]),
        ("verdicts", ["judge", "--json"]),
        ("findings", ["judge"]),
        ("signs", ["judge"]),
        ("report_page", ["report", "--to"]),
        ("calendar", ["calendar", "--to"]),
        ("call_note", ["note"]),
        ("sheet_page", ["sheet"]),
        ("pictures", ["report", "--to"]),
        ("plain", ["judge"]),
        ("plain", ["examine"]),
    ],
)
def test_no_misspelt_place_ends_a_command_with_a_fault(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, name: str, arguments: list[str]
) -> None:
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    home = shutil.copytree(demo_household(), tmp_path / "home")
    words = tmp_path / "content" / "en" / "words"
    words.mkdir(parents=True)
    text = (packaged() / "en" / "words" / f"{name}.toml").read_text("utf-8")
    words.joinpath(f"{name}.toml").write_text(re.sub(r"\{([a-z0-9_]+)\}", r"{zzz\1}", text), "utf-8")
    ending = {"report": "html", "calendar": "ics"}.get(arguments[0])
    to = [str(tmp_path / f"made.{ending}")] if arguments[-1] == "--to" else []
    code = main([arguments[0], str(home), *arguments[1:], *to, "--today", DAY, "--content", str(tmp_path / "content")])
    told = capsys.readouterr().err
    assert "made a mistake" not in told
    assert (code, told) == (0, "") or (code == 2 and f"{name}.toml · " in told and "no such place {zzz" in told)
