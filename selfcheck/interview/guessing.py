"""What a line with slips in it may have meant: an option of the open question, offered for a yes."""

from __future__ import annotations

from difflib import SequenceMatcher

from selfcheck.interview.nodes import Node
from selfcheck.interview.script import Script
from selfcheck.interview.typed_line import normal, words_in
from selfcheck.interview.understanding import CHOICES, wordings

#: how alike two words, or two short lines, must be. Our choice: two letters that changed places in a word of four.
ALIKE = 0.74
#: shorter words are alike by chance
SHORTEST = 4


def meant(script: Script, node: Node, text: str) -> str | None:
    """The one option that a line comes close to; never one that would pass a safety item, nor by a number or a yes."""
    plain = normal(text)
    if node.kind not in CHOICES or len(plain) < SHORTEST or any(letter.isdecimal() for letter in plain):
        return None
    listen = script.interface.listen
    if set(words_in(plain)) & {*listen.get("negations", ()), *listen.get("yes", ()), *listen.get("no", ())}:
        return None
    scores = {option: _likeness(script, node, option, plain) for option in node.options}
    best = max(scores, key=lambda option: scores[option], default="")
    if not best or scores[best] < ALIKE or (node.gate and best in node.passes):
        return None
    rivals = [score for option, score in scores.items() if option != best]
    return best if all(score < scores[best] for score in rivals) else None


def _likeness(script: Script, node: Node, option: str, plain: str) -> float:
    fillers = set(script.interface.listen.get("fillers", ()))
    typed = [word for word in words_in(plain) if word not in fillers and len(word) >= SHORTEST]
    if typed and all(word in script.common_words for word in typed):
        return 0.0
    best = 0.0
    for wording in wordings(script, node, option):
        best = max(best, _ratio(plain, wording))
        known = [word for word in words_in(wording) if word not in fillers and len(word) >= SHORTEST]
        if typed and known:
            best = max(best, min(max(_ratio(word, other) for other in known) for word in typed) - 0.01)
    return best


def _ratio(one: str, other: str) -> float:
    return SequenceMatcher(None, one, other, autojunk=False).ratio() if abs(len(one) - len(other)) < 5 else 0.0
