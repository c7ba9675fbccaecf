"""What no single file can know: that flows, words, cautions, outcomes and names used in Python fit together."""

from __future__ import annotations

from selfcheck.errors import ContentProblem
from selfcheck.interview.script import Script
from selfcheck.loading.place import Place


def check_script(script: Script, place: Place) -> None:
    """Raises ContentProblem on the first thing in a conversation that does not fit."""
    for section in script.flow.sections:
        words = script.words[section.id]
        file = place.shown(f"{script.language}/words/{section.id}.toml")
        for node in section.nodes:
            if node.id not in words.nodes and node.kind != "stop":
                raise ContentProblem(file, node.id, "", "this question of the flow has no words here.")


def check_all(place: Place) -> None:
    """Every conversation, rule set, sign and source."""
    from selfcheck.loading import flow_ids, rules, script, signs, sources

    sources(place)
    rules(place)
    signs(place)
    for flow_id in flow_ids(place):
        script(place, flow_id)
