"""The doors of the command line: what they print, where they fail politely, and how they end."""

from __future__ import annotations

import io
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from pydantic import TypeAdapter

from selfcheck.__main__ import main
from selfcheck.storage.schemas import JudgementShown
from selfcheck.storage.working_copy import demo_household

ROOT = Path(__file__).resolve().parents[2]
DAY = "2026-06-01"


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return Path(shutil.copytree(demo_household(), tmp_path / "home"))


@pytest.fixture(autouse=True)
def _own_places(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name))


def run(*arguments: str, typed: str = "", **settings: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "selfcheck", *arguments],
        cwd=ROOT,
        input=typed,
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, **settings},
    )


def test_judge_prints_one_object_of_the_promised_form(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = {path: path.stat().st_mtime_ns for path in home.rglob("*")}
    assert main(["judge", str(home), "--json", "--today", DAY]) == 0
    shown = json.loads(capsys.readouterr().out)
    TypeAdapter(JudgementShown).validate_python(shown)
    assert (shown["check"], shown["problems"]) == ("2026-05-16", [])
    assert {path: path.stat().st_mtime_ns for path in home.rglob("*")} == before
    main(["judge", str(home), "--json", "--today", DAY])
    assert json.loads(capsys.readouterr().out) == shown


def test_judge_in_words_says_the_same_and_names_what_it_left_out(
    home: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["judge", str(home), "--json", "--today", DAY])
    shown = json.loads(capsys.readouterr().out)
    (home / "checks/2025-05-17.json").write_text("{")
    assert main(["judge", str(home), "--today", DAY]) == 0
    words = capsys.readouterr().out
    assert shown["headline"] in words
    assert "checks/2025-05-17.json" in words


def test_exit_code_speaks_only_when_asked(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    check = json.loads((home / "checks/2026-05-16.json").read_text())
    check["seen"]["house"] = ["sewage_backup"]
    (home / "checks/2026-05-16.json").write_text(json.dumps(check))
    assert main(["judge", str(home), "--json", "--today", DAY]) == 0
    assert json.loads(capsys.readouterr().out)["verdict"] == "call_now"
    assert main(["judge", str(home), "--today", DAY, "--exit-code"]) == 1
    capsys.readouterr()


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["judge", "nowhere"], "no folder"),
        (["judge", "pyproject.toml"], "is a file"),
        (["judge", "content"], "no household record"),
        (["judge", "demo_household", "--today", "tomorrow"], "2026-05-18"),
        (["judge", "demo_household", "--rules", "nobody"], "us-epa-homeowner"),
        (["judge", "demo_household", "--content", "nowhere"], "folder"),
        (["schema", "nothing"], "household"),
        (["rehearse", "nowhere.toml"], "no journey"),
        (["pyproject.toml"], "is a file"),
        (["judge"], "folder"),
        (["--nonsense"], "usage"),
        (["--today", DAY, "judge", "demo_household"], f"selfcheck judge --today {DAY} demo_household"),
        (["jugde", "demo_household"], "Did you mean: selfcheck judge demo_household"),
        (["judge", "demo_household", "--jsn"], "Did you mean --json?"),
        (["--plian"], "Did you mean --plain?"),
        (["judge", "demo_household", "more"], "--help"),
    ],
)
def test_used_wrongly_it_says_what_to_do(
    arguments: list[str], words: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(ROOT)
    try:
        code = main(arguments)
    except SystemExit as ended:
        code = ended.code
    shown = capsys.readouterr()
    assert code == 2
    assert words in shown.err
    assert shown.out == ""


@pytest.mark.parametrize(("typed", "asked"), [("1\nmaybe\nhm\nyes\n", 3), ("nope\n", 1), ("hm\n", 2), ("", 1)])
def test_whether_to_begin_is_asked_again_and_never_guessed(
    typed: str, asked: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO(typed))
    assert main([str(tmp_path / "new")]) == 2
    assert capsys.readouterr().out.count("Begin a new household there?") == asked
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("why", "keeps your checks"),
        ("what is that", "keeps your checks"),
        ("help", "keeps your checks"),
        ("I don't know", "if you are not sure"),
        ("i forgot", "if you are not sure"),
        ("hm", "leaves all as it is"),
        ("please help", "911"),
        ("my son fell in", "Do not go in, not even to help"),
    ],
)
def test_any_line_is_met_where_a_household_is_begun(
    line: str, said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO(f"{line}\nleave\nyes\n"))
    assert main([str(tmp_path / "new")]) == 2
    shown = " ".join(capsys.readouterr().out.split())
    assert said in shown
    assert shown.count("Begin a new household there?") == 2
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("line", ["y", "sure", "yes please", "OK"])
def test_a_household_is_begun_by_any_yes(
    line: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO(f"why\n{line}\nleave\n"))
    assert main([str(tmp_path / "new"), "--plain"]) == 0
    assert "What do you want to do?" in capsys.readouterr().out


