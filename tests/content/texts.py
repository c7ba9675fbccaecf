"""Every text that a person may meet in the content, as screens and as single texts with the place they stand in."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

CONTENT = Path(__file__).parents[2] / "content"
WORDS = CONTENT / "en" / "words"


def flows() -> dict[str, dict]:
    return {path.stem: tomllib.loads(path.read_text("utf-8")) for path in sorted((CONTENT / "flows").glob("*.toml"))}


def section_files() -> dict[str, dict]:
    used = {section["id"] for flow in flows().values() for section in flow["sections"]}
    return {
        path.stem: tomllib.loads(path.read_text("utf-8")) for path in sorted(WORDS.glob("*.toml")) if path.stem in used
    }


def headed(folder: str) -> dict[str, tuple[dict, str]]:
    """Cautions or outcomes: front matter and body by id."""
    found = {}
    for path in sorted((CONTENT / "en" / folder).glob("*.md")):
        _, head, body = path.read_text("utf-8").split("+++\n", 2)
        found[path.stem] = (tomllib.loads(head), body.strip())
    return found


def caution_text(caution: dict) -> str:
    return " ".join(caution[key] for key in ("hazard", "harm", "avoid"))


def screens() -> Iterator[tuple[str, str]]:
    """(place, whole text) of each screen: what is said up to an answer, and each help with its question."""
    words, cautions = section_files(), headed("cautions")
    for name, flow in flows().items():
        for section in flow["sections"]:
            first = True
            for node in section["nodes"]:
                said = words[section["id"]].get(node["id"])
                if said is None:
                    continue
                caution = caution_text(cautions[node["caution"]][0]) if node.get("caution") else ""
                opening = words[section["id"]]["section"].get("opening", "") if first else ""
                first = False
                options = " ".join(ended(said["options"][one]) for one in node.get("options", ()))
                ask = said.get("ask", "")
                place = f"{name} · {section['id']} · {node['id']}"
                yield place, " ".join((caution, opening, said.get("before", ""), ask, options)).strip()
                for help_kind in ("why", "how", "healthy"):
                    if said.get(help_kind):
                        yield f"{place} · {help_kind}", f"{said[help_kind]} {ask} {options}".strip()
    for ident, (head, body) in cautions.items():
        yield f"caution {ident}", f"{caution_text(head)} {body}"
    for ident, (head, body) in headed("outcomes").items():
        yield f"outcome {ident}", f"{ended(head['title'])} {body} {head['next_step']}"


def texts() -> Iterator[tuple[str, str]]:
    """(place, text) of every single text of the content's conversations."""
    for name, tables in section_files().items():
        yield from _inside(tables, f"words/{name}")
    for folder in ("cautions", "outcomes"):
        for ident, (head, body) in headed(folder).items():
            yield from _inside(head, f"{folder}/{ident}", skip={"writes", "level"})
            yield f"{folder}/{ident} · body", body
    glossary = tomllib.loads((CONTENT / "en" / "glossary.toml").read_text("utf-8"))
    for word, table in glossary.items():
        yield f"glossary · {word}", table["means"]


def _inside(value: object, place: str, skip: frozenset[str] | set[str] = frozenset()) -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield place, value
    elif isinstance(value, dict):
        for key, inner in value.items():
            if key not in ("also", *skip):  # other words that people use are theirs, not ours
                yield from _inside(inner, f"{place} · {key}", skip)


def ended(text: str) -> str:
    """A label as a sentence."""
    return text if text.endswith((".", "?", ":")) else text + "."


def sentences(text: str) -> list[str]:
    return [part for part in re.split(r"(?<=[.?])\s+|\n+", text) if part.strip()]


def word_count(sentence: str) -> int:
    return len(re.findall(r"[\w'’½¼¾{}/-]+", sentence))
