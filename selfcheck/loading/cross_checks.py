"""What no single file of a conversation can know: that flow, words, cautions, outcomes and names in Python fit."""

from __future__ import annotations

from collections.abc import Iterable

from selfcheck.errors import ContentProblem
from selfcheck.interview.answers import ENGINE
from selfcheck.interview.nodes import Condition, Node, Section
from selfcheck.interview.phrases import FILLS, PHRASES, PLACE
from selfcheck.interview.predicates import PREDICATES
from selfcheck.interview.script import Script
from selfcheck.loading.node_checks import check_node
from selfcheck.loading.paths import check_path
from selfcheck.loading.place import Place


def check_script(script: Script, place: Place) -> None:
    """Raises ContentProblem on the first thing in a conversation that does not fit."""
    file = place.shown(f"flows/{script.flow.id}.toml")
    _check_names(script, file)
    _check_interface(script, place)
    for section, node in script.flow.nodes():
        check_node(file, node)
        _check_conditions(script, file, section, node)
        _check_links(script, file, node)
        for path in _paths(node):
            check_path(file, node.id, path, script.flow.records)
    for path in filter(None, (script.flow.gate_writes, script.flow.hazards_write)):
        check_path(file, script.flow.id, path, script.flow.records)
    _check_course(script, file)
    for section in script.flow.sections:
        _check_words(script, place, section)
    for caution in script.cautions.values():
        for path in caution.writes:
            check_path(f"{script.language}/cautions/{caution.id}.md", caution.id, path, ())


def _check_names(script: Script, file: str) -> None:
    seen: set[str] = set()
    for ident in [section.id for section in script.flow.sections] + [node.id for _, node in script.flow.nodes()]:
        if ident.startswith(ENGINE):
            raise ContentProblem(file, ident, "id", f'an id must not begin with "{ENGINE}".')
    for _, node in script.flow.nodes():
        if node.id in seen:
            raise ContentProblem(file, node.id, "id", "this id is used twice.", "Give one of them another id.")
        seen.add(node.id)
    sections = [section.id for section in script.flow.sections]
    for ident in sections:
        if sections.count(ident) > 1:
            raise ContentProblem(file, ident, "id", "this section id is used twice.", "Give one of them another id.")


def _check_interface(script: Script, place: Place) -> None:
    file = place.shown(f"{script.language}/words/interface.toml")
    for name, fills in PHRASES.items():
        wordings = script.interface.phrases.get(name)
        if not wordings:
            raise ContentProblem(file, "phrases", name, "this phrase is missing.")
        for wording in wordings:
            unknown = set(PLACE.findall(wording)) - set(fills)
            if unknown:
                known = ", ".join(fills) or "none"
                what = f'there is nothing to put in for "{unknown.pop()}"; it knows: {known}.'
                raise ContentProblem(file, "phrases", name, what)


def _check_conditions(script: Script, file: str, section: Section, node: Node) -> None:
    for owner, first, conditions in (
        (section.id, section.nodes[0], section.when),
        (node.id, node, (*node.when, *node.told_when)),
    ):
        for condition in conditions:
            _check_condition(script, file, owner, first, condition)


def _check_condition(script: Script, file: str, owner: str, node: Node, condition: Condition) -> None:
    forms = [bool(condition.question or condition.is_), bool(condition.predicate), bool(condition.unless)]
    if sum(forms) != 1 or bool(condition.question) != bool(condition.is_):
        what = "each condition is one of: question with is, predicate, or unless."
        raise ContentProblem(file, owner, "when", what)
    name = condition.predicate or condition.unless
    if name and name not in PREDICATES:
        raise ContentProblem(file, owner, "when", f'there is no predicate named "{name}".')
    if not condition.question:
        return
    asked = script.nodes.get(condition.question)
    if asked is None:
        raise ContentProblem(file, owner, "when", f'there is no question named "{condition.question}".')
    if script.order[asked.id] >= script.order[node.id]:
        what = f'"{asked.id}" is asked later than this, so it can\'t decide about it.'
        raise ContentProblem(file, owner, "when", what, "Name an earlier question, or move it.")
    if asked.kind in ("choose", "choose_several"):
        known = {*asked.options, "unknown", "skipped", *(("none",) if asked.kind == "choose_several" else ())}
        for value in condition.is_:
            if value not in known:
                raise ContentProblem(file, owner, "when", f'"{asked.id}" has no option "{value}".')


def _check_links(script: Script, file: str, node: Node) -> None:
    if node.kind == "stop" and node.outcome not in script.outcomes:
        raise ContentProblem(file, node.id, "outcome", f'there is no outcome named "{node.outcome}".')
    if node.caution and node.caution not in script.cautions:
        raise ContentProblem(file, node.id, "caution", f'there is no caution named "{node.caution}".')
    named = {f"hazard.{option}": hazard for option, hazard in node.hazard.items()}
    for key, hazard in (named | {f"told_as.{hazard}": hazard for hazard in node.told_as}).items():
        if hazard not in script.cautions:
            what = f'there is no caution named "{hazard}" to say what to do.'
            raise ContentProblem(file, node.id, key, what)
    for name in node.odd_when:
        if name not in PREDICATES:
            raise ContentProblem(file, node.id, "odd_when", f'there is no predicate named "{name}".')
    for option, name in node.barred.items():
        if option not in node.options or node.kind != "choose":
            raise ContentProblem(file, node.id, "barred", f'"{option}" is not an option of this question.')
        if name not in PREDICATES:
            raise ContentProblem(file, node.id, f"barred.{option}", f'there is no predicate named "{name}".')


