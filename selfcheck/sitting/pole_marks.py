"""The marks for pole and stick, told whenever somebody asks for them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from selfcheck.interview.side_questions import Reply
from selfcheck.interview.typed_line import normal

if TYPE_CHECKING:
    from selfcheck.interview.context import Context
    from selfcheck.loading.place import Place

FLOW, NODE = "yearly", "marks"
TOPIC = "pole_marks"
LONGEST = 40  # no name of a thing is longer


def marks_asked(text: str, place: Place, context: Context) -> Reply | None:
    """The marks of this tank when the line asks for them by name; None for any other line.

    Where the tank is not known well enough, what is missing is said instead.
    """
    from selfcheck.interview.context import Answered
    from selfcheck.interview.phrases import filled
    from selfcheck.interview.predicates import holds
    from selfcheck.loading.content import sources
    from selfcheck.loading.conversations import interface, script, texts

    if len(text) > LONGEST or normal(text) not in interface(place).listen.get("asked_by_name", ()):
        return None
    told = script(place, FLOW)
    if not holds("marks_known", Answered(), context):
        return Reply(TOPIC, texts(place, "ahead_page")["marks"]["unknown"], "")
    words = told.words_of(NODE)
    source = sources(place).get("our-choice")
    said = filled(f"{words.before} {words.ask}", told, Answered(), context)
    return Reply(TOPIC, said, source.title if source is not None else "")
