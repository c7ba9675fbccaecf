"""Every public function, class and method of the domain says what it is, and how a source that it names was seen."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from selfcheck import domain
from selfcheck.loading.content import sources
from selfcheck.loading.place import content_place

FOLDER = Path(str(domain.__file__)).parent
#: What a docstring says of a source that was not read in its own text.
SAID = {"reprint": "reprint", "memory": "from memory"}


def public(tree: ast.Module | ast.ClassDef) -> Iterator[ast.FunctionDef | ast.ClassDef]:
    for node in tree.body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
            yield node
            if isinstance(node, ast.ClassDef):
                yield from public(node)


def docstrings() -> Iterator[tuple[str, str]]:
    for path in sorted(FOLDER.glob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        yield path.stem, ast.get_docstring(tree) or ""
        for node in public(tree):
            yield f"{path.stem}.{node.name}", ast.get_docstring(node) or ""


def test_every_public_name_is_explained() -> None:
    assert [name for name, said in docstrings() if not said] == []


def test_a_source_not_read_in_its_own_text_is_named_as_such() -> None:
    known = {name: SAID[one.seen] for name, one in sources(content_place(own=False)).items() if one.seen in SAID}
    named = [
        (name, source, how, said)
        for name, said in docstrings()
        for source, how in known.items()
        if re.search(rf"(?<![\w-]){re.escape(source)}(?![\w-])", said)
    ]
    assert {source for _, source, _, _ in named} >= {"upc", "ipsdc-sizing", "niosh-94-110", "interval-table", "phs-526"}
    assert [(name, source) for name, source, how, said in named if how not in said] == []
