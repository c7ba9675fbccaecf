"""The house holds: what stands at the top, who may import whom, who may touch files, screens and the clock."""

from __future__ import annotations

import ast
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "selfcheck"
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "selfcheck", "content", "tests", "demo_household"}

#: a part may import only from parts with a smaller number, and from itself
STOREYS = {
    "errors": 0,
    "progress": 0,
    "text": 0,
    "content_words": 1,
    "domain": 1,
    "interview": 2,
    "loading": 3,
    "storage": 3,
    "drawing": 3,
    "practice": 3,
    "report": 4,
    "sitting": 5,
    "plain": 6,
    "app": 6,
    "__main__": 7,
}
#: these doors take text only, so they ask `loading` for the guide and the tables on disk when they are first needed
EXCEPTIONS = {
    ("selfcheck/interview/side_questions.py", "loading"),
    ("selfcheck/interview/hazard_weighing.py", "loading"),
}


def _modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


def _imports(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            if node.module == "selfcheck":
                yield from (f"selfcheck.{alias.name}" for alias in node.names)
            yield node.module


def _part(path: Path) -> str:
    relative = path.relative_to(PACKAGE)
    return relative.parts[0] if len(relative.parts) > 1 else relative.stem


def _name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def test_the_top_level_is_exactly_as_agreed() -> None:
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    if listed.returncode:
        pytest.skip("not a git checkout")
    tops = {line.split("/")[0] for line in listed.stdout.splitlines()}
    assert {top for top in tops if not top.startswith(".")} == TOP_LEVEL


def test_imports_run_one_way() -> None:
    for path, name in [(module, one) for module in _modules() for one in _imports(module)]:
        own = _part(path)
        if own == "__init__" or not name.startswith("selfcheck."):
            continue
        other = name.split(".")[1]
        if other == own or other == "__version__" or (_name(path), other) in EXCEPTIONS:
            continue
        assert STOREYS[other] < STOREYS[own], f"{_name(path)} imports {name}"


def test_only_the_app_knows_the_screen_library() -> None:
    others = [path for path in _modules() if _part(path) != "app"]
    assert not [_name(path) for path in others if {"textual", "rich"} & {one.split(".")[0] for one in _imports(path)}]


@pytest.mark.parametrize("part", ["domain", "interview", "drawing", "report", "practice"])
def test_pure_parts_touch_no_file_and_no_clock(part: str) -> None:
    inside = [path for path in _modules() if _part(path) == part]
    assert inside
    for path in inside:
        _touches_nothing(path)


def _touches_nothing(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    forbidden_modules = {"os", "io", "pathlib", "shutil", "tempfile", "socket", "time", "subprocess"}
    assert not forbidden_modules & {name.split(".")[0] for name in _imports(path)}, _name(path)
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            called = ast.unparse(node.func)
            assert called not in {
                "open",
                "date.today",
                "datetime.now",
                "datetime.utcnow",
                "datetime.today",
                "input",
                "print",
            }, f"{_name(path)}:{node.lineno} calls {called}"


def test_units_library_is_met_at_one_door_only() -> None:
    inside = [path for path in _modules() if _part(path) == "domain"]
    met = {path.name for path in inside if any(name.split(".")[0] == "pint" for name in _imports(path))}
    assert met
    assert all(name.startswith("quantit") or name == "units.py" for name in met), met


@pytest.mark.parametrize("argument", [["--help"], ["judge", "demo_household", "--json", "--today", "2026-06-01"]])
def test_commands_without_a_screen_load_neither_screen_nor_units_library(argument: list[str]) -> None:
    program = (
        "import sys; from selfcheck.__main__ import main\n"
        "try:\n    main(sys.argv[1:])\nexcept SystemExit:\n    pass\n"
        "print('LOADED', sorted({n.split('.')[0] for n in sys.modules} & {'textual', 'rich', 'pint'}))"
    )
    run = subprocess.run(
        [sys.executable, "-c", program, *argument], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert run.stdout.rstrip().endswith("LOADED []"), run.stdout + run.stderr


def test_the_first_question_waits_for_no_models_of_the_record() -> None:
    program = (
        "import functools, sys\n"
        "from selfcheck import __main__ as door\n"
        "from selfcheck.app.app import SelfcheckApp\n"
        "loaded = ['never asked']\n"
        "def on_ready(self):\n"
        "    loaded[:] = sorted({n.split('.')[0] for n in sys.modules} & {'pydantic', 'pydantic_core', 'pint'})\n"
        "    self.exit()\n"
        "SelfcheckApp.on_ready = on_ready\n"
        "SelfcheckApp.run_async = functools.partialmethod(SelfcheckApp.run_async, headless=True)\n"
        "door._wants_plain = lambda asked: False\n"
        "door.main(['demo_household'])\n"
        "print('LOADED', loaded)"
    )
    run = subprocess.run([sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True, check=True)
    assert run.stdout.rstrip().endswith("LOADED []"), run.stdout + run.stderr
