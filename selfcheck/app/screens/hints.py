"""The bottom row of a conversation: which keys help at the open question."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.app.widgets.keys import KeyHint
from selfcheck.app.words import FaceWords

if TYPE_CHECKING:
    from selfcheck.interview.messages import Prompt

#: the stage in which the paper sheet is wanted
PREPARING = "find"


def hints_for(prompt: Prompt, has_picture: bool, words: FaceWords) -> list[KeyHint]:
    """What helps most stands first, since a narrow terminal shows only that. `has_picture`: one to be read off."""
    before_going_out = prompt.stage == PREPARING and not prompt.may_stand_open
    hints = (
        (before_going_out, "f12", "sheet_key", "sheet"),
        (has_picture, "f7", "picture", "app.tank"),
        (True, "f2", "why", "tell('why')"),
        (True, "f3", "how", "tell('how')"),
        (prompt.unknown_allowed, "f6", "unknown", "tell('unknown')"),
        (True, "f8", "trouble", "tell('trouble')"),
        (True, "f1", "help", "app.help"),
        (prompt.can_go_back, "f4", "back", "tell('back')"),
        (not has_picture, "f7", "tank", "app.tank"),
        (prompt.can_go_back, "f5", "change", "tell('change')"),
        (True, "f10", "leave", "tell('leave')"),
    )
    return [KeyHint(key, words(word), action) for wanted, key, word, action in hints if wanted]
