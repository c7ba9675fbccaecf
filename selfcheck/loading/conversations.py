"""Conversations and the words around them, loaded whole."""

from __future__ import annotations

from typing import Any

import selfcheck.interview.septic  # noqa: F401  (registers the conditions and fills that the flows name)
from selfcheck.errors import ContentProblem
from selfcheck.interview.nodes import Caution, Flow, NodeWords, Outcome, SectionWords, Term
from selfcheck.interview.script import Interface, Script
from selfcheck.loading.files import mould, read_markdown, read_table, read_toml
from selfcheck.loading.offers import with_rule_sets
from selfcheck.loading.place import Place


def other_words(place: Place, language: str = "en") -> list[str]:
    """The words files that are not the words of a section: without a [section] of title and opening alone."""
    found = []
    for name in place.names(f"{language}/words", ".toml"):
        head = read_table(place, f"{language}/words/{name}.toml").get("section")
        if not isinstance(head, dict) or not {*head} <= {"title", "opening"}:
            found.append(name)
    return found


def flow_ids(place: Place) -> list[str]:
    """The ids of all conversations, sorted."""
    return place.names("flows", ".toml")


def flow(place: Place, flow_id: str) -> Flow:
    """One conversation's sections and nodes."""
    file = f"flows/{flow_id}.toml"
    loaded = read_toml(place, file, Flow, "flow", needs_first_line=True)
    if loaded.id != flow_id:
        raise ContentProblem(place.shown(file), loaded.id, "id", f'the id must be the file\'s own name, "{flow_id}".')
    return loaded


def section_words(place: Place, section_id: str, language: str = "en") -> SectionWords:
    """One words file: `[section]`, then one table a node."""
    relative = f"{language}/words/{section_id}.toml"
    file = place.shown(relative)
    tables = read_table(place, relative, "words")
    head = tables.pop("section", None)
    if not isinstance(head, dict):
        raise ContentProblem(file, section_id, "section", "the [section] table with a title is missing.")
    if "nodes" in head:
        raise ContentProblem(file, section_id, "nodes", "there is no such key.")
    nodes: dict[str, NodeWords] = {}
    for ident, table in tables.items():
        if not isinstance(table, dict):
            raise ContentProblem(file, section_id, ident, "this stands outside of any [node] table.")
        nodes[ident] = mould(table, NodeWords, file, ident)
    frame = mould({**head, "nodes": {}}, SectionWords, file, section_id)
    return SectionWords(frame.title, nodes, frame.opening)


def cautions(place: Place, language: str = "en") -> dict[str, Caution]:
    """Every caution by id."""
    return _texts(place, f"{language}/cautions", Caution)


def outcomes(place: Place, language: str = "en") -> dict[str, Outcome]:
    """Every outcome by id."""
    return _texts(place, f"{language}/outcomes", Outcome)


def glossary(place: Place, language: str = "en") -> dict[str, Term]:
    """Every trade word; an empty glossary when there is no file."""
    relative = f"{language}/glossary.toml"
    if place.find(relative) is None:
        return {}
    file = place.shown(relative)
    terms: dict[str, Term] = {}
    for word, table in read_table(place, relative, "glossary").items():
        if not isinstance(table, dict):
            raise ContentProblem(file, word, "", "this must be a table that begins with [" + word + "].")
        terms[word] = mould(table, Term, file, word)
    return terms


def interface(place: Place, language: str = "en") -> Interface:
    """The engine's own words. One text may stand for a list of one."""
    relative = f"{language}/words/interface.toml"
    tables = read_table(place, relative, "interface")
    lists = ("phrases", "commands", "openings", "listen")
    wide = {name: _as_lists(table) if name in lists else table for name, table in tables.items()}
    return mould(wide, Interface, place.shown(relative))


def script(place: Place, flow_id: str, language: str = "en") -> Script:
    """One conversation with all its words. Raises ContentProblem on anything that does not fit together."""
    from selfcheck.loading.cross_checks import check_script

    loaded = flow(place, flow_id)
    words = {section.id: section_words(place, section.id, language) for section in loaded.sections}
    loaded, words = with_rule_sets(loaded, words, place)
    whole = Script(
        flow=loaded,
        words=words,
        interface=interface(place, language),
        cautions=cautions(place, language),
        outcomes=outcomes(place, language),
        glossary=glossary(place, language),
        language=language,
    )
    check_script(whole, place)
    return whole


def texts(place: Place, name: str, language: str = "en") -> dict[str, Any]:
    """A words file that belongs to no section (`findings`, `signs`, `verdicts`): its tables, which hold only words."""
    relative = f"{language}/words/{name}.toml"
    tables = read_table(place, relative)
    for ident, table in tables.items():
        _only_words(table, place.shown(relative), ident, "")
    return tables


def _texts(place: Place, folder: str, model: type[Any]) -> dict[str, Any]:
    return {name: read_markdown(place, f"{folder}/{name}.md", model, id=name) for name in place.names(folder, ".md")}


def _as_lists(table: Any) -> Any:
    if not isinstance(table, dict):
        return table
    return {key: [value] if isinstance(value, str) else value for key, value in table.items()}


def _only_words(value: Any, file: str, ident: str, key: str) -> None:
    if isinstance(value, dict):
        for name, inner in value.items():
            _only_words(inner, file, ident, f"{key}.{name}" if key else name)
    elif isinstance(value, list):
        for inner in value:
            _only_words(inner, file, ident, key)
    elif not isinstance(value, str):
        raise ContentProblem(file, ident, key, "this must be words in quotes.")
