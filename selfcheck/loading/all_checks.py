"""All content of a language together: sources that are named, words of pages, and words that nothing uses."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from selfcheck.errors import ContentProblem
from selfcheck.interview.phrases import PLACE
from selfcheck.interview.script import Script
from selfcheck.loading.content import rules, signs, sources
from selfcheck.loading.conversations import flow_ids, glossary, other_words, script, texts
from selfcheck.loading.place import Place


def check_all(place: Place, language: str = "en") -> None:
    """Every conversation, rule set, sign, source and word that there is. Raises ContentProblem on the first misfit."""
    known = sources(place)
    rules(place)
    for sign in signs(place):
        if sign.source and sign.source not in known:
            raise ContentProblem("signs", sign.id, "source", f'there is no source named "{sign.source}".')
    for word, term in glossary(place, language).items():
        if term.source and term.source not in known:
            what = f'there is no source named "{term.source}".'
            raise ContentProblem(place.shown(f"{language}/glossary.toml"), word, "source", what)
    scripts = [script(place, flow_id, language) for flow_id in flow_ids(place)]
    for name in other_words(place, language):
        if name != "interface":  # the engine's own words have a form of their own, and came with every conversation
            _check_other_words(place.shown(f"{language}/words/{name}.toml"), texts(place, name, language))
    check_unused(scripts, place, language)


def _check_other_words(file: str, tables: dict[str, Any]) -> None:
    """Words that pages and pictures are told in: every text's places have a name, and every brace a partner."""
    for ident, table in tables.items():
        for key, text in _texts_in(table, ""):
            bare = PLACE.sub("", text)
            if "{" in bare or "}" in bare:
                raise ContentProblem(file, ident, key, "a brace { or } has no partner or no plain name in it.")


def _texts_in(value: Any, key: str) -> Iterable[tuple[str, str]]:
    if isinstance(value, str):
        yield key, value
    elif isinstance(value, dict):
        for name, inner in value.items():
            yield from _texts_in(inner, f"{key}.{name}" if key else str(name))
    elif isinstance(value, list):
        for inner in value:
            yield from _texts_in(inner, key)


def check_unused(scripts: list[Script], place: Place, language: str) -> None:
    """Words for questions, and sections of words, that no conversation has."""
    asked: dict[str, set[str]] = {}
    for one in scripts:
        for section in one.flow.sections:
            asked.setdefault(section.id, set()).update(node.id for node in section.nodes)
    for one in scripts:
        for section in one.flow.sections:
            for ident in one.words[section.id].nodes:
                if ident not in asked[section.id]:
                    file = place.shown(f"{language}/words/{section.id}.toml")
                    what = "there are words for this, but no conversation asks it."
                    raise ContentProblem(file, ident, "", what, "Take the words out, or mend the name.")
