"""The engine's own words, never the same twice running; and the `{name}` places of all texts.

A new fill: write a function below `@fill("name")`. It gives the words to put in, or None: then the sentence that
names it is left out. A place with the id of a question is filled with the answer to it.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from selfcheck.interview.context import Answered, Context
from selfcheck.interview.script import Interface, Script
from selfcheck.interview.showing import show_answer

Fill = Callable[[Answered, Context], str | None]
FILLS: dict[str, Fill] = {}
PLACE = re.compile(r"\{([a-z][a-z0-9_]*)\}")
_SENTENCE = re.compile(r"[^.?\n]*(?:[.?]+(?=\s|$)|\n|$)\s*|.", re.S)


def fill(name: str) -> Callable[[Fill], Fill]:
    """Registers a fill under `name`; ValueError when the name is taken."""

    def register(words: Fill) -> Fill:
        if name in FILLS:
            raise ValueError(f"there are two fills named {name}")
        FILLS[name] = words
        return words

    return register


@fill("household_name")
def household_name(answered: Answered, context: Context) -> str | None:
    """The name of the household."""
    return getattr(context.household, "name", None) or None


@fill("today")
def today(answered: Answered, context: Context) -> str | None:
    """The day of the conversation."""
    from selfcheck.domain.quantities import show_date

    return show_date(context.today, context.units)


def filled(text: str, script: Script, answered: Answered, context: Context) -> str:
    """A text of the content with its places filled in; sentences with nothing to put in are left out."""
    if "{" not in text:
        return text
    values: dict[str, str | None] = {}
    for name in set(PLACE.findall(text)):
        if name in FILLS:
            values[name] = FILLS[name](answered, context)
        elif name in answered:
            values[name] = show_answer(script, answered[name], context.units)
        else:
            values[name] = None
    missing = {name for name, value in values.items() if value is None}
    if missing:
        kept = [part for part in _SENTENCE.findall(text) if not missing & set(PLACE.findall(part))]
        text = "".join(kept).strip()
    return PLACE.sub(lambda match: values.get(match[1]) or "", text)


class Phrases:
    """The engine's words in one language. Remembers what it said last."""

    def __init__(self, interface: Interface) -> None:
        self._phrases = interface.phrases
        self._turn: dict[str, int] = {}

    def say(self, name: str, /, **values: str) -> str:
        """The next wording of a phrase, with `values` in its places."""
        wordings = self._phrases[name]
        turn = self._turn.get(name, 0)
        self._turn[name] = turn + 1
        return PLACE.sub(lambda match: values.get(match[1], ""), wordings[turn % len(wordings)]).strip()
