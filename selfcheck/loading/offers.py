"""Questions that offer whatever rule sets there are, so that a new file in `rules/` is offered by itself."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from selfcheck.interview.nodes import Flow, Node, NodeWords, SectionWords
from selfcheck.interview.phrases import PLACE
from selfcheck.loading.place import Place

if TYPE_CHECKING:
    from selfcheck.domain.limits import RuleSet

#: An option of this id stands for one option for each rule set; its words may hold {title} and {jurisdiction}.
EACH = "each_rule_set"


def with_rule_sets(flow: Flow, words: Mapping[str, SectionWords], place: Place) -> tuple[Flow, dict[str, SectionWords]]:
    """The flow and its words with the option `EACH` replaced by the rule sets, by id. In what it implies, `EACH` as a
    value stands for the id.
    """
    asking = {node.id for _, node in flow.nodes() if EACH in node.options}
    if not asking:
        return flow, dict(words)
    from selfcheck.loading.content import rules

    sets = rules(place)
    sections = tuple(
        replace(one, nodes=tuple(_offering(node, sets) if node.id in asking else node for node in one.nodes))
        for one in flow.sections
    )
    labelled = {
        ident: replace(
            said,
            nodes={name: _labelled(told, sets) if name in asking else told for name, told in said.nodes.items()},
        )
        for ident, said in words.items()
    }
    return replace(flow, sections=sections), labelled


def _offering(node: Node, sets: Mapping[str, RuleSet]) -> Node:
    options = tuple(ident for option in node.options for ident in (sets if option == EACH else (option,)))
    implied = dict(node.implies)
    for path, value in implied.pop(EACH, {}).items():
        for ident in sets:
            implied[ident] = {**implied.get(ident, {}), path: ident if value == EACH else value}
    return replace(node, options=options, implies=implied)


def _labelled(words: NodeWords, sets: Mapping[str, RuleSet]) -> NodeWords:
    template = words.options.get(EACH, "{title}")
    options = {name: label for name, label in words.options.items() if name != EACH}
    for ident, one in sets.items():
        fills = {"title": one.title, "jurisdiction": one.jurisdiction}
        label = PLACE.sub(lambda match, fills=fills: fills.get(match[1], ""), template)  # type: ignore[misc]
        options[ident] = label.replace("{", "(").replace("}", ")").removesuffix(" · ").strip()
    return replace(words, options=options)