def test_schema_prints_json(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["schema", "check"]) == 0
    assert "seen" in json.loads(capsys.readouterr().out)["properties"]
    assert main(["schema"]) == 0
    assert set(json.loads(capsys.readouterr().out)) >= {"household", "check", "pump-out", "judgement"}


def test_examine_finds_what_is_wrong(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["examine", str(home), "--today", DAY]) == 0
    assert "6 checks" in capsys.readouterr().out
    (home / "checks/2025-05-17.json").write_text("{")
    assert main(["examine", str(home), "--today", DAY]) == 2
    assert "checks/2025-05-17.json" in capsys.readouterr().out


def test_a_folder_named_like_a_command_can_be_opened(home: Path, tmp_path: Path) -> None:
    home.rename(tmp_path / "judge")
    done = subprocess.run(
        [sys.executable, "-m", "selfcheck", "./judge", "--today", DAY],
        cwd=tmp_path,
        input="quit\n",
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "Juniper Lane" in done.stdout


def test_a_fault_in_the_program_goes_to_a_file_and_not_to_the_person(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    from selfcheck.plain import doors

    def fault(*_: object, **__: object) -> bool:
        raise ZeroDivisionError("a secret in a local name")

    monkeypatch.setattr(doors, "judge", fault)
    assert main(["judge", "demo_household"]) == 2
    shown = capsys.readouterr().err
    assert "Traceback" not in shown
    assert "secret" not in shown
    assert "ZeroDivisionError" in (tmp_path / "XDG_STATE_HOME/selfcheck/trace.txt").read_text()
    assert str(tmp_path / "XDG_STATE_HOME/selfcheck/trace.txt") in shown


def test_a_reader_that_goes_away_is_no_fault(home: Path) -> None:
    done = subprocess.run(
        f'"{sys.executable}" -m selfcheck judge "{home}" --json --today {DAY} | head -c 10',
        shell=True,
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (len(done.stdout), done.stderr) == (10, "")


def test_a_terminal_that_knows_only_ascii_gets_question_marks(home: Path) -> None:
    done = run("judge", str(home), "--today", DAY, PYTHONIOENCODING="ascii")
    assert (done.returncode, done.stderr) == (0, "")
    assert "?" in done.stdout


def test_no_socket_is_ever_opened(home: Path) -> None:
    program = (
        "import sys\n"
        "def watch(event, arguments):\n"
        "    if event.startswith('socket.'):\n"
        "        raise AssertionError(event)\n"
        "sys.addaudithook(watch)\n"
        "from selfcheck.__main__ import main\n"
        f"home = {str(home)!r}\n"
        "for arguments in (['judge', home], ['examine', home], ['schema'], [home, '--plain']):\n"
        f"    main(arguments + ([] if arguments[0] == 'schema' else ['--today', '{DAY}']))\n"
        "assert 'textual' not in sys.modules\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program],
        cwd=ROOT,
        input="1\n2\nnone\n1\n1\nwhat is scum?\nquit\n",
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "filled in" in done.stdout
