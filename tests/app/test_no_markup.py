"""No text reaches a widget of the screen library as a bare string, where it would be read as markup."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

APP = Path(__file__).resolve().parents[2] / "selfcheck" / "app"
#: what may be taken from the screen library's widgets: none of it reads its text as markup
ALLOWED_WIDGETS = {"Input"}
#: calls and attributes through which the library takes text as markup
FORBIDDEN_CALLS = {"notify", "update", "from_markup", "from_text", "visualize"}
FORBIDDEN_ATTRIBUTES = {"border_title", "border_subtitle", "tooltip", "sub_title"}


def modules() -> list[Path]:
    return sorted(APP.rglob("*.py"))


def offences(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("textual.widgets"):
            for alias in node.names:
                if alias.name not in ALLOWED_WIDGETS:
                    yield f"line {node.lineno}: the widget {alias.name}"
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in FORBIDDEN_CALLS:
            yield f"line {node.lineno}: a call of {node.func.attr}"
        if isinstance(node, ast.Assign | ast.AnnAssign):
            targets = node.targets if isinstance(node, ast.Assign) else [node.target]
            for target in targets:
                if isinstance(target, ast.Attribute) and target.attr in FORBIDDEN_ATTRIBUTES:
                    yield f"line {node.lineno}: {target.attr} is set"
        if isinstance(node, ast.FunctionDef) and node.name == "render":
            yield f"line {node.lineno}: render, whose result may be markup"


@pytest.mark.parametrize("path", modules(), ids=lambda path: path.relative_to(APP).as_posix())
def test_no_module_hands_text_on_as_markup(path: Path) -> None:
    assert not list(offences(ast.parse(path.read_text(encoding="utf-8"))))


@pytest.mark.parametrize(
    "source",
    [
        "from textual.widgets import Static",
        "from textual.widgets import Button, Input",
        "self.notify('hello')",
        "widget.update(text)",
        "widget.border_title = name",
        "class A:\n    def render(self):\n        return 'x'",
        "Content.from_markup(text)",
    ],
)
def test_the_check_itself_sees_what_it_should(source: str) -> None:
    assert list(offences(ast.parse(source)))
