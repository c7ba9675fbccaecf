"""Whether one node makes sense by itself."""

from __future__ import annotations

from itertools import pairwise

from selfcheck.errors import ContentProblem
from selfcheck.interview.nodes import Node

CHOICES = ("choose", "choose_several")
AMOUNTS = ("length", "volume", "number")


def check_node(file: str, node: Node) -> None:
    """Raises ContentProblem on the first key of a node that does not go with the others."""
    _check_options(file, node)
    _check_range(file, node)
    if node.kind not in ("say", "stop") and not node.tags:
        what = "nothing says why it is asked."
        raise ContentProblem(file, node.id, "tags", what, "Add one of: verdict, next_step, record, safety.")
    if node.kind == "stop" and not node.outcome:
        raise ContentProblem(file, node.id, "outcome", "a stop needs an outcome.", "Name one.")
    if node.kind != "stop" and node.outcome:
        raise ContentProblem(file, node.id, "outcome", "only a stop has an outcome.", "Take it out.")
    if node.gate and not (node.kind == "choose" and node.passes):
        what = "a gate is a choice, and passes names the answers that let the person go on."
        raise ContentProblem(file, node.id, "passes", what, "Add passes with at least one option.")
    if node.gate and set(node.passes) == set(node.options) and len(node.options) == 1:
        what = "a gate with one answer asks nothing."
        raise ContentProblem(file, node.id, "options", what, "Add an answer that does not pass.")
    if node.passes and not node.gate:
        raise ContentProblem(file, node.id, "passes", "only a gate has passes.", "Add gate = true, or take it out.")
    if node.kind == "stop" and (node.gate or node.opens or node.closes or node.writes):
        raise ContentProblem(file, node.id, "kind", "a stop asks nothing, so it can't open, close, pass or write.")
    if node.told_when and (node.gate or node.opens or node.closes or node.on_leaving):
        what = "what keeps people safe is answered when it is asked."
        raise ContentProblem(file, node.id, "told_when", what, "Take it out.")
    if node.carries and not node.writes:
        raise ContentProblem(file, node.id, "carries", "what is carried over is found by writes, which is missing.")
    if node.of_the_rest and node.kind != "date":
        raise ContentProblem(file, node.id, "of_the_rest", "only a date tells when the rest was seen.", "Take it out.")
    if not node.unknown_allowed and node.kind in (*AMOUNTS, "date"):
        what = "\"I don't know\" can't be switched off for a measure or a date."
        raise ContentProblem(file, node.id, "unknown_allowed", what, "Take it out.")


def _check_options(file: str, node: Node) -> None:
    if node.kind in CHOICES and not node.options:
        raise ContentProblem(file, node.id, "options", "there is nothing to choose from.", "Add option ids.")
    if node.kind not in CHOICES and node.options:
        raise ContentProblem(file, node.id, "options", f"a {node.kind} has no options.", "Take them out.")
    if len(set(node.options)) < len(node.options):
        raise ContentProblem(file, node.id, "options", "an option stands there twice.", "Take one out.")
    for option in node.options:
        if option in ("unknown", "skipped") or option.startswith(("_", "not ")):
            raise ContentProblem(file, node.id, "options", f'"{option}" has a meaning of its own.', "Use another id.")
    several = node.kind == "choose_several"
    implied = {"unknown", *(("none",) if several else ()), *(f"not {option}" for option in node.options if several)}
    for key, names, more in (
        ("values", tuple(node.values), set()),
        ("passes", node.passes, set()),
        ("closes", node.closes, set()),
        ("hazard", tuple(node.hazard), set()),
        ("implies", tuple(node.implies), implied),
        ("told_as", tuple(node.told_as.values()), set()),
    ):
        for name in names:
            if name not in node.options and name not in more:
                raise ContentProblem(file, node.id, key, f'"{name}" is not an option of this question.')


def _check_range(file: str, node: Node) -> None:
    bounds = {"least": node.least, "most": node.most, "usual_least": node.usual_least, "usual_most": node.usual_most}
    given = [name for name, value in bounds.items() if value is not None]
    if given and node.kind not in AMOUNTS:
        raise ContentProblem(file, node.id, given[0], f"a {node.kind} has no range.", "Take it out.")
    order = ("least", "usual_least", "usual_most", "most")
    present = [(name, bounds[name]) for name in order if bounds[name] is not None]
    for (low, small), (high, large) in pairwise(present):
        if small is not None and large is not None and small > large:
            raise ContentProblem(file, node.id, low, f"it is more than {high}.", "Swap them, or mend one.")