def _paths(node: Node) -> Iterable[str]:
    if node.writes:
        yield node.writes
    if node.width_writes:
        yield node.width_writes
    yield from node.also_writes
    for written in node.implies.values():
        yield from written


def _check_course(script: Script, file: str) -> None:
    """The gate before anything that opens, the closing after it, and an end."""
    nodes = [node for _, node in script.flow.nodes()]
    gates = [place for place, node in enumerate(nodes) if node.gate]
    closings = [place for place, node in enumerate(nodes) if node.closes and node.on_leaving]
    for place, node in enumerate(nodes):
        if node.opens and not (gates and gates[0] < place):
            raise ContentProblem(file, node.id, "opens", "nothing may be opened before a gate.", "Put the gate first.")
        if node.opens and not (closings and closings[-1] > place):
            what = "after this, no question makes sure that it is shut again."
            raise ContentProblem(file, node.id, "opens", what, "Add one that closes and is asked on leaving.")
    if len(nodes) > 1 and not any(node.kind == "stop" for node in nodes):
        raise ContentProblem(file, script.flow.id, "", "this conversation has no end.", "Add a node of kind stop.")
    for place, (section, node) in enumerate(script.flow.nodes()):
        if node.kind == "stop" and not (section.when or node.when) and place + 1 < len(nodes):
            what = f'every conversation ends at "{node.id}", so this can never be reached.'
            raise ContentProblem(file, nodes[place + 1].id, "", what, "Move the stop to the end.")
    if not nodes:
        raise ContentProblem(file, script.flow.id, "sections", "there is no question in it.")


def _check_words(script: Script, place: Place, section: Section) -> None:
    file = place.shown(f"{script.language}/words/{section.id}.toml")
    words = script.words[section.id]
    _check_places(script, file, section.id, "opening", words.opening)
    for node in section.nodes:
        said = words.nodes.get(node.id)
        if said is None:
            if node.kind == "stop":
                continue
            raise ContentProblem(file, node.id, "", "this question of the flow has no words here.", "Add its table.")
        if not said.ask and node.kind != "stop":
            raise ContentProblem(file, node.id, "ask", "the question itself is missing.")
        options = set(node.options)
        figures = {name for name in said.also if node.kind == "number" and name.isdecimal()}
        for option in node.options:
            if not said.options.get(option):
                raise ContentProblem(file, node.id, "options", f'the option "{option}" has no words.')
        extra = {"unknown", "skipped"} | ({"none"} if node.kind == "choose_several" else set())
        tables: tuple[tuple[str, Iterable[str], set[str]], ...] = (
            ("options", said.options, options),
            ("also", said.also, options | figures),
            ("after", said.after, options | extra),
            ("odd", said.odd, set(node.odd_when)),
            ("barred", said.barred, set(node.barred.values())),
        )
        for key, names, known in tables:
            for name in names:
                if name not in known:
                    listed = {"odd": "odd_when", "barred": "barred"}.get(key)
                    missing = f"does not stand in {listed}" if listed else "is not an option"
                    what = f'"{name}" {missing} of this question.'
                    raise ContentProblem(file, node.id, key, what)
        for name in node.odd_when:
            if name not in said.odd:
                raise ContentProblem(file, node.id, "odd", f'what is odd when "{name}" holds has no words.')
        for name in node.barred.values():
            if name not in said.barred:
                raise ContentProblem(file, node.id, "barred", f'why "{name}" bars an answer has no words.')
        _check_alike(file, node, said.options, said.also)
        for key in ("ask", "before", "why", "how", "healthy", "again"):
            _check_places(script, file, node.id, key, getattr(said, key))
        for table in (said.options, said.after, said.odd, said.barred):
            for name, text in table.items():
                _check_places(script, file, node.id, name, text)


def _check_alike(file: str, node: Node, labels: dict[str, str], also: dict[str, tuple[str, ...]]) -> None:
    """The same words must not stand for two options."""
    owner: dict[str, str] = {}
    for option in node.options:
        for wording in {labels[option].casefold(), *(other.casefold() for other in also.get(option, ()))}:
            other = owner.setdefault(wording, option)
            if other != option:
                what = f'"{wording}" stands for both "{other}" and "{option}".'
                raise ContentProblem(file, node.id, "also", what, "Leave it with one of them.")


def _check_places(script: Script, file: str, ident: str, key: str, text: str) -> None:
    """Every `{name}` is a fill or a question, and every brace belongs to one."""
    bare = PLACE.sub("", text)
    if "{" in bare or "}" in bare:
        raise ContentProblem(file, ident, key, "a brace { or } has no partner or no plain name in it.")
    for name in PLACE.findall(text):
        if name not in FILLS and name not in script.nodes:
            raise ContentProblem(file, ident, key, f'there is nothing to put in for "{{{name}}}".')
