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

#: every phrase the engine says → what it puts into it; a language's `interface.toml` must have them all
PHRASES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(
        (
            "at_end", "back_none", "bound_again", "cannot_be_unknown", "cannot_skip", "change_none", "change_stop",
            "change_which", "close_first", "close_leave", "danger_ask", "date_ask", "date_leave", "date_today",
            "date_unknown", "echo_none", "echo_unknown", "elsewhere", "elsewhere_ask", "elsewhere_no", "empty",
            "go_on", "hazard_again", "hazard_no", "hazard_not", "hazard_unnamed", "hazard_yes", "help", "hint_choose",
            "hint_choose_several", "hint_confirm", "hint_date", "hint_length", "hint_note", "hint_number", "hint_say",
            "hint_volume", "known_already", "left", "left_open", "left_unsaved", "level_caution", "level_danger",
            "level_note", "level_stop", "misheard_all_well", "misheard_at_end", "misheard_yes", "more_signs",
            "near_ask", "near_none", "no", "no_how", "no_match_again", "no_match_free", "no_match_list",
            "no_match_one", "no_match_options", "no_why", "not_asked", "not_in_guide", "not_known", "note_kept",
            "odd_again", "odd_ask", "odd_kept", "odd_no", "odd_yes", "offer_first", "one_number", "pick_one",
            "review_right", "several", "several_ask", "several_done", "several_no", "skipped", "slip_no", "slip_none",
            "slip_yes", "stay", "still_no", "still_yes", "told_stands", "told_too_early", "trouble_ask",
            "trouble_none", "trouble_over", "understood_part", "unknown_ask", "welcome_back", "what_now_tell",
            "which", "which_unit", "yes", "yes_to_which",
        ),
        (),
    ),
    "back_to": ("name",),
    "caution": ("hazard", "harm", "avoid"),
    "change_old": ("name", "value"),
    "changed": ("name", "value", "old"),
    "changed_choice": ("name", "value", "old"),
    "did_you_mean": ("label",),
    "echo": ("value",),
    "echo_choice": ("value",),
    "echo_named": ("name", "value"),
    "echo_quoted": ("value",),
    "give_or_take": ("value", "error"),
    "hazard_check": ("told",),
    "healthy": ("healthy",),
    "hint_example": ("hint", "example"),
    "no_match_example": ("example",),
    "misheard_ask": ("told",),
    "misheard_danger": ("told",),
    "odd_least": ("value", "bound"),
    "odd_most": ("value", "bound"),
    "odd_usual_least": ("value", "bound"),
    "odd_usual_most": ("value", "bound"),
    "end_reasons": ("told",),
    "review_item": ("name", "value"),
    "review_line": ("name", "value"),
    "several_change": ("name", "value", "old"),
    "several_change_choice": ("name", "value", "old"),
    "several_line": ("name", "value"),
    "several_rest": ("rest",),
    "on_record": ("told",),
    "record_says": ("name", "value"),
    "slip_ask": ("value",),
    "still_true": ("name", "value"),
    "taken_as": ("asked",),
}  # fmt: skip


def fill(name: str) -> Callable[[Fill], Fill]:
    """Registers a fill under `name`; ValueError when the name is taken."""

    def register(words: Fill) -> Fill:
        if name in FILLS:
            raise ValueError(f"there are two fills named {name}")
        FILLS[name] = words
        return words

    return register


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
